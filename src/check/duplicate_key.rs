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
    let withdrawn = checked.book.file.iter().flat_map(|(_, file)| &file.withdrawn);
    let withdrawn = withdrawn.map(|withdrawn| (&withdrawn.key.value.0, withdrawn.key.span));
    let vans = checked.vans.iter().map(|van| &van.key);
    let former = checked.vans.iter().flat_map(|van| &van.former_keys);
    for (key, span) in vans.chain(former).map(|key| (&key.value, key.span)).chain(withdrawn) {
        if let Some(first) = keys.insert(key.clone(), span) {
            let found = Diagnostic::new(&RULE, span, format!("`{key}` is the key of another van"));
            acc.add(
                found
                    .other(first, "that one")
                    .help("make a new key for the newer of the two; never change a key whose labels are printed"),
            );
        }
    }
}
