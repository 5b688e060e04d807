//! Blocks and inlines as HTML.

use crate::model::files::forms::Signal;
use crate::model::text::{Block, Code, Column, Inline, Item, Note, Piece, Table};
use std::fmt::Write;

/// A picture, as it is shown.
#[derive(Debug, Default)]
pub struct Picture {
    /// To the file, or to the middle one of several sizes.
    pub src: String,
    /// To each size, with its width; empty for a drawing, which is sharp in any size.
    pub srcset: String,
    /// Width and height in pixels, so that the page does not jump when it arrives.
    pub size: Option<(u32, u32)>,
}

/// How wide a photo is shown: as wide as the text.
const SHOWN: &str = "(min-width: 48rem) 44rem, 92vw";

impl Picture {
    /// Writes it as an `<img>`. It is fetched when it comes into view.
    pub fn write(&self, out: &mut String, alternative: &str, title: &str) {
        let _ = write!(out, "<img src=\"{}\"", escape(&self.src));
        if !self.srcset.is_empty() {
            let _ = write!(out, " srcset=\"{}\" sizes=\"{SHOWN}\"", escape(&self.srcset));
        }
        let _ = write!(out, " alt=\"{}\"", escape(alternative));
        title_attribute(out, title);
        if let Some((width, height)) = self.size {
            let _ = write!(out, " width=\"{width}\" height=\"{height}\"");
        }
        if !self.srcset.is_empty() {
            out.push_str(" loading=\"lazy\" decoding=\"async\"");
        }
        out.push('>');
    }
}

/// What a text needs to know of the page it stands on.
pub trait Around {
    /// Writes a link: its words are `inner`.
    fn link(&self, out: &mut String, number: usize, title: &str, inner: &str);
    /// A picture, as it is shown.
    fn picture(&self, number: usize) -> Picture;
    /// What a slot shows, not yet escaped.
    fn slot(&self, number: usize) -> &str;
    /// The link that rings the number that a slot shows, when it shows one.
    fn telephone(&self, _number: usize) -> Option<String> {
        None
    }
    /// A signal word in the reader's language.
    fn signal(&self, signal: Signal) -> &str;
    /// The address of the sign of a hazard, where it has one.
    fn sign(&self, hazard: &str) -> Option<String>;
    /// How many levels headings are moved down.
    fn deeper(&self) -> u8;
}

/// What stands in a link already, or will: no telephone number in it becomes a link of its own.
pub struct Bare<'a>(pub &'a dyn Around);

impl Around for Bare<'_> {
    fn link(&self, out: &mut String, number: usize, title: &str, inner: &str) {
        self.0.link(out, number, title, inner);
    }

    fn picture(&self, number: usize) -> Picture {
        self.0.picture(number)
    }

    fn slot(&self, number: usize) -> &str {
        self.0.slot(number)
    }

    fn signal(&self, signal: Signal) -> &str {
        self.0.signal(signal)
    }

    fn sign(&self, hazard: &str) -> Option<String> {
        self.0.sign(hazard)
    }

    fn deeper(&self) -> u8 {
        self.0.deeper()
    }
}

/// Writes blocks.
pub fn blocks(out: &mut String, blocks: &[Block], around: &dyn Around) {
    for block in blocks {
        self::block(out, block, around);
    }
}

fn block(out: &mut String, block: &Block, around: &dyn Around) {
    match block {
        Block::Paragraph(words) => wrap(out, "p", words, around),
        Block::Plain(words) => {
            inlines(out, words, around);
            out.push('\n');
        }
        Block::Heading(level, words, _) => {
            let level = (level + around.deeper()).min(6);
            wrap(out, ["h1", "h2", "h3", "h4", "h5", "h6"][usize::from(level.max(1)) - 1], words, around);
        }
        Block::Quote(inner, _) => {
            out.push_str("<blockquote>\n");
            blocks(out, inner, around);
            out.push_str("</blockquote>\n");
        }
        Block::Note(note) => self::note(out, note, around),
        Block::List(start, items) => list(out, *start, items, around),
        Block::Code(code) => self::code(out, code),
        Block::Table(table) => self::table(out, table, around),
        Block::Rule => out.push_str("<hr>\n"),
    }
}

fn wrap(out: &mut String, tag: &str, words: &[Inline], around: &dyn Around) {
    let _ = write!(out, "<{tag}>");
    inlines(out, words, around);
    let _ = writeln!(out, "</{tag}>");
}

fn list(out: &mut String, start: Option<u64>, items: &[Item], around: &dyn Around) {
    let tag = if start.is_some() { "ol" } else { "ul" };
    match start {
        Some(first) if first != 1 => {
            let _ = writeln!(out, "<ol start=\"{first}\">");
        }
        _ => {
            let _ = writeln!(out, "<{tag}>");
        }
    }
    for item in items {
        out.push_str("<li>");
        if !matches!(item.blocks.first(), Some(Block::Plain(_)) | None) {
            out.push('\n');
        }
        blocks(out, &item.blocks, around);
        while out.ends_with('\n') && matches!(item.blocks.as_slice(), [Block::Plain(_)]) {
            out.pop();
        }
        out.push_str("</li>\n");
    }
    let _ = writeln!(out, "</{tag}>");
}

