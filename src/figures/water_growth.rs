//! How much water grows when it is heated: what a relief valve lets out.
//!
//! Formula: volume × (density cold / density hot - 1). Limits: 0 to 100 °C, no pressure above the air. Source:
//! density of water after Kell 1975 (from memory); within 0.002 % of IAPWS-IF97, library iapws 1.5.5.

use super::limits::{at_least, liquid_water, not_negative};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity, water};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "water-growth",
    summary: "How much water grows when it is heated.",
    inputs: &[quantity("volume", "l"), quantity("from", "°C"), quantity("to", "°C")],
    gives: Gives::Unit("l"),
    formula: "volume × (density at from ÷ density at to − 1)",
    limits: "A pipe or pump with air in it takes some of it up.",
    source: "density of water after Kell 1975, from memory; agrees with IAPWS-IF97, library iapws 1.5.5",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, from, to] = each(inputs);
    not_negative("volume", volume)?;
    liquid_water("from", from)?;
    liquid_water("to", to)?;
    at_least("to", to, from.max(4.0), "must be warmer than `from`, and than 4 °C")?;
    Ok((volume * (water::density(from) / water::density(to) - 1.0)).max(0.0))
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
                (&[-1.0, 15.0, 60.0], "`volume` must not be less than zero"),
                (&[10.0, -1.0, 60.0], "`from` must be from 0 to 100 °C, where water is liquid"),
                (&[10.0, 15.0, 101.0], "`to` must be from 0 to 100 °C, where water is liquid"),
                (&[10.0, 60.0, 15.0], "`to` must be warmer than `from`, and than 4 °C"),
            ],
        );
    }
}
