//! What search finds: sections, parts, places, hazards, routines, emergencies and pages, and owners' words for them.

use super::Composer;
use crate::model::guide::{Found, FoundKind, Guide, PageBody, Search};
use crate::model::text::{Block, Inline, Role, each_note, words};
use crate::model::van::Place;
use std::collections::BTreeSet;

impl<'a> Composer<'a, '_> {
    /// Everything that can be searched for. Takes a guide whose pages are there.
    pub(super) fn search(&self, guide: &Guide<'a>) -> Search<'a> {
        let mut found = Vec::new();
        let small = self.phrases.get("search-small").split(' ').map(str::to_string).collect();
        for fit in 0..guide.fits.len() {
            found.push(self.found_part(guide, fit));
            found.extend(self.found_sections(guide, fit, &small));
        }
        found.extend((0..guide.places.len()).map(|place| self.found_place(guide, place)));
        found.extend(found_hazards(guide));
        found.extend(guide.pages.iter().flat_map(|page| found_pages(page.address.as_str(), &page.title, &page.body)));
        let owners = self.book.words.0.get(self.language).into_iter().flat_map(|table| table.iter());
        Search {
            found,
            owners: owners
                .map(|(word, means)| (word.value.as_str(), means.iter().map(|mean| mean.value.as_str()).collect()))
                .collect(),
        }
    }

    fn found_part(&self, guide: &Guide<'a>, fit: usize) -> Found {
        let entry = &guide.fits[fit];
        Found {
            part: Some(fit),
            places: self.van.fits[fit]
                .places
                .values()
                .flatten()
                .copied()
                .collect::<BTreeSet<_>>()
                .into_iter()
                .collect(),
            signal: self.general_notes(fit).iter().map(|warned| warned.note.signal).max(),
            ..Found::new(FoundKind::Part, entry.title, &format!("part/{}", entry.name))
        }
    }

    fn found_sections(&self, guide: &Guide<'a>, fit: usize, small: &BTreeSet<String>) -> Vec<Found> {
        let facts = &self.book.modules[self.van.fits[fit].module].sections;
        let found = |(number, shown): (usize, crate::model::guide::Shown<'a>)| {
            let slots = guide.views.get(&(fit, shown.origin)).map(|view| view.slots.as_slice()).unwrap_or_default();
            let roles = facts[number].wiring.iter().flat_map(|wiring| wiring.at.iter());
            let places: BTreeSet<_> =
                roles.filter_map(|role| self.van.fits[fit].places.get(&role.value.0)).flatten().copied().collect();
            let title = filled(&shown.section.title, slots);
            let mut signal = None;
            each_note(&shown.section.blocks, &mut |note| signal = signal.max(Some(note.signal)));
            Found {
                anchor: Some(shown.section.id.value.clone()),
                part: Some(fit),
                places: places.into_iter().collect(),
                signal,
                more: telling(&hints(&shown.section.blocks, shown.role(), slots), &title, small),
                ..Found::new(FoundKind::Section(shown.role()), &title, &format!("part/{}", guide.fits[fit].name))
            }
        };
        self.shown(fit).map(found).collect()
    }

    fn found_place(&self, guide: &Guide<'a>, place: usize) -> Found {
        let entry = &guide.places[place];
        let here: &Place = &self.van.places[place];
        Found {
            places: vec![place],
            signal: entry.signal,
            more: here.note.as_ref().map(|note| note.text(self.language).to_string()).unwrap_or_default(),
            ..Found::new(FoundKind::Place, entry.name, entry.code)
        }
    }
}

/// Each hazard that is warned of, with its gravest signal word.
fn found_hazards(guide: &Guide) -> Vec<Found> {
    let mut found: Vec<Found> = Vec::new();
    let warnings = guide.pages.iter().filter_map(|page| match &page.body {
        PageBody::Warnings(signals) => Some((page, signals)),
        _ => None,
    });
    for (page, signals) in warnings {
        for warned in signals.iter().flat_map(|(_, notes)| notes) {
            let hazard = &warned.note.hazard.value;
            if !found.iter().any(|known| known.anchor.as_ref() == Some(hazard)) {
                found.push(Found {
                    anchor: Some(hazard.clone()),
                    signal: Some(warned.note.signal),
                    ..Found::new(FoundKind::Hazard, &words(&warned.note.title), &page.address)
                });
            }
        }
    }
    found
}

/// What is found of pages that are not about one thing, and of routines and emergencies.
fn found_pages(address: &str, title: &str, body: &PageBody) -> Vec<Found> {
    match body {
        PageBody::Place(_) | PageBody::Fit(_) => vec![],
        PageBody::Routine(_) => vec![Found::new(FoundKind::Routine, title, address)],
        PageBody::Emergency(Some(view)) => view
            .text
            .sections
            .iter()
            .map(|section| Found {
                anchor: Some(section.id.value.clone()),
                ..Found::new(FoundKind::Emergency, &filled(&section.title, &view.slots), address)
            })
            .collect(),
        _ => vec![Found::new(FoundKind::Page, title, address)],
    }
}

/// What a section says beyond its title that an owner may ask for: what is seen and why, lamps and their colours.
fn hints(blocks: &[Block], role: Option<Role>, slots: &[String]) -> String {
    let mut out = Vec::new();
    let whole = matches!(role, Some(Role::Control) | None);
    for block in blocks {
        match block {
            Block::Paragraph(line) if whole || out.is_empty() => out.push(filled(line, slots)),
            Block::Table(table) => {
                out.extend(table.rows.iter().flatten().map(|cell| filled(cell, slots)));
            }
            Block::List(_, items) if whole => {
                for item in items {
                    out.push(hints(&item.blocks, role, slots));
                }
            }
            Block::Plain(line) if whole => out.push(filled(line, slots)),
            _ => {}
        }
    }
    out.join(" ")
}

/// The words of a text that tell something beyond `title`, each once: what goes over the air must be small.
fn telling(text: &str, title: &str, small: &BTreeSet<String>) -> String {
    let words = |text: &str| {
        let words = text.split(|c: char| !c.is_alphanumeric() && c != '-' && c != '’');
        words.filter(|word| !word.is_empty()).map(str::to_lowercase).collect::<Vec<_>>()
    };
    let mut seen: BTreeSet<String> = words(title).into_iter().collect();
    let tells = |word: &String| word.chars().count() > 1 && !small.contains(word);
    words(text).into_iter().filter(|word| tells(word) && seen.insert(word.clone())).collect::<Vec<_>>().join(" ")
}

/// The words of some inlines, with what their slots show.
fn filled(inlines: &[Inline], slots: &[String]) -> String {
    let mut out = String::new();
    for inline in inlines {
        match inline {
            Inline::Slot(number) => out.push_str(slots.get(*number).map_or("", String::as_str)),
            Inline::Emphasis(inner) | Inline::Strong(inner) | Inline::Link(_, _, inner) => {
                out.push_str(&filled(inner, slots));
            }
            other => out.push_str(&words(std::slice::from_ref(other))),
        }
    }
    out
}
