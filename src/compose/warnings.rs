//! Safety notes, grouped (ANSI Z535.6: grouped safety messages), and the gravest one at each place.

use super::Composer;
use crate::model::files::forms::Signal;
use crate::model::guide::{Guide, Page, PageBody, Warned};
use crate::model::text::each_note;

impl<'a> Composer<'a, '_> {
    /// All notes that show, gravest first.
    pub(super) fn all_warnings(&self) -> Vec<(Signal, Vec<Warned<'a>>)> {
        let mut all: Vec<Warned<'a>> = Vec::new();
        for fit in 0..self.van.fits.len() {
            all.extend(self.general_notes(fit));
            for (_, shown) in self.shown(fit) {
                let section = Some(shown.section.id.value.as_str());
                each_note(&shown.section.blocks, &mut |note| {
                    all.push(Warned { fit, origin: shown.origin, section, note })
                });
            }
        }
        let of = |signal| all.iter().copied().filter(|warned| warned.note.signal == signal).collect::<Vec<_>>();
        Signal::ALL.iter().rev().map(|signal| (*signal, of(*signal))).filter(|(_, notes)| !notes.is_empty()).collect()
    }
}

/// Gives each place the gravest signal word of what its page says.
pub fn mark_places(guide: &mut Guide, pages: &[Page]) {
    for page in pages {
        let PageBody::Place(place) = &page.body else {
            continue;
        };
        let mut gravest = place.notes.iter().map(|warned| warned.note.signal).max();
        for shown in &place.sections {
            each_note(&shown.section.blocks, &mut |note| gravest = gravest.max(Some(note.signal)));
        }
        guide.places[place.place].signal = gravest;
    }
}
