//! Vans that are no more: what their labels still say.

use crate::model::book::Book;
use crate::model::guide::Withdrawn;

/// All of them, with the codes of their printed labels.
pub fn withdrawn(book: &Book) -> Vec<Withdrawn<'_>> {
    let said = book.file.iter().flat_map(|(_, file)| &file.withdrawn);
    let codes = |key: &str| {
        let labels = book.ledger.iter().flat_map(|(_, ledger)| &ledger.label);
        labels.filter(|label| label.key.value.0 == key).map(|label| label.code.value.0.as_str()).collect()
    };
    said.map(|said| Withdrawn { key: &said.key.value, codes: codes(&said.key.value), why: &said.why }).collect()
}
