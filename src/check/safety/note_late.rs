//! Notes that stand after the steps they are about.

use super::{Check, Guarded, notes};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "note-late",
    severity: Severity::Error,
    asks: "A safety note of a section stands before its first step, or inside the step it is about.",
    why: "Whoever reads the warning after the step has done the step.",
    source: "IEC/IEEE 82079-1 and ANSI Z535.6: a warning stands before the action that it is about",
    wrong: "1. Light the burner.\n\n> **WARNING** …",
    right: "> **WARNING** …\n\n1. Light the burner.",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let texts = guarded.book.modules.iter().flat_map(|module| module.texts.values().map(move |text| (module, text)));
    for (module, text) in texts {
        for section in &text.sections {
            for note in notes::late(&section.blocks) {
                let message = format!(
                    "`{}` warns of `{}` after the steps of `{}`",
                    module.name, note.hazard.value, section.id.value
                );
                acc.add(Diagnostic::new(&RULE, note.hazard.span, message).help("move the note up, before the list"));
            }
        }
    }
}
