//! Text as it was compiled once: blocks and inlines that know no output format.
//!
//! Links, slots and pictures are numbered within their text, so that a van only needs a list of what each of
//! them is for it.

use super::files::forms::Signal;
use super::source::{At, FileId, Span};

/// The text of a module, routine or page, in one language.
#[derive(Debug, Clone)]
pub struct Text {
    /// The file it was read from.
    pub file: FileId,
    /// The words of its first heading.
    pub title: At<String>,
    /// What stands before the first section.
    pub intro: Vec<Block>,
    /// Its sections, in order.
    pub sections: Vec<Section>,
    /// What its links, slots and pictures point at.
    pub refs: Refs,
}

impl Text {
    /// Visits all safety notes, at the top and in sections.
    pub fn each_note<'a>(&'a self, visit: &mut impl FnMut(&'a Note)) {
        each_note(&self.intro, visit);
        self.sections.iter().for_each(|section| each_note(&section.blocks, visit));
    }
}

/// What the links, slots and pictures of a text point at, by their number.
#[derive(Debug, Clone, Default)]
pub struct Refs {
    /// Where links go.
    pub links: Vec<At<Target>>,
    /// The names of slots.
    pub slots: Vec<At<String>>,
    /// The files of pictures, below the module's folder.
    pub pictures: Vec<At<String>>,
}

/// A stretch of text under a heading with a name.
#[derive(Debug, Clone)]
pub struct Section {
    /// The section's name.
    pub id: At<String>,
    /// What the section is.
    pub role: Option<Role>,
    /// The words of its heading.
    pub title: Vec<Inline>,
    /// What stands under it.
    pub blocks: Vec<Block>,
    /// The links, slots and pictures in it: ranges of their numbers.
    pub uses: Uses,
}

/// Ranges of numbers of links, slots and pictures.
#[derive(Debug, Clone, Default)]
pub struct Uses {
    /// Links.
    pub links: std::ops::Range<usize>,
    /// Slots.
    pub slots: std::ops::Range<usize>,
}

crate::words! {
    /// What a section is.
    Role {
        /// How to do it.
        Task = "task",
        /// What is wrong, and what to try.
        Fault = "fault",
        /// How to tell that it works.
        Check = "check",
        /// Looking after it.
        Care = "care",
        /// What one switch, lamp or lever means.
        Control = "control",
    }
}

/// Where a link goes, as written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Target {
    /// `part:<capability, fit or self>#<section>`.
    Part(String, Option<String>),
    /// `place:<role>`.
    Place(String),
    /// `hazard:<name>`.
    Hazard(String),
    /// An address of the web over TLS.
    Web(String),
    /// A file of the module's folder.
    File(String),
    /// Nothing that can be used; said when the text was read.
    Unusable(String),
}

/// A piece of text that stands on lines of its own.
#[derive(Debug, Clone)]
pub enum Block {
    /// A paragraph.
    Paragraph(Vec<Inline>),
    /// Words of a list without blank lines between its items.
    Plain(Vec<Inline>),
    /// A heading without a name.
    Heading(u8, Vec<Inline>, Heading),
    /// A quotation.
    Quote(Vec<Block>, Span),
    /// A safety note.
    Note(Note),
    /// A list; numbered when it has a first number.
    List(Option<u64>, Vec<Item>),
    /// Text to be shown letter by letter.
    Code(Code),
    /// A table.
    Table(Table),
    /// A line across.
    Rule,
}

/// What a heading says of itself.
#[derive(Debug, Clone)]
pub struct Heading {
    /// Its name.
    pub id: Option<String>,
    /// Its classes.
    pub classes: Vec<String>,
    /// What else stands in its braces.
    pub others: Vec<String>,
    /// Where it stands.
    pub span: Span,
}

/// One item of a list.
#[derive(Debug, Clone)]
pub struct Item {
    /// What it holds.
    pub blocks: Vec<Block>,
    /// Where it stands.
    pub span: Span,
}

/// A safety note: what can happen, and how to avoid it.
#[derive(Debug, Clone)]
pub struct Note {
    /// How grave it is.
    pub signal: Signal,
    /// The hazard's name.
    pub hazard: At<String>,
    /// The words of the link to the hazard.
    pub title: Vec<Inline>,
    /// What can happen.
    pub consequence: Vec<Inline>,
    /// How to avoid it.
    pub avoidance: Vec<Item>,
    /// What else it holds.
    pub more: Vec<Block>,
    /// Where it stands.
    pub span: Span,
}

/// Text to be shown letter by letter, in lines of pieces.
#[derive(Debug, Clone)]
pub struct Code {
    /// The word after the fence.
    pub language: String,
    /// Pieces with what each is.
    pub pieces: Vec<(Piece, String)>,
}

/// What a piece of code is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// Nothing special.
    Plain,
    /// A remark.
    Comment,
    /// Words in quotes.
    Text,
    /// A number or quantity.
    Number,
    /// A name that is given a value, or a word of the language.
    Name,
}

/// A table.
#[derive(Debug, Clone)]
pub struct Table {
    /// How each column is set.
    pub columns: Vec<Column>,
    /// The cells of the head.
    pub head: Vec<Vec<Inline>>,
    /// The cells of the rows.
    pub rows: Vec<Vec<Vec<Inline>>>,
}

/// How a column is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// As the language does.
    Natural,
    /// To the left.
    Left,
    /// In the middle.
    Centre,
    /// To the right.
    Right,
}

/// A piece of a line of text.
#[derive(Debug, Clone)]
pub enum Inline {
    /// Words.
    Text(String),
    /// Stressed.
    Emphasis(Vec<Inline>),
    /// Strongly stressed.
    Strong(Vec<Inline>),
    /// Letter by letter.
    Code(String),
    /// A link: its number, its title and its words.
    Link(usize, String, Vec<Inline>),
    /// A picture: its number, its title and its text alternative.
    Picture(usize, String, String),
    /// A slot: its number.
    Slot(usize),
    /// A line end of the source.
    SoftBreak,
    /// A line end that is kept.
    HardBreak,
}

/// The words of some inlines, without their form; slots give nothing.
pub fn words(inlines: &[Inline]) -> String {
    let mut out = String::new();
    collect(inlines, &mut out);
    out
}

fn collect(inlines: &[Inline], out: &mut String) {
    for inline in inlines {
        match inline {
            Inline::Text(text) | Inline::Code(text) | Inline::Picture(_, _, text) => out.push_str(text),
            Inline::Emphasis(inner) | Inline::Strong(inner) | Inline::Link(_, _, inner) => collect(inner, out),
            Inline::SoftBreak | Inline::HardBreak => out.push(' '),
            Inline::Slot(_) => {}
        }
    }
}

/// Calls `visit` for each note of `blocks`, those inside lists and quotations too.
pub fn each_note<'a>(blocks: &'a [Block], visit: &mut impl FnMut(&'a Note)) {
    for block in blocks {
        match block {
            Block::Note(note) => visit(note),
            Block::Quote(inner, _) => each_note(inner, visit),
            Block::List(_, items) => items.iter().for_each(|item| each_note(&item.blocks, visit)),
            _ => {}
        }
    }
}
