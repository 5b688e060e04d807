//! Sizes and masses of a model are lengths and masses.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules};
use crate::model::files::vehicle::ModelFile;
use crate::model::quantity::Dimension;
use crate::model::source::At;
use crate::resolve::parse_quantity;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for model in &checked.book.models {
        for text in sizes(&model.facts) {
            quantity(acc, text, Dimension::Length, "mm");
        }
        for text in masses(&model.facts) {
            quantity(acc, text, Dimension::Mass, "kg");
        }
    }
}

fn sizes(facts: &ModelFile) -> impl Iterator<Item = &At<String>> {
    let size = &facts.dimensions;
    let optional = [&size.wheelbase, &size.front_axle, &size.rear_axle, &size.second_rear_axle];
    [&size.length, &size.width, &size.height].into_iter().chain(optional.into_iter().flatten())
}

fn masses(facts: &ModelFile) -> impl Iterator<Item = &At<String>> {
    let masses = facts.masses.iter();
    masses.flat_map(|m| [&m.maximum, &m.running_order, &m.front_axle, &m.rear_axle, &m.nose_limit]).flatten()
}

fn quantity(acc: &mut Acc, text: &At<String>, dimension: Dimension, symbol: &str) {
    match parse_quantity(acc, text.span, text) {
        Some(quantity) if quantity.unit.dimension != dimension => {
            let found =
                Diagnostic::new(&rules::VALUE_UNIT, text.span, format!("`{}` is not {}", text.value, dimension.name()));
            acc.add(found.help(format!("give it in `{symbol}`")));
        }
        Some(quantity) if quantity.amount <= 0.0 => {
            let found = Diagnostic::new(
                &rules::VALUE_RANGE,
                text.span,
                format!("`{}` is no size or mass of a vehicle", text.value),
            );
            acc.add(found.help(format!("give what the plate or the maker's drawing says, in `{symbol}`")));
        }
        _ => {}
    }
}
