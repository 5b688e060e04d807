//! CommonMark to blocks and inlines. The only file that knows the parser.
//!
//! Every construct of CommonMark 0.31.2 is kept but raw HTML, which is refused. Tables and heading attributes
//! are the only extensions.

use super::{code, slots};
use crate::diag::{Acc, Diagnostic, rules};
use crate::model::source::{At, FileId, Span};
use crate::model::text::{Block, Code, Column, Heading, Inline, Item, Piece, Refs, Table, Target, words};
use pulldown_cmark::{Alignment, BrokenLink, CodeBlockKind, CowStr, Event, LinkType, Options, Parser, Tag, TagEnd};
use std::ops::Range;

/// Parses `source`, which is the text of `file`.
pub fn parse(acc: &mut Acc, file: FileId, source: &str) -> (Vec<Block>, Refs) {
    let mut broken = Vec::new();
    let callback = |link: BrokenLink<'_>| {
        broken.push((link.span.clone(), link.reference.to_string()));
        None::<(CowStr<'static>, CowStr<'static>)>
    };
    let options = Options::ENABLE_TABLES | Options::ENABLE_HEADING_ATTRIBUTES;
    let events: Vec<_> =
        Parser::new_with_broken_link_callback(source, options, Some(callback)).into_offset_iter().collect();
    let mut builder = Builder { acc, file, source, stack: vec![Frame::root()], skipped: 0, refs: Refs::default() };
    for (event, range) in events {
        builder.take(event, range);
    }
    let blocks = builder.stack.swap_remove(0).blocks;
    let refs = builder.refs;
    broken_references(acc, file, &broken);
    (blocks, refs)
}

/// A reference such as `[the pump][pump]` that is defined nowhere is a link to nowhere; a bare `[word]` is not.
fn broken_references(acc: &mut Acc, file: FileId, broken: &[(Range<usize>, String)]) {
    for (range, reference) in broken.iter().filter(|(range, reference)| range.len() > reference.len() + 2) {
        let found = Diagnostic::new(
            &rules::LINK_NOWHERE,
            Span::new(file, range.clone()),
            format!("`[{reference}]` is defined nowhere in this file"),
        );
        acc.add(found.help(format!(
            "write the target in round brackets after the words, or add a line `[{reference}]: part:…`"
        )));
    }
}

/// How deep constructs may be nested.
const DEEPEST: usize = 40;

/// An open construct, and what it holds so far.
struct Frame<'s> {
    tag: Option<Tag<'s>>,
    range: Range<usize>,
    blocks: Vec<Block>,
    inlines: Vec<Inline>,
    items: Vec<Item>,
    cells: Vec<Vec<Inline>>,
    rows: Vec<Vec<Vec<Inline>>>,
    code: String,
}

impl Frame<'_> {
    fn root() -> Self {
        Frame::open(None, 0..0)
    }

    fn open<'s>(tag: Option<Tag<'s>>, range: Range<usize>) -> Frame<'s> {
        Frame {
            tag,
            range,
            blocks: vec![],
            inlines: vec![],
            items: vec![],
            cells: vec![],
            rows: vec![],
            code: String::new(),
        }
    }

    /// Words that stand in a tight list item without a paragraph become a block of their own.
    fn close_plain(&mut self) {
        if !self.inlines.is_empty() && !matches!(self.tag, Some(Tag::Link { .. } | Tag::Image { .. })) {
            self.blocks.push(Block::Plain(std::mem::take(&mut self.inlines)));
        }
    }
}

struct Builder<'a, 's> {
    acc: &'a mut Acc,
    file: FileId,
    source: &'s str,
    stack: Vec<Frame<'s>>,
    /// How many constructs are open below the deepest that is kept.
    skipped: usize,
    refs: Refs,
}

