//! What the drawing of a plan is told, from a guide.

use super::links;
use super::plan::{self, Body, Door, DoorKind, Drawn, Mark, MarkKind, Plan, Room, RoomKind, Side, Steering, Words};
use crate::model::files::forms::Signal;
use crate::model::files::vehicle as facts;
use crate::model::guide::{Guide, PlaceEntry, Shape};
use crate::model::phrases::Phrases;

/// The plan as SVG for paper.
pub fn plan_on_paper(guide: &Guide, phrases: &Phrases) -> String {
    drawings(guide, phrases).above("", None)
}

/// The drawings of a guide, made once for all its pages.
pub struct Drawings {
    above: Drawn,
    nearside: Option<Drawn>,
    offside: Option<Drawn>,
}

impl Drawings {
    /// The vehicle from above, on a page from which `up` leads to the van's folder, with the place `here` marked.
    pub fn above(&self, up: &str, here: Option<usize>) -> String {
        self.above.on(up, here)
    }

    /// Its sides with labelled places; with the reader at a place of `guide`, only that side, when the place is on it.
    pub fn sides(&self, guide: &Guide, up: &str, here: Option<usize>) -> Vec<String> {
        let seen =
            |side: facts::Side| here.is_none_or(|here| guide.places[here].side == side && guide.places[here].labelled);
        let sides = [(facts::Side::Nearside, &self.nearside), (facts::Side::Offside, &self.offside)];
        let seen = sides.into_iter().filter(|(side, _)| seen(*side));
        seen.filter_map(|(_, drawn)| Some(drawn.as_ref()?.on(up, here))).collect()
    }
}

/// Draws the vehicle of a guide.
pub fn drawings(guide: &Guide, phrases: &Phrases) -> Drawings {
    let shape = &guide.shape;
    let plan = Plan {
        title: guide.identity.title.to_string(),
        body: body(shape.body),
        length: shape.size[0],
        width: shape.size[1],
        height: shape.size[2],
        front_axle: shape.front_axle,
        rear_axles: shape.rear_axles.clone(),
        steering: steering(shape),
        nearside_is_left: shape.nearside_is_left,
        doors: shape.doors.iter().map(door).collect(),
        rooms: shape.rooms.iter().filter_map(|room| self::room(room, guide.language)).collect(),
        marks: guide.places.iter().map(|place| mark(guide, place)).collect(),
    };
    let words = words(phrases);
    Drawings {
        above: plan::draw(&plan, &words),
        nearside: plan::side(&plan, &words, Side::Nearside),
        offside: plan::side(&plan, &words, Side::Offside),
    }
}

fn words(phrases: &Phrases) -> Words {
    Words {
        label: phrases.get("plan-label"),
        nearside_label: phrases.get("plan-nearside-label"),
        offside_label: phrases.get("plan-offside-label"),
        front: phrases.get("plan-front"),
        rear: phrases.get("plan-rear"),
        nearside: phrases.get("plan-nearside"),
        offside: phrases.get("plan-offside"),
        here: phrases.get("plan-here"),
        sign: phrases.get("plan-warning"),
    }
}

fn steering(shape: &Shape) -> Option<Steering> {
    let left = shape.steering_nearside? == shape.nearside_is_left;
    Some(if left { Steering::Left } else { Steering::Right })
}

fn mark(guide: &Guide, place: &PlaceEntry) -> Mark {
    let [x, y, z] = place.position;
    Mark {
        code: place.code.to_string(),
        name: place.name.to_string(),
        kind: kind(place.kind),
        side: side(place.side),
        x,
        y,
        z,
        address: format!("{}/index.html", links::folder(guide, place.code)),
        labelled: place.labelled,
        sign: place.signal >= Some(Signal::Warning),
    }
}

fn door(door: &facts::Door) -> Door {
    let kind = match door.kind {
        facts::DoorKind::Cab => DoorKind::Cab,
        facts::DoorKind::Sliding => DoorKind::Sliding,
        facts::DoorKind::Habitation => DoorKind::Habitation,
        facts::DoorKind::Rear => DoorKind::Rear,
        facts::DoorKind::Garage => DoorKind::Garage,
        facts::DoorKind::Window => DoorKind::Window,
    };
    Door { kind, side: side(door.side.value), from: door.from, to: door.to }
}

fn room(room: &facts::Room, language: &str) -> Option<Room> {
    let kind = match room.kind {
        facts::RoomKind::Bed => RoomKind::Bed,
        facts::RoomKind::Seat => RoomKind::Seat,
        facts::RoomKind::CabSeat => RoomKind::CabSeat,
        facts::RoomKind::Galley => RoomKind::Galley,
        facts::RoomKind::Washroom => RoomKind::Washroom,
        facts::RoomKind::Wardrobe => RoomKind::Wardrobe,
        facts::RoomKind::Table => RoomKind::Table,
        facts::RoomKind::Garage => RoomKind::Garage,
    };
    let area = <[f64; 4]>::try_from(room.box_.value.as_slice()).ok()?;
    Some(Room { kind, name: room.name.as_ref().map(|name| name.text(language).to_string()).unwrap_or_default(), area })
}

fn body(body: facts::Body) -> Body {
    match body {
        facts::Body::PanelVan => Body::PanelVan,
        facts::Body::Coachbuilt => Body::Coachbuilt,
        facts::Body::AClass => Body::AClass,
        facts::Body::Trailer => Body::Trailer,
        facts::Body::Micro => Body::Micro,
    }
}

fn side(side: facts::Side) -> Side {
    match side {
        facts::Side::Nearside => Side::Nearside,
        facts::Side::Offside => Side::Offside,
        facts::Side::Front => Side::Front,
        facts::Side::Rear => Side::Rear,
        facts::Side::Roof => Side::Roof,
        facts::Side::Under => Side::Under,
        facts::Side::Inside => Side::Inside,
    }
}

fn kind(kind: facts::PlaceKind) -> MarkKind {
    match kind {
        facts::PlaceKind::Locker => MarkKind::Locker,
        facts::PlaceKind::Panel => MarkKind::Panel,
        facts::PlaceKind::Control => MarkKind::Control,
        facts::PlaceKind::Vent => MarkKind::Vent,
        facts::PlaceKind::Inlet => MarkKind::Inlet,
        facts::PlaceKind::Cap => MarkKind::Cap,
        facts::PlaceKind::Tap => MarkKind::Tap,
        facts::PlaceKind::Appliance => MarkKind::Appliance,
        facts::PlaceKind::Alarm => MarkKind::Alarm,
        facts::PlaceKind::Exit => MarkKind::Exit,
    }
}
