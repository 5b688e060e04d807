//! Hazards that are not warned of as they must be.

use super::{Check, Guarded, notes};
use crate::coverage::{Cell, Criterion};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "hazard-uncovered",
    severity: Severity::Error,
    asks: "Each hazard that a fit calls for is warned of: in what the van shows, before the steps, at the label and on paper.",
    why: "The owner must not be hurt by what the dealer knew.",
    source: "ANSI Z535.6, IEC/IEEE 82079-1; the design of Lockerleaf: safety coverage",
    wrong: "burns = \"lpg\", and no note on carbon monoxide",
    right: "> **WARNING** [Carbon monoxide](hazard:carbon-monoxide). …\n>\n> - Keep the vents clear.",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    for cell in guarded.coverage.cells.iter().filter(|cell| !cell.is_met() && cell.waived.is_none()) {
        let Some(van) = guarded.vans.iter().find(|van| van.name == cell.van) else {
            continue;
        };
        let number = van.fits[cell.fit].module;
        let module = &guarded.book.modules[number].name;
        // Notes that are too weak, not whole or late are said at the note itself.
        let Some(says) = says(cell).filter(|_| !is_late(guarded, number, &cell.hazard)) else {
            continue;
        };
        let text = match cell.language == guarded.book.settings.language() {
            true => format!("content/{module}/text.md"),
            false => format!("content/{module}/text.{}.md", cell.language),
        };
        let found =
            Diagnostic::new(&RULE, cell.because.1, format!("`{}` {says}", cell.fit_name)).label(cell.because.0.clone());
        let found = found
            .help(format!(
                "add a note on `{}` to {text}, under its title or before the steps of each section that exposes to it",
                cell.hazard
            ))
            .van(&cell.van);
        acc.add(if guarded.book.tolerates_gaps() { found.as_warning() } else { found });
    }
}

fn is_late(guarded: Guarded, module: usize, hazard: &str) -> bool {
    let language = guarded.book.settings.language();
    let mut sections = guarded.book.modules[module].sections.iter();
    sections.any(|section| {
        let (_, text) = guarded.book.section(section, language);
        notes::late(&text.blocks).any(|note| note.hazard.value == hazard)
    })
}

fn says(cell: &Cell) -> Option<String> {
    let missed: Vec<_> = cell.missed().collect();
    let hazard = &cell.hazard;
    if missed.contains(&Criterion::There) {
        return Some(format!("can cause `{hazard}`, and no note says so"));
    }
    if missed.contains(&Criterion::Before) {
        return Some(format!("exposes to `{hazard}` in a section that no note stands before"));
    }
    let missed = missed.into_iter().find(|criterion| matches!(criterion, Criterion::Label | Criterion::Paper))?;
    Some(format!("warns of `{hazard}`, and not {}", missed.word()))
}
