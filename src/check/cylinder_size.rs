//! A cylinder fits its locker.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "cylinder-size",
    severity: Severity::Error,
    asks: "A cylinder is no larger than the largest that its locker takes.",
    why: "A cylinder that does not stand upright between its straps can come loose or let liquid gas into the pipes.",
    source: "EN 1949: cylinders stand upright and are held at high and low level (a supplier's summary); the limit is the vehicle's own",
    wrong: "cylinder-mass = \"11 kg\" and largest-cylinder = \"6 kg\"",
    right: "cylinder-mass = \"6 kg\" and largest-cylinder = \"6 kg\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        for part in parts.all() {
            let [cylinder, largest] = ["cylinder-mass", "largest-cylinder"].map(|value| part.fit.quantity(value));
            if let (Some(cylinder), Some(largest)) = (cylinder, largest)
                && cylinder.compare(largest).is_some_and(|order| order.is_gt())
            {
                let message = format!("{} takes a cylinder of {largest} at most, not of {cylinder}", part.quoted());
                let sides = [(part, "cylinder-mass"), (part, "largest-cylinder")];
                acc.add(parts.clash(&RULE, sides, message).help("sell it with a cylinder that fits the locker"));
            }
        }
    }
}
