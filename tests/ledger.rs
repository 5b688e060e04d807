//! The ledger: nothing that was printed is lost, whoever prints at the same time.

mod common;

use jiff::civil::{Date, date};
use lockerleaf::diag::Acc;
use lockerleaf::label::printing::Printing;
use lockerleaf::load::files::Memory;
use lockerleaf::model::files::book::Correction;
use lockerleaf::model::files::ledger::LedgerFile;
use lockerleaf::model::files::vehicle::{PlaceKind, Side};
use lockerleaf::write::ledger::{self, Recorded};
use lockerleaf::{load, look};
use std::path::Path;
use std::process::Command;

const DAY: Date = date(2026, 8, 24);

fn printing(key: &str, code: &str) -> Printing {
    Printing {
        key: key.into(),
        code: code.into(),
        van: "test/one".into(),
        name: "Gas locker".into(),
        kind: PlaceKind::Locker,
        side: Side::Nearside,
        address: format!("HTTPS://GUIDES.EXAMPLE/{key}/{code}/"),
        correction: Correction::H,
        module: 0.87654321,
        size: [90.0, 42.0],
    }
}

fn folder() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("book.toml"), "").unwrap();
    folder
}

fn text(root: &Path) -> String {
    std::fs::read_to_string(ledger::path(root)).unwrap()
}

/// The ledger as the loader reads it.
fn read(root: &Path) -> LedgerFile {
    let mut acc = Acc::default();
    let files = Memory::from_fixture(&format!("//- models/ledger.toml\n{}", text(root)));
    let book = load::load(&mut acc, &files).unwrap();
    let found: Vec<_> = acc.in_any_order().map(|found| found.message.clone()).collect();
    assert!(found.is_empty(), "{found:?}");
    book.ledger.unwrap().1
}

#[test]
fn a_label_is_written_so_that_a_person_can_read_it() {
    let folder = folder();
    let recorded = ledger::record(folder.path(), &[printing("M7QK3WZD", "G1")], DAY).unwrap();
    assert_eq!(recorded, Recorded { new: 1, again: vec![] });
    assert_eq!(
        text(folder.path()).split_once('\n').unwrap().1,
        r#"
[[label]]
key = "M7QK3WZD"
code = "G1"
van = "test/one"
name = "Gas locker"
kind = "locker"
side = "nearside"
address = "HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/"
target = "M7QK3WZD/G1/index.html"
level = "H"
module = 0.877
size = [90.0, 42.0]
printed = [2026-08-24]
"#
    );
}

#[test]
fn a_reprint_is_noticed_and_counted() {
    let folder = folder();
    let label = [printing("M7QK3WZD", "G1")];
    for (times, on) in [(1, DAY), (2, date(2026, 9, 1)), (3, date(2026, 9, 1))] {
        let recorded = ledger::record(folder.path(), &label, on).unwrap();
        let again = (times > 1).then(|| ("M7QK3WZD".to_string(), "G1".to_string(), times));
        assert_eq!(recorded.again, Vec::from_iter(again));
    }
    let days: Vec<_> = read(folder.path()).label[0].printed.iter().map(|day| day.value.to_string()).collect();
    assert_eq!(days, ["2026-08-24", "2026-09-01", "2026-09-01"]);
}

#[test]
fn a_reprint_with_another_address_keeps_the_old_one_in_mind() {
    let folder = folder();
    let old = printing("M7QK3WZD", "G1");
    let new = Printing { address: "HTTPS://NEW.EXAMPLE/M7QK3WZD/G1/".into(), ..old.clone() };
    for label in [&old, &new, &new] {
        ledger::record(folder.path(), std::slice::from_ref(label), DAY).unwrap();
    }
    let label = &read(folder.path()).label[0];
    assert_eq!(label.address.value, new.address);
    assert_eq!(label.earlier.iter().map(|at| at.value.as_str()).collect::<Vec<_>>(), [old.address]);
}

