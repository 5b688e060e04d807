//! What may be loaded, and what then rests on each axle or on the coupling.

use super::{Desk, of, worked_out};
use crate::figures::PASSENGER;
use crate::figures::axles::{Loads, Mass, Supports};
use crate::model::files::vehicle::{Body, Room, RoomKind};
use crate::model::quantity::{Quantity, Unit};
use crate::model::source::At;
use crate::model::sums::{Sum, SumGroup};

/// Where fluids are carried: who provides it, the value that says how much, and the roles that say where.
const FRESH: (&str, &str, &[&str]) = ("fresh-water", "capacity", &["tank"]);
const GAS: &[&str] = &["locker", "valve"];

/// A vehicle to load, all in kg and mm.
pub(super) struct Load {
    pub(super) supports: Supports,
    /// With driver and fuel, and what was added.
    pub(super) empty: Loads,
    pub(super) fresh: Mass,
    pub(super) gas: Mass,
    /// Passengers, front seats first; the driver is counted already.
    pub(super) seats: Vec<f64>,
    /// Where luggage at the back is.
    pub(super) luggage: f64,
    pub(super) limits: [Option<f64>; 2],
    pub(super) maximum: Option<f64>,
}

impl Load {
    fn passengers(&self) -> Loads {
        self.supports.all(self.seats.iter().map(|at| Mass { kg: PASSENGER, at: *at }))
    }
}

