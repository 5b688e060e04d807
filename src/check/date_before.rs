//! Nothing was renewed or measured before the vehicle was built.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::VanSource;
use crate::model::source::At;
use jiff::civil::Date;

static RULE: Rule = Rule {
    id: "date-before-built",
    severity: Severity::Error,
    asks: "No part was renewed or measured before the year in which the vehicle was built.",
    why: "One of the two is a slip, and what falls due is then counted from a day that never was.",
    source: "a part of a vehicle is not older in it than the vehicle (common sense)",
    wrong: "on = 2006-08-24 in a van of year = 2016",
    right: "on = 2026-08-24 in a van of year = 2016",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for model in &checked.book.models {
        for source in &model.vans {
            van(acc, &format!("{}/{}", model.name, source.name), source);
        }
    }
}

fn van(acc: &mut Acc, name: &str, source: &VanSource) {
    let Some(year) = &source.facts.year else {
        return;
    };
    let renewed = source.facts.renewed.iter().map(|renewed| (&renewed.on, "renewed"));
    let measured = source.facts.reading.iter().map(|reading| (&reading.on, "measured"));
    let before = |on: &At<Date>| i64::from(on.value.year()) < i64::from(year.value);
    for (on, what) in renewed.chain(measured).filter(|(on, _)| before(on)) {
        let message = format!("{what} on {}, before the vehicle was built in {}", on.value, year.value);
        let found = Diagnostic::new(&RULE, on.span, message).van(name).other(year.span, "the year it was built");
        acc.add(found.help("mend the date or the year; what is not known is better left out"));
    }
}
