//! Steps are in the active voice.

use super::prose::words;
use super::verbs::instructs;
use super::{Passages, Writing, beginning};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "step-passive",
    severity: Severity::Warning,
    asks: "The first sentence of a step says what to do in the active voice.",
    why: "\"The valve is opened\" does not say by whom. It may even be read as a fact.",
    source: "ASD-STE100: active voice in procedures (a magazine that quotes it)",
    wrong: "1. The valve must be opened.",
    right: "1. Open the valve.",
};

pub(super) static WRITING: Writing = Writing { run };

/// Past participles that do not end in `-ed`.
const IRREGULAR: [&str; 13] =
    ["put", "shut", "set", "done", "taken", "held", "drawn", "driven", "given", "let", "cut", "wound", "undone"];

fn run(acc: &mut Acc, sections: &[Passages]) {
    for passage in sections.iter().flat_map(Passages::steps) {
        let first = &passage.sentences[0];
        let conditional = first.starts_with("If ") || first.starts_with("When ");
        if is_passive(first) && !instructs(first) && !conditional {
            let message = format!("`{}` does not say who does it", beginning(first));
            acc.add(Diagnostic::new(&RULE, passage.span, message).help("begin with the verb: `Open the valve.`"));
        }
    }
}

/// Whether a form of "to be" stands before a past participle, with "must", "should", "is" or "are" before it.
fn is_passive(sentence: &str) -> bool {
    let words: Vec<String> = words(sentence).map(str::to_lowercase).collect();
    let participle = |word: &String| word.ends_with("ed") || IRREGULAR.contains(&word.as_str());
    words.windows(2).any(|two| matches!(two[0].as_str(), "be" | "is" | "are" | "being") && participle(&two[1]))
}
