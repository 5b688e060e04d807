//! `lockerleaf inspect`: all checks.

use super::Outcome;
use super::shared::{Shared, show};
use crate::check::{self, output_link};
use crate::coverage::{Coverage, table};
use crate::diag::report::{Inspected, Unchecked, Wanted, kinds};
use crate::diag::{Acc, print, rules, suggest};
use crate::error::Error;
use crate::write::disk;
use crate::{Looked, assemble};
use clap::Args;
use std::path::Path;

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
    #[arg(long, value_name = "KIND=FILE", value_delimiter = ',', help = help())]
    report: Vec<Wanted>,
}

/// What is left out when the book has errors, and why.
const WITHOUT_PAGES: [Unchecked; 2] = [
    Unchecked { rule: &output_link::RULE, why: "the book has errors, so there are no finished pages" },
    Unchecked { rule: &rules::THEME_FAILS, why: "the book has errors, so no page was laid out" },
];

fn help() -> String {
    format!(
        "Write the findings to a file too, also when there are none; more than one may be asked for. Kinds: {}",
        kinds()
    )
}

pub(super) fn run(command: &Inspect, shared: &Shared) -> Result<Outcome, Error> {
    if let Some(file) = twice(&command.report) {
        eprintln!("lockerleaf: two reports go to `{}`; give each a file of its own", file.display());
        return Ok(Outcome::Usage);
    }
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let mut looked = shared.look(root)?;
    let links = links(&mut looked, command.web)?;
    show(&looked);
    if let Some(coverage) = looked.coverage.as_ref().filter(|_| command.coverage) {
        say!("{}", table::table(coverage, command.all));
    }
    report(&command.report, &looked, links.is_none())?;
    let vans = suggest::count(looked.vans.len(), "van");
    let modules = suggest::count(looked.book.modules.len(), "module");
    let checked = match links {
        Some(links) => format!("{vans} of {modules} and {} of finished pages", suggest::count(links, "link")),
        None => format!("{vans} of {modules}"),
    };
    match looked.acc.has_errors() {
        true => eprintln!("{} in {checked}", print::tally(&looked.acc).unwrap_or_default()),
        false => {
            let (asked, met) = looked.coverage.as_ref().map_or((0, 0), Coverage::counts);
            let tally = print::tally(&looked.acc).unwrap_or("nothing to mend".to_string());
            say!("{checked}, {met} of {asked} points of safety coverage met: {tally}");
        }
    }
    Ok(if looked.acc.has_errors() { Outcome::Problems } else { Outcome::Done })
}

/// Assembles all guides aside and follows their links; `None` when the book has errors and so no pages.
pub(super) fn links(looked: &mut Looked, web: bool) -> Result<Option<usize>, Error> {
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

/// A file that more than one report would go to.
fn twice(wanted: &[Wanted]) -> Option<&Path> {
    let again = |at: usize| wanted[..at].iter().any(|earlier| earlier.file == wanted[at].file);
    (0..wanted.len()).find(|at| again(*at)).map(|at| wanted[at].file.as_path())
}

/// Writes the reports that are wanted, whatever was found.
fn report(wanted: &[Wanted], looked: &Looked, without_pages: bool) -> Result<(), Error> {
    let rules = check::rules();
    let left_out = WITHOUT_PAGES.into_iter().filter(|left| without_pages && !looked.acc.has_found(left.rule.id));
    let left_out: Vec<_> = left_out.collect();
    let mut inspected = Inspected::new(&looked.acc, &looked.book.sources, &rules, &left_out);
    if let Some(coverage) = &looked.coverage {
        inspected = inspected.covered(coverage);
    }
    for wanted in wanted {
        disk::folder(wanted.file.parent().unwrap_or(Path::new("")))?;
        disk::file(&wanted.file, (wanted.kind.text)(&inspected).as_bytes())?;
    }
    Ok(())
}
