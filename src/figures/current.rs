//! The current that a power draws from a voltage.
//!
//! Formula: current = power / voltage. Limits: direct current, or mains appliances that heat; a
//! motor or charger on the mains draws more than this (its power factor is below 1), and what an
//! inverter loses must be in the power already. Source: the definition of electrical power, P = UI.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "current",
    summary: "The current that an appliance draws.",
    inputs: &[quantity("power", "W"), quantity("voltage", "V")],
    gives: Gives::Unit("A"),
    formula: "power ÷ voltage",
    limits: "On the mains, motors and chargers draw more than this for the same power.",
    source: "the definition of electrical power, P = UI",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [power, voltage] = each(inputs);
    not_negative("power", power)?;
    above_zero("voltage", voltage)?;
    Ok(power / voltage)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [power W, voltage V], A, relative tolerance, source
        ("mains.i.125", &[125.0, 230.0], 0.543, 0.005, "I = P/U"),
        ("mains.i.175", &[175.0, 230.0], 0.761, 0.005, "I = P/U"),
        ("mains.i.850", &[850.0, 230.0], 3.696, 0.005, "I = P/U"),
        ("mains.i.1000", &[1000.0, 230.0], 4.348, 0.005, "I = P/U"),
        ("mains.i.2000", &[2000.0, 230.0], 8.696, 0.005, "I = P/U"),
        // The inverter's 90 % are in the power.
        ("bat.inverter.1000", &[1000.0 / 0.9, 12.0], 92.59, 0.005, "arithmetic"),
        // Backwards: the power that a pitch allows draws the current that it allows.
        ("mains.p.3", &[690.0, 230.0], 3.0, 0.0, "P = U I"),
        ("mains.p.5", &[1150.0, 230.0], 5.0, 0.0, "P = U I"),
        ("mains.p.6", &[1380.0, 230.0], 6.0, 0.0, "P = U I"),
        ("mains.p.10", &[2300.0, 230.0], 10.0, 0.0, "P = U I"),
        ("mains.p.13", &[2990.0, 230.0], 13.0, 0.0, "P = U I"),
        ("mains.p.16", &[3680.0, 230.0], 16.0, 0.0, "P = U I"),
    ];

    #[test]
    fn the_current_is_what_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn supplies_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-1.0, 230.0], "`power` must not be less than zero"),
                (&[125.0, 0.0], "`voltage` must be more than zero"),
                (&[125.0, -12.0], "`voltage` must be more than zero"),
                (&[1e9, 1e-320], "the result is not a finite number"),
            ],
        );
    }
}
