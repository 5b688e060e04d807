//! What pages are put together from: links, sections, notes.

use super::around::{TextAround, gravest, rendered, signal_word};
use super::{Stand, c};
use crate::model::files::forms::System;
use crate::model::guide::{Shown, Warned};
use crate::model::text::Role;
use crate::render::html;

impl Stand<'_> {
    pub(super) fn system_link(&self, system: System) -> c::Named {
        c::Named {
            title: self.phrases.get(&format!("system-{}", system.word())),
            href: self.way.to(&format!("system/{}", system.word())),
        }
    }

    pub(super) fn part_link(&self, fit: usize) -> c::Named {
        let entry = &self.guide.fits[fit];
        c::Named { title: entry.title.to_string(), href: self.way.to(&format!("part/{}", entry.name)) }
    }

    pub(super) fn place_link(&self, place: usize) -> c::PlaceLink {
        let entry = &self.guide.places[place];
        c::PlaceLink {
            code: entry.code.to_string(),
            name: entry.name.to_string(),
            note: entry.note.unwrap_or_default().to_string(),
            kind: entry.kind.word(),
            kind_word: self.phrases.get(&format!("kind-{}", entry.kind.word())),
            side: entry.side.word(),
            side_word: self.phrases.get(&format!("side-{}", entry.side.word())),
            href: self.way.to(entry.code),
            signal: signal_word(entry.signal),
        }
    }

    /// Sections by what they are; on a page that several parts share, anchors carry the part's name.
    pub(super) fn sections(&self, sections: &[Shown], shared: bool) -> c::Sections {
        let of = |role: Option<Role>| {
            sections.iter().filter(|shown| shown.role() == role).map(|shown| self.section(shown, shared)).collect()
        };
        c::Sections {
            about: of(None),
            controls: of(Some(Role::Control)),
            tasks: of(Some(Role::Task)),
            checks: of(Some(Role::Check)),
            faults: of(Some(Role::Fault)),
            care: of(Some(Role::Care)),
        }
    }

    pub(super) fn section(&self, shown: &Shown, shared: bool) -> c::Section {
        let id = &shown.section.id.value;
        let deeper = u8::from(shared || shown.role().is_some());
        let html =
            self.around(shown, deeper).map(|around| rendered(&shown.section.blocks, &around)).unwrap_or_default();
        c::Section {
            anchor: if shared { format!("{}.{id}", self.guide.fits[shown.fit].name) } else { id.clone() },
            title_html: self.title(shown),
            html,
            role: shown.role().map_or("", Role::word),
            part: self.part_link(shown.fit),
            href: self.section_href(shown),
            signal: signal_word(gravest(&shown.section.blocks)),
        }
    }

    pub(super) fn around(&self, shown: &Shown, deeper: u8) -> Option<TextAround<'_>> {
        let view = self.guide.views.get(&(shown.fit, shown.origin))?;
        Some(TextAround { stand: self, view, deeper })
    }

    pub(super) fn title(&self, shown: &Shown) -> String {
        let mut out = String::new();
        if let Some(around) = self.around(shown, 0) {
            html::inlines(&mut out, &shown.section.title, &html::Bare(&around));
        }
        out
    }

    pub(super) fn section_href(&self, shown: &Shown) -> String {
        format!("{}#{}", self.way.to(&format!("part/{}", self.guide.fits[shown.fit].name)), shown.section.id.value)
    }

    pub(super) fn note(&self, warned: &Warned) -> c::NoteView {
        let mut html = String::new();
        if let Some(view) = self.guide.views.get(&(warned.fit, warned.origin)) {
            html::note(&mut html, warned.note, &TextAround { stand: self, view, deeper: 1 });
        }
        let mut part = self.part_link(warned.fit);
        if let Some(section) = warned.section {
            part.href = format!("{}#{section}", part.href);
        }
        c::NoteView { anchor: String::new(), html, part }
    }
}
