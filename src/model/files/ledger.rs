//! `models/ledger.toml`: every label that was ever printed.

use super::book::Correction;
use super::forms::{Code, Key};
use super::vehicle::{PlaceKind, Side};
use crate::model::source::At;
use crate::record;
use jiff::civil::Date;

record! {
    /// Every label that was ever printed. The program adds to it; keep it under version control and take nothing out.
    LedgerFile {
        /// The labels, by key and code.
        label: Vec<Printed>,
    }
    /// A label that was printed, as it was the last time.
    Printed {
        /// The key of the van.
        key: At<Key>,
        /// The code of the place.
        code: At<Code>,
        /// The van: `wenlow-v2/dune`.
        van: String,
        /// What the place was called.
        name: String,
        /// What the place was.
        kind: PlaceKind,
        /// Where the place was.
        side: Side,
        /// The address that the code carries.
        address: At<String>,
        /// Other addresses that earlier prints of it carry.
        earlier: Vec<At<String>>,
        /// The page that answers, below the published folder.
        target: String,
        /// Error-correction level of the code.
        level: Correction,
        /// The side of a module, in mm.
        module: f64,
        /// Width and height of the label, in mm.
        size: Vec<f64>,
        /// The days on which it was printed: one for each time.
        printed: Vec<At<Date>>,
    }
}

impl Printed {
    /// When it was last printed, as a person reads it.
    pub fn last(&self) -> String {
        self.printed.iter().map(|day| day.value).max().map(|day| day.to_string()).unwrap_or_default()
    }
}
