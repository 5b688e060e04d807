//! `lockerleaf assemble`: guides, to a folder.

use super::Outcome;
use super::shared::{Shared, is_wanted, show, unknown_van};
use crate::diag::{print, suggest};
use crate::error::Error;
use crate::model::van::Van;
use crate::write::Receipt;
use crate::{Looked, assemble};
use clap::Args;
use std::path::{Path, PathBuf};
use std::time::Instant;

/// Makes guides: of the vans that are named, or of the whole book
#[derive(Args, Default)]
pub(super) struct Assemble {
    /// Vans: a name such as `dune` or `wenlow-v2/dune`, or a model's name
    #[arg(value_name = "VAN")]
    vans: Vec<String>,
    /// Where the guides go; without it the folder `out` of the book
    #[arg(long, value_name = "FOLDER")]
    out: Option<PathBuf>,
}

pub(super) fn run(command: &Assemble, shared: &Shared) -> Result<Outcome, Error> {
    let started = Instant::now();
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let out = command.out.clone().unwrap_or_else(|| root.join("out"));
    let looked = shared.look(root)?;
    show(&looked);
    if let Some(unknown) = unknown_van(&command.vans, &looked.vans) {
        eprintln!("lockerleaf: {unknown}");
        return Ok(Outcome::Usage);
    }
    let wanted = |van: &Van| is_wanted(van, &command.vans);
    match assemble(&looked, &out, &wanted)? {
        Some(receipt) => {
            say!("{}", summary(&looked, &wanted, receipt, &out, started.elapsed().as_secs_f64()));
            Ok(Outcome::Done)
        }
        None => {
            eprintln!("{}: nothing was written", print::tally(&looked.acc).unwrap_or_default());
            Ok(Outcome::Problems)
        }
    }
}

fn summary(looked: &Looked, wanted: &dyn Fn(&Van) -> bool, receipt: Receipt, out: &Path, seconds: f64) -> String {
    let vans: Vec<_> = looked.vans.iter().filter(|van| wanted(van)).collect();
    let mut lines = vec![format!(
        "{}, {}, {:.1} MB: {} written, {} left unchanged, {} removed, in {seconds:.2} s",
        suggest::count(vans.len(), "van"),
        suggest::count(receipt.pages, "page"),
        receipt.bytes as f64 / 1e6,
        receipt.written,
        receipt.unchanged,
        receipt.removed
    )];
    for van in vans.iter().take(8) {
        lines.push(format!("  {:<24} {}", van.name, out.join(&van.key.value).join("index.html").display()));
    }
    if vans.len() > 8 {
        lines.push(format!("  and {} more in {}", vans.len() - 8, out.display()));
    }
    lines.extend(print::tally(&looked.acc));
    lines.join("\n")
}
