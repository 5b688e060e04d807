//! Printed labels that no van answers.

use super::labels::{printed, van};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use std::collections::BTreeSet;

static RULE: Rule = Rule {
    id: "label-van",
    severity: Severity::Error,
    asks: "Each key that was printed on a label is the key of a van, or was, or is withdrawn.",
    why: "When a manifest or a key goes, the labels stay on the vehicle, and their address must still answer.",
    source: "the design of Lockerleaf: labels",
    wrong: "a ledger that holds labels of the key `M7QK3WZD`, and no van with that key",
    right: "`former-keys = [\"M7QK3WZD\"]` in the manifest of the same vehicle; or [[withdrawn]] in book.toml",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    // The vans of what cannot be read are not known.
    if checked.book.incomplete {
        return;
    }
    let withdrawn = checked.book.file.iter().flat_map(|(_, file)| &file.withdrawn);
    let withdrawn: BTreeSet<_> = withdrawn.map(|withdrawn| &withdrawn.key.value).collect();
    let mut said = BTreeSet::new();
    for label in printed(checked).filter(|label| !withdrawn.contains(&label.key.value)) {
        let key = &label.key.value;
        if van(checked, label).is_none() && said.insert(key.clone()) {
            let message = format!("no van has the key `{}`, which is on printed labels of {}", key.0, label.van);
            let found = Diagnostic::new(&RULE, label.key.span, message);
            acc.add(
                found
                    .help(format!(
                        "if the vehicle has another key now, add `former-keys = [\"{}\"]` to its manifest",
                        key.0
                    ))
                    .help(
                        "if there is no guide for it any more, add `[[withdrawn]]` with `key` and `why` to book.toml",
                    ),
            );
        }
    }
}
