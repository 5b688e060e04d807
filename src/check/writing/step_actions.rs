//! One action a step.

use super::prose::words;
use super::verbs::{instructs, is_verb};
use super::{Passage, Passages, Writing, beginning};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "step-actions",
    severity: Severity::Warning,
    asks: "A sentence of a step holds one action, and a step one, or two that belong together.",
    why: "Who looks up from the page to do the first action forgets the second.",
    source: "ASD-STE100: one instruction in a sentence (a magazine that quotes it); common practice",
    wrong: "1. Close the valve, then open the tap, and look at the gauge.",
    right: "1. Close the valve.\n2. Open the tap.\n3. Look at the gauge.",
};

pub(super) static WRITING: Writing = Writing { run };

/// The most instructions of a step: an action, and what belongs to it.
const MOST: usize = 3;

fn run(acc: &mut Acc, sections: &[Passages]) {
    for passage in sections.iter().flat_map(Passages::steps) {
        match joined(passage) {
            Some(sentence) => {
                let message = format!("`{}` holds more than one action", beginning(sentence));
                acc.add(Diagnostic::new(&RULE, passage.span, message).help("make a sentence, or a step, of each"));
            }
            None => too_many(acc, passage),
        }
    }
}

fn too_many(acc: &mut Acc, passage: &Passage) {
    let count = passage.sentences.iter().filter(|sentence| instructs(sentence)).count();
    if count > MOST {
        let message = format!("`{}` holds {count} actions", beginning(&passage.sentences[0]));
        acc.add(Diagnostic::new(&RULE, passage.span, message).help("make a step of each"));
    }
}

/// A sentence in which "then" joins a second command to the first.
fn joined(passage: &Passage) -> Option<&String> {
    passage.sentences.iter().filter(|sentence| instructs(sentence)).find(|sentence| {
        let words: Vec<&str> = words(sentence).collect();
        let then = words.windows(2).skip(1);
        then.into_iter().any(|two| two[0].eq_ignore_ascii_case("then") && is_verb(two[1]))
    })
}
