//! The sections that lives name.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules, suggest};

pub(super) static CHECK: Check = Check { rules: &[], run };

/// A shared module names sections of those that take it in, so it is looked at with them.
fn run(acc: &mut Acc, checked: Checked) {
    for module in checked.book.modules.iter().filter(|module| module.system.is_some()) {
        let sections = || module.sections.iter().map(|section| section.id.as_str());
        for section in module.facts.life.iter().flat_map(|(_, life)| life.section.iter()) {
            if !sections().any(|own| own == &*section.value) {
                let message = format!("`{}` has no section `{}`", module.name, section.value.0);
                let found = Diagnostic::new(&rules::UNKNOWN_SECTION, section.span, message);
                acc.add(found.help(suggest::did_you_mean(&section.value, sections())));
            }
        }
    }
}
