//! A theme's words in one language, in Fluent. The only file that knows that format.

use super::quantity::NumberStyle;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use jiff::civil::Date;
use std::collections::BTreeMap;
use unic_langid::LanguageIdentifier;

/// The words of one language.
pub struct Phrases {
    bundle: FluentBundle<FluentResource>,
    /// All messages that take nothing, as they are shown.
    pub plain: BTreeMap<String, String>,
}

impl Phrases {
    /// Reads the text of a file of words. What is wrong with it comes back in words.
    pub fn new(language: &str, source: &str) -> Result<Self, String> {
        let resource = FluentResource::try_new(source.to_string()).map_err(|(_, errors)| format!("{}", errors[0]))?;
        let ids: Vec<String> = source
            .lines()
            .filter_map(|line| line.split_once(" ="))
            .map(|(id, _)| id.to_string())
            .filter(|id| super::files::forms::is_id(id))
            .collect();
        let language: LanguageIdentifier = language.parse().map_err(|_| format!("`{language}` is not a language"))?;
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        bundle.set_use_isolating(false);
        bundle.add_resource(resource).map_err(|errors| format!("{}", errors[0]))?;
        let mut phrases = Phrases { bundle, plain: BTreeMap::new() };
        phrases.plain =
            ids.into_iter().filter_map(|id| phrases.format(&id, &FluentArgs::new()).map(|text| (id, text))).collect();
        Ok(phrases)
    }

    /// The message `id`; its own name when there is none.
    pub fn get(&self, id: &str) -> String {
        self.plain.get(id).cloned().unwrap_or_else(|| format!("⟨{id}⟩"))
    }

    /// The message `id` with what it takes.
    pub fn with(&self, id: &str, given: &[(&str, Given)]) -> String {
        let mut args = FluentArgs::new();
        for (name, value) in given {
            match value {
                Given::Text(text) => args.set(*name, text.to_string()),
                Given::Number(number) => args.set(*name, *number),
            }
        }
        self.format(id, &args).unwrap_or_else(|| format!("⟨{id}⟩"))
    }

    /// A day in the reader's language.
    pub fn day(&self, day: Date) -> String {
        let month = self.get(&format!("month-{}", day.month()));
        let (number, year) = (day.day().to_string(), day.year().to_string());
        self.with(
            "date",
            &[("day", Given::Text(&number)), ("month", Given::Text(&month)), ("year", Given::Text(&year))],
        )
    }

    fn format(&self, id: &str, args: &FluentArgs) -> Option<String> {
        let pattern = self.bundle.get_message(id)?.value()?;
        let mut errors = vec![];
        let text = self.bundle.format_pattern(pattern, Some(args), &mut errors);
        errors.is_empty().then(|| text.into_owned())
    }

    /// How numbers are written.
    pub fn number_style(&self) -> NumberStyle {
        let mark = |id, default| self.plain.get(id).and_then(|text| text.chars().next()).unwrap_or(default);
        NumberStyle { decimal: mark("number-decimal", '.'), group: mark("number-group", '\u{a0}') }
    }
}

/// What a message takes.
pub enum Given<'a> {
    /// Words.
    Text(&'a str),
    /// A number.
    Number(usize),
}
