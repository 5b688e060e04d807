//! Owner guides for campervans, motorhomes and caravans: one for each vehicle, assembled from component modules.
//!
//! The driver tells the whole story: [`look`] loads a book, resolves its vans and checks them; [`assemble`] composes,
//! renders and writes a guide for each van, unless something is wrong.
#![warn(missing_docs)]

pub mod book_in;
pub mod check;
pub mod cli;
pub mod compose;
pub mod coverage;
pub mod diag;
pub mod due;
pub mod error;
pub mod figures;
pub mod label;
pub mod load;
pub mod model;
pub mod print;
pub mod publish;
pub mod render;
pub mod resolve;
pub mod write;

use check::safety::{self, Guarded};
use coverage::Coverage;
use diag::{Acc, Diagnostic, rules};
use error::Error;
use jiff::civil::Date;
use load::files::Files;
use model::book::Book;
use model::inputs::Inputs;
use model::van::Van;
use rayon::prelude::*;
use render::{Artifact, root::root, theme::Theme};
use std::path::Path;
use write::{Receipt, stamp};

/// A book that was looked at: what it holds, and what is wrong with it.
pub struct Looked {
    /// What was read.
    pub book: Book,
    /// Its vans, with everything decided.
    pub vans: Vec<Van>,
    /// Its theme made ready; none when that failed.
    pub theme: Option<Theme>,
    /// Its safety coverage; not measured when something else is wrong.
    pub coverage: Option<Coverage>,
    /// What was found.
    pub acc: Acc,
}

/// Loads a book, resolves its vans and runs all checks. Only the disk can fail.
pub fn look(files: &dyn Files) -> Result<Looked, Error> {
    let mut acc = Acc::default();
    let book = load::load(&mut acc, files)?;
    let vans = resolve::resolve(&mut acc, &book);
    check::check(&mut acc, &book, &vans, files.today());
    let theme = theme(&mut acc, &book, &vans);
    let coverage =
        theme.as_ref().filter(|_| !acc.has_errors()).map(|theme| coverage(theme, &book, &vans, files.today()));
    if let Some(coverage) = &coverage {
        let today = files.today();
        safety::check(&mut acc, Guarded { book: &book, vans: &vans, coverage, today });
    }
    Ok(Looked { book, vans, theme, coverage, acc })
}

/// The safety coverage of all vans, in all languages.
fn coverage(theme: &Theme, book: &Book, vans: &[Van], today: Option<Date>) -> Coverage {
    let languages = &book.settings.languages;
    let measured = vans.par_iter().flat_map_iter(|van| {
        languages.iter().map(move |language| coverage::measure(book, van, language, theme.phrases(language), today))
    });
    Coverage { cells: measured.flat_map_iter(|coverage| coverage.cells).collect() }
}

/// Makes the theme ready and tries it on one van, so that a theme that fails is known before anything is written.
fn theme(acc: &mut Acc, book: &Book, vans: &[Van]) -> Option<Theme> {
    let colour = book.settings.colour.as_deref();
    let tried = Theme::new(&book.theme, &book.settings.languages).and_then(|theme| {
        let theme = theme.coloured(&book.theme, colour);
        let telling = vans.iter().find(|van| !van.old_labels.is_empty() || !van.former_keys.is_empty());
        if let (Some(van), false) = (telling.or(vans.first()), acc.has_errors()) {
            guide(&theme, book, van)?;
        }
        front(&theme, book)?;
        Ok(theme)
    });
    if let (Err(message), false) = (&tried, acc.has_found("language-missing")) {
        let found = Diagnostic::new(&rules::THEME_FAILS, None, message.clone());
        acc.add(found.help("look at the template or words that it names"));
    }
    tried.ok()
}

/// All files of one van's guide, in memory. What fails is the theme's, in words.
pub fn guide(theme: &Theme, book: &Book, van: &Van) -> Result<Vec<Artifact>, String> {
    let languages = book.settings.languages.iter();
    let composed = |language| {
        let phrases = theme.phrases(language);
        let mut guide = compose::compose(book, van, language, phrases);
        guide.search = compose::search(book, van, &guide, phrases);
        guide
    };
    let guides: Vec<_> = languages.map(|language| composed(language.as_str())).collect();
    render::render(theme, book, &guides)
}

/// Writes the guides of those vans that `wanted` picks, and the page that takes a key. Nothing is written when the book
/// has errors: `None`.
pub fn assemble(looked: &Looked, out: &Path, wanted: &(dyn Fn(&Van) -> bool + Sync)) -> Result<Option<Receipt>, Error> {
    let Some(theme) = looked.theme.as_ref().filter(|_| !looked.acc.has_errors()) else {
        return Ok(None);
    };
    let front = put_front(out, theme, &looked.book)?;
    let vans: Vec<_> = looked.vans.iter().filter(|van| wanted(van)).collect();
    let inputs = Inputs::new(&looked.book, &write::disk::program());
    let receipts = vans.into_par_iter().map(|van| {
        let made_from = inputs.of(&looked.book, van);
        if let Some(receipt) = stamp::is_made(out, &van.key.value, &made_from) {
            return Ok(receipt);
        }
        let artifacts = guide(theme, &looked.book, van).map_err(broken)?;
        put(out, van, &made_from, &artifacts)
    });
    receipts.try_reduce(Receipt::default, |a, b| Ok(a.and(b))).map(|receipt| Some(receipt.and(front)))
}

/// All files that belong to no van of today: the page that takes a key, and what labels of vans that are no more say.
pub fn front(theme: &Theme, book: &Book) -> Result<Vec<Artifact>, String> {
    let mut out = root(theme, &book.settings)?;
    for van in compose::withdrawn::withdrawn(book) {
        out.extend(render::withdrawn::withdrawn(theme, &book.settings, &van)?);
    }
    Ok(out)
}

/// What the theme cannot lay out, as an error of the world outside.
fn broken(message: String) -> Error {
    Error::new("lay out", "the theme", message)
}

/// Puts in place what belongs to no van of today; of a van that is no more only what its labels say stays.
fn put_front(out: &Path, theme: &Theme, book: &Book) -> Result<Receipt, Error> {
    let artifacts = front(theme, book).map_err(broken)?;
    let mut receipt = write::write(out, &artifacts)?;
    for van in compose::withdrawn::withdrawn(book) {
        receipt.removed += write::prune(out, van.key, &artifacts)?;
    }
    Ok(receipt)
}

/// Puts a van's files in place, with a stamp once they are all there.
fn put(out: &Path, van: &Van, made_from: &str, artifacts: &[Artifact]) -> Result<Receipt, Error> {
    let key = &van.key.value;
    stamp::take_away(out, key)?;
    let receipt = write::write(out, artifacts)?;
    let mut removed = write::prune(out, key, artifacts)?;
    for former in &van.former_keys {
        removed += write::prune(out, &former.value, artifacts)?;
    }
    stamp::put(out, key, made_from, artifacts)?;
    Ok(Receipt { removed, ..receipt })
}
