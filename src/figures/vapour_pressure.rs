//! The pressure in a gas cylinder.
//!
//! Formula: the sum of the pressures of the pure gases, log10(p in bar) = A - B / (t + C), each by its share of
//! the molecules in the liquid (law of Raoult). Limits: -45 to 55 °C; gas that is sold has other gases in it,
//! so say "about" (a gas supplier prints 9.0 bar for propane at 20 °C, where pure propane has 8.4); the vapour
//! is richer in propane than the liquid. Source: fits of `lpg.rs`, within 0.23 % of CoolProp from -40 to 50 °C.

use super::limits::within;
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "vapour-pressure",
    summary: "The pressure in a gas cylinder, the air counted in.",
    inputs: &[quantity("temperature", "°C"), lpg::SHARES[0], lpg::SHARES[1], lpg::SHARES[2]],
    gives: Gives::Unit("bar"),
    formula: "the pressures of propane, butane and isobutane at the temperature, each by its share of the liquid",
    limits: "For pure gases by their shares of the molecules; the air counts as 1.013 bar of it.",
    source: lpg::FIT,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [temperature, propane, butane, isobutane] = each(inputs);
    within("temperature", temperature, [-45.0, 55.0], "must be from -45 to 55 °C")?;
    Ok(lpg::pressure(lpg::mixture([propane, butane, isobutane])?, temperature))
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
                (&[60.0, 100.0, 0.0, 0.0], "`temperature` must be from -45 to 55 °C"),
                (&[20.0, 70.0, 31.0, 0.0], "`propane` with `butane` and `isobutane` must come to 100 %"),
                (&[20.0, 0.0, 0.0, 0.0], "`propane` with `butane` and `isobutane` must come to 100 %"),
            ],
        );
    }
}
