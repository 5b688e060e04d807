//! The handover record: what was shown and handed over, for both sides to sign. It leaves room for names, and holds none.

use super::Teller;
use super::data::{Due, Fact, Named, Note, Shell, Topic};
use super::pieces::is_grave;
use crate::model::guide::{Guide, PageBody, PlacePage, ReadingEntry, Shown};
use crate::model::text::Role;
use serde::Serialize;
use std::collections::BTreeSet;

/// What the template of a handover record is given.
#[derive(Serialize)]
pub(super) struct Record<'a> {
    #[serde(flatten)]
    pub(super) shell: Shell<'a>,
    #[serde(flatten)]
    pub(super) said: Contents,
}

/// What a handover record says.
#[derive(Serialize)]
pub(super) struct Contents {
    /// Places in the order of the walk, each with what is shown there.
    stops: Vec<Stop>,
    /// What is shown at no place of its own, by part.
    elsewhere: Vec<Stop>,
    /// Safety notes to acknowledge: DANGER and WARNING.
    notes: Vec<Note>,
    /// What was measured.
    readings: Vec<Reading>,
    /// What falls due.
    dates: Vec<Due>,
    /// Keys and papers.
    things: Vec<String>,
}

/// Where something is shown.
#[derive(Serialize)]
struct Stop {
    code: String,
    name: String,
    note: String,
    signal: String,
    topics: Vec<Topic>,
}

/// What was measured on a part.
#[derive(Serialize)]
struct Reading {
    part: Named,
    #[serde(flatten)]
    fact: Fact,
}

/// The order in which the places are walked to: that of the manifest.
fn order(guide: &Guide) -> Vec<usize> {
    (0..guide.places.len()).collect()
}

/// Whether a section is something to show at the handover.
fn is_shown(shown: &&Shown) -> bool {
    matches!(shown.role(), Some(Role::Task | Role::Control | Role::Check))
}

impl<'a> Teller<'a> {
    pub(super) fn record(&self) -> Contents {
        let mut told = BTreeSet::new();
        let stops = order(self.guide).into_iter().filter_map(|place| self.stop(place, &mut told)).collect();
        Contents {
            stops,
            elsewhere: (0..self.guide.fits.len()).filter_map(|fit| self.elsewhere(fit, &mut told)).collect(),
            notes: self.grave_notes(),
            readings: (0..self.guide.fits.len()).flat_map(|fit| self.readings(fit)).collect(),
            dates: self.all_dates(),
            things: self.things(),
        }
    }

    fn place_page(&self, place: usize) -> Option<&PlacePage<'a>> {
        self.guide.pages.iter().find_map(|page| match &page.body {
            PageBody::Place(page) if page.place == place => Some(page),
            _ => None,
        })
    }

    /// A place and what is shown there; what was shown before is not shown again.
    fn stop(&self, place: usize, told: &mut BTreeSet<String>) -> Option<Stop> {
        let topics = self.untold(&self.place_page(place)?.sections, told);
        let entry = &self.guide.places[place];
        Some(Stop {
            code: entry.code.to_string(),
            name: entry.name.to_string(),
            note: entry.note.unwrap_or_default().to_string(),
            signal: entry.signal.map(|signal| signal.word().to_lowercase()).unwrap_or_default(),
            topics,
        })
    }

    fn elsewhere(&self, fit: usize, told: &mut BTreeSet<String>) -> Option<Stop> {
        let topics = self.untold(&self.fit_page(fit)?.sections, told);
        let name = self.guide.fits[fit].title.to_string();
        let (code, note, signal) = Default::default();
        (!topics.is_empty()).then_some(Stop { code, name, note, signal, topics })
    }

    fn untold(&self, sections: &[Shown], told: &mut BTreeSet<String>) -> Vec<Topic> {
        let topics = sections.iter().filter(is_shown).map(|shown| self.topic(shown));
        topics.filter(|topic| told.insert(topic.to.clone())).collect()
    }

    pub(super) fn grave_notes(&self) -> Vec<Note> {
        let pages = self.guide.pages.iter().filter_map(|page| match &page.body {
            PageBody::Warnings(groups) => Some(groups),
            _ => None,
        });
        let grave = pages.flatten().filter(|(signal, _)| is_grave(*signal));
        grave.flat_map(|(_, notes)| notes).filter_map(|warned| self.warned(warned)).collect()
    }

    fn readings(&self, fit: usize) -> Vec<Reading> {
        let readings = self.fit_page(fit).map_or(&[][..], |page| &page.readings);
        let reading = |reading: &ReadingEntry| Reading {
            part: self.part(fit),
            fact: Fact {
                title: reading.title.clone(),
                value: reading.value.clone(),
                how: self.phrases.day(reading.on),
            },
        };
        readings.iter().map(reading).collect()
    }

    fn all_dates(&self) -> Vec<Due> {
        let pages = self.guide.pages.iter().filter_map(|page| match &page.body {
            PageBody::Dates(dates) => Some(dates),
            _ => None,
        });
        pages.flatten().map(|date| self.due(date)).collect()
    }

    /// Keys and papers, as the theme lists them.
    fn things(&self) -> Vec<String> {
        let things = self.phrases.plain.iter().filter(|(id, _)| id.starts_with("record-thing-"));
        things.map(|(_, words)| words.clone()).collect()
    }
}
