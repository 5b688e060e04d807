//! Booking a van in: by flags, from the program itself.

mod common;

use std::fs;
use std::path::Path;
use std::process::{Command, Output};

fn book() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (path, bytes) in common::book("").0 {
        let path = folder.path().join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, bytes).unwrap();
    }
    folder
}

fn book_in(root: &Path, arguments: &[&str]) -> Output {
    let mut program = Command::new(env!("CARGO_BIN_EXE_lockerleaf"));
    program.arg("book-in").args(arguments).arg("--book").arg(root).output().unwrap()
}

fn said(output: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr))
}

#[test]
fn a_van_that_is_booked_in_is_green_and_has_a_key_of_its_own() {
    let root = book();
    let flags = ["test", "tern", "--year", "2021", "--stock", "S \"7\"", "--title", "White \\ blue"];
    let output = book_in(root.path(), &flags);
    assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    let text = fs::read_to_string(root.path().join("models/test/tern.toml")).unwrap();
    let facts: toml::Table = text.parse().unwrap();
    assert_eq!((facts["year"].as_integer(), facts["stock"].as_str()), (Some(2021), Some("S \"7\"")));
    assert_eq!(facts["name"].as_str(), Some("White \\ blue"));
    let key = facts["key"].as_str().unwrap();
    assert!(key != "M7QK3WZD" && said(&output).contains(key));
}

#[test]
fn a_manifest_that_is_there_is_never_written_over() {
    let root = book();
    let before = fs::read(root.path().join("models/test/one.toml")).unwrap();
    for name in ["one", "model", "Big Van", "../one"] {
        let output = book_in(root.path(), &["test", name]);
        assert_eq!(output.status.code(), Some(2), "{name}: {}", said(&output));
    }
    assert_eq!(fs::read(root.path().join("models/test/one.toml")).unwrap(), before);
}

#[test]
fn a_name_is_found_and_slips_are_said() {
    let root = book();
    assert_eq!(book_in(root.path(), &["test"]).status.code(), Some(0));
    assert!(root.path().join("models/test/van-1.toml").exists());
    let output = book_in(root.path(), &["tset"]);
    assert!(output.status.code() == Some(2) && said(&output).contains("did you mean `test`"), "{}", said(&output));
    let output = book_in(root.path(), &["test", "--without", "frigde"]);
    assert!(output.status.code() == Some(2) && said(&output).contains("fridge"), "{}", said(&output));
}

#[test]
fn what_the_new_van_still_lacks_is_said() {
    let root = book();
    // Without its consumer unit the van is not sound: the fridge draws from the mains.
    let output = book_in(root.path(), &["test", "bare", "--without", "unit"]);
    assert_eq!(output.status.code(), Some(1), "{}", said(&output));
    assert!(said(&output).contains("mend what is said above"), "{}", said(&output));
}
