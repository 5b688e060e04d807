//! Whatever happens to a van after its labels are printed, each of them still answers with the right page, or the book
//! is red. 200 histories, made from seeds, against a record of our own of what each label was stuck to.

mod common;

use jiff::civil::date;
use lockerleaf::label::printing::Printing;
use lockerleaf::load::files::Memory;
use lockerleaf::write::ledger;
use lockerleaf::{Looked, front, guide, look};
use std::collections::BTreeMap;
use std::fmt::Write;

const HISTORIES: u64 = 200;
const STEPS: usize = 7;

/// Numbers that look random, the same for one seed (a linear congruential generator; Knuth's MMIX constants).
struct Dice(u64);

impl Dice {
    fn throw(&mut self, sides: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % sides
    }
    fn in_ten(&mut self, chances: usize) -> bool {
        self.throw(10) < chances
    }
}

/// Something at a place of the van, whatever it is called; its number is in the place's note, and so on its page.
#[derive(Debug, Clone, PartialEq)]
struct Thing {
    id: usize,
    code: String,
    name: String,
    side: &'static str,
    printed_as: Option<String>,
}

/// Where a label must lead: to a thing, or nowhere since it is gone, or to the word that the van is no more.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Leads {
    To(usize),
    Gone,
}

/// The van, what its manifest says, and what is known of each label that was ever printed.
#[derive(Debug, Clone, Default)]
struct State {
    things: Vec<Thing>,
    key: String,
    former: Vec<String>,
    address: String,
    former_addresses: Vec<String>,
    said: String,
    withdrawn: bool,
    labels: BTreeMap<(String, String), Leads>,
    printed_with: Vec<String>,
    next: usize,
}

impl State {
    fn new() -> State {
        State { key: "M7QK3WZD".into(), address: "https://guides.example".into(), ..State::default() }
    }

    fn files(&self, ledger: &str) -> Memory {
        let mut files = common::book("");
        let list = |all: &[String]| all.iter().map(|one| format!("\"{one}\"")).collect::<Vec<_>>().join(", ");
        let mut book = format!(
            "[dealer]\nname = \"Test Dealer\"\nphone = \"01632 960123\"\n[guides]\naddress = \"{}\"\nformer-addresses = [{}]\n",
            self.address,
            list(&self.former_addresses)
        );
        if self.withdrawn {
            for key in self.former.iter().chain([&self.key]) {
                let _ = writeln!(book, "[[withdrawn]]\nkey = \"{key}\"\nwhy = \"It was scrapped.\"");
            }
        }
        let mut van = format!("key = \"{}\"\nformer-keys = [{}]\n{}", self.key, list(&self.former), self.said);
        for thing in &self.things {
            let _ = writeln!(
                van,
                "[[place]]\ncode = \"{}\"\nkind = \"locker\"\nname = \"{}\"\nside = \"{}\"\nposition = [3000, 0, 900]\nnote = \"thing {};\"",
                thing.code, thing.name, thing.side, thing.id
            );
        }
        files.0.insert("book.toml".into(), book.into_bytes());
        match self.withdrawn {
            true => files.0.remove("models/test/one.toml"),
            false => files.0.insert("models/test/one.toml".into(), van.into_bytes()),
        };
        if !ledger.is_empty() {
            files.0.insert("models/ledger.toml".into(), ledger.as_bytes().to_vec());
        }
        files
    }

    /// A code that no place has now; one that was printed before, when that is wanted and there is one.
    fn free_code(&self, dice: &mut Dice, printed: bool) -> String {
        let live = |code: &str| self.things.iter().any(|thing| thing.code == code);
        let mut old = self.labels.keys().map(|(_, code)| code.clone()).filter(|code| !live(code));
        if let Some(code) = old.next().filter(|_| printed) {
            return code;
        }
        loop {
            let code = format!("{}{}", ["A", "B", "C", "AD"][dice.throw(4)], dice.throw(90) + 10);
            if !live(&code) && !self.labels.keys().any(|(_, known)| *known == code) {
                return code;
            }
        }
    }

    fn is_printed(&self, code: &str) -> bool {
        self.labels.keys().any(|(_, printed)| printed == code)
    }
}

