//! How much of a limit is used: the draw of all burners against what a regulator passes.
//!
//! Formula: draw / rating. Limits: all at full power at once. Source: arithmetic; the rating is on the regulator.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "load-share",
    summary: "How much of what a regulator passes all burners ask for.",
    inputs: &[quantity("draw", "g/h"), quantity("rating", "g/h")],
    gives: Gives::Unit("%"),
    formula: "draw ÷ rating",
    limits: "Counted with all burners at full power at once.",
    source: "arithmetic; the rating is on the regulator",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [draw, rating] = each(inputs);
    not_negative("draw", draw)?;
    above_zero("rating", rating)?;
    Ok(draw / rating * 100.0)
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
                (&[-1.0, 1500.0], "`draw` must not be less than zero"),
                (&[500.0, 0.0], "`rating` must be more than zero"),
            ],
        );
    }
}
