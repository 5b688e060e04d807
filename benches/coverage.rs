//! How long checking and measuring coverage takes, on books of growing size: the time of a van must not grow with them.
//!
//! `cargo bench --bench coverage -- FOLDER...`, each FOLDER a book, for instance one of `cargo bench --bench synthetic`.

use lockerleaf::load::disk::Folder;
use lockerleaf::load::files::Files;
use lockerleaf::{check, coverage, diag::Acc, load, render::theme::Theme, resolve};
use std::path::PathBuf;
use std::time::Instant;

fn main() {
    let folders: Vec<PathBuf> = std::env::args().skip(1).filter(|word| word != "--bench").map(PathBuf::from).collect();
    if folders.is_empty() {
        println!("usage: coverage FOLDER..., each a book");
    }
    for folder in folders {
        measure(folder);
    }
}

/// Times each phase on one core, after the book was read.
fn measure(folder: PathBuf) {
    let files = Folder::new(folder.clone());
    let mut acc = Acc::default();
    let book = load::load(&mut acc, &files).expect("the book can be read");
    // What is checked once a book: its texts and names. No van has a part in it.
    let clock = Instant::now();
    check::check(&mut Acc::default(), &book, &[], files.today());
    let texts = clock.elapsed();
    let clock = Instant::now();
    let vans = resolve::resolve(&mut acc, &book);
    let resolved = clock.elapsed();
    check::check(&mut acc, &book, &vans, files.today());
    let checked = clock.elapsed();
    let theme = Theme::new(&book.theme, &book.settings.languages).expect("the theme is sound");
    let language = book.settings.language();
    let clock = Instant::now();
    let cells: usize = vans
        .iter()
        .map(|van| coverage::measure(&book, van, language, theme.phrases(language), files.today()).cells.len())
        .sum();
    let measured = clock.elapsed();
    let fits: usize = vans.iter().map(|van| van.fits.len()).sum();
    let each = |time: std::time::Duration| time.as_secs_f64() * 1000.0 / vans.len().max(1) as f64;
    println!(
        "{}: {} vans of {} fits each; a van, in ms: resolve {:.3}, check {:.3}, coverage {:.3}; the book once: {:.0}; {cells} cells",
        folder.display(),
        vans.len(),
        fits / vans.len().max(1),
        each(resolved),
        each((checked - resolved).saturating_sub(texts)),
        each(measured),
        texts.as_secs_f64() * 1000.0
    );
}
