//! What a guide says, without knowing an output format.

use super::book::Logo;
use super::expected::Standing;
use super::files::forms::{Signal, System};
use super::files::module::{Action, Origin};
use super::files::stamped::Stamped;
use super::files::vehicle::{Body, Door, PlaceKind, Room, Side};
use super::photo::Photo;
use super::quantity::Quantity;
pub use super::search::{Found, FoundKind, Search};
use super::sums::SumsPage;
use super::text::{Note, Role, Section, Text};
use super::van::Bound;
use jiff::civil::Date;
use std::borrow::Cow;
use std::collections::BTreeMap;

/// One van's guide in one language.
pub struct Guide<'a> {
    /// The language.
    pub language: &'a str,
    /// Other languages in which there is this guide.
    pub languages: Vec<&'a str>,
    /// Which vehicle, and whose guide.
    pub identity: Identity<'a>,
    /// What the plan is drawn from.
    pub shape: Shape<'a>,
    /// The places, in the order of the manifests.
    pub places: Vec<PlaceEntry<'a>>,
    /// The fits, in the order of the manifests.
    pub fits: Vec<FitEntry<'a>>,
    /// How the texts read in this van: for each fit and each module whose text it shows.
    pub views: BTreeMap<(usize, usize), View<'a>>,
    /// The signs of hazards, by hazard: codes of ISO 7010 in small letters.
    pub signs: BTreeMap<&'a str, String>,
    /// Width and height of drawings, by their path in the book.
    pub drawings: &'a BTreeMap<String, (u32, u32)>,
    /// Photos made ready, by their path in the book.
    pub photos: &'a BTreeMap<String, Photo>,
    /// The pages.
    pub pages: Vec<Page<'a>>,
    /// What search finds; empty until it is asked for.
    pub search: Search<'a>,
}

/// Which vehicle, and whose guide.
pub struct Identity<'a> {
    /// The public key.
    pub key: &'a str,
    /// What readers call the vehicle.
    pub title: &'a str,
    /// The model's name.
    pub model: &'a str,
    /// The year it was built.
    pub year: Option<u32>,
    /// The dealer's name; empty when not known, as all of these.
    pub dealer_name: &'a str,
    /// The dealer's telephone number.
    pub dealer_phone: &'a str,
    /// The dealer's electronic mail.
    pub dealer_email: &'a str,
    /// The dealer's page.
    pub dealer_web: &'a str,
    /// When somebody answers.
    pub dealer_hours: &'a str,
    /// The dealer's mark.
    pub dealer_logo: Option<&'a Logo>,
    /// The address that labels carry.
    pub address: &'a str,
    /// Keys that the van had before, whose labels lead here.
    pub former_keys: Vec<&'a str>,
}

/// What the plan is drawn from, all in mm.
pub struct Shape<'a> {
    /// The kind of body.
    pub body: Body,
    /// Length, width and height.
    pub size: [f64; 3],
    /// From the front to the front axle.
    pub front_axle: Option<f64>,
    /// From the front to the rear axles.
    pub rear_axles: Vec<f64>,
    /// Whether the steering wheel is on the nearside; `None` without one.
    pub steering_nearside: Option<bool>,
    /// Whether the nearside is the left side.
    pub nearside_is_left: bool,
    /// Doors and windows.
    pub doors: &'a [Door],
    /// Furniture.
    pub rooms: &'a [Room],
}

/// A place, as lists and links name it.
pub struct PlaceEntry<'a> {
    /// Its code.
    pub code: &'a str,
    /// What it is called.
    pub name: &'a str,
    /// How to find it.
    pub note: Option<&'a str>,
    /// What it is.
    pub kind: PlaceKind,
    /// Where it is.
    pub side: Side,
    /// Its position in mm.
    pub position: [f64; 3],
    /// Whether a label is put there.
    pub labelled: bool,
    /// The gravest signal word of the notes at this place.
    pub signal: Option<Signal>,
}

