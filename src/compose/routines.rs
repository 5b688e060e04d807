//! Routines: lists for an occasion, gathered from the fits and put in order.

use super::{Composer, order};
use crate::model::guide::{Page, PageBody, RoutinePage, Shown, Step};

impl<'a> Composer<'a, '_> {
    pub(super) fn routine_pages(&self) -> Vec<Page<'a>> {
        let names = self.routine_names();
        self.book.routines.iter().zip(names).map(|(routine, named)| self.routine_page(routine, named.title)).collect()
    }

    fn routine_page(&self, routine: &'a crate::model::book::Routine, title: String) -> Page<'a> {
        let text = routine.texts.get(self.language).or(routine.texts.values().next());
        // A circle among the needs stops publishing before anything is composed.
        let steps = order::order(self.book, self.van, &routine.name).unwrap_or_default();
        let body = RoutinePage {
            view: text.map(|text| self.standing_alone(text)),
            steps: steps.into_iter().map(|step| self.step(step)).collect(),
        };
        Page { address: format!("routine/{}", routine.name), title, body: PageBody::Routine(body) }
    }

    /// A routine stands alone, so a step brings along what the top of its part warns of and the step exposes to.
    fn step(&self, (fit, section): order::Step) -> Step<'a> {
        let facts = &self.book.modules[self.van.fits[fit].module].sections[section];
        let shown = Shown { fit, origin: facts.origin, section: self.book.section(facts, self.language).1 };
        let wiring = facts.wiring.as_ref();
        let exposes =
            |hazard: &str| wiring.is_some_and(|wiring| wiring.exposes.iter().any(|own| *own.value == *hazard));
        let notes = self.general_notes(fit).into_iter().filter(|warned| exposes(&warned.note.hazard.value)).collect();
        Step { notes, shown }
    }
}
