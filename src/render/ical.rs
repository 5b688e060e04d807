//! The content lines of iCalendar (RFC 5545): escaped, folded, ended as it asks, and nothing of its own in between.
//!
//! Our own, since the kept `icalendar` crate (0.17) folds some lines at 76 octets and gives alarms a stamp of the clock
//! and a name by chance.

/// The most octets of a line without its end (RFC 5545, 3.1).
const WIDEST: usize = 75;

/// A text of content lines.
#[derive(Debug, Default)]
pub struct Lines(String);

impl Lines {
    /// A property whose value is no words: a date, a rule, an address.
    pub fn plain(&mut self, name: &str, value: &str) {
        self.fold(&format!("{name}:{value}"));
    }

    /// A property whose value is words (RFC 5545, 3.3.11).
    pub fn text(&mut self, name: &str, words: &str) {
        self.plain(name, &escape(words));
    }

    /// A component around what `inner` adds.
    pub fn component(&mut self, name: &str, inner: impl FnOnce(&mut Self)) {
        self.plain("BEGIN", name);
        inner(self);
        self.plain("END", name);
    }

    /// The whole text.
    pub fn finish(self) -> String {
        self.0
    }

    /// Adds a line, cut between characters where it is too wide; a space goes on with it.
    fn fold(&mut self, line: &str) {
        let mut width = 0;
        for character in line.chars() {
            let octets = character.len_utf8();
            if width + octets > WIDEST {
                self.0.push_str("\r\n ");
                width = 1;
            }
            self.0.push(character);
            width += octets;
        }
        self.0.push_str("\r\n");
    }
}

/// Backslash, semicolon, comma and line break are escaped; control characters have no place in words.
fn escape(words: &str) -> String {
    let mut out = String::with_capacity(words.len());
    for character in words.chars() {
        match character {
            '\\' | ';' | ',' => out.extend(['\\', character]),
            '\n' => out.push_str("\\n"),
            '\t' => out.push('\t'),
            character if character.is_control() => {}
            character => out.push(character),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    fn folded(words: &str) -> String {
        let mut lines = Lines::default();
        lines.plain("X", words);
        lines.finish()
    }

    /// RFC 5545, 3.1: 75 octets without the line break, the space of a fold among them; no character is cut.
    #[test]
    fn every_length_of_every_width_of_character_folds() {
        for character in ["a", "é", "软", "🚐", " "] {
            for many in 0..400 {
                let words = character.repeat(many);
                let folded = folded(&words);
                assert!(folded.ends_with("\r\n"));
                let lines: Vec<_> = folded.split_terminator("\r\n").collect();
                assert!(lines.iter().all(|line| line.len() <= 75), "{many} of {character}");
                assert!(lines.iter().rev().skip(1).all(|line| line.len() > 71), "{many} of {character} fold too soon");
                assert_eq!(folded.replace("\r\n ", ""), format!("X:{words}\r\n"));
            }
        }
    }

    #[test]
    fn a_line_of_75_octets_is_not_folded_and_one_of_76_is() {
        assert_eq!(folded(&"a".repeat(73)).matches("\r\n").count(), 1);
        assert_eq!(folded(&"a".repeat(74)), format!("X:{}\r\n a\r\n", "a".repeat(73)));
    }

    /// RFC 5545, 3.3.11, and its example.
    #[test]
    fn words_are_escaped_as_in_the_standard() {
        let says = "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.";
        assert_eq!(escape(says), r"Project XYZ Final Review\nConference Room - 3B\nCome Prepared.");
        assert_eq!(escape("Test RCD; press T, then reset"), r"Test RCD\; press T\, then reset");
        assert_eq!(escape("a\\n: \"b\"\r\nc\u{7}\u{85}"), r#"a\\n: "b"\nc"#);
    }
}
