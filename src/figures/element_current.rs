//! The current that a heating element draws from the mains.
//!
//! Formula: current = power / 230 V. Limits: an element that only heats, marked for 230 V; a heater keeps its
//! resistance, so that the current grows with the voltage: from 0.94 of this at 216.2 V to 1.1 times at 253 V
//! (ESQCR 2002: 230 V +10 -6 %). Source: the definition of electrical power, and the law of Ohm.

use super::limits::not_negative;
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

/// The voltage that elements are marked for.
const NOMINAL: f64 = 230.0;

pub(super) const CALCULATION: Calculation = Calculation {
    name: "element-current",
    summary: "The current that a heating element draws from the mains.",
    inputs: &[quantity("power", "W")],
    gives: Gives::Unit("A"),
    formula: "power ÷ 230 V",
    limits: "At 230 V. It is less at a low voltage, and more at a high one.",
    source: "the definition of electrical power; the band of voltage of ESQCR 2002: 230 V +10 % −6 %",
    run,
    digits: 3,
    swing: Some((216.2 / 230.0, 253.0 / 230.0)),
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [power] = each(inputs);
    not_negative("power", power)?;
    Ok(power / NOMINAL)
}

#[cfg(test)]
mod tests {
    use super::super::rows::refused;
    use super::*;

    #[test]
    fn inputs_that_cannot_be_are_refused() {
        refused(&CALCULATION, &[(&[-1.0], "`power` must not be less than zero")]);
    }
}
