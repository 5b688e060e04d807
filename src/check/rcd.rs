//! Mains in a van is protected.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "rcd",
    severity: Severity::Error,
    asks: "A van with anything on mains has a fit that provides `mains-protection`, and its RCD trips at 30 mA or less.",
    why: "Without an RCD and circuit breakers on board a fault can kill whoever touches the metal of the van.",
    source: "BS 7671, Section 721, and HD 60364-7-721: a 30 mA double-pole RCD and double-pole breakers in the vehicle (an electrician's guide)",
    wrong: "remove = [\"consumer-unit\"] in a van with a hook-up inlet",
    right: "a consumer unit among the fits",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let found = parts.lacking(&RULE, &parts.on_mains(), "is on mains", "mains-protection");
        parts.providing("mains-protection").into_iter().for_each(|part| rating(acc, parts, part));
        acc.extend(found.map(|found| found.help("add the consumer unit to the fits; if the van has none, have an electrician fit one with an RCD before anything is plugged in")));
    }
}

/// The most that an RCD which protects people may need to trip, in A.
const RATED: f64 = 0.03;

fn rating(acc: &mut Acc, parts: Parts, part: Part) {
    let Some(amps) = part.amount("rcd-current", "A").filter(|amps| *amps > RATED) else {
        return;
    };
    let message = format!(
        "the RCD of {} trips at {} mA, and people are only safe at 30 mA or less",
        part.quoted(),
        amps * 1000.0
    );
    let found = Diagnostic::new(&RULE, part.span("rcd-current"), message).van(&parts.van.name);
    acc.add(found.help("read what is printed on it; if it really needs more, have an electrician change it"));
}
