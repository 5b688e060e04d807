//! The typesetter, in a world of our own: fonts of the program, templates of the theme, data of one document. Nothing is
//! looked up elsewhere, and no clock is read, so the same data gives the same bytes. The only file that knows it.

use crate::label::Asked;
use crate::model::book::Book;
use serde::Serialize;
use std::collections::BTreeMap;
use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World, WorldExt};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

/// The fonts, with their licences beside them: a sans for all languages of Europe, and signs that it lacks.
static FONTS: [&[u8]; 4] = [
    include_bytes!("../../../fonts/OpenSans-Regular.ttf"),
    include_bytes!("../../../fonts/OpenSans-Bold.ttf"),
    include_bytes!("../../../fonts/OpenSans-Italic.ttf"),
    include_bytes!("../../../fonts/Signs.ttf"),
];

/// How many documents a piece of layout is remembered for after it was last of use.
const REMEMBERED: usize = 8;

/// What prints: made ready once for all documents of a book.
pub struct Press<'a> {
    library: LazyHash<Library>,
    fonts: Vec<Font>,
    known: LazyHash<FontBook>,
    templates: BTreeMap<String, Source>,
    book: &'a Book,
}

impl<'a> Press<'a> {
    /// Makes the templates of a book's theme ready.
    pub fn new(book: &'a Book) -> Self {
        let fonts: Vec<Font> = FONTS.iter().flat_map(|font| Font::iter(Bytes::new(*font))).collect();
        let templates = book.theme.files.iter().filter(|(path, _)| path.ends_with(".typ"));
        Press {
            library: LazyHash::new(Library::default()),
            known: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
            templates: templates
                .filter_map(|(path, text)| Some((path.clone(), Source::new(id(path)?, text.clone()))))
                .collect(),
            book,
        }
    }

    /// What the book asks of codes.
    pub fn asked(&self) -> Asked {
        Asked::of(self.book)
    }

    /// A document from `paper/<template>.typ` and its data, as PDF/UA-1 (ISO 14289-1). What fails comes back in words.
    pub fn print(&self, template: &str, data: &impl Serialize) -> Result<Vec<u8>, String> {
        let path = format!("paper/{template}.typ");
        let main = self.templates.get(&path).ok_or_else(|| format!("the theme has no `{path}`"))?.id();
        let data = serde_json::to_vec(data).map_err(|e| e.to_string())?;
        let data = Bytes::new(data);
        let sheet = Sheet { press: self, main, data };
        let pdf = sheet.pdf();
        typst::comemo::evict(REMEMBERED);
        pdf
    }
}

/// One document.
struct Sheet<'a> {
    press: &'a Press<'a>,
    main: FileId,
    data: Bytes,
}

impl Sheet<'_> {
    fn pdf(&self) -> Result<Vec<u8>, String> {
        let compiled = typst::compile::<PagedDocument>(self);
        let document = compiled.output.map_err(|errors| self.words(&errors))?;
        // A page number that never settles would be a wrong one.
        if let Some(warning) = compiled.warnings.iter().find(|warning| warning.message.contains("converge")) {
            return Err(self.words(std::slice::from_ref(warning)));
        }
        let standards = PdfStandards::new(&[PdfStandard::Ua_1]).map_err(|e| e.message().to_string())?;
        let options =
            PdfOptions { standards, creator: Smart::Custom(Some("Lockerleaf".into())), ..PdfOptions::default() };
        typst_pdf::pdf(&document, &options).map_err(|errors| self.words(&errors))
    }

    /// The first thing that is wrong: where in the templates, what, and a way out.
    fn words(&self, errors: &[SourceDiagnostic]) -> String {
        let Some(error) = errors.first() else {
            return "the typesetter failed without a word".to_string();
        };
        let mut words = error.message.to_string();
        if let (Some(file), Some(range)) = (error.span.id(), self.range(error.span)) {
            let line = self.source(file).ok().and_then(|source| source.lines().byte_to_line(range.start));
            words = format!("{}:{}: {words}", file.get().vpath().get_without_slash(), line.unwrap_or_default() + 1);
        }
        error.hints.iter().fold(words, |words, hint| format!("{words}; {}", hint.v))
    }
}

impl World for Sheet<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.press.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.press.known
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let path = id.get().vpath().get_without_slash();
        self.press.templates.get(path).cloned().ok_or_else(|| missing(path))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let path = id.get().vpath().get_without_slash();
        let book = self.press.book;
        match (path, book.theme.files.get(path), book.assets.get(path)) {
            ("data.json", ..) => Ok(self.data.clone()),
            (_, Some(text), _) => Ok(Bytes::from_string(text.clone())),
            (_, None, Some(bytes)) => Ok(Bytes::new(bytes.clone())),
            _ => Err(missing(path)),
        }
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.press.fonts.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

fn id(path: &str) -> Option<FileId> {
    Some(RootedPath::new(VirtualRoot::Project, VirtualPath::new(path).ok()?).intern())
}

fn missing(path: &str) -> FileError {
    FileError::NotFound(path.into())
}
