//! Draws what stands inside: beds, seats, galley, washroom, wardrobe, table, and their names where they fit.

use super::frame::{Frame, sane};
use super::input::{Plan, Room, RoomKind};
use super::pen::{Area, Edge, Pen, Point};
use super::tags::Placed;

/// Size of a room's name, and the width of its average letter, in units.
const NAME_SIZE: f64 = 11.5;
const NAME_LETTER: f64 = 6.1;

/// A room that has a position on the drawing.
struct Placing<'a> {
    room: &'a Room,
    area: Area,
    /// The edge at which heads, backs or taps are: that of the nearest wall.
    wall: Edge,
}

/// Draws the furniture, then the names that meet no leader, dot or other name.
pub fn draw<'a>(pen: &mut Pen, plan: &Plan, frame: &Frame, spots: impl Iterator<Item = &'a Placed<'a>>) {
    let placings = plan.rooms.iter().map(|room| Placing::new(room, frame));
    let placings: Vec<_> = placings.collect();
    placings.iter().for_each(|placing| placing.draw(pen, frame));
    let leaders = spots.flat_map(|spot| obstacles(spot.leader));
    let pillows = placings.iter().filter_map(Placing::pillows);
    let mut taken: Vec<Area> = leaders.chain(pillows).collect();
    for placing in &placings {
        placing.write_name(pen, frame, &mut taken);
    }
}

/// The straight part of a leader and its dot, with some air.
fn obstacles([.., bend, dot]: [Point; 4]) -> [Area; 2] {
    [Area::between(bend, dot).grown(1.5), Area::around(dot, 10.0, 10.0)]
}

/// Where in `quiet` a name can stand: as near to the middle as may be.
fn free_spot(quiet: Area, name: &str, taken: &[Area]) -> Option<Area> {
    let (w, h) = (name.chars().count() as f64 * NAME_LETTER, NAME_SIZE);
    let (spare_w, spare_h) = (quiet.w - w - 4.0, quiet.h - h - 2.0);
    if name.is_empty() || spare_w < 0.0 || spare_h < 0.0 {
        return None;
    }
    let (x, y) = quiet.center();
    let tries = [0.0, -0.25, 0.25, -0.5, 0.5].into_iter().flat_map(|share| {
        let across = x + spare_w * share;
        (0..=20).map(|step| spare_h * f64::from(step) / 40.0).flat_map(move |by| [(across, y - by), (across, y + by)])
    });
    let mut spots = tries.map(|center| Area::around(center, w, h));
    spots.find(|spot| !taken.iter().any(|other| spot.overlaps(other)))
}

impl<'a> Placing<'a> {
    fn new(room: &'a Room, frame: &Frame) -> Self {
        let [x1, y1, x2, y2] = room.area;
        let x = |v| sane(v, 0.0, frame.length, 0.0);
        let y = |v| sane(v, 0.0, frame.width, 0.0);
        let area = frame.area([x(x1), y(y1), x(x2), y(y2)]);
        Placing { room, area, wall: nearest_wall(room.kind, area, frame.hull()) }
    }

    fn draw(&self, pen: &mut Pen, frame: &Frame) {
        match self.room.kind {
            RoomKind::Bed => self.bed(pen, frame),
            RoomKind::Seat => self.seat(pen),
            RoomKind::Galley => self.galley(pen, frame),
            RoomKind::Washroom => self.washroom(pen, frame),
            RoomKind::Wardrobe => self.wardrobe(pen),
            RoomKind::Table => self.table(pen),
            RoomKind::CabSeat => self.cab_seat(pen),
            RoomKind::Garage => pen.rect("plan-overhead", self.area.shrunk(3.0), 3.0),
        }
    }

    fn write_name(&self, pen: &mut Pen, frame: &Frame, taken: &mut Vec<Area>) {
        let name = &self.room.name;
        if let Some(spot) = free_spot(self.quiet(frame), name, taken) {
            let (x, y) = spot.center();
            let baseline = y + NAME_SIZE * 0.35;
            pen.text("plan-room-name", "middle", (x, baseline), name);
            taken.push(spot.grown(3.5));
        }
    }

