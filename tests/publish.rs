//! Publishing: whole guides or none, whenever the program dies; and each printed label stays alive.

mod common;

use jiff::civil::date;
use lockerleaf::label::printing::Printing;
use lockerleaf::load::disk::Folder;
use lockerleaf::look;
use lockerleaf::publish::{Published, publish};
use lockerleaf::write::{ledger, publish::recover};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use walkdir::WalkDir;

const KEY: &str = "M7QK3WZD";

/// A book on the disk, beside room for what it is published to.
struct Place(tempfile::TempDir);

impl Place {
    fn new() -> Place {
        let place = Place(tempfile::tempdir().unwrap());
        for (path, bytes) in common::book("").0 {
            place.write(&path, &bytes);
        }
        place
    }
    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }
    fn write(&self, path: &str, bytes: &[u8]) {
        let path = self.path("book").join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, bytes).unwrap();
    }
    fn publish(&self, to: &str) -> Published {
        publish(&look(&Folder::new(self.path("book"))).unwrap(), &self.path(to)).unwrap()
    }
    fn edit(&self) {
        let text = self.path("book/content/gas/locker/text.md");
        let new = fs::read_to_string(&text).unwrap().replace("Holds the gas", "Keeps the gas");
        fs::write(text, new).unwrap();
    }
    /// Prints both labels of the van.
    fn print(&self) {
        let looked = look(&Folder::new(self.path("book"))).unwrap();
        let van = &looked.vans[0];
        let print = |place| Printing::new(&looked.book, van, place, 0.9, [90.0, 42.0]).unwrap();
        let labels: Vec<_> = van.places.iter().filter(|place| place.labelled).map(print).collect();
        ledger::record(&self.path("book"), &labels, date(2026, 8, 24)).unwrap();
    }
}

/// The files below a folder; none when it is not there.
fn tree(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let files = WalkDir::new(folder).into_iter().filter_map(Result::ok).filter(|entry| entry.file_type().is_file());
    files
        .map(|file| (file.path().strip_prefix(folder).unwrap().to_path_buf(), fs::read(file.path()).unwrap()))
        .collect()
}

fn copy(from: &Path, to: &Path) {
    for (path, bytes) in tree(from) {
        fs::create_dir_all(to.join(&path).parent().unwrap()).unwrap();
        fs::write(to.join(path), bytes).unwrap();
    }
}

#[test]
fn what_did_not_change_is_not_touched() {
    let place = Place::new();
    let Published::Done { changed, .. } = place.publish("to") else { panic!("the base book is sound") };
    assert_eq!(changed, 1);
    let Published::Done { changed, receipt, .. } = place.publish("to") else { panic!("the base book is sound") };
    assert_eq!((changed, receipt.written), (0, 0));
    place.edit();
    let Published::Done { changed, .. } = place.publish("to") else { panic!("the base book is sound") };
    assert_eq!(changed, 1);
    let home = fs::read_to_string(place.path("to/M7QK3WZD/part/gas/index.html")).unwrap();
    assert!(home.contains("Keeps the gas"));
}

#[test]
fn a_book_with_errors_publishes_nothing() {
    let place = Place::new();
    place.publish("to");
    let before = tree(&place.path("to"));
    place.write("models/test/one.toml", b"key = \"M7QK3WZD\"\nremove = [\"nothing\"]\n");
    assert!(matches!(place.publish("to"), Published::Unsound));
    assert_eq!(tree(&place.path("to")), before);
}

#[test]
fn guides_of_other_books_stay() {
    let place = Place::new();
    fs::create_dir_all(place.path("to/R2HN8VYT/G1")).unwrap();
    fs::write(place.path("to/R2HN8VYT/G1/index.html"), "theirs").unwrap();
    let Published::Done { others, .. } = place.publish("to") else { panic!("the base book is sound") };
    assert_eq!(others, ["R2HN8VYT"]);
    assert_eq!(fs::read_to_string(place.path("to/R2HN8VYT/G1/index.html")).unwrap(), "theirs");
}

