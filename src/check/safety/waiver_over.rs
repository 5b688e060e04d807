//! Waivers past their last day, or for nothing.

use super::{Check, Guarded};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "waiver-over",
    severity: Severity::Error,
    asks: "A waiver is not past its last day, and waives something that is missing.",
    why: "A note that was put off is forgotten otherwise.",
    source: "the design of Lockerleaf: safety coverage",
    wrong: "until = 2020-01-31",
    right: "the note that was put off, and no waiver",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    for van in guarded.vans {
        for waiver in &van.waivers {
            let mut cells = guarded
                .coverage
                .cells
                .iter()
                .filter(|cell| cell.van == van.name && cell.fit_name == waiver.fit && cell.hazard == waiver.hazard);
            let needed = cells.any(|cell| !cell.is_met());
            let over = guarded.today.is_some_and(|today| today > waiver.until);
            let message = match (over, needed) {
                (true, _) => {
                    format!("the waiver for `{}` of `{}` ended on {}", waiver.hazard, waiver.fit, waiver.until)
                }
                (false, false) => {
                    format!("the waiver for `{}` of `{}` waives nothing: it is covered", waiver.hazard, waiver.fit)
                }
                (false, true) => continue,
            };
            acc.add(Diagnostic::new(&RULE, waiver.span, message).help("write the note and take the waiver out"));
        }
    }
}
