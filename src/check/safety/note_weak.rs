//! Signal words that are too weak for their hazard.

use super::{Check, Guarded, notes};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "note-weak",
    severity: Severity::Error,
    asks: "A safety note has a signal word at least as grave as its hazard asks.",
    why: "An owner judges by the word whether a note is worth stopping for.",
    source: "ANSI Z535.6 and ISO 3864-2: signal words by what can happen; `at-least` in content/hazards.toml",
    wrong: "> **NOTICE** [Carbon monoxide](hazard:carbon-monoxide). …",
    right: "> **WARNING** [Carbon monoxide](hazard:carbon-monoxide). …",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let book = guarded.book;
    for van in guarded.vans {
        for fit in &van.fits {
            let module = &book.modules[fit.module];
            for origin in std::iter::once(fit.module).chain(module.includes.iter().copied()) {
                for text in book.modules[origin].texts.values() {
                    let blocks = text.sections.iter().flat_map(|section| notes::of(&section.blocks));
                    for note in notes::of(&text.intro).into_iter().chain(blocks) {
                        let Some(hazard) =
                            book.hazards.0.get(&note.hazard.value).filter(|hazard| note.signal < hazard.at_least.value)
                        else {
                            continue;
                        };
                        let least = hazard.at_least.value.word();
                        let message = format!(
                            "`{}` warns of `{}` with {}, which is too weak",
                            fit.name.value,
                            note.hazard.value,
                            note.signal.word()
                        );
                        let found =
                            Diagnostic::new(&RULE, note.hazard.span, message).other(hazard.at_least.span, "asked here");
                        acc.add(found.help(format!("write **{least}** or graver")).van(&van.name));
                    }
                }
            }
        }
    }
}
