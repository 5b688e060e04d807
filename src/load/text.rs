//! From blocks to a text: its title, its sections, its safety notes, its links.

use super::{markdown, notes};
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::files::forms::is_id;
use crate::model::source::{At, FileId, Span};
use crate::model::text::{Block, Heading, Inline, Refs, Role, Section, Target, Text, Uses, words};

/// Reads the text of `file`. A text without a title is not usable.
pub fn read(acc: &mut Acc, file: FileId, source: &str) -> Option<Text> {
    let (mut blocks, mut refs) = markdown::parse(acc, file, source);
    for link in &mut refs.links {
        link.value = target(acc, link);
    }
    notes::find(acc, &mut blocks, &refs);
    check_pictures(acc, &blocks, &refs);
    check_levels(acc, &blocks);
    let mut text = divide(acc, file, blocks, refs)?;
    assign_uses(&mut text, source.len());
    check_names(acc, &text);
    Some(text)
}

/// Cuts the blocks at their headings.
fn divide(acc: &mut Acc, file: FileId, blocks: Vec<Block>, refs: Refs) -> Option<Text> {
    let mut text: Option<Text> = None;
    for block in blocks {
        match (block, &mut text) {
            (Block::Heading(1, title, heading), None) => {
                let title = At::new(words(&title), heading.span);
                text = Some(Text { file, title, intro: vec![], sections: vec![], refs: refs.clone() });
            }
            (Block::Heading(2, title, heading), Some(text)) => text.sections.push(section(acc, title, &heading)),
            (block, Some(text)) => {
                if let Block::Heading(_, _, heading) = &block {
                    plain_heading(acc, heading);
                }
                text.sections.last_mut().map_or(&mut text.intro, |section| &mut section.blocks).push(block);
            }
            (_, None) => {}
        }
    }
    if text.is_none() {
        let found = Diagnostic::new(&rules::HEADING_LEVELS, Span::new(file, 0..0), "this text has no title");
        acc.add(found.help("begin it with a line such as `# Absorption fridge`"));
    }
    text
}

fn section(acc: &mut Acc, title: Vec<Inline>, heading: &Heading) -> Section {
    let id = heading.id.clone().filter(|id| is_id(id)).unwrap_or_else(|| {
        let found =
            Diagnostic::new(&rules::SECTION_NAME, heading.span, format!("`{}` has no usable name", words(&title)));
        acc.add(found.help("give it a name in lower case and a role, as in `## Light it {#light .task}`"));
        String::new()
    });
    Section { id: At::new(id, heading.span), role: role(acc, heading), title, blocks: vec![], uses: Uses::default() }
}

fn role(acc: &mut Acc, heading: &Heading) -> Option<Role> {
    if let Some(other) = heading.others.first() {
        let message = format!("`{other}` stands in the braces, and is no name and no role");
        let found = Diagnostic::new(&rules::UNKNOWN_ROLE, heading.span, message);
        acc.add(found.help("a name begins with `#` and a role with a dot, as in `{#light .task}`"));
    }
    let class = match heading.classes.as_slice() {
        [] => return None,
        [class] => class,
        [_, extra, ..] => extra,
    };
    let role = Role::from_word(class).filter(|_| heading.classes.len() == 1);
    if role.is_none() {
        let known = Role::ALL.iter().map(|role| role.word());
        let found =
            Diagnostic::new(&rules::UNKNOWN_ROLE, heading.span, format!("`{class}` is not what this section can be"));
        acc.add(found.help(suggest::did_you_mean(class, known)).help("a section has one role, or none"));
    }
    role
}

fn plain_heading(acc: &mut Acc, heading: &Heading) {
    if heading.id.is_some() || !heading.classes.is_empty() {
        let found = Diagnostic::new(&rules::SECTION_NAME, heading.span, "only `##` headings have names and roles");
        acc.add(found.help("make it a `##` heading, or leave the braces out"));
    }
}

/// Where a link goes; what cannot be used is said.
fn target(acc: &mut Acc, link: &At<Target>) -> Target {
    let Target::Unusable(to) = &link.value else {
        return link.value.clone();
    };
    let id = |text: &str| is_id(text).then(|| text.to_string());
    let known = match to.split_once(':') {
        Some(("part", rest)) => match rest.split_once('#') {
            Some((part, section)) => id(part).zip(id(section)).map(|(part, section)| Target::Part(part, Some(section))),
            None => id(rest).map(|part| Target::Part(part, None)),
        },
        Some(("place", role)) => id(role).map(Target::Place),
        Some(("hazard", hazard)) => id(hazard).map(Target::Hazard),
        Some(("https", _)) => Some(Target::Web(to.clone())),
        Some(_) => None,
        None if to.starts_with('#') || to.is_empty() => None,
        None => return file_target(acc, link.span, to),
    };
    known.unwrap_or_else(|| {
        let found = Diagnostic::new(&rules::LINK_FORM, link.span, format!("`{to}` is not a link that guides have"));
        acc.add(found.help(link_help(to)));
        Target::Unusable(to.clone())
    })
}

