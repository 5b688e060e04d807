//! Writes SVG: shapes with a class, numbers with one decimal at most, text escaped.

use super::drawn::{Drawn, Piece};
use std::fmt;

/// A point in drawing units.
pub type Point = (f64, f64);

/// A rectangle in drawing units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Area {
    pub x: f64,
    pub y: f64,
    pub w: f64,
    pub h: f64,
}

/// One of the four edges of an area, or of the whole drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    Top,
    Left,
    Right,
    Bottom,
}

impl Edge {
    /// True for the edges that run up and down.
    pub fn upright(self) -> bool {
        matches!(self, Edge::Left | Edge::Right)
    }

    /// The direction away from the middle: -1 to the left and up, 1 to the right and down.
    pub fn outward(self) -> f64 {
        match self {
            Edge::Top | Edge::Left => -1.0,
            Edge::Right | Edge::Bottom => 1.0,
        }
    }

    /// The point that lies `along` this edge and `across` it; or, given a point, how far along and across that lies.
    pub fn point(self, along: f64, across: f64) -> Point {
        if self.upright() { (across, along) } else { (along, across) }
    }
}

impl Area {
    pub fn between(a: Point, b: Point) -> Self {
        let (x, y) = (a.0.min(b.0), a.1.min(b.1));
        Area { x, y, w: a.0.max(b.0) - x, h: a.1.max(b.1) - y }
    }

    pub fn around(center: Point, w: f64, h: f64) -> Self {
        Area { x: center.0 - w / 2.0, y: center.1 - h / 2.0, w, h }
    }

    pub fn center(&self) -> Point {
        self.part(0.5, 0.5)
    }

    /// The point at a share of the width and of the height.
    pub fn part(&self, across: f64, down: f64) -> Point {
        (self.x + self.w * across, self.y + self.h * down)
    }

    /// The point of this area that is nearest to `p`.
    pub fn nearest(&self, p: Point) -> Point {
        let (right, bottom) = (self.x + self.w, self.y + self.h);
        (p.0.clamp(self.x, right), p.1.clamp(self.y, bottom))
    }

    /// This area with `by` more on each side, and above and below.
    pub fn grown(&self, by: f64) -> Area {
        Area::around(self.center(), self.w + 2.0 * by, self.h + 2.0 * by)
    }

    pub fn overlaps(&self, other: &Area) -> bool {
        self.x < other.x + other.w
            && other.x < self.x + self.w
            && self.y < other.y + other.h
            && other.y < self.y + self.h
    }

    /// This area made smaller by `by` on each edge, never inside out.
    pub fn shrunk(&self, by: f64) -> Area {
        let (w, h) = ((self.w - 2.0 * by).max(0.0), (self.h - 2.0 * by).max(0.0));
        Area::around(self.center(), w, h)
    }

    /// The strip along `edge` that begins `from` and ends `to`, as shares of the whole.
    pub fn strip(&self, edge: Edge, from: f64, to: f64) -> Area {
        let (near, far) = (from, to);
        match edge {
            Edge::Top => Area::between(self.part(0.0, near), self.part(1.0, far)),
            Edge::Bottom => Area::between(self.part(0.0, 1.0 - near), self.part(1.0, 1.0 - far)),
            Edge::Left => Area::between(self.part(near, 0.0), self.part(far, 1.0)),
            Edge::Right => Area::between(self.part(1.0 - near, 0.0), self.part(1.0 - far, 1.0)),
        }
    }
}

/// A number as it is written: one decimal at most, never `-0`.
#[derive(Clone, Copy)]
pub struct Num(pub f64);

impl fmt::Display for Num {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        let tenths = (self.0 * 10.0).round();
        write!(f, "{}", if tenths == 0.0 { 0.0 } else { tenths / 10.0 })
    }
}

/// Text made safe for XML, in content and in quoted attributes. What XML 1.0 cannot carry is left out.
pub fn escape(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            '\t' | '\n' | '\r' => safe.push(' '),
            '\u{0}'..='\u{1f}' | '\u{7f}'..='\u{9f}' | '\u{fffe}' | '\u{ffff}' => {}
            c => safe.push(c),
        }
    }
    safe
}

/// The course of a line: the `d` of an SVG path.
pub struct Path(String);

impl Path {
    pub fn at(p: Point) -> Self {
        Path(format!("M{} {}", Num(p.0), Num(p.1)))
    }

    pub fn line(mut self, p: Point) -> Self {
        self.0 += &format!("L{} {}", Num(p.0), Num(p.1));
        self
    }

    /// A curve to `p` that bends towards `by`.
    pub fn bend(mut self, by: Point, p: Point) -> Self {
        self.0 += &format!("Q{} {} {} {}", Num(by.0), Num(by.1), Num(p.0), Num(p.1));
        self
    }

    pub fn close(mut self) -> Self {
        self.0.push('Z');
        self
    }

    /// Through all the points, straight.
    pub fn through(points: &[Point]) -> Self {
        match points.split_first() {
            Some((first, rest)) => rest.iter().fold(Path::at(*first), |path, p| path.line(*p)),
            None => Path(String::new()),
        }
    }

