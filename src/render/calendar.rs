//! What falls due as an iCalendar file (RFC 5545, media type `text/calendar`).
//!
//! Nothing in it depends on the day on which it is made: the stamp of an entry is the day of its record.

use super::ical::Lines;
use super::{Artifact, links};
use crate::model::files::module::Action;
use crate::model::guide::{DateEntry, Guide, PageBody};
use crate::model::phrases::Phrases;
use crate::model::quantity::Unit;
use jiff::civil::Date;

/// In months: an interval no longer than this is kept by the owner, and comes again whatever else is recorded.
const OWN_CHECKS: f64 = 12.0;

/// Where the calendar of a guide stands below the van's folder.
pub fn file(guide: &Guide) -> String {
    let folder = links::folder(guide, "");
    format!("{folder}{}dates.ics", if folder.is_empty() { "" } else { "/" })
}

/// The calendar of one guide; none when no day is known.
pub fn calendar(guide: &Guide, phrases: &Phrases) -> Option<Artifact> {
    let dates = guide.pages.iter().find_map(|page| match &page.body {
        PageBody::Dates(dates) => Some(dates),
        _ => None,
    })?;
    let entries = dates.iter().filter_map(|date| Some(Entry { guide, phrases, date, due: date.due? }));
    let entries: Vec<_> = entries.collect();
    let mut lines = Lines::default();
    lines.component("VCALENDAR", |lines| {
        lines.plain("VERSION", "2.0");
        lines.plain("PRODID", "-//Lockerleaf//What is due//EN");
        lines.plain("CALSCALE", "GREGORIAN");
        lines.text("NAME", &format!("{} – {}", guide.identity.title, phrases.get("dates-title")));
        entries.iter().for_each(|entry| entry.event(lines));
    });
    let path = format!("{}/{}", guide.identity.key, file(guide));
    (!entries.is_empty()).then(|| Artifact::text(path, lines.finish()))
}

/// One thing that falls due on a known day.
struct Entry<'a> {
    guide: &'a Guide<'a>,
    phrases: &'a Phrases,
    date: &'a DateEntry<'a>,
    due: Date,
}

impl Entry<'_> {
    fn event(&self, lines: &mut Lines) {
        lines.component("VEVENT", |lines| {
            lines.text("UID", &self.uid());
            lines.plain("DTSTAMP", &self.stamp());
            lines.plain("DTSTART;VALUE=DATE", &basic(self.due));
            if let Some(rule) = self.rule() {
                lines.plain("RRULE", &rule);
            }
            lines.text("SUMMARY", &self.summary());
            lines.text("DESCRIPTION", &self.description());
            let places = self.places();
            if !places.is_empty() {
                lines.text("LOCATION", &places);
            }
            if !self.guide.identity.address.is_empty() {
                lines.plain("URL", &self.address());
            }
            // A day on which something is due is not a day that is taken.
            lines.plain("TRANSP", "TRANSPARENT");
            self.alarm(lines);
        });
    }

    /// The same for the same life of the same fit in the same van, in every language and edition.
    fn uid(&self) -> String {
        format!("{}.{}.{}@lockerleaf", self.date.life, self.guide.fits[self.date.fit].name, self.guide.identity.key)
    }

    fn stamp(&self) -> String {
        let day = self.date.recorded.or(self.date.made.map(|made| made.first())).unwrap_or(self.due);
        format!("{}T000000Z", basic(day))
    }

    fn summary(&self) -> String {
        let action = self.phrases.get(&format!("action-{}", self.date.action.word()));
        format!("{action}: {} – {}", self.date.title, self.guide.identity.title)
    }

    fn description(&self) -> String {
        let said = |name: &str, words: &str| {
            (!words.is_empty()).then(|| format!("{}: {words}", self.phrases.get(&format!("date-{name}"))))
        };
        let part = self.guide.fits[self.date.fit].title.to_string();
        let lines = [
            Some(part),
            said("every", &self.date.every),
            self.date.note.map(str::to_string),
            said("source", self.date.source),
            Some(self.phrases.get("dates-intro")),
        ];
        lines.into_iter().flatten().collect::<Vec<_>>().join("\n")
    }

    fn places(&self) -> String {
        let places = self.date.places.iter().map(|place| &self.guide.places[*place]);
        places.map(|place| format!("{} {}", place.code, place.name)).collect::<Vec<_>>().join(", ")
    }

    /// To the part's page, at the section that says how.
    fn address(&self) -> String {
        let fit = &self.guide.fits[self.date.fit];
        let page = links::folder(self.guide, &format!("part/{}", fit.name));
        let base = self.guide.identity.address.trim_end_matches('/');
        let section = self.date.section.as_ref().map(|shown| format!("#{}", shown.section.id.value));
        format!("{base}/{}/{page}/{}", self.guide.identity.key, section.unwrap_or_default())
    }

    /// How it comes again, where that is honest: short checks that the owner keeps, counted from the day of the record.
    /// A renewal or a service comes again only once it was done, and a marked last day only once.
    fn rule(&self) -> Option<String> {
        let (every, last) = (self.date.interval?, self.date.last?);
        let own = matches!(self.date.action, Action::Test | Action::Check | Action::Clean);
        let count = |symbol| every.to(Unit::find(symbol)?).map(|every| every.amount);
        let short = count("months").is_none_or(|months| months <= OWN_CHECKS);
        if !own || !short || self.date.until.is_some() {
            return None;
        }
        match (count("months"), count("days")) {
            (Some(months), _) => Some(format!("FREQ=MONTHLY;INTERVAL={months}{}", month_end(last))),
            (None, Some(days)) if days % 7.0 == 0.0 => Some(format!("FREQ=WEEKLY;INTERVAL={}", days / 7.0)),
            (None, Some(days)) => Some(format!("FREQ=DAILY;INTERVAL={days}")),
            (None, None) => None,
        }
    }

    /// A reminder at nine in the morning: four weeks ahead where somebody must be asked for a date, a week ahead for
    /// what comes a few times a year, on the day for what comes each month.
    fn alarm(&self, lines: &mut Lines) {
        let ahead = match self.date.action {
            Action::Renew | Action::Service => "-P27DT15H",
            _ if self.months().is_some_and(|months| months > 1.0) => "-P6DT15H",
            _ => "PT9H",
        };
        lines.component("VALARM", |lines| {
            lines.plain("ACTION", "DISPLAY");
            lines.text("DESCRIPTION", &self.summary());
            lines.plain("TRIGGER", ahead);
        });
    }

    /// The interval in months; none when it is counted in days.
    fn months(&self) -> Option<f64> {
        self.date.interval?.to(Unit::find("months")?).map(|every| every.amount)
    }
}

/// `20260914` (RFC 5545, 3.3.4).
fn basic(day: Date) -> String {
    format!("{:04}{:02}{:02}", day.year(), day.month(), day.day())
}

/// Months without a 29th, 30th or 31st would be left out (RFC 5545, 3.3.10): their last day is taken instead.
fn month_end(from: Date) -> String {
    match from.day() {
        ..=28 => String::new(),
        day => {
            let days: Vec<_> = (28..=day).map(|day| day.to_string()).collect();
            format!(";BYMONTHDAY={};BYSETPOS=-1", days.join(","))
        }
    }
}
