//! What search finds in a guide.

use super::files::forms::Signal;
use super::text::Role;

/// What search finds, and owners' words.
#[derive(Default)]
pub struct Search<'a> {
    /// Everything that can be found.
    pub found: Vec<Found>,
    /// Owners' words, each with the words of the texts that it stands for.
    pub owners: Vec<(&'a str, Vec<&'a str>)>,
}

/// One thing that search finds.
pub struct Found {
    /// What it is.
    pub kind: FoundKind,
    /// What it is called.
    pub title: String,
    /// The page, below the guide.
    pub address: String,
    /// The section on it, or the hazard.
    pub anchor: Option<String>,
    /// The fit that it belongs to.
    pub part: Option<usize>,
    /// The places where it is done.
    pub places: Vec<usize>,
    /// The gravest safety note in it.
    pub signal: Option<Signal>,
    /// Other words that lead to it.
    pub more: String,
}

impl Found {
    /// A thing with a name and a page, and nothing else known of it.
    pub fn new(kind: FoundKind, title: &str, address: &str) -> Self {
        let (title, address) = (title.to_string(), address.to_string());
        Found { kind, title, address, anchor: None, part: None, places: vec![], signal: None, more: String::new() }
    }
}

/// What a thing that search finds is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FoundKind {
    /// A section, and what that is.
    Section(Option<Role>),
    /// A part.
    Part,
    /// A place.
    Place,
    /// A hazard, on the page of safety notes.
    Hazard,
    /// A routine.
    Routine,
    /// An emergency.
    Emergency,
    /// A page of its own.
    Page,
}

impl FoundKind {
    /// Its name.
    pub fn word(self) -> &'static str {
        match self {
            FoundKind::Section(role) => role.map_or("about", Role::word),
            FoundKind::Part => "part",
            FoundKind::Place => "place",
            FoundKind::Hazard => "hazard",
            FoundKind::Routine => "routine",
            FoundKind::Emergency => "emergency",
            FoundKind::Page => "page",
        }
    }
}
