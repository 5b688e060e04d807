//! How many days a charged battery lasts.
//!
//! Formula: days = capacity × usable / daily use. Limits: nothing charges it meanwhile; cold, age
//! and high currents, which take capacity away, are not counted. Source: arithmetic. How much of a
//! battery is usable is a convention that the module states, not this file.

use super::limits::{above_zero, part};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "battery-days",
    summary: "How many days a full battery lasts when nothing charges it.",
    inputs: &[quantity("capacity", "Ah"), quantity("usable", "%"), quantity("daily", "Ah")],
    gives: Gives::Unit("days"),
    formula: "capacity × usable ÷ daily",
    limits: "A cold or old battery holds less, and a high current takes less out of it.",
    source: "arithmetic",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [capacity, usable, daily] = each(inputs);
    above_zero("capacity", capacity)?;
    part("usable", usable)?;
    above_zero("daily", daily)?;
    Ok(capacity * usable / 100.0 / daily)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const SOURCE: &str = "arithmetic; the usable share, 50 % for lead and 80 % for LiFePO4, is a \
                          convention from memory";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [capacity Ah, usable %, daily Ah], days, relative tolerance, source
        ("bat.autonomy.100.50.35", &[100.0, 50.0, 35.0], 1.429, 0.005, SOURCE),
        ("bat.autonomy.100.80.35", &[100.0, 80.0, 35.0], 2.286, 0.005, SOURCE),
        ("bat.autonomy.110.50.40", &[110.0, 50.0, 40.0], 1.375, 0.005, SOURCE),
    ];

    #[test]
    fn a_battery_lasts_as_long_as_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn batteries_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[0.0, 50.0, 35.0], "`capacity` must be more than zero"),
                (&[100.0, 101.0, 35.0], "`usable` must be from 0 to 100 %"),
                (&[100.0, -1.0, 35.0], "`usable` must be from 0 to 100 %"),
                (&[100.0, 50.0, 0.0], "`daily` must be more than zero"),
            ],
        );
    }
}
