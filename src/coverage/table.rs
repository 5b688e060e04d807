//! Coverage as a table for a terminal, 100 columns at the most.

use super::{Cell, Coverage, Criterion, Standing};
use std::fmt::Write;

/// One line a fit and hazard that is not met or is waived; with `all`, of every one. A line of totals ends each van.
pub fn table(coverage: &Coverage, all: bool) -> String {
    let mut out = String::new();
    for (van, own) in coverage.by_van() {
        for cell in own.cells.iter().filter(|cell| all || !cell.is_met() || cell.waived.is_some()) {
            let _ = writeln!(out, "{}", line(cell));
        }
        let (asked, met) = own.counts();
        let _ = writeln!(out, "{:<40} {met} of {asked} met, {:.1} %", cut(van, 40), own.percent());
    }
    if !out.is_empty() {
        out.insert_str(
            0,
            &format!(
                "{:<2} {:<22} {:<22} {}\n",
                "",
                "part",
                "hazard",
                Criterion::ALL.iter().map(|c| format!("{:<7}", short(*c))).collect::<String>().trim_end()
            ),
        );
    }
    out
}

fn line(cell: &Cell) -> String {
    let standing: String = cell.standing.iter().map(|standing| format!("{:<7}", mark(*standing))).collect();
    let waived = cell.waived.as_ref().map(|(_, until)| format!("waived to {until}")).unwrap_or_default();
    format!(
        "{:<2} {:<22} {:<22} {}{waived}",
        cut(&cell.language, 2),
        cut(&cell.fit_name, 22),
        cut(&cell.hazard, 22),
        standing
    )
    .trim_end()
    .to_string()
}

fn mark(standing: Standing) -> &'static str {
    match standing {
        Standing::NotAsked => "-",
        Standing::Met => "yes",
        Standing::Missed => "NO",
    }
}

fn short(criterion: Criterion) -> &'static str {
    match criterion {
        Criterion::Label => "label",
        Criterion::Paper => "paper",
        other => other.word(),
    }
}

fn cut(text: &str, width: usize) -> String {
    match text.chars().count() > width {
        true => text.chars().take(width - 1).chain(['…']).collect(),
        false => text.to_string(),
    }
}
