//! A printed code that stands for another place now.

use super::labels::{answered, described};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::files::ledger::Printed;
use crate::model::van::Place;

static RULE: Rule = Rule {
    id: "label-reused",
    severity: Severity::Error,
    asks: "A code that was printed on a label never stands for another place.",
    why: "The old label is still stuck where it was, and would open the page of something else.",
    source: "the design of Lockerleaf: labels",
    wrong: "`G1` printed as the gas locker on the nearside, and now the water cap on the offside",
    right: "a code of its own for the water cap; or, when it is the same place, [[same-place]] with `code` and `printed-as`",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for (label, van) in answered(checked) {
        let Some(place) = van.places.iter().find(|place| place.code.value == label.code.value) else {
            continue;
        };
        let known = |(code, name): &(String, String)| *code == label.code.value.0 && *name == label.name;
        if !is(label, place) && !van.same_places.iter().any(known) {
            acc.add(reused(label, place).van(&van.name));
        }
    }
}

/// Whether a place is what was printed.
fn is(label: &Printed, place: &Place) -> bool {
    let named = place.name.0.iter().any(|(_, name)| *name == label.name);
    named && place.kind == label.kind && place.side == label.side
}

fn reused(label: &Printed, place: &Place) -> Diagnostic {
    let code = &label.code.value.0;
    let now = format!("{}, {}", place.kind.word(), place.side.word());
    let name = place.name.0.first().map_or("", |(_, name)| name.as_str());
    let message = format!("`{code}` is `{name}`, {now}, and its printed label says otherwise");
    Diagnostic::new(&RULE, place.code.span, message)
        .other(label.code.span, described(label))
        .help(format!(
            "if it is the same place, write `[[same-place]]` with `code = \"{code}\"` and `printed-as = \"{}\"`",
            label.name
        ))
        .help("if it is another place, give it a code that was never printed, and say where the old label leads: `[[moved]]` or `[[gone]]`")
}
