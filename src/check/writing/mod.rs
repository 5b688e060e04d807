//! How the texts are written: sentences, steps, and words that readers know. These rules know English only.
//!
//! They hold for each text once, whatever vans show it, and warn: a text may have its reasons.

pub mod prose;
mod verbs;

mod care_interval;
mod hard_to_read;
mod number_unsourced;
mod paragraph_long;
mod result_missing;
mod sentence_long;
mod step_actions;
mod step_passive;
mod step_should;
mod term_unexplained;

use super::{Check, Checked};
use crate::diag::Acc;
use crate::model::source::Span;
use crate::model::text::{Block, Inline, Item, Note, Role, Section, Text};

/// One rule of writing.
struct Writing {
    run: fn(&mut Acc, &[Passages]),
}

/// All rules of writing, by name.
static WRITING: [&Writing; 9] = [
    &care_interval::WRITING,
    &hard_to_read::WRITING,
    &paragraph_long::WRITING,
    &result_missing::WRITING,
    &sentence_long::WRITING,
    &step_actions::WRITING,
    &step_passive::WRITING,
    &step_should::WRITING,
    &term_unexplained::WRITING,
];

pub(super) static CHECK: Check = Check {
    rules: &[
        &care_interval::RULE,
        &hard_to_read::RULE,
        &number_unsourced::RULE,
        &paragraph_long::RULE,
        &result_missing::RULE,
        &sentence_long::RULE,
        &step_actions::RULE,
        &step_passive::RULE,
        &step_should::RULE,
        &term_unexplained::RULE,
    ],
    run,
};

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for (_, text) in module.texts.iter().filter(|(language, _)| is_english(language)) {
            let passages = passages(text);
            WRITING.iter().for_each(|writing| (writing.run)(acc, &passages));
            number_unsourced::run(acc, checked, module, &passages);
        }
    }
}

/// Whether a language is English, of wherever.
fn is_english(language: &str) -> bool {
    language.split('-').next() == Some("en")
}

/// What a passage is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// A step of a numbered list.
    Step,
    /// What can happen, and how to avoid it.
    Warning,
    /// Anything else.
    Words,
}

/// A paragraph or an item of a list.
#[derive(Debug)]
struct Passage {
    kind: Kind,
    sentences: Vec<String>,
    span: Span,
    /// The number of the list that it is a step of.
    list: usize,
}

/// The passages of one section, or of what stands before the first one.
struct Passages<'a> {
    text: &'a Text,
    section: Option<&'a Section>,
    all: Vec<Passage>,
}

impl Passages<'_> {
    fn role(&self) -> Option<Role> {
        self.section.and_then(|section| section.role)
    }

    fn span(&self) -> Span {
        self.section.map_or(self.text.title.span, |section| section.id.span)
    }

    fn steps(&self) -> impl Iterator<Item = &Passage> {
        self.all.iter().filter(|passage| passage.kind == Kind::Step)
    }
}

/// The passages of a text, section by section.
fn passages(text: &Text) -> Vec<Passages<'_>> {
    let top = Passages { text, section: None, all: collected(&text.intro, text.title.span) };
    let sections = text.sections.iter().map(|section| {
        let all = collected(&section.blocks, section.id.span);
        Passages { text, section: Some(section), all }
    });
    std::iter::once(top).chain(sections).collect()
}

fn collected(blocks: &[Block], span: Span) -> Vec<Passage> {
    let mut collector = Collector { all: vec![], lists: 0 };
    collector.blocks(blocks, Kind::Words, span);
    collector.all
}

struct Collector {
    all: Vec<Passage>,
    lists: usize,
}

impl Collector {
    fn blocks(&mut self, blocks: &[Block], kind: Kind, span: Span) {
        for block in blocks {
            match block {
                Block::Paragraph(inlines) | Block::Plain(inlines) => self.words(inlines, kind, span),
                Block::Quote(inner, span) => self.blocks(inner, kind, *span),
                Block::Note(note) => self.note(note),
                Block::List(start, items) => self.items(items, if start.is_some() { Kind::Step } else { kind }),
                _ => {}
            }
        }
    }

    fn note(&mut self, note: &Note) {
        self.words(&note.consequence, Kind::Warning, note.span);
        self.items(&note.avoidance, Kind::Warning);
        self.blocks(&note.more, Kind::Warning, note.span);
    }

    fn items(&mut self, items: &[Item], kind: Kind) {
        self.lists += 1;
        for item in items {
            self.blocks(&item.blocks, kind, item.span);
        }
    }

    fn words(&mut self, inlines: &[Inline], kind: Kind, span: Span) {
        let sentences = prose::sentences(&prose::text(inlines));
        if !sentences.is_empty() {
            self.all.push(Passage { kind, sentences, span, list: self.lists });
        }
    }
}

/// The beginning of a sentence, to find it by.
fn beginning(sentence: &str) -> String {
    let mut words: Vec<&str> = sentence.split_whitespace().collect();
    match words.len() > 7 {
        true => {
            words.truncate(6);
            format!("{} …", words.join(" "))
        }
        false => words.join(" "),
    }
}
