//! Codes that a phone could not scan, and what the book asks of labels.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::label::size::{DISTANCES, Size, label_for, least_module, room};
use crate::label::{Asked, Spot, printing};
use crate::model::files::book::Labels;
use crate::model::sheet::is_strip;
use crate::model::source::Span;
use crate::model::van::{Place, Van};

static RULE: Rule = Rule {
    id: "label-size",
    severity: Severity::Error,
    asks: "The code of a label has modules of 0.4 mm at least, 0.5 mm where it gets wet and dirty, and fits on its label.",
    why: "A phone does not tell smaller modules apart, and a label that does not scan is worse than none.",
    source: "guides to printing codes, which say 0.4, 0.5 or 0.75 mm; ISO/IEC 18004 leaves the size of a module open",
    wrong: "[labels.sheet]\nlabel-width = 30\nlabel-height = 15",
    right: "[labels.sheet]\nlabel-width = 90\nlabel-height = 42",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let labels = checked.book.file.as_ref().and_then(|(_, file)| file.labels.as_ref());
    if let Some(distance) = labels.and_then(|labels| labels.scan_distance.as_ref())
        && !DISTANCES.contains(&distance.value)
    {
        let message = format!("a phone cannot read a label from {} mm", distance.value);
        let help = format!("write how far it is held, {} to {} mm", DISTANCES.start(), DISTANCES.end());
        acc.add(Diagnostic::new(&RULE, distance.span, message).help(help));
    }
    for van in checked.vans {
        for place in van.places.iter().filter(|place| place.labelled) {
            fits(acc, checked, van, place, label(checked, labels, place));
        }
    }
}

/// Width and height of the label of a place, and where the book says so.
fn label(checked: Checked, labels: Option<&Labels>, place: &Place) -> ([f64; 2], Option<Span>) {
    let written =
        labels.and_then(|labels| if is_strip(place.kind) { labels.strip.as_ref() } else { labels.sheet.as_ref() });
    let size = written.and_then(|sheet| sheet.label_height.as_ref().or(sheet.label_width.as_ref()));
    (checked.book.settings.sheets.of(place.kind).label, size.map(|written| written.span))
}

fn fits(acc: &mut Acc, checked: Checked, van: &Van, place: &Place, (label, span): ([f64; 2], Option<Span>)) {
    let asked = Asked::of(checked.book);
    let spot = Spot { kind: place.kind, side: place.side };
    let address_span = checked.book.file.as_ref().and_then(|(_, file)| file.guides.as_ref()?.address.as_ref());
    let address_span = address_span.map(|address| address.span);
    let Some((address, code)) = printing::code(checked.book, van, place) else {
        let found = Diagnostic::new(&RULE, address_span, "the address of the guides is too long for any code");
        acc.add(found.help("take a shorter `address` in `[guides]` of book.toml"));
        return;
    };
    let side = room(label[0], label[1]);
    let module = Size::filling(&code, side).module;
    if module >= least_module(spot) {
        return;
    }
    let [width, height] = label_for(least_module(spot) * code.side() as f64);
    let message = format!(
        "labels of {} by {} mm are too small for the code of {}: its modules would be {:.2} mm, and {} mm is the least",
        label[0],
        label[1],
        if spot.is_wet() { "a wet or dirty place" } else { "a dry place" },
        module.max(0.0),
        least_module(spot),
    );
    let found = Diagnostic::new(&RULE, span.or(address_span), message);
    acc.add(
        found
            .label(format!("{} has {} modules along each side", address, code.modules))
            .help(format!("take labels of {width} by {height} mm or more, or a shorter address"))
            .help(format!(
                "level {} is the least here: `correction` and `wet-correction` in `[labels]`",
                asked.least(spot).word()
            )),
    );
}
