//! What several commands share: finding the book, showing what is wrong.

use super::Outcome;
use crate::diag::{print, suggest};
use crate::error::Error;
use crate::load::disk::Folder;
use crate::model::van::Van;
use crate::{Looked, look};
use clap::Args;
use std::io::IsTerminal;
use std::path::PathBuf;

/// Options that each command takes.
#[derive(Args)]
pub(super) struct Shared {
    /// The book's folder; without it the nearest one at or above this folder that holds a book.toml
    #[arg(long, global = true, value_name = "FOLDER")]
    book: Option<PathBuf>,
}

impl Shared {
    /// The book's folder, or what to tell the person.
    pub(super) fn root(&self) -> Result<PathBuf, Outcome> {
        if let Some(folder) = &self.book {
            if folder.join("book.toml").is_file() {
                return Ok(folder.clone());
            }
            eprintln!("lockerleaf: there is no `book.toml` in `{}`", folder.display());
            return Err(Outcome::Usage);
        }
        let here = std::env::current_dir().unwrap_or_default();
        Folder::find(&here).ok_or_else(|| {
            eprintln!("lockerleaf: there is no `book.toml` here or above; make one (it may be empty), or say where with `--book FOLDER`");
            Outcome::Usage
        })
    }

    /// Looks at the book and shows what is wrong with it.
    pub(super) fn look(&self, root: PathBuf) -> Result<Looked, Error> {
        look(&Folder::new(root))
    }
}

/// Whether a van is among those that are named; with no names all are.
pub(super) fn is_wanted(van: &Van, names: &[String]) -> bool {
    names.is_empty() || names.iter().any(|name| is_named(van, name))
}

/// What to say when a name means no van.
pub(super) fn unknown_van(names: &[String], vans: &[Van]) -> Option<String> {
    let unknown = names.iter().find(|name| !vans.iter().any(|van| is_named(van, name)))?;
    let known = vans.iter().map(|van| van.name.as_str());
    Some(format!("there is no van `{unknown}`; {}", suggest::did_you_mean(unknown, known)))
}

/// Whether a name means this van: `wenlow-v2/dune`, `dune` or `wenlow-v2`.
fn is_named(van: &Van, name: &str) -> bool {
    let (model, own) = van.name.split_once('/').unwrap_or_default();
    name == van.name || name == own || name == model
}

/// Shows what was found, on the channel for errors, with colour only on a terminal.
pub(super) fn show(looked: &Looked) {
    let colour = std::io::stderr().is_terminal() && std::env::var_os("NO_COLOR").is_none();
    eprint!("{}", print::print(&looked.acc, &looked.book.sources, colour));
}
