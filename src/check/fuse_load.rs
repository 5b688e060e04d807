//! A fuse carries what is behind it.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};
use crate::model::files::forms::Supply;

static RULE: Rule = Rule {
    id: "fuse-load",
    severity: Severity::Error,
    asks: "The 12 V fuse of a part is not smaller than the largest current that the part draws.",
    why: "It blows in use, and somebody puts in one that is too large for the cable.",
    source: "current is power over 12 V (arithmetic); no limit for cables is held here, as no source for one is at hand",
    wrong: "pump-current = \"7 A\" and fuse = \"5 A\"",
    right: "pump-current = \"7 A\" and fuse = \"10 A\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        parts.all().for_each(|part| fuse(acc, parts, part));
    }
}

fn fuse(acc: &mut Acc, parts: Parts, part: Part) {
    let largest = part.currents(Supply::TwelveVolt, parts::BATTERY_VOLTS).max_by(|a, b| a.0.total_cmp(&b.0));
    let (Some(fuse), Some((amps, draw))) = (part.amount("fuse", "A"), largest) else {
        return;
    };
    if fuse < amps {
        let message = format!("the fuse of {} is for {fuse} A, and it draws {}", part.quoted(), parts::amps(amps));
        acc.add(parts.clash(&RULE, [(part, "fuse"), (part, draw)], message).help(
            "read the rating plate and the fuse again; have the maker's fuse fitted, never a larger one than the cable allows",
        ));
    }
}
