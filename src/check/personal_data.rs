//! People's data in a manifest.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::source::{FileId, Span};
use regex::Regex;
use std::sync::LazyLock;

static RULE: Rule = Rule {
    id: "personal-data",
    severity: Severity::Error,
    asks: "No manifest holds an owner's name, address, telephone number or the vehicle's identity number, in remarks neither.",
    why: "Guides are public to whoever has the key, and the book is copied to many machines.",
    source: "Regulation (EU) 2016/679, Article 5(1)(c): no more personal data than the purpose needs",
    wrong: "says = \"Ring Mrs Example on 01632 960001\"",
    right: "says = \"Ring us before you reset it\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

/// What personal data looks like, each with what to call it.
static LOOKS: LazyLock<Vec<(Regex, &str)>> = LazyLock::new(|| {
    [
        (r"[A-Za-z0-9._%+-]+@[A-Za-z0-9-]+(\.[A-Za-z0-9-]+)+", "an address for electronic mail"),
        (r"(\+[0-9]|\b0)[0-9]([ ()-]?[0-9]){7,}\b", "a telephone number"),
        (r"\b[A-Z]{1,2}[0-9][A-Z0-9]? ?[0-9][ABD-HJLNP-UW-Z]{2}\b", "a postcode"),
        (r"\b(Mr|Mrs|Ms|Miss|Dr|Herr|Frau)\.? [A-Z][a-z]+", "a person's name"),
        (r"(?i)\b(owner|buyer|customer)('s)? (is|name|called)\b", "who the owner is"),
        (r"\b[A-HJ-NPR-Z0-9]{3}[A-HJ-NPR-Z0-9]{9}[0-9]{5}\b", "a vehicle identity number"),
        (r"(?i)\b[0-9]{1,4},? [A-Z][a-z]+ (street|road|lane|avenue|close|drive)\b", "a postal address"),
    ]
    .into_iter()
    .filter_map(|(pattern, what)| Some((Regex::new(pattern).ok()?, what)))
    .collect()
});

fn run(acc: &mut Acc, checked: Checked) {
    for model in &checked.book.models {
        look(acc, checked, model.file);
        model.vans.iter().for_each(|van| look(acc, checked, van.file));
    }
}

fn look(acc: &mut Acc, checked: Checked, file: FileId) {
    let text = &checked.book.sources.get(file).text;
    for (pattern, what) in LOOKS.iter() {
        for found in pattern.find_iter(text) {
            let span = Span::new(file, found.range());
            let message = format!("`{}` looks like {what}", found.as_str());
            acc.add(Diagnostic::new(&RULE, span, message).help(
                "take it out: nothing personal belongs in a manifest; the handover record leaves room for it on paper",
            ));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn looks(text: &str) -> bool {
        LOOKS.iter().any(|(pattern, _)| pattern.is_match(text))
    }

    #[test]
    fn all_patterns_are_valid() {
        assert_eq!(LOOKS.len(), 7);
    }

    #[test]
    fn data_of_people_is_seen_and_data_of_vehicles_is_not() {
        for personal in [
            "ann@mail.example",
            "+44 1632 960001",
            "01632 960 001",
            "SW1A 1AA",
            "Mrs Example",
            "the owner is away",
            "WVWZZZ1JZXW000001",
            "12 High Street",
        ] {
            assert!(looks(personal), "{personal}");
        }
        for technical in [
            "2026-09-14",
            "[5200, 0, 700]",
            "SLV-1042",
            "13.2 to 14.4 V",
            "M7QK3WZD",
            "0.58 A",
            "the owner can reset it",
            "position = [10, 1000, 20000]",
        ] {
            assert!(!looks(technical), "{technical}");
        }
    }
}
