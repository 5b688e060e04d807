//! What a workshop measured is what it should be.

use super::parts::{self, Part};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::expected::{Expected, Standing};
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
    let expected = Expected::of(part.fit, facts)?;
    let rule = match expected.standing(reading.value) {
        Standing::In => return None,
        Standing::Near => &NEAR,
        Standing::Out => &OUT,
    };
    let words = expected.one.map_or_else(|| expected.good.to_string(), |one| one.to_string());
    let near = facts.near.as_ref().map_or(String::new(), |near| format!(", give or take {}", near.value));
    let message = format!("`{}` of {} was {}; expected is {words}{near}", reading.name, part.quoted(), reading.value);
    let found = Diagnostic::new(rule, reading.span, message).other(facts.expect.span, "what it is held against");
    Some(found.help("measure again; if it stays, put the part right and measure anew, or mend what it is held against"))
}
