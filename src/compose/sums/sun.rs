//! What the solar panel gives, by month and latitude.

use super::{Desk, from_to, of, word, worked_out};
use crate::figures::sun::MONTHS;
use crate::model::sums::{Axis, Line, Plot, Sum, SumGroup};

/// Degrees north: from the south of Spain to the south of Norway.
const LATITUDES: [f64; 4] = [37.0, 45.0, 53.0, 60.0];

/// How much of a clear sky's sunlight reaches the battery as charge, in per cent, in dull and in fair weather: clouds,
/// a flat panel that is warm and not clean, and a controller. Common practice, from memory, not confirmed.
const PERFORMANCE: [f64; 2] = [25.0, 60.0];

/// Volts of a battery while it is charged, roughly.
const VOLTS: f64 = 13.0;

impl Desk<'_, '_, '_> {
    pub(super) fn sun(&self) -> Option<SumGroup> {
        let power = self.found.provider("solar")?.amount("panel-power", "W")?;
        let mut group = self.group("sun", vec![self.solar(power)])?;
        group.plots.push(self.solar_plot(power));
        Some(group)
    }

    /// What a day gives, in Ah, at a share of what a clear sky would.
    fn solar_day(&self, latitude: f64, month: usize, power: f64, performance: f64) -> f64 {
        worked_out("solar-day", &[latitude, month as f64, power, performance]).unwrap_or_default() / VOLTS
    }

    fn solar(&self, power: f64) -> Option<Sum> {
        let [dull, fair] = PERFORMANCE;
        let row = |month: usize| {
            let cell = |latitude: &f64| {
                let ends =
                    [dull, fair].map(|share| self.number(self.solar_day(*latitude, month, power, share).round()));
                format!("{}–{}", ends[0], ends[1])
            };
            let name = self.say(&format!("month-{}", month + 1));
            [name].into_iter().chain(LATITUDES.iter().map(cell)).collect::<Vec<_>>()
        };
        let latitudes = LATITUDES.map(|latitude| self.filled_in("north", &[("degrees", &self.number(latitude))]));
        let mut table = self.table(&["col-month"], (0..12).map(row).collect())?;
        table.head.extend(latitudes);
        let fed = [of(LATITUDES[2], "count"), word("june"), of(power, "W"), from_to(dull, fair, "%")];
        Some(Sum { table: Some(table), ..self.sum("solar-day", "solar-day", &fed)? })
    }

    fn solar_plot(&self, power: f64) -> Plot {
        let fair = PERFORMANCE[1];
        let line = |latitude: f64| Line {
            label: self.filled_in("north", &[("degrees", &self.number(latitude))]),
            points: (0..12).map(|month| (month as f64 + 1.0, self.solar_day(latitude, month, power, fair))).collect(),
        };
        let lines: Vec<_> = [LATITUDES[0], LATITUDES[2], LATITUDES[3]].into_iter().map(line).collect();
        let most = lines.iter().flat_map(|line| &line.points).map(|(_, charge)| *charge).fold(10.0, f64::max);
        let step = (most / 40.0).ceil() * 10.0;
        let ticks = (0..=4).map(|tick| f64::from(tick) * step).map(|at| (at, self.number(at))).collect();
        let initial = |month: usize| self.say(&format!("month-{month}")).chars().take(1).collect::<String>();
        let best = MONTHS.len() / 2;
        let june = self.shown(self.solar_day(LATITUDES[2], best - 1, power, fair), 2, "Ah");
        let december = self.shown(self.solar_day(LATITUDES[2], 11, power, fair), 2, "Ah");
        Plot {
            id: "plot-solar",
            title: self.say("plot-solar"),
            about: self.filled_in("plot-solar-about", &[("june", &june), ("december", &december)]),
            across: Axis {
                label: self.say("axis-month"),
                from: 1.0,
                to: 12.0,
                ticks: (1..=12).map(|month| (month as f64, initial(month))).collect(),
            },
            up: Axis { label: self.say("axis-charge"), from: 0.0, to: 4.0 * step, ticks },
            lines,
            marks: vec![],
        }
    }
}
