//! What falls due: of one fit, and of the whole van.

use super::{Composer, show};
use crate::model::files::module::Life;
use crate::model::guide::{DateEntry, Shown};
use crate::model::quantity::Quantity;
use crate::model::van::Due;
use jiff::civil::Date;

impl<'a> Composer<'a, '_> {
    /// All dates: what falls due first comes first, and what is not known comes last, renewals before checks.
    pub(super) fn all_dates(&self) -> Vec<DateEntry<'a>> {
        let mut dates: Vec<_> = (0..self.van.fits.len()).flat_map(|fit| self.dates(fit)).collect();
        dates.sort_by_key(|date| (date.due.is_none(), date.due, date.due.is_none().then_some(date.action)));
        dates
    }

    pub(super) fn dates(&self, fit: usize) -> Vec<DateEntry<'a>> {
        let fitted = &self.van.fits[fit];
        let lives = &self.book.modules[fitted.module].facts.life;
        fitted.dates.iter().filter_map(|due| Some(self.date(fit, due, lives.get(&due.life)?))).collect()
    }

    fn date(&self, fit: usize, due: &'a Due, facts: &'a Life) -> DateEntry<'a> {
        let interval = Quantity::parse(&facts.every).ok();
        let section = self.section_of(fit, facts);
        DateEntry {
            fit,
            life: &due.life,
            title: facts.title.text(self.language),
            section: section.map(|(_, shown)| shown),
            places: self.places_for(fit, section.map(|(number, _)| number)),
            action: facts.action,
            every: interval.map(|every| show::quantity(&every, self.phrases)).unwrap_or_default(),
            interval,
            last: due.renewed,
            made: due.made,
            until: due.until,
            recorded: due.renewed.or_else(|| self.newest_record()),
            due: due.due,
            note: due.note.as_deref(),
            look: facts.look.as_ref().map(|look| look.text(self.language)),
            source: &facts.source,
        }
    }

    /// The first of the sections of a life that shows in this van, with its number.
    fn section_of(&self, fit: usize, facts: &Life) -> Option<(usize, Shown<'a>)> {
        let named = |id: &str| self.shown(fit).find(|(_, shown)| shown.section.id.value == id);
        facts.section.iter().find_map(|section| named(&section.value.0))
    }

    /// The places of a section, or else all of the fit.
    fn places_for(&self, fit: usize, section: Option<usize>) -> Vec<usize> {
        let fitted = &self.van.fits[fit];
        let wiring = section.and_then(|section| self.book.modules[fitted.module].sections[section].wiring.as_ref());
        let roles = wiring.map(|wiring| wiring.at.iter().map(|role| role.value.0.as_str()).collect::<Vec<_>>());
        let roles = roles.filter(|roles| !roles.is_empty());
        let asked = |role: &str| roles.as_ref().is_none_or(|roles| roles.contains(&role));
        let of_roles =
            fitted.places.iter().filter(|(role, _)| asked(role)).flat_map(|(_, places)| places.iter().copied());
        let mut places: Vec<_> = of_roles.collect();
        places.sort_unstable();
        places.dedup();
        places
    }

    /// The newest day on which anything of this van was recorded.
    fn newest_record(&self) -> Option<Date> {
        let renewed = self.van.fits.iter().flat_map(|fit| fit.dates.iter().filter_map(|date| date.renewed));
        renewed.chain(self.van.readings.iter().map(|reading| reading.on)).max()
    }
}
