//! The plan of a vehicle: a drawing from above, front at the top, with a tag to tap for each place.
//!
//! An inline SVG for the width of a phone. It has classes and no colours, so `plan.css` decides how it looks; without
//! any style it is still a line drawing with links. The same plan gives the same text, byte for byte.

mod drawn;
mod frame;
mod input;
pub(super) mod pen;
mod rooms;
mod shell;
mod side;
mod tags;
#[cfg(test)]
mod tests;

pub use drawn::Drawn;
pub use input::{Body, Door, DoorKind, Mark, MarkKind, Plan, Room, RoomKind, Side, Steering, Words};
pub use side::side;

use frame::WIDTH;
use pen::{Area, Edge, Num, Path, Pen, Point, escape};
use tags::{Group, Placed, Tagged};

/// Draws `plan` as an `<svg>` element, once for all pages.
///
/// The drawing is a labelled group of lists of links, one list for each edge that has tags; everything else in it is
/// hidden from screen readers. Numbers that are no numbers, and positions off the vehicle, are brought back onto it.
pub fn draw(plan: &Plan, words: &Words) -> Drawn {
    let layout = tags::arrange(plan);
    let mut pen = Pen::default();
    pen.open("svg", "plan", &root_attributes(plan, &words.label, layout.height));
    pen.open("g", "plan-vehicle", r#"fill="none" stroke="currentColor" font-size="11.5" aria-hidden="true""#);
    shell::under(&mut pen, plan, &layout.frame);
    rooms::draw(&mut pen, plan, &layout.frame, layout.spots());
    shell::walls(&mut pen, plan, &layout.frame);
    pen.close("g");
    heads(&mut pen, plan, words);
    let (left, right) = sides(plan, words);
    let within = layout.frame.hull().shrunk(4.0);
    places(&mut pen, &layout.groups, within, &[&words.front, left, right, &words.rear], words);
    pen.close("svg");
    pen.drawn()
}

fn root_attributes(plan: &Plan, label: &str, height: f64) -> String {
    let label = [plan.title.as_str(), label].map(str::trim);
    let label = label.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(". ");
    format!(
        "xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\" role=\"group\" aria-label=\"{}\"",
        Num(WIDTH),
        Num(height),
        escape(&label)
    )
}

/// The words above the drawing: which side is which, and which way it faces.
fn heads(pen: &mut Pen, plan: &Plan, words: &Words) {
    let (left, right) = sides(plan, words);
    pen.open("g", "plan-heads", r#"fill="currentColor" font-size="12" aria-hidden="true""#);
    pen.text("plan-head", "start", (1.0, 13.0), left);
    pen.text("plan-head", "middle", (WIDTH / 2.0, 13.0), &format!("▲ {}", words.front));
    pen.text("plan-head", "end", (WIDTH - 1.0, 13.0), right);
    pen.close("g");
}

/// The words for the left and right of the drawing.
fn sides<'w>(plan: &Plan, words: &'w Words) -> (&'w str, &'w str) {
    if plan.nearside_is_left { (&words.nearside, &words.offside) } else { (&words.offside, &words.nearside) }
}

/// Leaders and dots first, so that no tag is ever covered; then the tags as lists of links.
fn places(pen: &mut Pen, groups: &[Group], within: Area, names: &[&str], words: &Words) {
    pen.open("g", "plan-leaders", r#"fill="none" stroke="currentColor" aria-hidden="true""#);
    groups.iter().for_each(|group| group.spots.iter().for_each(|placed| leader(pen, placed, group.edge, within)));
    pen.close("g");
    for (group, name) in groups.iter().zip(names).filter(|(group, _)| !group.spots.is_empty()) {
        list(pen, group, name, words);
    }
}

/// The line and the dot; within the walls a halo keeps the line clear of the furniture.
fn leader(pen: &mut Pen, placed: &Placed, edge: Edge, within: Area) {
    let [.., bend, dot] = placed.leader;
    let hollow = placed.first().is_hollow();
    if hollow || placed.first().side == Side::Inside {
        pen.line("plan-halo", within.nearest(bend), dot);
    }
    if let ([first, .., last], true) = (placed.tags.as_slice(), edge.upright()) {
        let inner = placed.leader[0].0;
        pen.line("plan-leader", (inner, first.tag.center().1), (inner, last.tag.center().1));
    }
    pen.either(placed.numbers(), |pen, here| {
        let (line, size) = if here { ("plan-leader plan-leader-here", 3.8) } else { ("plan-leader", 2.8) };
        pen.path(line, &Path::through(&placed.leader));
        if here {
            pen.circle("plan-ring", dot, 7.0);
        }
        let ends = if hollow { "plan-dot plan-dot-hollow" } else { "plan-dot" };
        pen.circle(ends, dot, size);
    });
}

impl Mark {
    /// A hollow dot stands for what is above or below the floor that is drawn.
    fn is_hollow(&self) -> bool {
        matches!(self.side, Side::Roof | Side::Under)
    }
}

fn list(pen: &mut Pen, group: &Group, name: &str, words: &Words) {
    let style = r#"fill="none" stroke="currentColor" font-weight="700""#;
    pen.open("g", "plan-list", &format!("{style} role=\"list\" aria-label=\"{}\"", escape(name)));
    for tagged in group.spots.iter().flat_map(|placed| &placed.tags) {
        pen.open("g", "plan-place", r#"role="listitem""#);
        tag(pen, tagged, group.edge, words);
        pen.close("g");
    }
    pen.close("g");
}

/// Drawn about its own middle, so that all tags but their words are the same text and weigh little on the way to a phone.
fn tag(pen: &mut Pen, tagged: &Tagged, edge: Edge, words: &Words) {
    let (mark, (x, y)) = (tagged.mark, tagged.tag.center());
    let face = Area::around((0.0, 0.0), tagged.tag.w, tagged.tag.h);
    pen.link(tagged.number, &mark.address, |here| {
        let (class, current) = if here { (" plan-here", " aria-current=\"location\"") } else { ("", "") };
        let (kind, label) = (mark.kind.word(), escape(&spoken(mark, words, here)));
        let at = format!("transform=\"translate({} {})\"", Num(x), Num(y));
        format!("class=\"plan-mark plan-kind-{kind}{class}\" {at} aria-label=\"{label}\"{current}")
    });
    pen.either(vec![tagged.number], |pen, here| {
        match here {
            true => pen.path("plan-tag", &pointed(face, edge)),
            false => pen.rect("plan-tag", face, 7.0),
        }
        code(pen, mark, face, edge, here);
    });
    pen.close("a");
}

/// The code, after the sign if there is one, clear of the point of a pointed tag.
fn code(pen: &mut Pen, mark: &Mark, tag: Area, edge: Edge, here: bool) {
    let blunt = if edge.upright() { 0.92 } else { 0.84 };
    let face = if here { tag.strip(edge, 0.0, blunt) } else { tag };
    let room = if mark.sign { sign(pen, face) } else { face };
    let (x, y) = room.center();
    let size = code_size(&mark.code, room.w);
    pen.code((x, y + size * 0.36), size, &mark.code);
}

/// "G1 Gas locker, warning, you are here".
fn spoken(mark: &Mark, words: &Words, here: bool) -> String {
    let mut spoken = format!("{} {}", mark.code, mark.name);
    for (said, word) in [(mark.sign, &words.sign), (here, &words.here)] {
        if said && !word.is_empty() {
            spoken += &format!(", {word}");
        }
    }
    spoken
}

/// A tag with a point towards the vehicle, hardly longer than the others.
fn pointed(tag: Area, edge: Edge) -> Path {
    let (middle, inward) = (tag.center(), -edge.outward());
    let (along, across) = edge.point(tag.w / 2.0, tag.h / 2.0);
    let (tip, shoulder) = (across + 2.5, across - 7.0);
    let corner = |a: f64, c: f64, radius: f64| -> (Point, f64) {
        let (dx, dy) = edge.point(a, c * inward);
        ((middle.0 + dx, middle.1 + dy), radius)
    };
    Path::rounded(&[
        corner(-along, -across, 6.0),
        corner(-along, shoulder, 3.0),
        corner(0.0, tip, 2.0),
        corner(along, shoulder, 3.0),
        corner(along, -across, 6.0),
    ])
}

/// A small warning triangle at the left of the tag; gives the room that is left for the code.
fn sign(pen: &mut Pen, tag: Area) -> Area {
    let (x, y) = (tag.x + 4.0, tag.center().1);
    let corners = [(x, y + 5.5), (x + 6.5, y - 6.5), (x + 13.0, y + 5.5)];
    pen.path("plan-sign", &Path::rounded(&corners.map(|corner| (corner, 1.5))));
    pen.line("plan-sign-bar", (x + 6.5, y - 2.0), (x + 6.5, y + 3.8));
    Area { x: tag.x + 17.5, w: tag.w - 19.5, ..tag }
}

/// As large as fits: bold capitals and digits are about 0.68 of their size wide.
fn code_size(code: &str, room: f64) -> f64 {
    let letters = code.chars().count().max(1) as f64;
    ((room - 4.0) / (0.7 * letters)).clamp(4.0, 18.0)
}
