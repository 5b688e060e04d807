//! Sentences are short.

use super::prose::words;
use super::{Kind, Passage, Passages, Writing, beginning};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "sentence-long",
    severity: Severity::Warning,
    asks: "A sentence of a step or a safety note has at most 20 words, any other at most 25.",
    why: "Readers stand in the rain with one hand free. They lose the thread of a long sentence.",
    source: "ASD-STE100: at most 20 words in a procedural sentence, 25 in a descriptive one (a magazine that quotes it)",
    wrong: "Turn the knob slowly to the left until you hear a click and then hold it there while you press the button beside it for ten seconds.",
    right: "Turn the knob to the left until it clicks. Hold it there. Press the button for 10 s.",
};

pub(super) static WRITING: Writing = Writing { run };

fn run(acc: &mut Acc, sections: &[Passages]) {
    sections.iter().flat_map(|section| &section.all).for_each(|passage| passage_of(acc, passage));
}

fn passage_of(acc: &mut Acc, passage: &Passage) {
    let most = if passage.kind == Kind::Words { 25 } else { 20 };
    for sentence in &passage.sentences {
        let count = words(sentence).count();
        if count > most {
            let message = format!("`{}` has {count} words, and {most} are the most", beginning(sentence));
            acc.add(Diagnostic::new(&RULE, passage.span, message).help("make two sentences of it"));
        }
    }
}
