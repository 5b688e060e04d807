//! Adds printed labels to the ledger, whatever else adds to it at the same time. The only file that knows `toml_edit`.

use super::disk;
use crate::error::Error;
use crate::label::printing::Printing;
use jiff::civil::Date;
use std::path::{Path, PathBuf};
use toml_edit::{Array, ArrayOfTables, DocumentMut, Item, Table, Value, value};

/// What begins a new ledger.
const HEAD: &str = "# Every label that was printed: its address answers from then on. Lockerleaf adds to this file; take nothing out.\n";

/// What recording did.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Recorded {
    /// Labels that were printed for the first time.
    pub new: usize,
    /// Labels that were printed before: key, code, and how many times now.
    pub again: Vec<(String, String, usize)>,
}

/// The ledger of the book in `root`.
pub fn path(root: &Path) -> PathBuf {
    root.join("models/ledger.toml")
}

/// Adds labels that were printed on the day `on` to the ledger of the book in `root`. Another process or machine that
/// adds at the same time waits; the file is replaced whole, and what people wrote in it stays.
pub fn record(root: &Path, printed: &[Printing], on: Date) -> Result<Recorded, Error> {
    disk::locked(&root.join("book.toml"), || {
        let path = path(root);
        let text = disk::text_or_none(&path)?.unwrap_or_else(|| HEAD.to_string());
        let (head, labels) = head(&text);
        let mut ledger: DocumentMut = labels.parse().map_err(|e| Error::new("add to", &path, e))?;
        let recorded = add(&mut ledger, printed, on);
        disk::folder(&root.join("models"))?;
        disk::replace(&path, format!("{head}{ledger}").as_bytes())?;
        Ok(recorded)
    })
}

/// The remarks above the first empty line, which are about the whole file, and what follows.
fn head(text: &str) -> (&str, &str) {
    let at = text.find("\n\n").map_or(text.len(), |at| at + 1);
    match text[..at].lines().all(|line| line.starts_with('#')) {
        true => text.split_at(at),
        false => ("", text),
    }
}

/// Adds the labels, and puts all in the order of keys and codes.
fn add(ledger: &mut DocumentMut, printed: &[Printing], on: Date) -> Recorded {
    let mut recorded = Recorded::default();
    let old = ledger.remove("label").map(Item::into_array_of_tables);
    let mut labels: Vec<Table> = old.into_iter().flat_map(Result::unwrap_or_default).collect();
    for printing in printed {
        match labels.iter_mut().find(|label| is(label, printing)) {
            Some(label) => {
                let times = write(label, printing, on);
                recorded.again.push((printing.key.clone(), printing.code.clone(), times));
            }
            None => {
                let mut label = Table::new();
                label.decor_mut().set_prefix("\n");
                write(&mut label, printing, on);
                labels.push(label);
                recorded.new += 1;
            }
        }
    }
    labels.sort_by_cached_key(|label| (text(label, "key"), text(label, "code")));
    let mut sorted = ArrayOfTables::new();
    for (at, mut label) in labels.into_iter().enumerate() {
        label.set_position(isize::try_from(at).ok());
        sorted.push(label);
    }
    ledger.insert("label", Item::ArrayOfTables(sorted));
    recorded
}

fn is(label: &Table, printing: &Printing) -> bool {
    text(label, "key") == printing.key && text(label, "code") == printing.code
}

fn text(label: &Table, key: &str) -> String {
    label.get(key).and_then(Item::as_str).unwrap_or_default().to_string()
}

/// Writes a label as it is now, and says how many times it was printed.
fn write(label: &mut Table, printing: &Printing, on: Date) -> usize {
    keep_address(label, &printing.address);
    let facts = [
        ("key", printing.key.as_str()),
        ("code", &printing.code),
        ("van", &printing.van),
        ("name", &printing.name),
        ("kind", printing.kind.word()),
        ("side", printing.side.word()),
        ("address", &printing.address),
        ("target", &printing.target()),
        ("level", printing.correction.word()),
    ];
    for (key, text) in facts {
        put(label, key, text.into());
    }
    put(label, "module", round(printing.module).into());
    put(label, "size", Array::from_iter(printing.size.map(round)).into());
    let mut days: Vec<Value> = match label.remove("printed").map(Item::into_value) {
        Some(Ok(Value::Array(days))) => days.into_iter().map(bare).collect(),
        _ => vec![],
    };
    days.push(day(on));
    days.sort_by_key(Value::to_string);
    let times = days.len();
    label.insert("printed", value(Array::from_iter(days)));
    times
}

/// Keeps the address of an earlier print that is another one: that label may still be there.
fn keep_address(label: &mut Table, address: &str) {
    let old = text(label, "address");
    if old.is_empty() || old == address {
        return;
    }
    let earlier = label.entry("earlier").or_insert_with(|| value(Array::new()));
    if let Some(earlier) =
        earlier.as_array_mut().filter(|earlier| !earlier.iter().any(|one| one.as_str() == Some(&old)))
    {
        earlier.push(old);
    }
}

/// Sets a value; a remark behind the old one stays.
fn put(label: &mut Table, key: &str, mut new: Value) {
    if let Some(old) = label.get(key).and_then(Item::as_value) {
        *new.decor_mut() = old.decor().clone();
    }
    label.insert(key, Item::Value(new));
}

/// A length in mm to a thousandth.
fn round(length: f64) -> f64 {
    (length * 1000.0).round() / 1000.0
}

fn bare(mut value: Value) -> Value {
    value.decor_mut().clear();
    value
}

fn day(on: Date) -> Value {
    let part = |number: i8| u8::try_from(number).unwrap_or_default();
    let year = u16::try_from(on.year()).unwrap_or_default();
    let date = toml_edit::Date { year, month: part(on.month()), day: part(on.day()) };
    toml_edit::Datetime { date: Some(date), time: None, offset: None }.into()
}
