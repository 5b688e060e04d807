//! What falls due: the calendar file by RFC 5545, the list across vans, and that nothing else moves a day.

mod common;

use common::{book, root};
use lockerleaf::due::{State, csv, due, json, table};
use lockerleaf::load::disk::Folder;
use lockerleaf::load::files::Memory;
use lockerleaf::model::van::Van;
use lockerleaf::{Looked, guide, look};
use std::collections::BTreeMap;
use std::process::Command;

/// The calendars of a van, by their paths.
fn calendars(looked: &Looked, van: &Van) -> BTreeMap<String, Vec<u8>> {
    let artifacts = guide(looked.theme.as_ref().unwrap(), &looked.book, van).unwrap();
    artifacts.into_iter().filter(|a| a.path.ends_with(".ics")).map(|a| (a.path, a.bytes)).collect()
}

/// Content lines with their folds taken away (RFC 5545, 3.1).
fn unfolded(bytes: &[u8]) -> Vec<String> {
    let text = std::str::from_utf8(bytes).unwrap().replace("\r\n ", "");
    text.split_terminator("\r\n").map(str::to_string).collect()
}

/// A van whose words are long and hold what a calendar must escape.
fn awkward() -> Memory {
    let module = common::read("tests/base.txt");
    let locker = module.split("//- content/gas/locker/module.toml\n").nth(1).unwrap().split("//- ").next().unwrap();
    let title = r#"title = "Schlauch; für Gas, \\ und „Öl“ – 软管 🚐 \u0007 with a name that is longer than one line, and then longer still, so that it is folded more than once""#;
    book(&format!(
        "//- content/gas/locker/module.toml\n{}\n//- models/test/one.toml\nkey = \"M7QK3WZD\"\nyear = 2019\nname = \"Ärger, Mühe; \\\\n und 🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐🚐\"\n\n[[renewed]]\nfit = \"gas\"\npart = \"hose\"\non = 2024-02-29\nnote = \"one line\\nand another\\r\\nand a third\"\n",
        locker.replace("title = \"Gas hose\"", title)
    ))
}

#[test]
fn lines_end_in_crlf_fold_at_75_octets_and_cut_no_character() {
    let looked = look(&awkward()).unwrap();
    assert!(!looked.acc.has_errors(), "{:?}", looked.acc.in_any_order().collect::<Vec<_>>());
    let calendars = calendars(&looked, &looked.vans[0]);
    let bytes = &calendars["M7QK3WZD/dates.ics"];
    let mut folds = 0;
    for line in bytes.strip_suffix(b"\r\n").unwrap().split(|b| *b == b'\n') {
        let line = line.strip_suffix(b"\r").unwrap_or(line);
        assert!(line.len() <= 75, "{} octets: {}", line.len(), String::from_utf8_lossy(line));
        assert!(std::str::from_utf8(line).is_ok(), "a fold cuts a character");
        assert!(!line.contains(&b'\r') && !line.contains(&7));
        folds += usize::from(line.starts_with(b" "));
    }
    assert!(folds > 6, "only {folds} folds: this proves nothing");
    let lines = bytes.iter().filter(|b| **b == b'\n').count();
    assert_eq!(lines, bytes.windows(2).filter(|pair| pair == b"\r\n").count());
}

/// RFC 5545, 3.3.11: backslash, semicolon, comma and line break are escaped in words, and nothing else.
#[test]
fn words_are_escaped_and_read_back() {
    let looked = look(&awkward()).unwrap();
    let calendars = calendars(&looked, &looked.vans[0]);
    let lines = unfolded(&calendars["M7QK3WZD/dates.ics"]);
    let value = |name: &str| lines.iter().find_map(|line| line.strip_prefix(name)).unwrap();
    let summary = value("SUMMARY:");
    assert!(summary.starts_with(r"Renew: Schlauch\; für Gas\, \\ und „Öl“ – 软管 🚐  with a name"), "{summary}");
    assert!(summary.ends_with(&format!(r"– Ärger\, Mühe\; \\n und {}", "🚐".repeat(20))), "{summary}");
    assert!(value("DESCRIPTION:").contains(r"one line\nand another\nand a third"), "{}", value("DESCRIPTION:"));
    // 29 February and 60 months.
    assert_eq!(value("DTSTART;VALUE=DATE:"), "20290228");
    assert_eq!(value("DTSTAMP:"), "20240229T000000Z");
    assert_eq!(value("UID:"), "hose.gas.M7QK3WZD@lockerleaf");
    assert!(lines.iter().all(|line| !line.starts_with("RRULE")), "a renewal does not come again by itself");
}

