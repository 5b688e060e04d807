//! How long the water lasts, what it weighs, how to disinfect the tank, and how long water takes to heat.

use super::found::Part;
use super::{Desk, from_to, of, worked_out};
use crate::model::files::forms::Supply;
use crate::model::sums::{Sum, SumGroup};

/// What one person uses in a day, in l, without and with short showers: common practice, from memory, not confirmed.
pub(super) const EACH: [f64; 2] = [8.0, 20.0];

/// The strength that disinfects a tank, in mg/l, as US motorhome makers' manuals print it, for four hours.
const TARGET: f64 = 50.0;

/// Available chlorine of household bleach, in per cent.
const BOTTLES: [f64; 3] = [5.0, 4.0, 2.5];

/// Cold and hot, in °C.
const COLD: f64 = 15.0;
const HOT: f64 = 60.0;

impl Desk<'_, '_, '_> {
    pub(super) fn water(&self) -> Option<SumGroup> {
        let tank = self.found.provider("fresh-water").and_then(|part| part.amount("capacity", "l"));
        let of_tank = |sum: &dyn Fn(f64) -> Option<Sum>| tank.and_then(sum);
        let heater = self.found.provider("hot-water");
        let sums = vec![
            of_tank(&|tank| self.water_days(tank)),
            of_tank(&|tank| self.sum("water-mass", "water-mass", &[of(tank, "l")])),
            of_tank(&|tank| self.dose(tank)),
            heater.and_then(|part| self.heating(part)),
            heater.and_then(|part| self.growth(part)),
        ];
        self.group("water", sums)
    }

    fn water_days(&self, tank: f64) -> Option<Sum> {
        let days = |people: usize| {
            let ends = EACH.map(|each| worked_out("water-days", &[tank, each, people as f64]));
            Some(vec![self.number(people as f64), self.span(ends[1]?, ends[0]?, "days")])
        };
        let rows: Option<Vec<_>> = (1..=self.most_people().max(1)).map(days).collect();
        let table = self.table(&["col-people", "col-lasts"], rows?);
        let people = of(self.most_people().clamp(1, 2) as f64, "count");
        let sum = self.sum("water-days", "water-days", &[of(tank, "l"), from_to(EACH[0], EACH[1], "l/day"), people])?;
        Some(Sum { table, source: self.say("source-each-uses"), ..sum })
    }

    fn dose(&self, tank: f64) -> Option<Sum> {
        let row = |percent: &f64| {
            let dose = worked_out("bleach-dose", &[tank, TARGET, *percent])?;
            Some(vec![self.shown(*percent, 3, "%"), self.shown(dose, 2, "ml")])
        };
        let rows: Option<Vec<_>> = BOTTLES.iter().map(row).collect();
        let table = self.table(&["col-bottle", "col-dose"], rows?);
        let sum = self.sum("water-dose", "bleach-dose", &[of(tank, "l"), of(TARGET, "mg/l"), of(BOTTLES[0], "%")])?;
        Some(Sum { table, caution: self.say("caution-bleach"), ..sum })
    }

    /// On gas, on mains and on both, as far as the heater has them.
    fn heating(&self, part: Part) -> Option<Sum> {
        let volume = part.amount("tank-volume", "l")?;
        let gas = part.amount("water-power", "kW").filter(|_| part.is("burns", "lpg"));
        let draws = self.found.draws(Supply::Mains, "W", 230.0);
        let mains = draws.iter().find(|draw| draw.part.title == part.title).map(|draw| draw.amount / 1000.0);
        let time = |power: f64| worked_out("heat-up-time", &[volume, COLD, HOT, power]);
        let both = gas.zip(mains).map(|(gas, mains)| gas + mains);
        let named = [("word-on-gas", gas), ("word-on-mains", mains), ("word-on-both", both)];
        let row = |(name, power): (&str, Option<f64>)| {
            let (power, minutes) = (power?, time(power?)?);
            Some(vec![self.say(name), self.shown(power, 3, "kW"), self.shown(minutes, 2, "min")])
        };
        let table = self.table(&["col-on", "col-power", "col-time"], named.into_iter().filter_map(row).collect());
        let power = gas.or(mains)?;
        let sum =
            self.sum("water-heat", "heat-up-time", &[of(volume, "l"), of(COLD, "°C"), of(HOT, "°C"), of(power, "kW")])?;
        Some(Sum { table, caution: self.say("caution-scald"), ..sum })
    }

    fn growth(&self, part: Part) -> Option<Sum> {
        let volume = part.amount("tank-volume", "l")?;
        self.sum("water-growth", "water-growth", &[of(volume, "l"), of(COLD, "°C"), of(HOT, "°C")])
    }
}
