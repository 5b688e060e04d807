//! A 12 V cable is thick enough for its length.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};
use crate::figures;
use crate::model::files::forms::Supply;

static RULE: Rule = Rule {
    id: "cable-drop",
    severity: Severity::Error,
    asks: "A 12 V cable loses no more than 5 % of the voltage, where its cross-section and its length one way are given.",
    why: "Behind a cable that is too thin a fridge or heater cuts out although the battery is good, and the cable warms up.",
    source: "resistance at 20 °C: IEC 60228 class 5 (cable makers' pages), other sizes by the resistivity of copper of IEC 60028 and 16 % more; the share of 5 % is common practice, not confirmed",
    wrong: "8 A through cable = \"1.5 mm2\" of cable-length = \"6 m\"",
    right: "8 A through cable = \"4 mm2\" of cable-length = \"6 m\"",
};

/// The share of the voltage that may be lost.
const SHARE: f64 = 0.05;

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        parts.all().for_each(|part| cable(acc, parts, part));
    }
}

fn cable(acc: &mut Acc, parts: Parts, part: Part) {
    let largest = part.currents(Supply::TwelveVolt, parts::BATTERY_VOLTS).map(|(amps, _)| amps).max_by(f64::total_cmp);
    let cable = part.amount("cable", "mm2").zip(part.amount("cable-length", "m"));
    let (Some(amps), Some((area, length))) = (largest, cable) else {
        return;
    };
    let Some(drop) = drop(length, amps, area) else {
        return;
    };
    if drop > SHARE * parts::BATTERY_VOLTS {
        let message = format!(
            "the cable of {} loses {drop:.2} V of {} V at {}",
            part.quoted(),
            parts::BATTERY_VOLTS,
            parts::amps(amps)
        );
        let found = parts.clash(&RULE, [(part, "cable"), (part, "cable-length")], message);
        acc.add(found.help("measure the cable again; if it is right, have an auto electrician fit a thicker one"));
    }
}

/// The voltage lost there and back, in V, as the figure of the same name works it out.
fn drop(length: f64, amps: f64, area: f64) -> Option<f64> {
    figures::find("cable-drop-most")?.work_out(&[length, amps, area]).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Arithmetic: 5 m, 10 A, 2.5 mm² lose 0.798 V at most.
    #[test]
    fn the_loss_is_that_of_the_way_there_and_back() {
        assert!((drop(5.0, 10.0, 2.5).unwrap() - 0.798).abs() < 1e-9);
        assert_eq!(drop(5.0, 10.0, 0.0), None);
    }
}
