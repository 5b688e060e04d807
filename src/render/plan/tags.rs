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
/// The same within a list of tags that share one leader.
const LIST_PITCH: f64 = 31.0;
pub const ROW_PITCH: f64 = 58.0;
/// From dot to dot, so that each can be seen and no leader runs through another's dot.
const DOT_PITCH: f64 = 8.0;
/// Dots nearer to each other than this are one spot: its places share a dot, a leader and a list of tags.
const SAME_SPOT: f64 = 6.0;
/// A leader leaves its tag straight, so that it keeps clear of the tags beside it.
const STUB: f64 = 4.5;
/// Between the edge of the drawing and its tags.
const RIM: f64 = 1.0;
/// Between a row of tags and the body.
pub const GUTTER: f64 = 24.0;
/// The line of words at the top.
const HEAD: f64 = 24.0;
/// As many tags as fit side by side.
const ROW_HOLDS: usize = 6;

/// A place with its tag.
pub struct Tagged<'a> {
    /// Its number in the plan.
    pub number: usize,
    pub mark: &'a Mark,
    pub tag: Area,
}

/// The places of one spot with their tags, its dot and the leader between them.
pub struct Placed<'a> {
    pub tags: Vec<Tagged<'a>>,
    /// From the list of tags straight out, aslant to the level of the dot, and straight in to the dot.
    pub leader: [Point; 4],
}

impl Placed<'_> {
    /// The numbers of its places.
    pub fn numbers(&self) -> Vec<usize> {
        self.tags.iter().map(|tagged| tagged.number).collect()
    }

    /// Any of its places stands for the spot: they share what is drawn there.
    pub fn first(&self) -> &Mark {
        self.tags[0].mark
    }
}

/// The spots along one edge of the drawing, in reading order.
pub struct Group<'a> {
    pub edge: Edge,
    pub spots: Vec<Placed<'a>>,
}

pub struct Layout<'a> {
    pub frame: Frame,
    pub height: f64,
    pub groups: [Group<'a>; 4],
}

impl<'a> Layout<'a> {
    pub fn spots(&self) -> impl Iterator<Item = &Placed<'a>> {
        self.groups.iter().flat_map(|group| &group.spots)
    }
}

/// Places and where their dot belongs, with `top` of the frame still 0.
pub(super) struct Spot<'a> {
    marks: Vec<(usize, &'a Mark)>,
    dot: Point,
}

impl<'a> Spot<'a> {
    pub(super) fn new(number: usize, mark: &'a Mark, dot: Point) -> Self {
        Spot { marks: vec![(number, mark)], dot }
    }

    /// How much longer than one tag its list is.
    fn longer(&self) -> f64 {
        (self.marks.len() - 1) as f64 * LIST_PITCH
    }

    /// The code that comes first, so that the order of the manifests changes nothing.
    fn code(&self) -> &'a str {
        &self.marks[0].1.code
    }
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
pub(super) struct Lane {
    pub edge: Edge,
    /// Least distance between the middles of two tags.
    pub pitch: f64,
    /// First and last middle of a tag along the edge.
    pub range: (f64, f64),
    /// First and last level of a dot along the edge: no leader strays between the tags of another edge.
    pub reach: (f64, f64),
    /// The middle of the tags, across the edge; of a list in a row, of the tag nearest to the vehicle.
    pub middle: f64,
    /// Where leaders stop slanting, across the edge.
    pub bend: f64,
}

pub fn arrange(plan: &Plan) -> Layout<'_> {
    let mut frame = Frame::new(plan);
    let span = frame.units(frame.ahead + frame.length);
    let dealt = deal(plan, &frame, (span / COLUMN_PITCH) as usize);
    let long = |spots: &[Spot]| spots.iter().map(|spot| COLUMN_PITCH + spot.longer()).sum::<f64>();
    let tall = span.max(long(&dealt.left)).max(long(&dealt.right));
    let first = HEAD + row(&dealt.top);
    let last = first + tall;
    let height = last + row(&dealt.bottom) + 6.0;
    frame.top = first + (tall - span) / 2.0 + frame.units(frame.ahead);
    let [top, left, right, bottom] = lanes(first, last);
    let groups = [(dealt.top, top), (dealt.left, left), (dealt.right, right), (dealt.bottom, bottom)];
    let groups = groups.map(|(spots, lane)| line_up(spots, &lane, frame.top));
    Layout { frame, height, groups }
}

