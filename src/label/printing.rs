//! A label that is printed, for the ledger.

use super::address::address;
use super::code::Code;
use super::{Asked, Spot};
use crate::model::book::Book;
use crate::model::files::book::Correction;
use crate::model::files::vehicle::{PlaceKind, Side};
use crate::model::van::{Place, Van};

/// A label that is printed now.
#[derive(Debug, Clone, PartialEq)]
pub struct Printing {
    /// The key of the van.
    pub key: String,
    /// The code of the place.
    pub code: String,
    /// The van: `wenlow-v2/dune`.
    pub van: String,
    /// What the place is called, in the book's first language.
    pub name: String,
    /// What the place is.
    pub kind: PlaceKind,
    /// Where the place is.
    pub side: Side,
    /// The address that the code carries.
    pub address: String,
    /// Error-correction level of the code.
    pub correction: Correction,
    /// The side of a module, in mm.
    pub module: f64,
    /// Width and height of the label, in mm.
    pub size: [f64; 2],
}

impl Printing {
    /// The label of `place`, printed on a label of `size` (width and height, in mm) with modules of `module` mm.
    /// `None` when the address is too long for any code.
    pub fn new(book: &Book, van: &Van, place: &Place, module: f64, size: [f64; 2]) -> Option<Printing> {
        let (address, code) = code(book, van, place)?;
        Some(Printing {
            key: van.key.value.clone(),
            code: place.code.value.0.clone(),
            van: van.name.clone(),
            name: place.name.text(book.settings.language()).to_string(),
            kind: place.kind,
            side: place.side,
            address,
            correction: code.correction,
            module,
            size,
        })
    }

    /// The page that answers, below the published folder.
    pub fn target(&self) -> String {
        target(&self.key, &self.code)
    }
}

/// The page that answers a label, below the published folder.
pub fn target(key: &str, code: &str) -> String {
    format!("{key}/{code}/index.html")
}

/// The address of the label of `place`, and its code as the book asks for it; `None` when the address is too long.
pub fn code(book: &Book, van: &Van, place: &Place) -> Option<(String, Code)> {
    let address = address(&book.settings.address, &van.key.value, &place.code.value.0);
    let code = Asked::of(book).code(&address, Spot { kind: place.kind, side: place.side })?;
    Some((address, code))
}
