//! What an inverter draws from the battery.
//!
//! Formula: current = power / (voltage × efficiency). Limits: the efficiency at that load; an inverter also
//! draws some current with nothing plugged in. Source: arithmetic.

use super::limits::{above_zero, not_negative, part};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "inverter-current",
    summary: "What an inverter draws from the battery.",
    inputs: &[quantity("power", "W"), quantity("voltage", "V"), quantity("efficiency", "%")],
    gives: Gives::Unit("A"),
    formula: "power ÷ (voltage × efficiency)",
    limits: "Motors draw several times this while they start.",
    source: "arithmetic",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [power, voltage, efficiency] = each(inputs);
    not_negative("power", power)?;
    above_zero("voltage", voltage)?;
    part("efficiency", efficiency)?;
    above_zero("efficiency", efficiency)?;
    Ok(power / (voltage * efficiency / 100.0))
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
                (&[-1.0, 12.0, 90.0], "`power` must not be less than zero"),
                (&[1000.0, 0.0, 90.0], "`voltage` must be more than zero"),
                (&[1000.0, 12.0, 0.0], "`efficiency` must be more than zero"),
                (&[1000.0, 12.0, 120.0], "`efficiency` must be from 0 to 100 %"),
            ],
        );
    }
}