#[test]
fn the_same_book_gives_the_same_calendars_and_names_of_entries_are_their_own() {
    let (one, two) = (look(&Folder::new(root())).unwrap(), look(&Folder::new(root())).unwrap());
    let mut names = Vec::new();
    for (a, b) in one.vans.iter().zip(&two.vans) {
        let calendars = calendars(&one, a);
        assert_eq!(calendars, self::calendars(&two, b));
        let default = &calendars[&format!("{}/dates.ics", a.key.value)];
        names.extend(unfolded(default).into_iter().filter(|line| line.starts_with("UID:")));
    }
    let all = names.len();
    names.sort();
    names.dedup();
    assert_eq!(names.len(), all);
    assert!(all > 60, "only {all} entries");
}

#[test]
fn a_van_with_no_known_day_has_no_calendar_and_says_what_to_look_for() {
    let looked = look(&book("")).unwrap();
    let artifacts = guide(looked.theme.as_ref().unwrap(), &looked.book, &looked.vans[0]).unwrap();
    assert!(artifacts.iter().all(|artifact| !artifact.path.ends_with(".ics")));
    let page = artifacts.iter().find(|artifact| artifact.path == "M7QK3WZD/dates/index.html").unwrap();
    let page = String::from_utf8_lossy(&page.bytes);
    assert!(page.contains("No day is known yet") && page.contains("Look for") && page.contains("built in 2019"));
    assert!(!page.contains(".ics") && !page.contains("datetime="), "a day was guessed");
}

/// A small generator of numbers, so that the same books are tried each time (Knuth, The Art of Computer Programming,
/// vol. 2, 3.3.4: the multiplier of MMIX).
struct Dice(u64);

impl Dice {
    fn below(&mut self, many: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % many
    }
}

type Dates = BTreeMap<(String, String), Option<jiff::civil::Date>>;

/// What falls due of each fit, by fit and life.
fn dates(van: &Van) -> Dates {
    let of = |fit: &lockerleaf::model::van::Fit| {
        let name = fit.name.value.clone();
        fit.dates.iter().map(move |date| ((name.clone(), date.life.clone()), date.due)).collect::<Vec<_>>()
    };
    van.fits.iter().flat_map(of).collect()
}

/// Taking fits away, adding others or recording other parts leaves the days of the fits that stay where they were.
#[test]
fn days_do_not_move_when_other_fits_change() {
    const LIVES: &str = "title = \"Pump\"\n[life.filter]\ntitle = \"Filter\"\nevery = \"1 month\"\naction = \"clean\"\nsource = \"test\"\n[life.seal]\ntitle = \"Seal\"\nevery = \"24 months\"\naction = \"renew\"\nsource = \"test\"\n";
    let mut dice = Dice(2026);
    let (mut compared, mut known) = (0, 0);
    for _ in 0..60 {
        let all: Vec<_> = (0..6)
            .map(|number| {
                let day = format!("20{:02}-{:02}-{:02}", 19 + dice.below(8), 1 + dice.below(12), 1 + dice.below(28));
                let on = ["filter", "seal"][dice.below(2)];
                let made = if on == "seal" && dice.below(2) == 0 { "made = \"2019-W07\"\n" } else { "" };
                let record = format!("[[renewed]]\nfit = \"pump-{number}\"\npart = \"{on}\"\non = {day}\n{made}\n");
                (format!("[[add]]\nmodule = \"water/pump\"\nas = \"pump-{number}\"\n\n"), record)
            })
            .collect();
        let some: Vec<_> = all.iter().filter(|_| dice.below(3) > 0).cloned().collect();
        let resolved = |fits: &[(String, String)], remove: &str| {
            let text: String = fits.iter().map(|(add, record)| format!("{add}{record}")).collect();
            let van = format!("key = \"M7QK3WZD\"\nyear = 2019\n{remove}{text}");
            let fixture = format!(
                "//- content/water/pump/module.toml\n{LIVES}//- content/water/pump/text.md\n# Pump\n\nMoves water.\n//- models/test/one.toml\n{van}"
            );
            dates(&look(&book(&fixture)).unwrap().vans[0])
        };
        let (many, few) = (resolved(&all, ""), resolved(&some, "remove = [\"fridge\"]\n"));
        for (part, due) in &few {
            assert_eq!(many.get(part), Some(due), "{part:?}");
            compared += 1;
            known += usize::from(due.is_some());
        }
    }
    assert!(compared > 300 && known > 100, "{compared} compared, {known} known");
}