#[test]
fn remarks_stay_and_labels_are_in_order() {
    let folder = folder();
    let codes = ["K1", "G2", "G1"];
    ledger::record(folder.path(), &codes.map(|code| printing("R2HN8VYT", code)), DAY).unwrap();
    let marked = text(folder.path())
        .replace(
            "[[label]]\nkey = \"R2HN8VYT\"\ncode = \"G2\"",
            "# Peeled off once.\n[[label]]\nkey = \"R2HN8VYT\"\ncode = \"G2\" # small",
        )
        .replace("# Every", "# Ours.\n# Every");
    std::fs::write(ledger::path(folder.path()), &marked).unwrap();
    ledger::record(folder.path(), &[printing("M7QK3WZD", "Z9"), printing("R2HN8VYT", "G2")], DAY).unwrap();
    let text = text(folder.path());
    for kept in ["# Ours.\n# Every", "# Peeled off once.\n[[label]]", "code = \"G2\" # small"] {
        assert!(text.contains(kept), "{kept} is gone:\n{text}");
    }
    let order: Vec<_> =
        read(folder.path()).label.iter().map(|label| format!("{} {}", &*label.key.value, &*label.code.value)).collect();
    assert_eq!(order, ["M7QK3WZD Z9", "R2HN8VYT G1", "R2HN8VYT G2", "R2HN8VYT K1"]);
}

#[test]
fn a_ledger_that_cannot_be_read_is_left_as_it_is() {
    let folder = folder();
    std::fs::create_dir(folder.path().join("models")).unwrap();
    std::fs::write(ledger::path(folder.path()), "[[label]\n").unwrap();
    assert!(ledger::record(folder.path(), &[printing("M7QK3WZD", "G1")], DAY).is_err());
    assert_eq!(text(folder.path()), "[[label]\n");
}

#[test]
fn what_was_recorded_from_a_book_is_green_in_that_book() {
    let files = common::book("");
    let looked = look(&files).unwrap();
    let folder = folder();
    let labels: Vec<_> = looked.vans[0]
        .places
        .iter()
        .filter(|place| place.labelled)
        .map(|place| Printing::new(&looked.book, &looked.vans[0], place, 0.9, [90.0, 42.0]).unwrap())
        .collect();
    assert_eq!(labels.len(), 2);
    ledger::record(folder.path(), &labels, DAY).unwrap();
    let mut files = files;
    files.0.insert("models/ledger.toml".into(), text(folder.path()).into_bytes());
    let looked = look(&files).unwrap();
    assert!(looked.acc.is_empty(), "{:?}", common::findings(&looked.acc, &looked.book.sources));
}

const CHILD: &str = "LOCKERLEAF_TEST_LEDGER";
const PROCESSES: usize = 4;
const LABELS: usize = 20;

/// What each process of the test below does; alone it does nothing.
#[test]
fn prints_as_one_of_several() {
    let Ok(told) = std::env::var(CHILD) else {
        return;
    };
    let (number, root) = told.split_once(' ').unwrap();
    for label in 0..LABELS {
        let own = printing(&format!("M7QK3WZ{number}"), &format!("A{label}"));
        ledger::record(Path::new(root), &[own, printing("R2HN8VYT", "G1")], DAY).unwrap();
    }
}

#[test]
fn processes_that_print_at_once_lose_nothing() {
    let folder = folder();
    let children: Vec<_> = (0..PROCESSES)
        .map(|number| {
            Command::new(std::env::current_exe().unwrap())
                .args(["--exact", "prints_as_one_of_several"])
                .env(CHILD, format!("{} {}", number + 2, folder.path().display()))
                .stdout(std::process::Stdio::null())
                .spawn()
                .unwrap()
        })
        .collect();
    for mut child in children {
        assert!(child.wait().unwrap().success());
    }
    let ledger = read(folder.path());
    assert_eq!(ledger.label.len(), PROCESSES * LABELS + 1);
    let shared = ledger.label.iter().find(|label| label.key.value.0 == "R2HN8VYT").unwrap();
    assert_eq!(shared.printed.len(), PROCESSES * LABELS, "a reprint was lost");
    let left: Vec<_> = std::fs::read_dir(folder.path().join("models")).unwrap().collect();
    assert_eq!(left.len(), 1, "only the ledger stays: {left:?}");
}
