//! What pages are put together from.

use serde::Serialize;

/// A name and where it leads.
#[derive(Debug, Serialize, Clone)]
pub struct Named {
    /// The name.
    pub title: String,
    /// Where it leads.
    pub href: String,
}

/// A place in a list.
#[derive(Debug, Serialize, Clone)]
pub struct PlaceLink {
    /// Its code.
    pub code: String,
    /// What it is called.
    pub name: String,
    /// How to find it, or nothing.
    pub note: String,
    /// `locker`, `panel` and so on.
    pub kind: &'static str,
    /// What that is called.
    pub kind_word: String,
    /// `nearside` and so on.
    pub side: &'static str,
    /// What that is called.
    pub side_word: String,
    /// Where it leads.
    pub href: String,
    /// `danger`, `warning`, `caution`, `notice`, or nothing.
    pub signal: String,
}

/// A section of a part.
#[derive(Debug, Serialize)]
pub struct Section {
    /// Its anchor on this page.
    pub anchor: String,
    /// Its title.
    pub title_html: String,
    /// What it says, safety notes included.
    pub html: String,
    /// `task`, `fault`, `check`, `care`, `control`, or nothing.
    pub role: &'static str,
    /// The part it belongs to.
    pub part: Named,
    /// To it on its part's page.
    pub href: String,
    /// The gravest safety note in it: `danger`, `warning`, `caution`, `notice`, or nothing.
    pub signal: String,
}

/// Sections by what they are.
#[derive(Debug, Serialize, Default)]
pub struct Sections {
    /// Descriptions.
    pub about: Vec<Section>,
    /// What switches, lamps and levers mean.
    pub controls: Vec<Section>,
    /// How to do it.
    pub tasks: Vec<Section>,
    /// How to tell that it works.
    pub checks: Vec<Section>,
    /// What is wrong and what to try.
    pub faults: Vec<Section>,
    /// Looking after it.
    pub care: Vec<Section>,
}

/// A safety note.
#[derive(Debug, Serialize)]
pub struct NoteView {
    /// Its anchor on this page, for the first note about a hazard on the page of safety notes, or nothing.
    pub anchor: String,
    /// The note.
    pub html: String,
    /// The part it belongs to.
    pub part: Named,
}

/// What falls due.
#[derive(Debug, Serialize)]
pub struct DateRow {
    /// What.
    pub title: String,
    /// The part it belongs to.
    pub part: Named,
    /// The title of the section that says how it is done, or nothing.
    pub how_html: String,
    /// To that section.
    pub how_href: String,
    /// Where.
    pub places: Vec<PlaceLink>,
    /// What is done then: `renew`, `test`, `service`, `check`, `clean`.
    pub action: &'static str,
    /// What that is called.
    pub action_word: String,
    /// How often.
    pub every: String,
    /// When it was last done, for reading, or nothing.
    pub last: String,
    /// The date code on the part, for reading, or nothing.
    pub made: String,
    /// The last day that is marked on the part, for reading, or nothing.
    pub until: String,
    /// When it falls due, for reading, or nothing.
    pub due: String,
    /// When it falls due, as `2026-09-14`, or nothing.
    pub due_iso: String,
    /// What else to know, or nothing.
    pub note: String,
    /// What to look for on the part when no day is known, or nothing.
    pub look: String,
    /// Who says so.
    pub source: String,
}

/// A fact, sum or reading.
#[derive(Debug, Serialize, Default)]
pub struct Fact {
    /// What.
    pub title: String,
    /// How much.
    pub value: String,
    /// How it was worked out, or when it was measured, or nothing.
    pub how: String,
    /// How a reading stands against what it should be: `in`, `near`, `out`, or nothing.
    pub state: &'static str,
    /// What that is called.
    pub state_word: String,
}

/// Where a number comes from.
#[derive(Debug, Serialize)]
pub struct Source {
    /// The number.
    pub says: String,
    /// Who says so.
    pub is: String,
    /// `standard`, `published`, `computed`, `practice`, `memory`.
    pub from: &'static str,
    /// What that is called.
    pub from_word: String,
}

/// A system in a list.
#[derive(Debug, Serialize)]
pub struct SystemLink {
    /// `water` and so on.
    pub id: &'static str,
    /// What it is called.
    pub title: String,
    /// Where it leads.
    pub href: String,
    /// Its parts.
    pub parts: Vec<Named>,
}

/// A photo with the numbers drawn on it.
#[derive(Debug, Serialize)]
pub struct PhotoView {
    /// The picture, and the numbers over it.
    pub html: String,
    /// Whether it is taller than wide.
    pub tall: bool,
    /// What the numbers say, in their order.
    pub says: Vec<String>,
}