    /// The end of a bed that no name should cover, not even that of a garage below.
    fn pillows(&self) -> Option<Area> {
        let bed = self.room.kind == RoomKind::Bed;
        bed.then(|| self.area.strip(self.wall, 0.0, 0.38))
    }

    /// The part of the room that its furniture leaves free for a name.
    fn quiet(&self, frame: &Frame) -> Area {
        match self.room.kind {
            RoomKind::Bed => self.area.strip(self.wall, 0.4, 1.0).shrunk(2.0),
            RoomKind::Seat => self.area.strip(self.wall, 0.25, 1.0),
            RoomKind::Galley => self.middle_of_galley(frame),
            RoomKind::Washroom => self.middle_of_washroom(frame),
            RoomKind::Table | RoomKind::Garage => self.area,
            RoomKind::Wardrobe | RoomKind::CabSeat => self.area.strip(self.wall, 0.0, 0.0),
        }
    }

    /// Mattress, one or two pillows at the head, and the turned-down cover.
    fn bed(&self, pen: &mut Pen, frame: &Frame) {
        pen.rect("plan-room", self.area, 4.0);
        let head = self.area.strip(self.wall, 0.0, 0.3);
        let upright = self.wall.upright();
        let across = if upright { self.area.h } else { self.area.w };
        let halves: &[(f64, f64)] =
            if across > frame.units(1150.0) { &[(0.0, 0.5), (0.5, 1.0)] } else { &[(0.0, 1.0)] };
        for &(from, to) in halves {
            let along = if upright { Edge::Top } else { Edge::Left };
            let half = head.strip(along, from, to).shrunk(4.0);
            pen.rect("plan-cushion", half, 5.0);
        }
        let fold = self.area.strip(self.wall, 0.36, 0.36);
        pen.line("plan-detail", fold.part(0.0, 0.0), fold.part(1.0, 1.0));
    }

    /// Cushion and back.
    fn seat(&self, pen: &mut Pen) {
        pen.rect("plan-room", self.area, 5.0);
        let back = self.area.strip(self.wall, 0.0, 0.22);
        pen.rect("plan-cushion", back, 3.0);
    }

    fn cab_seat(&self, pen: &mut Pen) {
        let area = self.area.shrunk(1.0);
        pen.rect("plan-room", area, 8.0);
        pen.rect("plan-cushion", area.strip(Edge::Bottom, 0.0, 0.26), 5.0);
        let head = area.strip(Edge::Bottom, 0.06, 0.2);
        pen.rect("plan-cushion", Area::around(head.center(), head.w * 0.42, head.h), 3.0);
    }

    /// Worktop with a sink at the rear end and burners at the front end.
    fn galley(&self, pen: &mut Pen, frame: &Frame) {
        pen.rect("plan-room", self.area, 2.0);
        let (hob, sink, round) = self.galley_ends(frame);
        for (across, down) in [(0.28, 0.28), (0.72, 0.28), (0.28, 0.72), (0.72, 0.72)] {
            pen.circle("plan-detail", hob.part(across, down), round * 0.17);
        }
        pen.rect("plan-cushion", sink.shrunk(round * 0.08), round * 0.28);
        pen.circle("plan-detail", sink.center(), round * 0.28);
        pen.circle("plan-dot-small", sink.center(), round * 0.05);
    }

    /// Hob, sink, and their size: both are square.
    fn galley_ends(&self, frame: &Frame) -> (Area, Area, f64) {
        let Area { w, h, .. } = self.area;
        let round = (w.min(h) - 4.0).min(frame.units(520.0)).min(w.max(h) * 0.46).max(0.0);
        let (a, b) = if h >= w { ((0.5, 0.0), (0.5, 1.0)) } else { ((0.0, 0.5), (1.0, 0.5)) };
        let inward = (round / 2.0 + 3.0).min(w.max(h) / 2.0);
        let end = |(across, down): (f64, f64)| {
            let (x, y) = self.area.part(across, down);
            let push = |share: f64| inward * (1.0 - 2.0 * share) * f64::from(u8::from(share != 0.5));
            Area::around((x + push(across), y + push(down)), round, round)
        };
        (end(a), end(b), round)
    }