impl<'s> Builder<'_, 's> {
    fn top(&mut self) -> &mut Frame<'s> {
        self.stack.last_mut().expect("the root frame is never closed")
    }

    fn span(&self, range: Range<usize>) -> Span {
        Span::new(self.file, range)
    }

    fn take(&mut self, event: Event<'s>, range: Range<usize>) {
        if self.too_deep(&event, &range) {
            return;
        }
        match event {
            Event::Start(tag) => self.start(tag, range),
            Event::End(end) => self.end(end),
            Event::Text(text) => self.text(&text, range),
            Event::Code(text) => self.inline(Inline::Code(text.to_string())),
            Event::SoftBreak => self.inline(Inline::SoftBreak),
            Event::HardBreak => self.inline(Inline::HardBreak),
            Event::Rule => {
                self.top().close_plain();
                self.top().blocks.push(Block::Rule);
            }
            Event::Html(html) | Event::InlineHtml(html) => self.raw_html(&html, range),
            Event::InlineMath(_) | Event::DisplayMath(_) | Event::FootnoteReference(_) | Event::TaskListMarker(_) => {}
        }
    }

    /// Leaves out what is nested deeper than any reader follows; each walk over blocks can then be recursive.
    fn too_deep(&mut self, event: &Event, range: &Range<usize>) -> bool {
        match event {
            Event::Start(_) if self.skipped > 0 || self.stack.len() > DEEPEST => {
                if self.skipped == 0 {
                    let message = format!("this is nested more than {DEEPEST} deep");
                    let found = Diagnostic::new(&rules::WRONG_FORM, self.span(range.clone()), message);
                    self.acc.add(found.help("write it flatter: a list in a list is enough"));
                }
                self.skipped += 1;
                true
            }
            Event::End(_) if self.skipped > 0 => {
                self.skipped -= 1;
                true
            }
            _ => self.skipped > 0,
        }
    }

    fn raw_html(&mut self, html: &str, range: Range<usize>) {
        let span = self.span(range);
        let found =
            Diagnostic::new(&rules::RAW_HTML, span, format!("`{}` is raw HTML, which guides do not take", html.trim()));
        self.acc
            .add(found.help("say it in Markdown; to show the signs themselves write `\\<` or put them in backticks"));
    }

    fn inline(&mut self, inline: Inline) {
        self.top().inlines.push(inline);
    }

    fn text(&mut self, text: &str, range: Range<usize>) {
        if matches!(self.top().tag, Some(Tag::CodeBlock(_))) {
            self.top().code.push_str(text);
            return;
        }
        self.unfinished_link(text, &range);
        let mut pieces = Vec::new();
        slots::split(self.acc, self.file, self.source, text, range, &mut self.refs.slots, &mut pieces);
        self.top().inlines.extend(pieces);
    }

    /// A target in the text itself was meant as a link.
    fn unfinished_link(&mut self, text: &str, range: &Range<usize>) {
        let opens = ["(part:", "(place:", "(hazard:", "[part:", "[place:", "[hazard:"];
        if let Some(at) = opens.iter().find_map(|open| text.find(open)) {
            let start = (range.start + at).min(range.end);
            let found = Diagnostic::new(&rules::LINK_FORM, self.span(start..range.end), "this link is printed as text");
            self.acc
                .add(found.help("write `[words](part:capability#section)`, with no space anywhere in the brackets"));
        }
    }

    fn start(&mut self, tag: Tag<'s>, range: Range<usize>) {
        let block = !matches!(tag, Tag::Emphasis | Tag::Strong | Tag::Link { .. } | Tag::Image { .. });
        if block {
            self.top().close_plain();
        }
        self.stack.push(Frame::open(Some(tag), range));
    }

    fn end(&mut self, end: TagEnd) {
        let mut frame = self.stack.pop().unwrap_or_else(|| Frame::open(None, 0..0));
        if matches!(end, TagEnd::Item | TagEnd::BlockQuote(_)) {
            frame.close_plain();
        }
        match end {
            TagEnd::Emphasis => self.inline(Inline::Emphasis(frame.inlines)),
            TagEnd::Strong => self.inline(Inline::Strong(frame.inlines)),
            TagEnd::Link | TagEnd::Image => self.reference(frame),
            TagEnd::Item => {
                let span = self.span(frame.range);
                self.top().items.push(Item { blocks: frame.blocks, span });
            }
            TagEnd::TableCell => self.top().cells.push(frame.inlines),
            TagEnd::TableHead => self.top().cells = frame.cells,
            TagEnd::TableRow => self.top().rows.push(frame.cells),
            _ => {
                if let Some(block) = self.block(frame) {
                    self.top().blocks.push(block);
                }
            }
        }
    }

    fn block(&mut self, frame: Frame<'s>) -> Option<Block> {
        let span = self.span(frame.range);
        Some(match frame.tag? {
            Tag::Paragraph => Block::Paragraph(frame.inlines),
            Tag::Heading { level, id, classes, attrs } => {
                let heading = Heading {
                    id: id.map(|id| id.to_string()),
                    classes: classes.iter().map(ToString::to_string).collect(),
                    others: attrs.iter().map(|(name, _)| name.to_string()).collect(),
                    span,
                };
                Block::Heading(level as u8, frame.inlines, heading)
            }
            Tag::BlockQuote(_) => Block::Quote(frame.blocks, span),
            Tag::List(start) => Block::List(start, frame.items),
            Tag::CodeBlock(kind) => Block::Code(Self::code(&kind, frame.code)),
            Tag::Table(columns) => Block::Table(Table {
                columns: columns.iter().map(column).collect(),
                head: frame.cells,
                rows: frame.rows,
            }),
            _ => return None,
        })
    }

    fn code(kind: &CodeBlockKind, text: String) -> Code {
        let language = match kind {
            CodeBlockKind::Fenced(info) => info.split_whitespace().next().unwrap_or_default().to_string(),
            CodeBlockKind::Indented => String::new(),
        };
        let pieces = code::pieces(&language, &text).unwrap_or_else(|| vec![(Piece::Plain, text)]);
        Code { language, pieces }
    }

    /// A link or picture: it gets the next number of its kind.
    fn reference(&mut self, frame: Frame<'s>) {
        let span = self.span(frame.range);
        match frame.tag {
            Some(Tag::Link { link_type, dest_url, title, .. }) => {
                let scheme = if link_type == LinkType::Email { "mailto:" } else { "" };
                self.refs.links.push(At::new(Target::Unusable(format!("{scheme}{dest_url}")), span));
                let number = self.refs.links.len() - 1;
                self.inline(Inline::Link(number, title.to_string(), frame.inlines));
            }
            Some(Tag::Image { dest_url, title, .. }) => {
                self.refs.pictures.push(At::new(dest_url.to_string(), span));
                let number = self.refs.pictures.len() - 1;
                self.inline(Inline::Picture(number, title.to_string(), words(&frame.inlines)));
            }
            _ => {}
        }
    }
}

fn column(alignment: &Alignment) -> Column {
    match alignment {
        Alignment::None => Column::Natural,
        Alignment::Left => Column::Left,
        Alignment::Center => Column::Centre,
        Alignment::Right => Column::Right,
    }
}
