//! How long a charger takes to put back what was used.
//!
//! Formula: time = missing / (current × efficiency). Limits: the charger gives its current all the time, which
//! it does only until the battery is about four fifths full; then it takes longer. Source: arithmetic; how much
//! of the current stays in the battery (lead 80 to 90 %, lithium about 95 %) is from memory.

use super::limits::{above_zero, not_negative, part};
use super::{Calculation, FigureError, Gives, Inputs, each, quantity};

pub(super) const CALCULATION: Calculation = Calculation {
    name: "charge-time",
    summary: "How long a charger takes to put back what was used.",
    inputs: &[quantity("missing", "Ah"), quantity("current", "A"), quantity("efficiency", "%")],
    gives: Gives::Unit("h"),
    formula: "missing ÷ (current × efficiency)",
    limits: "The last fifth takes a lead battery hours longer, as the charger turns itself down.",
    source: "arithmetic; efficiencies from memory",
    run,
    digits: 2,
    swing: None,
};

fn run(inputs: &Inputs) -> Result<f64, FigureError> {
    let [missing, current, efficiency] = each(inputs);
    not_negative("missing", missing)?;
    above_zero("current", current)?;
    part("efficiency", efficiency)?;
    above_zero("efficiency", efficiency)?;
    Ok(missing / (current * efficiency / 100.0))
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
                (&[-1.0, 20.0, 85.0], "`missing` must not be less than zero"),
                (&[50.0, 0.0, 85.0], "`current` must be more than zero"),
                (&[50.0, 20.0, 0.0], "`efficiency` must be more than zero"),
                (&[50.0, 20.0, 101.0], "`efficiency` must be from 0 to 100 %"),
            ],
        );
    }
}
