//! After lighting something or switching it on, a task says what to see.

use super::verbs::instructs;
use super::{Kind, Passage, Passages, Writing, beginning};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::text::Role;

pub(super) static RULE: Rule = Rule {
    id: "result-missing",
    severity: Severity::Warning,
    asks: "A step of a task that lights something or switches it on, or one of the two steps after it, says what to see, hear or feel.",
    why: "Without it nobody knows whether it worked: gas flows without a flame, or the van is cold in the morning.",
    source: "IEC/IEEE 82079-1, from memory: instructions say the expected result",
    wrong: "1. Press the button to light the burner.",
    right: "1. Press the button to light the burner. You should see a blue flame.",
};

pub(super) static WRITING: Writing = Writing { run };

/// How many steps later the result may stand.
const LATER: usize = 2;

fn run(acc: &mut Acc, sections: &[Passages]) {
    for section in sections.iter().filter(|section| section.role() == Some(Role::Task)) {
        let steps: Vec<&Passage> = section.steps().collect();
        for (number, step) in steps.iter().enumerate().filter(|(_, step)| starts(step)) {
            let after = steps[number..].iter().take(LATER + 1).filter(|later| later.list == step.list);
            if !after.into_iter().any(|step| tells(step)) && !told_in_words(section) {
                let message = format!("`{}` does not say what to see after it", beginning(&step.sentences[0]));
                acc.add(
                    Diagnostic::new(&RULE, step.span, message)
                        .help("add what to see, hear or feel: `You should see a blue flame.`"),
                );
            }
        }
    }
}

/// Whether a step lights something or switches it on.
fn starts(step: &Passage) -> bool {
    let lights = |sentence: &String| {
        let lower = sentence.to_lowercase();
        instructs(sentence)
            && !lower.starts_with("never")
            && !lower.starts_with("do not")
            && (lower.starts_with("light ") || lower.starts_with("switch on ") || lower.starts_with("ignite "))
    };
    step.sentences.iter().any(lights)
}

/// Whether a step says what to notice, or has the reader look.
fn tells(step: &Passage) -> bool {
    step.sentences.iter().any(|sentence| {
        let lower = sentence.to_lowercase();
        let looks = ["look", "check", "watch", "listen", "feel", "read", "wait until", "see", "test"];
        lower.contains("should")
            || looks.iter().any(|look| lower.starts_with(look))
            || [" until ", " you see", " you hear", " you feel"].iter().any(|word| lower.contains(word))
            || (!instructs(sentence) && !lower.starts_with("if "))
    })
}

/// Whether words after the steps tell it.
fn told_in_words(section: &Passages) -> bool {
    section.all.iter().any(|passage| passage.kind == Kind::Words && tells(passage) && passage.list > 0)
}
