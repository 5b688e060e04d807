//! What the plan of a van is drawn from.

use crate::model::book::Book;
use crate::model::files::vehicle::Drive;
use crate::model::guide::Shape;
use crate::model::quantity::{Quantity, Unit};
use crate::model::source::At;
use crate::model::van::Van;

/// The shape of a van; sizes that were not given are left out or nought.
pub fn shape<'a>(book: &'a Book, van: &Van) -> Shape<'a> {
    let facts = &book.models[van.model].facts;
    let size = &facts.dimensions;
    let optional = |text: &Option<At<String>>| text.as_ref().and_then(mm);
    let nearside_is_left = book.settings.nearside_is_left;
    Shape {
        body: facts.body.value,
        size: [&size.length, &size.width, &size.height].map(|text| mm(text).unwrap_or_default()),
        front_axle: optional(&size.front_axle),
        rear_axles: [&size.rear_axle, &size.second_rear_axle].into_iter().filter_map(optional).collect(),
        steering_nearside: facts.drive.map(|drive| (drive == Drive::LeftHand) == nearside_is_left),
        nearside_is_left,
        doors: &facts.door,
        rooms: &facts.room,
    }
}

fn mm(text: &At<String>) -> Option<f64> {
    Quantity::parse(text).ok()?.to(Unit::find("mm")?).map(|quantity| quantity.amount)
}
