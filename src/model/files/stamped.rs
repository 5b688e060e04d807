//! A day that is stamped on a part: by makers' habit a month or a week, seldom a day.

use crate::load::read::{Node, Read, Reader};
use jiff::civil::{Date, ISOWeekDate, Weekday};
use serde_json::{Value as Json, json};
use toml::de::DeValue;

/// A day, a month or a week of the calendar, as it is stamped or printed on a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stamped {
    /// `2026-03-14`
    Day(Date),
    /// `2026-03`: the first day of that month.
    Month(Date),
    /// `2026-W22`: the Monday of that week (ISO 8601).
    Week(Date),
}

impl Stamped {
    /// Its first day. What is counted from it falls due on the soonest day that the stamp can mean.
    pub fn first(self) -> Date {
        match self {
            Stamped::Day(day) | Stamped::Month(day) | Stamped::Week(day) => day,
        }
    }

    /// Reads `2026-03`, `2026-W22` or `2026-03-14`.
    pub fn parse(text: &str) -> Option<Self> {
        let plain = text.bytes().all(|b| b.is_ascii_digit() || b == b'-' || b == b'W');
        let (year, rest) = text.split_once('-').filter(|(year, _)| plain && year.len() == 4)?;
        let number = |text: &str| text.parse::<i8>().ok().filter(|_| text.len() == 2 && !text.starts_with('-'));
        let year = year.parse().ok()?;
        match (rest.strip_prefix('W'), rest.split_once('-')) {
            (Some(week), _) => {
                ISOWeekDate::new(year, number(week)?, Weekday::Monday).ok().map(|week| Stamped::Week(week.date()))
            }
            (None, Some((month, day))) => Date::new(year, number(month)?, number(day)?).ok().map(Stamped::Day),
            (None, None) => Date::new(year, number(rest)?, 1).ok().map(Stamped::Month),
        }
    }
}

/// As an author writes it.
impl std::fmt::Display for Stamped {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Stamped::Day(day) => write!(f, "{day}"),
            Stamped::Month(day) => write!(f, "{:04}-{:02}", day.year(), day.month()),
            Stamped::Week(day) => write!(f, "{:04}-W{:02}", day.iso_week_date().year(), day.iso_week_date().week()),
        }
    }
}

impl Read for Stamped {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let stamped = match node.get_ref() {
            DeValue::String(text) => Stamped::parse(text),
            DeValue::Datetime(date) => Stamped::parse(&date.to_string()),
            _ => None,
        };
        if stamped.is_none() {
            let help = "write year and month as `\"2026-03\"`, year and week as `\"2026-W22\"`, or the day as `2026-03-14`; \
                        a tyre's four digits are the week and the year, so `2226` is `\"2026-W22\"`";
            r.wrong_form(node, "a month, week or day as it is stamped on a part", help);
        }
        stamped
    }
    fn schema() -> Json {
        json!({ "type": "string", "pattern": "^[0-9]{4}-(W[0-9]{2}|[0-9]{2}(-[0-9]{2})?)$" })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stamps_are_read_and_their_first_day_counts() {
        let table = [
            ("2026-03", "2026-03-01"),
            ("2026-03-14", "2026-03-14"),
            // ISO 8601: week 1 holds the first Thursday, so it may begin in December; 2020 has 53 weeks.
            ("2026-W22", "2026-05-25"),
            ("2026-W01", "2025-12-29"),
            ("2020-W53", "2020-12-28"),
            ("2024-02-29", "2024-02-29"),
        ];
        for (text, first) in table {
            let stamped = Stamped::parse(text).unwrap();
            assert_eq!(stamped.first().to_string(), first, "{text}");
            assert_eq!(stamped.to_string(), text);
        }
    }

    #[test]
    fn what_is_not_in_the_calendar_is_no_stamp() {
        for text in [
            "",
            "2026",
            "2226",
            "2026-13",
            "2026-00",
            "2021-W53",
            "2026-W00",
            "2026-02-29",
            "26-03",
            "2026-3",
            "2026-+3",
            "2026-03-14T10:00:00",
            "2026-03-",
            "2026-W2é",
            "-026-03",
            "week 22",
        ] {
            assert_eq!(Stamped::parse(text), None, "{text}");
        }
    }
}
