//! How many days a cylinder or tank lasts.
//!
//! Formula: days = mass × net heat of the gas / (power × duty). Limits: as for `gas-hours`; the hours a day are
//! the owner's to judge. Source: heating values in `lpg.rs`.

use super::limits::{above_zero, not_negative, within};
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "gas-days",
    summary: "How many days a cylinder or tank of gas lasts.",
    inputs: &[quantity("mass", "kg"), lpg::GAS, quantity("power", "kW"), quantity("duty", "h")],
    gives: Gives::Unit("days"),
    formula: "mass × heat of the gas ÷ (power × duty)",
    limits: "Cold weather multiplies what a heater burns. In frost, butane stays in the cylinder.",
    source: lpg::SOURCE,
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [mass, gas, power, duty] = each(inputs);
    not_negative("mass", mass)?;
    above_zero("power", power)?;
    above_zero("duty", duty)?;
    within("duty", duty, [0.0, 24.0], "must not be more than 24 h a day")?;
    Ok(mass * lpg::net_heat(gas)? / (power * duty))
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
                (&[-1.0, 0.0, 2.0, 4.0], "`mass` must not be less than zero"),
                (&[6.0, 0.0, 0.0, 4.0], "`power` must be more than zero"),
                (&[6.0, 0.0, 2.0, 0.0], "`duty` must be more than zero"),
                (&[6.0, 0.0, 2.0, 25.0], "`duty` must not be more than 24 h a day"),
            ],
        );
    }
}
