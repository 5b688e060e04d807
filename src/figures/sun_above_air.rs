//! The energy of sunlight on a level square metre above the air, in a day.
//!
//! Formula: FAO-56 equations 21 to 25. Limits: none that an owner meets; the air takes a quarter and more of it,
//! see `clear-sky`. Source: FAO Irrigation and Drainage Paper 56 (from memory; its example 8 is a check value).

use super::{Calculation, FigureError, Gives, Inputs, each, quantity, sun};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "sun-above-air",
    summary: "The energy of sunlight on a level square metre above the air, in a day.",
    inputs: &[quantity("latitude", "count"), quantity("day", "count")],
    gives: Gives::Unit("kWh"),
    formula: "24 × 60 ÷ π × 0.0820 × distance to the sun × what the latitude and the day give",
    limits: "For each square metre of level ground, above the air.",
    source: sun::SOURCE,
    run,
    digits: 4,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [latitude, day] = each(inputs);
    sun::sound(latitude, day)?;
    Ok(sun::above_air(latitude, day) / sun::MJ_A_KWH)
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
                (&[91.0, 200.0], "`latitude` must be from -66 to 66°, where the sun rises each day"),
                (&[50.0, 0.0], "`day` must be from 1 to 366"),
            ],
        );
    }
}
