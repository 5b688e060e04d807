//! What people do to a book by mistake: slips in the demo book, files that end too early, lines that stand twice.
//!
//! `tests/mistakes.txt` holds the slips. Four rules cannot be tried from a fixture, or not wholly, because they are
//! about bytes, links on a disk and finished pages: `not-utf-8`, `outside-book`, `output-link` and `theme-fails`.
//! Their tests are at the end.

mod common;

use common::{book, fixtures, read, root, split};
use lockerleaf::check::check;
use lockerleaf::diag::{Acc, print::print};
use lockerleaf::load::{files::Memory, load};
use lockerleaf::look;
use lockerleaf::resolve::resolve;
use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::Mutex;
use tempfile::TempDir;

/// How many copies of the demo book are tried at a time.
const AT_ONCE: usize = 3;

/// What belongs to a book.
const PARTS: [&str; 5] = ["book.toml", "content", "logo.svg", "models", "themes"];

// Slips in the demo book.

/// One slip: a line of a file that becomes another, and what the program then finds.
#[derive(Debug, Clone, Default)]
struct Mistake {
    file: String,
    stands: String,
    becomes: String,
    rule: String,
    at: String,
    place: Option<String>,
}

/// The slips of `tests/mistakes.txt`; its head says how they are written.
fn mistakes(text: &str) -> Vec<Mistake> {
    let entries = text.split("\n\n").filter(|entry| entry.lines().any(|line| line.starts_with("file ")));
    entries.map(mistake).collect()
}

fn mistake(entry: &str) -> Mistake {
    let mut mistake = Mistake::default();
    for line in entry.lines().filter(|line| !line.starts_with('#')) {
        // One space parts the word from what follows, so that a line may begin with spaces of its own.
        let (word, rest) = line.split_once(' ').unwrap_or((line, ""));
        let rest = rest.trim_end();
        match word {
            "file" => mistake.file = rest.trim().to_string(),
            "stands" => mistake.stands = rest.to_string(),
            "becomes" => mistake.becomes = rest.to_string(),
            "finds" => mistake.rule = rest.trim().to_string(),
            "at" => mistake.at = rest.to_string(),
            "in" => mistake.place = Some(rest.trim().to_string()),
            _ => panic!("`{line}` begins with none of the words of an entry"),
        }
    }
    mistake
}

impl Mistake {
    /// The text with the slip in it, and the number of its line.
    fn make(&self, text: &str) -> Result<(String, usize), String> {
        let line = line(text, &self.stands)?;
        let mut lines: Vec<_> = text.split('\n').collect();
        lines[line - 1] = &self.becomes;
        Ok((lines.join("\n"), line))
    }

    /// The file and line of the finding, in a book where the slip was made at `line`.
    fn place(&self, folder: &Path, line: usize) -> Result<String, String> {
        let file = self.place.as_ref().unwrap_or(&self.file);
        let text = std::fs::read_to_string(folder.join(file)).map_err(|e| format!("{file}: {e}"))?;
        let line = match self.at.as_str() {
            "same" => line,
            at => at.parse().or_else(|_| self::line(&text, at))?,
        };
        Ok(format!("--> {file}:{line}:"))
    }

    /// What is wrong with the program's answer.
    fn judge(&self, place: &str, output: &Output) -> Vec<String> {
        let said = String::from_utf8_lossy(&output.stderr);
        let finding = said
            .split("\n\n")
            .find(|finding| finding.contains(&format!("error[{}]", self.rule)) && finding.contains(place));
        let mut wrong = Vec::new();
        if output.status.code() != Some(1) {
            wrong.push(format!("exit {:?}", output.status.code()));
        }
        match finding {
            None => wrong.push(format!("no `error[{}]` at `{place}`", self.rule)),
            Some(finding) if !finding.contains("= help: ") => wrong.push("no help".to_string()),
            Some(_) => {}
        }
        if said.contains("panicked") {
            wrong.push("it panicked".to_string());
        }
        wrong.into_iter().map(|wrong| format!("{wrong}; it said:\n{}", first_lines(&said))).collect()
    }
}

/// The number of the line that is `wanted`, which stands once in `text`.
fn line(text: &str, wanted: &str) -> Result<usize, String> {
    let found: Vec<_> =
        text.split('\n').zip(1..).filter(|(line, _)| line.trim_end() == wanted).map(|(_, number)| number).collect();
    match found[..] {
        [number] => Ok(number),
        _ => Err(format!("`{wanted}` stands {} times in the file, not once", found.len())),
    }
}

