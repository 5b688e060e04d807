//! Compose: what the guide of one van says, in one language. It knows no output format.

mod dates;
mod entries;
mod facts;
mod lists;
mod old_labels;
pub mod order;
mod photos;
mod place_page;
mod routines;
mod search;
mod shape;
mod show;
mod sums;
mod views;
mod warnings;
pub mod withdrawn;
mod words;

use crate::model::book::Book;
use crate::model::files::content::Hazard;
use crate::model::files::forms::{Signal, System};
use crate::model::guide::{Guide, Identity, Page, PageBody, Routined, Search, Shown};
use crate::model::phrases::Phrases;
use crate::model::van::Van;
use std::collections::BTreeMap;

/// Composes the guide of `van` in `language`, with the words of the theme in that language.
pub fn compose<'a>(book: &'a Book, van: &'a Van, language: &'a str, phrases: &Phrases) -> Guide<'a> {
    composed(book, van, language, phrases, Composer::pages)
}

/// The same guide with only those pages that hold safety notes: parts, places, routines and the list of all notes.
pub fn compose_notes<'a>(book: &'a Book, van: &'a Van, language: &'a str, phrases: &Phrases) -> Guide<'a> {
    composed(book, van, language, phrases, |composer, guide| composer.pages_with_notes(guide))
}

/// Composes a guide of the pages that `pages` gives.
fn composed<'a, 'p>(
    book: &'a Book,
    van: &'a Van,
    language: &'a str,
    phrases: &'p Phrases,
    pages: impl Fn(&Composer<'a, 'p>, &Guide<'a>) -> Vec<Page<'a>>,
) -> Guide<'a> {
    let mut guide = Guide {
        language,
        languages: book.settings.languages.iter().map(String::as_str).collect(),
        identity: identity(book, van),
        shape: shape::shape(book, van),
        places: entries::places(van, language),
        fits: entries::fits(book, van, language),
        views: Default::default(),
        signs: signs(book),
        drawings: &book.drawings,
        photos: &book.photos,
        pages: vec![],
        search: Default::default(),
    };
    guide.views = views::views(book, van, language, phrases);
    let composer = Composer { book, van, language, phrases };
    let pages = pages(&composer, &guide);
    warnings::mark_places(&mut guide, &pages);
    guide.pages = pages;
    guide
}

/// What search finds in a guide that was composed.
pub fn search<'a>(book: &'a Book, van: &'a Van, guide: &Guide<'a>, phrases: &Phrases) -> Search<'a> {
    Composer { book, van, language: guide.language, phrases }.search(guide)
}

fn identity<'a>(book: &'a Book, van: &'a Van) -> Identity<'a> {
    let settings = &book.settings;
    Identity {
        key: &van.key.value,
        title: &van.title,
        model: &book.models[van.model].facts.title.value,
        year: van.year,
        dealer_name: &settings.dealer_name,
        dealer_phone: &settings.dealer_phone,
        dealer_email: &settings.dealer_email,
        dealer_web: &settings.dealer_web,
        dealer_hours: &settings.dealer_hours,
        dealer_logo: book.logo.as_ref(),
        address: &settings.address,
        former_keys: van.former_keys.iter().map(|key| key.value.as_str()).collect(),
    }
}

/// The sign of each hazard: its own, or else the general one. Damage only has none, as nobody gets hurt.
fn signs(book: &Book) -> BTreeMap<&str, String> {
    let hurts = book.hazards.0.iter().filter(|(_, hazard)| hazard.at_least.value > Signal::Notice);
    let own = |hazard: &Hazard| hazard.sign.as_ref().map_or(GENERAL_SIGN, |sign| sign.value.as_str()).to_lowercase();
    hurts.map(|(name, hazard)| (name.value.as_str(), own(hazard))).collect()
}

/// The general warning sign (ISO 7010).
const GENERAL_SIGN: &str = "W001";

/// What composing one guide looks at.
struct Composer<'a, 'p> {
    book: &'a Book,
    van: &'a Van,
    language: &'a str,
    phrases: &'p Phrases,
}

impl<'a> Composer<'a, '_> {
    fn pages_with_notes(&self, guide: &Guide<'a>) -> Vec<Page<'a>> {
        let mut pages: Vec<_> = (0..self.van.places.len()).map(|place| self.place_page(place)).collect();
        pages.extend((0..self.van.fits.len()).map(|fit| self.fit_page(guide, fit)));
        pages.extend(self.routine_pages());
        pages.push(self.page("warnings", "warnings", PageBody::Warnings(self.all_warnings())));
        pages
    }

    fn pages(&self, guide: &Guide<'a>) -> Vec<Page<'a>> {
        let mut pages = vec![self.page("", "home", PageBody::Home)];
        pages.extend((0..self.van.places.len()).map(|place| self.place_page(place)));
        pages.extend(self.old_label_pages());
        pages.extend((0..self.van.fits.len()).map(|fit| self.fit_page(guide, fit)));
        pages.extend(self.systems().map(|system| self.system_page(system)));
        pages.extend(self.routine_pages());
        pages.push(self.page("places", "places", PageBody::Places));
        pages.push(self.page("tasks", "tasks", PageBody::Tasks(self.by_system(crate::model::text::Role::Task))));
        pages.push(self.page("faults", "faults", PageBody::Faults(self.by_system(crate::model::text::Role::Fault))));
        pages.push(self.page("dates", "dates", PageBody::Dates(self.all_dates())));
        pages.push(self.page("figures", "figures", PageBody::Figures(Box::new(sums::page(self, guide)))));
        pages.push(self.page("warnings", "warnings", PageBody::Warnings(self.all_warnings())));
        pages.push(self.page("emergency", "emergency", PageBody::Emergency(self.emergency())));
        pages.push(self.page("words", "words", PageBody::Words(self.word_list(guide))));
        pages.push(self.page("about", "about", PageBody::About(self.routine_names())));
        pages
    }

    fn page(&self, address: &str, title: &str, body: PageBody<'a>) -> Page<'a> {
        Page { address: address.to_string(), title: self.phrases.get(&format!("{title}-title")), body }
    }

    /// The systems that this van has, in their order.
    fn systems(&self) -> impl Iterator<Item = System> + use<'a> {
        let (book, van) = (self.book, self.van);
        System::ALL
            .iter()
            .copied()
            .filter(move |system| van.fits.iter().any(|fit| book.modules[fit.module].system == Some(*system)))
    }

    /// All sections of a fit that show, in the order of its text.
    fn shown(&self, fit: usize) -> impl Iterator<Item = (usize, Shown<'a>)> + use<'a> {
        let (book, language) = (self.book, self.language);
        let fitted = &self.van.fits[fit];
        let sections = book.modules[fitted.module].sections.iter().enumerate();
        sections.filter(move |(number, _)| fitted.shown[*number]).map(move |(number, facts)| {
            let (_, section) = book.section(facts, language);
            (number, Shown { fit, origin: facts.origin, section })
        })
    }

    fn routine_names(&self) -> Vec<Routined> {
        let title = |routine: &crate::model::book::Routine| {
            routine.texts.get(self.language).or(routine.texts.values().next()).map(|text| text.title.value.clone())
        };
        self.book
            .routines
            .iter()
            .map(|routine| Routined {
                name: routine.name.clone(),
                title: title(routine).unwrap_or_else(|| routine.name.clone()),
            })
            .collect()
    }
}
