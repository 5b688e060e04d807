//! Everything about one fit, and about the fits of one system.

use super::{Composer, show};
use crate::model::expected::Expected;
use crate::model::files::forms::System;
use crate::model::guide::{FitPage, FitSummary, Guide, Page, PageBody, ReadingEntry, Shown};
use crate::model::text::Role;

impl<'a> Composer<'a, '_> {
    pub(super) fn fit_page(&self, guide: &Guide<'a>, fit: usize) -> Page<'a> {
        let entry = &guide.fits[fit];
        let body = FitPage {
            fit,
            sections: self.shown(fit).map(|(_, shown)| shown).collect(),
            places: self.places_of(fit),
            facts: self.facts_of(fit),
            figures: self.figures_of(fit),
            readings: self.readings_of(fit),
            dates: self.dates(fit),
            tips: self.van.tips.iter().filter(|tip| tip.fit == Some(fit)).map(|tip| tip.says.as_str()).collect(),
            photos: self.photos(|photo| photo.fit == Some(fit)),
            sources: self.book.modules[entry.module]
                .facts
                .source
                .iter()
                .map(|source| (source.says.value.as_str(), source.is.as_str(), source.from))
                .collect(),
        };
        Page { address: format!("part/{}", entry.name), title: entry.title.to_string(), body: PageBody::Fit(body) }
    }

    pub(super) fn system_page(&self, system: System) -> Page<'a> {
        let fits =
            (0..self.van.fits.len()).filter(|fit| self.book.modules[self.van.fits[*fit].module].system == Some(system));
        let with = |fit, role| {
            self.shown(fit).map(|(_, shown)| shown).filter(|shown| shown.role() == Some(role)).collect::<Vec<Shown>>()
        };
        let summaries =
            fits.map(|fit| FitSummary { fit, tasks: with(fit, Role::Task), faults: with(fit, Role::Fault) }).collect();
        let title = self.phrases.get(&format!("system-{}", system.word()));
        Page { address: format!("system/{}", system.word()), title, body: PageBody::System(system, summaries) }
    }

    fn places_of(&self, fit: usize) -> Vec<(&'a str, Vec<usize>)> {
        let fitted = &self.van.fits[fit];
        let roles = self.book.modules[fitted.module].facts.places.iter();
        roles
            .filter_map(|(role, facts)| {
                Some((facts.title.text(self.language), fitted.places.get(&role.value)?.clone()))
            })
            .collect()
    }

    fn facts_of(&self, fit: usize) -> Vec<(String, String)> {
        let fitted = &self.van.fits[fit];
        let values = self.book.modules[fitted.module].facts.values.iter();
        values
            .filter_map(|(name, facts)| {
                let value = fitted.values.get(&name.value)?;
                Some((
                    facts.title.text(self.language).to_string(),
                    show::value(value, Some(facts), self.language, self.phrases),
                ))
            })
            .collect()
    }

    fn figures_of(&self, fit: usize) -> Vec<(String, String, &'static str)> {
        let fitted = &self.van.fits[fit];
        let figures = self.book.modules[fitted.module].facts.figures.iter();
        figures
            .filter_map(|(name, facts)| {
                let figure = fitted.figures.get(&name.value)?;
                Some((
                    facts.title.text(self.language).to_string(),
                    show::figure(figure, self.phrases),
                    figure.calculation.formula,
                ))
            })
            .collect()
    }

    fn readings_of(&self, fit: usize) -> Vec<ReadingEntry> {
        let fitted = &self.van.fits[fit];
        let facts = &self.book.modules[fitted.module].facts.reading;
        let readings = self.van.readings.iter().filter(|reading| reading.fit == fit);
        readings
            .filter_map(|reading| {
                let facts = facts.get(&reading.name)?;
                let expected = Expected::of(fitted, facts);
                Some(ReadingEntry {
                    title: facts.title.text(self.language).to_string(),
                    value: show::quantity(&reading.value, self.phrases),
                    on: reading.on,
                    expected: expected
                        .map(|expected| (show::expected(&expected, self.phrases), expected.standing(reading.value))),
                })
            })
            .collect()
    }
}