fn link_help(to: &str) -> String {
    match to {
        _ if to.starts_with('#') => format!("for a section of the same part write `part:self{to}`"),
        _ if to.starts_with("http:") => "write it with `https:`".to_string(),
        _ => "write `part:capability#section`, `place:role`, `hazard:name`, a file beside this text, or an `https:` address".to_string(),
    }
}

fn file_target(acc: &mut Acc, span: Span, to: &str) -> Target {
    if leaves_folder(to) {
        outside(acc, span, to);
        return Target::Unusable(to.to_string());
    }
    Target::File(to.to_string())
}

fn outside(acc: &mut Acc, span: Span, to: &str) {
    let found = Diagnostic::new(&rules::OUTSIDE_BOOK, span, format!("`{to}` lies outside this folder"));
    acc.add(found.help("put the file beside this text and name it without `..` or a leading slash"));
}

/// Whether a path could lead out of its folder.
pub fn leaves_folder(path: &str) -> bool {
    path.starts_with('/') || path.contains('\\') || path.split('/').any(|part| part == "..")
}

fn check_pictures(acc: &mut Acc, blocks: &[Block], refs: &Refs) {
    let mut alternatives = vec![String::new(); refs.pictures.len()];
    each_inline(blocks, &mut |inline| {
        if let Inline::Picture(number, _, alternative) = inline {
            alternatives[*number] = alternative.trim().to_string();
        }
    });
    for (picture, alternative) in refs.pictures.iter().zip(alternatives) {
        if alternative.is_empty() {
            let found = Diagnostic::new(
                &rules::PICTURE_TEXT,
                picture.span,
                format!("the picture `{}` has no text alternative", picture.value),
            );
            acc.add(found.help(
                "say in the square brackets what the picture shows, as in `![The lever points down](lever.svg)`",
            ));
        }
        if picture.contains(':') || leaves_folder(picture) {
            outside(acc, picture.span, picture);
        }
    }
}

fn check_levels(acc: &mut Acc, blocks: &[Block]) {
    let mut last = 0;
    for block in blocks {
        let Block::Heading(level, title, heading) = block else {
            continue;
        };
        let wrong = match (last, *level) {
            (0, level) => level != 1,
            (_, 1) => true,
            (last, level) => level > last + 1,
        };
        if wrong {
            let message = format!("`{}` is a heading of level {level} after one of level {last}", words(title))
                .replace(" after one of level 0", ", and the first must be of level 1");
            acc.add(
                Diagnostic::new(&rules::HEADING_LEVELS, heading.span, message)
                    .help("a text has one `#` title, `##` sections, and `###` inside sections"),
            );
        }
        last = *level;
    }
}

fn check_names(acc: &mut Acc, text: &Text) {
    for (at, section) in text.sections.iter().enumerate() {
        let twin =
            text.sections[..at].iter().find(|other| other.id.value == section.id.value && !section.id.is_empty());
        if let Some(twin) = twin {
            let found = Diagnostic::new(
                &rules::DUPLICATE_SECTION,
                section.id.span,
                format!("`#{}` is the name of two sections", section.id.value),
            );
            acc.add(found.other(twin.id.span, "the first one").help("give one of them another name"));
        }
    }
}

/// Numbers run in the order of the text, so what a section uses are ranges.
fn assign_uses(text: &mut Text, end: usize) {
    let starts: Vec<_> = text.sections.iter().map(|section| section.id.span.start).collect();
    for (at, section) in text.sections.iter_mut().enumerate() {
        let from = starts[at];
        let to = starts.get(at + 1).copied().unwrap_or(u32::try_from(end).unwrap_or(u32::MAX).saturating_add(1));
        section.uses = Uses { links: between(&text.refs.links, from, to), slots: between(&text.refs.slots, from, to) };
    }
}

fn between<T>(refs: &[At<T>], from: u32, to: u32) -> std::ops::Range<usize> {
    refs.partition_point(|r| r.span.start < from)..refs.partition_point(|r| r.span.start < to)
}

/// Calls `visit` for each inline of `blocks`, at any depth.
pub fn each_inline<'a>(blocks: &'a [Block], visit: &mut impl FnMut(&'a Inline)) {
    for block in blocks {
        match block {
            Block::Paragraph(inlines) | Block::Plain(inlines) | Block::Heading(_, inlines, _) => inner(inlines, visit),
            Block::Quote(blocks, _) => each_inline(blocks, visit),
            Block::Note(note) => {
                inner(&note.consequence, visit);
                note.avoidance.iter().for_each(|item| each_inline(&item.blocks, visit));
                each_inline(&note.more, visit);
            }
            Block::List(_, items) => items.iter().for_each(|item| each_inline(&item.blocks, visit)),
            Block::Table(table) => {
                table.head.iter().chain(table.rows.iter().flatten()).for_each(|cell| inner(cell, visit))
            }
            Block::Code(_) | Block::Rule => {}
        }
    }
}

fn inner<'a>(inlines: &'a [Inline], visit: &mut impl FnMut(&'a Inline)) {
    for inline in inlines {
        visit(inline);
        match inline {
            Inline::Emphasis(more) | Inline::Strong(more) | Inline::Link(_, _, more) => inner(more, visit),
            _ => {}
        }
    }
}
