//! `lockerleaf publish`: puts changed guides in place, keeping each printed label alive.

use super::shared::{Shared, show};
use super::{Outcome, inspect};
use crate::diag::{print, suggest};
use crate::error::Error;
use crate::publish::{Published, publish};
use clap::Args;
use std::path::PathBuf;

/// Puts guides that changed where owners read them: each whole, or not at all
#[derive(Args)]
pub(super) struct Publish {
    /// The folder that the web server shows; guides of other vans in it are left as they are
    #[arg(long, value_name = "FOLDER")]
    to: PathBuf,
}

pub(super) fn run(command: &Publish, shared: &Shared) -> Result<Outcome, Error> {
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let mut looked = shared.look(root)?;
    inspect::links(&mut looked, false)?;
    show(&looked);
    match publish(&looked, &command.to)? {
        Published::Done { receipt, changed, others } => {
            let guides = suggest::count(looked.vans.len(), "guide");
            say!(
                "{guides} in {}: {changed} changed, {} files",
                command.to.display(),
                receipt.written + receipt.unchanged
            );
            if !others.is_empty() {
                say!("left as they are, since no van of this book has their key: {}", others.join(", "));
            }
            Ok(Outcome::Done)
        }
        Published::Unsound => {
            eprintln!("{}: nothing was published", print::tally(&looked.acc).unwrap_or_default());
            Ok(Outcome::Problems)
        }
        Published::Dropped(pages) => {
            eprintln!(
                "lockerleaf: nothing was published, since these pages of printed labels would be missing: {}",
                pages.join(", ")
            );
            Ok(Outcome::Problems)
        }
    }
}
