//! Files that texts point at.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::source::Span;
use crate::model::text::Target;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for text in module.texts.values() {
            let linked = text.refs.links.iter().filter_map(|link| match &link.value {
                Target::File(file) => Some((file, link.span)),
                _ => None,
            });
            let shown = text.refs.pictures.iter().map(|picture| (&picture.value, picture.span));
            for (file, span) in linked.chain(shown) {
                look(acc, checked, &module.name, file, span);
            }
        }
    }
}

fn look(acc: &mut Acc, checked: Checked, module: &str, file: &str, span: Span) {
    let folder = format!("content/{module}/");
    if crate::load::text::leaves_folder(file)
        || file.contains(':')
        || checked.book.assets.contains_key(&format!("{folder}{file}"))
        || checked.book.photos.contains_key(&format!("{folder}{file}"))
    {
        return;
    }
    let known =
        checked.book.assets.keys().chain(checked.book.photos.keys()).filter_map(|path| path.strip_prefix(&folder));
    let found = Diagnostic::new(&rules::MISSING_FILE, span, format!("there is no file `{file}` in `{folder}`"));
    acc.add(found.help(suggest::did_you_mean(file, known)));
}
