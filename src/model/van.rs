//! One vehicle with everything decided: values, figures, places, which sections show, where links lead.

use super::files::forms::{Code, Words};
use super::files::stamped::Stamped;
use super::files::vehicle::{PlaceKind, Side};
use super::quantity::Quantity;
use super::source::{At, FileId, Span};
use crate::figures::Calculation;
use jiff::civil::Date;
use std::collections::{BTreeMap, BTreeSet};

/// One vehicle.
#[derive(Debug)]
pub struct Van {
    /// The number of its model in the book.
    pub model: usize,
    /// `wenlow-v2/dune`.
    pub name: String,
    /// Its manifest.
    pub file: FileId,
    /// Its public key.
    pub key: At<String>,
    /// What readers call it.
    pub title: String,
    /// The year it was built.
    pub year: Option<u32>,
    /// Its places, in the order of the manifests.
    pub places: Vec<Place>,
    /// Its fits, in the order of the manifests.
    pub fits: Vec<Fit>,
    /// Whether something that is fitted could not be used, which has been said; what it does for others is not known.
    pub incomplete: bool,
    /// Which fit answers for each capability.
    pub providers: BTreeMap<String, usize>,
    /// A technician's words.
    pub tips: Vec<Tip>,
    /// Photos of it.
    pub photos: Vec<Photo>,
    /// What was measured.
    pub readings: Vec<Reading>,
    /// Safety notes that it does without, for a time.
    pub waivers: Vec<Waiver>,
    /// Keys that it had before.
    pub former_keys: Vec<At<String>>,
    /// Labels whose place has another code, or is no more.
    pub old_labels: Vec<OldLabel>,
    /// Codes whose place is the same though it is called otherwise, each with the name that is printed.
    pub same_places: Vec<(String, String)>,
}

/// A label whose place has another code, or is no more.
#[derive(Debug, Clone, PartialEq)]
pub struct OldLabel {
    /// The code on the label.
    pub code: String,
    /// The number of the place that it leads to; none when it is gone.
    pub to: Option<usize>,
    /// What to tell whoever scans it; may be empty.
    pub why: String,
}

/// A place of a vehicle.
#[derive(Debug, Clone)]
pub struct Place {
    /// Its code.
    pub code: At<Code>,
    /// What it is.
    pub kind: PlaceKind,
    /// What it is called.
    pub name: Words,
    /// Where it is.
    pub side: Side,
    /// In mm: from the front, from the nearside edge, above the ground.
    pub position: [f64; 3],
    /// Where the position is written.
    pub position_span: Span,
    /// How to find it.
    pub note: Option<Words>,
    /// Whether a fit asks for a label here.
    pub labelled: bool,
}

/// One module fitted.
#[derive(Debug)]
pub struct Fit {
    /// Its name.
    pub name: At<String>,
    /// Its module's number in the book.
    pub module: usize,
    /// Its values.
    pub values: BTreeMap<String, Value>,
    /// Where a manifest gives a value; those that are missing here come from the module.
    pub given: BTreeMap<String, Span>,
    /// Values that were asked or given and cannot be used; that has been said.
    pub unusable: BTreeSet<String>,
    /// Its figures.
    pub figures: BTreeMap<String, Figure>,
    /// For each role, the numbers of its places.
    pub places: BTreeMap<String, Vec<usize>>,
    /// For each section of its module, whether it shows.
    pub shown: Vec<bool>,
    /// Where links lead: for each language and each module whose text it shows.
    pub bound: BTreeMap<(String, usize), Vec<Bound>>,
    /// What falls due.
    pub dates: Vec<Due>,
}

impl Fit {
    /// A quantity by the name of a value or figure, or as written out.
    pub fn quantity(&self, text: &str) -> Option<Quantity> {
        match (self.values.get(text), self.figures.get(text)) {
            (Some(Value::Quantity(quantity)), _) => Some(*quantity),
            (Some(_), _) => None,
            (None, Some(figure)) => Some(figure.result),
            (None, None) => Quantity::parse(text).ok(),
        }
    }

    /// The word of a choice.
    pub fn choice(&self, name: &str) -> Option<&str> {
        match self.values.get(name)? {
            Value::Choice(word) => Some(word),
            _ => None,
        }
    }
}

/// A value of a fit.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// A number with its unit.
    Quantity(Quantity),
    /// One of the module's choices.
    Choice(String),
    /// Free words.
    Text(String),
}

/// A sum that was worked out.
#[derive(Debug, Clone)]
pub struct Figure {
    /// What came out.
    pub result: Quantity,
    /// How.
    pub calculation: &'static Calculation,
}

/// Where a link of a text leads in this van.
#[derive(Debug, Clone, PartialEq)]
pub enum Bound {
    /// Nowhere: the section it stands in does not show.
    Nowhere,
    /// A section of a fit.
    Section(usize, usize),
    /// A fit.
    Fit(usize),
    /// Some places.
    Places(Vec<usize>),
    /// A hazard.
    Hazard(String),
    /// An address of the web.
    Web(String),
    /// A file of a module's folder, by its path in the book.
    File(String),
}

/// A life of a fit: what was renewed, and when it falls due.
#[derive(Debug, Clone)]
pub struct Due {
    /// The life's name in the module.
    pub life: String,
    /// When it was last renewed or done.
    pub renewed: Option<Date>,
    /// The date code on the part.
    pub made: Option<Stamped>,
    /// The last day that is marked on the part.
    pub until: Option<Stamped>,
    /// Where that is written.
    pub span: Option<Span>,
    /// When it falls due.
    pub due: Option<Date>,
    /// What else to know.
    pub note: Option<String>,
}

/// What was measured on this van.
#[derive(Debug, Clone)]
pub struct Reading {
    /// The fit's number.
    pub fit: usize,
    /// The reading's name in the module.
    pub name: String,
    /// What it was.
    pub value: Quantity,
    /// Where that is written.
    pub span: Span,
    /// When.
    pub on: Date,
}

/// A technician's words about this van.
#[derive(Debug, Clone)]
pub struct Tip {
    /// The fit they are about.
    pub fit: Option<usize>,
    /// The place they are about.
    pub place: Option<usize>,
    /// The words.
    pub says: String,
}

/// A photo of this van.
#[derive(Debug, Clone)]
pub struct Photo {
    /// The file's path in the book.
    pub path: String,
    /// The fit that it shows.
    pub fit: Option<usize>,
    /// The place that it shows.
    pub place: Option<usize>,
    /// What can be seen on it.
    pub alt: Words,
    /// Numbers drawn on it: where, in hundredths from its left edge and its top, and what is there.
    pub callouts: Vec<([f64; 2], Words)>,
}

/// A hazard of a fit that is not warned of as it should be.
#[derive(Debug, Clone)]
pub struct Waiver {
    /// The fit's name.
    pub fit: String,
    /// The hazard.
    pub hazard: String,
    /// Why.
    pub reason: String,
    /// The last day.
    pub until: Date,
    /// Where it is written.
    pub span: Span,
}
