//! Measuring coverage: on what the guide really says, page by page.

use super::{Cell, Coverage, Standing, implied};
use crate::compose;
use crate::model::book::Book;
use crate::model::files::forms::Signal;
use crate::model::guide::{Guide, Page, PageBody, Shown};
use crate::model::phrases::Phrases;
use crate::model::text::{Block, Note, each_note, words};
use crate::model::van::{Fit, Van};
use crate::render::paper::held::Held;
use jiff::civil::Date;

/// The coverage of one van in one language. Waivers count until their last day, or always when today is not known.
pub fn measure(book: &Book, van: &Van, language: &str, phrases: &Phrases, today: Option<Date>) -> Coverage {
    let guide = compose::compose_notes(book, van, language, phrases);
    let held = Held::new(&guide, phrases);
    let mut cells = Vec::new();
    for (number, fit) in van.fits.iter().enumerate() {
        for (hazard, because) in implied::required(book, van, fit) {
            let case = Case { book, van, guide: &guide, held: &held, number, fit, hazard: &hazard };
            let standing = case.standing();
            let waived = waived(van, &fit.name.value, &hazard, today);
            let (van, fit_name, language) = (van.name.clone(), fit.name.value.clone(), language.to_string());
            cells.push(Cell { van, fit: number, fit_name, hazard, language, standing, because, waived });
        }
    }
    Coverage { cells }
}

fn waived(van: &Van, fit: &str, hazard: &str, today: Option<Date>) -> Option<(String, Date)> {
    let mut waivers = van.waivers.iter().filter(|waiver| waiver.fit == fit && waiver.hazard == hazard);
    waivers
        .find(|waiver| today.is_none_or(|today| today <= waiver.until))
        .map(|waiver| (waiver.reason.clone(), waiver.until))
}

/// One fit and one hazard in a guide.
struct Case<'a> {
    book: &'a Book,
    van: &'a Van,
    guide: &'a Guide<'a>,
    held: &'a Held,
    number: usize,
    fit: &'a Fit,
    hazard: &'a str,
}

impl<'a> Case<'a> {
    fn standing(&self) -> [Standing; 6] {
        let notes = self.notes();
        let least = self.book.hazards.0.get(self.hazard).map_or(Signal::Danger, |hazard| hazard.at_least.value);
        let there = !notes.is_empty();
        [
            met(there),
            met(there && notes.iter().all(|note| note.signal >= least)),
            met(there && notes.iter().all(|note| is_whole(note))),
            self.before(),
            self.at_labels(),
            met(there && self.held.holds(self.number, self.hazard)),
        ]
    }

    /// All notes about the hazard on the fit's own page: at its top and in the sections that show.
    fn notes(&self) -> Vec<&'a Note> {
        let mut notes = self.at_top();
        for shown in self.sections() {
            each_note(&shown.section.blocks, &mut |note| notes.extend(self.is_about(note)));
        }
        notes
    }

    fn is_about(&self, note: &'a Note) -> Option<&'a Note> {
        (note.hazard.value == self.hazard).then_some(note)
    }

    /// Notes at the top of the part, of its own text and of those it takes in.
    fn at_top(&self) -> Vec<&'a Note> {
        let mut notes = Vec::new();
        for (_, view) in self.guide.views.range((self.number, 0)..=(self.number, usize::MAX)) {
            each_note(&view.text.intro, &mut |note| notes.extend(self.is_about(note)));
        }
        notes
    }

    fn page(&self, wanted: impl Fn(&PageBody) -> bool) -> Option<&'a Page<'a>> {
        self.guide.pages.iter().find(|page| wanted(&page.body))
    }

    fn sections(&self) -> &'a [Shown<'a>] {
        let page = self.page(|body| matches!(body, PageBody::Fit(page) if page.fit == self.number));
        match page.map(|page| &page.body) {
            Some(PageBody::Fit(page)) => &page.sections,
            _ => &[],
        }
    }

    /// The sections that show and expose to the hazard, each with whether it must carry a note of its own.
    fn exposing(&self) -> impl Iterator<Item = (&'a Shown<'a>, bool)> {
        let module = &self.book.modules[self.fit.module];
        self.sections().iter().filter_map(|shown| {
            let wiring =
                module.sections.iter().find(|section| section.id == shown.section.id.value)?.wiring.as_ref()?;
            let own = wiring.warns.iter().any(|hazard| *hazard.value == *self.hazard);
            (own || wiring.exposes.iter().any(|hazard| *hazard.value == *self.hazard)).then_some((shown, own))
        })
    }

    fn before(&self) -> Standing {
        let top = !self.at_top().is_empty();
        let mut asked = self.exposing().peekable();
        if asked.peek().is_none() {
            return Standing::NotAsked;
        }
        let on_part = asked.all(|(shown, own)| (top && !own) || self.before_steps(&shown.section.blocks));
        met(on_part && self.in_routines())
    }

    /// In each routine, before each of its steps that exposes to the hazard.
    fn in_routines(&self) -> bool {
        let exposing: Vec<_> = self.exposing().map(|(shown, _)| shown.section.id.value.as_str()).collect();
        let mut steps = self.guide.pages.iter().flat_map(|page| match &page.body {
            PageBody::Routine(routine) => routine.steps.as_slice(),
            _ => &[],
        });
        steps.all(|step| {
            let exposes = step.shown.fit == self.number && exposing.contains(&step.shown.section.id.value.as_str());
            !exposes
                || step.notes.iter().any(|warned| warned.note.hazard.value == self.hazard)
                || self.before_steps(&step.shown.section.blocks)
        })
    }

    /// Whether a note about the hazard stands before the first step, or there are no steps.
    fn before_steps(&self, blocks: &'a [Block]) -> bool {
        let steps = blocks.iter().position(|block| matches!(block, Block::List(Some(_), _))).unwrap_or(blocks.len());
        let mut found = false;
        each_note(&blocks[..steps], &mut |note| found |= note.hazard.value == self.hazard);
        found
    }

    /// On the page of each labelled place where an exposing section is read.
    fn at_labels(&self) -> Standing {
        let exposing: Vec<_> = self.exposing().map(|(shown, _)| shown.section.id.value.as_str()).collect();
        let mut standing = Standing::NotAsked;
        for page in &self.guide.pages {
            let PageBody::Place(place) = &page.body else {
                continue;
            };
            let here = place
                .sections
                .iter()
                .any(|shown| shown.fit == self.number && exposing.contains(&shown.section.id.value.as_str()));
            if !self.van.places[place.place].labelled || !here {
                continue;
            }
            let mut warned =
                place.notes.iter().any(|warned| warned.fit == self.number && warned.note.hazard.value == self.hazard);
            for shown in place.sections.iter().filter(|shown| shown.fit == self.number) {
                each_note(&shown.section.blocks, &mut |note| warned |= note.hazard.value == self.hazard);
            }
            if !warned {
                return Standing::Missed;
            }
            standing = Standing::Met;
        }
        standing
    }
}

fn met(is: bool) -> Standing {
    if is { Standing::Met } else { Standing::Missed }
}

fn is_whole(note: &Note) -> bool {
    !words(&note.consequence).trim().is_empty() && !note.avoidance.is_empty()
}