impl Desk<'_, '_, '_> {
    fn trailer(&self) -> bool {
        self.model().body.value == Body::Trailer
    }

    fn model(&self) -> &crate::model::files::vehicle::ModelFile {
        &self.found.book.models[self.found.van.model].facts
    }

    /// People who may sleep or sit in it, whichever are more.
    pub(super) fn most_people(&self) -> usize {
        let model = self.model();
        model.berths.unwrap_or(0).max(model.seats.unwrap_or(0)).clamp(1, 12) as usize
    }

    pub(super) fn vehicle(&self) -> Option<SumGroup> {
        let load = self.load();
        let axles = load.as_ref().and_then(|load| self.axles(load));
        self.group("vehicle", vec![self.payload(), self.least_payload(), axles])
    }

    /// Mass that was fitted after the vehicle was built, in kg, and where it is.
    fn options(&self) -> Vec<Mass> {
        let parts = self.found.parts();
        parts.filter_map(|part| Some(Mass { kg: part.amount("added-mass", "kg")?, at: part.at(&[])? })).collect()
    }

    fn passengers(&self) -> usize {
        self.model().seats.map_or(0, |seats| seats.saturating_sub(1) as usize)
    }

    fn payload(&self) -> Option<Sum> {
        let masses = self.model().masses.as_ref()?;
        let (maximum, running) = (kg(&masses.maximum)?, kg(&masses.running_order)?);
        let options: f64 = self.options().iter().map(|mass| mass.kg).sum();
        let passengers = of(self.passengers() as f64, "count");
        self.sum("payload", "payload", &[of(maximum, "kg"), of(running, "kg"), of(options, "kg"), passengers])
    }

    fn least_payload(&self) -> Option<Sum> {
        let people = self.model().seats.filter(|_| !self.trailer())?;
        let length = mm(&Some(self.model().dimensions.length.clone()))? / 1000.0;
        self.sum("least-payload", "minimum-payload", &[of(f64::from(people), "count"), of(length, "m")])
    }

    pub(super) fn load(&self) -> Option<Load> {
        let (size, masses) = (&self.model().dimensions, self.model().masses.as_ref()?);
        let rear: Vec<f64> = [&size.rear_axle, &size.second_rear_axle].into_iter().filter_map(mm).collect();
        let rear = rear.iter().sum::<f64>() / rear.len().max(1) as f64;
        let front = if self.trailer() { -mm(&size.coupling)? } else { mm(&size.front_axle)? };
        let supports = Supports::new(front, rear)?;
        let (running, on_front) = (kg(&masses.running_order)?, kg(&masses.running_order_front)?);
        let built = Loads { front: on_front, rear: running - on_front };
        Some(Load {
            supports,
            empty: built.and(supports.all(self.options())),
            fresh: self.fresh_mass().unwrap_or(Mass { kg: 0.0, at: rear }),
            gas: self.gas_mass().unwrap_or(Mass { kg: 0.0, at: rear }),
            seats: self.seats(),
            luggage: self.luggage().unwrap_or(rear),
            limits: if self.trailer() {
                [kg(&masses.nose_limit), kg(&masses.rear_axle)]
            } else {
                [kg(&masses.front_axle), kg(&masses.rear_axle)]
            },
            maximum: kg(&masses.maximum),
        })
    }

    /// A full fresh tank; a carrier that stands outside has no place of a tank, and does not ride along.
    fn fresh_mass(&self) -> Option<Mass> {
        let (capability, value, roles) = FRESH;
        let part = self.found.provider(capability)?;
        Some(Mass { kg: worked_out("water-mass", &[part.amount(value, "l")?])?, at: part.at(roles)? })
    }

    fn gas_mass(&self) -> Option<Mass> {
        let part = self.found.provider("lpg-supply")?;
        let each = part.amount("cylinder-mass", "kg").or_else(|| part.amount("full-mass", "kg"))?;
        let count = if part.fit.choice("cylinders").is_none_or(|word| word == "one") { 1.0 } else { 2.0 };
        Some(Mass { kg: each * count, at: part.at(GAS)? })
    }

    /// Seats with belts but the driver's, front ones first.
    fn seats(&self) -> Vec<f64> {
        let belts = |room: &Room| room.belts() as usize;
        let middle = |room: &Room| room.box_.first().zip(room.box_.get(2)).map(|(from, to)| (from + to) / 2.0);
        let rooms = self.model().room.iter();
        let mut seats: Vec<f64> =
            rooms.flat_map(|room| middle(room).into_iter().flat_map(move |at| vec![at; belts(room)])).collect();
        seats.sort_by(f64::total_cmp);
        seats.into_iter().skip(1).take(self.passengers()).collect()
    }

    /// The middle of what is farthest back of garages, beds and wardrobes.
    fn luggage(&self) -> Option<f64> {
        let holds = |room: &&Room| matches!(room.kind, RoomKind::Garage | RoomKind::Bed | RoomKind::Wardrobe);
        let middles = self
            .model()
            .room
            .iter()
            .filter(holds)
            .filter_map(|room| Some((room.box_.first()? + room.box_.get(2)?) / 2.0));
        middles.max_by(f64::total_cmp)
    }

    /// Row by row what each load adds, then the limits.
    fn axles(&self, load: &Load) -> Option<Sum> {
        let passengers = load.passengers();
        let (fresh, gas) = (load.supports.loads(load.fresh), load.supports.loads(load.gas));
        let full = load.empty.and(passengers).and(fresh).and(gas);
        let left = (load.maximum? - full.sum()).max(0.0);
        let luggage = load.supports.loads(Mass { kg: left, at: load.luggage });
        let all = full.and(luggage);
        let row = |name: &str, loads: Loads| self.loads_row(&self.say(name), loads);
        let mut rows = vec![row("load-running", load.empty)];
        rows.extend((!load.seats.is_empty()).then(|| row("load-passengers", passengers)));
        rows.extend(
            [("load-fresh", fresh), ("load-gas", gas)]
                .iter()
                .filter(|(_, add)| add.sum() > 0.0)
                .map(|(name, add)| row(name, *add)),
        );
        rows.extend([row("load-full", full), row("load-luggage", luggage), row("load-all", all)]);
        rows.push(self.limits_row(load));
        let heads = if self.trailer() {
            ["col-load-of", "col-nose", "col-axle", "col-sum"]
        } else {
            ["col-load-of", "col-front", "col-rear", "col-sum"]
        };
        Some(Sum {
            id: if self.trailer() { "nose" } else { "axles" },
            title: self.say(if self.trailer() { "sum-nose" } else { "sum-axles" }),
            result: String::new(),
            caution: self.overloaded(load, full, all),
            table: self.table(&heads, rows),
            inputs: vec![],
            working: vec![self.say(if self.trailer() { "working-nose" } else { "working-axles" })],
            limits: self.say("limits-axles"),
            source: self.say("source-axles"),
        })
    }

    fn loads_row(&self, name: &str, loads: Loads) -> Vec<String> {
        let kg = |amount: f64| self.shown(amount.round(), 4, "kg");
        vec![name.to_string(), kg(loads.front), kg(loads.rear), kg(loads.sum())]
    }

    fn limits_row(&self, load: &Load) -> Vec<String> {
        let limit = |limit: Option<f64>| limit.map_or(String::new(), |limit| self.shown(limit, 4, "kg"));
        vec![self.say("load-limits"), limit(load.limits[0]), limit(load.limits[1]), limit(load.maximum)]
    }

    /// What to mind: full tanks alone may be too much, or only luggage at the back.
    fn overloaded(&self, load: &Load, full: Loads, all: Loads) -> String {
        let over = |loads: Loads, end: usize| {
            load.limits[end]
                .filter(|limit| [loads.front, loads.rear][end] > *limit)
                .map(|limit| [loads.front, loads.rear][end] - limit)
        };
        let told = |phrase: &str, by: f64| self.filled_in(phrase, &[("by", &self.shown(by.ceil(), 3, "kg"))]);
        let ends = if self.trailer() { ["caution-nose", "caution-axle"] } else { ["caution-front", "caution-rear"] };
        let mut said: Vec<String> = [0, 1]
            .into_iter()
            .filter_map(|end| over(full, end).map(|by| told(&format!("{}-tank", ends[end]), by)))
            .collect();
        if said.is_empty() {
            said.extend(
                [0, 1]
                    .into_iter()
                    .filter_map(|end| over(all, end).map(|by| told(&format!("{}-luggage", ends[end]), by))),
            );
        }
        said.extend((self.trailer() && all.front < 0.0).then(|| self.say("caution-nose-light")));
        said.extend(
            load.maximum
                .filter(|maximum| full.sum() > *maximum)
                .map(|maximum| told("caution-maximum", full.sum() - maximum)),
        );
        said.join(" ")
    }
}

fn kg(text: &Option<At<String>>) -> Option<f64> {
    amount(text.as_ref()?, "kg")
}

fn mm(text: &Option<At<String>>) -> Option<f64> {
    amount(text.as_ref()?, "mm")
}

fn amount(text: &str, unit: &str) -> Option<f64> {
    Some(Quantity::parse(text).ok()?.to(Unit::find(unit)?)?.amount)
}
