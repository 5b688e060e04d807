//! Reports: the findings of one inspection for machines. Each kind is a file of its own, a function from findings to
//! text: the same findings give the same bytes, without times, names of machines or paths outside the book.

mod coverage;
mod json;
mod junit;
mod matrix;
mod sarif;

use super::{Acc, Diagnostic, Rule, suggest};
use crate::coverage::Coverage;
use crate::model::source::{Sources, Span};
use serde_json::Value;
use std::path::PathBuf;
use std::str::FromStr;

/// What a report tells of.
#[derive(Clone, Copy)]
pub struct Inspected<'a> {
    acc: &'a Acc,
    sources: &'a Sources,
    rules: &'a [&'static Rule],
    unchecked: &'a [Unchecked],
    coverage: Option<&'a Coverage>,
}

/// A rule that could not be held against the book.
#[derive(Debug, Clone, Copy)]
pub struct Unchecked {
    /// The rule.
    pub rule: &'static Rule,
    /// Why not, as one phrase.
    pub why: &'static str,
}

impl<'a> Inspected<'a> {
    /// What `acc` found in `sources` by `rules`, which are all rules there are; those `unchecked` were left out.
    pub fn new(acc: &'a Acc, sources: &'a Sources, rules: &'a [&'static Rule], unchecked: &'a [Unchecked]) -> Self {
        for found in acc.in_any_order() {
            assert!(rules.iter().any(|rule| rule.id == found.rule.id), "`{}` is in no list of rules", found.rule.id);
        }
        Inspected { acc, sources, rules, unchecked, coverage: None }
    }

    /// Says what safety coverage was measured.
    pub fn covered(self, coverage: &'a Coverage) -> Self {
        Inspected { coverage: Some(coverage), ..self }
    }

    fn findings(&self) -> Vec<&'a Diagnostic> {
        self.acc.in_file_order(self.sources)
    }

    fn path(&self, span: Span) -> &'a str {
        &self.sources.get(span.file).path
    }

    /// The place of `span`, with columns as wide as `width` says of each character.
    fn region(&self, span: Span, width: fn(char) -> usize) -> Region {
        let text = &self.sources.get(span.file).text;
        let (start, end) = (span.start as usize, span.end.max(span.start) as usize);
        Region { start: Point::at(text, start, width), end: Point::at(text, end, width) }
    }
}

/// A stretch of a file, as people count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Region {
    start: Point,
    /// The point after the last character.
    end: Point,
}

/// A line and a column of it, both counted from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Point {
    line: usize,
    column: usize,
}

impl Point {
    fn at(text: &str, byte: usize, width: fn(char) -> usize) -> Self {
        let before = &text[..text.floor_char_boundary(byte)];
        let line_start = before.rfind('\n').map_or(0, |at| at + 1);
        Point {
            line: before.matches('\n').count() + 1,
            column: before[line_start..].chars().map(width).sum::<usize>() + 1,
        }
    }
}

/// Adds the keys of `more` to an object.
fn join(object: &mut Value, more: Value) {
    if let (Value::Object(object), Value::Object(more)) = (object, more) {
        object.extend(more);
    }
}

/// One kind of report.
#[derive(Debug)]
pub struct Kind {
    /// Its name on the command line.
    pub name: &'static str,
    /// What it is, in a few words.
    pub about: &'static str,
    /// The report's text.
    pub text: fn(&Inspected) -> String,
}

/// All kinds of report, by name.
pub static KINDS: &[&Kind] = &[&coverage::KIND, &json::KIND, &junit::KIND, &matrix::KIND, &sarif::KIND];

/// "json (...), junit (...), sarif (...)".
pub fn kinds() -> String {
    KINDS.iter().map(|kind| format!("{} ({})", kind.name, kind.about)).collect::<Vec<_>>().join(", ")
}

/// A report that somebody asks for, written `KIND=FILE`.
#[derive(Debug, Clone)]
pub struct Wanted {
    /// Its kind.
    pub kind: &'static Kind,
    /// Where it goes.
    pub file: PathBuf,
}

impl FromStr for Wanted {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let (name, file) = text
            .split_once('=')
            .ok_or("a report is a kind, an equals sign and a file, such as `sarif=report.sarif`")?;
        let kind = KINDS.iter().find(|kind| kind.name == name).ok_or_else(|| {
            let known = suggest::did_you_mean(name, KINDS.iter().map(|kind| kind.name));
            format!("there is no report `{name}`; {known}")
        })?;
        let file = PathBuf::from(file);
        match file.file_name() {
            Some(_) => Ok(Wanted { kind, file }),
            None => Err(format!("`{text}` names no file")),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn kinds_are_in_order_and_say_what_they_are() {
        assert!(KINDS.windows(2).all(|pair| pair[0].name < pair[1].name));
        for kind in KINDS {
            assert!(crate::model::files::forms::is_id(kind.name) && kind.about.len() > 5, "{}", kind.name);
        }
    }

    #[test]
    fn columns_count_characters_or_code_units_and_never_split_one() {
        let text = "a\r\n\u{e9}\u{1f525}b\n";
        let (b, inside_the_flame) = (text.find('b').unwrap(), text.find('\u{1f525}').unwrap() + 2);
        assert_eq!(Point::at(text, b, |_| 1), Point { line: 2, column: 3 });
        assert_eq!(Point::at(text, b, char::len_utf16), Point { line: 2, column: 4 });
        assert_eq!(Point::at(text, inside_the_flame, char::len_utf16), Point { line: 2, column: 2 });
        assert_eq!(Point::at(text, 999, |_| 1), Point { line: 3, column: 1 });
    }

    #[test]
    fn a_report_is_asked_for_by_kind_and_file() {
        let wanted: Wanted = "sarif=out/a=b.sarif".parse().unwrap();
        assert_eq!((wanted.kind.name, wanted.file), ("sarif", PathBuf::from("out/a=b.sarif")));
        let refused = |text: &str| text.parse::<Wanted>().unwrap_err();
        assert_eq!(refused("sarfi=x"), "there is no report `sarfi`; did you mean `sarif`?");
        assert_eq!(
            refused("pdf=x"),
            "there is no report `pdf`; there are `coverage`, `json`, `junit`, `matrix` and `sarif`"
        );
        assert!(refused("sarif").contains("an equals sign"));
        assert!(refused("json=").contains("names no file") && refused("json=..").contains("names no file"));
    }
}
