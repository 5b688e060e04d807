//! Sizes and masses of a model are lengths and masses.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules};
use crate::model::files::vehicle::{ModelFile, Room};
use crate::model::quantity::{Dimension, Quantity};
use crate::model::source::At;
use crate::resolve::parse_quantity;
use std::cmp::Ordering;

/// No vehicle that these guides are for is larger, in mm.
const LARGEST: f64 = 13_000.0;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for model in &checked.book.models {
        for text in sizes(&model.facts) {
            quantity(acc, text, Dimension::Length, "mm");
        }
        for text in masses(&model.facts) {
            quantity(acc, text, Dimension::Mass, "kg");
        }
        weights(acc, &model.facts);
        belts(acc, &model.facts);
        model.facts.room.iter().for_each(|room| self::room(acc, room));
        for door in model.facts.door.iter().filter(|door| door.from >= door.to) {
            let message = format!("a door from {} to {} has no width", door.from, door.to);
            let found = Diagnostic::new(&rules::WRONG_FORM, door.side.span, message);
            acc.add(found.help("`from` and `to` are in mm from the front, or from the nearside edge for the rear; `from` is the smaller one"));
        }
    }
}

/// A part of a mass is no more than the whole, and the whole no more than what is allowed.
fn weights(acc: &mut Acc, facts: &ModelFile) {
    let Some(masses) = &facts.masses else {
        return;
    };
    let ordered = [
        (&masses.running_order_front, &masses.running_order, "what of it rests on the front"),
        (&masses.running_order, &masses.maximum, "the mass in running order"),
    ];
    for (less, more, name) in ordered {
        let (Some(less), Some(more)) = (less, more) else {
            continue;
        };
        let both = Quantity::parse(less).ok().zip(Quantity::parse(more).ok());
        if both.and_then(|(less, more)| less.compare(more)).is_some_and(Ordering::is_gt) {
            let message = format!("`{}` as {name} is more than `{}`", less.value, more.value);
            let found = Diagnostic::new(&rules::VALUE_RANGE, less.span, message).other(more.span, "the whole");
            acc.add(found.help("read the plate again, or weigh the vehicle"));
        }
    }
}

/// Where axle loads are worked out, each passenger has a place.
fn belts(acc: &mut Acc, facts: &ModelFile) {
    let weighed = facts.masses.as_ref().and_then(|masses| masses.running_order_front.as_ref());
    let belts: u32 = facts.room.iter().map(|room| room.belts()).sum();
    if let Some((weighed, seats)) = weighed.zip(facts.seats).filter(|(_, seats)| *seats != belts) {
        let message = format!("there are {seats} seats with belts, and the rooms have {belts}");
        let found = Diagnostic::new(&rules::WRONG_FORM, weighed.span, message);
        acc.add(found.help(
            "axle loads need to know where each passenger sits: give each `seat` its `belts`; a `cab-seat` has one",
        ));
    }
}

fn room(acc: &mut Acc, room: &Room) {
    let message = match room.box_.as_slice() {
        [x1, y1, x2, y2] if x1 < x2 && y1 < y2 && [x1, y1, x2, y2].iter().all(|at| at.abs() <= LARGEST) => return,
        [_, _, _, _] => "these corners make no room of a vehicle",
        _ => "a room has two corners: four numbers",
    };
    let found = Diagnostic::new(&rules::WRONG_FORM, room.box_.span, message);
    acc.add(
        found.help("write `[x1, y1, x2, y2]` in mm: from the front and from the nearside edge, the smaller ones first"),
    );
}

fn sizes(facts: &ModelFile) -> impl Iterator<Item = &At<String>> {
    let size = &facts.dimensions;
    let optional = [&size.wheelbase, &size.front_axle, &size.rear_axle, &size.second_rear_axle, &size.coupling];
    [&size.length, &size.width, &size.height].into_iter().chain(optional.into_iter().flatten())
}

fn masses(facts: &ModelFile) -> impl Iterator<Item = &At<String>> {
    let masses = facts.masses.iter();
    masses
        .flat_map(|m| {
            [&m.maximum, &m.running_order, &m.running_order_front, &m.front_axle, &m.rear_axle, &m.nose_limit]
        })
        .flatten()
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
