//! A share of a whole: how much a tank holds at its 80 % stop valve.
//!
//! Formula: part = whole × share. Limits: the share is between nothing and all of it. Source:
//! arithmetic.

use super::limits::{not_negative, part};
use super::{Calculation, FigureError, Gives, Input, Inputs, Takes, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "share-of",
    summary: "A share of a whole, such as the part of a tank that may be filled.",
    inputs: &[Input { name: "whole", takes: Takes::Any }, quantity("share", "%")],
    gives: Gives::UnitOf("whole"),
    formula: "whole × share",
    limits: "It is as exact as the whole and the share are.",
    source: "arithmetic",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [whole, share] = each(inputs);
    not_negative("whole", whole)?;
    part("share", share)?;
    Ok(whole * share / 100.0)
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const SOURCE: &str = "CoolProp 8.0.0 (Lemmon 2009 propane; Buecker-Wagner 2006 n-butane, \
                          isobutane): the mass of the fill over lpg.rho15.<gas> in kg/l";

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [whole l, share %], l, relative tolerance, source
        ("lpg.fill80.propane", &[20.0, 80.0], 8.12 / 0.5075, 0.01, SOURCE),
        ("lpg.fill80.n-butane", &[20.0, 80.0], 9.348 / 0.5843, 0.01, SOURCE),
        ("lpg.fill80.isobutane", &[20.0, 80.0], 9.007 / 0.5629, 0.01, SOURCE),
    ];

    #[test]
    fn a_fill_is_what_the_check_values_weigh() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn shares_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-20.0, 80.0], "`whole` must not be less than zero"),
                (&[20.0, 110.0], "`share` must be from 0 to 100 %"),
                (&[20.0, -1.0], "`share` must be from 0 to 100 %"),
            ],
        );
    }
}