/// Does one thing to the van. Says whether the author kept quiet about a label, so that the book must be red.
fn step(state: &mut State, dice: &mut Dice) -> bool {
    let any = (!state.things.is_empty()).then(|| dice.throw(state.things.len().max(1)));
    match (dice.throw(9), any) {
        (0..=2, _) | (_, None) => add(state, dice),
        (3, Some(at)) => rename(state, dice, at),
        (4..=5, Some(at)) => renumber(state, dice, at),
        (6, Some(at)) => remove(state, dice, at),
        (7, _) => new_key(state, dice),
        _ => new_address(state, dice),
    }
}

fn add(state: &mut State, dice: &mut Dice) -> bool {
    let wants_old = dice.in_ten(2);
    let code = state.free_code(dice, wants_old);
    let quiet = state.is_printed(&code);
    state.next += 1;
    let side = ["nearside", "offside", "inside"][dice.throw(3)];
    let (id, name) = (state.next, format!("Locker {}", state.next));
    state.things.push(Thing { id, code, name, side, printed_as: None });
    quiet
}

fn rename(state: &mut State, dice: &mut Dice, at: usize) -> bool {
    let told = dice.in_ten(6);
    state.next += 1;
    let thing = &mut state.things[at];
    match dice.in_ten(5) {
        true => thing.name = format!("Box {}", state.next),
        false => thing.side = if thing.side == "rear" { "front" } else { "rear" },
    }
    let Some(printed) = &thing.printed_as else {
        return false;
    };
    if told {
        let _ = writeln!(state.said, "[[same-place]]\ncode = \"{}\"\nprinted-as = \"{printed}\"", thing.code);
    }
    // A van that was told so before takes it for the same place as long as the printed name is that one.
    let known = state.said.contains(&format!("[[same-place]]\ncode = \"{}\"\nprinted-as = \"{printed}\"", thing.code));
    !known
}

fn renumber(state: &mut State, dice: &mut Dice, at: usize) -> bool {
    let new = state.free_code(dice, false);
    let told = dice.in_ten(7);
    let old = std::mem::replace(&mut state.things[at].code, new.clone());
    state.things[at].printed_as = None;
    if told {
        let _ = writeln!(state.said, "[[moved]]\ncode = \"{old}\"\nto = \"{new}\"");
    }
    (state.is_printed(&old) || state.said.contains(&format!("to = \"{old}\""))) && !told
}

fn remove(state: &mut State, dice: &mut Dice, at: usize) -> bool {
    let thing = state.things.remove(at);
    let heir = (!state.things.is_empty() && dice.in_ten(4)).then(|| dice.throw(state.things.len()));
    let told = dice.in_ten(7);
    let leads = match heir.map(|heir| &state.things[heir]) {
        Some(heir) if told => {
            let _ = writeln!(state.said, "[[moved]]\ncode = \"{}\"\nto = \"{}\"", thing.code, heir.code);
            Leads::To(heir.id)
        }
        _ => {
            if told {
                let _ = writeln!(state.said, "[[gone]]\ncode = \"{}\"\nwhy = \"Taken off.\"", thing.code);
            }
            Leads::Gone
        }
    };
    let all = state.labels.values_mut().filter(|leads| **leads == Leads::To(thing.id));
    all.for_each(|label| *label = leads);
    (state.is_printed(&thing.code) || state.said.contains(&format!("to = \"{}\"", thing.code))) && !told
}

fn new_key(state: &mut State, dice: &mut Dice) -> bool {
    let told = dice.in_ten(7);
    let printed = state.labels.keys().any(|(key, _)| *key == state.key);
    let letters = b"23456789ABCDEFGHJKMNPQRSTVWXYZ";
    let new = (0..8).map(|_| letters[dice.throw(30)] as char).collect();
    let old = std::mem::replace(&mut state.key, new);
    if told {
        state.former.push(old);
    }
    printed && !told
}

fn new_address(state: &mut State, dice: &mut Dice) -> bool {
    let told = dice.in_ten(7);
    state.next += 1;
    let old = std::mem::replace(&mut state.address, format!("https://guides{}.example", state.next));
    let printed = state.printed_with.contains(&old);
    if told {
        state.former_addresses.push(old);
    }
    printed && !told
}

/// Prints some labels of a green book.
fn print(state: &mut State, dice: &mut Dice, looked: &Looked, root: &std::path::Path) {
    let van = &looked.vans[0];
    let mut printed = Vec::new();
    for at in 0..state.things.len() {
        if dice.in_ten(5) {
            let thing = &mut state.things[at];
            let place = van.places.iter().find(|place| place.code.value.0 == thing.code).unwrap();
            printed.push(Printing::new(&looked.book, van, place, 0.9, [90.0, 42.0]).unwrap());
            thing.printed_as = Some(thing.name.clone());
            state.printed_with.push(state.address.clone());
            state.labels.insert((state.key.clone(), thing.code.clone()), Leads::To(thing.id));
        }
    }
    ledger::record(root, &printed, date(2026, 8, 24)).unwrap();
}

