//! The temperature at which a tank is full of liquid to the brim.
//!
//! Formula: the temperature at which the liquid has grown from its share at 15 °C to the whole. Limits: pure
//! gas; the tank itself grows a little too. Above it the pressure tears the tank, which is why the filling stops
//! at 80 %. Source: fits of `lpg.rs`.

use super::limits::within;
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "liquid-full",
    summary: "The temperature at which a tank is full of liquid to the brim.",
    inputs: &[quantity("share", "%"), lpg::GAS],
    gives: Gives::Unit("°C"),
    formula: "the temperature at which the liquid gas that takes the share at 15 °C takes all of the tank",
    limits: "Above this the tank tears. Never fill it beyond 80 %, and keep it far cooler.",
    source: lpg::FIT,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [share, gas] = each(inputs);
    within("share", share, [50.0, 100.0], "must be from 50 to 100 %")?;
    let gas = lpg::gas(gas)?;
    let grown = gas.density(lpg::FILL_TEMPERATURE) * share / 100.0;
    Ok(lpg::halved([-45.0, gas.critical()], |celsius| gas.density(celsius) > grown))
}

#[cfg(test)]
mod tests {
    use super::super::rows::refused;
    use super::*;

    #[test]
    fn inputs_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[(&[40.0, 0.0], "`share` must be from 50 to 100 %"), (&[80.0, 5.0], "`gas` must be one of its words")],
        );
    }
}
