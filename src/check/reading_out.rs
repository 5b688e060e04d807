//! What a workshop measured is what it should be.

use super::parts::{self, Part};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::files::module::ReadingFacts;
use crate::model::quantity::{Dimension, Quantity, QuantityRange, Unit};
use crate::model::van::Reading;

static OUT: Rule = Rule {
    id: "reading-out",
    severity: Severity::Error,
    asks: "A reading lies within what its module expects, or near it.",
    why: "A part that measured wrong on the day of the handover fails on the road, or was never put right.",
    source: "the `expect`, `near` and `source` of the reading in `module.toml`",
    wrong: "value = \"0.3 A\" where `expect` is 0.587 A and `near` is 10 %",
    right: "value = \"0.58 A\"",
};

static NEAR: Rule = Rule {
    id: "reading-near",
    severity: Severity::Warning,
    asks: "A reading lies within the range that its module expects.",
    why: "One that is only near may be a part that is on its way out, or a slip of the pen.",
    source: "the `expect`, `near` and `source` of the reading in `module.toml`",
    wrong: "value = \"6 °C\" where `expect` is 0 to 5 °C and `near` is 3 °C",
    right: "value = \"4 °C\"",
};

pub(super) static CHECK: Check = Check { rules: &[&OUT, &NEAR], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let all: Vec<_> = parts.all().collect();
        for reading in &parts.van.readings {
            acc.extend(judge(all[reading.fit], reading).map(|found| found.van(&parts.van.name)));
        }
    }
}

fn judge(part: Part, reading: &Reading) -> Option<Diagnostic> {
    let facts = part.module.facts.reading.get(&reading.name)?;
    let expected = Expected::of(part, facts)?;
    let within = |range: QuantityRange| range.contains(reading.value).unwrap_or(true);
    let rule = match (within(expected.good), within(expected.near)) {
        (true, _) => return None,
        (false, true) => &NEAR,
        (false, false) => &OUT,
    };
    let near = facts.near.as_ref().map_or(String::new(), |near| format!(", give or take {}", near.value));
    let message =
        format!("`{}` of {} was {}; expected is {}{near}", reading.name, part.quoted(), reading.value, expected.words);
    let found = Diagnostic::new(rule, reading.span, message).other(facts.expect.span, "what it is held against");
    Some(found.help("measure again; if it stays, put the part right and measure anew, or mend what it is held against"))
}

/// What a reading should be.
struct Expected {
    /// What is as it should be.
    good: QuantityRange,
    /// What is still near.
    near: QuantityRange,
    words: String,
}

impl Expected {
    /// Nothing is expected when a value that is named is not known in this van.
    ///
    /// A single quantity is never met to the last digit: what is near it is as good. A range has room of its own, so
    /// that what is only near it is worth a look.
    fn of(part: Part, facts: &ReadingFacts) -> Option<Expected> {
        let unit = Unit::find(&facts.unit)?;
        if let Some(one) = part.fit.quantity(&facts.expect) {
            let at = one.to(unit)?.amount;
            let near = widened(facts, QuantityRange { low: at, high: at, unit });
            return Some(Expected { good: near, near, words: one.to_string() });
        }
        let range = QuantityRange::parse(&facts.expect).ok()?;
        let end = |amount| Some(Quantity { amount, unit: range.unit }.to(unit)?.amount);
        let good = QuantityRange { low: end(range.low)?, high: end(range.high)?, unit };
        Some(Expected { good, near: widened(facts, good), words: range.to_string() })
    }
}

/// A range with what is near its ends. A share is one of the end, except where percent are what is measured.
fn widened(facts: &ReadingFacts, range: QuantityRange) -> QuantityRange {
    let Some(near) = facts.near.as_ref().and_then(|near| Quantity::parse(near).ok()) else {
        return range;
    };
    let share = near.unit.dimension == Dimension::Share && range.unit.dimension != Dimension::Share;
    // A difference of degrees has no offset, so that only the size of the unit counts.
    let room = |end: f64| match share {
        true => end.abs() * near.amount / 100.0,
        false => near.amount * near.unit.factor / range.unit.factor,
    };
    QuantityRange { low: range.low - room(range.low), high: range.high + room(range.high), unit: range.unit }
}
