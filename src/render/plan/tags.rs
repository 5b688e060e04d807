//! Gives each place a tag beside the vehicle and a leader to its dot.
//!
//! Invariants: tags never overlap, and the leaders of one edge never cross. Both follow from keeping one order, that of
//! the dots, at the tags, at the bends and at the dots: see [`line_up`].

use super::frame::{Frame, MARGIN, WIDTH};
use super::input::{Body, Mark, Plan, Side};
use super::pen::{Area, Edge, Point};
use std::cmp::Ordering;

/// A tag can be hit with a wet thumb: 52 by 30 CSS pixels on a 360 pixel wide drawing.
pub const TAG_WIDTH: f64 = 52.0;
pub const TAG_HEIGHT: f64 = 30.0;
/// From the middle of one tag to the middle of the next.
const COLUMN_PITCH: f64 = 34.0;
const ROW_PITCH: f64 = 58.0;
/// From dot to dot, so that each can be seen and no leader runs through another's dot.
const DOT_PITCH: f64 = 7.0;
/// The dot where the reader stands has a ring round it.
const RING_PITCH: f64 = 18.0;
/// A leader leaves its tag straight, so that it keeps clear of the tags beside it.
const STUB: f64 = 4.5;
/// Between the edge of the drawing and its tags.
const RIM: f64 = 1.0;
/// Between a row of tags and the body.
const GUTTER: f64 = 24.0;
/// The line of words at the top.
const HEAD: f64 = 24.0;
/// As many tags as fit side by side.
const ROW_HOLDS: usize = 6;

/// A place with its tag, its dot and the leader between them.
pub struct Placed<'a> {
    pub mark: &'a Mark,
    pub tag: Area,
    /// From the tag straight out, aslant to the level of the dot, and straight in to the dot.
    pub leader: [Point; 4],
}

/// The tags along one edge of the drawing, in reading order.
pub struct Group<'a> {
    pub edge: Edge,
    pub tags: Vec<Placed<'a>>,
}

pub struct Layout<'a> {
    pub frame: Frame,
    pub height: f64,
    pub groups: [Group<'a>; 4],
}

impl<'a> Layout<'a> {
    pub fn tags(&self) -> impl Iterator<Item = &Placed<'a>> {
        self.groups.iter().flat_map(|group| &group.tags)
    }
}

/// A place and where its dot belongs, with `top` of the frame still 0.
#[derive(Clone, Copy)]
struct Spot<'a> {
    mark: &'a Mark,
    dot: Point,
}

/// The places by edge, before their tags have a position.
#[derive(Default)]
struct Dealt<'a> {
    top: Vec<Spot<'a>>,
    left: Vec<Spot<'a>>,
    right: Vec<Spot<'a>>,
    bottom: Vec<Spot<'a>>,
}

/// Where the tags of one edge may stand.
struct Lane {
    edge: Edge,
    /// Least distance between the middles of two tags.
    pitch: f64,
    /// First and last middle of a tag along the edge.
    range: (f64, f64),
    /// First and last level of a dot along the edge: no leader strays between the tags of another edge.
    reach: (f64, f64),
    /// The middle of the tags, across the edge.
    middle: f64,
    /// Where leaders stop slanting, across the edge.
    bend: f64,
}

pub fn arrange(plan: &Plan) -> Layout<'_> {
    let mut frame = Frame::new(plan);
    let span = frame.units(frame.ahead + frame.length);
    let dealt = deal(plan, &frame, (span / COLUMN_PITCH) as usize);
    let longest = dealt.left.len().max(dealt.right.len());
    let tall = span.max(longest as f64 * COLUMN_PITCH);
    let row = |spots: &[Spot]| {
        if spots.is_empty() { 0.0 } else { TAG_HEIGHT + GUTTER }
    };
    let first = HEAD + row(&dealt.top);
    let last = first + tall;
    let height = last + row(&dealt.bottom) + 6.0;
    frame.top = first + (tall - span) / 2.0 + frame.units(frame.ahead);
    let [top, left, right, bottom] = lanes(first, last);
    let groups = [(dealt.top, top), (dealt.left, left), (dealt.right, right), (dealt.bottom, bottom)];
    let groups = groups.map(|(spots, lane)| line_up(spots, &lane, frame.top));
    Layout { frame, height, groups }
}

