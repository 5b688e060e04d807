//! Labels: what the code at a place says, how much of it may be lost, and how large it must be. It touches no disk.

pub mod address;
pub mod code;
pub mod draw;
pub mod printing;
pub mod size;

use crate::model::book::Book;
use crate::model::files::book::Correction;
use crate::model::files::vehicle::{PlaceKind, Side};
use code::Code;

/// Where a label is stuck.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Spot {
    /// What the place is.
    pub kind: PlaceKind,
    /// The side of the vehicle that it is on.
    pub side: Side,
}

impl Spot {
    /// Whether rain, road dirt, spilt water or chemicals reach a label here.
    pub fn is_wet(self) -> bool {
        let dirty = matches!(self.kind, PlaceKind::Cap | PlaceKind::Tap | PlaceKind::Inlet | PlaceKind::Vent);
        dirty || self.side != Side::Inside
    }

    /// Whether a label here is small, since a phone comes close: beside a switch, gauge, tap or alarm.
    pub fn is_near(self) -> bool {
        matches!(self.kind, PlaceKind::Panel | PlaceKind::Control | PlaceKind::Tap | PlaceKind::Alarm)
    }
}

/// What a book asks of its labels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    /// Error-correction level in dry places.
    pub correction: Correction,
    /// Error-correction level in wet and dirty places.
    pub wet_correction: Correction,
    /// How far a phone is held from a label, in mm.
    pub scan_distance: f64,
    /// Whether codes are wanted as PNG too.
    pub png: bool,
}

impl Asked {
    /// What `book` asks, with defaults for what it does not say: level Q as the rule, H where it is wet or dirty. With
    /// simulated damage, two decoders read at least nine labels of the demo in ten at level Q through a patch of 10 % of
    /// the code, and at level H nearly all through one of 15 % (`tests/labels/decode.py`).
    pub fn of(book: &Book) -> Asked {
        let labels = book.file.as_ref().and_then(|(_, file)| file.labels.as_ref());
        let distance = labels.and_then(|labels| labels.scan_distance.as_ref()).map(|distance| distance.value);
        Asked {
            correction: labels.and_then(|labels| labels.correction).unwrap_or(Correction::Q),
            wet_correction: labels.and_then(|labels| labels.wet_correction).unwrap_or(Correction::H),
            scan_distance: distance.unwrap_or(size::SCAN_DISTANCE),
            png: labels.is_some_and(|labels| labels.png),
        }
    }

    /// The least error-correction level of a label at `spot`.
    pub fn least(&self, spot: Spot) -> Correction {
        if spot.is_wet() { self.wet_correction } else { self.correction }
    }

    /// How far a phone is held from a label at `spot`, in mm.
    pub fn distance(&self, spot: Spot) -> f64 {
        if spot.is_near() { self.scan_distance * size::NEAR } else { self.scan_distance }
    }

    /// The code of `address` at `spot`; `None` when the address is too long for any code.
    pub fn code(&self, address: &str, spot: Spot) -> Option<Code> {
        Code::new(address, self.least(spot))
    }
}
