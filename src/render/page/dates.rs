//! What falls due, as pages show it.

use super::{Stand, c};
use crate::model::files::stamped::Stamped;
use crate::model::guide::DateEntry;
use crate::model::phrases::Given;
use crate::render::calendar;
use jiff::civil::Date;

impl Stand<'_> {
    pub(super) fn dates_page(&self, dates: &[DateEntry]) -> c::Dates {
        let rows =
            |known: bool| dates.iter().filter(|date| date.due.is_some() == known).map(|date| self.date(date)).collect();
        let calendar = dates.iter().any(|date| date.due.is_some());
        let year = self.guide.identity.year.map(|year| year.to_string());
        c::Dates {
            known: rows(true),
            unknown: rows(false),
            calendar_href: if calendar { self.way.file(&calendar::file(self.guide)) } else { String::new() },
            built: year
                .map(|year| self.phrases.with("dates-built", &[("year", Given::Text(&year))]))
                .unwrap_or_default(),
        }
    }

    pub(super) fn date(&self, date: &DateEntry) -> c::DateRow {
        let look = || self.phrases.get(&format!("look-{}", date.action.word()));
        c::DateRow {
            title: date.title.to_string(),
            part: self.part_link(date.fit),
            how_html: date.section.as_ref().map(|shown| self.title(shown)).unwrap_or_default(),
            how_href: date.section.as_ref().map(|shown| self.section_href(shown)).unwrap_or_default(),
            places: date.places.iter().map(|place| self.place_link(*place)).collect(),
            action: date.action.word(),
            action_word: self.phrases.get(&format!("action-{}", date.action.word())),
            every: date.every.clone(),
            last: date.last.map(|day| self.day(day)).unwrap_or_default(),
            made: date.made.map(|made| self.stamped(made)).unwrap_or_default(),
            until: date.until.map(|until| self.stamped(until)).unwrap_or_default(),
            due: date.due.map(|day| self.day(day)).unwrap_or_default(),
            due_iso: date.due.map(|day| day.to_string()).unwrap_or_default(),
            note: date.note.unwrap_or_default().to_string(),
            look: if date.due.is_none() { date.look.map_or_else(look, str::to_string) } else { String::new() },
            source: date.source.to_string(),
        }
    }

    pub(super) fn day(&self, day: Date) -> String {
        let (number, year) = (day.day().to_string(), day.year().to_string());
        self.phrases.with(
            "date",
            &[("day", Given::Text(&number)), ("month", Given::Text(&self.month(day))), ("year", Given::Text(&year))],
        )
    }

    fn month(&self, day: Date) -> String {
        self.phrases.get(&format!("month-{}", day.month()))
    }

    fn stamped(&self, stamped: Stamped) -> String {
        match stamped {
            Stamped::Day(day) => self.day(day),
            Stamped::Month(day) => {
                let year = day.year().to_string();
                self.phrases
                    .with("date-month", &[("month", Given::Text(&self.month(day))), ("year", Given::Text(&year))])
            }
            Stamped::Week(day) => {
                let iso = day.iso_week_date();
                let (week, year) = (iso.week().to_string(), iso.year().to_string());
                self.phrases.with("date-week", &[("week", Given::Text(&week)), ("year", Given::Text(&year))])
            }
        }
    }
}