fn first_lines(said: &str) -> String {
    said.lines().take(24).map(|line| format!("    {line}\n")).collect()
}

fn inspect(book: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_lockerleaf")).arg("inspect").arg("--book").arg(book).output().unwrap()
}

fn copy(from: &Path, to: &Path) {
    if from.is_dir() {
        std::fs::create_dir_all(to).unwrap();
        for entry in std::fs::read_dir(from).unwrap() {
            let entry = entry.unwrap();
            copy(&entry.path(), &to.join(entry.file_name()));
        }
    } else {
        std::fs::copy(from, to).unwrap();
    }
}

fn demo() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    for part in PARTS.iter().filter(|part| root().join(part).exists()) {
        copy(&root().join(part), &folder.path().join(part));
    }
    // A slip is looked for in the vans that it is about, and these are about four; the others only take time.
    for other in OTHERS {
        let path = folder.path().join("models").join(other);
        if path.is_dir() { std::fs::remove_dir_all(path) } else { std::fs::remove_file(path) }.unwrap();
    }
    folder
}

/// Models and vans that no slip is about.
const OTHERS: [&str; 4] = ["lindle-m4", "skerrow-a9", "tarnby-t4/teasel.toml", "wenlow-v2/sorrel.toml"];

/// Makes one slip in a copy of the demo book, tries it and takes it back.
fn attempt(folder: &Path, mistake: &Mistake) -> Result<Vec<String>, String> {
    let path = folder.join(&mistake.file);
    let before = std::fs::read_to_string(&path).map_err(|e| e.to_string())?;
    let (changed, line) = mistake.make(&before)?;
    std::fs::write(&path, changed).unwrap();
    let wrong = mistake.place(folder, line).map(|place| mistake.judge(&place, &inspect(folder)));
    std::fs::write(&path, before).unwrap();
    wrong
}

#[test]
fn slips_in_the_demo_book_are_found_where_they_are() {
    let all = mistakes(&read("tests/mistakes.txt"));
    assert!(all.len() >= 45, "{} slips", all.len());
    let first = demo();
    let whole = inspect(first.path());
    assert_eq!(
        whole.status.code(),
        Some(0),
        "the demo book itself:\n{}",
        first_lines(&String::from_utf8_lossy(&whole.stderr))
    );
    let waiting = Mutex::new(VecDeque::from(all));
    let failures = Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for _ in 0..AT_ONCE {
            scope.spawn(|| {
                let folder = demo();
                while let Some(mistake) = { waiting.lock().unwrap().pop_front() } {
                    let wrong = attempt(folder.path(), &mistake).unwrap_or_else(|wrong| vec![wrong]);
                    failures.lock().unwrap().extend(wrong.into_iter().map(|wrong| {
                        format!("{}: `{}` becomes `{}`: {wrong}", mistake.file, mistake.stands, mistake.becomes)
                    }));
                }
            });
        }
    });
    let failures = failures.into_inner().unwrap();
    assert!(failures.is_empty(), "{} of the slips:\n{}", failures.len(), failures.join("\n"));
}

#[test]
fn a_slip_is_read_as_it_is_written() {
    let text = "# A head.\n\n# Why.\nfile book.toml\nstands   x = 1\nbecomes\nfinds toml-syntax\nat same\n\n";
    let all = mistakes(text);
    assert_eq!(all.len(), 1);
    assert_eq!((all[0].stands.as_str(), all[0].becomes.as_str()), ("  x = 1", ""));
    assert_eq!(all[0].make("a\n  x = 1\nb").unwrap(), ("a\n\nb".to_string(), 2));
    assert!(all[0].make("x = 1").is_err());
}

// Files that end too early, and lines that stand twice.

/// Looks at a book and prints what is wrong with it; a panic comes back as the name of the case.
fn survives(name: impl Fn() -> String, files: &Memory) -> Option<String> {
    let looking = catch_unwind(AssertUnwindSafe(|| {
        // Without a theme first: a book with errors gets no pages, and making a theme ready takes most of the time.
        let mut acc = Acc::default();
        let book = load(&mut acc, files).expect("memory does not fail");
        let vans = resolve(&mut acc, &book);
        check(&mut acc, &book, &vans, None);
        print(&acc, &book.sources, false);
        if !acc.has_errors() {
            let looked = look(files).expect("memory does not fail");
            print(&looked.acc, &looked.book.sources, false);
        }
    }));
    looking.err().map(|_| name())
}

