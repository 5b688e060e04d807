//! The smallest cable for a drop in voltage.
//!
//! Formula: area = 2 × length × current × resistivity / drop; length one way. Limits: solid copper at 20 °C;
//! take the next size up. It says nothing about how warm the cable becomes: the fuse must fit the cable too.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, cable, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "cable-area",
    summary: "The smallest cable for a drop in voltage.",
    inputs: &[quantity("length", "m"), quantity("current", "A"), quantity("drop", "V")],
    gives: Gives::Unit("mm2"),
    formula: "2 × length × current × resistivity of copper ÷ drop",
    limits: "Take the next size up. The fuse must protect that cable.",
    source: cable::SOURCE,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [length, current, drop] = each(inputs);
    not_negative("length", length)?;
    not_negative("current", current)?;
    above_zero("drop", drop)?;
    Ok(2.0 * length * current * cable::resistivity(20.0) / drop)
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
                (&[-1.0, 10.0, 0.3], "`length` must not be less than zero"),
                (&[5.0, -1.0, 0.3], "`current` must not be less than zero"),
                (&[5.0, 10.0, 0.0], "`drop` must be more than zero"),
            ],
        );
    }
}
