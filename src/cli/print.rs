//! `lockerleaf print`: booklet, labels and handover record, as PDF. The only file that knows progress bars.

use super::Outcome;
use super::shared::{Shared, is_wanted, show, unknown_van};
use crate::diag::{print as findings, suggest};
use crate::error::Error;
use crate::load::disk::Folder;
use crate::load::files::Files;
use crate::model::van::Van;
use crate::print::{Ledger, Order, Printed, print};
use crate::render::paper::{Kind, PAPERS};
use clap::Args;
use indicatif::{ProgressBar, ProgressStyle};
use std::path::PathBuf;
use std::time::Instant;

/// Makes PDFs to print: booklet, labels and handover record, of the vans that are named or of the whole book
#[derive(Args)]
pub(super) struct Print {
    /// Vans: a name such as `dune` or `wenlow-v2/dune`, or a model's name
    #[arg(value_name = "VAN")]
    vans: Vec<String>,
    /// Only these: booklet, labels, record
    #[arg(long, value_name = "KIND", value_delimiter = ',', value_parser = kind)]
    only: Vec<Kind>,
    /// The paper of booklets; without it both
    #[arg(long, value_name = "PAPER", value_parser = PAPERS)]
    paper: Option<String>,
    /// The first position to use on the first sheet of labels, from 1, along the rows
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..))]
    start: Option<u32>,
    /// A proof to look at: its labels go into no ledger, so do not stick them on
    #[arg(long)]
    proof: bool,
    /// Where the files go; without it the folder `out/print` of the book
    #[arg(long, value_name = "FOLDER")]
    out: Option<PathBuf>,
}

fn kind(word: &str) -> Result<Kind, String> {
    let known = Kind::ALL.iter().map(|kind| kind.word());
    Kind::ALL
        .into_iter()
        .find(|kind| kind.word() == word)
        .ok_or_else(|| format!("there is no such thing to print; {}", suggest::did_you_mean(word, known)))
}

impl Print {
    fn order(&self) -> Order {
        let whole = Order::default();
        Order {
            kinds: if self.only.is_empty() { whole.kinds } else { self.only.clone() },
            papers: self.paper.as_ref().map_or(whole.papers, |paper| vec![paper.clone()]),
            start: self.start,
            ledger: None,
        }
    }
}

pub(super) fn run(command: &Print, shared: &Shared) -> Result<Outcome, Error> {
    let started = Instant::now();
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let out = command.out.clone().unwrap_or_else(|| root.join("out").join("print"));
    let looked = shared.look(root.clone())?;
    show(&looked);
    if let Some(unknown) = unknown_van(&command.vans, &looked.vans) {
        eprintln!("lockerleaf: {unknown}");
        return Ok(Outcome::Usage);
    }
    let sheets = looked.book.settings.sheets;
    let positions = sheets.wide.positions().min(sheets.strip.positions());
    if command.start.is_some_and(|start| start > positions) {
        eprintln!("lockerleaf: `--start` counts the positions of a sheet, and a sheet has {positions}");
        return Ok(Outcome::Usage);
    }
    let wanted = |van: &Van| is_wanted(van, &command.vans);
    let vans: Vec<_> = looked.vans.iter().filter(|van| wanted(van)).collect();
    let today = Folder::new(root.clone()).today().filter(|_| !command.proof);
    let ledger = today.map(|on| Ledger { root: root.clone(), on });
    let order = Order { ledger, ..command.order() };
    let bar = bar((vans.len() * order.documents().len()) as u64);
    let receipt = print(&looked, &out, &wanted, &order, &|| bar.inc(1));
    bar.finish_and_clear();
    let Some(Printed { receipt, again }) = receipt? else {
        eprintln!("{}: nothing was printed", findings::tally(&looked.acc).unwrap_or_default());
        return Ok(Outcome::Problems);
    };
    say!(
        "{}, {:.1} MB: {} written, {} left unchanged, {} removed, in {:.2} s",
        suggest::count(vans.len(), "van"),
        receipt.bytes as f64 / 1e6,
        receipt.written,
        receipt.unchanged,
        receipt.removed,
        started.elapsed().as_secs_f64()
    );
    for van in vans.iter().take(8) {
        say!("  {:<24} {}", van.name, out.join(&van.name).display());
    }
    if vans.len() > 8 {
        say!("  and {} more in {}", vans.len() - 8, out.display());
    }
    if !again.is_empty() {
        say!(
            "{} printed before: take the old ones off when you put the new ones on",
            suggest::count(again.len(), "label")
        );
    }
    Ok(Outcome::Done)
}

/// Shows itself on terminals only.
fn bar(documents: u64) -> ProgressBar {
    let style =
        ProgressStyle::with_template("{bar:32} {pos} of {len} documents").unwrap_or(ProgressStyle::default_bar());
    ProgressBar::new(documents).with_style(style)
}
