//! The lowest temperature at which liquid gas still presses hard enough.
//!
//! Formula: the temperature at which the pressure over the mixture (law of Raoult) is the inlet pressure above
//! the air. Limits: the liquid in the cylinder is colder than the air while gas is drawn, so warmer air than
//! this is needed; a mixture gives its propane first, and so asks for more warmth as it empties; air at sea
//! level. Source: the fits of `lpg.rs`; within 0.3 °C of CoolProp 8.0.0 for the pure gases.

use super::limits::within;
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "coldest-air",
    summary: "The lowest temperature at which gas still reaches the regulator.",
    inputs: &[quantity("inlet", "mbar"), lpg::SHARES[0], lpg::SHARES[1], lpg::SHARES[2]],
    gives: Gives::Unit("°C"),
    formula: "the temperature at which the pressure of propane, butane and isobutane, each by its share, is the inlet pressure above the air",
    limits: "The gas is colder than the air while it is drawn. A mixture weakens as it empties.",
    source: lpg::FIT,
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [inlet, propane, butane, isobutane] = each(inputs);
    within("inlet", inlet, [0.0, 10_000.0], "must be from 0 to 10 bar")?;
    let shares = lpg::mixture([propane, butane, isobutane])?;
    Ok(lpg::boils_at(shares, lpg::AIR + inlet / 1000.0))
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
                (&[-1.0, 100.0, 0.0, 0.0], "`inlet` must be from 0 to 10 bar"),
                (&[30.0, 80.0, 30.0, 0.0], "`propane` with `butane` and `isobutane` must come to 100 %"),
                (&[30.0, 110.0, 0.0, 0.0], "`propane` must be from 0 to 100 %"),
                (&[30.0, 100.0, -10.0, 10.0], "`butane` must be from 0 to 100 %"),
            ],
        );
    }
}
