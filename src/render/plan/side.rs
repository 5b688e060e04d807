//! The vehicle from one side, where it matters how high its places are: seen by someone who stands there.

use super::frame::{DRAWBAR, WIDTH, sane};
use super::input::{Body, Door, DoorKind, Mark, Plan, Side, Words};
use super::pen::{Area, Edge, Path, Pen, Point};
use super::tags::{self, Group, Lane, ROW_PITCH, Spot, TAG_HEIGHT, TAG_WIDTH};
use super::{Drawn, places, root_attributes};

/// Between the body and the edges of the drawing.
const RIM: f64 = 8.0;
/// A high vehicle is drawn smaller, so that a phone shows it with its tags.
const TALLEST: f64 = 190.0;
/// The line of words at the top.
const HEAD: f64 = 24.0;
/// A usual wheel, in mm.
const WHEEL: f64 = 335.0;

/// Draws the nearside or the offside of `plan`, once for all pages; nothing when no labelled place is there.
pub fn side(plan: &Plan, words: &Words, side: Side) -> Option<Drawn> {
    let here = |mark: &&Mark| mark.labelled && mark.side == side && mark.z.is_finite();
    plan.marks.iter().find(here)?;
    let mut view = View::new(plan, side);
    let mut rows = [vec![], vec![]];
    for (number, mark) in plan.marks.iter().enumerate().filter(|(_, mark)| here(mark)) {
        rows[usize::from(mark.z < view.height * 0.45)].push(Spot::new(number, mark, view.dot(mark)));
    }
    let edges = [Edge::Top, Edge::Bottom];
    let mut rows = [0, 1].map(|row| tags::gather(std::mem::take(&mut rows[row]), edges[row]));
    tags::level_rows(&mut rows);
    rows.iter_mut().for_each(tags::join);
    let first = HEAD + tags::row(&rows[0]);
    view.ground = first + view.units(view.height);
    let height = view.ground + tags::row(&rows[1]) + 8.0;
    let [above, below] = rows;
    let groups = [
        tags::line_up(above, &lane(Edge::Top, first), view.ground),
        tags::line_up(below, &lane(Edge::Bottom, view.ground), view.ground),
    ];
    Some(view.draw(plan, words, &groups, height))
}

/// A row of tags beyond `line`.
fn lane(edge: Edge, line: f64) -> Lane {
    let ends = (1.0 + TAG_WIDTH / 2.0, WIDTH - 1.0 - TAG_WIDTH / 2.0);
    Lane {
        edge,
        pitch: ROW_PITCH,
        range: ends,
        reach: (RIM, WIDTH - RIM),
        middle: line + edge.outward() * (tags::GUTTER + TAG_HEIGHT / 2.0),
        bend: line + edge.outward() * 3.0,
    }
}

/// Where millimetres land: `x` from the front, `z` above the ground.
struct View {
    side: Side,
    body: Body,
    length: f64,
    height: f64,
    ahead: f64,
    /// Whether the front is at the left.
    front_left: bool,
    per_mm: f64,
    ground: f64,
}

impl View {
    fn new(plan: &Plan, side: Side) -> Self {
        let length = sane(plan.length, 1500.0, 14_000.0, 6000.0);
        let height = sane(plan.height, 1500.0, 4200.0, 2700.0);
        let ahead = if plan.body == Body::Trailer { DRAWBAR } else { 0.0 };
        let per_mm = ((WIDTH - 2.0 * RIM) / (length + ahead)).min(TALLEST / height);
        let front_left = (side == Side::Nearside) == plan.nearside_is_left;
        View { side, body: plan.body, length, height, ahead, front_left, per_mm, ground: 0.0 }
    }

    fn units(&self, mm: f64) -> f64 {
        mm * self.per_mm
    }

    fn at(&self, x: f64, z: f64) -> Point {
        let middle = (self.length - self.ahead) / 2.0;
        let along = self.units(x - middle);
        (WIDTH / 2.0 + if self.front_left { along } else { -along }, self.ground - self.units(z))
    }

    fn area(&self, from: f64, to: f64, low: f64, high: f64) -> Area {
        Area::between(self.at(from, low), self.at(to, high))
    }

    /// Where a place is, brought onto the side.
    fn dot(&self, mark: &Mark) -> Point {
        let x = sane(mark.x, 40.0 - self.ahead, self.length - 40.0, self.length / 2.0);
        self.at(x, sane(mark.z, 120.0, self.height - 60.0, self.height / 2.0))
    }

