//! What each appliance draws from the hook-up, what runs together on a pitch, and what to switch off first.

use super::Desk;
use super::found::Draw;
use crate::figures::{self, together};
use crate::model::files::forms::Supply;
use crate::model::sums::{Sum, SumGroup};

/// The voltage that appliances are marked for.
const VOLTS: f64 = 230.0;

/// What pitches supply, in A: common practice.
const PITCHES: [f64; 3] = [6.0, 10.0, 16.0];

/// More sets than this help nobody on one page.
const SHOWN: usize = 6;

impl Desk<'_, '_, '_> {
    pub(super) fn on_mains(&self) -> Vec<Draw<'_, '_>> {
        self.found.draws(Supply::Mains, "W", VOLTS)
    }

    pub(super) fn mains(&self) -> Option<SumGroup> {
        self.found.provider("mains-supply")?;
        self.group("mains", vec![self.currents(), self.together()])
    }

    fn currents(&self) -> Option<Sum> {
        let calculation = figures::find("element-current")?;
        let (low, high) = calculation.swing?;
        let row = |draw: Draw| {
            let amps = draw.amount / VOLTS;
            let heats = draw.part.fit.figures.values().any(|figure| figure.calculation.swing.is_some());
            let band = match heats {
                true => self.span(amps * low, amps * high, "A"),
                false => String::new(),
            };
            vec![draw.part.title.to_string(), self.shown(draw.amount, 4, "W"), self.shown(amps, 3, "A"), band]
        };
        let rows: Vec<_> = self.on_mains().into_iter().map(row).collect();
        let table = self.table(&["col-part", "col-power", "col-amps", "col-band"], rows)?;
        Some(Sum { table: Some(table), ..self.plain("mains-current", calculation) })
    }

    fn together(&self) -> Option<Sum> {
        let draws = self.on_mains();
        let amps: Vec<f64> = draws.iter().map(|draw| draw.amount / VOLTS).collect();
        let names = |numbers: &[usize]| {
            let names: Vec<_> = numbers.iter().map(|number| draws[*number].part.title).collect();
            names.join(" + ")
        };
        let row = |supply: &f64| {
            let sets = together::largest_sets(&amps, *supply);
            let told = sets
                .iter()
                .take(SHOWN)
                .map(|set| format!("{} ({})", names(set), self.shown(together::draw(&amps, set), 2, "A")));
            let mut told: Vec<_> = told.collect();
            told.extend((amps.len() > together::MOST).then(|| self.say("word-too-many")));
            let off = together::switch_off(&amps, *supply);
            let off = if off.is_empty() { self.say("word-nothing") } else { names(&off) };
            vec![self.shown(*supply, 3, "A"), told.join("; "), off]
        };
        let rows: Vec<_> = if amps.is_empty() { vec![] } else { PITCHES.iter().map(row).collect() };
        let table = self.table(&["col-pitch", "col-together", "col-off-first"], rows)?;
        Some(Sum {
            table: Some(table),
            working: vec![self.say("working-together")],
            limits: self.say("limits-together"),
            source: self.say("source-together"),
            ..self.plain("mains-together", figures::find("current")?)
        })
    }
}