    /// A closed shape whose corners are rounded by the radius beside each.
    pub fn rounded(corners: &[(Point, f64)]) -> Self {
        let count = corners.len();
        let mut path: Option<Path> = None;
        for (i, &(corner, radius)) in corners.iter().enumerate() {
            let start = towards(corner, corners[(i + count - 1) % count].0, radius);
            let end = towards(corner, corners[(i + 1) % count].0, radius);
            let reached = match path {
                None => Path::at(start),
                Some(path) => path.line(start),
            };
            path = Some(reached.bend(corner, end));
        }
        path.map_or(Path(String::new()), Path::close)
    }
}

/// The point that lies `distance` from `a` on the way to `b`, halfway at most.
fn towards(a: Point, b: Point, distance: f64) -> Point {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let share = (distance / dx.hypot(dy).max(0.001)).min(0.5);
    (a.0 + dx * share, a.1 + dy * share)
}

/// Text is filled and not stroked, even where no style arrives.
const INK: &str = r#"fill="currentColor" stroke="none""#;

/// The growing drawing.
#[derive(Default)]
pub struct Pen(String, Vec<Piece>);

impl Pen {
    /// The drawing as text, where nothing in it depends on a page.
    pub fn finish(self) -> String {
        self.drawn().on("", None)
    }

    /// The drawing, for all pages.
    pub fn drawn(mut self) -> Drawn {
        self.flush();
        Drawn(self.1)
    }

    fn flush(&mut self) {
        let text = std::mem::take(&mut self.0);
        if !text.is_empty() {
            self.1.push(Piece::Text(text));
        }
    }

    /// What differs when the reader stands at one of `marks`.
    pub fn either(&mut self, marks: Vec<usize>, draw: impl Fn(&mut Pen, bool)) {
        self.flush();
        let [there, here] = [false, true].map(|here| {
            let mut pen = Pen::default();
            draw(&mut pen, here);
            pen.0
        });
        self.1.push(Piece::Either { marks, there, here });
    }

    /// Opens a link to `address`, which is below the root of the guide; `attributes` as in [`Pen::open`].
    pub fn link(&mut self, mark: usize, address: &str, attributes: impl Fn(bool) -> String) {
        self.either(vec![mark], |pen, here| pen.0 += &format!("<a {} href=\"", attributes(here)));
        self.1.push(Piece::Up);
        self.0 += &format!("{}\">", escape(address));
    }

    /// Opens an element; `attributes` are written as they are, so they come from [`escape`] or from this program.
    pub fn open(&mut self, element: &str, class: &str, attributes: &str) {
        let gap = if attributes.is_empty() { "" } else { " " };
        self.0 += &format!("<{element} class=\"{class}\"{gap}{attributes}>");
    }

    pub fn close(&mut self, element: &str) {
        self.0 += &format!("</{element}>\n");
    }

    pub fn rect(&mut self, class: &str, area: Area, radius: f64) {
        let Area { x, y, w, h } = area;
        let (x, y, w, h, r) = (Num(x), Num(y), Num(w), Num(h), Num(radius));
        self.0 += &format!("<rect class=\"{class}\" x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\" rx=\"{r}\"/>");
    }

    pub fn circle(&mut self, class: &str, center: Point, radius: f64) {
        let (x, y, r) = (Num(center.0), Num(center.1), Num(radius));
        self.0 += &format!("<circle class=\"{class}\" cx=\"{x}\" cy=\"{y}\" r=\"{r}\"/>");
    }

    pub fn ellipse(&mut self, class: &str, area: Area) {
        let (x, y) = area.center();
        let (x, y, rx, ry) = (Num(x), Num(y), Num(area.w / 2.0), Num(area.h / 2.0));
        self.0 += &format!("<ellipse class=\"{class}\" cx=\"{x}\" cy=\"{y}\" rx=\"{rx}\" ry=\"{ry}\"/>");
    }

    pub fn path(&mut self, class: &str, path: &Path) {
        self.0 += &format!("<path class=\"{class}\" d=\"{}\"/>", path.0);
    }

    pub fn line(&mut self, class: &str, a: Point, b: Point) {
        self.path(class, &Path::at(a).line(b));
    }

    /// One line of text whose baseline starts, has its middle or ends at `at`: `anchor` says which.
    pub fn text(&mut self, class: &str, anchor: &str, at: Point, text: &str) {
        let (x, y, text) = (Num(at.0), Num(at.1), escape(text));
        self.0 += &format!("<text class=\"{class}\" {INK} text-anchor=\"{anchor}\" x=\"{x}\" y=\"{y}\">{text}</text>");
    }

    /// Bold text in the middle of a tag.
    pub fn code(&mut self, at: Point, size: f64, code: &str) {
        let (x, y, size, code) = (Num(at.0), Num(at.1), Num(size), escape(code));
        self.0 += &format!(
            "<text class=\"plan-code\" {INK} text-anchor=\"middle\" font-size=\"{size}\" x=\"{x}\" y=\"{y}\">{code}</text>"
        );
    }
}
