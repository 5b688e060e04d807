//! What `book.toml` leaves out, and the theme that comes with the program.

use crate::diag::{Acc, Diagnostic, rules};
use crate::model::book::{Settings, Theme};
use crate::model::files::book::{BookFile, Traffic};
use crate::model::sheet::Sheets;
use crate::model::source::FileId;
use include_dir::{Dir, include_dir};

/// The theme that comes with the program.
static BUILT_IN: Dir = include_dir!("$CARGO_MANIFEST_DIR/themes/daymark");

/// The name of the theme that comes with the program.
pub const BUILT_IN_THEME: &str = "daymark";

/// The settings of a book, with defaults for what it does not say.
pub fn settings(file: Option<&BookFile>) -> Settings {
    let mut settings = Settings::default();
    if let Some(dealer) = file.and_then(|file| file.dealer.as_ref()) {
        settings.dealer_name = dealer.name.clone().unwrap_or_default();
        settings.dealer_phone = dealer.phone.clone().unwrap_or_default();
        settings.dealer_email = dealer.email.clone().unwrap_or_default();
        settings.dealer_web = dealer.web.as_ref().map(|web| web.0.clone()).unwrap_or_default();
        settings.dealer_hours = dealer.hours.clone().unwrap_or_default();
    }
    if let Some(guides) = file.and_then(|file| file.guides.as_ref()) {
        let languages: Vec<_> = guides.languages.iter().map(|language| language.0.clone()).collect();
        if !languages.is_empty() {
            settings.languages = languages;
        }
        settings.address = guides.address.as_ref().map_or(settings.address, |address| address.0.clone());
        settings.theme = guides.theme.as_ref().map_or(settings.theme, |theme| theme.0.clone());
        settings.nearside_is_left = guides.traffic != Some(Traffic::Right);
        settings.colour = guides.colour.as_ref().map(|colour| colour.0.clone());
    }
    if let Some(labels) = file.and_then(|file| file.labels.as_ref()) {
        settings.sheets = Sheets::new(labels);
    }
    settings
}

/// The built-in theme, for a book that has none of its own; naming another that is not there is said.
pub fn built_in_theme(acc: &mut Acc, file: Option<&(FileId, BookFile)>) -> Theme {
    let asked = file.and_then(|(_, file)| file.guides.as_ref()).and_then(|guides| guides.theme.as_ref());
    if let Some(asked) = asked.filter(|asked| asked.0 != BUILT_IN_THEME) {
        let found = Diagnostic::new(&rules::UNKNOWN_THEME, asked.span, format!("there is no theme `{}`", asked.0));
        acc.add(found.help(format!(
            "make the folder `themes/{}/`, or take `{BUILT_IN_THEME}`, which comes with the program",
            asked.0
        )));
    }
    let mut theme = Theme::default();
    take_in(&BUILT_IN, &mut theme);
    theme
}

/// Gives a theme the built-in templates for paper when it has none of its own.
pub fn complete_paper(theme: &mut Theme) {
    let mut built_in = Theme::default();
    if !theme.files.keys().any(|path| path.starts_with("paper/")) {
        take_in(&BUILT_IN, &mut built_in);
        theme.files.extend(built_in.files.into_iter().filter(|(path, _)| path.starts_with("paper/")));
    }
}

fn take_in(folder: &Dir, theme: &mut Theme) {
    for file in folder.files() {
        if let (Some(path), Some(text)) = (file.path().to_str(), file.contents_utf8()) {
            theme.files.insert(path.replace('\\', "/"), text.to_string());
        }
    }
    for inner in folder.dirs() {
        take_in(inner, theme);
    }
}
