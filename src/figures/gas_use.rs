//! How much gas a burner uses.
//!
//! Formula: gas use = power / net heat of the gas. Limits: full power; power by net heating value.
//! Source: heating values in `lpg.rs`; a regulator maker prints about 194 g/h for the two flames
//! of a hob, which is what 2.5 kW comes to.

use super::limits::not_negative;
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

/// Grams in a kilogram.
const GRAMS: f64 = 1000.0;

pub(super) const CALCULATION: Calculation = Calculation {
    name: "gas-use",
    summary: "How much gas an appliance burns in an hour at full power.",
    inputs: &[quantity("power", "kW"), lpg::GAS],
    gives: Gives::Unit("g/h"),
    formula: "power ÷ heat of the gas, with 12.87 kWh/kg for propane and 12.70 kWh/kg for butane",
    limits: "A burner that is turned down, or that a thermostat turns off, uses less.",
    source: lpg::SOURCE,
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [power, gas] = each(inputs);
    not_negative("power", power)?;
    Ok(power / lpg::net_heat(gas)? * GRAMS)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const PROPANE: f64 = 0.0;
    const BUTANE: f64 = 1.0;
    const HOB: &str = "1000 P/LHV; a regulator maker prints about 194 g/h for a two-flame stove";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [power kW, gas], g/h, relative tolerance, source
        ("lpg.g_per_kwh.propane", &[1.0, PROPANE], 77.69, 0.01, "1000/LHV"),
        ("lpg.g_per_kwh.n-butane", &[1.0, BUTANE], 78.75, 0.01, "1000/LHV"),
        ("lpg.hob.2500w", &[2.5, PROPANE], 194.2, 0.02, HOB),
        ("lpg.heater.6kw", &[6.0, PROPANE], 466.1, 0.02, "1000 P/LHV"),
    ];

    #[test]
    fn a_burner_uses_what_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn burners_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-1.0, PROPANE], "`power` must not be less than zero"),
                (&[1.0, 7.0], "`gas` must be one of its words"),
            ],
        );
    }
}
