//! Reading fixtures: small books in one text, with what is expected under the line it is about.
//!
//! `//- path` begins a file; files that a fixture does not hold come from `tests/base.txt`. `//^ rule` says that the
//! line above is found by `rule`; `//! rule` says that `rule` finds something without a line. `//=` begins the mended book.

// Each test program uses a part of this.
#![allow(dead_code)]

pub mod pictures;

use lockerleaf::diag::Acc;
use lockerleaf::load::disk::Folder;
use lockerleaf::load::files::{Files, Memory};
use lockerleaf::model::source::Sources;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// The project's folder.
pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// The text of a file of the project.
pub fn read(path: impl AsRef<Path>) -> String {
    let path = root().join(path);
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// All fixtures: their names and texts.
pub fn fixtures() -> Vec<(String, String)> {
    let folder = root().join("tests/fixtures");
    let mut all: Vec<_> = std::fs::read_dir(&folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "txt"))
        .collect();
    all.sort();
    all.into_iter()
        .map(|path| (path.file_stem().unwrap().to_string_lossy().into_owned(), std::fs::read_to_string(&path).unwrap()))
        .collect()
}

/// A finding: file, line and rule. A finding without a place has an empty file and line 0.
pub type Finding = (String, usize, String);

/// What a fixture expects, and the book without those lines.
pub fn split(text: &str) -> (String, BTreeSet<Finding>) {
    let (mut book, mut expected) = (String::new(), BTreeSet::new());
    let (mut path, mut line) = (String::new(), 0);
    for text in text.split_inclusive('\n') {
        if let Some(rule) = text.strip_prefix("//^ ") {
            expected.insert((path.clone(), line, rule.trim().to_string()));
        } else if let Some(rule) = text.strip_prefix("//! ") {
            expected.insert((String::new(), 0, rule.trim().to_string()));
        } else {
            match text.strip_prefix("//- ") {
                Some(name) => (path, line) = (name.trim().to_string(), 0),
                None => line += 1,
            }
            book.push_str(text);
        }
    }
    (book, expected)
}

/// The base book with the files of `fixture` over it. A file whose only line is `(none)` is taken away; one whose only
/// line is `(picture NAME)` is drawn.
pub fn book(fixture: &str) -> Memory {
    let mut files = Memory::from_fixture(&read("tests/base.txt"));
    for (path, bytes) in Memory::from_fixture(fixture).0 {
        let asked = std::str::from_utf8(&bytes).unwrap_or_default();
        if let Some(name) =
            asked.strip_prefix("(picture ").and_then(|rest| rest.strip_suffix(")\n")).filter(|name| !name.contains(')'))
        {
            files.0.insert(path, pictures::named(name));
        } else if bytes == b"(none)\n" {
            files.0.remove(&path);
        } else {
            files.0.insert(path, bytes);
        }
    }
    files
}

/// The demo book, in memory.
pub fn demo() -> Memory {
    let folder = Folder::new(root());
    let paths = folder.list().unwrap().into_iter().map(|entry| entry.path);
    Memory(paths.map(|path| (path.clone(), folder.read(&path).unwrap())).collect())
}

/// What was found.
pub fn findings(acc: &Acc, sources: &Sources) -> BTreeSet<Finding> {
    let place = |d: &lockerleaf::diag::Diagnostic| match d.span {
        Some(span) => (sources.get(span.file).path.clone(), sources.line_column(span).0),
        None => (String::new(), 0),
    };
    acc.in_file_order(sources)
        .into_iter()
        .map(|d| {
            let (path, line) = place(d);
            (path, line, d.rule.id.to_string())
        })
        .collect()
}
