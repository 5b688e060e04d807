//! Safety notes: block quotes that open with a signal word (ANSI Z535.6, ISO 3864-2).

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::files::forms::Signal;
use crate::model::source::{At, Span};
use crate::model::text::{Block, Inline, Item, Note, Refs, Target, words};

/// Turns the block quotes that are safety notes into notes, wherever they stand.
pub fn find(acc: &mut Acc, blocks: &mut [Block], refs: &Refs) {
    for block in blocks {
        match block {
            Block::Paragraph(inlines) | Block::Plain(inlines) => stray(acc, inlines, refs),
            Block::Quote(inner, span) => {
                let before = acc.len();
                match note(acc, inner, *span, refs) {
                    Some(note) => *block = Block::Note(note),
                    None if acc.len() == before => find(acc, inner, refs),
                    None => {}
                }
            }
            Block::List(_, items) => items.iter_mut().for_each(|item| find(acc, &mut item.blocks, refs)),
            _ => {}
        }
    }
}

/// Words that name a hazard after a signal word were meant as a safety note.
fn stray(acc: &mut Acc, inlines: &[Inline], refs: &Refs) {
    let text = words(inlines);
    let first = text.split(|c: char| !c.is_alphabetic()).find(|word| !word.is_empty()).unwrap_or_default();
    let hazard = inlines.iter().find_map(|inline| match inline {
        Inline::Link(number, ..) if is_hazard(inline, refs) => Some(refs.links[*number].span),
        Inline::Strong(inner) => inner.iter().find_map(|inline| match inline {
            Inline::Link(number, ..) if is_hazard(inline, refs) => Some(refs.links[*number].span),
            _ => None,
        }),
        _ => None,
    });
    if let (Some(span), Some(_)) = (hazard, Signal::from_word(first)) {
        let found =
            Diagnostic::new(&rules::SIGNAL_WORD, span, format!("`{first}` opens words that are no safety note"));
        acc.add(found.help(NOTE_HELP));
    }
}

/// How a safety note begins.
const NOTE_HELP: &str = "begin a quotation with the word in bold, then link the hazard: `> **WARNING** [Carbon monoxide](hazard:carbon-monoxide). …`";

fn note(acc: &mut Acc, blocks: &[Block], span: Span, refs: &Refs) -> Option<Note> {
    let (Block::Paragraph(opening) | Block::Plain(opening)) = blocks.first()? else {
        return None;
    };
    let (Inline::Strong(word), rest) = opening.split_first()? else {
        return not_bold(acc, &words(opening), span);
    };
    let names_hazard = opening.iter().any(|inline| is_hazard(inline, refs));
    let signal = signal(acc, &words(word), span, names_hazard)?;
    let (hazard, title, rest) = hazard(acc, rest, span, refs)?;
    let (avoidance, more) = avoidance(&blocks[1..]);
    let note = Note { signal, hazard, title, consequence: consequence(rest), avoidance, more, span };
    whole(acc, &note);
    Some(note)
}

/// A quotation whose first word is a signal word, but not in bold, was meant as a safety note.
fn not_bold(acc: &mut Acc, opening: &str, span: Span) -> Option<Note> {
    let opening = opening.trim_start_matches(|c: char| !c.is_alphabetic());
    let first = opening.split(|c: char| !c.is_alphabetic()).next().unwrap_or_default();
    let near = Signal::ALL.iter().find(|signal| signal.word().eq_ignore_ascii_case(first))?;
    let found = Diagnostic::new(&rules::SIGNAL_WORD, span, format!("`{first}` opens a quotation, and is not in bold"));
    acc.add(
        found.help(format!("for a safety note write `**{}**`; for plain words begin with another one", near.word())),
    );
    None
}

fn is_hazard(inline: &Inline, refs: &Refs) -> bool {
    matches!(inline, Inline::Link(number, ..) if matches!(refs.links[*number].value, Target::Hazard(_)))
}

fn signal(acc: &mut Acc, word: &str, span: Span, names_hazard: bool) -> Option<Signal> {
    let signal = Signal::from_word(word);
    if signal.is_none() {
        let known = Signal::ALL.iter().map(|signal| signal.word());
        let near = suggest::nearest(word.trim_end_matches([':', '!', '.']), known.clone());
        if near.is_some() || names_hazard {
            let help = near.map_or_else(|| suggest::one_of(known), |near| format!("did you mean `**{near}**`?"));
            acc.add(Diagnostic::new(&rules::SIGNAL_WORD, span, format!("`{word}` is not a signal word")).help(help));
        }
    }
    signal
}

fn hazard<'a>(
    acc: &mut Acc,
    rest: &'a [Inline],
    span: Span,
    refs: &Refs,
) -> Option<(At<String>, Vec<Inline>, &'a [Inline])> {
    let link = rest.iter().position(|inline| matches!(inline, Inline::Link(..)));
    let before = &rest[..link.unwrap_or(rest.len())];
    if let (Some(at), true) = (link, words(before).trim().is_empty())
        && let Inline::Link(number, _, title) = &rest[at]
        && let Target::Hazard(name) = &refs.links[*number].value
    {
        return Some((At::new(name.clone(), refs.links[*number].span), title.clone(), &rest[at + 1..]));
    }
    let found = Diagnostic::new(&rules::NOTE_FORM, span, "this safety note names no hazard");
    acc.add(found.help("link the hazard right after the signal word, as in `**WARNING** [Carbon monoxide](hazard:carbon-monoxide). What can happen.`"));
    None
}

/// What can happen, without the full stop that ends the hazard's name.
fn consequence(rest: &[Inline]) -> Vec<Inline> {
    let mut out = rest.to_vec();
    if let Some(Inline::Text(text)) = out.first_mut() {
        *text = text.trim_start_matches(['.', ':', ' ']).to_string();
        if text.is_empty() {
            out.remove(0);
        }
    }
    while matches!(out.first(), Some(Inline::SoftBreak | Inline::HardBreak)) {
        out.remove(0);
    }
    out
}

fn avoidance(blocks: &[Block]) -> (Vec<Item>, Vec<Block>) {
    let mut items = Vec::new();
    let mut more = Vec::new();
    for block in blocks {
        match block {
            Block::List(_, list) if items.is_empty() => items = list.clone(),
            other => more.push(other.clone()),
        }
    }
    (items, more)
}

fn whole(acc: &mut Acc, note: &Note) {
    let missing = match (words(&note.consequence).trim().is_empty(), note.avoidance.is_empty()) {
        (false, false) => return,
        (true, _) => "does not say what can happen",
        (_, true) => "does not say how to avoid it",
    };
    let found = Diagnostic::new(&rules::NOTE_FORM, note.span, format!("this safety note {missing}"));
    acc.add(found.help("after the hazard say what can happen; then give a list of ways to avoid it"));
}
