//! A regulator and the appliances behind it work at one pressure.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "gas-pressure",
    severity: Severity::Error,
    asks: "The regulator gives the pressure that each gas appliance is made for.",
    why: "Too much pressure makes flames that lift, soot and carbon monoxide; too little lets them go out.",
    source: "EN 1949 and EN 16129: one working pressure, 30 mbar, from 2003 (trade press and a regulator maker's leaflet); before: 28 mbar for butane, 37 mbar for propane; 5 mbar either way are the test pressures of EN 437, from memory, not confirmed",
    wrong: "outlet-pressure = \"30 mbar\" at the regulator, inlet-pressure = \"37 mbar\" at the hob",
    right: "outlet-pressure = \"30 mbar\" and inlet-pressure = \"30 mbar\"",
};

/// How far a pressure may be from the one that an appliance is made for, in mbar.
const APART: f64 = 5.0;

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let given = pressures(parts.providing("lpg-regulator"), "outlet-pressure");
        for (appliance, asked) in pressures(parts.with("burns", "lpg"), "inlet-pressure") {
            appliance_pressure(acc, parts, appliance, asked, &given);
        }
    }
}

fn pressures<'a>(all: Vec<Part<'a>>, value: &str) -> Vec<(Part<'a>, f64)> {
    all.into_iter().filter_map(|part| Some((part, part.amount(value, "mbar")?))).collect()
}

fn appliance_pressure(acc: &mut Acc, parts: Parts, appliance: Part, asked: f64, given: &[(Part, f64)]) {
    let Some((regulator, gives)) = given.first() else {
        return;
    };
    if given.iter().all(|(_, gives)| (gives - asked).abs() > APART) {
        let message =
            format!("{} is made for {asked} mbar, and {} gives {gives} mbar", appliance.quoted(), regulator.quoted());
        let sides = [(appliance, "inlet-pressure"), (*regulator, "outlet-pressure")];
        acc.add(parts.clash(&RULE, sides, message).help(
            "read both rating plates; when they really differ, nobody lights it before a gas engineer has changed one of the two",
        ));
    }
}
