//! Texts that a language of the book lacks.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "language-missing",
    severity: Severity::Error,
    asks: "Each module and routine has a text in each language of the book, and the theme has that language's words.",
    why: "A guide that changes its language half-way leaves an owner without the warnings they can read.",
    source: "the design of Lockerleaf: languages",
    wrong: "languages = [\"en\", \"de\"], and a module without `text.de.md`",
    right: "`text.md` and `text.de.md` beside each other",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let book = checked.book;
    let Some(guides) = book.file.as_ref().and_then(|(_, file)| file.guides.as_ref()) else {
        return;
    };
    for language in &guides.languages {
        let lacking = |path: String, acc: &mut Acc| {
            let found = Diagnostic::new(&RULE, language.span, format!("there is no `{path}`"));
            acc.add(found.help(format!("write it, or take `{}` out of `languages`", language.value.0)));
        };
        let words = format!("words/{}.ftl", language.value.0);
        if !book.theme.files.contains_key(&words) {
            lacking(format!("themes/{}/{words}", book.settings.theme), acc);
        }
        let further = language.value.0 != book.settings.language();
        if further && !book.emergency.contains_key(&language.value.0) {
            lacking(format!("content/emergency.{}.md", language.value.0), acc);
        }
        for module in book.modules.iter().filter(|module| !module.texts.contains_key(&language.value.0)) {
            lacking(format!("content/{}/text.{}.md", module.name, language.value.0), acc);
        }
        for routine in book.routines.iter().filter(|routine| !routine.texts.contains_key(&language.value.0)) {
            lacking(format!("content/routines/{}.{}.md", routine.name, language.value.0), acc);
        }
    }
}
