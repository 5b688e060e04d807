//! How long a full battery lasts at a steady current.
//!
//! Formula (Peukert 1897, in the form with rated hours, from memory): time = H × (C / (I × H))^k, with the
//! capacity C that holds for H hours and the exponent k. Limits: a steady current, about 20 °C, a new battery,
//! emptied to the end; k is an average that differs from battery to battery (AGM 1.05 to 1.15, gel 1.10 to
//! 1.25, wet 1.2 to 1.6, lithium about 1.05: two battery pages). A capacity without its hours gives nonsense.

use super::limits::{above_zero, within};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "battery-hours",
    summary: "How many hours a full battery lasts at a steady current.",
    inputs: &[
        quantity("capacity", "Ah"),
        quantity("rated", "h"),
        quantity("current", "A"),
        quantity("exponent", "count"),
    ],
    gives: Gives::Unit("h"),
    formula: "rated × (capacity ÷ (current × rated)) ^ exponent",
    limits: "For a new, full battery at about 20 °C and a steady current. A cold or old one gives less.",
    source: "Peukert 1897, in the form with rated hours, from memory; exponents from two battery pages",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [capacity, rated, current, exponent] = each(inputs);
    above_zero("capacity", capacity)?;
    above_zero("rated", rated)?;
    above_zero("current", current)?;
    within("exponent", exponent, [1.0, 2.0], "must be from 1 to 2")?;
    Ok(rated * (capacity / (current * rated)).powf(exponent))
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
                (&[0.0, 20.0, 5.0, 1.2], "`capacity` must be more than zero"),
                (&[100.0, 0.0, 5.0, 1.2], "`rated` must be more than zero"),
                (&[100.0, 20.0, 0.0, 1.2], "`current` must be more than zero"),
                (&[100.0, 20.0, 5.0, 0.9], "`exponent` must be from 1 to 2"),
            ],
        );
    }
}
