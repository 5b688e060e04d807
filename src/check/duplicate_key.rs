//! Two vans with one key.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use std::collections::BTreeMap;

static RULE: Rule = Rule {
    id: "duplicate-key",
    severity: Severity::Error,
    asks: "Each van has a key of its own.",
    why: "The key is the address on the labels. With one key for two vans an owner would read another vehicle's guide.",
    source: "the design of Lockerleaf: addresses",
    wrong: "two manifests with `key = \"M7QK3WZD\"`",
    right: "`key = \"M7QK3WZD\"` and `key = \"R2HN8VYT\"`",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let mut keys = BTreeMap::new();
    for van in checked.vans {
        if let Some(first) = keys.insert(van.key.value.clone(), van.key.span) {
            let found = Diagnostic::new(&RULE, van.key.span, format!("`{}` is the key of another van", van.key.value));
            acc.add(
                found
                    .other(first, "that one")
                    .help("make a new key for the newer of the two; never change a key whose labels are printed"),
            );
        }
    }
}
