//! A printed label whose place is no more.

use super::labels::{answered, described};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::files::ledger::Printed;
use crate::model::van::Van;

static RULE: Rule = Rule {
    id: "label-dropped",
    severity: Severity::Error,
    asks: "When the place of a printed label is taken away or gets another code, a manifest says where the label leads.",
    why: "The label is still stuck to the van. Whoever scans it at night must not find an empty page.",
    source: "the design of Lockerleaf: labels",
    wrong: "a ledger that holds `G1`, and no place `G1`",
    right: "[[moved]]\ncode = \"G1\"\nto = \"G2\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for (label, van) in answered(checked) {
        let code = &label.code.value;
        let place = van.places.iter().any(|place| place.code.value == *code);
        if !place && !van.old_labels.iter().any(|old| old.code == code.0) {
            acc.add(dropped(checked, label, van));
        }
    }
}

fn dropped(checked: Checked, label: &Printed, van: &Van) -> Diagnostic {
    let code = &label.code.value.0;
    let message = format!("`{code}` of {} is printed on a label, and there is no such place any more", van.name);
    let found = Diagnostic::new(&RULE, label.code.span, message).label(described(label));
    let path = &checked.book.sources.get(van.file).path;
    let namesake = van.places.iter().find(|place| place.name.0.iter().any(|(_, name)| *name == label.name));
    let to = namesake.map_or("…", |place| &place.code.value.0);
    found
        .help(format!("say in {path} where it leads: `[[moved]]` with `code = \"{code}\"` and `to = \"{to}\"`"))
        .help("or, when nothing has come in its stead: `[[gone]]` with `code` and `why`")
}
