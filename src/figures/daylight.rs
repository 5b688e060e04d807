//! How long the sun is up.
//!
//! Formula: 24 / π × the sunset hour angle: FAO-56 equation 34. Limits: level ground, no mountains. Source: FAO
//! Irrigation and Drainage Paper 56 (from memory; its example 9 is a check value).

use super::{Calculation, FigureError, Gives, Inputs, each, quantity, sun};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "daylight",
    summary: "How long the sun is up.",
    inputs: &[quantity("latitude", "count"), quantity("day", "count")],
    gives: Gives::Unit("h"),
    formula: "24 ÷ π × the angle at which the sun sets, by latitude and day",
    limits: "For level ground without hills or trees.",
    source: sun::SOURCE,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [latitude, day] = each(inputs);
    sun::sound(latitude, day)?;
    Ok(sun::daylight(latitude, day))
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
                (&[70.0, 200.0], "`latitude` must be from -66 to 66°, where the sun rises each day"),
                (&[50.0, 367.0], "`day` must be from 1 to 366"),
            ],
        );
    }
}
