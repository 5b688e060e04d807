//! How long the leisure battery lasts, what its voltage says, how long it charges, and what its cables lose.

use super::found::Part;
use super::{Desk, from_to, of, worked_out};
use crate::figures::bands::{self, Charge};
use crate::figures::{self};
use crate::model::files::forms::Supply;
use crate::model::sums::{Axis, Line, Plot, Sum, SumGroup};

/// What batteries are counted with, in V.
const VOLTS: f64 = 12.0;

/// The loads, in A, that hours are worked out for.
const LOADS: [f64; 6] = [1.0, 2.0, 5.0, 10.0, 20.0, 40.0];

/// The leisure battery.
pub(super) struct Battery {
    capacity: f64,
    /// The share to use, in per cent.
    share: f64,
    /// What may be used, in Ah.
    pub(super) usable: f64,
    /// The least and the most that a day uses, in Ah: by the loads, and as the manifest says.
    pub(super) daily: [f64; 2],
    rated: f64,
    exponent: f64,
}

impl Desk<'_, '_, '_> {
    pub(super) fn battery_on_board(&self) -> Option<Battery> {
        let battery = self.found.provider("leisure-battery")?;
        let (capacity, share) = (battery.amount("capacity", "Ah")?, battery.amount("usable", "%")?);
        let loads = self.mean_power() * 24.0 / VOLTS;
        let said = battery.amount("daily-use", "Ah").unwrap_or(loads);
        Some(Battery {
            capacity,
            share,
            usable: worked_out("usable-capacity", &[capacity, share])?,
            daily: [loads.min(said), loads.max(said)],
            rated: battery.amount("rated-hours", "h").unwrap_or(20.0),
            exponent: battery.amount("exponent", "count")?,
        })
    }

    /// What all 12 V loads draw on the average of a typical day, in W.
    fn mean_power(&self) -> f64 {
        self.found.draws(Supply::TwelveVolt, "W", VOLTS).iter().map(|draw| draw.amount * draw.duty / 24.0).sum()
    }

    pub(super) fn battery(&self) -> Option<SumGroup> {
        let (battery, part) = (self.battery_on_board()?, self.found.provider("leisure-battery")?);
        let mut group = self.group(
            "battery",
            vec![
                self.energy(),
                self.battery_days(&battery),
                self.battery_hours(&battery),
                self.voltages(part),
                self.charging(&battery, part),
                self.cables(),
                self.inverter(),
            ],
        )?;
        group.plots.push(self.hours_plot(&battery));
        Some(group)
    }

    fn energy(&self) -> Option<Sum> {
        let row = |draw: super::found::Draw| {
            let charge = draw.amount * draw.duty / VOLTS;
            let title = draw.part.title.to_string();
            vec![title, self.shown(draw.amount, 3, "W"), self.shown(draw.duty, 2, "h"), self.shown(charge, 2, "Ah")]
        };
        let rows: Vec<_> = self.found.draws(Supply::TwelveVolt, "W", VOLTS).into_iter().map(row).collect();
        let table = self.table(&["col-part", "col-power", "col-hours-a-day", "col-a-day"], rows)?;
        let fed = [of(self.mean_power(), "W"), of(24.0, "h"), of(VOLTS, "V")];
        Some(Sum { table: Some(table), ..self.sum("battery-energy", "charge-used", &fed)? })
    }

    fn battery_days(&self, battery: &Battery) -> Option<Sum> {
        let [least, most] = battery.daily;
        let daily = from_to(if least > 0.0 { least } else { most }, most, "Ah");
        self.sum("battery-days", "battery-days", &[of(battery.capacity, "Ah"), of(battery.share, "%"), daily])
    }

    fn hours(&self, battery: &Battery, amps: f64) -> Option<[f64; 2]> {
        let all = worked_out("battery-hours", &[battery.capacity, battery.rated, amps, battery.exponent])?;
        Some([all * battery.share / 100.0, all])
    }

    fn battery_hours(&self, battery: &Battery) -> Option<Sum> {
        let row = |amps: &f64| {
            let [usable, all] = self.hours(battery, *amps)?;
            let power = self.shown(amps * VOLTS, 3, "W");
            Some(vec![self.shown(*amps, 3, "A"), power, self.shown(usable, 2, "h"), self.shown(all, 2, "h")])
        };
        let rows: Option<Vec<_>> = LOADS.iter().map(row).collect();
        let table = self.table(&["col-load", "col-power", "col-usable-hours", "col-all-hours"], rows?);
        let fed = [of(battery.capacity, "Ah"), of(battery.rated, "h"), of(10.0, "A"), of(battery.exponent, "count")];
        Some(Sum { table, ..self.sum("battery-hours", "battery-hours", &fed)? })
    }

    /// Bands of rested voltage: words, and no percentages.
    fn voltages(&self, part: Part) -> Option<Sum> {
        let bands = bands::of(part.fact("chemistry")?)?;
        let word = |charge| {
            self.say(match charge {
                Charge::High => "charge-high",
                Charge::Middle => "charge-middle",
                Charge::Low => "charge-low",
                Charge::Empty => "charge-empty",
            })
        };
        let row = |band: &bands::Band| {
            let volts = self.shown(if band.from > 0.0 { band.from } else { bands.bands[2].from }, 4, "V");
            let phrase = if band.from > 0.0 { "band-from" } else { "band-below" };
            vec![self.filled_in(phrase, &[("volts", &volts)]), word(band.charge)]
        };
        let frost = self.shown(bands::LITHIUM_CHARGES_FROM, 2, "°C");
        Some(Sum {
            id: "battery-volts",
            title: self.say("sum-battery-volts"),
            result: String::new(),
            caution: match bands.no_charge_in_frost {
                true => self.filled_in("caution-frost", &[("frost", &frost)]),
                false => String::new(),
            },
            table: self.table(&["col-rested", "col-means"], bands.bands.iter().map(row).collect()),
            inputs: vec![],
            working: vec![],
            limits: self.say(if bands.no_charge_in_frost { "limits-volts-flat" } else { "limits-volts" }),
            source: bands.source.to_string(),
        })
    }

    /// From as far down as the battery should go, with what a charger of its kind loses: from memory.
    fn charging(&self, battery: &Battery, part: Part) -> Option<Sum> {
        let charger = self.found.provider("battery-charger")?.amount("charge-current", "A")?;
        let [low, high] = if part.is("chemistry", "lithium") { [95.0, 98.0] } else { [80.0, 90.0] };
        self.sum(
            "battery-charge",
            "charge-time",
            &[of(battery.usable, "Ah"), of(charger, "A"), from_to(low, high, "%")],
        )
    }

    fn cables(&self) -> Option<Sum> {
        let rows: Vec<_> = self.found.parts().filter_map(|part| self.cable(part)).collect();
        let table = self.table(&["col-part", "col-cable", "col-loses", "col-fuse"], rows)?;
        let calculation = figures::find("cable-drop-most")?;
        Some(Sum { table: Some(table), ..self.plain("battery-cable", calculation) })
    }

    fn cable(&self, part: Part) -> Option<Vec<String>> {
        let (area, length) = (part.amount("cable", "mm2")?, part.amount("cable-length", "m")?);
        let own = self.found.draws(Supply::TwelveVolt, "A", VOLTS).into_iter();
        let most = own.filter(|draw| draw.part.title == part.title).map(|draw| draw.amount).fold(0.0, f64::max);
        let lost = worked_out("cable-drop-most", &[length, most, area])?;
        let share = self.shown(lost / VOLTS * 100.0, 2, "%");
        let fuse = part.amount("fuse", "A").map_or(String::new(), |fuse| self.shown(fuse, 3, "A"));
        let cable = format!("{}, {}", self.shown(area, 3, "mm2"), self.shown(length, 3, "m"));
        Some(vec![part.title.to_string(), cable, format!("{} ({share})", self.shown(lost, 2, "V")), fuse])
    }

    fn inverter(&self) -> Option<Sum> {
        let part = self.found.provider("inverter")?;
        let (power, efficiency) = (part.amount("rated-power", "W")?, part.amount("efficiency", "%").unwrap_or(90.0));
        self.sum("inverter", "inverter-current", &[of(power, "W"), of(VOLTS, "V"), of(efficiency, "%")])
    }

    fn hours_plot(&self, battery: &Battery) -> Plot {
        let most = 24.0;
        let line = |all: usize, label| {
            let point = |tenth: i32| {
                let amps = f64::from(tenth) / 10.0;
                let hours = self.hours(battery, amps)?[all];
                (hours <= most).then_some((amps, hours))
            };
            Line { label: self.say(label), points: (10..=400).step_by(5).filter_map(point).collect() }
        };
        let numbers = |all: &[f64]| all.iter().map(|at| (*at, self.number(*at))).collect();
        let ten = self.hours(battery, 10.0).map_or(String::new(), |hours| self.shown(hours[0], 2, "h"));
        Plot {
            id: "plot-hours",
            title: self.say("plot-hours"),
            about: self.filled_in("plot-hours-about", &[("hours", &ten)]),
            across: Axis {
                label: self.say("axis-load"),
                from: 0.0,
                to: 40.0,
                ticks: numbers(&[0.0, 10.0, 20.0, 30.0, 40.0]),
            },
            up: Axis {
                label: self.say("axis-hours"),
                from: 0.0,
                to: most,
                ticks: numbers(&[0.0, 6.0, 12.0, 18.0, 24.0]),
            },
            lines: vec![line(0, "line-usable"), line(1, "line-empty")],
            marks: vec![],
        }
    }
}
