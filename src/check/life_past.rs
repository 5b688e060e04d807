//! What fell due before the last thing that was done to a van.

use super::parts::{self, Part};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::van::Due;
use jiff::civil::Date;

static RULE: Rule = Rule {
    id: "life-past",
    severity: Severity::Error,
    asks: "Nothing that a manifest records as renewed falls due before the newest record of the same van.",
    why: "A hose, an alarm or a test that ran out before the workshop was done with the van would be sold overdue.",
    source: "the `[life.*]` of the module; the newest date of the manifest stands for the handover, so that a finding does not come and go with the days",
    wrong: "a hose of 60 months renewed on 2020-03-01, and a reading taken on 2026-09-14",
    right: "the hose renewed again, on 2026-09-14",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let renewed = parts.van.fits.iter().flat_map(|fit| fit.dates.iter().filter_map(|date| date.renewed));
        let Some(newest) = renewed.chain(parts.van.readings.iter().map(|reading| reading.on)).max() else {
            continue;
        };
        for part in parts.all() {
            for date in &part.fit.dates {
                acc.extend(past(part, date, newest).map(|found| found.van(&parts.van.name)));
            }
        }
    }
}

fn past(part: Part, date: &Due, newest: Date) -> Option<Diagnostic> {
    let due = date.due.filter(|due| *due < newest)?;
    let message =
        format!("`{}` of {} fell due on {due}, before the newest record of {newest}", date.life, part.quoted());
    let every = &part.module.facts.life.entry(&date.life)?.1.every;
    let found = Diagnostic::new(&RULE, date.span, message).other(every.span, "how long it lasts");
    Some(found.help("do it again before the van is sold, and record the day; or mend the day if it is a slip"))
}
