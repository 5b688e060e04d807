//! Every rule finds what its fixture expects, in its place, and nothing in the mended book.

mod common;

use common::{book, findings, fixtures, split};
use lockerleaf::diag::Severity;
use lockerleaf::{check, look};
use std::collections::BTreeSet;

#[test]
fn the_base_book_has_nothing_to_mend() {
    let looked = look(&book("")).unwrap();
    assert_eq!(findings(&looked.acc, &looked.book.sources), BTreeSet::new());
    assert_eq!(looked.vans.len(), 1);
}

#[test]
fn each_fixture_finds_what_it_expects_and_its_mended_book_finds_nothing() {
    let mut failures = Vec::new();
    for (name, text) in fixtures() {
        let (wrong, right) = text.split_once("//=\n").unwrap_or((&text, ""));
        let (wrong, expected) = split(wrong);
        assert!(!expected.is_empty(), "{name} expects nothing");
        let looked = look(&book(&wrong)).unwrap();
        let found = findings(&looked.acc, &looked.book.sources);
        if found != expected {
            failures.push(format!("{name}: expected {expected:?}\n  found {found:?}"));
        }
        let looked = look(&book(right)).unwrap();
        let found = findings(&looked.acc, &looked.book.sources);
        if !found.is_empty() {
            failures.push(format!("{name}, mended: found {found:?}"));
        }
    }
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

#[test]
fn each_rule_has_a_fixture_and_each_error_says_what_to_do() {
    let mut seen = BTreeSet::new();
    for (name, text) in fixtures() {
        let (wrong, _) = split(text.split("//=\n").next().unwrap_or_default());
        let looked = look(&book(&wrong)).unwrap();
        for diagnostic in looked.acc.in_file_order(&looked.book.sources) {
            seen.insert(diagnostic.rule.id);
            assert!(!diagnostic.help.is_empty(), "{name}: {} gives no help", diagnostic.message);
            assert!(!diagnostic.message.ends_with('.'), "{name}: {}", diagnostic.message);
        }
    }
    // Fixtures are UTF-8, and links of finished pages need pages on a disk: tests/mistakes.rs and tests/assemble.rs
    // have their cases.
    let missing: Vec<_> = check::rules()
        .iter()
        .map(|rule| rule.id)
        .filter(|id| !seen.contains(id) && !["not-utf-8", "output-link"].contains(id))
        .collect();
    assert!(missing.is_empty(), "rules without a fixture: {missing:?}");
}

#[test]
fn warnings_stop_nothing() {
    let rules = check::rules();
    assert!(rules.iter().any(|rule| rule.severity == Severity::Warning));
    assert!(rules.iter().any(|rule| rule.severity == Severity::Error));
}
