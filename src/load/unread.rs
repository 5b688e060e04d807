//! Files that stand where nothing reads them: a slip in a name would lose a whole vehicle without a word.

use crate::diag::{Acc, Diagnostic, rules};
use crate::model::book::Book;
use crate::model::source::Span;
use std::collections::BTreeSet;

/// Says which fact files and texts below `content/` and `models/` nothing reads.
pub fn say(acc: &mut Acc, book: &mut Book, paths: &[String]) {
    let read: BTreeSet<String> = book.sources.iter().map(|file| file.path.clone()).collect();
    let unread: Vec<_> = paths.iter().filter(|path| is_ours(path) && !read.contains(*path)).collect();
    for path in unread {
        let file = book.sources.add(path.clone(), String::new());
        let found = Diagnostic::new(&rules::FILE_UNREAD, Span::new(file, 0..0), format!("nothing reads `{path}`"));
        acc.add(found.help(help(path)));
    }
}

/// Whether it looks like a file that somebody wrote for a guide.
fn is_ours(path: &str) -> bool {
    let below = path.starts_with("content/") || path.starts_with("models/");
    let written = path.ends_with(".toml") || path.ends_with(".md");
    // A folder of a part without `module.toml` has been said, and stands for its texts.
    let text = path.starts_with("content/") && path.split('/').count() == 4 && path.contains("/text");
    below && written && !text
}

fn help(path: &str) -> &'static str {
    match path.starts_with("models/") {
        true => {
            "a vehicle is `models/<model>/<van>.toml` beside a `model.toml`; look at its folder and at small letters"
        }
        false => {
            "content is `content/<system>/<name>/module.toml` and `text.md`, `content/routines/*.md`, `content/hazards.toml`, \
             `capabilities.toml`, `words.toml` and `emergency.<language>.md`"
        }
    }
}
