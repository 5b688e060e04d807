//! Safety coverage as a page for staff: one file that opens in a browser, with the vans, and for each van its parts and
//! hazards against the six criteria. What is missed stands first.

use super::{Inspected, Kind};
use crate::coverage::{Cell, Coverage, Criterion, Standing};
use crate::render::html::escape;
use std::fmt::Write;

/// This kind.
pub(super) static KIND: Kind = Kind { name: "matrix", about: "safety coverage, as a page for staff", text };

/// What the page looks like; it is one file, so its style stands in it.
const STYLE: &str = include_str!("matrix.css");

fn text(inspected: &Inspected) -> String {
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n<meta name=\"robots\" content=\"noindex\">\n<title>Safety coverage</title>\n<style>\n{STYLE}</style>\n</head>\n<body>\n<main>\n<h1>Safety coverage</h1>\n"
    );
    match inspected.coverage {
        Some(coverage) => matrix(&mut out, inspected, coverage),
        None => out.push_str("<p>The book has errors, so coverage was not measured. Mend them first.</p>\n"),
    }
    out.push_str("</main>\n</body>\n</html>\n");
    out
}

fn matrix(out: &mut String, inspected: &Inspected, coverage: &Coverage) {
    let vans = coverage.by_van();
    let (asked, met) = coverage.counts();
    let _ = writeln!(
        out,
        "<p>Each part calls for safety notes by what it is. {met} of {asked} points are met, {:.1} %.</p>",
        coverage.percent()
    );
    out.push_str("<table>\n<caption>Vans</caption>\n<thead><tr><th scope=\"col\">Van</th><th scope=\"col\">Met</th><th scope=\"col\">Asked</th><th scope=\"col\">Share</th><th scope=\"col\">Missed or waived</th></tr></thead>\n<tbody>\n");
    for (number, (name, own)) in vans.iter().enumerate() {
        let (asked, met) = own.counts();
        let open = own.cells.iter().filter(|cell| !cell.is_met() || cell.waived.is_some()).count();
        let _ = writeln!(
            out,
            "<tr><th scope=\"row\"><a href=\"#van-{number}\">{}</a></th><td>{met}</td><td>{asked}</td><td>{:.1} %</td><td>{open}</td></tr>",
            escape(name),
            own.percent()
        );
    }
    out.push_str("</tbody>\n</table>\n");
    for (number, (name, own)) in vans.iter().enumerate() {
        let _ = writeln!(out, "<h2 id=\"van-{number}\">{}</h2>", escape(name));
        van(out, inspected, name, own);
    }
}

fn van(out: &mut String, inspected: &Inspected, name: &str, own: &Coverage) {
    let mut cells: Vec<&Cell> = own.cells.iter().collect();
    cells.sort_by_key(|cell| (cell.is_met(), cell.waived.is_none()));
    let heads = Criterion::ALL.iter().map(|criterion| format!("<th scope=\"col\">{}</th>", criterion.word()));
    let _ = writeln!(
        out,
        "<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"Coverage of {}\">\n<table>\n<thead><tr><th scope=\"col\">Part</th><th scope=\"col\">Hazard</th><th scope=\"col\">Language</th>{}<th scope=\"col\">Called for by</th></tr></thead>\n<tbody>",
        escape(name),
        heads.collect::<String>()
    );
    cells.iter().for_each(|cell| row(out, inspected, cell));
    out.push_str("</tbody>\n</table>\n</div>\n");
}

fn row(out: &mut String, inspected: &Inspected, cell: &Cell) {
    let standing: String = cell.standing.iter().map(|standing| mark(*standing)).collect();
    let (because, span) = &cell.because;
    let waived =
        cell.waived.as_ref().map(|(reason, until)| format!(" <strong>Waived to {until}:</strong> {}", escape(reason)));
    let _ = writeln!(
        out,
        "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td>{standing}<td>{} <span class=\"at\">{}:{}</span>{}</td></tr>",
        escape(&cell.fit_name),
        escape(&cell.hazard),
        escape(&cell.language),
        escape(&because.replace('`', "")),
        escape(inspected.path(*span)),
        inspected.region(*span, |_| 1).start.line,
        waived.unwrap_or_default()
    );
}

fn mark(standing: Standing) -> &'static str {
    match standing {
        Standing::NotAsked => "<td class=\"none\">not asked</td>",
        Standing::Met => "<td class=\"met\">met</td>",
        Standing::Missed => "<td class=\"missed\">missed</td>",
    }
}
