//! Names and owners' words from A to Z, with where they lead.

use super::Composer;
use crate::model::guide::{Guide, WordEntry};
use crate::model::text::{Role, words};

impl<'a> Composer<'a, '_> {
    pub(super) fn word_list(&self, guide: &Guide<'a>) -> Vec<(String, Vec<WordEntry>)> {
        let mut entries = self.entries(guide);
        entries.extend(self.owners_words(&entries));
        entries.sort_by_cached_key(|entry| {
            (entry.word.to_lowercase(), entry.word.clone(), entry.title.clone(), entry.address.clone())
        });
        entries.dedup_by(|a, b| {
            a.word.to_lowercase() == b.word.to_lowercase() && a.address == b.address && a.section == b.section
        });
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
                    word: words(&shown.section.title),
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
        for (word, means) in table.iter() {
            let parts = known.iter().filter(|entry| {
                entry.section.is_none()
                    && means
                        .iter()
                        .any(|mean| contains_word(&entry.title, mean) || entry.word.eq_ignore_ascii_case(mean))
            });
            for entry in parts {
                entries.push(WordEntry {
                    word: capital(&word.value),
                    address: entry.address.clone(),
                    section: None,
                    title: entry.title.clone(),
                });
            }
        }
        entries
    }
}

fn contains_word(text: &str, word: &str) -> bool {
    let word = word.to_lowercase();
    text.to_lowercase().split(|c: char| !c.is_alphanumeric() && c != '-').any(|part| part == word)
}

fn capital(word: &str) -> String {
    let mut chars = word.chars();
    chars.next().map(|first| first.to_uppercase().chain(chars).collect()).unwrap_or_default()
}
