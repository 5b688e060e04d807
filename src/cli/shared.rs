//! What several commands share: finding the book, showing what is wrong.

use super::Outcome;
use crate::diag::print;
use crate::error::Error;
use crate::load::disk::Folder;
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

/// Shows what was found, on the channel for errors, with colour only on a terminal.
pub(super) fn show(looked: &Looked) {
    let colour = std::io::stderr().is_terminal() && std::env::var_os("NO_COLOR").is_none();
    eprint!("{}", print::print(&looked.acc, &looked.book.sources, colour));
}
