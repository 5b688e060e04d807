//! How the texts of a van's modules read in it: what slots show, where links lead.

use super::{Composer, show};
use crate::model::book::Book;
use crate::model::guide::View;
use crate::model::phrases::Phrases;
use crate::model::text::{Target, Text};
use crate::model::van::{Bound, Fit, Van};
use std::borrow::Cow;
use std::collections::BTreeMap;

/// A view for each fit and each module whose text it shows.
pub fn views<'a>(
    book: &'a Book,
    van: &'a Van,
    language: &'a str,
    phrases: &Phrases,
) -> BTreeMap<(usize, usize), View<'a>> {
    let mut views = BTreeMap::new();
    for (number, fit) in van.fits.iter().enumerate() {
        for ((bound_language, origin), bound) in &fit.bound {
            if bound_language == language {
                let text = book.text(*origin, language);
                let slots = text
                    .refs
                    .slots
                    .iter()
                    .map(|slot| self::slot(book, van, Some(fit), &slot.value, language, phrases))
                    .collect();
                let folder = format!("content/{}", book.modules[*origin].name);
                views.insert((number, *origin), View { text, folder, bound: Cow::Borrowed(bound), slots });
            }
        }
    }
    views
}

fn slot(book: &Book, van: &Van, fit: Option<&Fit>, name: &str, language: &str, phrases: &Phrases) -> String {
    let settings = &book.settings;
    match name {
        "dealer-name" if settings.dealer_name.is_empty() => return phrases.get("your-dealer"),
        "dealer-name" => return settings.dealer_name.clone(),
        "dealer-phone" if settings.dealer_phone.is_empty() => return phrases.get("your-dealers-number"),
        "dealer-phone" => return settings.dealer_phone.clone(),
        "van-name" => return van.title.clone(),
        _ => {}
    }
    let Some(fit) = fit else {
        return String::new();
    };
    match (fit.values.get(name), fit.figures.get(name)) {
        (Some(value), _) => show::value(value, book.modules[fit.module].facts.values.get(name), language, phrases),
        (None, Some(figure)) => show::quantity(&figure.result, phrases),
        // The section does not show: resolving would have said so otherwise.
        (None, None) => String::new(),
    }
}

impl<'a> Composer<'a, '_> {
    /// How a text that belongs to no part reads.
    pub(super) fn standing_alone(&self, text: &'a Text) -> View<'a> {
        let slots = text.refs.slots.iter().map(|slot| slot_alone(self, &slot.value)).collect();
        View {
            text,
            folder: String::new(),
            bound: text.refs.links.iter().map(|link| alone(&link.value)).collect(),
            slots,
        }
    }

    pub(super) fn emergency(&self) -> Option<View<'a>> {
        let texts = &self.book.emergency;
        let text = texts.get(self.language).or(texts.get(self.book.settings.language()))?;
        Some(self.standing_alone(text))
    }
}

/// Where a link of a text that belongs to no part leads; checking saw to it that it has no others.
fn alone(target: &Target) -> Bound {
    match target {
        Target::Hazard(hazard) => Bound::Hazard(hazard.clone()),
        Target::Web(address) => Bound::Web(address.clone()),
        _ => Bound::Nowhere,
    }
}

fn slot_alone(composer: &Composer, name: &str) -> String {
    slot(composer.book, composer.van, None, name, composer.language, composer.phrases)
}
