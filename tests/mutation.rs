//! The proof that coverage is hard to fool: each safety note of the demo book is taken out, weakened, robbed of its
//! avoidance, and moved after the steps; each time the checks turn red and name the fit, the hazard and the file.

mod common;

use common::root;
use lockerleaf::check::{self, Check, Checked, safety};
use lockerleaf::coverage::{Coverage, measure};
use lockerleaf::diag::{Acc, Severity};
use lockerleaf::load::{disk::Folder, load, text};
use lockerleaf::model::book::Book;
use lockerleaf::model::files::forms::Signal;
use lockerleaf::model::text::{Block, Note, each_note};
use lockerleaf::render::theme::Theme;
use lockerleaf::resolve::resolve;

const THREADS: usize = 2;

/// A note of a module: where it stands in the source, and what of it.
struct Found {
    module: usize,
    hazard: String,
    /// The lines of the whole note in its file.
    lines: std::ops::Range<usize>,
    signal: Signal,
    /// Whether it stands in a section that has steps after it.
    in_steps: bool,
}

#[test]
fn each_note_of_the_demo_is_missed_when_it_is_gone_weak_empty_or_late() {
    let mut acc = Acc::default();
    let book = load(&mut acc, &Folder::new(root())).unwrap();
    assert!(!acc.has_errors());
    let theme = Theme::new(&book.theme, &book.settings.languages).unwrap();
    assert_eq!(findings(&book, &theme, None), Vec::<String>::new(), "the demo is not clean to begin with");
    let notes = notes(&book);
    assert!(notes.len() > 100, "only {} notes", notes.len());
    let parts: Vec<_> = std::thread::scope(|scope| {
        let parts: Vec<_> =
            notes.chunks(notes.len().div_ceil(THREADS)).map(|part| scope.spawn(|| kill(part))).collect();
        parts.into_iter().map(|part| part.join().unwrap()).collect()
    });
    let tried: usize = parts.iter().map(|(tried, _)| tried).sum();
    let survivors: Vec<String> = parts.into_iter().flat_map(|(_, survivors)| survivors).collect();
    let killed = tried - survivors.len();
    println!("{} notes, {killed} of {tried} mutants killed", notes.len());
    assert!(survivors.is_empty(), "{} of {tried} survive:\n{}", survivors.len(), survivors.join("\n"));
}

/// Tries all mutants of some notes on a book of its own: how many there were, and which survived.
fn kill(notes: &[Found]) -> (usize, Vec<String>) {
    let mut book = load(&mut Acc::default(), &Folder::new(root())).unwrap();
    let theme = Theme::new(&book.theme, &book.settings.languages).unwrap();
    let (mut tried, mut survivors) = (0, Vec::new());
    for note in notes {
        for (name, mutated) in mutants(&book, note) {
            tried += 1;
            if let Some(why) = survives(&mut book, &theme, note, &mutated) {
                let module = &book.modules[note.module].name;
                survivors.push(format!("{module} {} lines {:?} {name}: {why}", note.hazard, note.lines));
            }
        }
    }
    (tried, survivors)
}

fn notes(book: &Book) -> Vec<Found> {
    let mut all = Vec::new();
    for (module, facts) in book.modules.iter().enumerate() {
        let text = &facts.texts[book.settings.language()];
        let source = &book.sources.get(text.file).text;
        let mut take = |note: &Note, in_steps: bool| {
            let line = |at: u32| source[..at as usize].matches('\n').count();
            let lines = line(note.span.start)..line(note.span.end.saturating_sub(1)) + 1;
            all.push(Found { module, hazard: note.hazard.value.clone(), lines, signal: note.signal, in_steps });
        };
        each_note(&text.intro, &mut |note| take(note, false));
        for section in &text.sections {
            let steps = section.blocks.iter().any(|block| matches!(block, Block::List(..)));
            each_note(&section.blocks, &mut |note| take(note, steps));
        }
    }
    all
}