fn demo_list(last: Option<&str>) -> lockerleaf::due::DueList {
    let looked = look(&Folder::new(root())).unwrap();
    let on = "2030-11-25".parse().unwrap();
    due(&looked.book, looked.vans.iter(), on, last.map(|last| last.parse().unwrap()))
}

#[test]
fn the_list_is_soonest_first_and_fits_100_columns() {
    let list = demo_list(None);
    assert!(list.known.windows(2).all(|pair| pair[0].due <= pair[1].due));
    assert!(list.known.len() > 60 && list.unknown.len() > 20, "{} and {}", list.known.len(), list.unknown.len());
    for all in [false, true] {
        let text = table(&list, all);
        let widest = text.lines().map(|line| line.chars().count()).max();
        assert!(widest <= Some(100), "{widest:?} columns");
        assert!(text.contains(" overdue ") && text.contains(" later "));
        assert_eq!(text.contains(" not known "), all);
    }
    let soon = demo_list(Some("2031-01-24"));
    assert!(soon.known.len() < list.known.len() && soon.known.iter().all(|row| row.state != State::Later));
}

/// Read back by the other side of the library, row by row, against the rows themselves.
#[test]
fn values_between_commas_are_quoted_and_read_back() {
    let mut list = demo_list(None);
    list.known[0].title = "a \"title\", with commas;\nand lines".to_string();
    let text = csv(&list);
    assert!(text.contains("\"a \"\"title\"\", with commas;\nand lines\""), "RFC 4180, 2.5 to 2.7");
    let mut reader = ::csv::Reader::from_reader(text.as_bytes());
    let rows: Vec<_> = reader.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), list.known.len() + list.unknown.len());
    for (read, row) in rows.iter().zip(list.known.iter().chain(&list.unknown)) {
        assert_eq!(&read[0], row.due.map(|due| due.to_string()).unwrap_or_default());
        assert_eq!((&read[1], &read[2], &read[7]), (row.state.word(), row.van.as_str(), row.title.as_str()));
    }
}

#[test]
fn json_holds_the_same_rows() {
    let list = demo_list(None);
    let read: serde_json::Value = serde_json::from_str(&json(&list)).unwrap();
    assert_eq!(read["on"], "2030-11-25");
    let rows = read["dates"].as_array().unwrap();
    assert_eq!(rows.len(), list.known.len() + list.unknown.len());
    assert_eq!(rows[0]["due"], list.known[0].due.unwrap().to_string());
    assert!(rows.last().unwrap()["due"].is_null());
}

/// Exit codes of the command: 0 done, 1 the book has problems, 2 wrong usage, 3 the machine failed.
#[test]
fn the_command_ends_as_it_should() {
    let run = |folder: &std::path::Path, more: &[&str]| {
        let output =
            Command::new(env!("CARGO_BIN_EXE_lockerleaf")).arg("--book").arg(folder).arg("due").args(more).output();
        let output = output.unwrap();
        (
            output.status.code(),
            String::from_utf8_lossy(&output.stdout).into_owned() + &String::from_utf8_lossy(&output.stderr),
        )
    };
    let aside = tempfile::tempdir().unwrap();
    let file = aside.path().join("due.csv");
    let (code, said) =
        run(&root(), &["dune", "--on", "2030-11-25", "--within", "90d", "--csv", file.to_str().unwrap()]);
    assert_eq!(code, Some(0), "{said}");
    assert!(said.contains("overdue") && said.contains("wenlow-v2/dune") && !said.contains("heron"), "{said}");
    assert!(std::fs::read_to_string(&file).unwrap().starts_with("due,state,van,key,"));
    for wrong in [
        &["--within", "90"][..],
        &["--within", "é"],
        &["--within", "-1d"],
        &["--on", "2030-02-30"],
        &["nobody"],
        &["--csv", "a", "--json", "a"],
    ] {
        assert_eq!(run(&root(), wrong).0, Some(2), "{wrong:?}");
    }
    let (code, said) = run(&root(), &["--on", "2030-11-25", "--csv", "/proc/no/such/due.csv"]);
    assert_eq!(code, Some(3), "{said}");
    std::fs::create_dir_all(aside.path().join("book/models/x")).unwrap();
    std::fs::write(aside.path().join("book/book.toml"), "").unwrap();
    std::fs::write(aside.path().join("book/models/x/model.toml"), "title = 3\n").unwrap();
    let (code, said) = run(&aside.path().join("book"), &["--on", "2030-11-25"]);
    assert_eq!(code, Some(1), "{said}");
    assert!(said.contains("nothing was listed"), "{said}");
}