/// A fit, as lists and links name it.
pub struct FitEntry<'a> {
    /// Its name.
    pub name: &'a str,
    /// What it is called.
    pub title: &'a str,
    /// What it belongs to.
    pub system: System,
    /// The module's number.
    pub module: usize,
    /// Its own text.
    pub text: &'a Text,
    /// Owners' words for it.
    pub aliases: &'a [String],
    /// The names of its sections, by their number in the module.
    pub sections: Vec<&'a str>,
}

/// How one text reads in this van.
pub struct View<'a> {
    /// The text.
    pub text: &'a Text,
    /// The folder of its files, below the root of the book.
    pub folder: String,
    /// Where its links lead.
    pub bound: Cow<'a, [Bound]>,
    /// What its slots show.
    pub slots: Vec<String>,
}

/// One page: where it is below the guide, what it is called, what it says.
pub struct Page<'a> {
    /// Its folder, with no slash at the end: empty for home, `G1`, `part/fridge`.
    pub address: String,
    /// Its title.
    pub title: String,
    /// What it says.
    pub body: PageBody<'a>,
}

/// What a page says.
pub enum PageBody<'a> {
    /// The four ways in.
    Home,
    /// One place.
    Place(PlacePage<'a>),
    /// One fit.
    Fit(FitPage<'a>),
    /// The fits of one system.
    System(System, Vec<FitSummary<'a>>),
    /// A list for an occasion.
    Routine(RoutinePage<'a>),
    /// All places.
    Places,
    /// All tasks, by system.
    Tasks(Vec<(System, Vec<Shown<'a>>)>),
    /// All faults, by system.
    Faults(Vec<(System, Vec<Shown<'a>>)>),
    /// What falls due.
    Dates(Vec<DateEntry<'a>>),
    /// The sums.
    Figures(Box<SumsPage>),
    /// All safety notes, gravest first.
    Warnings(Vec<(Signal, Vec<Warned<'a>>)>),
    /// What to do at once.
    Emergency(Option<View<'a>>),
    /// Names and owners' words, with where they lead, by first letter.
    Words(Vec<(String, Vec<WordEntry>)>),
    /// Where a label leads whose place has another code, or is no more.
    OldLabel(OldLabel<'a>),
    /// What this guide is.
    About(Vec<Routined>),
}

/// Where an old label leads.
pub struct OldLabel<'a> {
    /// The code on the label.
    pub code: &'a str,
    /// The number of the place that it leads to; none when it is gone.
    pub to: Option<usize>,
    /// What to tell whoever scans it; may be empty.
    pub why: &'a str,
}

/// A van that is no more, whose labels say so.
pub struct Withdrawn<'a> {
    /// Its key.
    pub key: &'a str,
    /// The codes of its labels.
    pub codes: Vec<&'a str>,
    /// What to tell whoever scans one.
    pub why: &'a str,
}

/// A routine, as lists name it.
#[derive(Clone)]
pub struct Routined {
    /// Its name.
    pub name: String,
    /// What it is called.
    pub title: String,
}

/// A section of a fit that shows.
#[derive(Clone, Copy)]
pub struct Shown<'a> {
    /// The fit's number.
    pub fit: usize,
    /// The module whose text it stands in.
    pub origin: usize,
    /// The section.
    pub section: &'a Section,
}

impl Shown<'_> {
    /// What the section is.
    pub fn role(&self) -> Option<Role> {
        self.section.role
    }
}

/// What one place says.
pub struct PlacePage<'a> {
    /// The place's number.
    pub place: usize,
    /// The fits that are here, each with what it is called here.
    pub fits: Vec<(usize, Vec<&'a str>)>,
    /// Notes that hold for the whole of those fits.
    pub notes: Vec<Warned<'a>>,
    /// Sections to read here.
    pub sections: Vec<Shown<'a>>,
    /// A technician's words.
    pub tips: Vec<&'a str>,
    /// Photos of what is here.
    pub photos: Vec<Pictured<'a>>,
    /// What falls due here.
    pub dates: Vec<DateEntry<'a>>,
    /// Other places of the same fits.
    pub related: Vec<usize>,
}

/// What one fit says.
pub struct FitPage<'a> {
    /// The fit's number.
    pub fit: usize,
    /// Its sections, in the order of its text.
    pub sections: Vec<Shown<'a>>,
    /// Where it is: what is there, and the places.
    pub places: Vec<(&'a str, Vec<usize>)>,
    /// What is known of this one: a name and what to show.
    pub facts: Vec<(String, String)>,
    /// Sums: a name, what came out, and the formula.
    pub figures: Vec<(String, String, &'static str)>,
    /// What was measured.
    pub readings: Vec<ReadingEntry>,
    /// What falls due.
    pub dates: Vec<DateEntry<'a>>,
    /// A technician's words.
    pub tips: Vec<&'a str>,
    /// Photos of it.
    pub photos: Vec<Pictured<'a>>,
    /// Where numbers come from: the number, who says so, and how well that is known.
    pub sources: Vec<(&'a str, &'a str, Origin)>,
}

/// What was measured of a fit.
pub struct ReadingEntry {
    /// What.
    pub title: String,
    /// What it was.
    pub value: String,
    /// When.
    pub on: Date,
    /// What it should be, and how it stands against that; nothing when that is not known.
    pub expected: Option<(String, Standing)>,
}

/// A photo of this van.
#[derive(Clone)]
pub struct Pictured<'a> {
    /// The photo made ready.
    pub photo: &'a Photo,
    /// What can be seen on it.
    pub alt: &'a str,
    /// Numbers drawn on it: where, in hundredths from its left edge and its top, and what is there.
    pub callouts: Vec<([f64; 2], &'a str)>,
}

/// A fit on its system's page.
pub struct FitSummary<'a> {
    /// The fit's number.
    pub fit: usize,
    /// Its tasks.
    pub tasks: Vec<Shown<'a>>,
    /// Its faults.
    pub faults: Vec<Shown<'a>>,
}

/// What a routine says.
pub struct RoutinePage<'a> {
    /// Its introduction.
    pub view: Option<View<'a>>,
    /// Tasks in order.
    pub steps: Vec<Step<'a>>,
}

/// A task of a routine.
pub struct Step<'a> {
    /// Notes of the top of its part that it needs before it: those about hazards it exposes to.
    pub notes: Vec<Warned<'a>>,
    /// The task.
    pub shown: Shown<'a>,
}

/// A safety note with the part and the text it belongs to.
#[derive(Clone, Copy)]
pub struct Warned<'a> {
    /// The fit's number.
    pub fit: usize,
    /// The module whose text it stands in.
    pub origin: usize,
    /// The section it stands in, unless it holds for the whole part.
    pub section: Option<&'a str>,
    /// The note.
    pub note: &'a Note,
}

/// What falls due.
#[derive(Clone)]
pub struct DateEntry<'a> {
    /// The fit's number.
    pub fit: usize,
    /// The life's name in its module.
    pub life: &'a str,
    /// What.
    pub title: &'a str,
    /// The section that says how it is done.
    pub section: Option<Shown<'a>>,
    /// Where: the places of that section, or else of the part.
    pub places: Vec<usize>,
    /// What is done then.
    pub action: Action,
    /// How often, as readers see it.
    pub every: String,
    /// How often.
    pub interval: Option<Quantity>,
    /// When it was last done.
    pub last: Option<Date>,
    /// The date code on the part.
    pub made: Option<Stamped>,
    /// The last day that is marked on the part.
    pub until: Option<Stamped>,
    /// The day of the record, or else of the van's newest one: never the day on which a guide is made.
    pub recorded: Option<Date>,
    /// When it falls due.
    pub due: Option<Date>,
    /// What else to know.
    pub note: Option<&'a str>,
    /// What to look for on the part when no day is known.
    pub look: Option<&'a str>,
    /// Who says so.
    pub source: &'a str,
}

/// A word and where it leads.
pub struct WordEntry {
    /// The word or name.
    pub word: String,
    /// The page, below the guide.
    pub address: String,
    /// The section on it.
    pub section: Option<String>,
    /// What is there.
    pub title: String,
}
