//! The report in SARIF 2.1.0 (OASIS Standard, 27 March 2020).
//!
//! Paths are relative to the book's folder, which `uriBaseId` stands for; the one who reads knows where that is. A
//! finding without a place is one of the whole book, so it points at `book.toml`, without a region: readers refuse
//! results that are nowhere.

use super::{Inspected, Kind, Unchecked};
use crate::diag::{Diagnostic, Rule, suggest};
use crate::model::source::Span;
use crate::render::links::encode;
use serde_json::{Value, json};
use std::collections::HashMap;

/// This kind.
pub(super) static KIND: Kind = Kind { name: "sarif", about: "SARIF 2.1.0", text };

/// The `$id` of the published schema.
const SCHEMA: &str = "https://raw.githubusercontent.com/oasis-tcs/sarif-spec/master/Schemata/sarif-schema-2.1.0.json";

/// What stands for the book's folder.
const BOOK: &str = "%SRCROOT%";

/// The number of the related place among a result's related places, which its message links to.
const OTHER: u32 = 1;

fn text(inspected: &Inspected) -> String {
    let report = json!({
        "$schema": SCHEMA,
        "version": "2.1.0",
        "runs": [{
            "tool": {
                "driver": {
                    "name": "lockerleaf",
                    "version": env!("CARGO_PKG_VERSION"),
                    "rules": inspected.rules.iter().map(|rule| described(rule)).collect::<Vec<_>>(),
                },
            },
            "invocations": [invocation(inspected)],
            "originalUriBaseIds": { BOOK: { "description": { "text": "the folder of the book" } } },
            "columnKind": "utf16CodeUnits",
            "results": results(inspected),
        }],
    });
    format!("{report:#}\n")
}

fn described(rule: &Rule) -> Value {
    let parts = [("Why", rule.why), ("Source", rule.source), ("Wrong", rule.wrong), ("Right", rule.right)];
    let text = parts.map(|(title, text)| format!("{title}:\n{text}")).join("\n\n");
    let code = |text: &str| text.lines().map(|line| format!("    {line}")).collect::<Vec<_>>().join("\n");
    let markdown = format!(
        "{}\n\nSource: {}\n\nWrong:\n\n{}\n\nRight:\n\n{}",
        rule.why,
        rule.source,
        code(rule.wrong),
        code(rule.right)
    );
    json!({
        "id": rule.id,
        "shortDescription": { "text": plain(rule.asks) },
        "fullDescription": { "text": plain(&format!("{} {}", rule.asks, rule.why)) },
        "help": { "text": plain(&text), "markdown": markdown },
        "defaultConfiguration": { "level": rule.severity.word() },
    })
}

fn invocation(inspected: &Inspected) -> Value {
    let note = |left: &Unchecked| {
        json!({
            "level": "note",
            "message": { "text": plain(&format!("`{}` was not checked: {}", left.rule.id, left.why)) },
            "associatedRule": { "id": left.rule.id, "index": index(inspected, left.rule) },
        })
    };
    let notes: Vec<_> = inspected.unchecked.iter().map(note).collect();
    json!({ "executionSuccessful": true, "toolExecutionNotifications": notes })
}

fn index(inspected: &Inspected, rule: &Rule) -> Option<usize> {
    inspected.rules.iter().position(|listed| listed.id == rule.id)
}

fn results(inspected: &Inspected) -> Vec<Value> {
    let mut seen = HashMap::new();
    let mut results = Vec::new();
    for found in inspected.findings() {
        let path = found.span.map_or("", |span| inspected.path(span));
        let times: &mut usize = seen.entry((found.rule.id, path, &found.message)).or_default();
        *times += 1;
        results.push(result(inspected, found, &fingerprint(found, path, *times)));
    }
    results
}

