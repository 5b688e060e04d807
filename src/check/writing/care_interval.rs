//! Care has an interval.

use super::prose;
use super::{Passages, Writing};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::text::Role;

pub(super) static RULE: Rule = Rule {
    id: "care-interval",
    severity: Severity::Warning,
    asks: "A section of care says how often, or when.",
    why: "Care without a time is never done.",
    source: "IEC/IEEE 82079-1, from memory: maintenance information gives intervals",
    wrong: "## Clean the filter {#clean .care}\n\n1. Take the filter out.",
    right: "## Clean the filter {#clean .care}\n\nDo this every 3 months.\n\n1. Take the filter out.",
};

pub(super) static WRITING: Writing = Writing { run };

/// Words that say how often or when.
const WHEN: [&str; 25] = [
    "every ",
    "each ",
    "once a ",
    "twice a ",
    "yearly",
    "monthly",
    "weekly",
    "daily",
    "a year",
    "a month",
    "a week",
    "season",
    "spring",
    "autumn",
    "winter",
    "before ",
    "after ",
    "when ",
    "as soon as ",
    "by the date",
    "whenever ",
    "at least ",
    " months",
    " years",
    " hours",
];

fn run(acc: &mut Acc, sections: &[Passages]) {
    for section in sections.iter().filter(|section| section.role() == Some(Role::Care)) {
        let says = |sentence: &String| WHEN.iter().any(|when| sentence.to_lowercase().contains(when));
        let heading = section.section.map(|section| prose::text(&section.title)).unwrap_or_default();
        if !says(&heading) && !section.all.iter().flat_map(|passage| &passage.sentences).any(says) {
            let found = Diagnostic::new(&RULE, section.span(), "this care does not say how often");
            acc.add(found.help("begin with it: `Do this every 3 months.`"));
        }
    }
}
