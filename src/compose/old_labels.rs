//! What a label opens whose place has another code, or is no more.

use super::Composer;
use crate::model::guide::{OldLabel, Page, PageBody};
use crate::model::phrases::Given;

impl<'a> Composer<'a, '_> {
    pub(super) fn old_label_pages(&self) -> impl Iterator<Item = Page<'a>> {
        self.van.old_labels.iter().map(|label| Page {
            address: label.code.clone(),
            title: self.phrases.with("old-label-title", &[("code", Given::Text(&label.code))]),
            body: PageBody::OldLabel(OldLabel { code: &label.code, to: label.to, why: &label.why }),
        })
    }
}
