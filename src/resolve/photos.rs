//! Photos of one van: at a fit or a place, each with its text alternative and the numbers drawn on it.

use super::records::{fit_number, place_number};
use crate::diag::{Acc, Diagnostic, rules};
use crate::model::book::{Book, VanSource};
use crate::model::files::forms::Words;
use crate::model::files::vehicle::{Callout, Photo as PhotoFacts};
use crate::model::source::At;
use crate::model::van::{Photo, Van};

/// Works the manifest's photos into the van.
pub(super) fn photos(acc: &mut Acc, book: &Book, source: &VanSource, van: &mut Van) {
    for facts in &source.facts.photo {
        let path = book.models[van.model].photo(source, &facts.file);
        van.photos.extend(photo(acc, van, facts, path));
    }
}

fn photo(acc: &mut Acc, van: &Van, facts: &PhotoFacts, path: String) -> Option<Photo> {
    let fit = facts.fit.as_ref().map(|fit| fit_number(acc, van, &fit.value, fit.span));
    let place = facts.place.as_ref().map(|code| place_number(acc, van, code));
    if fit.is_some() == place.is_some() {
        let found = Diagnostic::new(&rules::WRONG_FORM, facts.file.span, "a photo is of one fit or one place");
        acc.add(found.help("give it `fit = \"…\"` or `place = \"…\"`, not both"));
        return None;
    }
    if says_nothing(&facts.alt) {
        let message = format!("the photo `{}` has no text alternative", facts.file.value);
        let found = Diagnostic::new(&rules::PICTURE_TEXT, facts.alt.span, message);
        acc.add(found.help("say in `alt` what can be seen, as in `alt = \"The drain lever, upright: shut\"`"));
    }
    let callouts = facts.callout.iter().filter_map(|facts| callout(acc, facts)).collect();
    Some(Photo { path, fit: fit.flatten(), place: place.flatten(), alt: facts.alt.value.clone(), callouts })
}

fn says_nothing(words: &At<Words>) -> bool {
    words.0.is_empty() || words.0.iter().any(|(_, text)| text.trim().is_empty())
}

fn callout(acc: &mut Acc, facts: &Callout) -> Option<([f64; 2], Words)> {
    let on_photo = |at: &&[f64; 2]| at.iter().all(|share| (0.0..=100.0).contains(share));
    let at = <[f64; 2]>::try_from(facts.at.value.as_slice()).ok();
    let (span, message) = match at.as_ref().filter(on_photo) {
        None => (facts.at.span, "this callout does not lie on its photo"),
        Some(_) if says_nothing(&facts.says) => (facts.says.span, "this callout says nothing"),
        Some(at) => return Some((*at, facts.says.value.clone())),
    };
    let found = Diagnostic::new(&rules::PHOTO_CALLOUT, span, message);
    acc.add(
        found.help(
            "write `at = [across, down]`, each from 0 to 100 hundredths of the upright photo, and words in `says`",
        ),
    );
    None
}
