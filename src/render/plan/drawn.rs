//! A drawing that is made once for all pages: a page only fills in where it stands.

/// A finished drawing, in pieces.
pub struct Drawn(pub(super) Vec<Piece>);

pub(super) enum Piece {
    /// The same on every page.
    Text(String),
    /// The way from the page to the root of the guide.
    Up,
    /// What depends on whether the reader stands at one of `marks`, by their numbers.
    Either { marks: Vec<usize>, there: String, here: String },
}

impl Drawn {
    /// The drawing on a page from which `up` leads to the root of the guide (`../../`), with the reader at the mark `here`.
    pub fn on(&self, up: &str, here: Option<usize>) -> String {
        let parts = self.0.iter().map(|piece| match piece {
            Piece::Text(text) => text.as_str(),
            Piece::Up => up,
            Piece::Either { marks, here: text, .. } if here.is_some_and(|here| marks.contains(&here)) => text.as_str(),
            Piece::Either { there, .. } => there.as_str(),
        });
        parts.collect::<String>()
    }
}
