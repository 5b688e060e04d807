//! How the texts of a guide read on a page: links, pictures, slots, signal words.

use super::Stand;
use crate::model::files::forms::Signal;
use crate::model::guide::{PageBody, View};
use crate::model::text::{Block, each_note};
use crate::model::van::Bound;
use crate::render::html::{self, Around, Picture};
use crate::render::links::asset;
use crate::render::{root, search};

pub(super) fn rendered(blocks: &[Block], around: &TextAround) -> String {
    let mut out = String::new();
    html::blocks(&mut out, blocks, around);
    out
}

pub(super) fn gravest(blocks: &[Block]) -> Option<Signal> {
    let mut gravest = None;
    each_note(blocks, &mut |note| gravest = gravest.max(Some(note.signal)));
    gravest
}

pub(super) fn signal_word(signal: Option<Signal>) -> String {
    signal.map(|signal| signal.word().to_lowercase()).unwrap_or_default()
}

/// A text on a page.
pub(super) struct TextAround<'a> {
    pub(super) stand: &'a Stand<'a>,
    pub(super) view: &'a View<'a>,
    pub(super) deeper: u8,
}

impl TextAround<'_> {
    /// To the first note about a hazard on the page of safety notes, if it has one.
    fn hazard(&self, hazard: &str) -> String {
        let page = self.stand.way.to("warnings");
        let warned = self.stand.guide.pages.iter().any(|page| match &page.body {
            PageBody::Warnings(signals) => {
                signals.iter().flat_map(|(_, notes)| notes).any(|warned| warned.note.hazard.value == hazard)
            }
            _ => false,
        });
        if warned { format!("{page}#{}", search::hazard_anchor(hazard)) } else { page }
    }

    fn places(&self, out: &mut String, places: &[usize], inner: &str) {
        let guide = self.stand.guide;
        let href = |place: usize| html::escape(&self.stand.way.to(guide.places[place].code));
        let code = |place: usize| {
            format!("<a class=\"code\" href=\"{}\">{}</a>", href(place), html::escape(guide.places[place].code))
        };
        match places {
            [] => out.push_str(inner),
            [first, ..] => {
                let codes: Vec<_> = places.iter().map(|place| code(*place)).collect();
                out.push_str(&format!(
                    "<a class=\"place-link\" href=\"{}\">{inner}</a> <span class=\"codes\">{}</span>",
                    href(*first),
                    codes.join(" ")
                ));
            }
        }
    }
}

impl Around for TextAround<'_> {
    fn link(&self, out: &mut String, number: usize, title: &str, inner: &str) {
        let guide = self.stand.guide;
        let href = match self.view.bound.get(number).unwrap_or(&Bound::Nowhere) {
            Bound::Nowhere => None,
            Bound::Section(fit, section) => {
                let entry = &guide.fits[*fit];
                Some(format!("{}#{}", self.stand.way.to(&format!("part/{}", entry.name)), entry.sections[*section]))
            }
            Bound::Fit(fit) => Some(self.stand.way.to(&format!("part/{}", guide.fits[*fit].name))),
            Bound::Places(places) => return self.places(out, places, inner),
            Bound::Hazard(hazard) => Some(self.hazard(hazard)),
            Bound::Web(address) => Some(address.clone()),
            Bound::File(path) => Some(self.stand.file(path)),
        };
        match href {
            None => out.push_str(inner),
            Some(href) => {
                out.push_str(&format!("<a href=\"{}\"", html::escape(&href)));
                html::title_attribute(out, title);
                out.push_str(&format!(">{inner}</a>"));
            }
        }
    }

    fn picture(&self, number: usize) -> Picture {
        let path = self
            .view
            .text
            .refs
            .pictures
            .get(number)
            .map(|picture| format!("{}/{}", self.view.folder, picture.value))
            .unwrap_or_default();
        match self.stand.guide.photos.get(&path) {
            Some(photo) => self.stand.photo(photo),
            None => Picture {
                src: self.stand.way.file(&asset(&path)),
                size: self.stand.guide.drawings.get(&path).copied(),
                ..Picture::default()
            },
        }
    }

    fn slot(&self, number: usize) -> &str {
        self.view.slots.get(number).map_or("", String::as_str)
    }

    fn telephone(&self, number: usize) -> Option<String> {
        let name = self.view.text.refs.slots.get(number).map(|slot| slot.value.as_str());
        let href = root::tel(self.stand.guide.identity.dealer_phone);
        (name == Some("dealer-phone") && !href.is_empty()).then_some(href)
    }

    fn signal(&self, signal: Signal) -> &str {
        let phrase = match signal {
            Signal::Danger => "signal-danger",
            Signal::Warning => "signal-warning",
            Signal::Caution => "signal-caution",
            Signal::Notice => "signal-notice",
        };
        self.stand.phrases.plain.get(phrase).map_or(signal.word(), String::as_str)
    }

    fn sign(&self, hazard: &str) -> Option<String> {
        self.stand.guide.signs.get(hazard).map(|sign| self.stand.way.file(&format!("signs/{sign}.svg")))
    }

    fn deeper(&self) -> u8 {
        self.deeper
    }
}