#[test]
fn labels_of_a_van_that_was_withdrawn_or_has_another_key_still_answer() {
    let place = Place::new();
    place.print();
    place.publish("to");
    place.write("models/test/one.toml", b"key = \"R2HN8VYT\"\nformer-keys = [\"M7QK3WZD\"]\n");
    assert!(matches!(place.publish("to"), Published::Done { .. }));
    let old = fs::read_to_string(place.path("to/M7QK3WZD/G1/index.html")).unwrap();
    assert!(old.contains("../../R2HN8VYT/G1/index.html"), "{old}");
    assert!(!place.path("to/M7QK3WZD/part").exists(), "the old guide is not left beside the new one");
    fs::remove_file(place.path("book/models/test/one.toml")).unwrap();
    assert!(matches!(place.publish("to"), Published::Unsound), "labels would be dropped");
    place.write("book.toml", b"[[withdrawn]]\nkey = \"M7QK3WZD\"\nwhy = \"It was scrapped.\"\n");
    assert!(matches!(place.publish("to"), Published::Done { .. }));
    for code in ["G1", "K1"] {
        let page = fs::read_to_string(place.path(&format!("to/M7QK3WZD/{code}/index.html"))).unwrap();
        assert!(page.contains("It was scrapped."), "{page}");
    }
}

const CHILD: &str = "LOCKERLEAF_TEST_PUBLISH";

/// What the test below does in a process of its own; alone it does nothing.
#[test]
fn publishes_and_dies() {
    if let Ok(told) = std::env::var(CHILD) {
        let (book, to) = told.split_once('|').unwrap();
        let looked = look(&Folder::new(book)).unwrap();
        assert!(matches!(publish(&looked, Path::new(to)).unwrap(), Published::Done { .. }));
    }
}

/// Runs it so that it dies at a step of its writing. Says whether it came to its end before.
fn dies_at(place: &Place, to: &str, step: usize, exchange: bool) -> bool {
    let mut child = Command::new(std::env::current_exe().unwrap());
    child.args(["--exact", "publishes_and_dies"]).stdout(Stdio::null()).stderr(Stdio::null());
    child.env(CHILD, format!("{}|{}", place.path("book").display(), place.path(to).display()));
    child.env("LOCKERLEAF_TEST_DIES_AT", step.to_string());
    if !exchange {
        child.env("LOCKERLEAF_TEST_NO_EXCHANGE", "1");
    }
    child.status().unwrap().success()
}

fn old_or_new_at_each_step(exchange: bool) {
    let place = Place::new();
    place.publish("old");
    place.edit();
    place.publish("new");
    let (old, new) = (tree(&place.path("old").join(KEY)), tree(&place.path("new").join(KEY)));
    assert_ne!(old, new);
    let (mut seen_old, mut seen_new) = (0, 0);
    // One file that is written aside is like the next; each step before and after them is tried.
    for step in (1..).filter(|step| *step < 8 || *step >= new.len() || step % 9 == 0) {
        let to = format!("to-{step}");
        copy(&place.path("old"), &place.path(&to));
        let ended = dies_at(&place, &to, step, exchange);
        let folder = place.path(&to);
        if !exchange {
            recover(&folder).unwrap();
        }
        let now = tree(&folder.join(KEY));
        assert!(now == old || now == new, "killed at step {step}: half a guide");
        if now == old {
            seen_old += 1
        } else {
            seen_new += 1
        }
        assert!(matches!(place.publish(&to), Published::Done { .. }));
        assert_eq!(tree(&folder.join(KEY)), new, "killed at step {step}: the next run does not mend it");
        assert!(!folder.join(".coming").exists() && !folder.join(".leaving").exists());
        fs::remove_dir_all(&folder).unwrap();
        if ended {
            break;
        }
    }
    println!("exchange {exchange}: {seen_old} times the old guide, {seen_new} times the new one");
    assert!(seen_old > 10 && seen_new > 2, "{seen_old} and {seen_new}: the steps before and after are not both met");
}

#[test]
fn a_publish_that_is_killed_leaves_the_old_guide_or_the_new_one() {
    old_or_new_at_each_step(true);
}

#[test]
fn where_folders_cannot_change_places_the_next_run_puts_the_old_guide_back() {
    old_or_new_at_each_step(false);
}
