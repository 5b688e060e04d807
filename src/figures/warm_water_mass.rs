//! What water of a temperature weighs.
//!
//! Formula: volume × density. Limits: 0 to 100 °C, no pressure above the air. Source: density of water after
//! Kell 1975 (from memory); within 0.002 % of IAPWS-IF97, library iapws 1.5.5. Loads are counted with 1 kg/l, see
//! `water-mass`.

use super::limits::{liquid_water, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity, water};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "warm-water-mass",
    summary: "What water of a temperature weighs.",
    inputs: &[quantity("volume", "l"), quantity("temperature", "°C")],
    gives: Gives::Unit("kg"),
    formula: "volume × density of water at the temperature",
    limits: "For fresh water without air in it.",
    source: "density of water after Kell 1975, from memory; agrees with IAPWS-IF97, library iapws 1.5.5",
    run,
    digits: 4,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, temperature] = each(inputs);
    not_negative("volume", volume)?;
    liquid_water("temperature", temperature)?;
    Ok(volume * water::density(temperature))
}

#[cfg(test)]
mod tests {
    use super::super::rows::refused;
    use super::*;

    #[test]
    fn inputs_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-1.0, 15.0], "`volume` must not be less than zero"),
                (&[10.0, -1.0], "`temperature` must be from 0 to 100 °C, where water is liquid"),
            ],
        );
    }
}
