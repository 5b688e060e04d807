//! The files of a book as text, and places in them.

use std::ops::Range;

/// A file of the book, by its number in [`Sources`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FileId(pub u32);

/// A stretch of one file, in bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Span {
    /// The file.
    pub file: FileId,
    /// The first byte.
    pub start: u32,
    /// The byte after the last.
    pub end: u32,
}

impl Span {
    /// The span of `range` in `file`.
    pub fn new(file: FileId, range: Range<usize>) -> Self {
        let clamp = |at: usize| u32::try_from(at).unwrap_or(u32::MAX);
        Span { file, start: clamp(range.start), end: clamp(range.end) }
    }

    /// The bytes it covers.
    pub fn range(self) -> Range<usize> {
        self.start as usize..self.end as usize
    }
}

/// Something an author wrote, with where it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct At<T> {
    /// What was written.
    pub value: T,
    /// Where.
    pub span: Span,
}

impl<T> At<T> {
    /// `value`, written at `span`.
    pub fn new(value: T, span: Span) -> Self {
        At { value, span }
    }
}

impl<T> std::ops::Deref for At<T> {
    type Target = T;
    fn deref(&self) -> &T {
        &self.value
    }
}

/// One file: its path in the book, with forward slashes, and its text.
#[derive(Debug, Clone)]
pub struct SourceFile {
    /// Path from the root of the book.
    pub path: String,
    /// What it holds.
    pub text: String,
}

/// All files that were read, in the order of reading.
#[derive(Debug, Clone, Default)]
pub struct Sources {
    files: Vec<SourceFile>,
}

impl Sources {
    /// Takes in a file and gives its number.
    pub fn add(&mut self, path: String, text: String) -> FileId {
        self.files.push(SourceFile { path, text });
        FileId(u32::try_from(self.files.len() - 1).unwrap_or(u32::MAX))
    }

    /// The file of a number that [`Sources::add`] gave.
    pub fn get(&self, id: FileId) -> &SourceFile {
        &self.files[id.0 as usize]
    }

    /// The number of the file at `path`.
    pub fn find(&self, path: &str) -> Option<FileId> {
        let at = self.files.iter().position(|file| file.path == path)?;
        Some(FileId(u32::try_from(at).unwrap_or(u32::MAX)))
    }

    /// All files.
    pub fn iter(&self) -> impl Iterator<Item = &SourceFile> {
        self.files.iter()
    }

    /// The text under `span`; empty when the span does not lie on character boundaries.
    pub fn slice(&self, span: Span) -> &str {
        self.get(span.file).text.get(span.range()).unwrap_or_default()
    }

    /// Line and column of the span's start, both counted from 1, columns in characters.
    pub fn line_column(&self, span: Span) -> (usize, usize) {
        let text = &self.get(span.file).text;
        let mut at = (span.start as usize).min(text.len());
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        let before = &text[..at];
        let line = before.matches('\n').count() + 1;
        let column = before.rsplit('\n').next().unwrap_or_default().chars().count() + 1;
        (line, column)
    }
}
