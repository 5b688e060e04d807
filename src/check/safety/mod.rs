//! Checks of safety notes and coverage. They run on a book that is otherwise sound, so that one slip is said once.

mod coverage_least;
mod hazard_uncovered;
mod note_late;
mod note_redundant;
mod note_uncalled;
mod note_weak;
mod notes;
mod section_unwarned;
mod trait_unread;
mod waiver_over;

use crate::coverage::Coverage;
use crate::diag::{Acc, Rule};
use crate::model::book::Book;
use crate::model::van::Van;
use jiff::civil::Date;

/// What these checks look at.
#[derive(Clone, Copy)]
pub struct Guarded<'a> {
    /// The book.
    pub book: &'a Book,
    /// Its vans.
    pub vans: &'a [Van],
    /// Their coverage.
    pub coverage: &'a Coverage,
    /// Today, for the last days of waivers; when it is not known no waiver is over.
    pub today: Option<Date>,
}

/// One check.
pub struct Check {
    /// Its rule.
    pub rule: &'static Rule,
    /// Looks, and says what is wrong.
    pub run: fn(&mut Acc, Guarded),
}

/// All checks, by the name of their file.
pub static CHECKS: &[&Check] = &[
    &coverage_least::SAFETY,
    &hazard_uncovered::SAFETY,
    &note_late::SAFETY,
    &note_redundant::SAFETY,
    &note_uncalled::SAFETY,
    &note_weak::SAFETY,
    &section_unwarned::SAFETY,
    &trait_unread::SAFETY,
    &waiver_over::SAFETY,
];

/// Runs all checks.
pub fn check(acc: &mut Acc, guarded: Guarded) {
    for check in CHECKS {
        (check.run)(acc, guarded);
    }
}
