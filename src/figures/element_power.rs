//! The power of a heating element at another voltage than it is marked for.
//!
//! Formula: power × (voltage / rated)². Limits: an element that only heats; its resistance is taken to stay the
//! same. Source: the law of Ohm.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "element-power",
    summary: "The power of a heating element at another voltage.",
    inputs: &[quantity("power", "W"), quantity("rated", "V"), quantity("voltage", "V")],
    gives: Gives::Unit("W"),
    formula: "power × (voltage ÷ rated)²",
    limits: "For elements that only heat.",
    source: "the law of Ohm",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [power, rated, voltage] = each(inputs);
    not_negative("power", power)?;
    above_zero("rated", rated)?;
    above_zero("voltage", voltage)?;
    Ok(power * (voltage / rated).powi(2))
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
                (&[-1.0, 230.0, 230.0], "`power` must not be less than zero"),
                (&[1000.0, 0.0, 230.0], "`rated` must be more than zero"),
                (&[1000.0, 230.0, 0.0], "`voltage` must be more than zero"),
            ],
        );
    }
}