/// The four edges, with columns that run from `first` to `last`.
fn lanes(first: f64, last: f64) -> [Lane; 4] {
    let row = (RIM + TAG_WIDTH / 2.0, WIDTH - RIM - TAG_WIDTH / 2.0);
    let column = (first + TAG_HEIGHT / 2.0, last - TAG_HEIGHT / 2.0);
    let lane = |edge: Edge, middle, bend| {
        let (pitch, range, reach) = match edge.upright() {
            true => (COLUMN_PITCH, column, (first, last)),
            false => (ROW_PITCH, row, (MARGIN, WIDTH - MARGIN)),
        };
        Lane { edge, pitch, range, reach, middle, bend }
    };
    [
        lane(Edge::Top, first - GUTTER - TAG_HEIGHT / 2.0, first - 3.0),
        lane(Edge::Left, row.0, MARGIN - 4.0),
        lane(Edge::Right, row.1, WIDTH - MARGIN + 4.0),
        lane(Edge::Bottom, last + GUTTER + TAG_HEIGHT / 2.0, last + 3.0),
    ]
}

/// Deals the places to the edges: outside places to their own side, the rest to the nearer column.
fn deal<'a>(plan: &'a Plan, frame: &Frame, column_holds: usize) -> Dealt<'a> {
    let mut dealt = Dealt::default();
    for mark in &plan.marks {
        let dot = frame.onto_body(mark.side, mark.x, mark.y);
        let edge = edge_of(plan, mark, dot);
        dealt.list(edge).push(Spot { mark, dot });
    }
    dealt.shed_row(Edge::Top);
    dealt.shed_row(Edge::Bottom);
    dealt.level_columns(column_holds);
    dealt
}

fn edge_of(plan: &Plan, mark: &Mark, dot: Point) -> Edge {
    let nearside = if plan.nearside_is_left { Edge::Left } else { Edge::Right };
    let offside = if plan.nearside_is_left { Edge::Right } else { Edge::Left };
    match mark.side {
        Side::Nearside => nearside,
        Side::Offside => offside,
        // Beside a drawbar there is room for the columns, and the leaders stay short.
        Side::Front if plan.body != Body::Trailer => Edge::Top,
        Side::Rear => Edge::Bottom,
        _ if dot.0 < WIDTH / 2.0 => Edge::Left,
        _ if dot.0 > WIDTH / 2.0 => Edge::Right,
        _ => nearside,
    }
}

impl<'a> Dealt<'a> {
    fn list(&mut self, edge: Edge) -> &mut Vec<Spot<'a>> {
        match edge {
            Edge::Top => &mut self.top,
            Edge::Left => &mut self.left,
            Edge::Right => &mut self.right,
            Edge::Bottom => &mut self.bottom,
        }
    }

    /// Moves the outermost places of a row that holds too many to the columns beside it.
    fn shed_row(&mut self, edge: Edge) {
        let mut row = std::mem::take(self.list(edge));
        row.sort_by(|a, b| a.dot.0.total_cmp(&b.dot.0));
        for turn in 0..row.len().saturating_sub(ROW_HOLDS) {
            let (side, from) = if turn % 2 == 0 { (Edge::Left, 0) } else { (Edge::Right, row.len() - 1) };
            let spot = row.remove(from);
            self.list(side).push(spot);
        }
        *self.list(edge) = row;
    }

    /// Moves places that are not on an outside wall from a column that holds too many to one that has room.
    ///
    /// The innermost go first, so that no leader of one column reaches past the dot of another.
    fn level_columns(&mut self, holds: usize) {
        for (from, to) in [(Edge::Left, Edge::Right), (Edge::Right, Edge::Left)] {
            while self.list(from).len() > holds && self.list(to).len() + 1 < self.list(from).len() {
                let Some(index) = innermost(self.list(from), from) else {
                    break;
                };
                let spot = self.list(from).remove(index);
                self.list(to).push(spot);
            }
        }
    }
}

/// The place of a column that lies farthest into the vehicle, of those that may change sides.
fn innermost(spots: &[Spot], column: Edge) -> Option<usize> {
    let may_move = |spot: &Spot| matches!(spot.mark.side, Side::Inside | Side::Roof | Side::Under);
    let depth = |index: &usize| -spots[*index].dot.0 * column.outward();
    let movable = (0..spots.len()).filter(|index| may_move(&spots[*index]));
    movable.max_by(|a, b| depth(a).total_cmp(&depth(b)))
}

