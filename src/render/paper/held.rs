//! Which safety notes are on paper, asked of the very data that the templates are given.

use super::Teller;
use super::data::{Block, Note};
use crate::model::guide::Guide;
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
        let teller = Teller::new(guide, phrases, None);
        let mut held = Held::default();
        let booklet = teller.booklet();
        let record = teller.record();
        let grouped = || booklet.warnings.iter().flat_map(|graded| &graded.notes);
        grouped().for_each(|note| add(&mut held.grouped, note));
        let is_grave = |note: &&Note| ["warning", "danger"].contains(&note.signal.as_str());
        grouped().filter(is_grave).for_each(|note| add(&mut held.grave, note));
        record.notes.iter().for_each(|note| add(&mut held.acknowledged, note));
        for part in booklet.systems.iter().flat_map(|chapter| &chapter.parts) {
            each(&part.intro, &mut |note| add(&mut held.in_place, note));
            let sections = part.groups.iter().flat_map(|group| &group.sections);
            sections.for_each(|section| each(&section.blocks, &mut |note| add(&mut held.in_place, note)));
        }
        held
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