/// How deep a row of tags is, with the air between it and the body.
pub(super) fn row(spots: &[Spot]) -> f64 {
    let deepest = spots.iter().map(Spot::longer).reduce(f64::max);
    deepest.map_or(0.0, |longer| TAG_HEIGHT + longer + GUTTER)
}

/// The four edges, with columns that run from `first` to `last`.
pub(super) fn lanes(first: f64, last: f64) -> [Lane; 4] {
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
    for (number, mark) in plan.marks.iter().enumerate() {
        let dot = frame.onto_body(mark.side, mark.x, mark.y);
        let edge = edge_of(plan, mark, dot);
        dealt.list(edge).push(Spot::new(number, mark, dot));
    }
    for edge in [Edge::Top, Edge::Left, Edge::Right, Edge::Bottom] {
        let spots = std::mem::take(dealt.list(edge));
        *dealt.list(edge) = gather(spots, edge);
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
            while count(self.list(from)) > holds {
                let Some(index) = innermost(self.list(from), from) else {
                    break;
                };
                if count(self.list(to)) + self.list(from)[index].marks.len() >= count(self.list(from)) {
                    break;
                }
                let spot = self.list(from).remove(index);
                self.list(to).push(spot);
            }
        }
    }
}

/// How many tags there are.
fn count(spots: &[Spot]) -> usize {
    spots.iter().map(|spot| spot.marks.len()).sum()
}

/// Makes one spot of places whose dots would cover each other. Hollow dots and full ones stay apart.
pub(super) fn gather(mut spots: Vec<Spot>, edge: Edge) -> Vec<Spot> {
    spots.sort_by(|a, b| order(edge, a, b));
    let mut gathered: Vec<Spot> = Vec::new();
    for spot in spots {
        let hollow = |spot: &Spot| spot.marks[0].1.is_hollow();
        let near = |other: &&mut Spot| {
            let away = (other.dot.0 - spot.dot.0).hypot(other.dot.1 - spot.dot.1);
            away < SAME_SPOT && hollow(other) == hollow(&spot)
        };
        match gathered.iter_mut().find(near) {
            Some(other) => other.marks.extend(spot.marks),
            None => gathered.push(spot),
        }
    }
    gathered.iter_mut().for_each(|spot| spot.marks.sort_by(|a, b| a.1.code.cmp(&b.1.code)));
    gathered
}

/// Joins the spots of a row that are nearest along it, until it holds them.
pub(super) fn join(spots: &mut Vec<Spot>) {
    spots.sort_by(|a, b| order(Edge::Top, a, b));
    while spots.len() > ROW_HOLDS {
        let gap = |at: &usize| spots[at + 1].dot.0 - spots[*at].dot.0;
        let nearest = (0..spots.len() - 1).min_by(|a, b| gap(a).total_cmp(&gap(b))).unwrap_or_default();
        let next = spots.remove(nearest + 1);
        spots[nearest].marks.extend(next.marks);
    }
}

/// Moves spots from a row that holds too many to one that has room, those nearest to it first.
pub(super) fn level_rows(rows: &mut [Vec<Spot>; 2]) {
    for (from, to, down) in [(0, 1, 1.0), (1, 0, -1.0)] {
        while rows[from].len() > ROW_HOLDS && rows[to].len() < ROW_HOLDS {
            let depth = |at: &usize| rows[from][*at].dot.1 * down;
            let nearest = (0..rows[from].len()).max_by(|a, b| depth(a).total_cmp(&depth(b))).unwrap_or_default();
            let spot = rows[from].remove(nearest);
            rows[to].push(spot);
        }
    }
}

