//! The heat that a cylinder takes from its surroundings while gas is drawn.
//!
//! Formula: heat = flow × heat of boiling at 0 °C. Limits: near 0 °C; it is what makes a cylinder frost over.
//! Source: heats of boiling 374.9, 385.3 and 354.3 kJ/kg from CoolProp 8.0.0.

use super::limits::not_negative;
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

/// Grams in a kilogram times seconds in an hour, by which kilojoules become watts.
const TO_WATTS: f64 = 1000.0 / (1000.0 * 3600.0);

pub(super) const CALCULATION: Calculation = Calculation {
    name: "cylinder-chill",
    summary: "The heat that a cylinder takes from the air while gas is drawn.",
    inputs: &[quantity("flow", "g/h"), lpg::GAS],
    gives: Gives::Unit("W"),
    formula: "flow × heat of boiling of the gas",
    limits: "Near 0 °C.",
    source: "heats of boiling at 0 °C from CoolProp 8.0.0",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [flow, gas] = each(inputs);
    not_negative("flow", flow)?;
    Ok(flow * lpg::gas(gas)?.boiling() * TO_WATTS)
}

#[cfg(test)]
mod tests {
    use super::super::rows::refused;
    use super::*;

    #[test]
    fn inputs_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[(&[-1.0, 0.0], "`flow` must not be less than zero"), (&[100.0, 3.0], "`gas` must be one of its words")],
        );
    }
}
