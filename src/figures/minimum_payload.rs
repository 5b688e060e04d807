//! The least payload that a motor caravan must have.
//!
//! Formula: 10 × (people + length), with the length in metres and the driver among the people. Limits: motor
//! caravans; it is a rule for makers, not a promise of what is left in one vehicle. Source: Regulation (EU)
//! 1230/2012, Annex I Part A 2.6.4.1.2, now in (EU) 2021/535.

use super::limits::{above_zero, at_least};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "minimum-payload",
    summary: "The least payload that a motor caravan must have.",
    inputs: &[quantity("people", "count"), quantity("length", "m")],
    gives: Gives::Unit("kg"),
    formula: "10 × (people + length), the driver among the people",
    limits: "A rule for the makers of motor caravans. It is no promise of what is left in one vehicle.",
    source: "Regulation (EU) 1230/2012, Annex I Part A 2.6.4.1.2, now in (EU) 2021/535",
    run,
    digits: 4,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [people, length] = each(inputs);
    at_least("people", people, 1.0, "must be one or more")?;
    above_zero("length", length)?;
    Ok(10.0 * (people + length))
}

#[cfg(test)]
mod tests {
    use super::super::rows::refused;
    use super::*;

    #[test]
    fn inputs_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[(&[0.0, 6.0], "`people` must be one or more"), (&[2.0, 0.0], "`length` must be more than zero")],
        );
    }
}
