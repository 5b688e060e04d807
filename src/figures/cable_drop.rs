//! The voltage that a cable loses at a temperature.
//!
//! Formula: drop = 2 × length × current × resistivity / area; two conductors, length one way. Limits: solid
//! copper; flexible cable may have up to 16 % more resistance, see `cable-drop-most`. Source: `cable.rs`.

use super::limits::{above_zero, not_negative, within};
use super::{Calculation, FigureError, Gives, Inputs, cable, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "cable-drop",
    summary: "The voltage that a cable loses.",
    inputs: &[
        quantity("length", "m"),
        quantity("current", "A"),
        quantity("area", "mm2"),
        quantity("temperature", "°C"),
    ],
    gives: Gives::Unit("V"),
    formula: "2 × length × current × resistivity of copper at that temperature ÷ area",
    limits: "For solid copper. Flexible cable may lose up to 16 % more.",
    source: cable::SOURCE,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [length, current, area, temperature] = each(inputs);
    not_negative("length", length)?;
    not_negative("current", current)?;
    above_zero("area", area)?;
    within("temperature", temperature, [-60.0, 120.0], "must be from -60 to 120 °C")?;
    Ok(2.0 * length * current * cable::resistivity(temperature) / area)
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
                (&[-1.0, 10.0, 2.5, 20.0], "`length` must not be less than zero"),
                (&[5.0, -1.0, 2.5, 20.0], "`current` must not be less than zero"),
                (&[5.0, 10.0, 0.0, 20.0], "`area` must be more than zero"),
                (&[5.0, 10.0, 2.5, 200.0], "`temperature` must be from -60 to 120 °C"),
            ],
        );
    }
}
