//! Printing: booklet, labels and handover record of each van, to a folder of its own. What did not change is not made again.

use crate::Looked;
use crate::compose::{compose, search};
use crate::error::Error;
use crate::label::printing::{self, Printing};
use crate::model::guide::Guide;
use crate::model::inputs::Inputs;
use crate::model::van::{Place, Van};
use crate::render::paper::{self, Kind, PAPERS, Press};
use crate::render::theme::Theme;
use crate::render::{Artifact, fingerprint_of};
use crate::write::{self, Receipt, ledger, stamp};
use jiff::civil::Date;
use rayon::prelude::*;
use std::path::{Path, PathBuf};
use std::sync::Mutex;

/// What is printed, and how.
#[derive(Debug, Clone)]
pub struct Order {
    /// The kinds of documents.
    pub kinds: Vec<Kind>,
    /// The sizes of booklets: `a5`, `a4`.
    pub papers: Vec<String>,
    /// The first position on the first sheet of labels, from 1, when it is not the book's.
    pub start: Option<u32>,
    /// Where printed labels are remembered; a proof is remembered nowhere.
    pub ledger: Option<Ledger>,
}

/// Where printed labels are remembered.
#[derive(Debug, Clone)]
pub struct Ledger {
    /// The folder of the book.
    pub root: PathBuf,
    /// Today.
    pub on: Date,
}

/// What was printed.
pub struct Printed {
    /// The files.
    pub receipt: Receipt,
    /// Labels that had been printed before: the key, the code of the place, and how often it now is.
    pub again: Vec<(String, String, usize)>,
}

impl Default for Order {
    fn default() -> Self {
        Order { kinds: Kind::ALL.to_vec(), papers: PAPERS.map(String::from).to_vec(), start: None, ledger: None }
    }
}

impl Order {
    /// The documents of one van: a kind, and for booklets the paper.
    pub fn documents(&self) -> Vec<Document<'_>> {
        let of = |kind: Kind| match kind {
            Kind::Booklet => self.papers.iter().map(|paper| Document { kind, paper }).collect(),
            _ => vec![Document { kind, paper: "" }],
        };
        self.kinds.iter().copied().flat_map(of).collect()
    }
}

/// One document of a van, in all languages.
#[derive(Debug, Clone, Copy)]
pub struct Document<'a> {
    kind: Kind,
    paper: &'a str,
}

impl Document<'_> {
    /// `booklet-a5`, `labels`, `record`.
    fn name(&self) -> String {
        let dash = if self.paper.is_empty() { "" } else { "-" };
        format!("{}{dash}{}", self.kind.word(), self.paper)
    }
}

/// Prints what `order` asks of those vans that `wanted` picks, below `out`; `done` is told of each document. Nothing is
/// written when the book has errors: `None`.
pub fn print(
    looked: &Looked,
    out: &Path,
    wanted: &(dyn Fn(&Van) -> bool + Sync),
    order: &Order,
    done: &(dyn Fn() + Sync),
) -> Result<Option<Printed>, Error> {
    let Some(theme) = looked.theme.as_ref().filter(|_| !looked.acc.has_errors()) else {
        return Ok(None);
    };
    let inputs = Inputs::new(&looked.book, &write::disk::program());
    let again = Mutex::default();
    let room = Room { looked, theme, press: Press::new(&looked.book), inputs, out, order, done, again };
    let vans: Vec<_> = looked.vans.iter().filter(|van| wanted(van)).collect();
    let test = room.test_sheet()?;
    let receipts = vans.into_par_iter().map(|van| room.van(van));
    let receipt = receipts.try_reduce(Receipt::default, |a, b| Ok(a.and(b)))?.and(test);
    let mut again = room.again.into_inner().unwrap_or_default();
    again.sort();
    Ok(Some(Printed { receipt, again }))
}

/// Where printing is done.
struct Room<'a> {
    looked: &'a Looked,
    theme: &'a Theme,
    press: Press<'a>,
    inputs: Inputs,
    out: &'a Path,
    order: &'a Order,
    done: &'a (dyn Fn() + Sync),
    again: Mutex<Vec<(String, String, usize)>>,
}

impl<'a> Room<'a> {
    fn van(&self, van: &'a Van) -> Result<Receipt, Error> {
        let made_from = self.inputs.of(&self.looked.book, van);
        let mut receipt = Receipt::default();
        let mut open = Vec::new();
        for document in self.order.documents() {
            let key = format!("{}/{}", van.name, document.name());
            let made_from = format!("{made_from} {:?}", self.order.start.filter(|_| document.kind == Kind::Labels));
            match stamp::is_made(self.out, &key, &made_from) {
                Some(unchanged) => {
                    receipt = receipt.and(unchanged);
                    (self.done)();
                }
                None => open.push((document, key, made_from)),
            }
        }
        if open.is_empty() {
            return Ok(receipt);
        }
        let said = self.said(van)?;
        let made = open.into_par_iter().map(|(document, key, made_from)| {
            let artifacts = said.document(document).map_err(broken)?;
            let receipt = self.put(&key, &made_from, &artifacts)?;
            if document.kind == Kind::Labels && receipt.written > 0 {
                self.remember(van)?;
            }
            (self.done)();
            Ok(receipt)
        });
        made.try_reduce(Receipt::default, |a, b| Ok(a.and(b))).map(|made| receipt.and(made))
    }

