//! Printed labels that carry another address than the book's.

use super::labels::printed;
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::label::address::address;
use std::collections::BTreeSet;

static RULE: Rule = Rule {
    id: "label-address",
    severity: Severity::Error,
    asks: "The address that printed labels carry is the book's, or one that is declared still to answer.",
    why: "Labels cannot be changed from afar. When the old address stops answering, all of them are dead at once.",
    source: "the design of Lockerleaf: labels",
    wrong: "labels printed with HTTPS://OLD.EXAMPLE/…, and `address = \"https://new.example\"`",
    right: "address = \"https://new.example\"\nformer-addresses = [\"https://old.example\"]",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let guides = checked.book.file.as_ref().and_then(|(_, file)| file.guides.as_ref());
    let former = guides.iter().flat_map(|guides| &guides.former_addresses).map(|address| address.value.0.as_str());
    let bases: Vec<_> = [checked.book.settings.address.as_str()].into_iter().chain(former).collect();
    let mut said = BTreeSet::new();
    let addresses =
        printed(checked).flat_map(|label| label.earlier.iter().chain([&label.address]).map(move |at| (label, at)));
    for (label, printed) in addresses {
        let (key, code) = (&label.key.value.0, &label.code.value.0);
        if bases.iter().any(|base| address(base, key, code) == printed.value) {
            continue;
        }
        let tail = format!("/{key}/{code}/");
        let base = printed.value.strip_suffix(&tail).unwrap_or(&printed.value);
        if !said.insert(base.to_string()) {
            continue;
        }
        let own = guides.and_then(|guides| guides.address.as_ref()).map(|address| address.span);
        let message = format!("printed labels carry the address `{base}`, which is not the book's");
        let found = Diagnostic::new(&RULE, own.unwrap_or(printed.span), message);
        let help = "keep the old address alive and leading to the new one, and add it to `former-addresses` in `[guides]` of book.toml";
        acc.add(found.other(printed.span, "on this label, for one").help(help));
    }
}
