//! Terms of the trade are explained where they are first read.

use super::prose::words;
use super::{Passages, Writing};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

pub(super) static RULE: Rule = Rule {
    id: "term-unexplained",
    severity: Severity::Warning,
    asks: "A term of the trade is explained in the sentence where a text uses it first, or in the one before or after.",
    why: "An owner who does not know the word cannot follow the step.",
    source: "IEC/IEEE 82079-1, from memory: terms that the audience may not know are explained",
    wrong: "The MPPT controller feeds the battery.",
    right: "The controller is an MPPT one: it finds the voltage at which the panel gives most.",
};

pub(super) static WRITING: Writing = Writing { run };

/// Terms that owners are not expected to know.
const TERMS: &[&str] = &[
    "AGM",
    "DC-DC",
    "ECU",
    "GRP",
    "LiFePO4",
    "MCB",
    "MPPT",
    "MTPLM",
    "Peukert",
    "PWM",
    "RCD",
    "SOC",
    "accumulator",
    "bayonet",
    "bulkhead",
    "diaphragm",
    "electrolyte",
    "inverter",
    "jockey",
    "micro-switch",
    "noseweight",
    "NTC",
    "relay",
    "solenoid",
    "stratification",
    "sump",
    "thermocouple",
    "thermistor",
    "venturi",
];

/// Words and marks that explain.
const EXPLAINS: &[&str] = &[
    "(",
    ":",
    ", or ",
    " or ",
    "called",
    " means",
    "short for",
    " is a",
    " is an",
    " is the",
    " are ",
    "that is",
    "stands for",
    " a small ",
    " which ",
    " that ",
    ", the ",
    ", a ",
    ", an ",
    " cuts ",
    " turns ",
];

fn run(acc: &mut Acc, sections: &[Passages]) {
    let Some(title) = sections.first().map(|section| section.text.title.value.to_lowercase()) else {
        return;
    };
    for term in TERMS.iter().filter(|term| !title.contains(&term.to_lowercase())) {
        if let Some((section, span)) = first_unexplained(sections, term) {
            let message = format!("`{term}` is a term of the trade, and this text does not explain it");
            let found = Diagnostic::new(&RULE, span, message);
            acc.add(
                found.help(format!(
                    "explain it where it is first read, or use a word that owners know{}",
                    place(section)
                )),
            );
        }
    }
}

fn place(section: &Passages) -> String {
    section.section.map(|section| format!(" (`{}`)", *section.id)).unwrap_or_default()
}

/// Where a term is first read, unless it is explained there.
fn first_unexplained<'a>(
    sections: &'a [Passages<'a>],
    term: &str,
) -> Option<(&'a Passages<'a>, crate::model::source::Span)> {
    let holds = |sentence: &String| words(sentence).any(|word| word.eq_ignore_ascii_case(term));
    let passages = sections.iter().flat_map(|section| section.all.iter().map(move |passage| (section, passage)));
    let (section, passage, at) = passages
        .filter_map(|(section, passage)| Some((section, passage, passage.sentences.iter().position(holds)?)))
        .next()?;
    let near = &passage.sentences[at.saturating_sub(1)..(at + 2).min(passage.sentences.len())];
    let whole = sections.iter().flat_map(|section| &section.all).flat_map(|passage| &passage.sentences);
    let told = whole.into_iter().filter(|sentence| holds(sentence)).any(|sentence| defines(sentence, term));
    let explained = told || near.iter().any(|sentence| EXPLAINS.iter().any(|mark| sentence.contains(mark)));
    (!explained).then_some((section, passage.span))
}

/// Whether a sentence says what a term means: "RCD is short for...", "An inverter makes...".
fn defines(sentence: &str, term: &str) -> bool {
    let (lower, term) = (sentence.to_lowercase(), term.to_lowercase());
    let begins = ["a", "an"].iter().any(|article| lower.starts_with(&format!("{article} {term} ")));
    begins || ["short for", "stands for", " means ", "called"].iter().any(|mark| lower.contains(mark))
}
