//! Places and fits, as lists and links name them.

use crate::model::book::Book;
use crate::model::guide::{FitEntry, PlaceEntry};
use crate::model::van::Van;

/// All places of a van.
pub fn places<'a>(van: &'a Van, language: &str) -> Vec<PlaceEntry<'a>> {
    let entry = |place: &'a crate::model::van::Place| PlaceEntry {
        code: &place.code.value.0,
        name: place.name.text(language),
        note: place.note.as_ref().map(|note| note.text(language)),
        kind: place.kind,
        side: place.side,
        position: place.position,
        labelled: place.labelled,
        signal: None,
    };
    van.places.iter().map(entry).collect()
}

/// All fits of a van.
pub fn fits<'a>(book: &'a Book, van: &'a Van, language: &str) -> Vec<FitEntry<'a>> {
    let entry = |fit: &'a crate::model::van::Fit| {
        let module = &book.modules[fit.module];
        let text = book.text(fit.module, language);
        // Only modules of a system can be fitted; resolving saw to that.
        let system = module.system.unwrap_or(crate::model::files::forms::System::Vehicle);
        FitEntry {
            name: &fit.name.value,
            title: &text.title.value,
            system,
            module: fit.module,
            text,
            aliases: &module.facts.aliases,
            sections: module.sections.iter().map(|section| section.id.as_str()).collect(),
        }
    };
    van.fits.iter().map(entry).collect()
}