/// A safety note: signal word, hazard, what can happen, how to avoid it.
pub fn note(out: &mut String, note: &Note, around: &dyn Around) {
    let class = note.signal.word().to_lowercase();
    let _ = write!(
        out,
        "<div class=\"note note-{class}\" role=\"note\">\n<p class=\"note-head\"><span class=\"note-word\">{}</span> <span class=\"note-hazard\">",
        escape(around.signal(note.signal))
    );
    inlines(out, &note.title, around);
    out.push_str("</span></p>\n");
    if let Some(sign) = around.sign(&note.hazard.value).filter(|_| note.signal > Signal::Notice) {
        let _ =
            writeln!(out, "<img class=\"note-sign\" src=\"{}\" alt=\"\" width=\"64\" height=\"64\">", escape(&sign));
    }
    out.push_str("<p>");
    inlines(out, &note.consequence, around);
    out.push_str("</p>\n");
    if !note.avoidance.is_empty() {
        list(out, None, &note.avoidance, around);
    }
    blocks(out, &note.more, around);
    out.push_str("</div>\n");
}

fn code(out: &mut String, code: &Code) {
    match code.language.as_str() {
        "" => out.push_str("<pre><code>"),
        language => {
            let _ = write!(out, "<pre><code class=\"language-{}\">", escape(language));
        }
    }
    for (piece, text) in &code.pieces {
        let class = match piece {
            Piece::Plain => "",
            Piece::Comment => "code-comment",
            Piece::Text => "code-text",
            Piece::Number => "code-number",
            Piece::Name => "code-name",
        };
        match class {
            "" => out.push_str(&escape(text)),
            class => {
                let _ = write!(out, "<span class=\"{class}\">{}</span>", escape(text));
            }
        }
    }
    out.push_str("</code></pre>\n");
}

fn table(out: &mut String, table: &Table, around: &dyn Around) {
    out.push_str("<table><thead><tr>");
    for (cell, column) in table.head.iter().zip(&table.columns) {
        self::cell(out, "th", cell, *column, around);
    }
    out.push_str("</tr></thead><tbody>\n");
    for row in &table.rows {
        out.push_str("<tr>");
        for (cell, column) in row.iter().zip(&table.columns) {
            self::cell(out, "td", cell, *column, around);
        }
        out.push_str("</tr>\n");
    }
    out.push_str("</tbody></table>\n");
}

fn cell(out: &mut String, tag: &str, words: &[Inline], column: Column, around: &dyn Around) {
    let class = match column {
        Column::Natural => "",
        Column::Left => " class=\"cell-left\"",
        Column::Centre => " class=\"cell-centre\"",
        Column::Right => " class=\"cell-right\"",
    };
    let _ = write!(out, "<{tag}{class}>");
    inlines(out, words, around);
    let _ = write!(out, "</{tag}>");
}

/// Writes inlines.
pub fn inlines(out: &mut String, words: &[Inline], around: &dyn Around) {
    for inline in words {
        match inline {
            Inline::Text(text) => escape_into(out, text),
            Inline::Emphasis(inner) => tagged(out, "em", inner, around),
            Inline::Strong(inner) => tagged(out, "strong", inner, around),
            Inline::Code(text) => {
                let _ = write!(out, "<code>{}</code>", escape(text));
            }
            Inline::Link(number, title, inner) => {
                let mut words = String::new();
                inlines(&mut words, inner, &Bare(around));
                around.link(out, *number, title, &words);
            }
            Inline::Picture(number, title, alternative) => {
                around.picture(*number).write(out, alternative, title);
            }
            Inline::Slot(number) => slot(out, *number, around),
            Inline::SoftBreak => out.push('\n'),
            Inline::HardBreak => out.push_str("<br>\n"),
        }
    }
}

fn slot(out: &mut String, number: usize, around: &dyn Around) {
    let text = escape(around.slot(number));
    match around.telephone(number) {
        Some(href) => {
            let _ = write!(out, "<a href=\"{}\">{text}</a>", escape(&href));
        }
        None => out.push_str(&text),
    }
}

fn tagged(out: &mut String, tag: &str, inner: &[Inline], around: &dyn Around) {
    let _ = write!(out, "<{tag}>");
    inlines(out, inner, around);
    let _ = write!(out, "</{tag}>");
}

/// Writes ` title="…"` unless it is empty.
pub fn title_attribute(out: &mut String, title: &str) {
    if !title.is_empty() {
        let _ = write!(out, " title=\"{}\"", escape(title));
    }
}

/// Text that can stand in HTML, in attributes too.
pub fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    escape_into(&mut out, text);
    out
}

fn escape_into(out: &mut String, text: &str) {
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            c => out.push(c),
        }
    }
}
