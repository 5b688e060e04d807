//! How long a heater takes on gas and mains together.
//!
//! Formula: as for `heat-up-time`, with both powers. Limits: both work at full power at once, which some heaters
//! do not allow. Source: as for `heat-up-time`.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "heat-up-time-both",
    summary: "How long it takes to heat a tank of water on gas and mains together.",
    inputs: &[
        quantity("volume", "l"),
        quantity("from", "°C"),
        quantity("to", "°C"),
        quantity("gas", "kW"),
        quantity("mains", "kW"),
    ],
    gives: Gives::Unit("min"),
    formula: "volume × 4.186 kJ/(l·K) × (to − from) ÷ (gas + mains)",
    limits: "The tank and the air around it take heat too, so it takes longer than this.",
    source: "physics of water; within 0.4 % of IAPWS-IF97, library iapws 1.5.5",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, from, to, gas, mains] = each(inputs);
    not_negative("gas", gas)?;
    not_negative("mains", mains)?;
    above_zero("gas", gas + mains)?;
    super::heat_up_time::CALCULATION.work_out(&[volume, from, to, gas + mains])
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
                (&[10.0, 15.0, 60.0, -1.0, 2.0], "`gas` must not be less than zero"),
                (&[10.0, 15.0, 60.0, 1.0, -2.0], "`mains` must not be less than zero"),
                (&[10.0, 15.0, 60.0, 0.0, 0.0], "`gas` must be more than zero"),
                (&[10.0, 60.0, 15.0, 1.0, 1.0], "`to` must not be colder than `from`"),
            ],
        );
    }
}