    /// Writes the labels of a van, which were printed anew, into the ledger.
    fn remember(&self, van: &Van) -> Result<(), Error> {
        let Some(Ledger { root, on }) = &self.order.ledger else {
            return Ok(());
        };
        let book = &self.looked.book;
        let label = |place: &Place| {
            let sheet = book.settings.sheets.of(place.kind);
            let (_, code) = printing::code(book, van, place)?;
            Printing::new(book, van, place, sheet.module(code.modules), sheet.label)
        };
        let labels: Vec<_> = van.places.iter().filter(|place| place.labelled).filter_map(label).collect();
        let recorded = ledger::record(root, &labels, *on)?;
        if let Ok(mut again) = self.again.lock() {
            again.extend(recorded.again);
        }
        Ok(())
    }

    /// The guides of a van, and the fingerprint that their pages bear.
    fn said(&'a self, van: &'a Van) -> Result<Said<'a>, Error> {
        let book = &self.looked.book;
        let languages = book.settings.languages.iter();
        let composed = |language: &'a String| {
            let phrases = self.theme.phrases(language);
            let mut guide = compose(book, van, language, phrases);
            // The fingerprint stands for the index of search too.
            guide.search = search(book, van, &guide, phrases);
            guide
        };
        let guides: Vec<_> = languages.map(composed).collect();
        let fingerprint = fingerprint_of(self.theme, book, &guides).map_err(broken)?;
        Ok(Said { room: self, van, guides, fingerprint })
    }

    /// A sheet to hold against the paper; it is the same for all vans.
    fn test_sheet(&self) -> Result<Receipt, Error> {
        let book = &self.looked.book;
        let (Some(van), true) = (self.looked.vans.first(), self.order.kinds.contains(&Kind::Labels)) else {
            return Ok(Receipt::default());
        };
        let made_from = self.inputs.of(book, van);
        if let Some(receipt) = stamp::is_made(self.out, TEST_SHEET, &made_from) {
            return Ok(receipt);
        }
        let language = book.settings.language();
        let phrases = self.theme.phrases(language);
        let guide = compose(book, van, language, phrases);
        let bytes = paper::sheet::test_sheet(&self.press, &guide, phrases, &book.settings.sheets).map_err(broken)?;
        self.put(TEST_SHEET, &made_from, &[Artifact { path: format!("{TEST_SHEET}.pdf"), bytes }])
    }

    /// Puts the files of a document in place, with a stamp once they are all there, and takes away what it was before.
    fn put(&self, key: &str, made_from: &str, artifacts: &[Artifact]) -> Result<Receipt, Error> {
        let before = stamp::files(self.out, key);
        stamp::take_away(self.out, key)?;
        let receipt = write::write(self.out, artifacts)?;
        let others = before.into_iter().filter(|path| !artifacts.iter().any(|artifact| artifact.path == *path));
        let others: Vec<_> = others.collect();
        others.iter().try_for_each(|path| write::disk::remove(&self.out.join(path)))?;
        stamp::put(self.out, key, made_from, artifacts)?;
        Ok(Receipt { removed: others.len(), ..receipt })
    }
}

/// The name of the test sheet.
const TEST_SHEET: &str = "test-sheet";

/// A van's guides, ready to be printed.
struct Said<'a> {
    room: &'a Room<'a>,
    van: &'a Van,
    guides: Vec<Guide<'a>>,
    fingerprint: String,
}

impl Said<'_> {
    /// The files of one document: labels once, the others in each language.
    fn document(&self, document: Document) -> Result<Vec<Artifact>, String> {
        let (press, name, van) = (&self.room.press, document.name(), &self.van.name);
        if document.kind == Kind::Labels {
            return self.labels();
        }
        let each = self.guides.iter().map(|guide| {
            let phrases = self.room.theme.phrases(guide.language);
            let bytes = match document.kind {
                Kind::Booklet => paper::booklet(press, guide, phrases, &self.fingerprint, document.paper)?,
                _ => paper::record(press, guide, phrases, &self.fingerprint)?,
            };
            Ok(Artifact { path: format!("{van}/{name}.{}.pdf", guide.language), bytes })
        });
        each.collect()
    }

    fn labels(&self) -> Result<Vec<Artifact>, String> {
        let Some(guide) = self.guides.first() else {
            return Ok(vec![]);
        };
        let (phrases, sheets) = (self.room.theme.phrases(guide.language), &self.room.looked.book.settings.sheets);
        let made = paper::sheet::labels(&self.room.press, guide, phrases, sheets, self.room.order.start)?;
        Ok(made
            .into_iter()
            .map(|(name, bytes)| Artifact { path: format!("{}/{name}.pdf", self.van.name), bytes })
            .collect())
    }
}

fn broken(message: String) -> Error {
    Error::new("lay out", "the paper of the theme", message)
}
