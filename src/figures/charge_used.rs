//! What a load takes out of the battery.
//!
//! Formula: charge = power × time / voltage. Limits: a steady load; at 12 V, where a battery in use is really
//! between 12 and 13 V, the sum errs to the safe side. Source: the definitions of power and charge.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "charge-used",
    summary: "What a load takes out of the battery.",
    inputs: &[quantity("power", "W"), quantity("duty", "h"), quantity("voltage", "V")],
    gives: Gives::Unit("Ah"),
    formula: "power × duty ÷ voltage",
    limits: "Counted at a steady power for all of the time.",
    source: "the definitions of power and charge",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [power, duty, voltage] = each(inputs);
    not_negative("power", power)?;
    not_negative("duty", duty)?;
    above_zero("voltage", voltage)?;
    Ok(power * duty / voltage)
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
                (&[-5.0, 6.0, 12.0], "`power` must not be less than zero"),
                (&[5.0, -6.0, 12.0], "`duty` must not be less than zero"),
                (&[5.0, 6.0, 0.0], "`voltage` must be more than zero"),
            ],
        );
    }
}
