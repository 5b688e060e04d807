//! What falls due as a table for a terminal, 100 columns at the most.

use super::{DueList, DueRow, State};
use crate::diag::suggest::count;
use std::fmt::Write;

/// One line a thing that falls due, soonest first; what is not known is counted for each van, or listed with `all`.
pub fn table(list: &DueList, all: bool) -> String {
    let mut out = match list.known.is_empty() {
        true => "nothing falls due on a known day\n".to_string(),
        false => format!("{:<10} {:<9} {:<22} {:<7} what\n", "due", "state", "van", "do"),
    };
    for row in list.known.iter().chain(list.unknown.iter().filter(|_| all)) {
        let _ = writeln!(out, "{}", line(row));
    }
    out.push_str(&tally(list));
    if !all {
        counts(&mut out, &list.unknown);
    }
    out
}

/// How many there are of each state, and against which day they were held.
fn tally(list: &DueList) -> String {
    let of = |state| list.known.iter().filter(|row| row.state == state).count();
    let states = [State::Overdue, State::Soon, State::Later].map(|state| format!("{} {}", of(state), state.word()));
    format!("on {}: {}\n", list.on, states.join(", "))
}

fn line(row: &DueRow) -> String {
    let day = row.due.map_or("-".to_string(), |due| due.to_string());
    let what = format!("{} ({})", row.title, row.fit);
    format!("{day:<10} {:<9} {:<22} {:<7} {}", row.state.word(), cut(&row.van, 22), row.action, cut(&what, 48))
}

/// How many days are not known, and of what, van by van.
fn counts(out: &mut String, unknown: &[DueRow]) {
    for rows in unknown.chunk_by(|a, b| a.van == b.van) {
        let renewed = rows.iter().filter(|row| row.action == "renew").count();
        let of = match renewed {
            0 => String::new(),
            renewed => format!(", {} among them", count(renewed, "renewal")),
        };
        let _ = writeln!(
            out,
            "{:<20} {:<22} {} on no known day{of}",
            "-",
            cut(&rows[0].van, 22),
            count(rows.len(), "thing")
        );
    }
    if !unknown.is_empty() {
        out.push_str("what they are: lockerleaf due --unknown\n");
    }
}

fn cut(text: &str, width: usize) -> String {
    match text.chars().count() > width {
        true => text.chars().take(width - 1).chain(['…']).collect(),
        false => text.to_string(),
    }
}
