//! Sheets of labels: what stands on each label, and where each one is.

use super::data::Shell;
use super::{Press, Teller, pieces};
use crate::label::{Spot, address};
use crate::model::guide::{Guide, PlaceEntry};
use crate::model::phrases::{Given, Phrases};
use crate::model::sheet::{Sheet, Sheets, is_strip};
use serde::Serialize;

/// What the template of labels is given.
#[derive(Serialize)]
struct Labels<'a> {
    #[serde(flatten)]
    shell: Shell<'a>,
    sheet: Form,
    labels: Vec<Label>,
    pages: usize,
}

/// A sheet, in mm.
#[derive(Serialize)]
struct Form {
    width: f64,
    height: f64,
    label_width: f64,
    label_height: f64,
    corner: f64,
    cut_marks: bool,
    strip: bool,
    code_side: f64,
    margin: f64,
    /// The upper left corners of all positions.
    positions: Vec<[f64; 2]>,
}

/// One label.
#[derive(Serialize)]
struct Label {
    /// The page it is on, from 0.
    page: u32,
    /// Its upper left corner.
    at: [f64; 2],
    code: String,
    name: String,
    picture: String,
    /// The address as it is typed.
    typed: String,
    /// `warning` or `danger` when one waits.
    signal: String,
    word: String,
    alternative: String,
}

/// The labels of a vehicle as PDF: those for lockers, then those for controls; none where there are no such labels.
/// `start` is the first position to use, from 1, when it is not the sheet's own.
pub fn labels(
    press: &Press,
    guide: &Guide,
    phrases: &Phrases,
    sheets: &Sheets,
    start: Option<u32>,
) -> Result<Vec<(&'static str, Vec<u8>)>, String> {
    let teller = Teller::new(guide, phrases, press.asked());
    let mut made = Vec::new();
    for (name, title, sheet, strip) in
        [("labels", "paper-labels", sheets.wide, false), ("strips", "paper-strips", sheets.strip, true)]
    {
        let places: Vec<_> =
            guide.places.iter().filter(|place| place.labelled && is_strip(place.kind) == strip).collect();
        if places.is_empty() {
            continue;
        }
        let sheet = Sheet { start: start.unwrap_or(sheet.start), ..sheet };
        let labels = teller.labels(&places, &sheet);
        let pages = labels.last().map_or(1, |label| label.page as usize + 1);
        let shell = teller.shell(title, "", "");
        made.push((name, press.print("labels", &Labels { shell, sheet: form(&sheet, strip), labels, pages })?));
    }
    Ok(made)
}

/// A sheet with all positions outlined and a ruler, to hold against the paper before labels are spent.
pub fn test_sheet(press: &Press, guide: &Guide, phrases: &Phrases, sheets: &Sheets) -> Result<Vec<u8>, String> {
    #[derive(Serialize)]
    struct Test<'a> {
        #[serde(flatten)]
        shell: Shell<'a>,
        sheets: [Form; 2],
    }
    let shell = Teller::new(guide, phrases, press.asked()).shell("paper-test", "", "");
    press.print("test-sheet", &Test { shell, sheets: [form(&sheets.wide, false), form(&sheets.strip, true)] })
}

fn form(sheet: &Sheet, strip: bool) -> Form {
    Form {
        width: sheet.size[0],
        height: sheet.size[1],
        label_width: sheet.label[0],
        label_height: sheet.label[1],
        corner: sheet.corner,
        cut_marks: sheet.cut_marks,
        strip,
        code_side: sheet.code_side(),
        margin: crate::model::sheet::MARGIN,
        positions: (0..sheet.positions()).map(|position| sheet.corner_of(position)).collect(),
    }
}

impl Teller<'_> {
    fn labels(&self, places: &[&PlaceEntry], sheet: &Sheet) -> Vec<Label> {
        let on_sheet = sheet.positions().max(1);
        let label = |(number, place): (usize, &&PlaceEntry)| {
            let position = sheet.start.clamp(1, on_sheet) - 1 + number as u32;
            self.label(place, position / on_sheet, sheet.corner_of(position % on_sheet))
        };
        places.iter().enumerate().map(label).collect()
    }

    fn label(&self, place: &PlaceEntry, page: u32, at: [f64; 2]) -> Label {
        let identity = &self.guide.identity;
        let typed = address::typed(identity.address, identity.key, place.code);
        let grave = place.signal.filter(|signal| pieces::is_grave(*signal));
        Label {
            page,
            at,
            code: place.code.to_string(),
            name: place.name.to_string(),
            picture: self.code(
                &address::address(identity.address, identity.key, place.code),
                Spot { kind: place.kind, side: place.side },
            ),
            alternative: self.phrases.with("paper-code-alt", &[("address", Given::Text(&typed))]),
            typed,
            signal: grave.map(|signal| signal.word().to_lowercase()).unwrap_or_default(),
            word: grave.map(|signal| self.signal(signal)).unwrap_or_default(),
        }
    }
}
