//! The most that a flexible cable may lose.
//!
//! Formula: drop = 2 × length × current × resistance of a metre; length one way. Limits: at 20 °C; 4 % more for
//! each 10 °C. Source: the largest resistance of flexible copper cable of IEC 60228, class 5 (`cable.rs`).

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, cable, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "cable-drop-most",
    summary: "The most that a flexible cable may lose.",
    inputs: &[quantity("length", "m"), quantity("current", "A"), quantity("area", "mm2")],
    gives: Gives::Unit("V"),
    formula: "2 × length × current × largest resistance for that area",
    limits: "At 20 °C. A warm cable loses about 4 % more for each 10 °C.",
    source: cable::SOURCE,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [length, current, area] = each(inputs);
    not_negative("length", length)?;
    not_negative("current", current)?;
    above_zero("area", area)?;
    Ok(2.0 * length * current * cable::most(area) / 1000.0)
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
                (&[-1.0, 10.0, 2.5], "`length` must not be less than zero"),
                (&[5.0, -1.0, 2.5], "`current` must not be less than zero"),
                (&[5.0, 10.0, 0.0], "`area` must be more than zero"),
            ],
        );
    }
}
