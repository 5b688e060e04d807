//! What each kind of page is given.

use super::{DateRow, Fact, Named, NoteView, PhotoView, PlaceLink, Section, Sections, Source, SystemLink};
use serde::Serialize;

/// Home: `page` of `home.html`.
#[derive(Debug, Serialize)]
pub struct Home {
    /// The plan.
    pub plan_html: String,
    /// Places.
    pub places: Vec<PlaceLink>,
    /// Routines.
    pub routines: Vec<Named>,
    /// Systems.
    pub systems: Vec<SystemLink>,
}

/// A place: `page` of `place.html`.
#[derive(Debug, Serialize)]
pub struct Place {
    /// The place.
    pub place: PlaceLink,
    /// The plan with this place marked.
    pub plan_html: String,
    /// Its side of the vehicle, when a label there is on an outside wall.
    pub sides_html: Vec<String>,
    /// Parts that are here, each with what is here of it.
    pub parts: Vec<PartHere>,
    /// Notes that hold for the whole of those parts.
    pub notes: Vec<NoteView>,
    /// Sections to read here.
    pub sections: Sections,
    /// A technician's words.
    pub tips: Vec<String>,
    /// Photos of what is here.
    pub photos: Vec<PhotoView>,
    /// What falls due here.
    pub dates: Vec<DateRow>,
    /// Places that belong to it.
    pub related: Vec<PlaceLink>,
    /// To the picture of the label's code, or nothing.
    pub code_href: String,
    /// What the label carries.
    pub address: String,
}

/// A part at a place.
#[derive(Debug, Serialize)]
pub struct PartHere {
    /// The part.
    pub part: Named,
    /// What is here of it.
    pub roles: Vec<String>,
}

/// A part: `page` of `part.html`.
#[derive(Debug, Serialize)]
pub struct Part {
    /// The system it belongs to.
    pub system: Named,
    /// What stands before its first section, safety notes included.
    pub intro_html: String,
    /// Its sections.
    pub sections: Sections,
    /// Where it is.
    pub places: Vec<RolePlaces>,
    /// What is known of this one.
    pub facts: Vec<Fact>,
    /// Sums.
    pub figures: Vec<Fact>,
    /// What was measured.
    pub readings: Vec<Fact>,
    /// What falls due.
    pub dates: Vec<DateRow>,
    /// A technician's words.
    pub tips: Vec<String>,
    /// Photos of it.
    pub photos: Vec<PhotoView>,
    /// Where numbers come from.
    pub sources: Vec<Source>,
}

/// What of a part is at some places.
#[derive(Debug, Serialize)]
pub struct RolePlaces {
    /// What.
    pub title: String,
    /// Where.
    pub places: Vec<PlaceLink>,
}

/// A system: `page` of `system.html`.
#[derive(Debug, Serialize)]
pub struct System {
    /// `water` and so on.
    pub id: &'static str,
    /// Its parts.
    pub parts: Vec<PartSummary>,
}

/// A part on its system's page.
#[derive(Debug, Serialize)]
pub struct PartSummary {
    /// The part.
    pub part: Named,
    /// What it is.
    pub lead_html: String,
    /// Its tasks.
    pub tasks: Vec<Named>,
    /// Its faults.
    pub faults: Vec<Named>,
}

/// A routine: `page` of `routine.html`.
#[derive(Debug, Serialize)]
pub struct Routine {
    /// Its introduction.
    pub intro_html: String,
    /// What to say when there are no steps.
    pub nothing_html: String,
    /// Tasks in order.
    pub steps: Vec<Section>,
}

/// All places: `page` of `places.html`.
#[derive(Debug, Serialize)]
pub struct Places {
    /// The plan.
    pub plan_html: String,
    /// The sides of the vehicle that have labelled places.
    pub sides_html: Vec<String>,
    /// Places by side.
    pub sides: Vec<SidePlaces>,
}

/// The places of one side.
#[derive(Debug, Serialize)]
pub struct SidePlaces {
    /// What the side is called.
    pub title: String,
    /// Its places.
    pub places: Vec<PlaceLink>,
}

/// Tasks or faults: `page` of `tasks.html` and `faults.html`.
#[derive(Debug, Serialize)]
pub struct Listed {
    /// Systems with what belongs to them.
    pub systems: Vec<ListedSystem>,
}

/// Tasks or faults of one system.
#[derive(Debug, Serialize)]
pub struct ListedSystem {
    /// `water` and so on.
    pub id: &'static str,
    /// What it is called.
    pub title: String,
    /// Its tasks or faults.
    pub items: Vec<ListedItem>,
}

