//! Reading TOML into typed records: every mistake of a file is found, not only the first.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::source::{At, FileId, Span};
use serde_json::{Value as Json, json};
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// A TOML value with its place.
pub type Node<'i> = Spanned<DeValue<'i>>;

/// Where findings go while one file is read.
pub struct Reader<'a> {
    /// Takes the findings.
    pub acc: &'a mut Acc,
    /// The file that is read.
    pub file: FileId,
}

/// Something that can be read from a TOML value, and described by a JSON Schema.
pub trait Read: Sized {
    /// Reads it; `None` when the value cannot be used, which has been said to the reader.
    fn read(r: &mut Reader, node: &Node) -> Option<Self>;

    /// What it is when its key is left out; `None` when the key is required.
    fn absent() -> Option<Self> {
        None
    }

    /// Its JSON Schema.
    fn schema() -> Json;
}

/// Reads a whole file as a `T`. Syntax errors and every unusable value are said to `acc`.
pub fn file<T: Read>(acc: &mut Acc, file: FileId, text: &str) -> Option<T> {
    let (table, errors) = DeTable::parse_recoverable(text);
    let broken = !errors.is_empty();
    // What follows the first slip is mostly about the parser having lost its way.
    if let Some(error) = errors.first() {
        let message = error.message().replace('\n', ", ");
        let range = error.span().unwrap_or(0..0);
        // A brace that was forgotten is noticed lines later: where it was opened is where it is mended.
        let open = Some(&message)
            .filter(|message| message.contains("inline table"))
            .and_then(|_| open_brace(text, range.start));
        let range = open.map_or(range, |at| at..at + 1);
        let found = Diagnostic::new(&rules::TOML_SYNTAX, Span::new(file, range), message);
        acc.add(found.help(match open {
            Some(_) => "close this brace on its own line, and put commas between its entries",
            None => "TOML writes words in quotes (`key = \"words\"`) and tables in brackets (`[table]`)",
        }));
    }
    if broken {
        return None;
    }
    let span = table.span();
    let node = Spanned::new(span, DeValue::Table(table.into_inner()));
    T::read(&mut Reader { acc, file }, &node)
}

/// The last brace before `end` that is not closed on its line.
fn open_brace(text: &str, end: usize) -> Option<usize> {
    let before = text.get(..end)?;
    let mut at = before.len();
    for line in before.rsplit('\n') {
        at -= line.len();
        let closed = line.matches('}').count() >= line.matches('{').count();
        if let Some(brace) = line.rfind('{').filter(|_| !closed) {
            return Some(at + brace);
        }
        at = at.checked_sub(1)?;
    }
    None
}

impl Reader<'_> {
    /// The span of a node.
    pub fn span<T>(&self, node: &Spanned<T>) -> Span {
        Span::new(self.file, node.span())
    }

    /// Says that a value is of the wrong type, or not in the form that is asked.
    pub fn wrong_form(&mut self, node: &Node, asked: &str, help: &str) {
        let given = match node.get_ref() {
            DeValue::String(text) => format!("`{text}`"),
            other => format!("this {}", type_name(other)),
        };
        let span = self.span(node);
        let found = Diagnostic::new(&rules::WRONG_FORM, span, format!("{given} is not {asked}"));
        self.acc.add(if help.is_empty() { found } else { found.help(help) });
    }

    /// The text of a string value.
    pub fn text<'n>(&mut self, node: &'n Node) -> Option<&'n str> {
        match node.get_ref() {
            DeValue::String(text) => Some(text),
            _ => {
                self.wrong_form(node, "words in quotes", "write it as `key = \"words\"`");
                None
            }
        }
    }

    /// The table of a table value.
    pub fn table<'n, 'i>(&mut self, node: &'n Node<'i>) -> Option<&'n DeTable<'i>> {
        match node.get_ref() {
            DeValue::Table(table) => Some(table),
            _ => {
                self.wrong_form(node, "a table", "write it as `key = { name = value }` or under a `[key]` heading");
                None
            }
        }
    }

    /// Reads the key of a table, or says that it is missing.
    pub fn field<T: Read>(&mut self, table: &DeTable, whole: &Node, key: &str) -> Option<T> {
        match table.get(key) {
            Some(node) => match T::read(self, node) {
                Some(value) => Some(value),
                None => T::absent(),
            },
            None => T::absent().or_else(|| {
                let span = self.span(whole);
                self.acc.add(
                    Diagnostic::new(&rules::MISSING_KEY, span, format!("`{key}` is missing here"))
                        .help(format!("add `{key} = …` to this table")),
                );
                None
            }),
        }
    }

    /// Says which keys of `table` are not among `known`.
    pub fn unknown(&mut self, table: &DeTable, known: &[String]) {
        for key in table.keys() {
            let name: &str = key.get_ref();
            if !known.iter().any(|k| k == name) {
                let span = self.span(key);
                let help = suggest::did_you_mean(name, known.iter().map(String::as_str));
                self.acc.add(
                    Diagnostic::new(&rules::UNKNOWN_KEY, span, format!("`{name}` is not a key of this table"))
                        .help(help),
                );
            }
        }
    }
}

fn type_name(value: &DeValue) -> &'static str {
    match value {
        DeValue::String(_) => "text",
        DeValue::Integer(_) => "whole number",
        DeValue::Float(_) => "number",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "date",
        DeValue::Array(_) => "list",
        DeValue::Table(_) => "table",
    }
}

impl Read for String {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        r.text(node).map(str::to_string)
    }
    fn schema() -> Json {
        json!({ "type": "string" })
    }
}

