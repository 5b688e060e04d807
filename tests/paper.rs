//! Printing: what reaches the disk, and that words stay words.

mod common;

use common::book;
use lockerleaf::look;
use lockerleaf::print::{Order, print};
use lockerleaf::render::paper::Kind;
use std::collections::BTreeMap;
use std::path::Path;
use walkdir::WalkDir;

fn files(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let files = WalkDir::new(folder).into_iter().map(Result::unwrap).filter(|entry| entry.file_type().is_file());
    let name = |path: &Path| path.strip_prefix(folder).unwrap().to_string_lossy().into_owned();
    files.map(|entry| (name(entry.path()), std::fs::read(entry.path()).unwrap())).collect()
}

fn printed(fixture: &str, out: &Path, order: &Order) -> Option<lockerleaf::write::Receipt> {
    let looked = look(&book(fixture)).unwrap();
    print(&looked, out, &|_| true, order, &|| {}).unwrap().map(|printed| printed.receipt)
}

fn one_paper() -> Order {
    Order { papers: vec!["a5".into()], ..Order::default() }
}

#[test]
fn the_same_book_gives_the_same_bytes_and_a_second_run_makes_nothing() {
    let (one, two) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let first = printed("", one.path(), &one_paper()).unwrap();
    printed("", two.path(), &one_paper()).unwrap();
    let made = files(one.path());
    assert!(made == files(two.path()), "two runs differ");
    let pdfs: Vec<_> = made.keys().filter(|path| path.ends_with(".pdf")).map(String::as_str).collect();
    assert_eq!(
        pdfs,
        [
            "test-sheet.pdf",
            "test/one/booklet-a5.en.pdf",
            "test/one/labels.pdf",
            "test/one/record.en.pdf",
            "test/one/strips.pdf"
        ]
    );
    assert!(pdfs.iter().all(|path| made[*path].starts_with(b"%PDF-1.7") && made[*path].len() > 5000));
    let again = printed("", one.path(), &one_paper()).unwrap();
    assert_eq!((again.written, again.unchanged, again.removed), (0, first.written, 0));
}

#[test]
fn nothing_is_printed_when_the_book_has_an_error() {
    let out = tempfile::tempdir().unwrap();
    let wrong = "//- models/test/one.toml\nkey = \"M7QK3WZD\"\nyaer = 2019\n";
    assert!(printed(wrong, out.path(), &Order::default()).is_none());
    assert!(files(out.path()).is_empty());
}

#[test]
fn only_what_is_asked_is_printed_and_a_start_makes_labels_anew() {
    let out = tempfile::tempdir().unwrap();
    let labels = Order { kinds: vec![Kind::Labels], ..Order::default() };
    printed("", out.path(), &labels).unwrap();
    let first = files(out.path());
    assert!(!first.contains_key("test/one/record.en.pdf"));
    let receipt = printed("", out.path(), &Order { start: Some(5), ..labels }).unwrap();
    assert_eq!((receipt.written, receipt.unchanged), (2, 1));
    assert!(files(out.path())["test/one/labels.pdf"] != first["test/one/labels.pdf"]);
}

/// Words that would mean something to a typesetter are shown as they are: nothing in them is run, and nothing fails.
#[test]
fn words_are_set_as_words() {
    let out = tempfile::tempdir().unwrap();
    let van = r##"//- models/test/one.toml
key = "M7QK3WZD"
name = "#panic() $x^2$ *bold* _it_ `code` <label> @ref \\ [a](b) // no /* no */ → ✓ ½ Ωλ Жук"
"##;
    let order = Order { kinds: vec![Kind::Record], ..Order::default() };
    printed(van, out.path(), &order).unwrap();
    assert!(files(out.path())["test/one/record.en.pdf"].len() > 5000);
}
