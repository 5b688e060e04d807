//! Blocks and inlines of a text as data for paper: links become references to pages.

use super::data::{Block, Coded, Inline, Named, Note};
use super::{Teller, anchor};
use crate::model::guide::View;
use crate::model::text as t;
use crate::model::van::Bound;

/// A text as it reads on paper.
pub struct Reading<'a> {
    pub(super) teller: &'a Teller<'a>,
    pub(super) view: &'a View<'a>,
    /// The fit it belongs to.
    pub(super) fit: Option<usize>,
    /// Numbers of its part that are known from memory alone.
    pub(super) unsure: Vec<&'a str>,
}

impl Reading<'_> {
    pub(super) fn blocks(&self, blocks: &[t::Block]) -> Vec<Block> {
        blocks.iter().map(|block| self.block(block)).collect()
    }

    fn block(&self, block: &t::Block) -> Block {
        match block {
            t::Block::Paragraph(words) | t::Block::Plain(words) => Block::Paragraph { words: self.inlines(words) },
            t::Block::Heading(_, words, _) => Block::Heading { words: self.inlines(words) },
            t::Block::Quote(inner, _) => Block::Quote { blocks: self.blocks(inner) },
            t::Block::Note(note) => Block::Note { note: Box::new(self.note(note, None)) },
            t::Block::List(None, items) => Block::Bullets { items: self.items(items) },
            t::Block::List(Some(first), items) => Block::Steps { first: *first, items: self.items(items) },
            t::Block::Code(code) => Block::Code { text: code.pieces.iter().map(|(_, text)| text.as_str()).collect() },
            t::Block::Table(table) => self.table(table),
            t::Block::Rule => Block::Rule,
        }
    }

    fn items(&self, items: &[t::Item]) -> Vec<Vec<Block>> {
        items.iter().map(|item| self.blocks(&item.blocks)).collect()
    }

    fn table(&self, table: &t::Table) -> Block {
        let cells = |cells: &Vec<Vec<t::Inline>>| cells.iter().map(|cell| self.inlines(cell)).collect();
        let column = |column: &t::Column| match column {
            t::Column::Natural => "start",
            t::Column::Left => "left",
            t::Column::Centre => "center",
            t::Column::Right => "right",
        };
        Block::Table {
            columns: table.columns.iter().map(column).collect(),
            head: cells(&table.head),
            rows: table.rows.iter().map(cells).collect(),
        }
    }

    /// A safety note; with the section it stands in when it is shown away from there.
    pub(super) fn note(&self, note: &t::Note, section: Option<&str>) -> Note {
        let part = match self.fit {
            Some(fit) => Named {
                title: self.teller.guide.fits[fit].title.to_string(),
                to: self.teller.known(match section {
                    Some(section) => anchor::section(self.teller.guide, fit, section),
                    None => anchor::fit(self.teller.guide, fit),
                }),
            },
            None => Named::default(),
        };
        Note {
            fit: self.fit,
            hazard: note.hazard.value.clone(),
            signal: note.signal.word().to_lowercase(),
            word: self.teller.signal(note.signal),
            title: self.inlines(&note.title),
            consequence: self.inlines(&note.consequence),
            avoid: self.items(&note.avoidance),
            more: self.blocks(&note.more),
            part,
        }
    }

    pub(super) fn inlines(&self, inlines: &[t::Inline]) -> Vec<Inline> {
        let mut out = Vec::new();
        for inline in inlines.iter().filter(|_| self.teller.codes.is_some()) {
            self.inline(inline, &mut out);
        }
        out
    }

    fn inline(&self, inline: &t::Inline, out: &mut Vec<Inline>) {
        match inline {
            t::Inline::Text(text) => self.text(text, out),
            t::Inline::Slot(number) => join(out, self.view.slots.get(*number).map_or("", String::as_str)),
            t::Inline::SoftBreak => join(out, " "),
            t::Inline::HardBreak => out.push(Inline::Break),
            t::Inline::Emphasis(inner) => out.push(Inline::Emphasis { words: self.inlines(inner) }),
            t::Inline::Strong(inner) => out.push(Inline::Strong { words: self.inlines(inner) }),
            t::Inline::Code(text) => out.push(Inline::Code { text: text.clone() }),
            t::Inline::Link(number, _, inner) => self.link(*number, inner, out),
            t::Inline::Picture(number, _, alternative) => out.push(self.picture(*number, alternative)),
        }
    }

    /// Words, with a mark after each number that is known from memory alone.
    fn text(&self, text: &str, out: &mut Vec<Inline>) {
        let mut rest = text;
        while let Some(end) = self.unsure.iter().filter_map(|number| end_of(rest, number)).min() {
            join(out, &rest[..end]);
            out.push(Inline::Unsure);
            rest = &rest[end..];
        }
        join(out, rest);
    }

    fn link(&self, number: usize, inner: &[t::Inline], out: &mut Vec<Inline>) {
        let words = self.inlines(inner);
        let guide = self.teller.guide;
        let to = match self.view.bound.get(number).unwrap_or(&Bound::Nowhere) {
            Bound::Section(fit, section) => anchor::section(guide, *fit, guide.fits[*fit].sections[*section]),
            Bound::Fit(fit) => anchor::fit(guide, *fit),
            Bound::Places(places) => {
                let coded = |place: &usize| {
                    let to = self.teller.known(anchor::place(guide, *place));
                    Coded { code: guide.places[*place].code.to_string(), to }
                };
                return out.push(Inline::Places { words, places: places.iter().map(coded).collect() });
            }
            Bound::Web(address) if t::words(inner).trim() != address => {
                out.extend(words);
                return join(out, &format!(" ({address})"));
            }
            Bound::Nowhere | Bound::Hazard(_) | Bound::Web(_) | Bound::File(_) => return out.extend(words),
        };
        out.push(Inline::Ref { words, to: self.teller.known(to) });
    }

    fn picture(&self, number: usize, alternative: &str) -> Inline {
        let file = self.view.text.refs.pictures.get(number).map(|picture| picture.value.as_str()).unwrap_or_default();
        Inline::Picture { path: format!("{}/{file}", self.view.folder), alternative: alternative.to_string() }
    }
}

/// Adds words to the words before them, so that a line is few pieces.
fn join(out: &mut Vec<Inline>, words: &str) {
    match out.last_mut() {
        _ if words.is_empty() => {}
        Some(Inline::Text { text }) => text.push_str(words),
        _ => out.push(Inline::Text { text: words.to_string() }),
    }
}

/// Where `number` ends in `text`, when it stands there as a whole: `4 days`, not the end of `14 days`.
fn end_of(text: &str, number: &str) -> Option<usize> {
    let whole = |start: usize, end: usize| {
        let before = text[..start].chars().next_back();
        let after = text[end..].chars().next();
        !before.is_some_and(|c| c.is_alphanumeric() || c == '.' || c == '-')
            && !after.is_some_and(char::is_alphanumeric)
    };
    let found = text.match_indices(number).map(|(start, _)| (start, start + number.len()));
    found.filter(|_| !number.is_empty()).find(|(start, end)| whole(*start, *end)).map(|(_, end)| end)
}

#[cfg(test)]
mod tests {
    use super::end_of;

    #[test]
    fn a_number_is_found_as_a_whole() {
        assert_eq!(end_of("after 14 days or 4 days.", "4 days"), Some(23));
        assert_eq!(end_of("0.4 days, 4 days’", "4 days"), Some(16));
        assert_eq!(end_of("4 daystars", "4 days"), None);
        assert_eq!(end_of("anything", ""), None);
    }
}
