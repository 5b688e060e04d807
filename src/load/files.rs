//! Where the files of a book come from: a folder, or memory.

use crate::error::Error;
use jiff::civil::Date;
use std::collections::BTreeMap;

/// A file that a book might be made of.
#[derive(Debug, Clone)]
pub struct Entry {
    /// Path from the root of the book, with forward slashes.
    pub path: String,
    /// Whether it really lies outside the book, behind a link.
    pub outside: bool,
}

/// The one way in which text and pictures reach the program.
pub trait Files: Sync {
    /// All files, in any order.
    fn list(&self) -> Result<Vec<Entry>, Error>;
    /// The bytes of one.
    fn read(&self, path: &str) -> Result<Vec<u8>, Error>;
    /// What an earlier run kept under `name`; nothing is lost when it is gone.
    fn recall(&self, name: &str) -> Option<Vec<u8>> {
        let _ = name;
        None
    }
    /// Keeps the result of a long piece of work for later runs, where there is room for it.
    fn keep(&self, name: &str, bytes: &[u8]) {
        let _ = (name, bytes);
    }
    /// Today, for the last days of waivers; none when it does not matter.
    fn today(&self) -> Option<Date> {
        None
    }
}

/// Files held in memory, for tests and generated books.
#[derive(Debug, Clone, Default)]
pub struct Memory(pub BTreeMap<String, Vec<u8>>);

impl Memory {
    /// Reads a fixture: files one after the other, each under a line `//- path`.
    pub fn from_fixture(fixture: &str) -> Self {
        let mut files: BTreeMap<String, Vec<u8>> = BTreeMap::new();
        let mut path = String::new();
        for line in fixture.split_inclusive('\n') {
            match line.strip_prefix("//- ") {
                Some(name) => {
                    path = name.trim().to_string();
                    files.insert(path.clone(), Vec::new());
                }
                None => {
                    if let Some(file) = files.get_mut(&path) {
                        file.extend(line.bytes());
                    }
                }
            }
        }
        Memory(files)
    }
}

impl Files for Memory {
    fn list(&self) -> Result<Vec<Entry>, Error> {
        Ok(self.0.keys().map(|path| Entry { path: path.clone(), outside: false }).collect())
    }

    fn read(&self, path: &str) -> Result<Vec<u8>, Error> {
        self.0.get(path).cloned().ok_or_else(|| Error::new("read", path, "there is no such file"))
    }
}
