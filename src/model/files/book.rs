//! `book.toml`: whose guides these are, and how they are published.

use super::forms::{Colour, Id, Key, Language, WebAddress};
use crate::model::source::At;
use crate::{record, words};

words! {
    /// The side of the road that traffic drives on; the nearside is the side of the kerb.
    Traffic {
        /// On the left: the nearside is the left.
        Left = "left",
        /// On the right: the nearside is the right.
        Right = "right",
    }
    /// Error-correction level of a QR code (ISO/IEC 18004), least first.
    Correction {
        /// About 7 % of the code may be lost.
        L = "L",
        /// About 15 %.
        M = "M",
        /// About 25 %.
        Q = "Q",
        /// About 30 %.
        H = "H",
    }
}

record! {
    /// The book: who publishes these guides, where, and how. Every key may be left out.
    BookFile {
        /// Whose guides these are.
        dealer: Option<Dealer>,
        /// How guides are made.
        guides: Option<Guides>,
        /// What safety coverage is asked.
        safety: Option<Safety>,
        /// How labels are printed.
        labels: Option<Labels>,
        /// Vans that are no more, and whose printed labels say so.
        withdrawn: Vec<Withdrawn>,
    }
    /// A van that is no more, and whose printed labels say so.
    Withdrawn {
        /// Its key.
        key: At<Key>,
        /// What to tell whoever scans one of its labels.
        why: String,
    }
    /// The dealer, as owners reach them.
    Dealer {
        /// The name they trade under.
        name: Option<String>,
        /// The telephone number to ring, as it is printed.
        phone: Option<String>,
        /// The address for letters by electronic mail.
        email: Option<String>,
        /// Their page on the web.
        web: Option<WebAddress>,
        /// When somebody answers.
        hours: Option<String>,
        /// Their mark: an SVG or PNG file beside `book.toml`.
        logo: Option<At<String>>,
    }
    /// How guides are made.
    Guides {
        /// The address that labels carry and guides are published under.
        address: Option<At<WebAddress>>,
        /// The languages of the guides; the first is the one that every text must have.
        languages: Vec<At<Language>>,
        /// The theme: a folder of `themes/`.
        theme: Option<At<Id>>,
        /// The side of the road that traffic drives on.
        traffic: Option<Traffic>,
        /// The dealer's colour.
        colour: Option<At<Colour>>,
        /// Addresses that printed labels carry and that still answer, by leading to the one of today.
        former_addresses: Vec<At<WebAddress>>,
    }
    /// What safety coverage is asked.
    Safety {
        /// The least coverage, in hundredths.
        least: Option<At<f64>>,
    }
    /// How labels are printed.
    Labels {
        /// The sheet of labels for lockers, caps, inlets and vents.
        sheet: Option<Sheet>,
        /// The sheet of narrow labels for controls and panels.
        strip: Option<Sheet>,
        /// How far a phone is held from a label, in mm.
        scan_distance: Option<At<f64>>,
        /// Error-correction level of labels in dry places.
        correction: Option<Correction>,
        /// Error-correction level of labels outside and near water.
        wet_correction: Option<Correction>,
        /// Whether the picture of each label's code is made as PNG beside the SVG.
        png: bool,
    }
    /// The geometry of a sheet of labels, all in mm.
    Sheet {
        /// Width of the paper.
        width: Option<At<f64>>,
        /// Height of the paper.
        height: Option<At<f64>>,
        /// Labels beside each other.
        columns: Option<At<u32>>,
        /// Labels above each other.
        rows: Option<At<u32>>,
        /// From the left edge of the paper to the first label.
        left: Option<At<f64>>,
        /// From the top edge of the paper to the first label.
        top: Option<At<f64>>,
        /// Width of a label.
        label_width: Option<At<f64>>,
        /// Height of a label.
        label_height: Option<At<f64>>,
        /// Between labels, across.
        gap_across: Option<At<f64>>,
        /// Between labels, down.
        gap_down: Option<At<f64>>,
        /// The radius of the corners of a label; 0 for square ones.
        corner: Option<At<f64>>,
        /// Whether marks show where to cut.
        cut_marks: Option<bool>,
        /// The first position to print on, from 1, along the rows: for a sheet that is used in part.
        start: Option<At<u32>>,
    }
}
