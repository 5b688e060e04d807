//! `lockerleaf due`: what falls due across all vans.

use super::Outcome;
use super::shared::{Shared, is_wanted, show, unknown_van};
use crate::diag::print;
use crate::due;
use crate::error::Error;
use crate::load::disk::Folder;
use crate::load::files::Files;
use crate::write::disk;
use clap::Args;
use jiff::Span;
use jiff::civil::Date;
use std::path::{Path, PathBuf};

/// Lists what falls due, soonest first: of the vans that are named, or of the whole book
#[derive(Args)]
pub(super) struct Due {
    /// Vans: a name such as `dune` or `wenlow-v2/dune`, or a model's name
    #[arg(value_name = "VAN")]
    vans: Vec<String>,
    /// Only what falls due within this time, and what is overdue: days, weeks, months or years, as `90d`, `12w`, `6m`, `1y`
    #[arg(long, value_name = "TIME", value_parser = within)]
    within: Option<Span>,
    /// The day to hold it against; without it today
    #[arg(long, value_name = "DATE", value_parser = day)]
    on: Option<Date>,
    /// List what is on no known day too, and not only count it
    #[arg(long)]
    unknown: bool,
    /// Write the list to a file of comma-separated values too
    #[arg(long, value_name = "FILE")]
    csv: Option<PathBuf>,
    /// Write the list to a file of JSON too
    #[arg(long, value_name = "FILE")]
    json: Option<PathBuf>,
}

/// `90d`: a whole number and a letter.
fn within(text: &str) -> Result<Span, String> {
    let help =
        || format!("write a whole number and d, w, m or y, as in `90d`, up to a hundred years; `{text}` is neither");
    let (number, unit) = text.split_at_checked(text.len().saturating_sub(1)).ok_or_else(help)?;
    let number: i32 = number.parse().ok().filter(|number| (0..=36_525).contains(number)).ok_or_else(help)?;
    let span = match unit {
        "d" => Span::new().try_days(number),
        "w" => Span::new().try_weeks(number),
        "m" => Span::new().try_months(number),
        "y" => Span::new().try_years(number),
        _ => return Err(help()),
    };
    span.map_err(|_| help())
}

fn day(text: &str) -> Result<Date, String> {
    text.parse().map_err(|_| "write year, month and day, as in `2026-09-14`".to_string())
}

pub(super) fn run(command: &Due, shared: &Shared) -> Result<Outcome, Error> {
    if command.csv.is_some() && command.csv == command.json {
        eprintln!("lockerleaf: two lists go to one file; give each a file of its own");
        return Ok(Outcome::Usage);
    }
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let Some(on) = command.on.or_else(|| Folder::new(&root).today()) else {
        eprintln!("lockerleaf: this machine has no date; give one with `--on DATE`");
        return Ok(Outcome::Usage);
    };
    let looked = shared.look(root)?;
    show(&looked);
    if let Some(unknown) = unknown_van(&command.vans, &looked.vans) {
        eprintln!("lockerleaf: {unknown}");
        return Ok(Outcome::Usage);
    }
    if looked.acc.has_errors() {
        eprintln!("{}: nothing was listed", print::tally(&looked.acc).unwrap_or_default());
        return Ok(Outcome::Problems);
    }
    let last = command.within.map(|within| on.saturating_add(within));
    let vans = looked.vans.iter().filter(|van| is_wanted(van, &command.vans));
    let list = due::due(&looked.book, vans, on, last);
    say!("{}", due::table(&list, command.unknown));
    write(command.csv.as_deref(), || due::csv(&list))?;
    write(command.json.as_deref(), || due::json(&list))?;
    Ok(Outcome::Done)
}

fn write(file: Option<&Path>, text: impl Fn() -> String) -> Result<(), Error> {
    let Some(file) = file else {
        return Ok(());
    };
    disk::folder(file.parent().unwrap_or(Path::new("")))?;
    disk::file(file, text().as_bytes()).map(|_| ())
}
