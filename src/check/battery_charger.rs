//! Whatever charges a battery is set for its kind.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity, suggest};

static RULE: Rule = Rule {
    id: "battery-charger",
    severity: Severity::Error,
    asks: "Each charger that has a `battery-setting` is set for the `chemistry` of the leisure battery.",
    why: "A wrong setting overcharges the battery, which then gasses and heats up, or never fills it.",
    source: "battery makers' data, from memory, not confirmed: each chemistry has charging voltages of its own",
    wrong: "a lithium battery, and battery-setting = \"lead-acid\" at the charger",
    right: "battery-setting = \"lithium\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        for battery in parts.providing("leisure-battery") {
            parts.all().for_each(|charger| pair(acc, parts, charger, battery));
        }
    }
}

fn pair(acc: &mut Acc, parts: Parts, charger: Part, battery: Part) {
    let chemistry: Vec<_> = battery.words("chemistry").collect();
    let Some(setting) = charger.fit.choice("battery-setting") else {
        return;
    };
    if !chemistry.is_empty() && !chemistry.contains(&setting) {
        let kinds = suggest::list(&chemistry);
        let message =
            format!("{} is set for `{setting}`, and {} is of the kind {kinds}", charger.quoted(), battery.quoted());
        let found = parts.clash(&RULE, [(charger, "battery-setting"), (battery, "chemistry")], message);
        acc.add(found.help(format!(
            "set the charger for {kinds} and say so in `battery-setting`; if it has no such setting, fit one that does"
        )));
    }
}
