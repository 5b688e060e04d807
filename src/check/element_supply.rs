//! One mains element draws no more than its supply can carry.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};
use crate::model::files::forms::Supply;

static RULE: Rule = Rule {
    id: "element-supply",
    severity: Severity::Error,
    asks: "No single mains load draws more than the inlet, the hook-up lead or the breaker of the fixed appliances can carry.",
    why: "Alone it would trip the breaker each time, or overload the lead. What runs together is for the owner to choose.",
    source: "current is power over 230 V (arithmetic); the limits are the ratings of the parts",
    wrong: "element-power = \"3000 W\" behind heater-breaker = \"10 A\"",
    right: "element-power = \"2000 W\" behind heater-breaker = \"10 A\"",
};

/// What limits a mains current: the capability, and the value that gives the limit.
const LIMITS: [(&str, &str); 3] =
    [("mains-supply", "inlet-current"), ("mains-lead", "lead-current"), ("mains-protection", "heater-breaker")];

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        for (capability, value) in LIMITS {
            for limit in parts.providing(capability) {
                parts.all().for_each(|part| loads(acc, parts, part, (limit, value)));
            }
        }
    }
}

fn loads(acc: &mut Acc, parts: Parts, part: Part, (limit, value): (Part, &str)) {
    let Some(most) = limit.amount(value, "A") else {
        return;
    };
    for (amps, draw) in part.currents(Supply::Mains, parts::MAINS_VOLTS).filter(|(amps, _)| *amps > most) {
        let message = format!(
            "{} draws {} from the mains, and `{value}` of {} is {most} A",
            part.quoted(),
            parts::amps(amps),
            limit.quoted()
        );
        acc.add(parts.clash(&RULE, [(part, draw), (limit, value)], message).help(
            "read both rating plates; if they really differ, have an electrician fit a smaller element or a supply that carries it",
        ));
    }
}
