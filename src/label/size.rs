//! How large a label must be for a phone to read it. All lengths are in mm.
//!
//! The standard for QR codes (ISO/IEC 18004) gives no scan distance. That a code read from 300 mm is 30 mm wide (ten to
//! one, without its quiet zone) is practice of the print trade, as are the least modules: guides to printing codes say
//! 0.4, 0.5 or 0.75 mm.

use super::code::{Code, QUIET};
use super::{Asked, Spot};

/// How far a phone is held from a label when the book does not say.
pub const SCAN_DISTANCE: f64 = 300.0;

/// The distances that a book may ask for: nearer a phone does not focus, farther no label of a van is that large.
pub const DISTANCES: std::ops::RangeInclusive<f64> = 80.0..=2000.0;

/// What of the scan distance is left where a phone comes close.
pub const NEAR: f64 = 0.4;

/// From how many times its width a code is read: trade practice, not the standard.
const TEN_TO_ONE: f64 = 10.0;

/// Between the edge of a label and its code: sheets run through a printer a little askew.
pub const MARGIN: f64 = 1.5;

/// How large a printed code is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    /// The side of a module.
    pub module: f64,
    /// The side of the code without its quiet zone.
    pub symbol: f64,
    /// The side of the code with its quiet zone.
    pub side: f64,
    /// From how far it is read, by the trade's ten to one.
    pub reads_from: f64,
}

impl Size {
    /// The size of a code with so many modules along each side, at `module` mm each.
    pub fn new(modules: usize, module: f64) -> Size {
        let symbol = module * modules as f64;
        Size { module, symbol, side: module * (modules + 2 * QUIET) as f64, reads_from: TEN_TO_ONE * symbol }
    }

    /// The size that the book's scan distance asks for at `spot`, and never below the least module.
    pub fn wanted(asked: &Asked, spot: Spot, code: &Code) -> Size {
        let module = asked.distance(spot) / TEN_TO_ONE / code.modules as f64;
        Size::new(code.modules, module.max(least_module(spot)))
    }

    /// The size of a code that fills a square of `side`.
    pub fn filling(code: &Code, side: f64) -> Size {
        Size::new(code.modules, side / code.side() as f64)
    }
}

/// The least module that is scanned for sure: 0.4 mm on a clean label, 0.5 mm on one that gets wet and dirty.
pub fn least_module(spot: Spot) -> f64 {
    if spot.is_wet() { 0.5 } else { 0.4 }
}

/// The side of the square that a label of `width` and `height` has for its code: half of the width at most, since the
/// name and the typed address stand beside it.
pub fn room(width: f64, height: f64) -> f64 {
    (height - 2.0 * MARGIN).min(width / 2.0 - MARGIN)
}

/// The width and height that a label needs for a code whose side is `side`, rounded up to a tenth.
pub fn label_for(side: f64) -> [f64; 2] {
    let up = |length: f64| (length * 10.0 - 1e-6).ceil() / 10.0;
    [up((side + MARGIN) * 2.0), up(side + 2.0 * MARGIN)]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::files::book::Correction;
    use crate::model::files::vehicle::{PlaceKind, Side};

    const INSIDE: Spot = Spot { kind: PlaceKind::Locker, side: Side::Inside };
    const ASKED: Asked =
        Asked { correction: Correction::Q, wet_correction: Correction::H, scan_distance: 300.0, png: false };

    #[test]
    fn a_code_read_from_300_mm_is_30_mm_wide() {
        let code = ASKED.code("HTTPS://GUIDES.EXAMPLE/M7QK3WZD/G1/", INSIDE).unwrap();
        let size = Size::wanted(&ASKED, INSIDE, &code);
        assert!((size.symbol - 30.0).abs() < 1e-9 && (size.reads_from - 300.0).abs() < 1e-9);
        // A guide to printing codes gives 1.03 mm for the module of a 30 mm code of version 3.
        assert!((size.module - 1.0345).abs() < 1e-4, "{}", size.module);
        // The same code in 30 mm with its quiet zone: 0.81 mm.
        assert!((Size::filling(&code, 30.0).module - 0.81).abs() < 0.005);
    }

    #[test]
    fn modules_never_fall_below_what_is_scanned() {
        for spot in [INSIDE, Spot { kind: PlaceKind::Cap, side: Side::Offside }] {
            let code = ASKED.code(&"A".repeat(300), spot).unwrap();
            let asked = Asked { scan_distance: 80.0, ..ASKED };
            assert_eq!(Size::wanted(&asked, spot, &code).module, least_module(spot));
        }
    }

    #[test]
    fn the_label_that_would_do_has_the_room() {
        for tenths in 50..500 {
            let side = f64::from(tenths) / 10.0;
            let [width, height] = label_for(side);
            assert!(room(width, height) >= side - 1e-6 && room(width - 0.2, height) < side, "{side}");
        }
    }
}
