//! The sums that owners need: one file a calculation, with its formula, limits and source.
//!
//! Calculations are pure and know no manifest. The caller turns every input into a plain number,
//! in the unit or as the word that [`Input::takes`] asks for, and gets a plain number in the unit
//! that [`Calculation::gives`] says. What cannot be is an error with the name of the input.

mod battery_days;
mod bleach_dose;
mod current;
mod gas_hours;
mod gas_use;
mod heat_up_time;
mod limits;
mod lpg;
mod share_of;
mod usable_capacity;
mod water_mass;

#[cfg(test)]
mod rows;
#[cfg(test)]
mod tests;

use std::fmt;

/// All calculations, by name.
pub static CALCULATIONS: &[Calculation] = &[
    battery_days::CALCULATION,
    bleach_dose::CALCULATION,
    current::CALCULATION,
    gas_hours::CALCULATION,
    gas_use::CALCULATION,
    heat_up_time::CALCULATION,
    share_of::CALCULATION,
    usable_capacity::CALCULATION,
    water_mass::CALCULATION,
];

/// One number for each input of a calculation, in the order of its inputs.
pub type Inputs = [f64];

/// A sum that modules may ask for by name.
#[derive(Debug)]
pub struct Calculation {
    /// What authors write: `gas-hours`.
    pub name: &'static str,
    /// What it works out, in one sentence.
    pub summary: &'static str,
    /// What it needs.
    pub inputs: &'static [Input],
    /// The unit of the result.
    pub gives: Gives,
    /// How it is worked out, in the names of its inputs.
    pub formula: &'static str,
    /// What it leaves out, in one or two sentences for readers.
    pub limits: &'static str,
    /// Where formula and constants come from.
    pub source: &'static str,
    /// Works it out; callers use [`Calculation::work_out`].
    pub run: fn(&Inputs) -> Result<f64, FigureError>,
    /// How many significant digits of the result deserve to be shown.
    pub digits: u8,
}

/// An input of a calculation.
#[derive(Debug)]
pub struct Input {
    /// What authors write: `power`.
    pub name: &'static str,
    /// What it may be.
    pub takes: Takes,
}

/// What an input may be, and so what its number means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// A quantity: its amount in the unit of this symbol.
    Unit(&'static str),
    /// One of these words: its position among them, from 0.
    Words(&'static [&'static str]),
    /// Any quantity: its amount in whatever unit it has.
    Any,
}

/// The unit of a result.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gives {
    /// The unit of this symbol.
    Unit(&'static str),
    /// The unit that the input of this name has.
    UnitOf(&'static str),
}

/// An input that cannot be. `Display` says it in one phrase.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FigureError {
    /// The name of the input, or none when the result is at fault.
    pub input: Option<&'static str>,
    /// What is wrong with it.
    pub says: &'static str,
}

/// The calculation of that name.
pub fn find(name: &str) -> Option<&'static Calculation> {
    CALCULATIONS.iter().find(|calculation| calculation.name == name)
}

impl Calculation {
    /// The result, always finite, in the unit that [`Calculation::gives`] says.
    ///
    /// A wrong number of inputs is a bug of the caller, and panics.
    pub fn work_out(&self, inputs: &Inputs) -> Result<f64, FigureError> {
        let result = (self.run)(inputs)?;
        if result.is_finite() {
            return Ok(result);
        }
        Err(FigureError { input: None, says: "the result is not a finite number" })
    }
}

impl Input {
    /// The number that stands for `word`, where this input takes words and it is one of them.
    pub fn word(&self, word: &str) -> Option<f64> {
        let Takes::Words(words) = self.takes else {
            return None;
        };
        words.iter().zip(0_u8..).find(|(known, _)| **known == word).map(|(_, at)| f64::from(at))
    }
}

impl fmt::Display for FigureError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.input {
            Some(input) => write!(f, "`{input}` {}", self.says),
            None => f.write_str(self.says),
        }
    }
}

impl std::error::Error for FigureError {}

const fn quantity(name: &'static str, unit: &'static str) -> Input {
    Input { name, takes: Takes::Unit(unit) }
}

/// The inputs by position. Their number is fixed where a calculation is written and tested for
/// all of them, so a difference is a bug of the caller.
fn each<const N: usize>(inputs: &Inputs) -> [f64; N] {
    inputs.try_into().expect("a calculation gets one number for each of its inputs")
}
