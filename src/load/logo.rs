//! The dealer's mark: a drawing or a picture beside `book.toml`.

use super::text::leaves_folder;
use super::{Loader, assets, picture};
use crate::diag::{Diagnostic, rules, suggest};
use crate::error::Error;
use crate::model::book::Logo;

/// Reads the mark that `book.toml` names; what cannot be used is said.
pub(super) fn load(loader: &mut Loader, paths: &[String]) -> Result<(), Error> {
    let dealer = loader.book.file.as_ref().and_then(|(_, file)| file.dealer.as_ref());
    let Some(named) = dealer.and_then(|dealer| dealer.logo.clone()) else {
        return Ok(());
    };
    let wrong = |what: String, help: String| {
        Diagnostic::new(&rules::LOGO_UNUSABLE, named.span, format!("the logo `{}` {what}", named.value)).help(help)
    };
    if leaves_folder(&named) || named.contains('/') || !(named.ends_with(".svg") || named.ends_with(".png")) {
        let found = wrong(
            "is no SVG or PNG file beside `book.toml`".into(),
            "save it there as `logo.svg` or `logo.png`".into(),
        );
        loader.acc.add(found);
    } else if !paths.contains(&named.value) {
        let known = paths.iter().map(String::as_str).filter(|path| path.ends_with(".svg") || path.ends_with(".png"));
        let message = format!("there is no file `{}` beside `book.toml`", named.value);
        let known = known.filter(|path| !path.contains('/'));
        let found = Diagnostic::new(&rules::MISSING_FILE, named.span, message);
        loader.acc.add(found.help(suggest::did_you_mean(&named, known)));
    } else {
        let bytes = loader.files.read(&named.value)?;
        assets::check(loader.acc, &mut loader.book.sources, &named.value, &bytes);
        match made(&named, &bytes) {
            Ok(logo) => loader.book.logo = Some(logo),
            Err((what, help)) => loader.acc.add(wrong(what, help)),
        }
    }
    Ok(())
}

/// What is wrong, and what to do.
type Wrong = (String, String);

fn made(name: &str, bytes: &[u8]) -> Result<Logo, Wrong> {
    if name.ends_with(".png") {
        let (bytes, width, height) =
            picture::logo(bytes).map_err(|trouble| (trouble.what, trouble.help.to_string()))?;
        return Ok(Logo { name: "logo.png", bytes, size: (width, height) });
    }
    let size = std::str::from_utf8(bytes).ok().and_then(assets::size);
    let size = size.ok_or_else(|| {
        let help = "give it a `viewBox`: drawing programs write one when they save as SVG";
        ("does not say how large it is".to_string(), help.to_string())
    })?;
    Ok(Logo { name: "logo.svg", bytes: bytes.to_vec(), size })
}