/// Does `work` on all of `cases`, on two threads; what comes back is what failed.
fn on_two_threads<T: Sync>(cases: &[T], work: impl Fn(&T) -> Vec<String> + Sync) -> Vec<String> {
    let (work, half) = (&work, cases.len().div_ceil(2));
    std::thread::scope(|scope| {
        let parts: Vec<_> = cases
            .chunks(half.max(1))
            .map(|part| scope.spawn(move || part.iter().flat_map(work).collect::<Vec<_>>()))
            .collect();
        parts.into_iter().flat_map(|part| part.join().unwrap()).collect()
    })
}

/// Books that end after each line of `text`, and books in which one of its lines stands twice.
fn mishaps(name: &str, text: &str) -> Vec<(String, Memory)> {
    let lines: Vec<_> = text.split_inclusive('\n').collect();
    let cases = (0..lines.len()).flat_map(|at| {
        let cut = lines[..=at].concat();
        let twice = cut.clone() + &lines[at..].concat();
        [(format!("{name}: cut off after line {}", at + 1), cut), (format!("{name}: line {} twice", at + 1), twice)]
    });
    cases.map(|(case, text)| (case, book(&text))).collect()
}

#[test]
fn a_book_that_is_cut_off_or_has_a_line_twice_never_makes_the_program_panic() {
    let mut seen = BTreeSet::new();
    let mut cases = Vec::new();
    for (name, text) in fixtures() {
        let (wrong, right) = text.split_once("//=\n").unwrap_or((&text, ""));
        let wrong = mishaps(&format!("{name}, wrong"), &split(wrong).0);
        let right = mishaps(&format!("{name}, mended"), right);
        // Many mishaps make the same book, and one look at it is enough.
        cases.extend(wrong.into_iter().chain(right).filter(|(_, files)| seen.insert(files.0.clone())));
    }
    assert!(cases.len() > 2000, "{} books", cases.len());
    let failures = on_two_threads(&cases, |(name, files)| survives(|| name.clone(), files).into_iter().collect());
    assert!(failures.is_empty(), "panics:\n{}", failures.join("\n"));
}

/// The next of a row of numbers that always is the same (SplitMix64; its constants are from memory, and any would do).
fn next(state: &mut u64) -> u64 {
    *state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let mut z = *state;
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// Adds the files below `folder`, by their paths in the book.
fn gather(folder: &Path, files: &mut BTreeMap<String, Vec<u8>>) {
    for entry in std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()) {
        if entry.is_dir() {
            gather(&entry, files);
        } else {
            let name = entry.strip_prefix(root()).unwrap().to_string_lossy().replace('\\', "/");
            files.insert(name, std::fs::read(&entry).unwrap());
        }
    }
}

/// The folder of the module that a file belongs to.
fn module(path: &str) -> Option<&str> {
    let inside = path.strip_prefix("content/")?;
    let (at, _) = inside.match_indices('/').nth(1)?;
    Some(&path["content/".len()..][..at])
}

/// The demo book without the modules that `path` has nothing to do with, and with one van that has its module fitted:
/// so that it is quickly read.
fn around(path: &str, demo: &BTreeMap<String, Vec<u8>>) -> Memory {
    let own = module(path).unwrap_or("gas/cylinder-locker");
    let keep = |other: &str| module(other).is_none_or(|name| name == own || name.starts_with("shared/"));
    let kept = demo.iter().filter(|(other, _)| keep(other) && !other.starts_with("models/"));
    let mut files = Memory(kept.map(|(name, bytes)| (name.clone(), bytes.clone())).collect());
    let fit = format!("module = \"{own}\"");
    let models = demo.iter().filter(|(path, _)| path.ends_with("/model.toml")).map(|(_, bytes)| bytes);
    let models: Vec<_> = models.map(|bytes| String::from_utf8_lossy(bytes)).collect();
    if let Some(model) = models.iter().find(|model| model.contains(&fit)) {
        let mut parts = model.split("\n[[fit]]\n");
        let facts = parts.next().unwrap_or_default();
        let fits: String = parts.filter(|part| part.contains(&fit)).map(|part| format!("\n[[fit]]\n{part}")).collect();
        files.0.insert("models/one/model.toml".to_string(), format!("{facts}{fits}").into_bytes());
        files.0.insert("models/one/van.toml".to_string(), b"key = \"M7QK3WZD\"\n".to_vec());
    }
    files
}

