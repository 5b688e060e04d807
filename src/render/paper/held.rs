//! Which safety notes are on paper, asked of what tells the templates their data.

use super::Teller;
use super::booklet::Graded;
use super::data::{Block, Note};
use crate::model::guide::{FitPage, Guide, PageBody};
use crate::model::phrases::Phrases;
use std::collections::BTreeSet;

/// A fit's number and a hazard.
type About = (usize, String);

/// The safety notes of booklet and handover record.
#[derive(Default)]
pub struct Held {
    grouped: BTreeSet<About>,
    in_place: BTreeSet<About>,
    grave: BTreeSet<About>,
    acknowledged: BTreeSet<About>,
}

impl Held {
    /// What the paper of `guide` holds.
    pub fn new(guide: &Guide, phrases: &Phrases) -> Self {
        let teller = Teller::outline(guide, phrases);
        let mut held = Held::default();
        teller.grave_notes().iter().for_each(|note| add(&mut held.acknowledged, note));
        for page in &guide.pages {
            match &page.body {
                PageBody::Warnings(groups) => held.group(&teller.graded(groups)),
                PageBody::Fit(page) => held.place(&teller, page),
                _ => {}
            }
        }
        held
    }

    fn group(&mut self, graded: &[Graded]) {
        for note in graded.iter().flat_map(|graded| &graded.notes) {
            add(&mut self.grouped, note);
            if ["warning", "danger"].contains(&note.signal.as_str()) {
                add(&mut self.grave, note);
            }
        }
    }

    fn place(&mut self, teller: &Teller, page: &FitPage) {
        each(&teller.intro(page.fit), &mut |note| add(&mut self.in_place, note));
        for section in teller.groups(&page.sections).iter().flat_map(|group| &group.sections) {
            each(&section.blocks, &mut |note| add(&mut self.in_place, note));
        }
    }

    /// Whether a fit's hazard is in the booklet, grouped and in place, and in the record too when a note about it is a
    /// WARNING or a DANGER. Whether the signal word is grave enough is another question.
    pub fn holds(&self, fit: usize, hazard: &str) -> bool {
        let about = (fit, hazard.to_string());
        let acknowledged = !self.grave.contains(&about) || self.acknowledged.contains(&about);
        self.grouped.contains(&about) && self.in_place.contains(&about) && acknowledged
    }
}

fn add(held: &mut BTreeSet<About>, note: &Note) {
    held.extend(note.fit.map(|fit| (fit, note.hazard.clone())));
}

fn each<'a>(blocks: &'a [Block], visit: &mut impl FnMut(&'a Note)) {
    for block in blocks {
        match block {
            Block::Note { note } => visit(note),
            Block::Quote { blocks } => each(blocks, visit),
            Block::Bullets { items } | Block::Steps { items, .. } => items.iter().for_each(|item| each(item, visit)),
            _ => {}
        }
    }
}
