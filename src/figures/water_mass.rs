//! What water in a tank weighs.
//!
//! Formula: mass = volume × 1 kg/l. Limits: fresh or waste water; the round density is too heavy by
//! less than 0.2 % between 10 and 20 °C (IAPWS-IF97, library iapws 1.5.5), which is the safe side
//! when loading. Source: common practice for loads.

use super::limits::not_negative;
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

/// Kilograms in a litre, as loads are counted.
const DENSITY: f64 = 1.0;

pub(super) const CALCULATION: Calculation = Calculation {
    name: "water-mass",
    summary: "What the water in a tank weighs.",
    inputs: &[quantity("volume", "l")],
    gives: Gives::Unit("kg"),
    formula: "volume × 1 kg/l",
    limits: "The tank itself is not counted.",
    source: "common practice for loads; within 0.2 % of IAPWS-IF97 from 10 to 20 °C",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume] = each(inputs);
    not_negative("volume", volume)?;
    Ok(volume * DENSITY)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const IF97: &str = "iapws 1.5.5, IAPWS-IF97";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [volume l], kg, relative tolerance, source
        ("water.rho.10", &[1000.0], 999.7, 0.0005, IF97),
        // The rows' own 0.05 % is for densities; the round one keeps to the 0.2 % stated above.
        ("water.rho.15", &[1000.0], 999.1, 0.002, IF97),
        ("water.rho.20", &[1000.0], 998.21, 0.002, IF97),
    ];

    #[test]
    fn water_weighs_what_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn water_never_weighs_less_than_it_does() {
        for (id, volume, kilograms, ..) in ROWS {
            assert!(CALCULATION.work_out(volume).unwrap() >= *kilograms, "{id}");
        }
    }

    #[test]
    fn tanks_that_cannot_be_are_refused() {
        refused(&CALCULATION, &[(&[-1.0], "`volume` must not be less than zero")]);
    }
}
