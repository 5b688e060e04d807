//! A water heater under pressure can be drained.

use super::parts::{self, Part};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "heater-relief",
    severity: Severity::Error,
    asks: "A fit that heats water and holds pressure has its `drain-valve` at a place of the van.",
    why: "The owner has to let the pressure and the water out before frost, and cannot find a valve that has no place.",
    source: "water grows by 9.07 % as it freezes (IAPWS) and by 1.6 % from 15 °C to 60 °C (IAPWS-IF97); to drain a heater before frost is common practice",
    wrong: "heats = \"water\" and holds = \"pressure\", and no [places.drain-valve]",
    right: "[places.drain-valve]\ntitle = \"Drain valve\"\nrequired = true",
};

const ROLE: &str = "drain-valve";

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        for part in parts.with("heats", "water") {
            acc.extend(relief(part).map(|found| found.van(&parts.van.name)));
        }
    }
}

fn relief(part: Part) -> Option<Diagnostic> {
    let role = part.module.facts.places.get(ROLE);
    // A role that is required and has no place is what `missing-place` finds; one at an unknown place, `unknown-place`.
    let said = role.is_some_and(|role| role.required) || part.fit.places.contains_key(ROLE);
    if said || !part.is("holds", "pressure") {
        return None;
    }
    let message = format!("{} heats water under pressure, and nothing says where its drain valve is", part.quoted());
    let help = match role {
        Some(_) => format!("add `places = {{ {ROLE} = \"…\" }}` with the code of a place"),
        None => format!("give its module a role `[places.{ROLE}]`, and the fit a place for it"),
    };
    Some(Diagnostic::new(&RULE, part.fit.name.span, message).help(help))
}
