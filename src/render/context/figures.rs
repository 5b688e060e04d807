//! What the page of figures is given.

use super::Fact;
use serde::Serialize;

/// Figures: `page` of `figures.html`.
#[derive(Debug, Serialize)]
pub struct Figures {
    /// Sums by what they are about.
    pub groups: Vec<SumGroup>,
    /// What a script needs to work out answers, as JSON.
    pub dials: String,
    /// What the reader may set.
    pub settings: Vec<Dial>,
    /// What can be answered: its name in the script, and what it is called.
    pub answers: Vec<Answer>,
}

/// Something that a reader may set.
#[derive(Debug, Serialize)]
pub struct Dial {
    /// Its name in the script.
    pub id: &'static str,
    /// What it is called.
    pub title: String,
    /// Its unit, or nothing.
    pub unit: &'static str,
    /// Its lower end.
    pub least: f64,
    /// Its upper end.
    pub most: f64,
    /// By how much it moves.
    pub step: f64,
    /// Where it stands at first.
    pub value: f64,
}

/// Something that the script answers.
#[derive(Debug, Serialize)]
pub struct Answer {
    /// Its name in the script.
    pub id: &'static str,
    /// What it is called.
    pub title: String,
}

/// The sums about one thing.
#[derive(Debug, Serialize)]
pub struct SumGroup {
    /// `gas` and so on.
    pub id: &'static str,
    /// What it is called.
    pub title: String,
    /// The sums.
    pub sums: Vec<SumView>,
    /// The plots.
    pub plots: Vec<PlotView>,
}

/// A sum. Texts that do not apply are empty.
#[derive(Debug, Serialize)]
pub struct SumView {
    /// Its anchor.
    pub id: &'static str,
    /// What it answers.
    pub title: String,
    /// What came out.
    pub result: String,
    /// What to mind at once.
    pub caution: String,
    /// What the columns of its table hold.
    pub head: Vec<String>,
    /// The rows of its table.
    pub rows: Vec<Vec<String>>,
    /// What went in.
    pub inputs: Vec<Fact>,
    /// How it was worked out.
    pub working: Vec<String>,
    /// What it leaves out.
    pub limits: String,
    /// Where formula and constants come from.
    pub source: String,
}

/// A plot.
#[derive(Debug, Serialize)]
pub struct PlotView {
    /// Its anchor.
    pub id: &'static str,
    /// What it shows.
    pub title: String,
    /// The drawing.
    pub html: String,
}
