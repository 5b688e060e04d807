//! Translations say the same: the same sections, and the same hazards in them.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity, suggest};
use crate::model::source::Span;
use crate::model::text::{Block, Text, each_note};
use std::collections::BTreeMap;

static RULE: Rule = Rule {
    id: "translation-differs",
    severity: Severity::Error,
    asks: "A translation has the sections of the default language, with the same roles and the same safety notes.",
    why: "An owner must not miss a task or a warning because of the language they read.",
    source: "the design of Lockerleaf: texts",
    wrong: "`## Anzünden` in text.de.md without the note on carbon monoxide that text.md has there",
    right: "the same note, translated",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let default = checked.book.settings.language();
    let modules = checked.book.modules.iter().map(|module| &module.texts);
    let routines = checked.book.routines.iter().map(|routine| &routine.texts);
    for texts in modules.chain(routines) {
        let Some(original) = texts.get(default) else {
            continue;
        };
        for (_, translation) in texts.iter().filter(|(language, _)| *language != default) {
            compare(acc, original, translation);
        }
    }
}

fn compare(acc: &mut Acc, original: &Text, translation: &Text) {
    let (ours, theirs) = (parts(original), parts(translation));
    for (id, (span, says)) in &ours {
        match theirs.get(id) {
            None => {
                let found =
                    Diagnostic::new(&RULE, translation.title.span, format!("this translation has no section `{id}`"));
                acc.add(found.other(*span, "the original").help("translate it under the same name"));
            }
            Some((place, other)) if other != says => {
                let found = Diagnostic::new(
                    &RULE,
                    *place,
                    format!("this part has {}, and the original has {}", list(other), list(says)),
                );
                acc.add(
                    found
                        .other(*span, "the original")
                        .help("give it the same role and safety notes with the same signal words"),
                );
            }
            Some(_) => {}
        }
    }
    for (id, (span, _)) in theirs.iter().filter(|(id, _)| !ours.contains_key(*id)) {
        let found = Diagnostic::new(&RULE, *span, format!("the original has no section `{id}`"));
        acc.add(found.help(suggest::did_you_mean(id, ours.keys().copied())));
    }
}

fn list(says: &[String]) -> String {
    if says.is_empty() { "no role or notes".to_string() } else { suggest::list(says) }
}

/// Each section with its place, its role and its notes; what stands before the first section has an empty name.
fn parts(text: &Text) -> BTreeMap<&str, (Span, Vec<String>)> {
    let sections = text.sections.iter().map(|section| {
        let mut says: Vec<_> = section.role.iter().map(|role| role.word().to_string()).collect();
        says.extend(notes(&section.blocks));
        (section.id.value.as_str(), (section.id.span, says))
    });
    std::iter::once(("", (text.title.span, notes(&text.intro)))).chain(sections).collect()
}

fn notes(blocks: &[Block]) -> Vec<String> {
    let mut out = Vec::new();
    each_note(blocks, &mut |note| out.push(format!("{} {}", note.signal.word(), note.hazard.value)));
    out
}
