//! The notes of a module as all its vans could show them.

use crate::model::book::{Book, Module, SectionFacts};
use crate::model::text::{Block, Note, each_note};

/// The notes of some blocks.
pub fn of(blocks: &[Block]) -> Vec<&Note> {
    let mut notes = Vec::new();
    each_note(blocks, &mut |note| notes.push(note));
    notes
}

/// The notes at the top of a module, in one language: of its own text and of those it takes in.
pub fn at_top<'a>(book: &'a Book, number: usize, language: &str) -> Vec<&'a Note> {
    let origins = std::iter::once(number).chain(book.modules[number].includes.iter().copied());
    origins.flat_map(|origin| of(&book.text(origin, language).intro)).collect()
}

/// Modules that can be fitted, with their numbers.
pub fn fitted(book: &Book) -> impl Iterator<Item = (usize, &Module)> {
    book.modules.iter().enumerate().filter(|(_, module)| module.system.is_some())
}

/// The hazards that a section exposes to, those it warns of itself among them.
pub fn exposes(section: &SectionFacts) -> impl Iterator<Item = &str> {
    let wiring = section.wiring.iter();
    wiring.flat_map(|wiring| wiring.exposes.iter().chain(wiring.warns.iter())).map(|hazard| &*hazard.value.0)
}

/// Whether a section warns of a hazard itself, though the top of the part may do so too.
pub fn warns(section: &SectionFacts, hazard: &str) -> bool {
    section.wiring.as_ref().is_some_and(|wiring| wiring.warns.iter().any(|own| *own.value == *hazard))
}

/// The notes of some blocks that stand after the first list.
pub fn late(blocks: &[Block]) -> impl Iterator<Item = &Note> {
    let first = blocks.iter().position(|block| matches!(block, Block::List(..)));
    blocks.iter().skip(first.unwrap_or(blocks.len())).filter_map(|block| match block {
        Block::Note(note) => Some(note),
        _ => None,
    })
}
