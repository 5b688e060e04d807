//! Notes that say again what the top of the part says.

use super::{Check, Guarded, notes};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::Module;
use crate::model::text::Note;

static RULE: Rule = Rule {
    id: "note-redundant",
    severity: Severity::Error,
    asks: "A part warns of a hazard once at its top, or in each section that meets it; both only where a section says so with `warns`.",
    why: "Warnings that repeat are passed over, and one that nothing asks for could be lost without being missed.",
    source: "IEC/IEEE 82079-1: minimalism; ANSI Z535.6: grouped and section safety messages",
    wrong: "a note on `scald` under the title, and another in `## Heat water`",
    right: "one of the two, or `warns = [\"scald\"]` in the wiring of a section that says more",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let book = guarded.book;
    let language = book.settings.language();
    for (number, module) in notes::fitted(book) {
        let top = notes::at_top(book, number, language);
        twins(acc, module, &top);
        for section in &module.sections {
            let own = notes::of(&book.section(section, language).1.blocks);
            twins(acc, module, &own);
            for note in own.iter().filter(|note| !notes::warns(section, &note.hazard.value)) {
                if let Some(general) = top.iter().find(|general| general.hazard.value == note.hazard.value) {
                    said_twice(acc, module, note, general, &section.id);
                }
            }
        }
        unneeded(acc, module, &top);
    }
}

fn twins(acc: &mut Acc, module: &Module, notes: &[&Note]) {
    for (at, note) in notes.iter().enumerate() {
        if let Some(twin) = notes[..at].iter().find(|twin| twin.hazard.value == note.hazard.value) {
            let message = format!("`{}` warns of `{}` twice in one place", module.name, note.hazard.value);
            let found = Diagnostic::new(&RULE, note.hazard.span, message).other(twin.hazard.span, "the first one");
            acc.add(found.help("join the two"));
        }
    }
}

fn said_twice(acc: &mut Acc, module: &Module, note: &Note, general: &Note, section: &str) {
    let message = format!("`{}` warns of `{}` at its top, and again in `{section}`", module.name, note.hazard.value);
    let found = Diagnostic::new(&RULE, note.hazard.span, message).other(general.hazard.span, "at the top");
    let help = format!(
        "take one of them out; when the section says more, give it `warns = [\"{}\"]` in module.toml",
        note.hazard.value
    );
    acc.add(found.help(help));
}

/// A note at the top that every section which meets the hazard makes needless by its own.
fn unneeded(acc: &mut Acc, module: &Module, top: &[&Note]) {
    for note in top {
        let hazard = note.hazard.value.as_str();
        let mut exposing =
            module.sections.iter().filter(|section| notes::exposes(section).any(|own| own == hazard)).peekable();
        if exposing.peek().is_some() && exposing.all(|section| notes::warns(section, hazard)) {
            let message = format!(
                "`{}` warns of `{hazard}` at its top, and each section that meets it does so itself",
                module.name
            );
            acc.add(Diagnostic::new(&RULE, note.hazard.span, message).help("take the note at the top out"));
        }
    }
}
