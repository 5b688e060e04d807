//! Slots in text: `{mains-current}`. A brace of its own is written `\{`.

use crate::diag::{Acc, Diagnostic, rules};
use crate::model::files::forms::is_id;
use crate::model::source::{At, FileId, Span};
use crate::model::text::Inline;
use std::ops::Range;

/// Cuts `text`, which stands at `range` of `source`, into words and slots. Each slot gets the next number.
pub fn split(
    acc: &mut Acc,
    file: FileId,
    source: &str,
    text: &str,
    range: Range<usize>,
    slots: &mut Vec<At<String>>,
    out: &mut Vec<Inline>,
) {
    // Text that differs from its source came from an entity or an escape, where braces are only braces.
    let verbatim = source.get(range.clone()) == Some(text);
    if !verbatim || !text.contains('{') {
        out.push(Inline::Text(text.to_string()));
        return;
    }
    let escaped = text.starts_with('{') && source[..range.start].ends_with('\\');
    let mut rest = usize::from(escaped);
    let mut words = 0;
    while let Some(open) = text[rest..].find('{').map(|at| rest + at) {
        let Some(close) = text[open..].find('}').map(|at| open + at) else {
            malformed(acc, Span::new(file, range.start + open..range.start + open + 1));
            break;
        };
        let name = &text[open + 1..close];
        let span = Span::new(file, range.start + open..range.start + close + 1);
        rest = close + 1;
        if !is_id(name) {
            malformed(acc, span);
            continue;
        }
        if open > words {
            out.push(Inline::Text(text[words..open].to_string()));
        }
        slots.push(At::new(name.to_string(), span));
        out.push(Inline::Slot(slots.len() - 1));
        words = rest;
    }
    if words < text.len() {
        out.push(Inline::Text(text[words..].to_string()));
    }
}

fn malformed(acc: &mut Acc, span: Span) {
    let found = Diagnostic::new(&rules::SLOT_FORM, span, "this brace opens no slot");
    acc.add(
        found.help("a slot is the name of a value or figure, as in `{capacity}`; for a brace of its own write `\\{`"),
    );
}
