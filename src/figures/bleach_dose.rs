//! How much bleach disinfects a tank of water.
//!
//! Formula: dose in ml = volume in l × target in mg/l / (10 × available chlorine in %). One per
//! cent weight by volume is 1 g in 100 ml, so 10 mg in each ml. Limits: liquid bleach whose label
//! states available chlorine weight by volume; a label that states sodium hypochlorite holds 0.952
//! times that. What is in the water already is not counted. Source: arithmetic; it agrees with a
//! table of a Queensland council and with the CDC Vessel Sanitation Program manual of 2018, 13.5.2.

use super::limits::{above_zero, not_negative, part};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "bleach-dose",
    summary: "How much bleach brings the water in a tank to a strength of chlorine.",
    inputs: &[quantity("volume", "l"), quantity("target", "mg/l"), quantity("available", "%")],
    gives: Gives::Unit("ml"),
    formula: "volume × target ÷ (10 × available)",
    limits: "For plain liquid bleach. Take the share of available chlorine from its label.",
    source: "arithmetic; agrees with a Queensland council's table for water carriers and with the \
             CDC Vessel Sanitation Program manual of 2018, 13.5.2",
    run,
    digits: 3,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [volume, target, available] = each(inputs);
    not_negative("volume", volume)?;
    not_negative("target", target)?;
    above_zero("available", available)?;
    part("available", available)?;
    Ok(volume * target / (10.0 * available))
}

#[cfg(test)]
mod tests {
    use super::super::rows::{Row, hold, refused};
    use super::*;

    const SUM: &str = "arithmetic; a Queensland council table prints 12.5 ml for 5 mg/l, 4 %, 100 l";
    const CUP: &str = "pint 0.25.3; US manuals print 50 ppm";
    const CDC: &str = "worked example set in the CDC Vessel Sanitation Program 2018 manual, 13.5.2 \
                       (result computed for the check values)";

    /// A quarter of a US cup in ml and 15 US gallons in l: the US gallon is 231 cubic inches of
    /// 16.387064 ml, and a cup a sixteenth of it (NIST Handbook 44, Appendix C, from memory).
    const QUARTER_CUP: f64 = 231.0 * 16.387_064 / 64.0;
    const GALLONS_15: f64 = 15.0 * 231.0 * 0.016_387_064;

    #[rustfmt::skip]
    const ROWS: &[Row] = &[
        // id, [volume l, target mg/l, available %], ml, relative tolerance, source
        ("water.dose.100.50.5_0", &[100.0, 50.0, 5.0], 100.0, 0.01, SUM),
        ("water.dose.100.50.5_25", &[100.0, 50.0, 5.25], 95.24, 0.01, SUM),
        ("water.dose.100.50.4_0", &[100.0, 50.0, 4.0], 125.0, 0.01, SUM),
        ("water.dose.70.50.5_0", &[70.0, 50.0, 5.0], 70.0, 0.01, SUM),
        ("water.dose.100.5.4_0", &[100.0, 5.0, 4.0], 12.5, 0.01, SUM),
        ("water.dose.100.100.5_0", &[100.0, 100.0, 5.0], 200.0, 0.01, SUM),
        // Backwards: the strength that a quarter cup gives calls for a quarter cup.
        ("water.quartercup.4_5", &[GALLONS_15, 46.9, 4.5], QUARTER_CUP, 0.01, CUP),
        ("water.quartercup.5_25", &[GALLONS_15, 54.7, 5.25], QUARTER_CUP, 0.01, CUP),
        ("water.quartercup.8_25", &[GALLONS_15, 85.9, 8.25], QUARTER_CUP, 0.01, CUP),
        // A dry compound: its per cent are by weight, so the result is in grams.
        ("water.dose.vsp", &[166_000.0, 50.0, 70.0], 11_857.0, 0.01, CDC),
    ];

    #[test]
    fn the_dose_is_what_the_check_values_say() {
        hold(&CALCULATION, ROWS);
    }

    #[test]
    fn doses_that_cannot_be_are_refused() {
        refused(
            &CALCULATION,
            &[
                (&[-1.0, 50.0, 5.0], "`volume` must not be less than zero"),
                (&[100.0, -50.0, 5.0], "`target` must not be less than zero"),
                (&[100.0, 50.0, 0.0], "`available` must be more than zero"),
                (&[100.0, 50.0, 101.0], "`available` must be from 0 to 100 %"),
            ],
        );
    }
}
