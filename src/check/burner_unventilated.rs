//! A van with a burner that takes its air from the room has fixed vents.

use super::parts;
use super::{Check, Checked};
use crate::diag::{Acc, Rule, Severity};

static RULE: Rule = Rule {
    id: "burner-unventilated",
    severity: Severity::Error,
    asks: "A van with a burner that is not room-sealed has a fit that provides `ventilation`.",
    why: "Such a burner takes its air from the room. Without vents that nobody can shut it uses up the air, and its fumes stay.",
    source: "EN 721: fixed vents, high and low, for appliances that are not room-sealed (through an inspection leaflet)",
    wrong: "remove = [\"fixed-vents\"] in a van with a gas hob",
    right: "the fixed vents among the fits, with the places where they are",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        let burners = parts.with("flame", "open").into_iter().chain(parts.with("flame", "flued")).collect::<Vec<_>>();
        let found = parts.lacking(&RULE, &burners, "takes its air from the room", "ventilation");
        acc.extend(found.map(|found| {
            found.help("add the fixed vents to the fits; if the van has none, have a licensed engineer fit them before anything is lit")
        }));
    }
}
