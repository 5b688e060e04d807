//! How many days the water lasts.
//!
//! Formula: days = volume / (use × people). Limits: what one person uses is a habit, not a constant. Source:
//! arithmetic.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "water-days",
    summary: "How many days the water lasts.",
    inputs: &[quantity("volume", "l"), quantity("use", "l/day"), quantity("people", "count")],
    gives: Gives::Unit("days"),
    formula: "volume ÷ (use × people)",
    limits: "Showers need much more than cooking and washing up.",
    source: "arithmetic",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, each_uses, people] = each(inputs);
    not_negative("volume", volume)?;
    above_zero("use", each_uses)?;
    above_zero("people", people)?;
    Ok(volume / (each_uses * people))
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
                (&[-1.0, 10.0, 2.0], "`volume` must not be less than zero"),
                (&[100.0, 0.0, 2.0], "`use` must be more than zero"),
                (&[100.0, 10.0, 0.0], "`people` must be more than zero"),
            ],
        );
    }
}
