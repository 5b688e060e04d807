//! Sheets of labels that do not fit on their paper.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::files::book::{Labels, Sheet as Written};
use crate::model::sheet::Sheet;
use crate::model::source::At;

static OUTSIDE: Rule = Rule {
    id: "label-outside",
    severity: Severity::Error,
    asks: "All labels of a sheet lie on its paper, and there is at least one.",
    why: "What lies outside the paper is not printed, and its code is cut off.",
    source: "the geometry of `[labels]` in book.toml",
    wrong: "[labels.sheet]\nrows = 9",
    right: "[labels.sheet]\nrows = 6",
};

pub(super) static CHECK: Check = Check { rules: &[&OUTSIDE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let settings = &checked.book.settings;
    let labels = checked.book.file.as_ref().and_then(|(_, file)| file.labels.as_ref());
    let written = |pick: fn(&Labels) -> Option<&Written>| labels.and_then(pick);
    outside(acc, &settings.sheets.wide, written(|labels| labels.sheet.as_ref()));
    outside(acc, &settings.sheets.strip, written(|labels| labels.strip.as_ref()));
}

fn outside(acc: &mut Acc, sheet: &Sheet, written: Option<&Written>) {
    let Some(written) = written else {
        return;
    };
    let sizes = [sheet.label[0], sheet.label[1], sheet.size[0], sheet.size[1]];
    let around = [sheet.first[0], sheet.first[1], sheet.gap[0], sheet.gap[1], sheet.corner];
    let [right, bottom] = sheet.end();
    let within = right <= sheet.size[0] && bottom <= sheet.size[1];
    let sound = sizes.iter().all(|size| *size > 0.0) && around.iter().all(|size| *size >= 0.0);
    if within
        && sound
        && sheet.positions() > 0
        && (1..=sheet.positions()).contains(&sheet.start)
        && sheet.positions() <= 2000
    {
        return;
    }
    let lengths = [&written.top, &written.left, &written.label_height, &written.label_width, &written.gap_down];
    let first =
        |lengths: &[&Option<At<f64>>]| lengths.iter().find_map(|length| length.as_ref().map(|length| length.span));
    let counts = [&written.rows, &written.columns, &written.start];
    let span = counts.iter().find_map(|count| count.as_ref().map(|count| count.span)).or_else(|| first(&lengths));
    let message = format!("{} × {} labels do not fit on this sheet", sheet.columns, sheet.rows);
    acc.add(Diagnostic::new(&OUTSIDE, span, message).help(format!(
        "they would end at {right} × {bottom} mm on paper of {} × {} mm; sizes are above 0, and positions count from 1",
        sheet.size[0], sheet.size[1]
    )));
}
