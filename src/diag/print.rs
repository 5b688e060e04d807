//! Findings for people: the source line underlined, what to do, where to read why.

use super::{Acc, Diagnostic, Severity, suggest};
use crate::model::source::{Sources, Span};
use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use std::fmt::Write;

/// More findings than this are only counted.
const MOST: usize = 200;

/// All findings of `acc` in file order, as text; with colour when `colour` is set.
pub fn print(acc: &Acc, sources: &Sources, colour: bool) -> String {
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    let mut out = String::new();
    let all = acc.in_file_order(sources);
    for diagnostic in all.iter().take(MOST) {
        let _ = writeln!(out, "{}\n", renderer.render(&[group(diagnostic, sources)]));
    }
    if all.len() > MOST {
        let _ = writeln!(out, "and {} more: mend these first\n", all.len() - MOST);
    }
    out
}

/// One finding, as text without colour.
pub fn one(diagnostic: &Diagnostic, sources: &Sources) -> String {
    Renderer::plain().render(&[group(diagnostic, sources)])
}

/// "2 errors and 1 warning", or nothing.
pub fn tally(acc: &Acc) -> Option<String> {
    let count = |severity, word| match acc.count(severity) {
        0 => None,
        n => Some(suggest::count(n, word)),
    };
    let counts: Vec<_> =
        [count(Severity::Error, "error"), count(Severity::Warning, "warning")].into_iter().flatten().collect();
    (!counts.is_empty()).then(|| counts.join(" and "))
}

fn group<'a>(diagnostic: &'a Diagnostic, sources: &'a Sources) -> Group<'a> {
    let level = match diagnostic.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
    };
    let mut group = Group::with_title(level.primary_title(&diagnostic.message).id(diagnostic.rule.id));
    if let Some(span) = diagnostic.span {
        let label = diagnostic.label.as_deref();
        group = group.element(snippet(sources, span, label, AnnotationKind::Primary));
    }
    if let Some((span, label)) = &diagnostic.other {
        group = group.element(snippet(sources, *span, Some(label), AnnotationKind::Context));
    }
    if let Some(vans) = vans(&diagnostic.vans) {
        group = group.element(Level::NOTE.with_name("in").message(vans));
    }
    for help in &diagnostic.help {
        group = group.element(Level::HELP.message(help));
    }
    group.element(Level::NOTE.with_name("why").message(format!("lockerleaf explain {}", diagnostic.rule.id)))
}

fn snippet<'a>(
    sources: &'a Sources,
    span: Span,
    label: Option<&'a str>,
    kind: AnnotationKind,
) -> Snippet<'a, annotate_snippets::Annotation<'a>> {
    let file = sources.get(span.file);
    let range = within(&file.text, span);
    let annotation = kind.span(range);
    let annotation = match label {
        Some(label) => annotation.label(label),
        None => annotation,
    };
    Snippet::source(&file.text).path(&file.path).annotation(annotation)
}

/// The span's bytes, cut to the first line it covers and to the text's character boundaries.
fn within(text: &str, span: Span) -> std::ops::Range<usize> {
    let boundary = |mut at: usize| {
        at = at.min(text.len());
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        at
    };
    let start = boundary(span.start as usize);
    let end = boundary(span.end as usize).max(start);
    let line_end = text[start..end].find('\n').map_or(end, |at| start + at);
    start..line_end
}

fn vans(vans: &[String]) -> Option<String> {
    match vans {
        [] => None,
        [first, second, _, _, ..] => Some(format!("`{first}`, `{second}` and {} more vans", vans.len() - 2)),
        few => Some(suggest::list(few)),
    }
}
