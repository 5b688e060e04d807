//! Resolve: a book's manifests to [`Van`]s with everything decided.

pub mod conditions;
mod dates;
mod figures;
mod fits;
mod links;
mod old_labels;
mod photos;
mod places;
mod providers;
mod records;
mod values;

pub use conditions::holds;
pub use dates::due;
pub use figures::check as check_figures;
pub use links::GUIDE_SLOTS;
pub use values::{parse_quantity, value};

use crate::diag::{Acc, rules};
use crate::model::book::{Book, Model, VanSource};
use crate::model::source::At;
use crate::model::van::Van;
use rayon::prelude::*;

/// All vans of the book, in the order of their names. What is wrong with them goes to `acc`.
pub fn resolve(acc: &mut Acc, book: &Book) -> Vec<Van> {
    let vans: Vec<_> = book
        .models
        .iter()
        .enumerate()
        .flat_map(|(number, model)| model.vans.iter().map(move |van| (number, model, van)))
        .collect();
    let resolved: Vec<_> =
        vans.into_par_iter().map(|(number, model, source)| van(book, number, model, source)).collect();
    let mut vans = Vec::with_capacity(resolved.len());
    for (van, found) in resolved {
        acc.merge(found);
        vans.push(van);
    }
    vans
}

fn van(book: &Book, number: usize, model: &Model, source: &VanSource) -> (Van, Acc) {
    let mut acc = Acc::default();
    let mut places = places::places(&mut acc, model, source);
    let fits = fits::fits(&mut acc, book, model, source, &mut places);
    let incomplete =
        book.incomplete || [&rules::UNKNOWN_MODULE, &rules::DUPLICATE_FIT].iter().any(|rule| acc.has_found(rule.id));
    let mut van = Van {
        model: number,
        name: format!("{}/{}", model.name, source.name),
        file: source.file,
        key: At::new(source.facts.key.value.0.clone(), source.facts.key.span),
        title: source.facts.name.clone().unwrap_or_else(|| model.facts.title.value.clone()),
        year: source.facts.year.as_ref().map(|year| year.value),
        places,
        fits,
        incomplete,
        providers: Default::default(),
        tips: vec![],
        photos: vec![],
        readings: vec![],
        waivers: vec![],
        former_keys: vec![],
        old_labels: vec![],
        same_places: vec![],
    };
    van.providers = providers::providers(&mut acc, book, model, source, &van);
    conditions::decide(book, &mut van);
    links::bind(&mut acc, book, &mut van);
    dates::dates(&mut acc, book, source, &mut van);
    records::records(&mut acc, book, source, &mut van);
    old_labels::old_labels(&mut acc, model, source, &mut van);
    (van, acc)
}
