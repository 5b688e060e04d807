//! Which hazards a fit calls for, and why: its physical facts imply them, no module lists them.

use crate::model::book::{Book, Module};
use crate::model::files::content::Implication;
use crate::model::source::Span;
use crate::model::van::{Fit, Van};
use crate::resolve::holds;
use std::collections::BTreeMap;

/// Each hazard that a fit calls for, with what calls for it and where that stands.
pub fn required(book: &Book, van: &Van, fit: &Fit) -> BTreeMap<String, (String, Span)> {
    let mut required = exposed(book, fit);
    for (name, hazard) in book.hazards.0.iter() {
        let because = hazard.implied_by.iter().find_map(|implication| because(book, van, fit, implication));
        if let Some(because) = because {
            required.insert(name.value.clone(), because);
        }
    }
    required
}

/// The hazards that sections which show expose to.
fn exposed(book: &Book, fit: &Fit) -> BTreeMap<String, (String, Span)> {
    let mut out = BTreeMap::new();
    for (section, _) in book.modules[fit.module].sections.iter().zip(&fit.shown).filter(|(_, shown)| **shown) {
        let Some(wiring) = &section.wiring else {
            continue;
        };
        for hazard in wiring.exposes.iter().chain(wiring.warns.iter()) {
            let because = (format!("`{}` exposes to it", section.id), hazard.span);
            out.entry(hazard.value.0.clone()).or_insert(because);
        }
    }
    out
}

fn because(book: &Book, van: &Van, fit: &Fit, implication: &Implication) -> Option<(String, Span)> {
    let module = &book.modules[fit.module];
    by_trait(module, implication)
        .or_else(|| by_load(book, van, fit, implication))
        .or_else(|| by_capability(module, implication))
        .or_else(|| by_place(van, fit, implication))
}

fn by_trait(module: &Module, implication: &Implication) -> Option<(String, Span)> {
    let name = implication.trait_.as_ref()?;
    let words = module.facts.traits.get(&name.value)?;
    let word = words.iter().find(|word| implication.is.iter().any(|is| is.value == word.value))?;
    Some((format!("`{} = \"{}\"`", name.value.0, word.value), word.span))
}

fn by_load(book: &Book, van: &Van, fit: &Fit, implication: &Implication) -> Option<(String, Span)> {
    let from = implication.load.as_ref()?;
    let model = &book.models[van.model];
    let mut loads = book.modules[fit.module].facts.load.iter();
    let load = loads.find(|load| {
        load.from.value == from.value && load.when.as_ref().is_none_or(|when| holds(when, fit, van, model))
    })?;
    Some((format!("it draws from `{}`", from.value.word()), load.from.span))
}

fn by_capability(module: &Module, implication: &Implication) -> Option<(String, Span)> {
    let name = implication.provides.as_ref()?;
    let provided = module.facts.provides.iter().find(|provided| provided.value == name.value)?;
    Some((format!("it provides `{}`", name.value.0), provided.span))
}

fn by_place(van: &Van, fit: &Fit, implication: &Implication) -> Option<(String, Span)> {
    let kind = implication.place.as_ref()?;
    let place =
        fit.places.values().flatten().map(|number| &van.places[*number]).find(|place| place.kind == kind.value)?;
    Some((format!("it is at `{}`, which is `{}`", place.code.value.0, kind.value.word()), place.code.span))
}
