//! A van in which a fire can start has a fire extinguisher.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "no-extinguisher",
    severity: Severity::Error,
    asks: "A van that burns anything or has mains has a fit that provides `extinguisher`.",
    why: "Flames and mains wiring start fires, and a small one has to be put out within seconds.",
    source: "EN 1646-1: fire precautions and what the handbook says of the extinguisher (contents of the standard; the topic from memory)",
    wrong: "remove = [\"extinguisher\"] in a van with a gas hob",
    right: "a fire extinguisher among the fits",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let burners = parts.burners();
        let (callers, does) = match burners.is_empty() {
            true => (parts.on_mains(), "is on mains"),
            false => (burners, "burns fuel"),
        };
        let found = parts.lacking(&RULE, &callers, does, "extinguisher");
        acc.extend(found.map(|found| found.help("fit a fire extinguisher, and add it to the fits")));
    }
}
