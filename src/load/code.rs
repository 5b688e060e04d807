//! Code blocks cut into pieces, once, when they are read. The only file that knows the highlighter.

use crate::model::text::Piece;
use std::sync::OnceLock;
use syntect::parsing::{ParseState, ScopeStack, SyntaxDefinition, SyntaxReference, SyntaxSet, SyntaxSetBuilder};
use syntect::util::LinesWithEndings;

/// Syntaxes of our own: fuse and wiring tables, and TOML.
const OWN: [&str; 2] = [include_str!("syntaxes/wiring.sublime-syntax"), include_str!("syntaxes/toml.sublime-syntax")];

/// The pieces of `text`, or `None` when `language` is not known or its syntax fails. Syntaxes are loaded when the first
/// code block asks for one.
pub fn pieces(language: &str, text: &str) -> Option<Vec<(Piece, String)>> {
    let (set, syntax) = find(language)?;
    let mut state = ParseState::new(syntax);
    let mut scopes = ScopeStack::new();
    let mut pieces: Vec<(Piece, String)> = Vec::new();
    for line in LinesWithEndings::from(text) {
        let mut at = 0;
        for (to, operation) in state.parse_line(line, set).ok()? {
            add(&mut pieces, piece(&scopes), &line[at..to]);
            scopes.apply(&operation).ok()?;
            at = to;
        }
        add(&mut pieces, piece(&scopes), &line[at..]);
    }
    Some(pieces)
}

fn find(language: &str) -> Option<(&'static SyntaxSet, &'static SyntaxReference)> {
    if language.is_empty() {
        return None;
    }
    let own = own();
    if let Some(syntax) = own.find_syntax_by_token(language) {
        return Some((own, syntax));
    }
    static DEFAULTS: OnceLock<SyntaxSet> = OnceLock::new();
    let defaults = DEFAULTS.get_or_init(SyntaxSet::load_defaults_newlines);
    defaults.find_syntax_by_token(language).map(|syntax| (defaults, syntax))
}

fn own() -> &'static SyntaxSet {
    static SET: OnceLock<SyntaxSet> = OnceLock::new();
    SET.get_or_init(|| {
        let mut builder = SyntaxSetBuilder::new();
        for source in OWN {
            // A syntax of our own that does not load is held by a test below.
            if let Ok(syntax) = SyntaxDefinition::load_from_str(source, true, None) {
                builder.add(syntax);
            }
        }
        builder.build()
    })
}

fn piece(scopes: &ScopeStack) -> Piece {
    let innermost = scopes.as_slice().iter().rev().map(ToString::to_string);
    for name in innermost {
        let kind = match name.split('.').next().unwrap_or_default() {
            "comment" => Piece::Comment,
            "string" => Piece::Text,
            "constant" => Piece::Number,
            "keyword" | "storage" | "entity" | "variable" | "support" => Piece::Name,
            _ => continue,
        };
        return kind;
    }
    Piece::Plain
}

fn add(pieces: &mut Vec<(Piece, String)>, piece: Piece, text: &str) {
    match pieces.last_mut() {
        _ if text.is_empty() => {}
        Some((last, words)) if *last == piece => words.push_str(text),
        _ => pieces.push((piece, text.to_string())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fuse_table_is_cut_into_pieces() {
        let found = pieces("wiring", "F7  fridge  15 A  # blue\n").unwrap();
        let kinds: Vec<_> =
            found.iter().filter(|(kind, _)| *kind != Piece::Plain).map(|(kind, text)| (*kind, text.trim())).collect();
        assert_eq!(kinds, [(Piece::Name, "F7"), (Piece::Number, "15 A"), (Piece::Comment, "# blue")]);
    }

    #[test]
    fn toml_is_known_and_nonsense_is_not() {
        let found = pieces("toml", "key = \"M7\"\n").unwrap();
        assert!(found.contains(&(Piece::Text, "\"M7\"".into())), "{found:?}");
        assert!(pieces("no-such-language", "x").is_none());
    }
}