/// Stands the tags of one edge in the order of their dots and leads a line from each to its dot.
///
/// A leader slants from its tag to the level of its dot, then runs straight in. Tags and levels are both in strict order
/// along the edge, so the slanting parts cannot cross; the straight parts are parallel.
fn line_up<'a>(mut spots: Vec<Spot<'a>>, lane: &Lane, down: f64) -> Group<'a> {
    spots.iter_mut().for_each(|spot| spot.dot.1 += down);
    spots.sort_by(|a, b| lane.order(a, b));
    let levels = levels(&spots, lane);
    let stands = spread(&levels, &vec![lane.pitch; spots.len()], lane.range);
    let places = spots.iter().zip(levels).zip(stands);
    let tags = places.map(|((spot, level), stand)| lane.place(spot, level, stand));
    Group { edge: lane.edge, tags: tags.collect() }
}

/// Where along the edge each leader runs in: at its dot, or beside it when dots are crowded.
fn levels(spots: &[Spot], lane: &Lane) -> Vec<f64> {
    let pitch = |spot: &Spot| {
        if spot.mark.here { RING_PITCH } else { DOT_PITCH }
    };
    let wanted: Vec<f64> = spots.iter().map(|spot| lane.apart(spot).0).collect();
    let sizes: Vec<f64> = spots.iter().map(pitch).collect();
    spread(&wanted, &sizes, lane.reach)
}

impl Lane {
    /// How far along the edge a dot is, and how far across.
    fn apart(&self, spot: &Spot) -> (f64, f64) {
        self.edge.point(spot.dot.0, spot.dot.1)
    }

    fn order(&self, a: &Spot, b: &Spot) -> Ordering {
        let (one, two) = (self.apart(a), self.apart(b));
        let order = one.0.total_cmp(&two.0).then(one.1.total_cmp(&two.1));
        order.then_with(|| a.mark.code.cmp(&b.mark.code))
    }

    fn place<'a>(&self, spot: &Spot<'a>, level: f64, stand: f64) -> Placed<'a> {
        let depth = if self.edge.upright() { TAG_WIDTH } else { TAG_HEIGHT };
        let inner = self.middle - self.edge.outward() * depth / 2.0;
        let out = inner - self.edge.outward() * STUB;
        let dot = self.apart(spot).1;
        let course = [(stand, inner), (stand, out), (level, self.bend), (level, dot)];
        Placed {
            mark: spot.mark,
            tag: Area::around(self.edge.point(stand, self.middle), TAG_WIDTH, TAG_HEIGHT),
            leader: course.map(|(along, across)| self.edge.point(along, across)),
        }
    }
}

/// Moves positions, given in ascending order, as little as possible until neighbours are as far apart as half of both
/// their sizes, within `range`.
///
/// "Little" is the sum of squares: an isotonic regression by pooling neighbours that would come too close. When the
/// range is too short for all of them it is passed at its end, never the distance.
pub fn spread(wanted: &[f64], sizes: &[f64], range: (f64, f64)) -> Vec<f64> {
    let mut offsets = vec![0.0];
    offsets.extend(sizes.windows(2).scan(0.0, |sum, pair| {
        *sum += (pair[0] + pair[1]) / 2.0;
        Some(*sum)
    }));
    let mut pools: Vec<(f64, usize)> = Vec::new();
    for (want, offset) in wanted.iter().zip(&offsets) {
        let mut pool = (want - offset, 1);
        while let Some(&(mean, count)) = pools.last().filter(|last| last.0 > pool.0) {
            pools.pop();
            let both = count + pool.1;
            pool = ((mean * count as f64 + pool.0 * pool.1 as f64) / both as f64, both);
        }
        pools.push(pool);
    }
    let (low, high) = (range.0, range.1 - offsets.last().unwrap_or(&0.0));
    let means = pools.iter().flat_map(|&(mean, count)| std::iter::repeat_n(mean, count));
    means.zip(&offsets).map(|(mean, offset)| mean.min(high).max(low) + offset).collect()
}
