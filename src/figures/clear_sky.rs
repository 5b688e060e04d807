//! The energy of sunlight on a level square metre under a clear sky, in a day.
//!
//! Formula: (0.75 + 0.00002 × altitude in m) × what arrives above the air: FAO-56 equation 37. Limits: a clear
//! sky all day; clouds leave a third to two thirds of it. Source: FAO Irrigation and Drainage Paper 56 (from
//! memory; its examples 17 and 18 are check values).

use super::limits::within;
use super::{Calculation, FigureError, Gives, Inputs, each, quantity, sun};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "clear-sky",
    summary: "The energy of sunlight on a level square metre under a clear sky, in a day.",
    inputs: &[quantity("latitude", "count"), quantity("day", "count"), quantity("altitude", "m")],
    gives: Gives::Unit("kWh"),
    formula: "(0.75 + 0.00002 × altitude) × sunlight above the air, by latitude and day",
    limits: "For a clear sky all day. Clouds leave much less.",
    source: sun::SOURCE,
    run,
    digits: 4,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [latitude, day, altitude] = each(inputs);
    sun::sound(latitude, day)?;
    within("altitude", altitude, [0.0, 5_000.0], "must be from 0 to 5000 m")?;
    Ok(sun::clear_sky(latitude, day, altitude) / sun::MJ_A_KWH)
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
                (&[91.0, 200.0, 0.0], "`latitude` must be from -66 to 66°, where the sun rises each day"),
                (&[50.0, 200.0, -1.0], "`altitude` must be from 0 to 5000 m"),
            ],
        );
    }
}
