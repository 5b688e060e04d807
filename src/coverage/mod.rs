//! Safety coverage: for each van, fit, hazard and language, whether the guide warns as it must.
//!
//! A hazard is required of a fit when its traits, loads, capabilities or places imply it, or when a section that shows
//! exposes to it. It is met when a note is there, strong, whole, before the steps, on the page of each label, and on
//! paper (ANSI Z535.6: section, embedded and grouped safety messages; IEC/IEEE 82079-1: where and before the hazard arises).

pub mod implied;
mod measure;
pub mod table;

use crate::model::source::Span;
use jiff::civil::Date;

crate::words! {
    /// What a note must be to count.
    Criterion {
        /// In a section that this van shows, or at the top of the part.
        There = "there",
        /// With a signal word that is grave enough.
        Strong = "strong",
        /// Says what can happen, and at least one way to avoid it.
        Whole = "whole",
        /// Before the first step of each task that exposes to the hazard.
        Before = "before",
        /// On the page of each labelled place where such a task is done.
        Label = "at the label",
        /// In the booklet, grouped and in place, and a WARNING or DANGER also in the handover record.
        Paper = "on paper",
    }
}

/// How one criterion stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Nothing calls for it.
    NotAsked,
    /// It is met.
    Met,
    /// It is not met.
    Missed,
}

/// One fit and one hazard in one language.
#[derive(Debug, Clone)]
pub struct Cell {
    /// The van's name.
    pub van: String,
    /// The fit's number.
    pub fit: usize,
    /// The fit's name.
    pub fit_name: String,
    /// The hazard.
    pub hazard: String,
    /// The language.
    pub language: String,
    /// How each criterion stands, in the order of [`Criterion::ALL`].
    pub standing: [Standing; 6],
    /// What calls for it: words, and where they stand.
    pub because: (String, Span),
    /// Why it is waived, and until when.
    pub waived: Option<(String, Date)>,
}

impl Cell {
    /// Whether nothing that is asked is missed.
    pub fn is_met(&self) -> bool {
        !self.standing.contains(&Standing::Missed)
    }

    /// The criteria that are missed.
    pub fn missed(&self) -> impl Iterator<Item = Criterion> {
        Criterion::ALL
            .iter()
            .copied()
            .zip(self.standing)
            .filter(|(_, standing)| *standing == Standing::Missed)
            .map(|(c, _)| c)
    }
}

/// The coverage of some vans.
#[derive(Debug, Clone, Default)]
pub struct Coverage {
    /// All cells, by van, fit, hazard and language.
    pub cells: Vec<Cell>,
}

impl Coverage {
    /// The coverage of each van, in the order of the vans.
    pub fn by_van(&self) -> Vec<(&str, Coverage)> {
        let runs = self.cells.chunk_by(|a, b| a.van == b.van);
        runs.map(|cells| (cells[0].van.as_str(), Coverage { cells: cells.to_vec() })).collect()
    }

    /// How many criteria are asked, and how many of them are met or waived.
    pub fn counts(&self) -> (usize, usize) {
        let asked = |cell: &Cell| cell.standing.iter().filter(|standing| **standing != Standing::NotAsked).count();
        let met = |cell: &Cell| match cell.waived {
            Some(_) => asked(cell),
            None => cell.standing.iter().filter(|standing| **standing == Standing::Met).count(),
        };
        (self.cells.iter().map(asked).sum(), self.cells.iter().map(met).sum())
    }

    /// Met in hundredths of asked; a hundred when nothing is asked.
    pub fn percent(&self) -> f64 {
        match self.counts() {
            (0, _) => 100.0,
            (asked, met) => 100.0 * met as f64 / asked as f64,
        }
    }
}

pub use measure::measure;
