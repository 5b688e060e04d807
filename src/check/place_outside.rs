//! Places that lie outside the vehicle.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::Model;
use crate::model::quantity::{Quantity, Unit};
use crate::model::source::At;
use crate::model::van::Van;

static RULE: Rule = Rule {
    id: "place-outside",
    severity: Severity::Error,
    asks: "A place lies within the vehicle, give or take what sticks out.",
    why: "The plan would draw it beside the vehicle, and the owner would look for it there.",
    source: "the dimensions in `model.toml`; a drawbar, a towball or a rack may stick out by up to 2 m",
    wrong: "position = [52000, 0, 700] in a van of 5990 mm",
    right: "position = [5200, 0, 700]",
};

/// What may stick out, in mm: a drawbar in front, a rack behind, a vent or step at the side.
const OUT: f64 = 2000.0;

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for van in checked.vans {
        van_places(acc, checked, van);
    }
}

fn van_places(acc: &mut Acc, checked: Checked, van: &Van) {
    let sizes: Vec<_> = sizes(&checked.book.models[van.model]).into_iter().map(|(size, _)| size.amount).collect();
    let [length, width, height] = sizes[..] else {
        return;
    };
    for place in &van.places {
        let [x, y, z] = place.position;
        let outside = [(x, length), (y, width), (z, height)].iter().any(|(at, size)| *at < -OUT || *at > size + OUT);
        if outside {
            let found = Diagnostic::new(
                &RULE,
                place.position_span,
                format!("`{}` lies outside the vehicle", place.code.value.0),
            );
            acc.add(found.help(format!("it is {length} × {width} × {height} mm; a position is from the front, from the nearside edge, above the ground")));
        }
    }
}

/// Length, width and height in mm, with what was written; what cannot be read is left out.
fn sizes(model: &Model) -> Vec<(Quantity, &At<String>)> {
    let size = &model.facts.dimensions;
    let mm = Unit::find("mm");
    [&size.length, &size.width, &size.height]
        .into_iter()
        .filter_map(|text| Some((Quantity::parse(text).ok()?.to(mm?)?, text)))
        .collect()
}
