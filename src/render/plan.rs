//! The plan of a vehicle: a drawing from above, front at the top, with a tag to tap for each place.
//!
//! An inline SVG for the width of a phone. It has classes and no colours, so `plan.css` decides how it looks; without
//! any style it is still a line drawing with links. The same plan gives the same text, byte for byte.

mod frame;
mod input;
pub(super) mod pen;
mod rooms;
mod shell;
mod tags;
#[cfg(test)]
mod tests;

pub use input::{Body, Door, DoorKind, Mark, MarkKind, Plan, Room, RoomKind, Side, Steering, Words};

use frame::WIDTH;
use pen::{Area, Edge, Num, Path, Pen, Point, escape};
use tags::{Group, Layout, Placed};

/// Draws `plan` as an `<svg>` element.
///
/// The drawing is a labelled group of lists of links, one list for each edge that has tags; everything else in it is
/// hidden from screen readers. Numbers that are no numbers, and positions off the vehicle, are brought back onto it.
pub fn draw(plan: &Plan, words: &Words) -> String {
    let layout = tags::arrange(plan);
    let mut pen = Pen::default();
    pen.open("svg", "plan", &root_attributes(plan, words, layout.height));
    pen.open("g", "plan-vehicle", r#"fill="none" stroke="currentColor" font-size="11.5" aria-hidden="true""#);
    shell::under(&mut pen, plan, &layout.frame);
    rooms::draw(&mut pen, plan, &layout.frame, layout.tags());
    shell::walls(&mut pen, plan, &layout.frame);
    pen.close("g");
    heads(&mut pen, plan, words);
    places(&mut pen, &layout, plan, words);
    pen.close("svg");
    pen.finish()
}

fn root_attributes(plan: &Plan, words: &Words, height: f64) -> String {
    let label = [plan.title.as_str(), &words.label].map(str::trim);
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
fn places(pen: &mut Pen, layout: &Layout, plan: &Plan, words: &Words) {
    pen.open("g", "plan-leaders", r#"fill="none" stroke="currentColor" aria-hidden="true""#);
    layout.tags().for_each(|placed| leader(pen, placed, layout.frame.hull().shrunk(4.0)));
    pen.close("g");
    let (left, right) = sides(plan, words);
    let names = [&words.front, left, right, &words.rear];
    for (group, name) in layout.groups.iter().zip(names).filter(|(group, _)| !group.tags.is_empty()) {
        list(pen, group, name, words);
    }
}

/// The line and the dot; within the walls a halo keeps the line clear of the furniture.
fn leader(pen: &mut Pen, placed: &Placed, within: Area) {
    let [.., bend, dot] = placed.leader;
    let hollow = dot_is_hollow(placed.mark);
    if hollow || placed.mark.side == Side::Inside {
        pen.line("plan-halo", within.nearest(bend), dot);
    }
    let (line, size) = match placed.mark.here {
        true => ("plan-leader plan-leader-here", 3.8),
        false => ("plan-leader", 2.8),
    };
    pen.path(line, &Path::through(&placed.leader));
    if placed.mark.here {
        pen.circle("plan-ring", dot, 7.0);
    }
    let ends = if hollow { "plan-dot plan-dot-hollow" } else { "plan-dot" };
    pen.circle(ends, dot, size);
}

/// A hollow dot stands for what is above or below the floor that is drawn.
fn dot_is_hollow(mark: &Mark) -> bool {
    matches!(mark.side, Side::Roof | Side::Under)
}

fn list(pen: &mut Pen, group: &Group, name: &str, words: &Words) {
    let style = r#"fill="none" stroke="currentColor" font-weight="700""#;
    pen.open("g", "plan-list", &format!("{style} role=\"list\" aria-label=\"{}\"", escape(name)));
    for placed in &group.tags {
        pen.open("g", "plan-place", r#"role="listitem""#);
        tag(pen, placed, group.edge, words);
        pen.close("g");
    }
    pen.close("g");
}

fn tag(pen: &mut Pen, placed: &Placed, edge: Edge, words: &Words) {
    let mark = placed.mark;
    let (href, label) = (escape(&mark.href), escape(&spoken(mark, words)));
    let (class, current) = match mark.here {
        true => (" plan-here", " aria-current=\"location\""),
        false => ("", ""),
    };
    let class = format!("plan-mark plan-kind-{}{class}", mark.kind.word());
    let link = format!("href=\"{href}\" aria-label=\"{label}\"{current}");
    pen.open("a", &class, &link);
    match mark.here {
        true => pen.path("plan-tag", &pointed(placed.tag, edge)),
        false => pen.rect("plan-tag", placed.tag, 7.0),
    }
    code(pen, placed, edge);
    pen.close("a");
}

/// The code, after the sign if there is one, clear of the point of a pointed tag.
fn code(pen: &mut Pen, placed: &Placed, edge: Edge) {
    let mark = placed.mark;
    let blunt = if edge.upright() { 0.92 } else { 0.84 };
    let face = if mark.here { placed.tag.strip(edge, 0.0, blunt) } else { placed.tag };
    let room = if mark.sign { sign(pen, face) } else { face };
    let (x, y) = room.center();
    let size = code_size(&mark.code, room.w);
    pen.code((x, y + size * 0.36), size, &mark.code);
}

/// "G1 Gas locker, warning, you are here".
fn spoken(mark: &Mark, words: &Words) -> String {
    let mut spoken = format!("{} {}", mark.code, mark.name);
    for (said, word) in [(mark.sign, &words.sign), (mark.here, &words.here)] {
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
