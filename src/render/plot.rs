//! A plot as SVG: axes, courses and marks, with a title and a description for those who do not see it.
//!
//! It has classes and no colours, so `plot.css` decides how it looks; courses differ by their dashes, never by colour
//! alone. The same plot gives the same text, byte for byte.

use super::plan::pen::{Area, Num, Path, Pen, Point, escape};
use crate::model::sums::{Axis, Plot};

/// The drawing, in its own units: it is made for the width of a phone.
const WIDTH: f64 = 360.0;
const FIELD: Area = Area { x: 38.0, y: 26.0, w: 310.0, h: 190.0 };
/// Below the field: numbers, the label of the axis, then a line for each course.
const NUMBERS: f64 = 17.0;
const LABEL: f64 = 36.0;
const LEGEND: f64 = 56.0;
const ROW: f64 = 19.0;

/// Draws `plot` as an `<svg>` element.
pub fn draw(plot: &Plot) -> String {
    let height = FIELD.y + FIELD.h + LEGEND + ROW * plot.lines.len() as f64;
    let id = plot.id;
    let mut pen = Pen::default();
    pen.open(
        "svg",
        "plot",
        &format!(
            "viewBox=\"0 0 {} {}\" role=\"img\" aria-labelledby=\"{id}-title {id}-about\" font-size=\"13\" fill=\"none\" stroke=\"currentColor\"",
            Num(WIDTH),
            Num(height)
        ),
    );
    let mut out = pen.finish();
    out.push_str(&format!("<title id=\"{id}-title\">{}</title>", escape(&plot.title)));
    out.push_str(&format!("<desc id=\"{id}-about\">{}</desc>\n", escape(&plot.about)));
    let mut pen = Pen::default();
    axes(&mut pen, plot);
    courses(&mut pen, plot);
    marks(&mut pen, plot);
    pen.close("svg");
    out + &pen.finish()
}

/// Where a pair of numbers is in the drawing.
fn at(plot: &Plot, (across, up): (f64, f64)) -> Point {
    FIELD.part(share(&plot.across, across), 1.0 - share(&plot.up, up))
}

fn share(axis: &Axis, number: f64) -> f64 {
    (number - axis.from) / (axis.to - axis.from)
}

fn axes(pen: &mut Pen, plot: &Plot) {
    pen.rect("plot-field", FIELD, 0.0);
    let bottom = FIELD.y + FIELD.h;
    for (number, text) in &plot.up.ticks {
        let (x, y) = at(plot, (plot.across.from, *number));
        pen.line("plot-grid", (x, y), (x + FIELD.w, y));
        pen.text("plot-number", "end", (x - 5.0, y + 4.5), text);
    }
    for (number, text) in &plot.across.ticks {
        let (x, y) = at(plot, (*number, plot.up.from));
        pen.line("plot-grid", (x, y), (x, y + 4.0));
        pen.text("plot-number", "middle", (x, bottom + NUMBERS), text);
    }
    pen.text("plot-label", "start", (2.0, 15.0), &plot.up.label);
    pen.text("plot-label", "end", (FIELD.x + FIELD.w, bottom + LABEL), &plot.across.label);
}

fn courses(pen: &mut Pen, plot: &Plot) {
    let top = FIELD.y + FIELD.h + LEGEND;
    for (number, line) in plot.lines.iter().enumerate() {
        let class = format!("plot-line plot-line-{}", number + 1);
        let points: Vec<Point> = line.points.iter().map(|point| at(plot, *point)).collect();
        pen.path(&class, &Path::through(&points));
        let y = top + ROW * number as f64;
        pen.line(&class, (FIELD.x, y), (FIELD.x + 44.0, y));
        pen.text("plot-name", "start", (FIELD.x + 52.0, y + 4.5), &line.label);
    }
}

fn marks(pen: &mut Pen, plot: &Plot) {
    for (number, text) in &plot.marks {
        let (x, _) = at(plot, (*number, plot.up.from));
        pen.line("plot-mark", (x, FIELD.y), (x, FIELD.y + FIELD.h));
        let right = x < FIELD.x + FIELD.w / 2.0;
        let anchor = if right { "start" } else { "end" };
        pen.text("plot-name", anchor, (if right { x + 6.0 } else { x - 6.0 }, FIELD.y + 16.0), text);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::sums::Line;

    fn plot() -> Plot {
        let axis =
            |to| Axis { label: "A <b>".into(), from: 0.0, to, ticks: vec![(0.0, "0".into()), (to, "10".into())] };
        Plot {
            id: "plot-test",
            title: "Hours & load".into(),
            about: "It falls.".into(),
            across: axis(10.0),
            up: axis(5.0),
            lines: vec![Line { label: "one".into(), points: vec![(0.0, 5.0), (10.0, 0.0)] }],
            marks: vec![(2.0, "limit".into())],
        }
    }

    #[test]
    fn a_plot_is_whole_and_the_same_each_time() {
        let drawn = draw(&plot());
        assert_eq!(drawn, draw(&plot()));
        let tree = roxmltree::Document::parse(&drawn).unwrap();
        let text = |name: &str| tree.descendants().find(|node| node.has_tag_name(name)).and_then(|node| node.text());
        assert_eq!((text("title"), text("desc")), (Some("Hours & load"), Some("It falls.")));
        assert!(drawn.contains("A &lt;b&gt;") && drawn.contains("role=\"img\""));
    }

    #[test]
    fn the_ends_of_a_course_are_the_corners_of_the_field() {
        let drawn = draw(&plot());
        assert!(drawn.contains("class=\"plot-line plot-line-1\" d=\"M38 26L348 216\""), "{drawn}");
    }
}
