//! The places of a van: the model's, and its own.

use crate::diag::{Acc, Diagnostic, rules};
use crate::model::book::{Model, VanSource};
use crate::model::files::vehicle::PlaceFacts;
use crate::model::van::Place;

/// All places; the code of each stands once.
pub fn places(acc: &mut Acc, model: &Model, source: &VanSource) -> Vec<Place> {
    let mut places: Vec<Place> = Vec::new();
    for facts in model.facts.place.iter().chain(&source.facts.place) {
        if let Some(twin) = places.iter().find(|place| place.code.value == facts.code.value) {
            let found = Diagnostic::new(
                &rules::DUPLICATE_CODE,
                facts.code.span,
                format!("`{}` is the code of two places", facts.code.value.0),
            );
            acc.add(found.other(twin.code.span, "the first one").help("give one of them another code"));
            continue;
        }
        places.push(place(acc, facts));
    }
    places
}

fn place(acc: &mut Acc, facts: &PlaceFacts) -> Place {
    let position =
        match facts.position.as_slice() {
            [x, y, z] => [*x, *y, *z],
            _ => {
                let found = Diagnostic::new(&rules::WRONG_FORM, facts.position.span, "a position is three numbers");
                acc.add(found.help(
                    "write `[x, y, z]` in mm: from the front of the body, from the nearside edge, above the ground",
                ));
                [0.0; 3]
            }
        };
    Place {
        code: facts.code.clone(),
        kind: facts.kind,
        name: facts.name.clone(),
        side: facts.side,
        position,
        position_span: facts.position.span,
        note: facts.note.clone(),
        labelled: false,
    }
}
