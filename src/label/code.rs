//! QR codes (ISO/IEC 18004). The only file that knows the encoder.

mod mask;

use crate::model::files::book::Correction;
use mask::{Grid, MOST};
use qrcode::bits::{self, Bits};
use qrcode::canvas::{Canvas, MaskPattern};
use qrcode::{Color, EcLevel, QrResult, Version, ec};
use std::sync::OnceLock;

/// The quiet zone around a code, in modules (ISO/IEC 18004).
pub const QUIET: usize = 4;

/// One code: its modules, row by row from the upper left.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Code {
    /// Modules along each side, without the quiet zone: 17 and four for each version.
    pub modules: usize,
    /// How much of it may be lost.
    pub correction: Correction,
    /// Whether each module is dark.
    dark: Vec<bool>,
}

impl Code {
    /// The smallest code of `text` that has at least the level `least`, and of that size the one with the highest level.
    /// `None` when the text is too long for any.
    pub fn new(text: &str, least: Correction) -> Option<Code> {
        let version = bits::encode_auto(text.as_bytes(), level(least)).ok()?.version();
        let (bits, correction) = Correction::ALL
            .iter()
            .rev()
            .filter(|correction| **correction >= least)
            .find_map(|correction| Some((data(text, version, level(*correction)).ok()?, *correction)))?;
        let dark = modules(bits, level(correction)).ok()?;
        Some(Code { modules: usize::try_from(version.width()).ok()?, correction, dark })
    }

    /// The version: 1 to 40.
    pub fn version(&self) -> usize {
        (self.modules - 17) / 4
    }

    /// Modules along each side, with the quiet zone.
    pub fn side(&self) -> usize {
        self.modules + 2 * QUIET
    }

    /// The rows of modules, from the top.
    pub fn rows(&self) -> impl Iterator<Item = &[bool]> {
        self.dark.chunks(self.modules)
    }
}

fn data(text: &str, version: Version, level: EcLevel) -> QrResult<Bits> {
    let mut bits = Bits::new(version);
    bits.push_optimal_data(text.as_bytes())?;
    bits.push_terminator(level)?;
    Ok(bits)
}

/// The modules of a code, under the mask with the least penalty.
fn modules(bits: Bits, level: EcLevel) -> QrResult<Vec<bool>> {
    let version = bits.version();
    let (data, correction) = ec::construct_codewords(&bits.into_bytes(), version, level)?;
    let canvas = canvas(version, level, &data, &correction);
    let side = usize::try_from(version.width()).unwrap_or_default();
    if side > MOST {
        return Ok(dark(canvas.apply_best_mask()));
    }
    // What is not data is the same in all codes of one version and level, and under each mask the data only turn over.
    let frames = FRAMES[side / 4 - 5][level as usize].get_or_init(|| {
        let empty = self::canvas(version, level, &vec![0; data.len()], &vec![0; correction.len()]);
        PATTERNS.iter().map(|pattern| Grid::new(side, &dark(masked(empty.clone(), *pattern)))).collect()
    });
    let data = Grid::new(side, &dark(masked(canvas, PATTERNS[0]))).xor(&frames[0]);
    let best = frames.iter().map(|frame| frame.xor(&data)).min_by_key(Grid::penalty);
    Ok(best.map(|best| best.modules()).unwrap_or_default())
}

/// Under each mask, a code whose data are all nought: for the versions 1 to 11, and each level.
static FRAMES: [[OnceLock<Vec<Grid>>; 4]; 11] = [const { [const { OnceLock::new() }; 4] }; 11];

/// The masks, by their numbers in the standard.
const PATTERNS: [MaskPattern; 8] = [
    MaskPattern::Checkerboard,
    MaskPattern::HorizontalLines,
    MaskPattern::VerticalLines,
    MaskPattern::DiagonalLines,
    MaskPattern::LargeCheckerboard,
    MaskPattern::Fields,
    MaskPattern::Diamonds,
    MaskPattern::Meadow,
];

fn canvas(version: Version, level: EcLevel, data: &[u8], correction: &[u8]) -> Canvas {
    let mut canvas = Canvas::new(version, level);
    canvas.draw_all_functional_patterns();
    canvas.draw_data(data, correction);
    canvas
}

fn masked(mut canvas: Canvas, pattern: MaskPattern) -> Canvas {
    canvas.apply_mask(pattern);
    canvas
}

fn dark(canvas: Canvas) -> Vec<bool> {
    canvas.into_colors().into_iter().map(|colour| colour == Color::Dark).collect()
}

fn level(correction: Correction) -> EcLevel {
    match correction {
        Correction::L => EcLevel::L,
        Correction::M => EcLevel::M,
        Correction::Q => EcLevel::Q,
        Correction::H => EcLevel::H,
    }
}

#[cfg(test)]
use qrcode::QrCode;
#[cfg(test)]
#[path = "code/tests.rs"]
mod tests;
