//! What documents are put together from: sections, notes, places, dates.

use super::data::{Block, Due, Fact, Group, Named, Note, Place, Section, Topic};
use super::words::Reading;
use super::{Teller, anchor};
use crate::label::{Spot, address};
use crate::model::files::forms::Signal;
use crate::model::files::module::Origin;
use crate::model::guide::{DateEntry, FitPage, PageBody, PlacePage, Shown, View, Warned};
use crate::model::text::{Role, words};

/// Roles in the order in which a part tells of them, each with the words over it.
const GROUPS: [(Option<Role>, &str); 6] = [
    (None, "group-about"),
    (Some(Role::Control), "group-controls"),
    (Some(Role::Task), "group-tasks"),
    (Some(Role::Check), "group-checks"),
    (Some(Role::Fault), "group-faults"),
    (Some(Role::Care), "group-care"),
];

impl<'a> Teller<'a> {
    /// A text of a part as it reads here.
    pub(super) fn reading(&self, fit: usize, origin: usize) -> Option<Reading<'_>> {
        let view = self.guide.views.get(&(fit, origin))?;
        Some(Reading { teller: self, view, fit: Some(fit), unsure: self.unsure(fit) })
    }

    /// A text that belongs to no part.
    pub(super) fn alone(&'a self, view: &'a View<'a>) -> Reading<'a> {
        Reading { teller: self, view, fit: None, unsure: vec![] }
    }

    /// Numbers of a part that are known from memory alone.
    fn unsure(&self, fit: usize) -> Vec<&str> {
        let sources = self.fit_page(fit).filter(|_| self.codes.is_some()).map_or(&[][..], |page| &page.sources);
        sources.iter().filter(|(_, _, from)| *from == Origin::Memory).map(|(says, _, _)| *says).collect()
    }

    pub(super) fn fit_page(&self, fit: usize) -> Option<&FitPage<'a>> {
        self.guide.pages.iter().find_map(|page| match &page.body {
            PageBody::Fit(page) if page.fit == fit => Some(page),
            _ => None,
        })
    }

    pub(super) fn part(&self, fit: usize) -> Named {
        Named { title: self.guide.fits[fit].title.to_string(), to: anchor::fit(self.guide, fit) }
    }

    pub(super) fn section(&self, shown: &Shown) -> Section {
        let reading = self.reading(shown.fit, shown.origin);
        let reading = reading.as_ref();
        Section {
            title: reading.map(|reading| reading.inlines(&shown.section.title)).unwrap_or_default(),
            name: words(&shown.section.title),
            to: self.known(anchor::section(self.guide, shown.fit, &shown.section.id.value)),
            blocks: reading.map(|reading| reading.blocks(&shown.section.blocks)).unwrap_or_default(),
            part: self.part(shown.fit),
        }
    }

    /// Sections by what they are, in an order that holds for every part.
    pub(super) fn groups(&self, sections: &[Shown]) -> Vec<Group> {
        let of = |role: Option<Role>| {
            sections.iter().filter(|shown| shown.role() == role).map(|shown| self.section(shown)).collect()
        };
        let group = |(role, title): (Option<Role>, &str)| Group {
            title: self.phrases.get(title),
            role: role.map_or("", Role::word),
            sections: of(role),
        };
        GROUPS.into_iter().map(group).filter(|group| !group.sections.is_empty()).collect()
    }

    pub(super) fn warned(&self, warned: &Warned) -> Option<Note> {
        Some(self.reading(warned.fit, warned.origin)?.note(warned.note, warned.section))
    }

    pub(super) fn warned_blocks(&self, notes: &[Warned]) -> Vec<Block> {
        notes.iter().filter_map(|warned| self.warned(warned)).map(|note| Block::Note { note: Box::new(note) }).collect()
    }

    pub(super) fn due(&self, date: &DateEntry) -> Due {
        Due {
            title: date.title.to_string(),
            part: self.part(date.fit),
            action: self.phrases.get(&format!("action-{}", date.action.word())),
            every: date.every.clone(),
            last: date.last.map(|day| self.phrases.day(day)).unwrap_or_default(),
            due: date.due.map(|day| self.phrases.day(day)).unwrap_or_default(),
            note: date.note.unwrap_or_default().to_string(),
            source: date.source.to_string(),
        }
    }

    pub(super) fn facts(facts: &[(String, String)]) -> Vec<Fact> {
        facts
            .iter()
            .map(|(title, value)| Fact { title: title.clone(), value: value.clone(), how: String::new() })
            .collect()
    }

    pub(super) fn place(&self, place: &PlacePage) -> Place {
        let entry = &self.guide.places[place.place];
        let identity = &self.guide.identity;
        let code = address::address(identity.address, identity.key, entry.code);
        let spot = Spot { kind: entry.kind, side: entry.side };
        Place {
            code: entry.code.to_string(),
            to: anchor::place(self.guide, place.place),
            name: entry.name.to_string(),
            note: entry.note.unwrap_or_default().to_string(),
            kind: self.phrases.get(&format!("kind-{}", entry.kind.word())),
            side: self.phrases.get(&format!("side-{}", entry.side.word())),
            signal: entry.signal.map(|signal| signal.word().to_lowercase()).unwrap_or_default(),
            word: entry.signal.map(|signal| self.signal(signal)).unwrap_or_default(),
            picture: if entry.labelled { self.code(&code, spot) } else { String::new() },
            address: address::typed(identity.address, identity.key, entry.code),
            parts: place.fits.iter().map(|(fit, _)| self.part(*fit)).collect(),
            topics: place.sections.iter().map(|shown| self.topic(shown)).collect(),
            tips: place.tips.iter().map(ToString::to_string).collect(),
            dates: place.dates.iter().map(|date| self.due(date)).collect(),
        }
    }

    pub(super) fn topic(&self, shown: &Shown) -> Topic {
        Topic {
            title: words(&shown.section.title),
            part: self.guide.fits[shown.fit].title.to_string(),
            to: self.known(anchor::section(self.guide, shown.fit, &shown.section.id.value)),
            role: shown.role().map_or("", Role::word),
        }
    }
}

/// Whether a note is one to acknowledge, and to see on a label before opening: WARNING or DANGER.
pub(super) fn is_grave(signal: Signal) -> bool {
    signal >= Signal::Warning
}
