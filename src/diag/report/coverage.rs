//! Safety coverage in JSON, in a shape of our own:
//!
//! ```json
//! {
//!   "lockerleaf": "0.1.0",
//!   "coverage": 1,
//!   "measured": true,
//!   "asked": 2354, "met": 2354, "percent": 100.0,
//!   "vans": [
//!     {
//!       "van": "test/one", "asked": 6, "met": 5, "percent": 83.3,
//!       "cells": [
//!         {
//!           "fit": "gas", "hazard": "lpg-leak", "language": "en",
//!           "there": "met", "strong": "met", "whole": "missed", "before": "not-asked", "at-the-label": "met", "on-paper": "met",
//!           "because": "`contains = \"lpg\"`", "file": "content/gas/locker/module.toml", "line": 6,
//!           "waived": { "reason": "...", "until": "2027-01-31" }
//!         }
//!       ]
//!     }
//!   ]
//! }
//! ```
//!
//! `coverage` is the version of this shape. A waived cell counts as met; `waived` is null where there is no waiver. When
//! the book has other errors, coverage is not measured: `measured` is false, and there are no vans.

use super::{Inspected, Kind};
use crate::coverage::{Cell, Coverage, Criterion, Standing};
use serde_json::{Value, json};

/// This kind.
pub(super) static KIND: Kind = Kind { name: "coverage", about: "safety coverage, in JSON", text };

/// The version of the shape.
const SHAPE: u32 = 1;

fn text(inspected: &Inspected) -> String {
    let none = Coverage::default();
    let coverage = inspected.coverage.unwrap_or(&none);
    let mut report = json!({
        "lockerleaf": env!("CARGO_PKG_VERSION"),
        "coverage": SHAPE,
        "measured": inspected.coverage.is_some(),
    });
    super::join(&mut report, counts(coverage));
    let vans = coverage.by_van();
    super::join(
        &mut report,
        json!({ "vans": vans.iter().map(|(van, own)| self::van(inspected, van, own)).collect::<Vec<_>>() }),
    );
    format!("{report:#}\n")
}

fn counts(coverage: &Coverage) -> Value {
    let (asked, met) = coverage.counts();
    json!({ "asked": asked, "met": met, "percent": (coverage.percent() * 10.0).floor() / 10.0 })
}

fn van(inspected: &Inspected, name: &str, own: &Coverage) -> Value {
    let mut van = json!({ "van": name });
    super::join(&mut van, counts(own));
    super::join(
        &mut van,
        json!({ "cells": own.cells.iter().map(|cell| self::cell(inspected, cell)).collect::<Vec<_>>() }),
    );
    van
}

fn cell(inspected: &Inspected, cell: &Cell) -> Value {
    let mut all = json!({ "fit": cell.fit_name, "hazard": cell.hazard, "language": cell.language });
    for (criterion, standing) in Criterion::ALL.iter().zip(cell.standing) {
        all[criterion.word().replace(' ', "-")] = json!(word(standing));
    }
    let (because, span) = &cell.because;
    let waived = cell.waived.as_ref().map(|(reason, until)| json!({ "reason": reason, "until": until.to_string() }));
    super::join(
        &mut all,
        json!({
            "because": because,
            "file": inspected.path(*span),
            "line": inspected.region(*span, |_| 1).start.line,
            "waived": waived,
        }),
    );
    all
}

fn word(standing: Standing) -> &'static str {
    match standing {
        Standing::NotAsked => "not-asked",
        Standing::Met => "met",
        Standing::Missed => "missed",
    }
}
