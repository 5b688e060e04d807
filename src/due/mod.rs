//! Due: what falls due across vans, soonest first, held against one day.

mod comma_separated;
mod json;
mod table;

pub use comma_separated::csv;
pub use json::json;
pub use table::table;

use crate::model::book::Book;
use crate::model::van::{Fit, Van};
use jiff::Span;
use jiff::civil::Date;

/// In days: what falls due within this is due soon.
pub const SOON: i32 = 60;

/// What falls due across vans.
#[derive(Debug)]
pub struct DueList {
    /// The day against which all is held.
    pub on: Date,
    /// What falls due on a known day, soonest first.
    pub known: Vec<DueRow>,
    /// What is not known, in the order of vans.
    pub unknown: Vec<DueRow>,
}

/// A life of a fit of a van.
#[derive(Debug, Clone, PartialEq)]
pub struct DueRow {
    /// `wenlow-v2/dune`
    pub van: String,
    /// The van's public key.
    pub key: String,
    /// The fit's name.
    pub fit: String,
    /// The life's name.
    pub life: String,
    /// `renew`, `test`, `service`, `check`, `clean`
    pub action: &'static str,
    /// What it is called.
    pub title: String,
    /// As the module gives it: `60 months`.
    pub every: String,
    /// When it was last done.
    pub last: Option<Date>,
    /// The date code on the part, as written.
    pub made: String,
    /// The last day that is marked on the part, as written.
    pub until: String,
    /// When it falls due.
    pub due: Option<Date>,
    /// How that stands.
    pub state: State,
    /// Who says so.
    pub source: String,
}

/// How a day stands against another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// It is past.
    Overdue,
    /// It comes within [`SOON`] days.
    Soon,
    /// It comes later.
    Later,
    /// There is no day.
    Unknown,
}

impl State {
    /// How `due` stands on the day `on`. What falls due on that very day is due soon, not overdue.
    pub fn of(due: Option<Date>, on: Date) -> Self {
        let soon = on.saturating_add(Span::new().days(SOON));
        match due {
            None => State::Unknown,
            Some(due) if due < on => State::Overdue,
            Some(due) if due <= soon => State::Soon,
            Some(_) => State::Later,
        }
    }

    /// Its word.
    pub fn word(self) -> &'static str {
        match self {
            State::Overdue => "overdue",
            State::Soon => "due soon",
            State::Later => "later",
            State::Unknown => "not known",
        }
    }
}

/// What falls due in `vans` up to the day `last`, or ever; each title in the book's first language.
pub fn due<'a>(book: &Book, vans: impl Iterator<Item = &'a Van>, on: Date, last: Option<Date>) -> DueList {
    let rows = vans.flat_map(|van| van.fits.iter().flat_map(move |fit| rows(book, van, fit, on)));
    let (mut known, unknown): (Vec<_>, Vec<_>) = rows.partition(|row| row.due.is_some());
    known.retain(|row| last.is_none_or(|last| row.due <= Some(last)));
    known.sort_by_key(|row| row.due);
    DueList { on, known, unknown }
}

fn rows(book: &Book, van: &Van, fit: &Fit, on: Date) -> Vec<DueRow> {
    let language = book.settings.languages.first().map_or("", String::as_str);
    let lives = &book.modules[fit.module].facts.life;
    let row = |date: &crate::model::van::Due| {
        let facts = lives.get(&date.life)?;
        let shown = |stamped: Option<crate::model::files::stamped::Stamped>| stamped.map(|s| s.to_string());
        Some(DueRow {
            van: van.name.clone(),
            key: van.key.value.clone(),
            fit: fit.name.value.clone(),
            life: date.life.clone(),
            action: facts.action.word(),
            title: facts.title.text(language).to_string(),
            every: facts.every.value.clone(),
            last: date.renewed,
            made: shown(date.made).unwrap_or_default(),
            until: shown(date.until).unwrap_or_default(),
            due: date.due,
            state: State::of(date.due, on),
            source: facts.source.clone(),
        })
    };
    fit.dates.iter().filter_map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_day_itself_is_not_overdue_and_the_sixtieth_is_soon() {
        let on: Date = "2026-03-01".parse().unwrap();
        let table = [
            ("2026-02-28", State::Overdue),
            ("2026-03-01", State::Soon),
            ("2026-04-30", State::Soon),
            ("2026-05-01", State::Later),
        ];
        for (due, state) in table {
            assert_eq!(State::of(due.parse().ok(), on), state, "{due}");
        }
        assert_eq!(State::of(None, on), State::Unknown);
        assert_eq!(State::of(Some(Date::MAX), Date::MAX), State::Soon);
    }
}
