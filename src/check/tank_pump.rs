//! Fresh water and the pump that moves it come together.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "tank-pump",
    severity: Severity::Error,
    asks: "A van with `fresh-water` has a `water-pump`, and one with a pump has fresh water.",
    why: "Filling, priming and draining go through both; with one of them missing the guide's routines break off half-way.",
    source: "common practice: water is pumped from a tank or carrier to the taps",
    wrong: "remove = [\"water-pump\"] in a van with a fresh water tank",
    right: "a tank or carrier and a pump among the fits",
};

/// What comes together: a capability, what its provider does, and what it calls for.
const PAIRS: [(&str, &str, &str); 2] =
    [("fresh-water", "holds fresh water", "water-pump"), ("water-pump", "pumps water", "fresh-water")];

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        for (own, does, other) in PAIRS {
            let found = parts.lacking(&RULE, &parts.providing(own), does, other);
            acc.extend(found.map(|found| found.help("add the other one to the fits, or remove this one too")));
        }
    }
}