fn order(edge: Edge, a: &Spot, b: &Spot) -> Ordering {
    let apart = |spot: &Spot| edge.point(spot.dot.0, spot.dot.1);
    let (one, two) = (apart(a), apart(b));
    one.0.total_cmp(&two.0).then(one.1.total_cmp(&two.1)).then_with(|| a.code().cmp(b.code()))
}

/// The place of a column that lies farthest into the vehicle, of those that may change sides.
fn innermost(spots: &[Spot], column: Edge) -> Option<usize> {
    let within = |mark: &Mark| matches!(mark.side, Side::Inside | Side::Roof | Side::Under);
    let may_move = |spot: &Spot| spot.marks.iter().all(|(_, mark)| within(mark));
    let depth = |index: &usize| -spots[*index].dot.0 * column.outward();
    let movable = (0..spots.len()).filter(|index| may_move(&spots[*index]));
    movable.max_by(|a, b| depth(a).total_cmp(&depth(b)))
}

/// Stands the tags of one edge in the order of their dots and leads a line from each to its dot.
///
/// A leader slants from its tag to the level of its dot, then runs straight in. Tags and levels are both in strict order
/// along the edge, so the slanting parts cannot cross; the straight parts are parallel.
pub(super) fn line_up<'a>(mut spots: Vec<Spot<'a>>, lane: &Lane, down: f64) -> Group<'a> {
    spots.iter_mut().for_each(|spot| spot.dot.1 += down);
    spots.sort_by(|a, b| order(lane.edge, a, b));
    let levels = levels(&spots, lane);
    let longer = |spot: &Spot| if lane.edge.upright() { spot.longer() } else { 0.0 };
    let sizes: Vec<f64> = spots.iter().map(|spot| lane.pitch + longer(spot)).collect();
    let half = |spot: Option<&Spot>| spot.map_or(0.0, longer) / 2.0;
    let range = (lane.range.0 + half(spots.first()), lane.range.1 - half(spots.last()));
    let stands = spread(&levels, &sizes, range);
    let places = spots.iter().zip(levels).zip(stands);
    let placed = places.map(|((spot, level), stand)| lane.place(spot, level, stand));
    Group { edge: lane.edge, spots: placed.collect() }
}

/// Where along the edge each leader runs in: at its dot, or beside it when dots are crowded.
fn levels(spots: &[Spot], lane: &Lane) -> Vec<f64> {
    let wanted: Vec<f64> = spots.iter().map(|spot| lane.apart(spot).0).collect();
    spread(&wanted, &vec![DOT_PITCH; spots.len()], lane.reach)
}

impl Lane {
    /// How far along the edge a dot is, and how far across.
    fn apart(&self, spot: &Spot) -> (f64, f64) {
        self.edge.point(spot.dot.0, spot.dot.1)
    }

    fn place<'a>(&self, spot: &Spot<'a>, level: f64, stand: f64) -> Placed<'a> {
        let depth = if self.edge.upright() { TAG_WIDTH } else { TAG_HEIGHT };
        let inner = self.middle - self.edge.outward() * depth / 2.0;
        let out = inner - self.edge.outward() * STUB;
        let dot = self.apart(spot).1;
        let course = [(stand, inner), (stand, out), (level, self.bend), (level, dot)];
        let tag = |(at, &(number, mark)): (usize, &(usize, &'a Mark))| {
            let by = at as f64 * LIST_PITCH;
            let (along, across) = match self.edge.upright() {
                true => (stand - spot.longer() / 2.0 + by, self.middle),
                false => (stand, self.middle + self.edge.outward() * by),
            };
            Tagged { number, mark, tag: Area::around(self.edge.point(along, across), TAG_WIDTH, TAG_HEIGHT) }
        };
        Placed {
            tags: spot.marks.iter().enumerate().map(tag).collect(),
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
