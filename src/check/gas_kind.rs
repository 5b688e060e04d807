//! The gas on board is one that the regulator and the appliances are made for.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "gas-kind",
    severity: Severity::Error,
    asks: "The regulator and each gas appliance are made for the gas of the supply.",
    why: "A part made for the other gas can get the wrong pressure or burn badly, and make carbon monoxide.",
    source: "EN 16129 and EN 1949: parts of 30 mbar are for butane and propane; older ones are for one of them (trade press)",
    wrong: "gas = \"propane\" at the locker, for-gas = \"butane\" at the regulator",
    right: "gas = \"propane\" and for-gas = \"either\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let users: Vec<_> = parts.providing("lpg-regulator").into_iter().chain(parts.with("burns", "lpg")).collect();
        for supply in parts.providing("lpg-supply") {
            users.iter().for_each(|user| pair(acc, parts, *user, supply));
        }
    }
}

fn pair(acc: &mut Acc, parts: Parts, user: Part, supply: Part) {
    let (Some(made_for), Some(gas)) = (user.fit.choice("for-gas"), supply.fit.choice("gas")) else {
        return;
    };
    if made_for != "either" && made_for != gas {
        let message = format!("{} is made for {made_for}, and {} holds {gas}", user.quoted(), supply.quoted());
        let found = parts.clash(&RULE, [(user, "for-gas"), (supply, "gas")], message);
        acc.add(
            found.help(format!("sell it with {made_for}, or have a gas engineer fit a part that is made for {gas}")),
        );
    }
}
