//! Mains in a van is protected.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "rcd",
    severity: Severity::Error,
    asks: "A van with anything on mains has a fit that provides `mains-protection`.",
    why: "Without an RCD and circuit breakers on board a fault can kill whoever touches the metal of the van.",
    source: "BS 7671, Section 721, and HD 60364-7-721: a 30 mA double-pole RCD and double-pole breakers in the vehicle (an electrician's guide)",
    wrong: "remove = [\"consumer-unit\"] in a van with a hook-up inlet",
    right: "a consumer unit among the fits",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let found = parts.lacking(&RULE, &parts.on_mains(), "is on mains", "mains-protection");
        acc.extend(found.map(|found| found.help("add the consumer unit to the fits; if the van has none, have an electrician fit one with an RCD before anything is plugged in")));
    }
}
