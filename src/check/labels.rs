//! What the rules about printed labels share.

use super::Checked;
use crate::model::files::ledger::Printed;
use crate::model::van::Van;

/// All labels that were ever printed.
pub(super) fn printed(checked: Checked<'_>) -> impl Iterator<Item = &Printed> {
    checked.book.ledger.iter().flat_map(|(_, ledger)| &ledger.label)
}

/// Those whose key a van has or had, with that van.
pub(super) fn answered(checked: Checked<'_>) -> impl Iterator<Item = (&Printed, &Van)> {
    printed(checked).filter_map(move |label| van(checked, label).map(|van| (label, van)))
}

/// The van that has or had the key of a label.
pub(super) fn van<'a>(checked: Checked<'a>, label: &Printed) -> Option<&'a Van> {
    let key = &label.key.value.0;
    let mut vans = checked.vans.iter();
    vans.find(|van| van.key.value == *key || van.former_keys.iter().any(|former| former.value == *key))
}

/// A label as a person knows it.
pub(super) fn described(label: &Printed) -> String {
    format!("`{}`, {}, {}, printed {}", label.name, label.kind.word(), label.side.word(), label.last())
}
