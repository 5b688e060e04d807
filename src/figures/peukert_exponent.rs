//! The exponent of a battery, from two times that it lasted.
//!
//! Formula: k = |ln t2 - ln t1| / |ln I1 - ln I2|. Limits: two steady currents, the same battery at the same
//! temperature. Source: a battery monitor's manual, with an example of 20 h at 5 A and 3 h at 25 A.

use super::limits::above_zero;
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "peukert-exponent",
    summary: "The exponent of a battery, from two times that it lasted.",
    inputs: &[
        quantity("first-time", "h"),
        quantity("first-current", "A"),
        quantity("second-time", "h"),
        quantity("second-current", "A"),
    ],
    gives: Gives::Unit("count"),
    formula: "|ln second-time − ln first-time| ÷ |ln first-current − ln second-current|",
    limits: "For one battery, tried twice at the same temperature.",
    source: "a battery monitor’s manual",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [first_time, first_current, second_time, second_current] = each(inputs);
    above_zero("first-time", first_time)?;
    above_zero("first-current", first_current)?;
    above_zero("second-time", second_time)?;
    above_zero("second-current", second_current)?;
    Ok((second_time / first_time).ln().abs() / (first_current / second_current).ln().abs())
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
                (&[0.0, 5.0, 3.0, 25.0], "`first-time` must be more than zero"),
                (&[20.0, 0.0, 3.0, 25.0], "`first-current` must be more than zero"),
                (&[20.0, 5.0, -3.0, 25.0], "`second-time` must be more than zero"),
                (&[20.0, 5.0, 3.0, 0.0], "`second-current` must be more than zero"),
                (&[20.0, 5.0, 3.0, 5.0], "the result is not a finite number"),
            ],
        );
    }
}
