//! Sheets of labels: where each label is, and how large its code can be. All lengths are in mm.

use super::files::book::{Labels, Sheet as Written};
use super::files::vehicle::PlaceKind;
use super::source::At;

/// The quiet zone around a code, in modules (ISO/IEC 18004).
pub const QUIET: usize = 4;

/// The smallest module that a phone reads from a printed label: what guides to printing codes agree on.
pub const LEAST_MODULE: f64 = 0.4;

/// Between the edge of a label and what is printed on it: sheets run through a printer a little askew.
pub const MARGIN: f64 = 1.5;

/// The sheets of a book.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sheets {
    /// For lockers, caps, inlets and vents.
    pub wide: Sheet,
    /// For controls and panels.
    pub strip: Sheet,
}

impl Default for Sheets {
    fn default() -> Self {
        let wide = Sheet {
            size: [210.0, 297.0],
            columns: 2,
            rows: 6,
            first: [12.0, 12.5],
            label: [90.0, 42.0],
            gap: [6.0, 4.0],
            corner: 3.0,
            cut_marks: false,
            start: 1,
        };
        let strip = Sheet { rows: 10, first: [12.0, 15.0], label: [90.0, 24.0], gap: [6.0, 3.0], corner: 0.0, ..wide };
        Sheets { wide, strip }
    }
}

impl Sheets {
    /// The sheets as written, with defaults for what is not.
    pub fn new(labels: &Labels) -> Self {
        let Sheets { wide, strip } = Sheets::default();
        Sheets { wide: wide.with(labels.sheet.as_ref()), strip: strip.with(labels.strip.as_ref()) }
    }

    /// The sheet for the label of a kind of place.
    pub fn of(&self, kind: PlaceKind) -> &Sheet {
        if is_strip(kind) { &self.strip } else { &self.wide }
    }
}

/// Whether a kind of place gets a narrow label: where there is little room, beside a switch.
pub fn is_strip(kind: PlaceKind) -> bool {
    matches!(kind, PlaceKind::Panel | PlaceKind::Control | PlaceKind::Tap | PlaceKind::Alarm)
}

/// One sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sheet {
    /// Width and height of the paper.
    pub size: [f64; 2],
    /// Labels beside each other.
    pub columns: u32,
    /// Labels above each other.
    pub rows: u32,
    /// From the left and top edges to the first label.
    pub first: [f64; 2],
    /// Width and height of a label.
    pub label: [f64; 2],
    /// Between labels, across and down.
    pub gap: [f64; 2],
    /// The radius of corners.
    pub corner: f64,
    /// Whether marks show where to cut.
    pub cut_marks: bool,
    /// The first position to print on, from 1.
    pub start: u32,
}

impl Sheet {
    fn with(self, written: Option<&Written>) -> Sheet {
        let Some(written) = written else {
            return self;
        };
        let mm = |value: &Option<At<f64>>, default: f64| value.as_ref().map_or(default, |value| value.value);
        let count = |value: &Option<At<u32>>, default: u32| value.as_ref().map_or(default, |value| value.value);
        Sheet {
            size: [mm(&written.width, self.size[0]), mm(&written.height, self.size[1])],
            columns: count(&written.columns, self.columns),
            rows: count(&written.rows, self.rows),
            first: [mm(&written.left, self.first[0]), mm(&written.top, self.first[1])],
            label: [mm(&written.label_width, self.label[0]), mm(&written.label_height, self.label[1])],
            gap: [mm(&written.gap_across, self.gap[0]), mm(&written.gap_down, self.gap[1])],
            corner: mm(&written.corner, self.corner),
            cut_marks: written.cut_marks.unwrap_or(self.cut_marks),
            start: count(&written.start, self.start),
        }
    }

    /// How many labels a sheet takes.
    pub fn positions(&self) -> u32 {
        self.columns.saturating_mul(self.rows)
    }

    /// The upper left corner of the label at a position, counted from 0 along the rows.
    pub fn corner_of(&self, position: u32) -> [f64; 2] {
        let (row, column) = (position / self.columns.max(1), position % self.columns.max(1));
        [
            self.first[0] + f64::from(column) * (self.label[0] + self.gap[0]),
            self.first[1] + f64::from(row) * (self.label[1] + self.gap[1]),
        ]
    }

    /// The right and lower edges of the last label.
    pub fn end(&self) -> [f64; 2] {
        let last = self.corner_of(self.positions().saturating_sub(1));
        [last[0] + self.label[0], last[1] + self.label[1]]
    }

    /// The side of the square that a code has on a label, its quiet zone included: half of a wide label at most.
    pub fn code_side(&self) -> f64 {
        (self.label[1] - 2.0 * MARGIN).min(self.label[0] / 2.0 - MARGIN)
    }

    /// The size of a module of a code that has so many along each side.
    pub fn module(&self, modules: usize) -> f64 {
        self.code_side() / (modules + 2 * QUIET) as f64
    }

    /// The width and height that a label would need for a code with so many modules along each side.
    pub fn label_for(&self, modules: usize) -> [f64; 2] {
        let side = LEAST_MODULE * (modules + 2 * QUIET) as f64;
        let up = |length: f64| (length * 10.0).ceil() / 10.0;
        [up((side + MARGIN) * 2.0), up(side + 2.0 * MARGIN)]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sheets_that_nobody_wrote_fit_on_their_paper() {
        let sheets = Sheets::default();
        for sheet in [sheets.wide, sheets.strip] {
            let [right, bottom] = sheet.end();
            assert!(right + sheet.first[0] <= sheet.size[0] + 1e-9 && bottom <= sheet.size[1] - 8.0, "{sheet:?}");
            // A code of version 3, which the demo's addresses take, has 29 modules along each side.
            assert!(sheet.module(29) >= LEAST_MODULE, "{}", sheet.module(29));
        }
    }

    #[test]
    fn positions_run_along_the_rows() {
        let sheet = Sheets::default().wide;
        assert_eq!(sheet.corner_of(0), [12.0, 12.5]);
        assert_eq!(sheet.corner_of(1), [108.0, 12.5]);
        assert_eq!(sheet.corner_of(2), [12.0, 58.5]);
    }

    #[test]
    fn the_size_that_would_do_does() {
        for modules in [21, 25, 29, 33, 45] {
            let mut sheet = Sheets::default().strip;
            sheet.label = sheet.label_for(modules);
            assert!(sheet.module(modules) >= LEAST_MODULE - 1e-9);
        }
    }
}
