//! The files of a book in a folder. The only file that reads the disk.

use super::files::{Entry, Files};
use crate::error::Error;
use jiff::civil::Date;
use jiff::{Timestamp, tz::TimeZone};
use std::path::{Path, PathBuf};
use walkdir::WalkDir;

/// What of the folder belongs to the book.
const PARTS: [&str; 4] = ["book.toml", "content", "models", "themes"];

/// Where results are kept for later runs: beside the guides, so that whoever clears those clears these.
const KEPT: &str = "out/.made/photos";

/// A book in a folder.
#[derive(Debug, Clone)]
pub struct Folder {
    root: PathBuf,
}

impl Folder {
    /// The book in `root`.
    pub fn new(root: impl Into<PathBuf>) -> Self {
        Folder { root: root.into() }
    }

    /// The nearest folder at or above `start` that holds a `book.toml`.
    pub fn find(start: &Path) -> Option<PathBuf> {
        start.ancestors().find(|folder| folder.join("book.toml").is_file()).map(Path::to_path_buf)
    }

    /// Drawings beside `book.toml`: the dealer's mark is one.
    fn marks(&self, root: &Path) -> Vec<Entry> {
        let found = WalkDir::new(&self.root).max_depth(1).follow_links(true).sort_by_file_name().into_iter();
        let drawn = found.filter_map(Result::ok).filter(|found| {
            found.file_type().is_file() && found.path().extension().is_some_and(|e| e == "svg" || e == "png")
        });
        drawn.filter_map(|found| self.entry(root, found.path())).collect()
    }

    fn entry(&self, root: &Path, path: &Path) -> Option<Entry> {
        let inside = path.canonicalize().is_ok_and(|real| real.starts_with(root));
        let relative = path.strip_prefix(&self.root).ok()?;
        let parts: Vec<_> = relative.components().map(|part| part.as_os_str().to_string_lossy()).collect();
        let hidden = parts.iter().any(|part| part.starts_with('.'));
        (!hidden).then(|| Entry { path: parts.join("/"), outside: !inside })
    }
}

impl Files for Folder {
    fn list(&self) -> Result<Vec<Entry>, Error> {
        let root = self.root.canonicalize().map_err(|e| Error::new("open", &self.root, e))?;
        let mut entries = self.marks(&root);
        for part in PARTS.iter().map(|part| self.root.join(part)).filter(|part| part.exists()) {
            for found in WalkDir::new(&part).follow_links(true).sort_by_file_name() {
                let found = found.map_err(|e| Error::new("read", e.path().unwrap_or(&part), &e))?;
                if found.file_type().is_file() {
                    entries.extend(self.entry(&root, found.path()));
                }
            }
        }
        Ok(entries)
    }

    fn recall(&self, name: &str) -> Option<Vec<u8>> {
        std::fs::read(self.root.join(KEPT).join(name)).ok()
    }

    fn keep(&self, name: &str, bytes: &[u8]) {
        let folder = self.root.join(KEPT);
        // A folder that cannot be written only means that the work is done again.
        let _ = crate::write::disk::folder(&folder).and_then(|()| crate::write::disk::file(&folder.join(name), bytes));
    }

    fn today(&self) -> Option<Date> {
        Some(TimeZone::UTC.to_datetime(Timestamp::now()).date())
    }

    fn read(&self, path: &str) -> Result<Vec<u8>, Error> {
        let full = self.root.join(path);
        std::fs::read(&full).map_err(|e| Error::new("read", full, e))
    }
}
