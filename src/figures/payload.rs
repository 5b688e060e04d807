//! What is left for luggage.
//!
//! Formula: maximum - running order - options - 75 kg for each passenger. Limits: the driver (75 kg) and the
//! fuel are in the mass in running order; whether water and gas are is for the maker to say; printed masses may
//! differ by 5 %, so weigh the loaded vehicle. Source: Regulation (EU) 1230/2012, Articles 2(4) to 2(7) and
//! Annex I Part A 2.6.2.1, now in (EU) 2021/535.

use super::limits::{above_zero, at_least, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

/// A passenger, in kg.
pub const PASSENGER: f64 = 75.0;

pub(super) const CALCULATION: Calculation = Calculation {
    name: "payload",
    summary: "What is left for luggage.",
    inputs: &[
        quantity("maximum", "kg"),
        quantity("running-order", "kg"),
        quantity("options", "kg"),
        quantity("passengers", "count"),
    ],
    gives: Gives::Unit("kg"),
    formula: "maximum − running-order − options − 75 kg × passengers",
    limits: "Printed masses may be 5 % out. Weigh the loaded vehicle.",
    source: "Regulation (EU) 1230/2012, Article 2 and Annex I Part A 2.6.2.1, now in (EU) 2021/535",
    run,
    digits: 4,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [maximum, running_order, options, passengers] = each(inputs);
    above_zero("running-order", running_order)?;
    not_negative("options", options)?;
    not_negative("passengers", passengers)?;
    let used = running_order + options + PASSENGER * passengers;
    at_least("maximum", maximum, used, "must not be less than what is on board already")?;
    Ok(maximum - used)
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
                (&[3500.0, 0.0, 0.0, 1.0], "`running-order` must be more than zero"),
                (&[3500.0, 2900.0, -1.0, 1.0], "`options` must not be less than zero"),
                (&[3500.0, 2900.0, 0.0, -1.0], "`passengers` must not be less than zero"),
                (&[3500.0, 3450.0, 0.0, 1.0], "`maximum` must not be less than what is on board already"),
            ],
        );
    }
}
