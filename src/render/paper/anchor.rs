//! Anchors: what references on paper point at.

use crate::model::guide::{Guide, PageBody};
use std::collections::BTreeSet;

/// A part.
pub(super) fn fit(guide: &Guide, fit: usize) -> String {
    format!("part.{}", guide.fits[fit].name)
}

/// A section of a part.
pub(super) fn section(guide: &Guide, fit: usize, section: &str) -> String {
    format!("part.{}.{section}", guide.fits[fit].name)
}

/// A place.
pub(super) fn place(guide: &Guide, place: usize) -> String {
    format!("place.{}", guide.places[place].code)
}

/// All anchors of a booklet: its parts, their sections, and the places.
pub(super) fn all(guide: &Guide) -> BTreeSet<String> {
    let mut all: BTreeSet<String> = (0..guide.places.len()).map(|number| place(guide, number)).collect();
    for page in &guide.pages {
        if let PageBody::Fit(page) = &page.body {
            all.insert(fit(guide, page.fit));
            all.extend(page.sections.iter().map(|shown| section(guide, page.fit, &shown.section.id.value)));
        }
    }
    all
}
