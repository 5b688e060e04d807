//! The report in JSON, in a shape of our own:
//!
//! ```json
//! {
//!   "lockerleaf": "0.1.0",
//!   "report": 1,
//!   "counts": { "errors": 1, "warnings": 0 },
//!   "unchecked": [{ "rule": "output-link", "why": "..." }],
//!   "findings": [
//!     {
//!       "rule": "unknown-key", "severity": "error", "message": "...",
//!       "file": "models/test/one.toml", "line": 2, "column": 1, "end": { "line": 2, "column": 5 },
//!       "label": null, "help": ["did you mean `year`?"], "vans": ["test/one"],
//!       "other": { "file": "...", "line": 1, "column": 1, "end": { "line": 1, "column": 4 }, "label": "..." }
//!     }
//!   ]
//! }
//! ```
//!
//! `lockerleaf` is the version of the program, `report` that of this shape: it grows when a key changes its meaning or
//! goes, not when one is added. Every key is always there; what there is none of is null or an empty list. Findings
//! stand in the order of files and places in them; those without a place come first, with `file`, `line`, `column` and
//! `end` null. Files are paths in the book with forward slashes. Lines and columns count from 1, columns in characters
//! (Unicode scalar values) as in what the program prints; `end` is the point after the last character. `vans` lists the
//! vans in which it shows, where it takes a van to show. `unchecked` lists rules that could not be held against the book.

use super::{Inspected, Kind, Region, join};
use crate::diag::{Diagnostic, Severity};
use crate::model::source::Span;
use serde_json::{Value, json};

/// This kind.
pub(super) static KIND: Kind = Kind { name: "json", about: "in a shape of Lockerleaf's own", text };

/// The version of the shape.
const SHAPE: u32 = 1;

fn text(inspected: &Inspected) -> String {
    let unchecked = inspected.unchecked.iter().map(|left| json!({ "rule": left.rule.id, "why": left.why }));
    let report = json!({
        "lockerleaf": env!("CARGO_PKG_VERSION"),
        "report": SHAPE,
        "counts": {
            "errors": inspected.acc.count(Severity::Error),
            "warnings": inspected.acc.count(Severity::Warning),
        },
        "unchecked": unchecked.collect::<Vec<_>>(),
        "findings": inspected.findings().into_iter().map(|found| finding(inspected, found)).collect::<Vec<_>>(),
    });
    format!("{report:#}\n")
}

fn finding(inspected: &Inspected, found: &Diagnostic) -> Value {
    let mut all = json!({
        "rule": found.rule.id,
        "severity": found.severity.word(),
        "message": found.message,
    });
    join(&mut all, place(inspected, found.span));
    join(&mut all, json!({ "label": found.label, "help": found.help, "vans": found.vans }));
    let other = found.other.as_ref().map(|(span, label)| {
        let mut other = place(inspected, Some(*span));
        join(&mut other, json!({ "label": label }));
        other
    });
    join(&mut all, json!({ "other": other }));
    all
}

fn place(inspected: &Inspected, span: Option<Span>) -> Value {
    let Some(span) = span else {
        return json!({ "file": null, "line": null, "column": null, "end": null });
    };
    let Region { start, end } = inspected.region(span, |_| 1);
    json!({
        "file": inspected.path(span),
        "line": start.line,
        "column": start.column,
        "end": { "line": end.line, "column": end.column },
    })
}
