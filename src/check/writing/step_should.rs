//! Steps command; "should" is for what a reader ought to see.

use super::prose::words;
use super::{Passages, Writing, beginning};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "step-should",
    severity: Severity::Warning,
    asks: "A step says what to do, not what the reader should do.",
    why: "\"You should turn off the gas\" can be read as advice. A step is not advice.",
    source: "ASD-STE100: instructions are commands (a magazine that quotes it); common practice",
    wrong: "1. You should turn off the gas.",
    right: "1. Turn off the gas. The hiss should stop.",
};

pub(super) static WRITING: Writing = Writing { run };

/// What a reader ought to notice; these verbs may follow "you should".
const NOTICED: [&str; 9] = ["see", "hear", "feel", "smell", "find", "notice", "read", "have", "get"];

fn run(acc: &mut Acc, sections: &[Passages]) {
    for passage in sections.iter().flat_map(Passages::steps) {
        for sentence in passage.sentences.iter().filter(|sentence| advises(sentence)) {
            let message = format!("`{}` is advice, and a step is a command", beginning(sentence));
            acc.add(Diagnostic::new(&RULE, passage.span, message).help("begin with the verb: `Turn off the gas.`"));
        }
    }
}

/// Whether a sentence says "you should", "you must" or "you need to" with something that a reader does.
fn advises(sentence: &str) -> bool {
    if sentence.starts_with("If ") {
        return false;
    }
    let words: Vec<String> = words(sentence).map(str::to_lowercase).collect();
    words.windows(3).any(|three| {
        three[0] == "you"
            && (matches!(three[1].as_str(), "should" | "must" | "ought") || three[1] == "need" && three[2] == "to")
            && !NOTICED.contains(&three[2].as_str())
            && !matches!(three[2].as_str(), "be" | "not" | "now" | "still" | "no" | "also")
    })
}
