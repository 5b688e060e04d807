//! Files that come along with a part: which kinds may, and what a drawing may hold. A guide is opened in the name of its
//! dealer, so nothing in it may run or reach out, whoever wrote it.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::source::{Sources, Span};
use roxmltree::{Document, Node};
use std::ops::Range;

/// Endings of files that may come along.
const KINDS: [&str; 8] = ["csv", "jpeg", "jpg", "pdf", "png", "svg", "txt", "webp"];

/// Elements that a drawing may hold: shapes, words and what paints them (SVG 2). None of them runs, or takes in anything.
const ELEMENTS: [&str; 24] = [
    "circle",
    "clipPath",
    "defs",
    "desc",
    "ellipse",
    "g",
    "line",
    "linearGradient",
    "marker",
    "mask",
    "path",
    "pattern",
    "polygon",
    "polyline",
    "radialGradient",
    "rect",
    "stop",
    "style",
    "svg",
    "symbol",
    "text",
    "title",
    "tspan",
    "use",
];

const SVG: &str = "http://www.w3.org/2000/svg";

/// Says what is wrong with a file that comes along.
pub fn check(acc: &mut Acc, sources: &mut Sources, path: &str, bytes: &[u8]) {
    let ending = path.rsplit_once('.').map_or("", |(_, ending)| ending).to_lowercase();
    if !KINDS.contains(&ending.as_str()) {
        let file = sources.add(path.to_string(), String::new());
        let name = path.rsplit('/').next().unwrap_or(path);
        let found = Diagnostic::new(
            &rules::FILE_KIND,
            Span::new(file, 0..0),
            format!("`{name}` is of a kind that no guide carries"),
        );
        acc.add(found.help(format!("take it out, or save it as another kind; {}", suggest::one_of(KINDS))));
    } else if ending == "svg" {
        drawing(acc, sources, path, bytes);
    }
}

fn drawing(acc: &mut Acc, sources: &mut Sources, path: &str, bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes).into_owned();
    let found = problems(&text);
    if found.is_empty() {
        return;
    }
    let file = sources.add(path.to_string(), text);
    for (range, message) in found {
        let found = Diagnostic::new(&rules::DRAWING_UNSAFE, Span::new(file, range), message);
        acc.add(found.help(
            "save it as a plain drawing: shapes and words, no scripts, no links, nothing taken in from elsewhere",
        ));
    }
}

/// What a drawing may not hold, and where.
fn problems(text: &str) -> Vec<(Range<usize>, String)> {
    match Document::parse(text) {
        Ok(document) if !document.root_element().has_tag_name((SVG, "svg")) => {
            vec![(document.root_element().range(), "this is not a drawing in SVG".to_string())]
        }
        Ok(document) => document.descendants().flat_map(of_node).collect(),
        Err(error) => {
            let at = offset(text, error.pos());
            vec![(at..at, format!("this drawing cannot be used: {error}"))]
        }
    }
}

fn offset(text: &str, at: roxmltree::TextPos) -> usize {
    let line = text.split_inclusive('\n').take(at.row.saturating_sub(1) as usize).map(str::len).sum::<usize>();
    let column = text[line..].char_indices().nth(at.col.saturating_sub(1) as usize).map_or(0, |(at, _)| at);
    line + column
}

fn of_node(node: Node) -> Vec<(Range<usize>, String)> {
    if node.is_pi() {
        return vec![(node.range(), "a drawing holds an instruction for another program".to_string())];
    }
    if !node.is_element() {
        return vec![];
    }
    let name = node.tag_name().name();
    // The bracket alone: a prefix of many bytes could stand between it and the name.
    let start = node.range().start..node.range().start + 1;
    if node.tag_name().namespace() != Some(SVG) || !ELEMENTS.contains(&name) {
        return vec![(start, format!("a drawing holds `{name}`"))];
    }
    // A remark in the middle of a style cuts its text in two, which belong together all the same.
    let style: String = node.children().filter_map(|child| child.text().filter(|_| child.is_text())).collect();
    let style = (name == "style" && reaches_out(&style))
        .then(|| (start, "the style of a drawing reaches out of it".to_string()));
    node.attributes().filter_map(of_attribute).chain(style).collect()
}

fn of_attribute(attribute: roxmltree::Attribute) -> Option<(Range<usize>, String)> {
    let (name, value) = (attribute.name(), attribute.value());
    let lower = name.to_lowercase();
    let wrong = match lower.as_str() {
        _ if lower.starts_with("on") => "is run when something happens",
        "href" | "src" if !value.trim_start().starts_with('#') => "leads out of the drawing",
        _ if reaches_out(value) => "reaches out of the drawing",
        _ => return None,
    };
    Some((attribute.range(), format!("`{name}` {wrong}")))
}

