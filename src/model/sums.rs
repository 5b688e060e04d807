//! The page of figures as data: sums with what they are worked out from, tables, plots, and what a reader may set.

use crate::figures::dials::Dials;

/// All sums of one van.
pub struct SumsPage {
    /// Sums by what they are about.
    pub groups: Vec<SumGroup>,
    /// What a reader may set, and what the answers are worked out from.
    pub dials: Dials,
}

/// The sums about one thing.
pub struct SumGroup {
    /// `gas` and so on.
    pub id: &'static str,
    /// What it is called.
    pub title: String,
    /// The sums.
    pub sums: Vec<Sum>,
    /// The plots.
    pub plots: Vec<Plot>,
}

/// One sum. Texts that do not apply are empty.
pub struct Sum {
    /// Its name on the page.
    pub id: &'static str,
    /// What it answers.
    pub title: String,
    /// What came out, with its unit.
    pub result: String,
    /// What to mind at once.
    pub caution: String,
    /// More results.
    pub table: Option<SumTable>,
    /// What went in: a name, and how much.
    pub inputs: Vec<(String, String)>,
    /// How it was worked out: the formula, then the numbers in it.
    pub working: Vec<String>,
    /// What it leaves out.
    pub limits: String,
    /// Where formula and constants come from.
    pub source: String,
}

/// A table of results; the first cell of each row names it.
pub struct SumTable {
    /// What the columns hold.
    pub head: Vec<String>,
    /// The rows.
    pub rows: Vec<Vec<String>>,
}

/// A drawing of how one thing depends on another.
pub struct Plot {
    /// Its name on the page.
    pub id: &'static str,
    /// What it shows.
    pub title: String,
    /// The same in words, for those who do not see it.
    pub about: String,
    /// From left to right.
    pub across: Axis,
    /// From bottom to top.
    pub up: Axis,
    /// The courses.
    pub lines: Vec<Line>,
    /// Upright lines with what they say.
    pub marks: Vec<(f64, String)>,
}

/// One axis of a plot.
pub struct Axis {
    /// What it measures, with the unit.
    pub label: String,
    /// Its lower end.
    pub from: f64,
    /// Its upper end.
    pub to: f64,
    /// What is written along it.
    pub ticks: Vec<(f64, String)>,
}

/// One course of a plot.
pub struct Line {
    /// What it is.
    pub label: String,
    /// Its points, from left to right.
    pub points: Vec<(f64, f64)>,
}
