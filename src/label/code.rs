//! QR codes (ISO/IEC 18004). The only file that knows the encoder.

use crate::model::files::book::Correction;
use qrcode::bits::{self, Bits};
use qrcode::{EcLevel, QrCode, QrResult, Version};

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
        let code = QrCode::with_bits(bits, level(correction)).ok()?;
        let modules = code.width();
        let dark = code.into_colors().into_iter().map(|colour| colour == qrcode::Color::Dark).collect();
        Some(Code { modules, correction, dark })
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

fn level(correction: Correction) -> EcLevel {
    match correction {
        Correction::L => EcLevel::L,
        Correction::M => EcLevel::M,
        Correction::Q => EcLevel::Q,
        Correction::H => EcLevel::H,
    }
}

#[cfg(test)]
#[path = "code/tests.rs"]
mod tests;
