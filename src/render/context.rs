//! What templates are given: plain data, and HTML where a name ends in `html`.

use serde::Serialize;
use std::collections::BTreeMap;

/// What every template is given, beside `w`, the theme's words, and `page`, what its own kind of page says.
#[derive(Debug, Serialize)]
pub struct Shell {
    /// The language.
    pub language: String,
    /// The kind of page: `home`, `place`, `part`, `system`, `routine`, `places`, `tasks`, `faults`, `dates`, `figures`, `warnings`, `emergency`, `words`, `about`.
    pub kind: &'static str,
    /// The page's title.
    pub title: String,
    /// To the style sheet.
    pub style_href: String,
    /// To scripts, by name: `ticks` for `ticks.js`.
    pub scripts: BTreeMap<String, String>,
    /// What search needs.
    pub search: Search,
    /// What saving the guide needs.
    pub offline: Offline,
    /// The published address of this page.
    pub page_address: String,
    /// `mailto:` with a message to the dealer about this page, or nothing.
    pub tell: String,
    /// The vehicle, and whose guide it is.
    pub van: Van,
    /// To the pages that every page leads to.
    pub to: Ways,
    /// The same page in other languages.
    pub languages: Vec<Language>,
}

/// What search needs, when it is first used.
#[derive(Debug, Serialize)]
pub struct Search {
    /// To the script that holds its data.
    pub index: String,
    /// To the scripts that search, with a space between them.
    pub scripts: String,
}

/// What saving the guide on a phone needs.
#[derive(Debug, Serialize)]
pub struct Offline {
    /// To the worker.
    pub worker: String,
    /// To the manifest.
    pub manifest: String,
    /// To the script that gives the fingerprint a name.
    pub fingerprint: String,
}

/// The vehicle, and whose guide it is.
#[derive(Debug, Serialize)]
pub struct Van {
    /// What its owner calls it.
    pub title: String,
    /// The model.
    pub model: String,
    /// The year it was built, or nothing.
    pub year: String,
    /// The public key.
    pub key: String,
    /// What labels carry: `HTTPS://GUIDES.EXAMPLE/KEY`.
    pub address: String,
    /// The dealer's name, or nothing.
    pub dealer_name: String,
    /// The dealer's telephone number, or nothing.
    pub dealer_phone: String,
    /// `tel:` and the number.
    pub dealer_tel: String,
    /// The dealer's electronic mail, or nothing.
    pub dealer_email: String,
    /// The dealer's page, or nothing.
    pub dealer_web: String,
    /// When somebody answers, or nothing.
    pub dealer_hours: String,
    /// To the dealer's mark, or nothing.
    pub dealer_logo: String,
    /// Its width and height; only what they are to each other counts.
    pub dealer_logo_size: (u32, u32),
}

/// To the pages that every page leads to.
#[derive(Debug, Serialize)]
pub struct Ways {
    /// Home.
    pub home: String,
    /// All places.
    pub places: String,
    /// All tasks.
    pub tasks: String,
    /// All faults.
    pub faults: String,
    /// Dates.
    pub dates: String,
    /// Figures.
    pub figures: String,
    /// Safety notes.
    pub warnings: String,
    /// Emergency.
    pub emergency: String,
    /// Words from A to Z.
    pub words: String,
    /// About this guide.
    pub about: String,
}

/// A language of the guide.
#[derive(Debug, Serialize)]
pub struct Language {
    /// Its tag.
    pub tag: String,
    /// To the same page in it.
    pub href: String,
}

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
