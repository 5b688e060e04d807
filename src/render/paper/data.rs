//! What the templates of paper are given: a guide as plain data. All words reach them as text, never as markup.

use crate::render::context::Van;
use serde::Serialize;
use std::collections::BTreeMap;

/// What each document is given.
#[derive(Serialize)]
pub struct Shell<'a> {
    /// The language, as a tag of BCP 47.
    pub language: &'a str,
    /// The title of the document.
    pub title: String,
    /// The paper: `a5` or `a4`.
    pub paper: &'a str,
    /// Which vehicle, and whose guide.
    pub van: Van,
    /// The theme's words that take nothing.
    pub w: &'a BTreeMap<String, String>,
    /// Words before and after the number of a page that is pointed at.
    pub see: [String; 2],
    /// The plan of the vehicle, as SVG.
    pub plan: String,
    /// The guide's fingerprint.
    pub fingerprint: String,
    /// The fingerprint as a code.
    pub fingerprint_code: String,
    /// The address of the guide as a code.
    pub guide_code: String,
}

/// A piece of text that stands on lines of its own.
#[derive(Serialize)]
#[serde(tag = "t", rename_all = "kebab-case")]
pub enum Block {
    /// A paragraph.
    Paragraph { words: Vec<Inline> },
    /// A heading without a name.
    Heading { words: Vec<Inline> },
    /// A quotation.
    Quote { blocks: Vec<Block> },
    /// A safety note.
    Note { note: Box<Note> },
    /// A list with dots.
    Bullets { items: Vec<Vec<Block>> },
    /// A numbered list.
    Steps { first: u64, items: Vec<Vec<Block>> },
    /// Text to be shown letter by letter.
    Code { text: String },
    /// A table.
    Table { columns: Vec<&'static str>, head: Vec<Vec<Inline>>, rows: Vec<Vec<Vec<Inline>>> },
    /// A line across.
    Rule,
}

/// A piece of a line of text.
#[derive(Serialize)]
#[serde(tag = "t", rename_all = "kebab-case")]
pub enum Inline {
    /// Words.
    Text { text: String },
    /// Stressed.
    Emphasis { words: Vec<Inline> },
    /// Strongly stressed.
    Strong { words: Vec<Inline> },
    /// Letter by letter.
    Code { text: String },
    /// Words that point at a page; an empty anchor points nowhere.
    Ref { words: Vec<Inline>, to: String },
    /// Words that point at places.
    Places { words: Vec<Inline>, places: Vec<Coded> },
    /// A picture, by the path of its file in the book.
    Picture { path: String, alternative: String },
    /// The number before it is not confirmed.
    Unsure,
    /// A line end that is kept.
    Break,
}

/// The code of a place, and where it is told of.
#[derive(Serialize)]
pub struct Coded {
    /// The code.
    pub code: String,
    /// Its anchor.
    pub to: String,
}

/// A safety note.
#[derive(Serialize)]
pub struct Note {
    /// The number of the fit it belongs to; `None` in a text that belongs to no part.
    pub fit: Option<usize>,
    /// The hazard's name.
    pub hazard: String,
    /// `danger`, `warning`, `caution` or `notice`.
    pub signal: String,
    /// The signal word in the reader's language.
    pub word: String,
    /// The hazard, as the text names it.
    pub title: Vec<Inline>,
    /// What can happen.
    pub consequence: Vec<Inline>,
    /// How to avoid it.
    pub avoid: Vec<Vec<Block>>,
    /// What else it holds.
    pub more: Vec<Block>,
    /// Where it stands in place: the part, and its anchor.
    pub part: Named,
}

/// A name, and the anchor of what it names.
#[derive(Serialize, Clone, Default)]
pub struct Named {
    /// The name.
    pub title: String,
    /// The anchor; empty when there is none.
    pub to: String,
}

/// A section of a part.
#[derive(Serialize)]
pub struct Section {
    /// Its heading.
    pub title: Vec<Inline>,
    /// Its heading without form.
    pub name: String,
    /// Its anchor.
    pub to: String,
    /// What stands under it.
    pub blocks: Vec<Block>,
    /// The part it belongs to.
    pub part: Named,
}

/// Sections of one role.
#[derive(Serialize)]
pub struct Group {
    /// The words over them.
    pub title: String,
    /// `task`, `fault`, `check`, `care`, `control` or nothing.
    pub role: &'static str,
    /// The sections.
    pub sections: Vec<Section>,
}

/// A name and what is said of it, with how it was worked out or when it was measured.
#[derive(Serialize)]
pub struct Fact {
    /// The name.
    pub title: String,
    /// What is said of it.
    pub value: String,
    /// How, or when.
    pub how: String,
}

/// What falls due.
#[derive(Serialize)]
pub struct Due {
    /// What.
    pub title: String,
    /// The part.
    pub part: Named,
    /// What is done then.
    pub action: String,
    /// How often.
    pub every: String,
    /// When it was last done; empty when not known.
    pub last: String,
    /// When it falls due; empty when not known.
    pub due: String,
    /// What else to know.
    pub note: String,
    /// Who says so.
    pub source: String,
}

/// A place.
#[derive(Serialize)]
pub struct Place {
    /// Its code.
    pub code: String,
    /// Its anchor.
    pub to: String,
    /// What it is called.
    pub name: String,
    /// How to find it.
    pub note: String,
    /// What it is, and where: in words.
    pub kind: String,
    /// On which side.
    pub side: String,
    /// The gravest signal word of what is said here: in small letters, and as it is shown.
    pub signal: String,
    /// That word in the reader's language.
    pub word: String,
    /// The code of its address; empty when it has no label.
    pub picture: String,
    /// The address that is typed.
    pub address: String,
    /// The parts that are here.
    pub parts: Vec<Named>,
    /// What is read here: sections.
    pub topics: Vec<Topic>,
    /// A technician's words.
    pub tips: Vec<String>,
    /// What falls due here.
    pub dates: Vec<Due>,
}

/// A section as lists name it.
#[derive(Serialize)]
pub struct Topic {
    /// Its heading.
    pub title: String,
    /// The part it belongs to.
    pub part: String,
    /// Its anchor.
    pub to: String,
    /// Its role.
    pub role: &'static str,
}
