//! What the liquid gas in a tank weighs.
//!
//! Formula: mass = volume × share × density of the liquid at the temperature. Limits: pure gas, -45 to 60 °C;
//! the vapour above the liquid is not counted. A tank is never filled beyond 80 % of its volume at 15 °C.
//! Source: fits of `lpg.rs`, within 0.012 % of CoolProp 8.0.0.

use super::limits::{not_negative, part, within};
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "gas-mass",
    summary: "What the liquid gas in a tank weighs.",
    inputs: &[quantity("volume", "l"), quantity("share", "%"), lpg::GAS, quantity("temperature", "°C")],
    gives: Gives::Unit("kg"),
    formula: "volume × share × density of the gas at the temperature",
    limits: "The vapour above the liquid is not counted.",
    source: lpg::FIT,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, share, gas, temperature] = each(inputs);
    not_negative("volume", volume)?;
    part("share", share)?;
    within("temperature", temperature, [-45.0, 60.0], "must be from -45 to 60 °C")?;
    Ok(volume * share / 100.0 * lpg::gas(gas)?.density(temperature))
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
                (&[-1.0, 80.0, 0.0, 15.0], "`volume` must not be less than zero"),
                (&[20.0, 101.0, 0.0, 15.0], "`share` must be from 0 to 100 %"),
                (&[20.0, 80.0, 3.0, 15.0], "`gas` must be one of its words"),
                (&[20.0, 80.0, 0.0, 90.0], "`temperature` must be from -45 to 60 °C"),
            ],
        );
    }
}
