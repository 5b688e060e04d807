//! The texts are easy to read.

use super::prose::Counts;
use super::{Kind, Passages, Writing};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "hard-to-read",
    severity: Severity::Warning,
    asks: "A text has a reading ease of 60 or more, and its steps of 70 or more.",
    why: "Owners read it in a hurry, in the dark, and some of them in a language that they learnt at school.",
    source: "Flesch reading ease: 206.835 - 1.015 words a sentence - 84.6 syllables a word; 60 to 70 is plain English (two pages)",
    wrong: "Subsequently initiate the ignition procedure.",
    right: "Now light it.",
};

pub(super) static WRITING: Writing = Writing { run };

/// The least ease of a whole text, and of its steps.
const LEAST: (f64, f64) = (60.0, 70.0);

/// A text is only judged from so many words on, or a few of them decide.
const ENOUGH: usize = 60;

fn run(acc: &mut Acc, sections: &[Passages]) {
    let counts = |wanted: fn(Kind) -> bool| {
        let passages = sections.iter().flat_map(|section| &section.all).filter(|passage| wanted(passage.kind));
        passages.map(|passage| Counts::of(&passage.sentences)).fold(Counts::default(), Counts::and)
    };
    let whole = (counts(|_| true), LEAST.0, "this text has");
    let steps = (counts(|kind| kind == Kind::Step), LEAST.1, "the steps of this text have");
    for (counts, least, what) in [whole, steps] {
        if let (Some(ease), Some(section)) =
            (counts.ease().filter(|ease| *ease < least && counts.words >= ENOUGH), sections.first())
        {
            let message = format!("{what} a reading ease of {ease:.0}, and {least} is the least");
            let found = Diagnostic::new(&RULE, section.text.title.span, message);
            acc.add(found.help("take shorter sentences, and shorter words"));
        }
    }
}
