//! Draws the vehicle itself: body, cab, drawbar, wheels, doors and windows.

use super::frame::{Frame, cab_inset, sane};
use super::input::{Body, Door, DoorKind, Plan, Room, RoomKind, Side, Steering};
use super::pen::{Area, Path, Pen, Point};

/// A usual tyre from above, with what shows of it outside the wall, in mm.
const TYRE_LENGTH: f64 = 680.0;
const TYRE_WIDTH: f64 = 235.0;
const TYRE_SHOWS: f64 = 55.0;

/// What lies under the furniture.
pub fn under(pen: &mut Pen, plan: &Plan, frame: &Frame) {
    if plan.body == Body::Trailer {
        drawbar(pen, frame);
    } else {
        mirrors(pen, plan, frame);
    }
    let tyres = tyres(plan, frame);
    tyres.iter().for_each(|tyre| pen.rect("plan-wheel", tyre.whole, 3.5));
    pen.path("plan-floor", &frame.outline());
    tyres.iter().for_each(|tyre| pen.rect("plan-hidden", tyre.hidden, 3.5));
    if plan.body != Body::Trailer {
        cab(pen, plan, frame);
    }
}

/// What closes the body round the furniture.
pub fn walls(pen: &mut Pen, plan: &Plan, frame: &Frame) {
    pen.path("plan-wall", &frame.outline());
    if plan.body == Body::Coachbuilt {
        overcab(pen, frame);
    }
    for door in &plan.doors {
        if let Some(opening) = Opening::new(door, frame) {
            opening.draw(pen, door.kind);
        }
    }
}

/// A tyre, and the part of it that is under the floor.
struct Tyre {
    whole: Area,
    hidden: Area,
}

fn tyres(plan: &Plan, frame: &Frame) -> Vec<Tyre> {
    let axles = plan.front_axle.iter().chain(&plan.rear_axles).filter(|axle| axle.is_finite());
    let pairs = axles.flat_map(|axle| {
        let x = axle.clamp(0.0, frame.length);
        let (front, back) = (x - TYRE_LENGTH / 2.0, x + TYRE_LENGTH / 2.0);
        let wall = frame.inset(x);
        let (outer, inner) = (wall - TYRE_SHOWS, wall + TYRE_WIDTH - TYRE_SHOWS);
        [|y: f64, _: f64| y, |y, width| width - y].map(|across| {
            let area = |from, to| frame.area([front, across(from, frame.width), back, across(to, frame.width)]);
            Tyre { whole: area(outer, inner), hidden: area(wall, inner) }
        })
    });
    pairs.collect()
}

/// The A-frame, the coupling head and the jockey wheel.
fn drawbar(pen: &mut Pen, frame: &Frame) {
    let middle = frame.width / 2.0;
    let head = [-frame.ahead, middle - 75.0, 280.0 - frame.ahead, middle + 75.0];
    for side in [-1.0, 1.0] {
        let y = |from_middle: f64| middle + side * from_middle;
        let rail = [frame.at(40.0, y(0.31 * frame.width)), frame.at(200.0 - frame.ahead, y(45.0))];
        pen.line("plan-drawbar", rail[0], rail[1]);
    }
    let jockey = frame.area([390.0 - frame.ahead, middle + 175.0, 610.0 - frame.ahead, middle + 255.0]);
    let clamp = frame.at(500.0 - frame.ahead, middle + 175.0);
    pen.line("plan-drawbar", clamp, frame.at(500.0 - frame.ahead, middle + 80.0));
    pen.rect("plan-wheel", jockey, 2.0);
    pen.rect("plan-coupling", frame.area(head), frame.units(70.0));
}

fn mirrors(pen: &mut Pen, plan: &Plan, frame: &Frame) {
    let x = if plan.body == Body::AClass { 330.0 } else { windscreen(plan, frame).1 + 60.0 };
    for side in [0.0, 1.0] {
        let wall = frame.inset(x);
        let (near, far) = (wall + 20.0, wall - 170.0);
        let y = |inset: f64| {
            if side == 0.0 { inset } else { frame.width - inset }
        };
        let ear = [(x + 90.0, near), (x - 20.0, near), (x - 40.0, far), (x + 80.0, far)];
        let ear = ear.map(|(x, inset)| (frame.at(x, y(inset)), frame.units(45.0)));
        pen.path("plan-mirror", &Path::rounded(&ear));
    }
}

/// Where the windscreen begins and ends at its sides, in mm from the front.
fn windscreen(plan: &Plan, frame: &Frame) -> (f64, f64) {
    let k = (frame.length / 5500.0).min(1.0);
    match plan.body {
        Body::AClass => (210.0, 520.0),
        Body::Micro => (730.0 * k, 1280.0 * k),
        _ => (690.0 * k, 1150.0 * k),
    }
}

/// Bonnet, windscreen and steering wheel.
fn cab(pen: &mut Pen, plan: &Plan, frame: &Frame) {
    let (front, back) = windscreen(plan, frame);
    let w = frame.width;
    let (low, high) = (frame.inset(front) + 0.03 * w, frame.inset(back) + 0.075 * w);
    let glass = Path::at(frame.at(front, low))
        .bend(frame.at(front - 170.0, w / 2.0), frame.at(front, w - low))
        .line(frame.at(back, w - high))
        .bend(frame.at(back - 150.0, w / 2.0), frame.at(back, high));
    pen.path("plan-glass", &glass.close());
    if plan.body != Body::AClass {
        for side in [-1.0, 1.0] {
            let y = |share: f64| w / 2.0 + side * share * (w / 2.0 - frame.inset(front));
            let crease = Path::at(frame.at(front - 120.0, y(0.62)));
            pen.path("plan-detail", &crease.bend(frame.at(front * 0.5, y(0.6)), frame.at(70.0, y(0.42))));
        }
    }
    if let Some(steering) = plan.steering {
        steering_wheel(pen, plan, frame, steering, back);
    }
}