    fn middle_of_galley(&self, frame: &Frame) -> Area {
        let (hob, sink, _) = self.galley_ends(frame);
        if self.area.h >= self.area.w {
            let (top, bottom) = (hob.y + hob.h, sink.y);
            Area { y: top, h: (bottom - top).max(0.0), ..self.area }
        } else {
            let (left, right) = (hob.x + hob.w, sink.x);
            Area { x: left, w: (right - left).max(0.0), ..self.area }
        }
    }

    /// Toilet and basin along the outer wall, and a shower opposite where there is room.
    fn washroom(&self, pen: &mut Pen, frame: &Frame) {
        pen.rect("plan-room plan-partition", self.area, 2.0);
        let size = frame.units(420.0).min(self.area.w * 0.45).min(self.area.h * 0.45);
        let wall = self.area.strip(self.wall, 0.0, 0.0);
        let at = |down: f64, depth: f64| {
            let (x, y) = wall.part(0.5, down);
            (x - self.wall.outward() * size * depth, y)
        };
        pen.rect("plan-cushion", Area::around(at(0.72, 0.2), size * 0.24, size * 0.85), 1.5);
        pen.ellipse("plan-cushion", Area::around(at(0.72, 0.75), size * 0.85, size * 0.66));
        pen.ellipse("plan-detail", Area::around(at(0.72, 0.75), size * 0.5, size * 0.36));
        pen.rect("plan-cushion", Area::around(at(0.26, 0.55), size * 0.85, size * 0.8), size * 0.2);
        pen.circle("plan-detail", at(0.26, 0.55), size * 0.24);
        if let Some(tray) = self.shower() {
            pen.rect("plan-cushion", tray, 4.0);
            pen.line("plan-detail", tray.part(0.1, 0.1), tray.part(0.9, 0.9));
            pen.line("plan-detail", tray.part(0.9, 0.1), tray.part(0.1, 0.9));
            pen.circle("plan-cushion", tray.center(), 3.5);
        }
    }

    fn middle_of_washroom(&self, frame: &Frame) -> Area {
        let Area { w, h, .. } = self.area;
        let taps = frame.units(480.0).min(w * 0.5) / w.max(1.0);
        let shower = if self.shower().is_some() { h / w } else { 0.0 };
        self.area.strip(self.wall, taps, 1.0 - shower).shrunk(2.0)
    }

    /// A washroom across the vehicle has its shower at the far end.
    fn shower(&self) -> Option<Area> {
        let Area { w, h, .. } = self.area;
        let share = 1.0 - h / w.max(1.0);
        (w > 1.8 * h).then(|| self.area.strip(self.wall, share, 1.0).shrunk(4.0))
    }

    /// A rail with hangers across it.
    fn wardrobe(&self, pen: &mut Pen) {
        pen.rect("plan-room", self.area, 2.0);
        let upright = self.area.h >= self.area.w;
        let part = |along: f64, across: f64| {
            if upright { self.area.part(across, along) } else { self.area.part(along, across) }
        };
        pen.line("plan-detail", part(0.06, 0.5), part(0.94, 0.5));
        for along in [0.16, 0.28, 0.36, 0.52, 0.64, 0.7, 0.86] {
            pen.line("plan-detail", part(along - 0.02, 0.22), part(along + 0.02, 0.78));
        }
    }

    fn table(&self, pen: &mut Pen) {
        pen.rect("plan-room", self.area, 7.0);
        pen.rect("plan-detail", self.area.shrunk(3.0), 5.0);
    }
}

/// The edge of a piece of furniture that stands at a wall: where the head of a bed or the back of a seat belongs.
fn nearest_wall(kind: RoomKind, area: Area, hull: Area) -> Edge {
    let ((x, y), (middle, half)) = (area.center(), hull.center());
    let side = if x < middle { Edge::Left } else { Edge::Right };
    match kind {
        RoomKind::Bed if area.h > area.w && y < half => Edge::Top,
        RoomKind::Bed if area.h > area.w => Edge::Bottom,
        RoomKind::Seat if area.w > area.h => Edge::Bottom,
        _ => side,
    }
}
