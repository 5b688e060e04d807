//! How long the gas lasts, in what cold, and whether regulator and cylinder give what the burners ask for.

use super::found::Part;
use super::{Desk, from_to, of, word, worked_out};
use crate::figures;
use crate::model::files::forms::Supply;
use crate::model::sums::{Axis, Line, Plot, Sum, SumGroup};

/// Gas on board.
pub(super) struct Gas {
    /// `propane` or `butane`.
    pub(super) kind: String,
    /// What a full cylinder or tank holds, in kg.
    pub(super) full: f64,
    /// The least pressure that the regulator needs above the air, in mbar.
    pub(super) needs: f64,
    /// What all burners use at once, in g/h.
    pub(super) all: f64,
    /// What a day uses without and with the heating, in g.
    pub(super) daily: [f64; 2],
}

/// The mixture of a gas by its name.
pub(super) fn shares(gas: &str) -> Option<[f64; 3]> {
    match gas {
        "propane" => Some([100.0, 0.0, 0.0]),
        "butane" => Some([0.0, 100.0, 0.0]),
        _ => None,
    }
}

impl Desk<'_, '_, '_> {
    pub(super) fn gas_on_board(&self) -> Option<Gas> {
        let supply = self.found.provider("lpg-supply")?;
        let full = supply.amount("cylinder-mass", "kg").or_else(|| supply.amount("full-mass", "kg"))?;
        let draws = self.found.draws(Supply::Lpg, "g/h", 1.0);
        let day = |with_heating: bool| {
            let counted = draws.iter().filter(|draw| with_heating || !draw.part.provides("space-heating"));
            counted.map(|draw| draw.amount * draw.duty).sum::<f64>()
        };
        Some(Gas {
            kind: supply.fit.choice("gas")?.to_string(),
            full,
            needs: self.found.provider("lpg-regulator")?.amount("inlet-minimum", "mbar")?,
            all: draws.iter().map(|draw| draw.amount).sum(),
            daily: [day(false), day(true)],
        })
    }

    pub(super) fn gas(&self) -> Option<SumGroup> {
        let (gas, supply) = (self.gas_on_board()?, self.found.provider("lpg-supply")?);
        let sums = vec![
            self.gas_lasts(&gas),
            self.regulator(&gas),
            self.drawn(&gas, supply),
            self.cold(&gas),
            self.filled(&gas, supply),
            self.brimmed(&gas, supply),
        ];
        let mut group = self.group("gas", sums)?;
        group.plots.extend(self.pressure_plot(&gas));
        Some(group)
    }

    /// Days of a cylinder: the burners of a day as one power that burns day and night.
    fn gas_lasts(&self, gas: &Gas) -> Option<Sum> {
        let kind = if gas.kind == "butane" { 1.0 } else { 0.0 };
        let heat = worked_out("gas-hours", &[1.0, kind, 1.0])?;
        let [low, high] = gas.daily.map(|grams| grams / 1000.0 * heat / 24.0);
        let least = if low > 0.0 { low } else { high };
        let fed = [of(gas.full, "kg"), word(&gas.kind), from_to(least, high, "kW"), of(24.0, "h")];
        let rows = self.found.draws(Supply::Lpg, "g/h", 1.0).into_iter().map(|draw| {
            let title = draw.part.title.to_string();
            let day = self.shown(draw.amount * draw.duty, 2, "g");
            let alone = self.shown(gas.full * 1000.0 / draw.amount.max(1e-9), 2, "h");
            vec![title, self.shown(draw.amount, 3, "g/h"), self.shown(draw.duty, 3, "h"), day, alone]
        });
        let table =
            self.table(&["col-burner", "col-full-power", "col-hours-a-day", "col-a-day", "col-alone"], rows.collect());
        let sum = self.sum("gas-days", "gas-days", &fed)?;
        let days = |grams: f64| {
            Some(self.shown(worked_out("gas-days", &[gas.full, kind, grams / 1000.0 * heat, 1.0])?, 2, "days"))
        };
        let result = match gas.daily[0] > 0.0 && gas.daily[0] < gas.daily[1] {
            true => {
                self.filled_in("gas-days-both", &[("without", &days(gas.daily[0])?), ("with", &days(gas.daily[1])?)])
            }
            false => sum.result.clone(),
        };
        Some(Sum { table, result, ..sum })
    }

    fn regulator(&self, gas: &Gas) -> Option<Sum> {
        let rating = self.found.provider("lpg-regulator")?.amount("rated-flow", "g/h")?;
        let sum = self.sum("gas-regulator", "load-share", &[of(gas.all, "g/h"), of(rating, "g/h")])?;
        let caution = if gas.all > rating { self.say("caution-regulator") } else { String::new() };
        Some(Sum { caution, ..sum })
    }

    /// What a cylinder gives by how long it is asked, beside what all burners ask for.
    fn drawn(&self, gas: &Gas, supply: Part) -> Option<Sum> {
        let cylinder = supply.amount("cylinder-mass", "kg")?;
        let limit = |kind: f64| worked_out("draw-limit", &[cylinder, kind]);
        let uses = ["long", "periodic", "short"].into_iter().zip([0.0, 1.0, 2.0]);
        let row = |(name, kind)| {
            let limit = limit(kind)? * 1000.0;
            let fits = self.say(if gas.all > limit { "word-too-much" } else { "word-enough" });
            Some(vec![
                self.say(&format!("word-{name}")),
                self.shown(limit, 2, "g/h"),
                self.shown(gas.all, 3, "g/h"),
                fits,
            ])
        };
        let rows: Option<Vec<_>> = uses.map(row).collect();
        let table = self.table(&["col-use", "col-gives", "col-all-burners", "col-is-it"], rows?);
        Some(Sum { table, ..self.sum("gas-draw", "draw-limit", &[of(cylinder, "kg"), word("long")])? })
    }

    fn cold(&self, gas: &Gas) -> Option<Sum> {
        let [propane, butane, isobutane] = shares(&gas.kind)?;
        let fed = [of(gas.needs, "mbar"), of(propane, "%"), of(butane, "%"), of(isobutane, "%")];
        let sum = self.sum("gas-cold", "coldest-air", &fed)?;
        let caution = if gas.kind == "butane" { self.say("caution-butane") } else { String::new() };
        Some(Sum { caution, ..sum })
    }

    fn filled(&self, gas: &Gas, supply: Part) -> Option<Sum> {
        let volume = supply.amount("tank-volume", "l")?;
        self.sum("gas-fill", "gas-mass", &[of(volume, "l"), of(80.0, "%"), word(&gas.kind), of(15.0, "°C")])
    }

    fn brimmed(&self, gas: &Gas, supply: Part) -> Option<Sum> {
        supply.amount("tank-volume", "l")?;
        self.sum("gas-brim", "liquid-full", &[of(80.0, "%"), word(&gas.kind)])
    }

    /// Pressure over temperature, with the temperature below which this van's regulator has too little.
    fn pressure_plot(&self, gas: &Gas) -> Option<Plot> {
        let [propane, butane, isobutane] = shares(&gas.kind)?;
        let limit = worked_out("coldest-air", &[gas.needs, propane, butane, isobutane])?;
        let line = |name: &str| {
            let [propane, butane, isobutane] = shares(name)?;
            let above = |celsius: f64| {
                let bar = worked_out("vapour-pressure", &[celsius, propane, butane, isobutane])? - figures::AIR;
                (0.0..=10.0).contains(&bar).then_some((celsius, bar))
            };
            let points = (-80..=80).filter_map(|half| above(f64::from(half) / 2.0)).collect();
            Some(Line { label: self.say(&format!("word-{name}")), points })
        };
        let limit_words = self.shown(limit, 2, "°C");
        let numbers = |all: &[f64]| all.iter().map(|at| (*at, self.number(*at))).collect();
        Some(Plot {
            id: "plot-pressure",
            title: self.say("plot-pressure"),
            about: self.filled_in(
                "plot-pressure-about",
                &[("gas", &self.say(&format!("word-{}", gas.kind))), ("limit", &limit_words)],
            ),
            across: Axis {
                label: self.say("axis-outside"),
                from: -40.0,
                to: 40.0,
                ticks: numbers(&[-40.0, -20.0, 0.0, 20.0, 40.0]),
            },
            up: Axis {
                label: self.say("axis-pressure"),
                from: 0.0,
                to: 10.0,
                ticks: numbers(&[0.0, 2.0, 4.0, 6.0, 8.0, 10.0]),
            },
            lines: ["propane", "butane"].into_iter().filter_map(line).collect(),
            marks: vec![(limit, self.filled_in("mark-limit", &[("limit", &limit_words)]))],
        })
    }
}