/// Drawn before the driver's seat, or where one would be.
fn steering_wheel(pen: &mut Pen, plan: &Plan, frame: &Frame, steering: Steering, screen: f64) {
    let on_nearside = (steering == Steering::Left) == plan.nearside_is_left;
    let drives = |room: &&Room| {
        let middle = (room.area[1] + room.area[3]) / 2.0;
        room.kind == RoomKind::CabSeat && (middle < frame.width / 2.0) == on_nearside
    };
    let seat = plan.rooms.iter().find(drives);
    let usual = if on_nearside { 0.27 } else { 0.73 } * frame.width;
    let y = seat.map_or(usual, |seat| (seat.area[1] + seat.area[3]) / 2.0);
    let x = seat.map_or(screen + 230.0, |seat| seat.area[0].min(seat.area[2]) - 130.0);
    let center = frame.at(sane(x, 0.0, frame.length, screen + 230.0), sane(y, 0.0, frame.width, usual));
    pen.circle("plan-steering", center, frame.units(185.0));
    pen.circle("plan-dot-small", center, frame.units(45.0));
}

/// The house of a coachbuilt reaches over its cab: dashed, as is usual for what is overhead.
fn overcab(pen: &mut Pen, frame: &Frame) {
    let k = (frame.length / 5500.0).min(1.0);
    let w = frame.width;
    let (back, shoulder, nose) = (1800.0 * k, 1000.0 * k, 330.0 * k);
    let side = cab_inset(w) * 0.25;
    let curve = Path::at(frame.at(back, 0.0))
        .line(frame.at(shoulder, side))
        .bend(frame.at(nose + 60.0, 0.07 * w), frame.at(nose, 0.34 * w))
        .line(frame.at(nose, 0.66 * w))
        .bend(frame.at(nose + 60.0, 0.93 * w), frame.at(shoulder, w - side))
        .line(frame.at(back, w));
    pen.path("plan-overhead", &curve);
}

/// A gap in a wall: from `a` to `b`, with the direction out of the vehicle.
struct Opening {
    a: Point,
    b: Point,
    out: Point,
}

impl Opening {
    fn new(door: &Door, frame: &Frame) -> Option<Self> {
        let most = if matches!(door.side, Side::Nearside | Side::Offside) { frame.length } else { frame.width };
        let from = sane(door.from.min(door.to), 0.0, most, 0.0);
        let to = sane(door.from.max(door.to), 0.0, most, most);
        let inset = frame.inset((from + to) / 2.0);
        let wall = |along: f64| match door.side {
            Side::Nearside => Some(frame.at(along, inset)),
            Side::Offside => Some(frame.at(along, frame.width - inset)),
            Side::Front => Some(frame.at(0.0, along)),
            Side::Rear => Some(frame.at(frame.length, along)),
            _ => None,
        };
        let out = match door.side {
            Side::Front => (0.0, -1.0),
            Side::Rear => (0.0, 1.0),
            _ if wall(from)?.0 < frame.hull().center().0 => (-1.0, 0.0),
            _ => (1.0, 0.0),
        };
        Some(Opening { a: wall(from)?, b: wall(to)?, out })
    }

    /// The point a share of the way along the opening and `out` units out of the wall.
    fn point(&self, share: f64, out: f64) -> Point {
        let (dx, dy) = (self.b.0 - self.a.0, self.b.1 - self.a.1);
        (self.a.0 + dx * share + self.out.0 * out, self.a.1 + dy * share + self.out.1 * out)
    }

    fn line(&self, pen: &mut Pen, class: &str, from: (f64, f64), to: (f64, f64)) {
        pen.line(class, self.point(from.0, from.1), self.point(to.0, to.1));
    }

    fn draw(&self, pen: &mut Pen, kind: DoorKind) {
        self.line(pen, "plan-gap", (0.0, 0.0), (1.0, 0.0));
        self.line(pen, "plan-jamb", (0.0, -2.5), (0.0, 2.5));
        self.line(pen, "plan-jamb", (1.0, -2.5), (1.0, 2.5));
        match kind {
            DoorKind::Window => self.pane(pen, "plan-window"),
            DoorKind::Garage => self.pane(pen, "plan-flap"),
            DoorKind::Sliding => self.line(pen, "plan-door", (0.5, 4.5), (1.5, 4.5)),
            DoorKind::Cab | DoorKind::Habitation => {
                self.line(pen, "plan-door", (0.0, 0.0), (0.97, 9.0));
            }
            DoorKind::Rear => {
                self.line(pen, "plan-door", (0.0, 0.0), (0.47, 8.0));
                self.line(pen, "plan-door", (1.0, 0.0), (0.53, 8.0));
            }
        }
    }

    /// Two lines side by side.
    fn pane(&self, pen: &mut Pen, class: &str) {
        self.line(pen, class, (0.0, -1.7), (1.0, -1.7));
        self.line(pen, class, (0.0, 1.7), (1.0, 1.7));
    }
}
