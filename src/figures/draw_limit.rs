//! How much gas a cylinder gives before it is too cold.
//!
//! Formula: a table by the size of the cylinder, from memory of a German gas-trade table and not confirmed:
//! 5 kg gives 0.2, 0.5 and 1.0 kg/h for long, periodic and short use, 11 kg gives 0.3, 0.6 and 1.5. Limits: for
//! a size between the two the smaller one counts, as for all sizes from 5 kg; nothing is known below.

use super::limits::{at_least, word};
use super::{Calculation, FigureError, Gives, Input, Inputs, Takes, each, quantity};

/// How long at a time gas is drawn.
const USES: &[&str] = &["long", "periodic", "short"];

/// The least size of cylinder in kg, and what it gives in kg/h for each of [`USES`].
const TABLE: [(f64, [f64; 3]); 2] = [(5.0, [0.2, 0.5, 1.0]), (11.0, [0.3, 0.6, 1.5])];

pub(super) const CALCULATION: Calculation = Calculation {
    name: "draw-limit",
    summary: "How much gas a cylinder gives in an hour before it is too cold.",
    inputs: &[quantity("cylinder", "kg"), Input { name: "use", takes: Takes::Words(USES) }],
    gives: Gives::Unit("kg/h"),
    formula: "a table by the size of the cylinder and the use of it",
    limits: "In frost a cylinder gives less. Between two sizes the smaller one counts.",
    source: "a German gas-trade table, from memory, not confirmed",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [cylinder, kind] = each(inputs);
    at_least("cylinder", cylinder, TABLE[0].0, "must be 5 kg or more, as nothing is known of smaller ones")?;
    let kind = word("use", kind, USES)?;
    let row = TABLE.iter().rev().find(|(size, _)| cylinder >= *size);
    Ok(row.unwrap_or(&TABLE[0]).1[kind])
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
                (&[4.9, 0.0], "`cylinder` must be 5 kg or more, as nothing is known of smaller ones"),
                (&[6.0, 3.0], "`use` must be one of its words"),
            ],
        );
    }
}