/// A task or fault in a list.
#[derive(Debug, Serialize)]
pub struct ListedItem {
    /// Its title.
    pub title_html: String,
    /// Where it leads.
    pub href: String,
    /// The part it belongs to.
    pub part: String,
    /// The gravest safety note in it, or nothing.
    pub signal: String,
}

/// Dates: `page` of `dates.html`.
#[derive(Debug, Serialize)]
pub struct Dates {
    /// What falls due on a known day, soonest first.
    pub known: Vec<DateRow>,
    /// What falls due on a day that is not known.
    pub unknown: Vec<DateRow>,
    /// To the calendar file, or nothing when no day is known.
    pub calendar_href: String,
    /// When the vehicle was built, in a sentence, or nothing.
    pub built: String,
}

/// Safety notes: `page` of `warnings.html`.
#[derive(Debug, Serialize)]
pub struct Warnings {
    /// Notes by signal word, gravest first.
    pub signals: Vec<SignalNotes>,
}

/// The notes of one signal word.
#[derive(Debug, Serialize)]
pub struct SignalNotes {
    /// `danger` and so on.
    pub id: String,
    /// The word.
    pub word: String,
    /// What the word means.
    pub meaning: String,
    /// The notes.
    pub notes: Vec<NoteView>,
}

/// Emergency: `page` of `emergency.html`.
#[derive(Debug, Serialize)]
pub struct Emergency {
    /// What stands before the first section.
    pub intro_html: String,
    /// What to do at once.
    pub sections: Vec<EmergencySection>,
}

/// One emergency.
#[derive(Debug, Serialize)]
pub struct EmergencySection {
    /// Its anchor.
    pub anchor: String,
    /// What happens.
    pub title_html: String,
    /// What to do.
    pub html: String,
}

/// Words from A to Z: `page` of `words.html`.
#[derive(Debug, Serialize)]
pub struct Words {
    /// Words by first letter.
    pub letters: Vec<Letter>,
}

/// The words of one letter.
#[derive(Debug, Serialize)]
pub struct Letter {
    /// The letter.
    pub letter: String,
    /// Its anchor.
    pub anchor: String,
    /// Its words.
    pub words: Vec<Word>,
}

/// A word and where it leads.
#[derive(Debug, Serialize)]
pub struct Word {
    /// The word.
    pub word: String,
    /// What is there.
    pub title: String,
    /// Where it leads.
    pub href: String,
}

/// About this guide: `page` of `about.html`.
#[derive(Debug, Serialize)]
pub struct About {
    /// The guide's fingerprint.
    pub fingerprint: String,
    /// What the guide covers.
    pub systems: Vec<SystemLink>,
    /// Routines.
    pub routines: Vec<Named>,
}

/// Where a label leads whose place has another code, or is no more: `page` of `old-label.html`.
#[derive(Debug, Serialize)]
pub struct OldLabel {
    /// The code on the label.
    pub code: String,
    /// What to tell whoever scans it, or nothing.
    pub why: String,
    /// The place that it leads to; none when it is gone.
    pub to: Vec<PlaceLink>,
}

/// A page of an old key: `page` of `old-key.html`.
#[derive(Debug, Serialize)]
pub struct OldKey {
    /// What it says, in each language of the guides.
    pub said: Vec<Said>,
    /// The dealer's name, or nothing.
    pub dealer_name: String,
    /// The dealer's telephone number, or nothing.
    pub dealer_phone: String,
    /// `tel:` and the number.
    pub dealer_tel: String,
}

/// What a page of an old key says in one language.
#[derive(Debug, Serialize)]
pub struct Said {
    /// The language.
    pub language: String,
    /// The heading.
    pub title: String,
    /// What to know, or nothing.
    pub text: String,
    /// To the page that it leads to, or nothing.
    pub href: String,
    /// The words of that link, or nothing.
    pub link: String,
    /// What stands before the telephone number.
    pub ring: String,
}

/// The page that takes a key: `page` of `root.html`.
#[derive(Debug, Serialize)]
pub struct Root {
    /// The dealer's name, or nothing.
    pub dealer_name: String,
    /// The dealer's telephone number, or nothing.
    pub dealer_phone: String,
    /// `tel:` and the number.
    pub dealer_tel: String,
    /// The address that guides are published under.
    pub address: String,
    /// The language.
    pub language: String,
}