fn result(inspected: &Inspected, found: &Diagnostic, fingerprint: &str) -> Value {
    let mut result = json!({
        "ruleId": found.rule.id,
        "ruleIndex": index(inspected, found.rule),
        "level": found.severity.word(),
        "message": { "text": message(found) },
        "locations": [location(inspected, found.span, found.label.as_deref())],
        "partialFingerprints": { "lockerleafFinding/v1": fingerprint },
    });
    if let Some((span, label)) = &found.other {
        let mut other = location(inspected, Some(*span), Some(label));
        other["id"] = json!(OTHER);
        result["relatedLocations"] = json!([other]);
    }
    if !found.vans.is_empty() {
        result["properties"] = json!({ "vans": found.vans });
    }
    result
}

/// What is wrong, then on lines of their own what stands beside it: readers show little more of a result than this.
fn message(found: &Diagnostic) -> String {
    let mut lines = vec![plain(&found.message)];
    lines.extend(found.label.as_deref().map(plain));
    if let Some((_, label)) = &found.other {
        lines.push(format!("see: [{}]({OTHER})", linked(label)));
    }
    if !found.vans.is_empty() {
        lines.push(plain(&format!("in: {}", suggest::list(&found.vans))));
    }
    lines.extend(found.help.iter().map(|help| plain(&format!("help: {help}"))));
    lines.join("\n")
}

/// A message without links and placeholders: SARIF reads `[a](b)` as a link (3.11.6) and `{0}` as a placeholder (3.11.5).
/// Other braces stay single, since readers show doubled ones as they are.
fn plain(text: &str) -> String {
    let text = numbers(text);
    let Some((links, rest)) = text.rsplit_once("](") else {
        return text;
    };
    let opened = |link: &str| match link.rsplit_once('[') {
        Some((before, words)) => format!("{before}\\[{words}"),
        None => link.to_string(),
    };
    let links: Vec<_> = links.split("](").map(opened).collect();
    format!("{}\\]({rest}", links.join("\\]("))
}

/// Words for the text of a link.
fn linked(text: &str) -> String {
    numbers(text).replace('[', "\\[").replace(']', "\\]")
}

/// Doubles the braces round each number.
fn numbers(text: &str) -> String {
    let mut parts = text.split('{');
    let mut out = parts.next().unwrap_or_default().to_string();
    for part in parts {
        match part.split_once('}') {
            Some((inner, rest)) if !inner.is_empty() && inner.bytes().all(|byte| byte.is_ascii_digit()) => {
                out.push_str(&format!("{{{{{inner}}}}}{rest}"));
            }
            _ => out.push_str(&format!("{{{part}")),
        }
    }
    out
}

fn location(inspected: &Inspected, span: Option<Span>, label: Option<&str>) -> Value {
    let path = span.map_or("book.toml", |span| inspected.path(span));
    let mut place = json!({ "artifactLocation": { "uri": encode(path), "uriBaseId": BOOK } });
    if let Some(span) = span {
        let region = inspected.region(span, char::len_utf16);
        place["region"] = json!({
            "startLine": region.start.line,
            "startColumn": region.start.column,
            "endLine": region.end.line,
            "endColumn": region.end.column,
        });
    }
    let mut location = json!({ "physicalLocation": place });
    if let Some(label) = label {
        location["message"] = json!({ "text": plain(label) });
    }
    location
}

/// The same for the same finding after lines were added above it: rule, file, words, and the how-manieth of these.
fn fingerprint(found: &Diagnostic, path: &str, times: usize) -> String {
    let parts = [found.rule.id, path, &found.message, &times.to_string()].join("\0");
    blake3::hash(parts.as_bytes()).to_hex()[..32].to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_of_a_message_are_never_taken_for_links_or_placeholders() {
        assert_eq!(plain("write `[Gas](hazard:gas)`"), "write `\\[Gas\\](hazard:gas)`");
        assert_eq!(plain("[[a]] [b](c) [d](e) [f]"), "[[a]] \\[b\\](c) \\[d\\](e) [f]");
        assert_eq!(plain("](x"), "\\](x");
        assert_eq!(plain("`[[place]]` with {0} and {mains-current} {"), "`[[place]]` with {{0}} and {mains-current} {");
    }
}
