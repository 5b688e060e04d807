//! What a label opens: everything to know at one place.

use super::Composer;
use crate::model::guide::{Page, PageBody, PlacePage, Shown, Warned};
use crate::model::text::{Block, each_note};
use crate::model::van::Fit;
use std::collections::BTreeSet;

impl<'a> Composer<'a, '_> {
    pub(super) fn place_page(&self, place: usize) -> Page<'a> {
        let here: Vec<_> = self
            .van
            .fits
            .iter()
            .enumerate()
            .filter(|(_, fit)| fit.places.values().any(|places| places.contains(&place)))
            .map(|(number, _)| number)
            .collect();
        let sections: Vec<_> = here.iter().flat_map(|fit| self.sections_at(*fit, place)).collect();
        let notes = here.iter().flat_map(|fit| self.general_notes(*fit)).collect();
        let body = PlacePage {
            place,
            fits: here.iter().map(|fit| (*fit, self.roles_at(*fit, place))).collect(),
            notes,
            sections,
            tips: self
                .van
                .tips
                .iter()
                .filter(|tip| tip.place == Some(place) || tip.fit.is_some_and(|fit| here.contains(&fit)))
                .map(|tip| tip.says.as_str())
                .collect(),
            photos: self.photos(|photo| photo.place == Some(place) || photo.fit.is_some_and(|fit| here.contains(&fit))),
            dates: here.iter().flat_map(|fit| self.dates(*fit)).collect(),
            related: self.related(&here, place),
        };
        let entry = &self.van.places[place];
        Page {
            address: entry.code.value.0.clone(),
            title: entry.name.text(self.language).to_string(),
            body: PageBody::Place(body),
        }
    }

    fn roles_at(&self, fit: usize, place: usize) -> Vec<&'a str> {
        let fitted = &self.van.fits[fit];
        let roles = self.book.modules[fitted.module].facts.places.iter();
        roles
            .filter(|(role, _)| fitted.places.get(&role.value).is_some_and(|places| places.contains(&place)))
            .map(|(_, facts)| facts.title.text(self.language))
            .collect()
    }

    fn sections_at(&self, fit: usize, place: usize) -> Vec<Shown<'a>> {
        let fitted: &Fit = &self.van.fits[fit];
        let sections = &self.book.modules[fitted.module].sections;
        let at_place = |number: usize| {
            let roles = sections[number].wiring.as_ref().map(|wiring| wiring.at.iter());
            roles
                .into_iter()
                .flatten()
                .any(|role| fitted.places.get(&role.value.0).is_some_and(|places| places.contains(&place)))
        };
        self.shown(fit).filter(|(number, _)| at_place(*number)).map(|(_, shown)| shown).collect()
    }

    /// The notes that hold for the whole of a fit: those before the first section of its texts.
    pub(super) fn general_notes(&self, fit: usize) -> Vec<Warned<'a>> {
        let module = self.van.fits[fit].module;
        let mut notes = Vec::new();
        for origin in std::iter::once(module).chain(self.book.modules[module].includes.iter().copied()) {
            let intro: &'a [Block] = &self.book.text(origin, self.language).intro;
            each_note(intro, &mut |note| notes.push(Warned { fit, origin, section: None, note }));
        }
        notes
    }

    fn related(&self, fits: &[usize], place: usize) -> Vec<usize> {
        let all: BTreeSet<_> =
            fits.iter().flat_map(|fit| self.van.fits[*fit].places.values().flatten().copied()).collect();
        all.into_iter().filter(|other| *other != place).collect()
    }
}