/// The text of the note's file with one change: its name, and the text.
fn mutants(book: &Book, note: &Found) -> Vec<(&'static str, String)> {
    let text = &book.modules[note.module].texts[book.settings.language()];
    let lines: Vec<&str> = book.sources.get(text.file).text.lines().collect();
    let own = &lines[note.lines.clone()];
    let with = |middle: Vec<String>| {
        let before = lines[..note.lines.start].iter().map(ToString::to_string);
        let after = lines[note.lines.end..].iter().map(ToString::to_string);
        before.chain(middle).chain(after).collect::<Vec<_>>().join("\n") + "\n"
    };
    let mut out = vec![("taken out", with(vec![]))];
    let least = book.hazards.0.get(&note.hazard).map(|hazard| hazard.at_least.value);
    if let Some(weaker) = Signal::ALL.iter().rev().find(|signal| Some(**signal) < least) {
        let weak = own
            .iter()
            .map(|line| line.replace(&format!("**{}**", note.signal.word()), &format!("**{}**", weaker.word())));
        out.push(("weakened", with(weak.collect())));
    }
    let without_list =
        own.iter().filter(|line| !line.trim_start_matches(['>', ' ']).starts_with("- ")).map(ToString::to_string);
    out.push(("without its avoidance", with(without_list.collect())));
    if note.in_steps {
        out.push(("after the steps", moved_down(&lines, note)));
    }
    out
}

/// The note moved to the end of its section.
fn moved_down(lines: &[&str], note: &Found) -> String {
    let end = (note.lines.end..lines.len()).find(|at| lines[*at].starts_with("## ")).unwrap_or(lines.len());
    let mut out: Vec<&str> = lines[..note.lines.start].to_vec();
    out.extend(&lines[note.lines.end..end]);
    out.push("");
    out.extend(&lines[note.lines.clone()]);
    out.push("");
    out.extend(&lines[end..]);
    out.join("\n") + "\n"
}

/// Why a mutant is not killed; the book is as it was afterwards.
fn survives(book: &mut Book, theme: &Theme, note: &Found, mutated: &str) -> Option<String> {
    let language = book.settings.language().to_string();
    let file = book.modules[note.module].texts[&language].file;
    let mut acc = Acc::default();
    let text = text::read(&mut acc, file, mutated).expect("a mutated text has its title");
    let original = book.modules[note.module].texts.insert(language.clone(), text).unwrap();
    let mut found: Vec<String> =
        acc.in_any_order().filter(|d| d.severity == Severity::Error).map(|d| d.message.clone()).collect();
    let in_text = !found.is_empty();
    if !in_text {
        found = findings(book, theme, Some(note.module));
    }
    let path = book.sources.get(file).path.clone();
    book.modules[note.module].texts.insert(language, original);
    let names_hazard = found.iter().any(|message| message.contains(&format!("`{}`", note.hazard)));
    match found.is_empty() {
        true => Some("nothing was found".to_string()),
        // What is wrong inside the note is said at the note, which names it by its place.
        false if in_text || names_hazard => None,
        false => Some(format!("{path}: no finding names the hazard: {found:?}")),
    }
}

/// The errors of a book that was loaded: the check of names and so on, then those of safety. With a module, only of the
/// vans that show its text: the others say nothing of it.
fn findings(book: &Book, theme: &Theme, module: Option<usize>) -> Vec<String> {
    let mut acc = Acc::default();
    let mut vans = resolve(&mut acc, book);
    vans.retain(|van| module.is_none_or(|module| van.fits.iter().any(|fit| shows(book, fit.module, module))));
    // What only warns turns nothing red.
    let turns_red =
        |check: &&&Check| check.rules.is_empty() || check.rules.iter().any(|rule| rule.severity == Severity::Error);
    for check in check::CHECKS.iter().filter(turns_red) {
        (check.run)(&mut acc, Checked { book, vans: &vans, today: None });
    }
    if !acc.has_errors() {
        let language = book.settings.language();
        let cells = vans.iter().flat_map(|van| measure(book, van, language, theme.phrases(language), None).cells);
        let coverage = Coverage { cells: cells.collect() };
        safety::check(&mut acc, safety::Guarded { book, vans: &vans, coverage: &coverage, today: None });
    }
    acc.in_any_order().filter(|d| d.severity == Severity::Error).map(|d| d.message.clone()).collect()
}

/// Whether a fit of the module `fitted` shows the text of `module`.
fn shows(book: &Book, fitted: usize, module: usize) -> bool {
    fitted == module || book.modules[fitted].includes.contains(&module)
}
