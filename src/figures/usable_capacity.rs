//! How much of a battery's capacity an owner may use.
//!
//! Formula: usable capacity = capacity × usable. Limits: as printed for the battery, at its rated
//! hours and temperature. Source: arithmetic. The share is the module's to state.

use super::limits::{above_zero, part};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "usable-capacity",
    summary: "How much of a battery's capacity may be used.",
    inputs: &[quantity("capacity", "Ah"), quantity("usable", "%")],
    gives: Gives::Unit("Ah"),
    formula: "capacity × usable",
    limits: "A cold or old battery holds less, and a high current takes less out of it.",
    source: "arithmetic",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [capacity, usable] = each(inputs);
    above_zero("capacity", capacity)?;
    part("usable", usable)?;
    Ok(capacity * usable / 100.0)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const SOURCE: &str = "days × daily use of the same row: the capacity that was used up";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [capacity Ah, usable %], Ah, relative tolerance, source
        ("bat.autonomy.100.50.35", &[100.0, 50.0], 1.429 * 35.0, 0.005, SOURCE),
        ("bat.autonomy.100.80.35", &[100.0, 80.0], 2.286 * 35.0, 0.005, SOURCE),
        ("bat.autonomy.110.50.40", &[110.0, 50.0], 1.375 * 40.0, 0.005, SOURCE),
    ];

    #[test]
    fn the_usable_capacity_is_what_the_check_values_use_up() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn batteries_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-100.0, 50.0], "`capacity` must be more than zero"),
                (&[100.0, 120.0], "`usable` must be from 0 to 100 %"),
            ],
        );
    }
}
