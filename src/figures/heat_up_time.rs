//! How long a heater takes to warm water.
//!
//! Formula: time = volume × 4.186 kJ/(l K) × (to - from) / power. Limits: liquid water; the full
//! power goes into the water, so losses make it longer. The constant keeps within 0.4 % of
//! IAPWS-IF97 (library iapws 1.5.5) for the volume measured cold.

use super::limits::{above_zero, at_least, liquid_water, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

/// Heat that warms one litre of water by one kelvin, in kJ. IF97 gives 4.194 at 10 °C and 4.072
/// at 80 °C for a litre at that temperature; 4.186 fits a litre that was measured cold.
const HEAT_OF_A_LITRE: f64 = 4.186;

const SECONDS_A_MINUTE: f64 = 60.0;

pub(super) const CALCULATION: Calculation = Calculation {
    name: "heat-up-time",
    summary: "How long it takes to heat a tank of water.",
    inputs: &[quantity("volume", "l"), quantity("from", "°C"), quantity("to", "°C"), quantity("power", "kW")],
    gives: Gives::Unit("min"),
    formula: "volume × 4.186 kJ/(l·K) × (to − from) ÷ power",
    limits: "The tank and the air around it take heat too, so it takes longer than this.",
    source: "physics of water; within 0.4 % of IAPWS-IF97, library iapws 1.5.5",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, from, to, power] = each(inputs);
    not_negative("volume", volume)?;
    liquid_water("from", from)?;
    liquid_water("to", to)?;
    at_least("to", to, from, "must not be colder than `from`")?;
    above_zero("power", power)?;
    Ok(volume * HEAT_OF_A_LITRE * (to - from) / power / SECONDS_A_MINUTE)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const SUM: &str = "V x 4.186 x dT/P";
    const IF97: &str = "iapws 1.5.5, IAPWS-IF97, from the source of the row";
    const ENERGY: &str = "arithmetic; IF97 0.5222 kWh";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [volume l, from °C, to °C, power kW], min, relative tolerance, source
        ("water.heat.10.15.60.1_3", &[10.0, 15.0, 60.0, 1.3], 1449.0 / 60.0, 0.005, SUM),
        ("water.heat.10.15.60.0_85", &[10.0, 15.0, 60.0, 0.85], 2216.1 / 60.0, 0.005, SUM),
        ("water.heat.10.10.60.2_0", &[10.0, 10.0, 60.0, 2.0], 1046.5 / 60.0, 0.005, SUM),
        ("water.heat.14.10.70.1_4", &[14.0, 10.0, 70.0, 1.4], 2511.6 / 60.0, 0.005, SUM),
        // At one kilowatt the energy in kWh is the time in hours.
        ("water.energy.10.15.60", &[10.0, 15.0, 60.0, 1.0], 0.5232 * 60.0, 0.005, ENERGY),
        // The same heatings by the equation of state, which the formula only comes near.
        ("water.heat.10.15.60.1_3", &[10.0, 15.0, 60.0, 1.3], 1446.0 / 60.0, 0.005, IF97),
        ("water.heat.10.15.60.0_85", &[10.0, 15.0, 60.0, 0.85], 2211.5 / 60.0, 0.005, IF97),
        ("water.heat.10.10.60.2_0", &[10.0, 10.0, 60.0, 2.0], 1045.2 / 60.0, 0.005, IF97),
        ("water.heat.14.10.70.1_4", &[14.0, 10.0, 70.0, 1.4], 2508.8 / 60.0, 0.005, IF97),
        ("water.energy.10.15.60", &[10.0, 15.0, 60.0, 1.0], 0.5222 * 60.0, 0.005, IF97),
    ];

    #[test]
    fn water_is_hot_when_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn heatings_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-10.0, 15.0, 60.0, 1.3], "`volume` must not be less than zero"),
                (&[10.0, -5.0, 60.0, 1.3], "`from` must be from 0 to 100 °C, where water is liquid"),
                (&[10.0, 15.0, 120.0, 1.3], "`to` must be from 0 to 100 °C, where water is liquid"),
                (&[10.0, 60.0, 15.0, 1.3], "`to` must not be colder than `from`"),
                (&[10.0, 15.0, 60.0, 0.0], "`power` must be more than zero"),
            ],
        );
    }
}
