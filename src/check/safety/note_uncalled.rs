//! Notes that nothing calls for.

use super::{Check, Guarded, notes};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::{Book, Module};
use crate::model::text::Note;

static RULE: Rule = Rule {
    id: "note-uncalled",
    severity: Severity::Error,
    asks: "A note in a section is about a hazard that the section exposes to; a note at the top is about one that a fact of the part implies or a section exposes to.",
    why: "A note that nothing calls for could be lost without being missed.",
    source: "the design of Lockerleaf: safety coverage",
    wrong: "a note on `scald` in `## Heat water`, and no `exposes = [\"scald\"]`",
    right: "[section.heat-water]\nexposes = [\"scald\"]",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let book = guarded.book;
    let language = book.settings.language();
    for (number, module) in notes::fitted(book) {
        for section in &module.sections {
            for note in notes::of(&book.section(section, language).1.blocks) {
                if !notes::exposes(section).any(|hazard| hazard == note.hazard.value) {
                    let message = format!(
                        "`{}` warns of `{}` in `{}`, which does not expose to it",
                        module.name, note.hazard.value, section.id
                    );
                    let help = format!(
                        "add `exposes = [\"{}\"]` to `[section.{}]`, or take the note out",
                        note.hazard.value, section.id
                    );
                    acc.add(Diagnostic::new(&RULE, note.hazard.span, message).help(help));
                }
            }
        }
        for note in notes::at_top(book, number, language).into_iter().filter(|note| !is_called(book, module, note)) {
            let message =
                format!("`{}` warns of `{}`, and nothing about it implies that", module.name, note.hazard.value);
            acc.add(
                Diagnostic::new(&RULE, note.hazard.span, message)
                    .help("say with a trait or with `exposes` what makes it a hazard, or take the note out"),
            );
        }
    }
}

/// Whether a fact of the module, or a section, can call for the note in some van.
fn is_called(book: &Book, module: &Module, note: &Note) -> bool {
    let exposed = module.sections.iter().flat_map(notes::exposes).any(|hazard| hazard == note.hazard.value);
    let implied = book.hazards.0.get(&note.hazard.value).is_some_and(|hazard| {
        hazard.implied_by.iter().any(|by| {
            let by_trait = by
                .trait_
                .as_ref()
                .and_then(|name| module.facts.traits.get(&name.value))
                .is_some_and(|words| words.iter().any(|word| by.is.iter().any(|is| is.value == word.value)));
            let by_load =
                by.load.as_ref().is_some_and(|from| module.facts.load.iter().any(|load| load.from.value == from.value));
            let by_capability = by
                .provides
                .as_ref()
                .is_some_and(|name| module.facts.provides.iter().any(|own| own.value == name.value));
            by_trait || by_load || by_capability || by.place.is_some()
        })
    });
    exposed || implied
}
