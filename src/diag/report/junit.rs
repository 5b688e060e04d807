//! The report in JUnit XML: each rule is a suite, each finding a test case in it. The only file that knows the crate.
//!
//! JUnit XML has no owner; this is the form that services for continuous integration show best. They list what failed
//! by `classname` and `name`, and follow a case from run to run by those two: so neither holds a line number, and each
//! pair stands once. A rule that found nothing is one case that passed, named by what the rule asks, so that a report is
//! never empty. An error failed. A warning stops nothing and must not turn a build red, yet has to be seen: it is
//! `skipped`, with the type `warning`. A rule that could not be held against the book is `skipped` too, with the type
//! `unchecked`. So failures are errors; `file` and `line`, which many services read, say where. There are no times.

use super::{Inspected, Kind, Unchecked};
use crate::diag::{Diagnostic, Rule, Severity, print};
use quick_junit::{NonSuccessKind, Report, TestCase, TestCaseStatus, TestSuite};
use std::collections::HashMap;

/// This kind.
pub(super) static KIND: Kind = Kind { name: "junit", about: "JUnit XML", text };

fn text(inspected: &Inspected) -> String {
    let findings = inspected.findings();
    let mut report = Report::new("lockerleaf");
    for rule in inspected.rules {
        let own: Vec<_> = findings.iter().copied().filter(|found| found.rule.id == rule.id).collect();
        let mut suite = TestSuite::new(rule.id);
        match (&own[..], inspected.unchecked.iter().find(|left| left.rule.id == rule.id)) {
            ([], Some(left)) => suite.add_test_case(unchecked(left)),
            ([], None) => suite.add_test_case(case(rule, rule.asks, TestCaseStatus::success())),
            _ => suite.add_test_cases(cases(inspected, &own)),
        };
        report.add_test_suite(suite);
    }
    report.to_string().expect("text in UTF-8 can be written to memory")
}

fn case(rule: &Rule, name: &str, status: TestCaseStatus) -> TestCase {
    let mut case = TestCase::new(line(name), status);
    case.set_classname(format!("lockerleaf.{}", rule.id));
    case
}

fn unchecked(left: &Unchecked) -> TestCase {
    let mut status = TestCaseStatus::skipped();
    status.set_type("unchecked").set_message(line(left.why));
    case(left.rule, left.rule.asks, status)
}

/// The cases of one rule's findings, each under a name of its own.
fn cases(inspected: &Inspected, findings: &[&Diagnostic]) -> Vec<TestCase> {
    let mut seen: HashMap<String, usize> = HashMap::new();
    let mut cases = Vec::new();
    for found in findings {
        let name = match found.span {
            Some(span) => format!("{}: {}", inspected.path(span), found.message),
            None => found.message.clone(),
        };
        let times = seen.entry(name.clone()).or_default();
        *times += 1;
        let name = if *times > 1 { format!("{name} ({times})") } else { name };
        cases.push(finding(inspected, found, &name));
    }
    cases
}

fn finding(inspected: &Inspected, found: &Diagnostic, name: &str) -> TestCase {
    let mut status = match found.severity {
        Severity::Error => TestCaseStatus::non_success(NonSuccessKind::Failure),
        Severity::Warning => TestCaseStatus::skipped(),
    };
    status.set_type(found.severity.word()).set_message(line(&found.message));
    status.set_description(lines(&print::one(found, inspected.sources)));
    let mut case = case(found.rule, name, status);
    if let Some(span) = found.span {
        case.extra.insert("file".into(), line(inspected.path(span)).into());
        case.extra.insert("line".into(), inspected.region(span, |_| 1).start.line.to_string().into());
    }
    case
}

/// Text for an attribute, where XML 1.0 (3.3.3) makes a space of each line end.
fn line(text: &str) -> String {
    lines(text).replace('\n', " ")
}

/// Text with only characters that XML 1.0 (2.2) can hold, and none that the crate would drop with what follows it.
fn lines(text: &str) -> String {
    let held = |c: char| match c {
        '\t' => ' ',
        '\n' => c,
        '\u{fffe}' | '\u{ffff}' => char::REPLACEMENT_CHARACTER,
        c if c.is_control() => char::REPLACEMENT_CHARACTER,
        c => c,
    };
    text.replace("\r\n", "\n").chars().map(held).collect()
}
