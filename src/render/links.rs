//! Addresses: every link is relative, names its file, and so works from a folder and under any base path.

use crate::model::guide::{Guide, Page};

/// From a page to the root of its guide: `../../`.
pub struct Way<'a> {
    /// The page's depth below the van's folder.
    depth: usize,
    /// The folder of the guide's language below the van's folder; empty for the default one.
    language: &'a str,
}

impl<'a> Way<'a> {
    /// The way from `page`.
    pub fn from(guide: &Guide<'a>, page: &Page) -> Self {
        let language = if guide.languages.first() == Some(&guide.language) { "" } else { guide.language };
        let segments = page.address.split('/').filter(|segment| !segment.is_empty()).count();
        Way { depth: segments + usize::from(!language.is_empty()), language }
    }

    /// To a page of the same guide.
    pub fn to(&self, address: &str) -> String {
        let inner = [self.language, address].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("/");
        self.to_other(&inner)
    }

    /// To a page by its folder below the van's folder.
    pub fn to_other(&self, folder: &str) -> String {
        match folder {
            "" => format!("{}index.html", self.up()),
            _ => format!("{}{folder}/index.html", self.up()),
        }
    }

    /// To a file of the van's folder.
    pub fn file(&self, path: &str) -> String {
        format!("{}{}", self.up(), encode(path))
    }

    /// To the van's folder: `../../`, or nothing.
    pub fn up(&self) -> String {
        "../".repeat(self.depth)
    }
}

/// The folder of a page below the van's folder.
pub fn folder(guide: &Guide, address: &str) -> String {
    let default = guide.languages.first() == Some(&guide.language);
    let language = if default { "" } else { guide.language };
    [language, address].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("/")
}

/// Where a file of the book stands below the van's folder: `content/gas/locker/lever.svg` becomes `files/gas/locker/lever.svg`.
pub fn asset(path: &str) -> String {
    format!("files/{}", path.trim_start_matches("content/"))
}

/// A message that a reader completes and sends (RFC 6068).
pub fn mailto(to: &str, subject: &str, body: &str) -> String {
    let [to, subject, body] =
        [(to, "-._~@+"), (subject, "-._~"), (body, "-._~")].map(|(text, stay)| escape(text, stay));
    format!("mailto:{to}?subject={subject}&body={body}")
}

/// Percent-encodes what may not stand in a path (RFC 3986, 3.3: unreserved characters and slashes stay).
pub fn encode(path: &str) -> String {
    escape(path, "-._~/")
}

/// Percent-encodes all but ASCII letters, digits and the characters that `stay`.
fn escape(text: &str, stay: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || stay.as_bytes().contains(&byte) {
            out.push(byte as char);
        } else {
            out.push_str(&format!("%{byte:02X}"));
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_unreserved_characters_and_slashes_stay() {
        assert_eq!(encode("gas/locker/lever-1_a.svg"), "gas/locker/lever-1_a.svg");
        assert_eq!(encode("é ?#[@]"), "%C3%A9%20%3F%23%5B%40%5D");
    }

    #[test]
    fn a_message_holds_what_it_says_and_nothing_of_it_becomes_a_header() {
        // RFC 6068, 5: line breaks in a body are %0D%0A; `&`, `?` and `=` of a text are encoded.
        assert_eq!(
            mailto("a&b@example.example", "x?cc=y", "one\r\ntwo"),
            "mailto:a%26b@example.example?subject=x%3Fcc%3Dy&body=one%0D%0Atwo"
        );
    }
}