/// Whether a value or style asks for anything but a name in the drawing itself. Escapes of CSS go too, as they can hide it.
fn reaches_out(text: &str) -> bool {
    let text: String = text.to_lowercase().chars().filter(|c| !c.is_whitespace()).collect();
    let plain = text.replace("url(#", "").replace("url('#", "").replace("url(\"#", "");
    ["\\", "url(", "@import", "image(", "image-set(", "src(", "://", "javascript:", "data:"]
        .iter()
        .any(|word| plain.contains(word))
}

/// Width and height of a drawing, from its `viewBox` or else from what it says of itself; only what they are to each
/// other counts.
pub fn size(text: &str) -> Option<(u32, u32)> {
    let document = Document::parse(text).ok()?;
    let root = document.root_element();
    let number = |text: &str| text.trim_end_matches("px").trim().parse::<f64>().ok();
    let parts = |view: &str| -> Option<Vec<f64>> {
        view.split([' ', ',', '\n', '\t']).filter(|part| !part.is_empty()).map(number).collect()
    };
    let (width, height) = match root.attribute("viewBox").and_then(parts).as_deref() {
        Some([_, _, width, height]) => (*width, *height),
        _ => (number(root.attribute("width")?)?, number(root.attribute("height")?)?),
    };
    let sound = |side: f64| side.is_finite() && side > 0.0 && side < 1e6;
    // Small drawings are told in finer steps.
    let by = if width.max(height) < 100.0 { 100.0 } else { 1.0 };
    let whole = |side: f64| (side * by).round().max(1.0) as u32;
    (sound(width) && sound(height)).then(|| (whole(width), whole(height)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn kinds_and_elements_are_in_order() {
        assert!(KINDS.is_sorted() && ELEMENTS.is_sorted());
    }

    #[test]
    fn a_plain_drawing_with_style_and_gradient_is_fine() {
        let drawing = r##"<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><title>Lever</title>
            <style>@media (prefers-color-scheme: dark) { .a { fill: #fff } }</style><defs><linearGradient id="g"/></defs>
            <path class="a" d="M0 0h9" style="fill:url(#g)"/><use href="#g"/></svg>"##;
        assert_eq!(problems(drawing), []);
    }

    #[test]
    fn whatever_runs_or_reaches_out_is_found() {
        let wrong = [
            "<script>alert(1)</script>",
            "<SCRIPT/>",
            "<foreignObject/>",
            "<image href='x.png'/>",
            "<a href='https://x.example'/>",
            "<animate attributeName='href' to='javascript:alert(1)'/>",
            "<set attributeName='onload' to='alert(1)'/>",
            "<g onload='alert(1)'/>",
            "<use href='https://x.example/a.svg#b'/>",
            "<use xmlns:x='http://www.w3.org/1999/xlink' x:href='other.svg#b'/>",
            "<path fill='url(https://x.example/p)'/>",
            "<path style='background:u\\72l(x)'/>",
            "<style>@import 'x.css';</style>",
            "<style>a{fill:url( x )}</style>",
            "<style>a{}<!-- a remark -->@im<!-- another -->port 'x.css';</style>",
            "<x:div xmlns:x='http://www.w3.org/1999/xhtml'/>",
            "<?xml-stylesheet href='x.css'?>",
        ];
        for inner in wrong {
            let drawing = format!("<svg xmlns=\"{SVG}\">{inner}</svg>");
            assert_eq!(problems(&drawing).len(), 1, "{inner}: {:?}", problems(&drawing));
        }
    }

    #[test]
    fn what_is_no_drawing_or_has_entities_is_found_in_its_place() {
        assert_eq!(problems("<html/>").len(), 1);
        assert_eq!(problems("<!DOCTYPE svg [<!ENTITY a 'b'>]><svg/>").len(), 1);
        let broken = problems("<svg xmlns='http://www.w3.org/2000/svg'>\n<é></svg>");
        assert!(broken[0].0.start > 40, "{broken:?}");
    }

    #[test]
    fn a_drawing_tells_its_size() {
        let sized = |attributes: &str| size(&format!("<svg xmlns=\"{SVG}\" {attributes}/>"));
        assert_eq!(sized("viewBox='0 0 300 100'"), Some((300, 100)));
        assert_eq!(sized("viewBox='0,0, 7.5 5'"), Some((750, 500)));
        assert_eq!(sized("width='12.5px' height='4'"), Some((1250, 400)));
        assert_eq!(sized("width='100%' height='4'"), None);
        assert_eq!(sized("viewBox='0 0 0 NaN'"), None);
    }
}
