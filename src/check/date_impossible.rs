//! Days that a manifest records and that cannot be.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity, rules};
use crate::model::book::VanSource;
use crate::model::files::module::Action;
use crate::model::files::vehicle::Renewed;
use crate::model::source::Span;
use crate::model::van::Van;
use jiff::civil::Date;

static RULE: Rule = Rule {
    id: "date-impossible",
    severity: Severity::Error,
    asks: "Nothing is recorded as done before the vehicle was built or after today, and the marks on a part agree with the day it was fitted.",
    why: "A slip of a digit moves what falls due by years, and nobody looks at a part that is not due.",
    source: "the `year` of the manifest, and the calendar",
    wrong: "year = 2019, and a hose renewed on 2016-09-14",
    right: "the hose renewed on 2026-09-14",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

/// No vehicle of a manifest is older: the trade has no parts for it.
const OLDEST: u32 = 1950;
/// Nor is any newer than the calendar of this program is meant for.
const NEWEST: u32 = 2200;
/// In years: what is recorded later than this after building is a slip.
const LONGEST_LIFE: i32 = 60;
/// In years: a part lies in no store for longer before it is fitted.
const LONGEST_STORE: i32 = 10;
/// In years: no mark on a part looks further ahead.
const LONGEST_MARK: i32 = 30;

fn run(acc: &mut Acc, checked: Checked) {
    for van in checked.vans {
        let sources = &checked.book.models[van.model].vans;
        if let Some(source) = sources.iter().find(|source| source.file == van.file) {
            look(acc, Looked { checked, van, source });
        }
    }
}

/// One van with its manifest.
#[derive(Clone, Copy)]
struct Looked<'a> {
    checked: Checked<'a>,
    van: &'a Van,
    source: &'a VanSource,
}

fn look(acc: &mut Acc, looked: Looked) {
    let facts = &looked.source.facts;
    if let Some(year) = facts.year.as_ref().filter(|year| !(OLDEST..=NEWEST).contains(&year.value)) {
        let message = format!("`{}` is no year in which this vehicle was built", year.value);
        acc.add(Diagnostic::new(&RULE, year.span, message).help("take the year from the plate or the papers"));
        return;
    }
    for reading in &facts.reading {
        acc.extend(done(looked, reading.on.value, reading.on.span));
    }
    // A day in the wrong form is not missing as well; that has been said.
    let unread = acc
        .in_any_order()
        .any(|d| d.rule.id == rules::WRONG_FORM.id && d.span.is_some_and(|span| span.file == looked.van.file));
    for record in &facts.renewed {
        acc.extend(no_day(record).filter(|_| !unread));
        acc.extend(record.on.as_ref().and_then(|on| done(looked, on.value, on.span)));
        acc.extend(made(looked, record));
        acc.extend(until(record));
    }
}

/// A record that gives no day at all.
fn no_day(record: &Renewed) -> Option<Diagnostic> {
    if record.on.is_some() || record.made.is_some() || record.until.is_some() {
        return None;
    }
    let help = "give the day it was done as `on`, the date code on the part as `made`, or its last day as `until`; \
                or leave the record out";
    Some(Diagnostic::new(&rules::MISSING_KEY, record.part.span, "this record gives no day").help(help))
}

/// The year the vehicle was built, with where that is written.
fn built(looked: Looked) -> Option<(i32, Span)> {
    let year = looked.source.facts.year.as_ref()?;
    Some((i32::try_from(year.value).ok()?, year.span))
}

fn found(span: Span, message: String, built: Option<(i32, Span)>) -> Diagnostic {
    let found = Diagnostic::new(&RULE, span, message);
    match built {
        Some((_, span)) => found.other(span, "the year it was built"),
        None => found,
    }
}

/// A day on which something was done.
fn done(looked: Looked, on: Date, span: Span) -> Option<Diagnostic> {
    let built = built(looked);
    let year = i32::from(on.year());
    let help = "write the day it was done, year first; for what falls due later nothing is written";
    // A vehicle may be a day ahead of this machine's calendar.
    if looked.checked.today.and_then(|today| today.tomorrow().ok()).is_some_and(|last| on > last) {
        return Some(found(span, format!("{on} is yet to come"), None).help(help));
    }
    match built {
        Some((built_in, _)) if year < built_in => Some(
            found(span, format!("{on} is before this vehicle was built"), built)
                .help("mend the day, or the year of the vehicle"),
        ),
        Some((built_in, _)) if year > built_in + LONGEST_LIFE => Some(
            found(span, format!("{on} is more than {LONGEST_LIFE} years after this vehicle was built"), built)
                .help(help),
        ),
        _ => None,
    }
}

/// The date code of a part: it was made before it was fitted, and not long before the vehicle.
fn made(looked: Looked, record: &Renewed) -> Option<Diagnostic> {
    let made = record.made.as_ref()?;
    let code = made.value;
    if !renews(looked, record) {
        let found =
            found(made.span, "a date code says nothing of a test, service, check or cleaning".to_string(), None);
        return Some(found.help("give the day it was done as `on`; a date code belongs to a part that is renewed"));
    }
    let fitted = record.on.as_ref().map(|on| on.value);
    if let Some(fitted) = fitted.filter(|fitted| code.first() > *fitted) {
        let found = found(made.span, format!("the part was made in {code}, after it was fitted on {fitted}"), None);
        return Some(found.help("read the code again: a tyre's four digits are the week and the year"));
    }
    if fitted.is_none() && looked.checked.today.is_some_and(|today| code.first() > today) {
        return Some(found(made.span, format!("{code} is yet to come"), None).help("read the code again"));
    }
    let built = built(looked)?;
    let store = i32::from(code.first().year()) < built.0 - LONGEST_STORE;
    let message =
        || format!("the part was made in {code}, more than {LONGEST_STORE} years before this vehicle was built");
    store.then(|| found(made.span, message(), Some(built)).help("read the code again, or mend the year of the vehicle"))
}

/// Whether the life that is recorded ends with a new part; what is not known has been said.
fn renews(looked: Looked, record: &Renewed) -> bool {
    let fit = looked.van.fits.iter().find(|fit| fit.name.value == record.fit.value.0);
    let life = fit.and_then(|fit| looked.checked.book.modules[fit.module].facts.life.get(&record.part.value));
    life.is_none_or(|life| life.action == Action::Renew)
}

/// The last day that is marked on a part: after it was made and fitted, and not for ever.
fn until(record: &Renewed) -> Option<Diagnostic> {
    let until = record.until.as_ref()?;
    let (mark, day) = (until.value, until.value.first());
    let made = record.made.as_ref().map(|made| made.value.first());
    let fitted = record.on.as_ref().map(|on| on.value);
    let began = fitted.max(made)?;
    if day <= began {
        let found = found(until.span, format!("its last day, {mark}, was over on {began}"), None);
        return Some(found.help("fit another part, or read the mark again"));
    }
    let far = i32::from(day.year()) - i32::from(began.year()) > LONGEST_MARK;
    let message = || format!("its last day, {mark}, is more than {LONGEST_MARK} years ahead");
    far.then(|| found(until.span, message(), None).help("read the mark again"))
}
