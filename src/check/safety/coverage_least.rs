//! The least coverage that a book asks of itself.

use super::{Check, Guarded};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "coverage-least",
    severity: Severity::Error,
    asks: "Safety coverage, met in hundredths of required, is not below `[safety] least`.",
    why: "The dealer said what they stake their name on.",
    source: "the design of Lockerleaf: safety coverage",
    wrong: "least = 95, and a coverage of 93.2",
    right: "the notes that are missing",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let Some(least) = guarded.book.least() else {
        return;
    };
    let percent = guarded.coverage.percent();
    if !(0.0..=100.0).contains(&least.value) {
        acc.add(
            Diagnostic::new(&RULE, least.span, format!("`{}` is no share in hundredths", least.value))
                .help("give a number from 0 to 100"),
        );
    } else if percent < least.value && guarded.book.tolerates_gaps() {
        // With full coverage asked, each gap is an error of its own.
        let (asked, met) = guarded.coverage.counts();
        let found = Diagnostic::new(
            &RULE,
            least.span,
            format!("safety coverage is {percent:.2}, and {} is asked: {met} of {asked} are met", least.value),
        );
        acc.add(found.help("`lockerleaf inspect --coverage` shows what is missing"));
    }
}
