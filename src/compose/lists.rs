//! Lists over the whole van: tasks, faults.

use super::Composer;
use crate::model::files::forms::System;
use crate::model::guide::Shown;
use crate::model::text::Role;

impl<'a> Composer<'a, '_> {
    /// All sections of a role that show, by system.
    pub(super) fn by_system(&self, role: Role) -> Vec<(System, Vec<Shown<'a>>)> {
        let of = |system| {
            let fits = (0..self.van.fits.len())
                .filter(move |fit| self.book.modules[self.van.fits[*fit].module].system == Some(system));
            let sections = fits.flat_map(|fit| self.shown(fit)).map(|(_, shown)| shown);
            sections.filter(|shown| shown.role() == Some(role)).collect::<Vec<_>>()
        };
        self.systems().map(|system| (system, of(system))).filter(|(_, sections)| !sections.is_empty()).collect()
    }
}
