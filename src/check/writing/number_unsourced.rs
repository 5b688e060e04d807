//! Numbers with a unit have a source.

use super::{Passages, beginning};
use crate::check::Checked;
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::Module;
use crate::model::quantity::Unit;

pub(super) static RULE: Rule = Rule {
    id: "number-unsourced",
    severity: Severity::Warning,
    asks: "A number with a unit in a text stands in a `[[source]]` of its module, or comes from a slot.",
    why: "A limit that nobody can trace may be wrong, and nobody would know whom to ask.",
    source: "the design of Lockerleaf: a number with no source is marked",
    wrong: "1. Wait 5 min. (and no source that says `5 min`)",
    right: "[[source]]\nsays = \"5 min\"\nfrom = \"practice\"\nis = \"usual wait before a burner is lit again\"",
};

/// Units that are no quantities of the program's own.
const MORE_UNITS: [&str; 9] = ["ppm", "%", "times", "tries", "miles", "years", "year", "turns", "°"];

/// Voltages that name a supply and limit nothing.
const NAMES: [&str; 2] = ["12 V", "230 V"];

/// Looks at one text of a module.
pub(super) fn run(acc: &mut Acc, checked: Checked, module: &Module, sections: &[Passages]) {
    let mut says: Vec<&str> = sources(module).chain(NAMES).collect();
    // A shared text is also covered by the sources of the modules that take it in.
    for other in checked.book.modules.iter().filter(|other| includes(checked, other, module)) {
        says.extend(sources(other));
    }
    // The longest first, so that "10 to 40 min" is taken before "40 min".
    says.sort_by_key(|says| std::cmp::Reverse(says.len()));
    for passage in sections.iter().flat_map(|section| &section.all) {
        for sentence in &passage.sentences {
            for number in numbers(&without(sentence, &says)) {
                let message = format!("`{number}` in `{}` has no source", beginning(sentence));
                let found = Diagnostic::new(&RULE, passage.span, message);
                acc.add(found.help(format!("add a `[[source]]` that says `{number}`, or show a value in its place")));
            }
        }
    }
}

fn sources(module: &Module) -> impl Iterator<Item = &str> {
    module.facts.source.iter().map(|source| source.says.value.as_str())
}

fn includes(checked: Checked, other: &Module, module: &Module) -> bool {
    other.includes.iter().any(|number| std::ptr::eq(&checked.book.modules[*number], module))
}

/// A sentence with all that sources say taken out of it.
fn without(sentence: &str, says: &[&str]) -> String {
    says.iter().fold(sentence.to_string(), |sentence, says| sentence.replace(says, " "))
}

/// The numbers with a unit: "5 min", "30 mbar".
fn numbers(sentence: &str) -> Vec<String> {
    let words: Vec<&str> = sentence.split_whitespace().collect();
    let pairs = words.windows(2).filter_map(|two| {
        let number = two[0].trim_start_matches(['(', '"', '“']);
        let unit = two[1].trim_end_matches(['.', ',', ';', ':', ')', '"', '”', '?', '!']);
        let counts = number.chars().next().is_some_and(|first| first.is_ascii_digit())
            && number.chars().all(|letter| letter.is_ascii_digit() || matches!(letter, '.' | ',' | '-' | '–'));
        (counts && is_unit(unit)).then(|| format!("{number} {unit}"))
    });
    pairs.collect()
}

fn is_unit(word: &str) -> bool {
    Unit::find(word).is_some() || MORE_UNITS.contains(&word)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_with_a_unit_are_found_and_others_are_not() {
        assert_eq!(numbers("Wait 5 min. It takes 8.5 A (about 10 A)."), ["5 min", "8.5 A", "10 A"]);
        assert_eq!(numbers("Ring 112 or 999. Press button 2. It has 2 lamps."), Vec::<String>::new());
        assert_eq!(without("Wait 10 to 40 min.", &["10 to 40 min", "40 min"]), "Wait  .");
    }
}