#[test]
fn a_demo_file_that_is_cut_off_anywhere_never_makes_the_program_panic() {
    let mut demo = BTreeMap::from([("book.toml".to_string(), read("book.toml").into_bytes())]);
    for part in ["content", "models"] {
        gather(&root().join(part), &mut demo);
    }
    let paths: Vec<_> = demo.keys().filter(|path| path.starts_with("content/")).collect();
    assert!(paths.len() > 50, "{} files", paths.len());
    let fitted = paths.iter().filter(|path| around(path, &demo).0.contains_key("models/one/van.toml")).count();
    assert!(fitted > paths.len() / 2, "{fitted} files of modules that are fitted");
    let failures = on_two_threads(&paths, |path| {
        let mut files = around(path, &demo);
        let mut state = path.bytes().fold(20, |sum, byte| sum * 31 % 1_000_003 + u64::from(byte));
        let whole = &demo[*path];
        (0..20)
            .filter_map(|_| {
                let end = usize::try_from(next(&mut state)).unwrap_or_default() % whole.len().max(1);
                files.0.insert(path.to_string(), whole[..end].to_vec());
                survives(|| format!("{path}: cut off after {end} bytes"), &files)
            })
            .collect()
    });
    assert!(failures.is_empty(), "panics:\n{}", failures.join("\n"));
}

// What takes a disk, or bytes that are no text.

/// The base book of the fixtures in a folder, with `fixture` over it.
fn on_disk(fixture: &str) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (path, bytes) in book(fixture).0 {
        place(folder.path(), &path, &bytes);
    }
    folder
}

fn place(folder: &Path, path: &str, bytes: &[u8]) -> PathBuf {
    let path = folder.join(path);
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    std::fs::write(&path, bytes).unwrap();
    path
}

/// Expects one error of `rule`, at `place`, with help; none of another rule.
fn expect(folder: &Path, rule: &str, place: Option<&str>) {
    let output = inspect(folder);
    let said = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert_eq!(said.matches("error[").count(), 1, "{said}");
    assert!(said.contains(&format!("error[{rule}]")) && said.contains("= help: "), "{said}");
    assert!(place.is_none_or(|place| said.contains(&format!("--> {place}:"))), "{said}");
}

fn expect_nothing(folder: &Path) {
    let output = inspect(folder);
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
}

#[test]
fn a_file_of_an_old_code_page_is_not_utf_8() {
    let folder = on_disk("");
    let path = "content/routines/arriving.md";
    let text = "# Arriving\n\nSet the heater to 20 °C.\n";
    let latin: Vec<u8> = text.chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
    place(folder.path(), path, &latin);
    expect(folder.path(), "not-utf-8", Some("content/routines/arriving.md:3"));
    place(folder.path(), path, text.as_bytes());
    expect_nothing(folder.path());
}

#[cfg(unix)]
#[test]
fn a_link_out_of_the_book_is_outside_it() {
    let elsewhere = tempfile::tempdir().unwrap();
    let target = place(elsewhere.path(), "private.md", b"# Laying up\n\nWhat to do.\n");
    let folder = on_disk("");
    let link = folder.path().join("content/routines/laying-up.md");
    std::os::unix::fs::symlink(&target, &link).unwrap();
    expect(folder.path(), "outside-book", Some("content/routines/laying-up.md:1"));
    std::fs::remove_file(&link).unwrap();
    std::fs::copy(&target, &link).unwrap();
    expect_nothing(folder.path());
}

/// The base book in a folder with a theme of its own, and the template of its first page.
fn with_theme() -> (TempDir, PathBuf) {
    let folder = on_disk("");
    let theme = folder.path().join("themes/daymark");
    copy(&root().join("themes/daymark"), &theme);
    (folder, theme.join("templates/home.html"))
}

/// Adds `more` to a template, inside its last block when it has blocks.
fn add_to(template: &Path, more: &str) {
    let mut text = std::fs::read_to_string(template).unwrap();
    let end = text.rfind("{% endblock").unwrap_or(text.len());
    text.insert_str(end, more);
    std::fs::write(template, text).unwrap();
}

#[test]
fn a_template_that_names_nothing_makes_the_theme_fail() {
    let (folder, template) = with_theme();
    expect_nothing(folder.path());
    add_to(&template, "{{ pag.title }}");
    expect(folder.path(), "theme-fails", None);
}

#[test]
fn a_template_that_links_nowhere_makes_a_broken_link_of_finished_pages() {
    let (folder, template) = with_theme();
    add_to(&template, "<a href=\"nowhere.html\">Nowhere</a>");
    expect(folder.path(), "output-link", None);
}
