//! How long a cylinder lasts.
//!
//! Formula: hours = mass × net heat of the gas / power. Limits: full power all the time; all of the
//! gas can be used, which cold prevents (pure butane gives no appliance pressure below about
//! 0.3 °C, pure propane below about -41.5 °C: CoolProp 8.0.0). Source: heating values in `lpg.rs`.

use super::limits::{above_zero, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, lpg, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "gas-hours",
    summary: "How many hours the gas lasts at full power.",
    inputs: &[quantity("mass", "kg"), lpg::GAS, quantity("power", "kW")],
    gives: Gives::Unit("h"),
    formula: "mass × heat of the gas ÷ power, with 12.87 kWh/kg for propane and 12.70 kWh/kg for \
              butane",
    limits: "A burner that is turned down, or that a thermostat turns off, uses less. In frost, \
             butane stays in the cylinder.",
    source: lpg::SOURCE,
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [mass, gas, power] = each(inputs);
    not_negative("mass", mass)?;
    above_zero("power", power)?;
    Ok(mass * lpg::net_heat(gas)? / power)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const PROPANE: f64 = 0.0;
    const BUTANE: f64 = 1.0;
    const HEAT: &str = "chemicals 1.5.2; an LPG trader publishes 12.87 propane, 12.69 butane";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [mass kg, gas, power kW], h, relative tolerance, source
        ("lpg.cyl11.2kw", &[11.0, PROPANE, 2.0], 70.8, 0.02, "m LHV/P"),
        // One kilogram at one kilowatt lasts as many hours as it holds kWh.
        ("lpg.lhv.propane", &[1.0, PROPANE, 1.0], 12.8716, 0.005, HEAT),
        ("lpg.lhv.n-butane", &[1.0, BUTANE, 1.0], 12.6989, 0.005, HEAT),
    ];

    #[test]
    fn a_cylinder_lasts_as_long_as_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn cylinders_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-6.0, PROPANE, 2.0], "`mass` must not be less than zero"),
                (&[6.0, BUTANE, 0.0], "`power` must be more than zero"),
                (&[6.0, 3.0, 2.0], "`gas` must be one of its words"),
            ],
        );
    }
}
