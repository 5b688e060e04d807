//! When the parts of a van fall due: the lives of its modules, and what its manifest records of each.

use super::records::{fit_number, unknown_part};
use crate::diag::Acc;
use crate::model::book::{Book, VanSource};
use crate::model::files::module::{Action, Life};
use crate::model::files::vehicle::Renewed;
use crate::model::quantity::{Quantity, Unit};
use crate::model::van::{Due, Van};
use jiff::Span;
use jiff::civil::Date;

/// Works out what falls due, from the newest record of each life. What is not recorded is not guessed.
pub(super) fn dates(acc: &mut Acc, book: &Book, source: &VanSource, van: &mut Van) {
    for record in &source.facts.renewed {
        known(acc, book, van, record);
    }
    for fit in &mut van.fits {
        let own = |life: &str| {
            let records = source.facts.renewed.iter();
            let name = &fit.name.value;
            let own = records.filter(|record| record.fit.value.0 == *name && record.part.value.0 == life);
            own.max_by_key(|record| seen(record))
        };
        let lives = book.modules[fit.module].facts.life.iter();
        let dates = lives.map(|(life, facts)| falls(&life.value, facts, own(&life.value))).collect();
        fit.dates = dates;
    }
}

/// Says what a record names that is not there.
fn known(acc: &mut Acc, book: &Book, van: &Van, record: &Renewed) {
    if let Some(number) = fit_number(acc, van, &record.fit.value, record.fit.span) {
        let module = &book.modules[van.fits[number].module];
        if module.facts.life.get(&record.part.value).is_none() {
            unknown_part(acc, "life", &module.name, &record.part, module.facts.life.names());
        }
    }
}

/// What orders records of one life: the day, or else what is stamped on the part.
fn seen(record: &Renewed) -> Option<Date> {
    let made = record.made.as_ref().map(|made| made.value.first());
    record.on.as_ref().map(|on| on.value).or(made)
}

/// When a life ends: counted from the day it began or from the day the part was made, or on the last day that is
/// marked on the part; of these the soonest.
fn falls(life: &str, facts: &Life, record: Option<&Renewed>) -> Due {
    let renewed = record.and_then(|record| record.on.as_ref()).map(|on| on.value);
    let made = record.and_then(|record| record.made.as_ref()).map(|made| made.value);
    let until = record.and_then(|record| record.until.as_ref()).map(|until| until.value);
    // A test or service does not age with the part, so a date code says nothing of it.
    let ages = made.filter(|_| facts.action == Action::Renew);
    let counted = [renewed, ages.map(|made| made.first())].into_iter().flatten();
    let ends = counted.filter_map(|from| due(from, &facts.every)).chain(until.map(|until| until.first()));
    Due {
        life: life.to_string(),
        renewed,
        made,
        until,
        span: record.map(|record| record.on.as_ref().map_or(record.part.span, |on| on.span)),
        due: ends.min(),
        note: record.and_then(|record| record.note.clone()),
    }
}

/// `from` and an interval later. Months and years keep the day, or the last day of a shorter month; days and weeks are
/// counted. `None` when `every` is no such interval, or the day is out of the calendar.
pub fn due(from: Date, every: &str) -> Option<Date> {
    let every = Quantity::parse(every).ok()?;
    let in_unit = |symbol| Unit::find(symbol).and_then(|unit| every.to(unit)).map(|every| every.amount.round() as i32);
    match (in_unit("months"), in_unit("days")) {
        (Some(months), _) => from.checked_add(Span::new().try_months(months).ok()?).ok(),
        (None, Some(days)) => from.checked_add(Span::new().try_days(days).ok()?).ok(),
        (None, None) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Month ends and leap days: the Gregorian calendar (ISO 8601), with the last day of a month that is too short, as
    /// hire and service periods are counted in common practice. `tests/dates/referee.py` counts them again.
    #[test]
    fn month_ends_and_leap_days_are_right() {
        let table = [
            ("2026-01-31", "1 month", "2026-02-28"),
            ("2024-01-31", "1 month", "2024-02-29"),
            ("2026-01-30", "1 month", "2026-02-28"),
            ("2026-03-31", "1 month", "2026-04-30"),
            ("2026-08-31", "6 months", "2027-02-28"),
            ("2023-08-31", "6 months", "2024-02-29"),
            ("2026-12-31", "2 months", "2027-02-28"),
            ("2026-11-30", "3 months", "2027-02-28"),
            ("2024-02-29", "12 months", "2025-02-28"),
            ("2024-02-29", "1 year", "2025-02-28"),
            ("2024-02-29", "48 months", "2028-02-29"),
            ("2024-02-29", "4 years", "2028-02-29"),
            ("2024-02-29", "5 years", "2029-02-28"),
            // 2100 is no leap year, 2400 is.
            ("2096-02-29", "4 years", "2100-02-28"),
            ("2396-02-29", "4 years", "2400-02-29"),
            ("2026-02-28", "12 months", "2027-02-28"),
            ("2023-02-28", "12 months", "2024-02-28"),
            ("2026-12-15", "1 month", "2027-01-15"),
            ("2026-09-14", "60 months", "2031-09-14"),
            ("2026-09-14", "84 months", "2033-09-14"),
            ("2026-09-14", "100 years", "2126-09-14"),
            ("2024-02-01", "4 weeks", "2024-02-29"),
            ("2026-02-01", "4 weeks", "2026-03-01"),
            ("2026-12-31", "1 day", "2027-01-01"),
            ("2024-02-28", "1 day", "2024-02-29"),
            ("2026-01-31", "30 days", "2026-03-02"),
        ];
        for (from, every, expected) in table {
            let due = due(from.parse().unwrap(), every).map(|due| due.to_string());
            assert_eq!(due.as_deref(), Some(expected), "{every} from {from}");
        }
    }

    #[test]
    fn what_is_no_interval_or_leaves_the_calendar_has_no_day() {
        let day: Date = "2026-09-14".parse().unwrap();
        for every in ["", "6 kg", "24 h", "monthly", "9999 years", "1000000000 days"] {
            assert_eq!(due(day, every), None, "{every}");
        }
    }
}
