//! Names and owners' words from A to Z, with where they lead.

use super::Composer;
use crate::model::guide::{Guide, WordEntry};
use crate::model::text::{Role, words};
use std::collections::BTreeMap;

impl<'a> Composer<'a, '_> {
    pub(super) fn word_list(&self, guide: &Guide<'a>) -> Vec<(String, Vec<WordEntry>)> {
        let mut entries = self.entries(guide);
        entries.extend(self.owners_words(&entries));
        one_spelling(&mut entries);
        entries.sort_by_cached_key(|entry| {
            (entry.word.to_lowercase(), entry.title.clone(), entry.address.clone(), entry.section.clone())
        });
        entries.dedup_by(|a, b| a.word == b.word && a.address == b.address && a.section == b.section);
        let mut letters: Vec<(String, Vec<WordEntry>)> = Vec::new();
        for entry in entries {
            let letter = entry
                .word
                .chars()
                .next()
                .map(|c| if c.is_alphabetic() { c.to_uppercase().to_string() } else { "0–9".to_string() })
                .unwrap_or_default();
            match letters.last_mut() {
                Some((last, words)) if *last == letter => words.push(entry),
                _ => letters.push((letter, vec![entry])),
            }
        }
        letters
    }

    fn entries(&self, guide: &Guide<'a>) -> Vec<WordEntry> {
        let mut entries = Vec::new();
        for place in &guide.places {
            entries.push(WordEntry {
                word: place.name.to_string(),
                address: place.code.to_string(),
                section: None,
                title: place.code.to_string(),
            });
        }
        for (number, fit) in guide.fits.iter().enumerate() {
            let address = format!("part/{}", fit.name);
            for word in std::iter::once(fit.title.to_string()).chain(fit.aliases.iter().map(|alias| capital(alias))) {
                entries.push(WordEntry { word, address: address.clone(), section: None, title: fit.title.to_string() });
            }
            for (_, shown) in
                self.shown(number).filter(|(_, shown)| matches!(shown.role(), Some(Role::Task | Role::Control)))
            {
                let section = Some(shown.section.id.value.clone());
                entries.push(WordEntry {
                    word: without_article(&words(&shown.section.title), &self.phrases.get("words-article")),
                    address: address.clone(),
                    section,
                    title: fit.title.to_string(),
                });
            }
        }
        entries
    }

    /// Owners' words for words that are in the list already: `loo` leads where `toilet` does.
    fn owners_words(&self, known: &[WordEntry]) -> Vec<WordEntry> {
        let mut entries = Vec::new();
        let Some(table) = self.book.words.0.get(self.language) else {
            return entries;
        };
        // Each title is taken apart once, not once for each of the many words.
        let parts: Vec<_> = known.iter().filter(|entry| entry.section.is_none()).collect();
        let parts: Vec<_> = parts.into_iter().map(|entry| (entry, spaced(&entry.title))).collect();
        for (word, means) in table.iter() {
            // What it means most surely is enough here: a list of everything near it would lead nowhere.
            let surest = means.iter().map(|mean| named(&parts, mean)).find(|parts| !parts.is_empty());
            entries.extend(surest.into_iter().flatten().map(|entry| WordEntry {
                word: capital(&word.value),
                address: entry.address.clone(),
                section: None,
                title: entry.title.clone(),
            }));
        }
        entries
    }
}

/// Those of `parts`, with their titles taken apart, that have this name or these words in their title.
fn named<'e>(parts: &[(&'e WordEntry, String)], mean: &str) -> Vec<&'e WordEntry> {
    let words = spaced(mean);
    let meant = parts.iter().filter(|(entry, title)| title.contains(&words) || entry.word.eq_ignore_ascii_case(mean));
    meant.map(|(entry, _)| *entry).collect()
}

/// The words of a text in small letters, each between spaces.
fn spaced(text: &str) -> String {
    let parts = text.split(|c: char| !c.is_alphanumeric() && c != '-').filter(|part| !part.is_empty());
    format!(" {} ", parts.map(str::to_lowercase).collect::<Vec<_>>().join(" "))
}

/// One word is written one way all through, with the capitals that it has anywhere: `CO detector`, not `Co detector`.
fn one_spelling(entries: &mut [WordEntry]) {
    let capitals = |word: &str| word.chars().filter(|c| c.is_uppercase()).count();
    let mut best: BTreeMap<String, String> = BTreeMap::new();
    for entry in entries.iter() {
        let known = best.entry(entry.word.to_lowercase()).or_insert_with(|| entry.word.clone());
        if capitals(&entry.word) > capitals(known) {
            *known = entry.word.clone();
        }
    }
    for entry in entries {
        entry.word = best[&entry.word.to_lowercase()].clone();
    }
}

/// `The drain lever` is looked for under D.
fn without_article(words: &str, article: &str) -> String {
    words.strip_prefix(article).and_then(|rest| rest.strip_prefix(' ')).map_or_else(|| words.to_string(), capital)
}

fn capital(word: &str) -> String {
    let mut chars = word.chars();
    chars.next().map(|first| first.to_uppercase().chain(chars).collect()).unwrap_or_default()
}
