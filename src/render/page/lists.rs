//! Pages that list things over the whole van.

use super::around::{TextAround, gravest, rendered, signal_word};
use super::{Stand, c};
use crate::model::files::forms::{Signal, System};
use crate::model::files::vehicle::Side;
use crate::model::guide::{PageBody, Routined, Shown, View, Warned, WordEntry};
use crate::render::{html, search};
use std::collections::BTreeSet;

impl Stand<'_> {
    pub(super) fn places(&self) -> c::Places {
        let all: Vec<_> = (0..self.guide.places.len()).map(|place| self.place_link(place)).collect();
        let side = |side: &Side| {
            let places: Vec<_> = all.iter().filter(|place| place.side == side.word()).cloned().collect();
            (!places.is_empty())
                .then(|| c::SidePlaces { title: self.phrases.get(&format!("side-{}", side.word())), places })
        };
        c::Places {
            plan_html: self.drawings.above(&self.way.up(), None),
            sides_html: self.drawings.sides(self.guide, &self.way.up(), None),
            sides: Side::ALL.iter().filter_map(side).collect(),
        }
    }

    pub(super) fn listed(&self, systems: &[(System, Vec<Shown>)]) -> c::Listed {
        let item = |shown: &Shown| c::ListedItem {
            title_html: self.title(shown),
            href: self.section_href(shown),
            part: self.guide.fits[shown.fit].title.to_string(),
            signal: signal_word(gravest(&shown.section.blocks)),
        };
        let system = |(system, sections): &(System, Vec<Shown>)| c::ListedSystem {
            id: system.word(),
            title: self.phrases.get(&format!("system-{}", system.word())),
            items: sections.iter().map(item).collect(),
        };
        c::Listed { systems: systems.iter().map(system).collect() }
    }

    pub(super) fn warnings(&self, signals: &[(Signal, Vec<Warned>)]) -> c::Warnings {
        let mut seen = BTreeSet::new();
        let mut note = |warned: &Warned| {
            let hazard = warned.note.hazard.value.clone();
            let anchor = if seen.contains(&hazard) { String::new() } else { search::hazard_anchor(&hazard) };
            seen.insert(hazard);
            c::NoteView { anchor, ..self.note(warned) }
        };
        let mut group = |(signal, notes): &(Signal, Vec<Warned>)| {
            let id = signal_word(Some(*signal));
            c::SignalNotes {
                word: self.phrases.get(&format!("signal-{id}")),
                meaning: self.phrases.get(&format!("meaning-{id}")),
                notes: notes.iter().map(&mut note).collect(),
                id,
            }
        };
        c::Warnings { signals: signals.iter().map(&mut group).collect() }
    }

    pub(super) fn emergency(&self, view: Option<&View>) -> c::Emergency {
        let Some(view) = view else {
            return c::Emergency { intro_html: String::new(), sections: vec![] };
        };
        let around = TextAround { stand: self, view, deeper: 0 };
        let section = |section: &crate::model::text::Section| {
            let mut title_html = String::new();
            html::inlines(&mut title_html, &section.title, &html::Bare(&around));
            c::EmergencySection {
                anchor: section.id.value.clone(),
                title_html,
                html: rendered(&section.blocks, &around),
            }
        };
        c::Emergency {
            intro_html: rendered(&view.text.intro, &around),
            sections: view.text.sections.iter().map(section).collect(),
        }
    }

    pub(super) fn words(&self, letters: &[(String, Vec<WordEntry>)]) -> c::Words {
        let href = |entry: &WordEntry| match &entry.section {
            Some(section) => format!("{}#{section}", self.way.to(&entry.address)),
            None => self.way.to(&entry.address),
        };
        let word =
            |entry: &WordEntry| c::Word { word: entry.word.clone(), title: entry.title.clone(), href: href(entry) };
        let letter = |(number, (letter, words)): (usize, &(String, Vec<WordEntry>))| c::Letter {
            letter: letter.clone(),
            anchor: format!("letter-{}", number + 1),
            words: words.iter().map(word).collect(),
        };
        c::Words { letters: letters.iter().enumerate().map(letter).collect() }
    }

    pub(super) fn named_routines(&self, routines: &[Routined]) -> Vec<c::Named> {
        routines
            .iter()
            .map(|routine| c::Named {
                title: routine.title.clone(),
                href: self.way.to(&format!("routine/{}", routine.name)),
            })
            .collect()
    }

    pub(super) fn systems(&self) -> Vec<c::SystemLink> {
        let systems = self.guide.pages.iter().filter_map(|page| match &page.body {
            PageBody::System(system, fits) => Some((system, fits, page)),
            _ => None,
        });
        systems
            .map(|(system, fits, page)| c::SystemLink {
                id: system.word(),
                title: page.title.clone(),
                href: self.way.to(&page.address),
                parts: fits.iter().map(|fit| self.part_link(fit.fit)).collect(),
            })
            .collect()
    }
}
