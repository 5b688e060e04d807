//! A gas burner has a supply, a regulator and a valve to shut it off.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "gas-isolation",
    severity: Severity::Error,
    asks: "A van that burns gas has fits that provide `lpg-supply`, `lpg-regulator` and `lpg-isolation`.",
    why: "Without them the guide cannot say how to turn the gas on, and in an emergency how to shut it off.",
    source: "EN 1949: the parts of a gas installation; a regulator to EN 16129 (a maker's leaflet); a shut-off valve for each appliance is from memory, not confirmed",
    wrong: "remove = [\"gas-valves\"] in a van with a gas hob",
    right: "isolating valves among the fits",
};

/// What a gas burner takes, each with what an author is told to add.
const NEEDED: [(&str, &str); 3] = [
    ("lpg-supply", "the cylinder locker or gas tank"),
    ("lpg-regulator", "the regulator"),
    ("lpg-isolation", "the isolating valves"),
];

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let burners = parts.with("burns", "lpg");
        for (capability, what) in NEEDED {
            let found = parts.lacking(&RULE, &burners, "burns gas", capability);
            acc.extend(found.map(|found| {
                found.help(format!(
                    "add {what} to the fits; if the van has none, it is for a gas engineer before anything is lit"
                ))
            }));
        }
    }
}
