//! `lockerleaf inspect`: all checks.

use super::Outcome;
use super::shared::{Shared, show};
use crate::check::output_link;
use crate::coverage::table;
use crate::diag::{Acc, print, suggest};
use crate::error::Error;
use crate::{Looked, assemble};
use clap::Args;

/// Runs all checks, those on the links of finished pages too; exit 1 when one fails
#[derive(Args)]
pub(super) struct Inspect {
    /// Ask the web for addresses of other hosts too
    #[arg(long)]
    web: bool,
    /// Show safety coverage as a table: what is missing or waived, and the totals of each van
    #[arg(long)]
    coverage: bool,
    /// With `--coverage`, show what is met too
    #[arg(long, requires = "coverage")]
    all: bool,
}

pub(super) fn run(command: &Inspect, shared: &Shared) -> Result<Outcome, Error> {
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let mut looked = shared.look(root)?;
    let links = links(&mut looked, command.web)?;
    show(&looked);
    if command.coverage {
        print!("{}", table::table(&looked.coverage, command.all));
    }
    let vans = suggest::count(looked.vans.len(), "van");
    let modules = suggest::count(looked.book.modules.len(), "module");
    let checked = match links {
        Some(links) => format!("{vans} of {modules} and {} of finished pages", suggest::count(links, "link")),
        None => format!("{vans} of {modules}"),
    };
    match looked.acc.has_errors() {
        true => eprintln!("{} in {checked}", print::tally(&looked.acc).unwrap_or_default()),
        false => {
            let (asked, met) = looked.coverage.counts();
            let tally = print::tally(&looked.acc).unwrap_or("nothing to mend".to_string());
            println!("{checked}, {met} of {asked} points of safety coverage met: {tally}");
        }
    }
    Ok(if looked.acc.has_errors() { Outcome::Problems } else { Outcome::Done })
}

/// Assembles all guides aside and follows their links; `None` when the book has errors and so no pages.
fn links(looked: &mut Looked, web: bool) -> Result<Option<usize>, Error> {
    if looked.acc.has_errors() {
        return Ok(None);
    }
    let aside = tempfile::tempdir().map_err(|e| Error::new("make", "a folder aside", e))?;
    assemble(looked, aside.path(), &|_| true)?;
    let mut acc = Acc::default();
    let links = output_link::check(&mut acc, aside.path(), web)?;
    looked.acc.merge(acc);
    Ok(Some(links))
}
