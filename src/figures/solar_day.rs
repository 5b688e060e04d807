//! What a solar panel gives in a day of a month.
//!
//! Formula: power × clear-sky energy of the middle of the month in kWh/m² ÷ 1 kW/m² × performance. Limits: a
//! panel that lies flat at sea level; the performance takes in clouds, dirt, heat, wires and the controller, and
//! is the caller's to state. Source: FAO-56 for the sunlight; panels are rated at 1 kW/m² (IEC 60904-3, from memory).

use super::limits::{not_negative, part, word};
use super::{Calculation, FigureError, Gives, Input, Inputs, Takes, each, quantity, sun};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "solar-day",
    summary: "What a solar panel gives in a day of a month.",
    inputs: &[
        quantity("latitude", "count"),
        Input { name: "month", takes: Takes::Words(sun::MONTHS) },
        quantity("power", "W"),
        quantity("performance", "%"),
    ],
    gives: Gives::Unit("Wh"),
    formula: "power × clear-sky sunlight at the latitude in the middle of the month × performance",
    limits: "For a panel that lies flat. Shade on one corner can stop nearly all of it.",
    source: sun::SOURCE,
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [latitude, month, power, performance] = each(inputs);
    let month = word("month", month, sun::MONTHS)?;
    sun::sound(latitude, sun::MIDDLES[month])?;
    not_negative("power", power)?;
    part("performance", performance)?;
    Ok(power * performance / 100.0 * sun::clear_sky(latitude, sun::MIDDLES[month], 0.0) / sun::MJ_A_KWH)
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
                (&[80.0, 5.0, 100.0, 50.0], "`latitude` must be from -66 to 66°, where the sun rises each day"),
                (&[50.0, 12.0, 100.0, 50.0], "`month` must be one of its words"),
                (&[50.0, 5.0, -100.0, 50.0], "`power` must not be less than zero"),
                (&[50.0, 5.0, 100.0, 150.0], "`performance` must be from 0 to 100 %"),
            ],
        );
    }
}
