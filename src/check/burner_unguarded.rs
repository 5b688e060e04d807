//! A van that burns anything has a carbon monoxide alarm.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "burner-unguarded",
    severity: Severity::Error,
    asks: "A van with a fit that burns anything has a fit that provides `co-alarm`.",
    why: "Carbon monoxide has no smell and kills people in their sleep; the alarm is the only thing that notices it.",
    source: "EN 50291-2: carbon monoxide alarms for recreational vehicles; to fit one wherever something burns is common practice",
    wrong: "remove = [\"co-alarm\"] in a van with a gas hob",
    right: "a carbon monoxide alarm among the fits",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let found = parts.lacking(&RULE, &parts.burners(), "burns fuel", "co-alarm");
        acc.extend(found.map(|found| found.help("fit a carbon monoxide alarm for vehicles, and add it to the fits")));
    }
}