impl Read for bool {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        node.get_ref().as_bool().or_else(|| {
            r.wrong_form(node, "`true` or `false`", "");
            None
        })
    }
    fn absent() -> Option<Self> {
        Some(false)
    }
    fn schema() -> Json {
        json!({ "type": "boolean" })
    }
}

impl Read for f64 {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let number = match node.get_ref() {
            DeValue::Integer(n) => i64::from_str_radix(n.as_str(), n.radix()).ok().map(|n| n as f64),
            DeValue::Float(n) => n.as_str().parse().ok(),
            _ => None,
        };
        let number = number.filter(|n: &f64| n.is_finite());
        if number.is_none() {
            r.wrong_form(node, "a number", "write it without quotes, as `key = 12`");
        }
        number
    }
    fn schema() -> Json {
        json!({ "type": "number" })
    }
}

impl Read for u32 {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let number = match node.get_ref() {
            DeValue::Integer(n) => u32::from_str_radix(n.as_str(), n.radix()).ok(),
            _ => None,
        };
        if number.is_none() {
            r.wrong_form(node, "a whole number of 0 or more", "write it without quotes, as `key = 12`");
        }
        number
    }
    fn schema() -> Json {
        json!({ "type": "integer", "minimum": 0 })
    }
}

impl Read for jiff::civil::Date {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let date = node.get_ref().as_datetime().and_then(|d| d.date.filter(|_| d.time.is_none()));
        let date = date.and_then(|d| {
            let (year, month, day) =
                (i16::try_from(d.year).ok()?, i8::try_from(d.month).ok()?, i8::try_from(d.day).ok()?);
            jiff::civil::Date::new(year, month, day).ok()
        });
        if date.is_none() {
            r.wrong_form(node, "a date", "write it without quotes, year first, as `2026-09-14`");
        }
        date
    }
    fn schema() -> Json {
        json!({ "type": "string", "format": "date" })
    }
}

impl<T: Read> Read for At<T> {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let span = r.span(node);
        T::read(r, node).map(|value| At { value, span })
    }
    fn schema() -> Json {
        T::schema()
    }
}

impl<T: Read> Read for Option<T> {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        T::read(r, node).map(Some)
    }
    fn absent() -> Option<Self> {
        Some(None)
    }
    fn schema() -> Json {
        T::schema()
    }
}

impl<T: Read> Read for Vec<T> {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        match node.get_ref() {
            DeValue::Array(items) => Some(items.iter().filter_map(|item| T::read(r, item)).collect()),
            _ => {
                r.wrong_form(node, "a list", "write it as `key = [ … ]`, or repeat a `[[key]]` heading");
                None
            }
        }
    }
    fn absent() -> Option<Self> {
        Some(Vec::new())
    }
    fn schema() -> Json {
        json!({ "type": "array", "items": T::schema() })
    }
}

/// A list of which one item may stand without brackets.
#[derive(Debug, Clone)]
pub struct OneOrMany<T>(pub Vec<T>);

impl<T> Default for OneOrMany<T> {
    fn default() -> Self {
        OneOrMany(Vec::new())
    }
}

impl<T> std::ops::Deref for OneOrMany<T> {
    type Target = [T];
    fn deref(&self) -> &[T] {
        &self.0
    }
}

impl<T: Read> Read for OneOrMany<T> {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        match node.get_ref() {
            DeValue::Array(_) => Vec::read(r, node).map(OneOrMany),
            _ => T::read(r, node).map(|one| OneOrMany(vec![one])),
        }
    }
    fn absent() -> Option<Self> {
        Some(OneOrMany(Vec::new()))
    }
    fn schema() -> Json {
        json!({ "anyOf": [T::schema(), { "type": "array", "items": T::schema() }] })
    }
}

/// A table whose keys the author chooses, in the author's order.
#[derive(Debug, Clone)]
pub struct Map<T>(pub Vec<(At<String>, T)>);

impl<T> Default for Map<T> {
    fn default() -> Self {
        Map(Vec::new())
    }
}

impl<T> Map<T> {
    /// The value under `key`.
    pub fn get(&self, key: &str) -> Option<&T> {
        self.entry(key).map(|(_, value)| value)
    }

    /// The key as written, and its value.
    pub fn entry(&self, key: &str) -> Option<&(At<String>, T)> {
        self.0.iter().find(|(name, _)| name.value == key)
    }

    /// The keys.
    pub fn names(&self) -> impl Iterator<Item = &str> + Clone {
        self.0.iter().map(|(name, _)| name.value.as_str())
    }

    /// Keys and values.
    pub fn iter(&self) -> std::slice::Iter<'_, (At<String>, T)> {
        self.0.iter()
    }

    /// Takes in the entries of `other` whose keys are not here yet.
    pub fn fill_from(&mut self, other: &Map<T>)
    where
        T: Clone,
    {
        for (key, value) in &other.0 {
            if self.get(key).is_none() {
                self.0.push((key.clone(), value.clone()));
            }
        }
    }
}

impl<T: Read> Read for Map<T> {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let table = r.table(node)?;
        let mut entries = Vec::with_capacity(table.len());
        for (key, value) in table {
            let name = At::new(key.get_ref().to_string(), r.span(key));
            entries.extend(T::read(r, value).map(|value| (name, value)));
        }
        Some(Map(entries))
    }
    fn absent() -> Option<Self> {
        Some(Map(Vec::new()))
    }
    fn schema() -> Json {
        json!({ "type": "object", "additionalProperties": T::schema() })
    }
}