/// Follows each label through the finished pages, and says how many there were.
fn follow(state: &State, looked: &Looked) -> usize {
    if state.labels.is_empty() {
        return 0;
    }
    let theme = looked.theme.as_ref().unwrap();
    let mut artifacts = front(theme, &looked.book).unwrap();
    for van in &looked.vans {
        artifacts.extend(guide(theme, &looked.book, van).unwrap());
    }
    let pages: BTreeMap<_, _> =
        artifacts.into_iter().map(|file| (file.path, String::from_utf8_lossy(&file.bytes).into_owned())).collect();
    for ((key, code), leads) in &state.labels {
        let path = format!("{key}/{code}/index.html");
        let page = pages.get(&path).unwrap_or_else(|| panic!("nothing answers {path}: {state:#?}"));
        let ends = ends(&pages, &path, page);
        match leads {
            _ if state.withdrawn => assert!(page.contains("It was scrapped."), "{path}: {page}"),
            Leads::To(id) => assert!(ends.iter().any(|end| end.contains(&format!("thing {id};"))), "{path} {state:#?}"),
            Leads::Gone => {
                let gone = |page: &String| page.contains("no longer in this vehicle") || page.contains("Taken off.");
                assert!(ends.iter().any(|end| gone(end)), "{path} {state:#?}")
            }
        }
    }
    state.labels.len()
}

/// The page itself, and when it is one of an old label or key, the pages that its own text leads to.
fn ends<'a>(pages: &'a BTreeMap<String, String>, path: &str, page: &'a String) -> Vec<&'a String> {
    let old_key = page.contains("page-root");
    if !old_key && !page.contains("page-old-label") {
        return vec![page];
    }
    let main = page.split("<main").nth(1).unwrap().split("</main>").next().unwrap();
    let mut found = vec![page];
    for href in main.split("href=\"").skip(1).map(|rest| rest.split('"').next().unwrap()) {
        let mut parts: Vec<_> = path.split('/').collect();
        parts.pop();
        for part in href.split('/') {
            match part {
                ".." => drop(parts.pop()),
                part => parts.push(part),
            }
        }
        let next = parts.join("/");
        if let Some(page) = pages.get(&next) {
            found.extend(if old_key { ends(pages, &next, page) } else { vec![page] });
        }
    }
    found
}

/// Lives through one history. Counts the labels that were followed, and the times that the book was red.
fn history(seed: u64) -> (usize, usize) {
    let mut dice = Dice(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) + 1);
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("book.toml"), "").unwrap();
    let (mut state, mut counts) = (State::new(), (0, 0));
    for at in 0..STEPS {
        let before = state.clone();
        let quiet = match at + 1 == STEPS && dice.in_ten(3) {
            true => {
                state.withdrawn = true;
                false
            }
            false => step(&mut state, &mut dice),
        };
        let ledger = std::fs::read_to_string(ledger::path(folder.path())).unwrap_or_default();
        let looked = look(&state.files(&ledger)).unwrap();
        let found = common::findings(&looked.acc, &looked.book.sources);
        assert_eq!(looked.acc.has_errors(), quiet, "seed {seed}, step {at}: {found:#?}\n{before:#?}\n{state:#?}");
        if quiet {
            counts.1 += 1;
            state = before;
            continue;
        }
        counts.0 += follow(&state, &looked);
        if !state.withdrawn && dice.in_ten(7) {
            print(&mut state, &mut dice, &looked, folder.path());
        }
    }
    counts
}

#[test]
fn each_printed_label_answers_rightly_or_the_book_is_red() {
    let threads: Vec<_> = (0..4)
        .map(|part| {
            std::thread::spawn(move || {
                (part..HISTORIES).step_by(4).map(history).fold((0, 0), |a, b| (a.0 + b.0, a.1 + b.1))
            })
        })
        .collect();
    let counts = threads.into_iter().map(|thread| thread.join().unwrap()).fold((0, 0), |a, b| (a.0 + b.0, a.1 + b.1));
    println!("{HISTORIES} histories: {} labels followed to their page, {} times red", counts.0, counts.1);
    assert!(counts.0 > 500 && counts.1 > 50, "{counts:?} is too little to prove anything");
}