    fn draw(&self, plan: &Plan, words: &Words, groups: &[Group; 2], height: f64) -> Drawn {
        let (name, label) = match self.side {
            Side::Nearside => (&words.nearside, &words.nearside_label),
            _ => (&words.offside, &words.offside_label),
        };
        let mut pen = Pen::default();
        pen.open("svg", "plan plan-side", &root_attributes(plan, label, height));
        pen.open("g", "plan-vehicle", r#"fill="none" stroke="currentColor" aria-hidden="true""#);
        self.vehicle(&mut pen, plan);
        pen.close("g");
        pen.open("g", "plan-heads", r#"fill="currentColor" font-size="12" aria-hidden="true""#);
        let (start, end) = match self.front_left {
            true => (format!("◀ {}", words.front), words.rear.clone()),
            false => (words.rear.clone(), format!("{} ▶", words.front)),
        };
        pen.text("plan-head", "start", (1.0, 13.0), &start);
        pen.text("plan-head", "middle", (WIDTH / 2.0, 13.0), name);
        pen.text("plan-head", "end", (WIDTH - 1.0, 13.0), &end);
        pen.close("g");
        let within = self.area(0.0, self.length, 0.0, self.height);
        places(&mut pen, groups, within, &[name, name], words);
        pen.close("svg");
        pen.drawn()
    }

    fn vehicle(&self, pen: &mut Pen, plan: &Plan) {
        let corners: Vec<_> = outline(self.body, self.length, self.height)
            .into_iter()
            .map(|(x, z, r)| (self.at(x, z), self.units(r)))
            .collect();
        if self.body == Body::Trailer {
            self.drawbar(pen);
        }
        pen.line("plan-ground", (1.0, self.ground), (WIDTH - 1.0, self.ground));
        pen.path("plan-floor", &Path::rounded(&corners));
        pen.path("plan-wall", &Path::rounded(&corners));
        plan.doors.iter().filter(|door| door.side == self.side).for_each(|door| self.door(pen, door));
        let axles = plan.front_axle.iter().chain(&plan.rear_axles).filter(|axle| axle.is_finite());
        for axle in axles {
            let middle = self.at(axle.clamp(0.0, self.length), WHEEL);
            pen.circle("plan-arch", middle, self.units(WHEEL + 85.0));
            pen.circle("plan-wheel", middle, self.units(WHEEL));
            pen.circle("plan-hub", middle, self.units(WHEEL * 0.5));
        }
    }

    /// A door as tall as such doors are, with its window or handle.
    fn door(&self, pen: &mut Pen, door: &Door) {
        let end = |mm| sane(mm, 0.0, self.length, 0.0);
        let (from, to) = (end(door.from.min(door.to)), end(door.from.max(door.to)));
        let tall = |mm: f64| mm.min(self.height * 0.88);
        let panel = |low, high| self.area(from, to, low, tall(high));
        match door.kind {
            DoorKind::Window => pen.rect("plan-pane", panel(1150.0, 1700.0), self.units(90.0)),
            DoorKind::Cab => {
                pen.rect("plan-panel", panel(420.0, 1950.0), self.units(80.0));
                let inner =
                    self.area(from + 90.0, (to - 90.0).max(from + 90.0), 1180.0_f64.min(tall(1180.0)), tall(1830.0));
                pen.rect("plan-pane", inner, self.units(80.0));
                self.handle(pen, to - 180.0, 1050.0);
            }
            DoorKind::Sliding => {
                pen.rect("plan-panel", panel(400.0, 2250.0), self.units(70.0));
                self.handle(pen, from + 150.0, 1100.0);
            }
            DoorKind::Habitation | DoorKind::Rear => {
                pen.rect("plan-panel", panel(450.0, 2250.0), self.units(110.0));
                self.handle(pen, to - 130.0, 1200.0);
            }
            DoorKind::Garage => pen.rect("plan-panel", panel(500.0, 1350.0), self.units(60.0)),
        }
    }

    fn handle(&self, pen: &mut Pen, x: f64, z: f64) {
        pen.line("plan-jamb", self.at(x - 60.0, z), self.at(x + 60.0, z));
    }

    /// The A-frame, the coupling head and the jockey wheel.
    fn drawbar(&self, pen: &mut Pen) {
        pen.line("plan-drawbar", self.at(300.0, 420.0), self.at(150.0 - self.ahead, 430.0));
        pen.rect("plan-coupling", self.area(-self.ahead, 260.0 - self.ahead, 390.0, 500.0), self.units(50.0));
        pen.line("plan-drawbar", self.at(500.0 - self.ahead, 620.0), self.at(500.0 - self.ahead, 200.0));
        pen.circle("plan-wheel", self.at(500.0 - self.ahead, 110.0), self.units(110.0));
    }
}

/// A corner of the side: `x` from the front, `z` above the ground, and its radius, in mm.
type Corner = (f64, f64, f64);

/// The outline from the foot of the front, over the roof, to the foot of the rear. Typical of the kind, of no vehicle.
fn outline(body: Body, length: f64, top: f64) -> Vec<Corner> {
    let k = (length / 5500.0).min(1.0);
    let end = length;
    match body {
        Body::PanelVan => vec![
            (40.0, 330.0, 90.0),
            (0.0, 880.0, 200.0),
            (560.0 * k, 1180.0, 160.0),
            (1230.0 * k, (top - 500.0).max(1250.0), 260.0),
            (1750.0 * k, top, 320.0),
            (end - 50.0, top, 170.0),
            (end, 330.0, 90.0),
        ],
        Body::Micro => vec![
            (40.0, 300.0, 90.0),
            (0.0, 760.0, 180.0),
            (680.0 * k, 1000.0, 200.0),
            (1350.0 * k, top - 40.0, 260.0),
            (1800.0 * k, top, 300.0),
            (end - 180.0, top - 30.0, 240.0),
            (end, 900.0, 200.0),
            (end - 40.0, 300.0, 90.0),
        ],
        Body::Coachbuilt => vec![
            (40.0, 330.0, 90.0),
            (0.0, 880.0, 200.0),
            (560.0 * k, 1160.0, 160.0),
            (1000.0 * k, 1780.0, 60.0),
            (480.0 * k, 1900.0, 160.0),
            (640.0 * k, top, 420.0),
            (end, top, 140.0),
            (end, 400.0, 90.0),
        ],
        Body::AClass => vec![
            (90.0, 330.0, 120.0),
            (0.0, 1150.0, 300.0),
            (420.0 * k, top, 500.0),
            (end, top, 160.0),
            (end, 360.0, 90.0),
        ],
        Body::Trailer => vec![
            (160.0, 400.0, 120.0),
            (0.0, 1150.0, 300.0),
            (330.0, top, 420.0),
            (end - 220.0, top, 320.0),
            (end, 1000.0, 250.0),
            (end - 120.0, 400.0, 120.0),
        ],
    }
}
