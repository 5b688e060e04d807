//! Traits that imply nothing.

use super::{Check, Guarded};
use crate::diag::{Acc, Diagnostic, Rule, Severity, suggest};

static RULE: Rule = Rule {
    id: "trait-unread",
    severity: Severity::Error,
    asks: "Each word of a trait is read by a hazard, or by another rule.",
    why: "A slip in a trait would leave its hazards unwarned of, and nobody would notice.",
    source: "the design of Lockerleaf: traits imply hazards",
    wrong: "burns = \"lgp\"",
    right: "burns = \"lpg\"",
};

/// Words of traits that the rules about combinations read; any word of `chemistry` names a kind of battery.
const READ_BY_RULES: [(&str, &str); 8] = [
    ("burns", "diesel"),
    ("burns", "lpg"),
    ("carries", "mains"),
    ("flame", "flued"),
    ("flame", "open"),
    ("heats", "water"),
    ("holds", "pressure"),
    ("supplies", "mains"),
];

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let by_hazards = guarded.book.hazards.0.iter().flat_map(|(_, hazard)| &hazard.implied_by).flat_map(|by| {
        let name = by.trait_.as_ref().map(|name| &*name.value.0);
        name.into_iter().flat_map(move |name| by.is.iter().map(move |is| (name, is.value.as_str())))
    });
    let read: Vec<(&str, &str)> = by_hazards.chain(READ_BY_RULES).collect();
    for module in &guarded.book.modules {
        for (name, words) in
            module.facts.traits.iter().filter(|(name, _)| name.span.file == module.file && name.value != "chemistry")
        {
            for word in words.iter().filter(|word| !read.contains(&(name.value.as_str(), word.value.as_str()))) {
                let known: Vec<_> =
                    read.iter().filter(|(known, _)| *known == name.value).map(|(_, word)| *word).collect();
                let found = Diagnostic::new(
                    &RULE,
                    word.span,
                    format!("no hazard is implied by `{} = \"{}\"`", name.value, word.value),
                );
                let help = match known.is_empty() {
                    true => suggest::did_you_mean(&name.value, read.iter().map(|(name, _)| *name)),
                    false => suggest::did_you_mean(&word.value, known.iter().copied()),
                };
                acc.add(found.help(help));
            }
        }
    }
}
