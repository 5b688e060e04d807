//! The sums that owners need: one file a calculation, with its formula, limits and source.
//!
//! Calculations are pure and know no manifest. The caller turns every input into a plain number,
//! in the unit or as the word that [`Input::takes`] asks for, and gets a plain number in the unit
//! that [`Calculation::gives`] says. What cannot be is an error with the name of the input.

pub mod axles;
pub mod bands;
mod battery_days;
mod battery_hours;
mod bleach_dose;
mod cable;
mod cable_area;
mod cable_drop;
mod cable_drop_most;
mod charge_time;
mod charge_used;
mod clear_sky;
mod coldest_air;
mod current;
mod cylinder_chill;
mod daylight;
pub mod dials;
mod draw_limit;
mod element_current;
mod element_power;
mod gas_days;
mod gas_hours;
mod gas_mass;
mod gas_use;
mod heat_up_time;
mod heat_up_time_both;
mod inverter_current;
mod limits;
mod liquid_full;
mod load_share;
mod lpg;
mod minimum_payload;
mod payload;
mod peukert_exponent;
mod share_of;
mod solar_day;
pub(crate) mod sun;
mod sun_above_air;
pub mod together;
mod usable_capacity;
mod vapour_pressure;
mod warm_water_mass;
mod water;
mod water_days;
mod water_growth;
mod water_mass;

#[cfg(test)]
mod random;
#[cfg(test)]
mod rows;
#[cfg(test)]
mod tests;

pub use lpg::{AIR, pressure_constants};
pub use payload::PASSENGER;

use std::fmt;

/// All calculations, by name.
pub static CALCULATIONS: &[Calculation] = &[
    battery_days::CALCULATION,
    battery_hours::CALCULATION,
    bleach_dose::CALCULATION,
    cable_area::CALCULATION,
    cable_drop::CALCULATION,
    cable_drop_most::CALCULATION,
    charge_time::CALCULATION,
    charge_used::CALCULATION,
    clear_sky::CALCULATION,
    coldest_air::CALCULATION,
    current::CALCULATION,
    cylinder_chill::CALCULATION,
    daylight::CALCULATION,
    draw_limit::CALCULATION,
    element_current::CALCULATION,
    element_power::CALCULATION,
    gas_days::CALCULATION,
    gas_hours::CALCULATION,
    gas_mass::CALCULATION,
    gas_use::CALCULATION,
    heat_up_time::CALCULATION,
    heat_up_time_both::CALCULATION,
    inverter_current::CALCULATION,
    liquid_full::CALCULATION,
    load_share::CALCULATION,
    minimum_payload::CALCULATION,
    payload::CALCULATION,
    peukert_exponent::CALCULATION,
    share_of::CALCULATION,
    solar_day::CALCULATION,
    sun_above_air::CALCULATION,
    usable_capacity::CALCULATION,
    vapour_pressure::CALCULATION,
    warm_water_mass::CALCULATION,
    water_days::CALCULATION,
    water_growth::CALCULATION,
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
    /// What the result is multiplied by at both ends of what its supply may be, where that is a band: a result on the
    /// mains at 216.2 and at 253 V.
    pub swing: Option<(f64, f64)>,
}

/// An input of a calculation.
#[derive(Clone, Copy, Debug)]
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
