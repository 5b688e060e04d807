//! A manifest for a new van, with a key that nobody can guess and no van ever had. The only file that asks for chance.

use crate::error::Error;
use crate::model::book::{Book, Model};
use crate::model::van::Van;
use crate::write::{disk, ledger};
use std::collections::BTreeSet;
use std::fmt::Write;
use std::path::{Path, PathBuf};

/// The letters and digits of keys: those that are not mistaken for each other.
const LETTERS: &[u8; 30] = b"23456789ABCDEFGHJKMNPQRSTVWXYZ";

/// What is known of a new van.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct New {
    /// Its model's folder.
    pub model: String,
    /// The manifest's name, without its ending.
    pub name: String,
    /// The year it was built.
    pub year: Option<u32>,
    /// The dealer's stock number.
    pub stock: Option<String>,
    /// What readers call it.
    pub title: Option<String>,
    /// Fits of the model that it lacks.
    pub without: Vec<String>,
}

/// A van that was booked in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Booked {
    /// Its manifest.
    pub path: PathBuf,
    /// Its key.
    pub key: String,
}

/// The fits of a model.
pub struct Fits<'a>(&'a Model);

impl<'a> Fits<'a> {
    /// Those of `model`.
    pub fn of(model: &'a Model) -> Self {
        Fits(model)
    }

    /// Their names.
    pub fn names(&self) -> Vec<&'a str> {
        self.0.facts.fit.iter().map(|fit| fit.as_.value.0.as_str()).collect()
    }
}

/// A name that no van of the model has: `van-1`, `van-2` and so on.
pub fn free_name(model: &Model) -> String {
    let taken: BTreeSet<_> = model.vans.iter().map(|van| van.name.as_str()).collect();
    let names = (1..).map(|number| format!("van-{number}"));
    names.into_iter().find(|name| !taken.contains(name.as_str())).unwrap_or_default()
}

/// Writes the manifest of a new van into the book in `root`. It never takes the place of a file that is there.
pub fn book_in(root: &Path, book: &Book, vans: &[Van], new: &New) -> Result<Booked, Error> {
    disk::locked(&root.join("book.toml"), || {
        let path = root.join("models").join(&new.model).join(format!("{}.toml", new.name));
        let mut known = known(book, vans);
        // The ledger of this moment: somebody may have printed since the book was read.
        let ledger = disk::text_or_none(&ledger::path(root))?.unwrap_or_default();
        known.extend(
            ledger.lines().filter_map(|line| Some(line.strip_prefix("key = \"")?.split_once('"')?.0.to_string())),
        );
        let key = key(&known)?;
        disk::new_file(&path, manifest(new, &key).as_bytes())?;
        Ok(Booked { path, key })
    })
}

/// All keys that a van has or had.
fn known(book: &Book, vans: &[Van]) -> BTreeSet<String> {
    let ledger = book.ledger.iter().flat_map(|(_, ledger)| ledger.label.iter().map(|label| label.key.value.0.clone()));
    let withdrawn = book.file.iter().flat_map(|(_, file)| file.withdrawn.iter().map(|van| van.key.value.0.clone()));
    let vans = vans.iter().flat_map(|van| van.former_keys.iter().chain([&van.key]).map(|key| key.value.clone()));
    ledger.chain(withdrawn).chain(vans).collect()
}

/// A key of eight letters that is not known yet. There are 30^8, so that guessing one that is used is hopeless.
fn key(known: &BTreeSet<String>) -> Result<String, Error> {
    loop {
        let key = chance(8)?;
        if !known.contains(&key) {
            return Ok(key);
        }
    }
}

/// Letters by chance, each as likely as any other: bytes from 240 on would favour some, and are left out.
fn chance(letters: usize) -> Result<String, Error> {
    let mut key = String::new();
    while key.len() < letters {
        let mut byte = [0];
        getrandom::fill(&mut byte).map_err(|e| Error::new("make", "a key", e))?;
        if byte[0] < 240 {
            key.push(char::from(LETTERS[usize::from(byte[0]) % LETTERS.len()]));
        }
    }
    Ok(key)
}

fn manifest(new: &New, key: &str) -> String {
    let mut out = format!("key = \"{key}\"                 # on its labels: never change it\n");
    if let Some(year) = new.year {
        let _ = writeln!(out, "year = {year}");
    }
    for (name, words) in [("stock", &new.stock), ("name", &new.title)] {
        if let Some(words) = words {
            let _ = writeln!(out, "{name} = {}", quoted(words));
        }
    }
    if !new.without.is_empty() {
        let names: Vec<_> = new.without.iter().map(|name| quoted(name)).collect();
        let _ = writeln!(out, "remove = [{}]", names.join(", "));
    }
    out
}

/// Words as a string of TOML: what would end it or break its line is written out.
fn quoted(words: &str) -> String {
    let mut out = String::from('"');
    for letter in words.chars() {
        match letter {
            '"' | '\\' => out.extend(['\\', letter]),
            letter if letter.is_control() => {
                let _ = write!(out, "\\u{:04X}", u32::from(letter));
            }
            letter => out.push(letter),
        }
    }
    out + "\""
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::files::forms::is_id;

    #[test]
    fn keys_are_of_the_alphabet_and_differ() {
        let keys: BTreeSet<_> = (0..500).map(|_| chance(8).unwrap()).collect();
        assert_eq!(keys.len(), 500);
        let letters: BTreeSet<_> = keys.iter().flat_map(|key| key.bytes()).collect();
        assert_eq!(letters, LETTERS.iter().copied().collect());
        assert!(keys.iter().all(|key| key.len() == 8));
    }

    #[test]
    fn words_of_any_kind_stay_one_string() {
        for words in ["plain", "a \"quoted\" one", "back\\slash", "two\nlines\u{7f}", "naïve – ok"] {
            let text = format!("name = {}", quoted(words));
            let read: toml::Table = text.parse().unwrap_or_else(|e| panic!("{text}: {e}"));
            assert_eq!(read["name"].as_str(), Some(words));
        }
        assert!(is_id("van-1"));
    }
}
