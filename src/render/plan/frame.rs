//! Where millimetres of the vehicle land on the drawing, and how its body is outlined.
//!
//! Invariant: whatever the plan says, every point that a frame gives is a finite number.

use super::input::{Body, Plan, Side};
use super::pen::{Area, Path, Point};

/// Width of the drawing. At 360 CSS pixels, a small phone, one unit is one pixel.
pub const WIDTH: f64 = 360.0;
/// Room kept on each side of the body for a column of tags and its leaders.
pub const MARGIN: f64 = 77.0;
/// A longer vehicle is drawn smaller, so that it still fits a screen or a page.
const TALLEST: f64 = 700.0;
/// Drawn ahead of a trailer: a usual length of A-frame and coupling (common practice, about 1.2 m).
pub const DRAWBAR: f64 = 1200.0;

/// A corner of one half of the body: `x` from the front, `inset` from the full width, and its radius, in mm.
type Corner = (f64, f64, f64);

pub struct Frame {
    pub length: f64,
    pub width: f64,
    /// What reaches ahead of the body, in mm.
    pub ahead: f64,
    /// Where the body begins on the drawing, in units; the only part that is settled after the tags are counted.
    pub top: f64,
    left: f64,
    per_mm: f64,
    mirrored: bool,
    half: Vec<Corner>,
}

impl Frame {
    pub fn new(plan: &Plan) -> Self {
        let length = sane(plan.length, 1500.0, 14_000.0, 6000.0);
        let width = sane(plan.width, 1000.0, 3000.0, 2200.0);
        let per_mm = ((WIDTH - 2.0 * MARGIN) / width).min(TALLEST / length);
        Frame {
            length,
            width,
            ahead: if plan.body == Body::Trailer { DRAWBAR } else { 0.0 },
            top: 0.0,
            left: (WIDTH - width * per_mm) / 2.0,
            per_mm,
            mirrored: !plan.nearside_is_left,
            half: half_outline(plan.body, length, width),
        }
    }

    /// A length in drawing units.
    pub fn units(&self, mm: f64) -> f64 {
        mm * self.per_mm
    }

    /// The point of the drawing that is `x` from the front and `y` from the nearside edge.
    pub fn at(&self, x: f64, y: f64) -> Point {
        let across = if self.mirrored { self.width - y } else { y };
        (self.left + self.units(across), self.top + self.units(x))
    }

    pub fn area(&self, [x1, y1, x2, y2]: [f64; 4]) -> Area {
        Area::between(self.at(x1, y1), self.at(x2, y2))
    }

    /// The rectangle that holds the body.
    pub fn hull(&self) -> Area {
        self.area([0.0, 0.0, self.length, self.width])
    }

    /// How far the wall stands in from the full width at `x`, in mm.
    pub fn inset(&self, x: f64) -> f64 {
        let spans = self.half.windows(2);
        let span = spans.rev().find(|span| x >= span[0].0).unwrap_or(&self.half[..2]);
        let [(x0, a, _), (x1, b, _)] = [span[0], span[1]];
        let share = if x1 > x0 { ((x - x0) / (x1 - x0)).clamp(0.0, 1.0) } else { 1.0 };
        a + (b - a) * share
    }

    /// A point on the vehicle, brought inside the drawn outline when it lies off it.
    pub fn onto_body(&self, side: Side, x: f64, y: f64) -> Point {
        let x = sane(x, -self.ahead, self.length, self.length / 2.0);
        let y = sane(y, 0.0, self.width, self.width / 2.0);
        let edge = y.min(self.width - y);
        if side == Side::Front && x >= 0.0 {
            let steps = (0..60).map(|step| x + 20.0 * f64::from(step));
            let x = steps.into_iter().find(|x| self.inset(*x) <= edge).unwrap_or(x);
            return self.at(x, y);
        }
        let inset = if x < 0.0 { 0.0 } else { self.inset(x) };
        match side {
            Side::Nearside => self.at(x, y.min(self.width / 2.0).max(inset)),
            Side::Offside => self.at(x, y.max(self.width / 2.0).min(self.width - inset)),
            _ => self.at(x, y.clamp(inset, self.width - inset)),
        }
    }

    /// The outline of the body.
    pub fn outline(&self) -> Path {
        let there = self.half.iter().map(|&(x, y, r)| (self.at(x, y), self.units(r)));
        let back = self.half.iter().rev();
        let back = back.map(|&(x, y, r)| (self.at(x, self.width - y), self.units(r)));
        Path::rounded(&there.chain(back).collect::<Vec<_>>())
    }
}

/// How far a coachbuilt's cab stands in from its house.
pub fn cab_inset(width: f64) -> f64 {
    ((width - 2000.0) / 2.0).clamp(0.045 * width, 0.08 * width)
}

/// One half of the body from front to rear. Shapes are typical of the kind, not of any vehicle.
fn half_outline(body: Body, length: f64, w: f64) -> Vec<Corner> {
    let k = (length / 5500.0).min(1.0);
    let cab = cab_inset(w);
    let end = length;
    match body {
        Body::PanelVan => vec![
            (0.0, 0.24 * w, 280.0),
            (140.0 * k, 0.055 * w, 270.0),
            (580.0 * k, 0.012 * w, 300.0),
            (1100.0 * k, 0.0, 300.0),
            (end, 0.0, 90.0),
        ],
        Body::Micro => vec![
            (0.0, 0.27 * w, 280.0),
            (180.0 * k, 0.07 * w, 300.0),
            (720.0 * k, 0.015 * w, 400.0),
            (1250.0 * k, 0.0, 400.0),
            (end - 220.0, 0.0, 200.0),
            (end, 0.05 * w, 170.0),
        ],
        Body::Coachbuilt => vec![
            (0.0, cab + 0.21 * w, 280.0),
            (140.0 * k, cab + 0.05 * w, 270.0),
            (580.0 * k, cab + 0.012 * w, 300.0),
            (1100.0 * k, cab, 300.0),
            (1800.0 * k, cab, 40.0),
            (1800.0 * k, 0.0, 90.0),
            (end, 0.0, 110.0),
        ],
        Body::AClass => {
            vec![(0.0, 0.17 * w, 350.0), (110.0 * k, 0.035 * w, 260.0), (600.0 * k, 0.0, 300.0), (end, 0.0, 110.0)]
        }
        Body::Trailer => {
            vec![(0.0, 0.1 * w, 200.0), (70.0, 0.0, 200.0), (end - 50.0, 0.0, 130.0), (end, 0.06 * w, 130.0)]
        }
    }
}

/// `value` kept between two bounds; `otherwise` when it is no number at all.
pub fn sane(value: f64, low: f64, high: f64, otherwise: f64) -> f64 {
    if value.is_finite() { value.clamp(low, high) } else { otherwise }
}
