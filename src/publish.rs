//! The second driver: guides of a sound book to the folder that a web server shows.

use crate::error::Error;
use crate::label::printing::target;
use crate::model::inputs::Inputs;
use crate::render::Artifact;
use crate::write::publish::{Bundle, put, recover};
use crate::write::{Receipt, disk, write};
use crate::{Looked, front, guide};
use rayon::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// What publishing did.
pub enum Published {
    /// All is in place.
    Done {
        /// Files.
        receipt: Receipt,
        /// Folders that changed.
        changed: usize,
        /// Folders in the published one that this book knows nothing of.
        others: Vec<String>,
    },
    /// The book has errors; nothing was touched.
    Unsound,
    /// These pages of printed labels would be missing; nothing was touched.
    Dropped(Vec<String>),
}

/// All folders of the published guides, each with what it was made from and its files.
type Folders = BTreeMap<String, (String, Vec<Artifact>)>;

/// Puts all guides of a sound book in place below `to`.
pub fn publish(looked: &Looked, to: &Path) -> Result<Published, Error> {
    if looked.acc.has_errors() || looked.theme.is_none() {
        return Ok(Published::Unsound);
    }
    let (folders, root) = folders(looked)?;
    let missing = missing(looked, &folders);
    if !missing.is_empty() {
        return Ok(Published::Dropped(missing));
    }
    disk::folder(to)?;
    let lock = to.join(LOCK);
    disk::file(&lock, b"")?;
    disk::locked(&lock, || place_all(to, &folders, &root))
}

/// What is locked while guides are put in place, so that two runs do not use one folder at once.
const LOCK: &str = ".publishing";

fn place_all(to: &Path, folders: &Folders, root: &[Artifact]) -> Result<Published, Error> {
    recover(to)?;
    let mut receipt = write(to, root)?;
    let mut changed = 0;
    for (key, (made_from, files)) in folders {
        let put = put(to, &Bundle { key, made_from, files })?;
        changed += usize::from(put.written > 0);
        receipt = receipt.and(put);
    }
    // What stood aside while folders changed places is of no use any more.
    recover(to)?;
    Ok(Published::Done { receipt, changed, others: others(to, folders)? })
}

/// The files of each folder, and those that stand beside the folders.
fn folders(looked: &Looked) -> Result<(Folders, Vec<Artifact>), Error> {
    let broken = |message: String| Error::new("lay out", "the theme", message);
    let (Some(theme), book) = (&looked.theme, &looked.book) else {
        return Ok(Default::default());
    };
    let inputs = Inputs::new(book, &disk::program());
    let made: Result<Vec<_>, _> =
        looked.vans.par_iter().map(|van| guide(theme, book, van).map(|files| (inputs.of(book, van), files))).collect();
    let (mut folders, mut root) = (Folders::new(), Vec::new());
    for (made_from, files) in made.map_err(broken)? {
        place(&mut folders, &mut root, &made_from, files);
    }
    let front = front(theme, book).map_err(broken)?;
    let mut hasher = blake3::Hasher::new();
    for file in &front {
        hasher.update(file.path.as_bytes()).update(&file.bytes);
    }
    place(&mut folders, &mut root, &hasher.finalize().to_hex(), front);
    Ok((folders, root))
}

/// Sorts files by the folder that they stand in.
fn place(folders: &mut Folders, root: &mut Vec<Artifact>, made_from: &str, files: Vec<Artifact>) {
    for file in files {
        match file.path.split_once('/') {
            Some((key, _)) => {
                folders.entry(key.to_string()).or_insert_with(|| (made_from.to_string(), vec![])).1.push(file)
            }
            None => root.push(file),
        }
    }
}

/// The pages of printed labels that would not be there.
fn missing(looked: &Looked, folders: &Folders) -> Vec<String> {
    let there: BTreeSet<&str> = folders.values().flat_map(|(_, files)| files).map(|file| file.path.as_str()).collect();
    let labels = looked.book.ledger.iter().flat_map(|(_, ledger)| &ledger.label);
    let pages = labels.map(|label| target(&label.key.value, &label.code.value));
    pages.filter(|page| !there.contains(page.as_str())).collect()
}

/// Folders of guides that are not of this book: they are never taken away, since a label may lead there.
fn others(to: &Path, folders: &Folders) -> Result<Vec<String>, Error> {
    let names = disk::folders(to)?.into_iter().filter_map(|path| Some(path.file_name()?.to_str()?.to_string()));
    Ok(names.filter(|name| !name.starts_with('.') && !folders.contains_key(name)).collect())
}
