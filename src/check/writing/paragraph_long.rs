//! Paragraphs are short.

use super::{Passages, Writing};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "paragraph-long",
    severity: Severity::Warning,
    asks: "A paragraph has at most 6 sentences.",
    why: "On a phone a long paragraph fills the screen, and nobody finds the sentence that matters.",
    source: "ASD-STE100: at most 6 sentences in a paragraph (a magazine that quotes it)",
    wrong: "seven sentences in one paragraph",
    right: "two paragraphs, or a list",
};

pub(super) static WRITING: Writing = Writing { run };

/// The most sentences of a paragraph.
const MOST: usize = 6;

fn run(acc: &mut Acc, sections: &[Passages]) {
    for passage in sections.iter().flat_map(|section| &section.all).filter(|passage| passage.sentences.len() > MOST) {
        let message = format!("this paragraph has {} sentences, and {MOST} are the most", passage.sentences.len());
        acc.add(Diagnostic::new(&RULE, passage.span, message).help("divide it, or make a list of it"));
    }
}
