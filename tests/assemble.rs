//! The whole way from a book to files.

mod common;

use common::{book, root};
use lockerleaf::check::output_link;
use lockerleaf::diag::Acc;
use lockerleaf::load::disk::Folder;
use lockerleaf::{assemble, guide, look};
use std::collections::BTreeMap;
use std::path::Path;
use walkdir::WalkDir;

fn files(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let files =
        WalkDir::new(folder).into_iter().map(|entry| entry.unwrap()).filter(|entry| entry.file_type().is_file());
    files
        .map(|entry| {
            (
                entry.path().strip_prefix(folder).unwrap().to_string_lossy().into_owned(),
                std::fs::read(entry.path()).unwrap(),
            )
        })
        .collect()
}

#[test]
fn an_empty_book_assembles_to_the_page_that_takes_a_key() {
    let empty = lockerleaf::load::files::Memory::from_fixture("//- book.toml\n");
    let looked = look(&empty).unwrap();
    assert_eq!(looked.acc.in_any_order().count(), 0);
    let out = tempfile::tempdir().unwrap();
    let receipt = assemble(&looked, out.path(), &|_| true).unwrap().unwrap();
    assert_eq!(receipt.pages, 1);
    assert!(files(out.path()).contains_key("index.html"));
}

#[test]
fn the_same_book_gives_the_same_bytes_and_a_second_run_writes_nothing() {
    let looked = look(&Folder::new(root())).unwrap();
    let (one, two) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let first = assemble(&looked, one.path(), &|_| true).unwrap().expect("the demo has no errors");
    assemble(&look(&Folder::new(root())).unwrap(), two.path(), &|_| true).unwrap().unwrap();
    assert!(files(one.path()) == files(two.path()), "two runs differ");
    let again = assemble(&looked, one.path(), &|_| true).unwrap().unwrap();
    assert_eq!((again.written, again.removed, again.unchanged), (0, 0, first.written));
}

#[test]
fn nothing_is_written_when_the_book_has_an_error() {
    let looked = look(&book("//- models/test/one.toml\nkey = \"M7QK3WZD\"\nyaer = 2019\n")).unwrap();
    let out = tempfile::tempdir().unwrap();
    assert!(assemble(&looked, out.path(), &|_| true).unwrap().is_none());
    assert!(files(out.path()).is_empty());
}

#[test]
fn what_nothing_makes_any_more_is_taken_away_and_what_is_not_ours_stays() {
    let looked = look(&book("")).unwrap();
    let out = tempfile::tempdir().unwrap();
    assemble(&looked, out.path(), &|_| true).unwrap().unwrap();
    std::fs::create_dir_all(out.path().join("M7QK3WZD/part/old")).unwrap();
    std::fs::write(out.path().join("M7QK3WZD/part/old/index.html"), "old").unwrap();
    std::fs::write(out.path().join("logo.png"), "ours").unwrap();
    // A guide whose sources are as they were is not made again: something must change.
    let looked = look(&book("//- models/test/one.toml\nkey = \"M7QK3WZD\"\nyear = 2020\n")).unwrap();
    let receipt = assemble(&looked, out.path(), &|_| true).unwrap().unwrap();
    assert_eq!(receipt.removed, 1);
    assert!(!out.path().join("M7QK3WZD/part/old").exists());
    assert!(out.path().join("logo.png").exists());
}

#[test]
fn a_guide_is_made_again_when_a_source_of_it_changes_or_a_file_of_it_is_gone() {
    let out = tempfile::tempdir().unwrap();
    let run = |files: &str| assemble(&look(&book(files)).unwrap(), out.path(), &|_| true).unwrap().unwrap();
    let first = run("");
    assert_eq!(run("").written, 0);
    std::fs::remove_file(out.path().join("M7QK3WZD/G1/index.html")).unwrap();
    assert_eq!(run("").written, 1);
    let locker = common::read("tests/base.txt")
        .split("//- ")
        .find(|file| file.starts_with("content/gas/locker/text.md"))
        .unwrap()
        .to_string();
    let changed = run(&format!("//- {}", locker.replace("Open the cylinder of", "Now open the cylinder of")));
    assert!(changed.written > 3 && changed.written < first.written, "{changed:?}");
    assert_eq!(run("").written, changed.written);
}

#[test]
fn a_link_that_a_theme_breaks_is_found_in_the_finished_pages() {
    let looked = look(&book("")).unwrap();
    let out = tempfile::tempdir().unwrap();
    assemble(&looked, out.path(), &|_| true).unwrap().unwrap();
    let mut acc = Acc::default();
    let links = output_link::check(&mut acc, out.path(), false).unwrap();
    assert!(links > 50, "only {links} links were followed");
    assert_eq!(acc.in_any_order().map(|d| d.message.clone()).collect::<Vec<_>>(), Vec::<String>::new());
    let page = out.path().join("M7QK3WZD/part/fridge/index.html");
    let html = std::fs::read_to_string(&page).unwrap();
    std::fs::write(
        &page,
        html.replace(
            "</main>",
            "<a href=\"../gas/index.html#no-such-anchor\">x</a><a href=\"../gone/index.html\">y</a></main>",
        ),
    )
    .unwrap();
    output_link::check(&mut acc, out.path(), false).unwrap();
    let found: Vec<_> = acc.in_any_order().map(|d| (d.rule.id, d.message.contains("part/fridge"))).collect();
    assert_eq!(found, [("output-link", true), ("output-link", true)]);
}

/// The promise of a manifest: another fridge is one change, and the old one is gone from every page.
#[test]
fn changing_the_gas_fridge_for_a_compressor_fridge_leaves_no_word_of_gas_for_it() {
    let mut files = lockerleaf::load::files::Memory::default();
    let folder = Folder::new(root());
    for entry in lockerleaf::load::files::Files::list(&folder).unwrap() {
        let bytes = lockerleaf::load::files::Files::read(&folder, &entry.path).unwrap();
        files.0.insert(entry.path, bytes);
    }
    let van = "models/marrick-c7/juniper.toml";
    let before = look(&files).unwrap();
    let text = String::from_utf8(files.0[van].clone()).unwrap();
    assert!(!text.contains("[change.fridge]"), "the demo van has its model's fridge");
    // What was measured and renewed on the old fridge leaves with it.
    let tables = text.split("\n[").filter(|table| !table.contains("fit = \"fridge\""));
    let text = tables.collect::<Vec<_>>().join("\n[");
    let change = "\n[change.fridge]\nmodule = \"cooling/compressor-fridge\"\nvalues = { supply = \"twelve-volt\", power = \"45 W\" }\n";
    files.0.insert(van.to_string(), format!("{text}{change}").into_bytes());
    let after = look(&files).unwrap();
    let errors: Vec<_> = after.acc.in_any_order().map(|d| d.message.clone()).collect();
    assert!(!after.acc.has_errors(), "{errors:?}");
    let fridge_pages = |looked: &lockerleaf::Looked| {
        let van = looked.vans.iter().find(|van| van.name == "marrick-c7/juniper").unwrap();
        let artifacts = guide(looked.theme.as_ref().unwrap(), &looked.book, van).unwrap();
        let pages = artifacts
            .into_iter()
            .filter(|a| a.path.ends_with(".html"))
            .map(|a| (a.path, String::from_utf8(a.bytes).unwrap()));
        pages.collect::<BTreeMap<_, _>>()
    };
    let (before, after) = (fridge_pages(&before), fridge_pages(&after));
    let mentions = |pages: &BTreeMap<String, String>| {
        pages.iter().filter(|(_, html)| html.contains("run-on-gas") || html.contains("Absorption fridge")).count()
    };
    assert!(mentions(&before) > 3, "the gas fridge is on its pages before the change");
    assert_eq!(mentions(&after), 0);
    let own = after.iter().find(|(path, _)| path.ends_with("part/fridge/index.html")).unwrap().1;
    let main = own.split("<main").nth(1).unwrap().split("</main>").next().unwrap();
    assert!(!main.to_lowercase().contains(" gas"), "the fridge's own page speaks of gas");
}

/// The theme's files under another name, with German words made from the English ones.
fn two_languages() -> lockerleaf::load::files::Memory {
    let mut files = book("//- book.toml\n[guides]\nlanguages = [\"en\", \"de\"]\ntheme = \"two\"\n");
    let theme = root().join("themes/daymark");
    for entry in
        WalkDir::new(&theme).into_iter().map(|entry| entry.unwrap()).filter(|entry| entry.file_type().is_file())
    {
        let inner = entry.path().strip_prefix(&theme).unwrap().to_string_lossy().into_owned();
        files.0.insert(format!("themes/two/{inner}"), std::fs::read(entry.path()).unwrap());
    }
    let english = String::from_utf8(files.0["themes/two/words/en.ftl"].clone()).unwrap();
    let german = english.replace("number-decimal = .", "number-decimal = ,").replace("WARNING", "WARNUNG");
    files.0.insert("themes/two/words/de.ftl".into(), german.into_bytes());
    for (path, translated) in [
        ("content/gas/locker/text.md", "content/gas/locker/text.de.md"),
        ("content/cooling/fridge/text.md", "content/cooling/fridge/text.de.md"),
        ("content/mains/unit/text.md", "content/mains/unit/text.de.md"),
        ("content/safety/extinguisher/text.md", "content/safety/extinguisher/text.de.md"),
        ("content/routines/arriving.md", "content/routines/arriving.de.md"),
        ("content/emergency.en.md", "content/emergency.de.md"),
    ] {
        let text = String::from_utf8(files.0[path].clone()).unwrap();
        let text = text.replace("Gas can burn or explode.", "Gas kann brennen.").replace("It draws", "Er nimmt");
        files.0.insert(translated.into(), text.into_bytes());
    }
    files
}

#[test]
fn a_book_of_two_languages_gives_each_reader_theirs_with_numbers_as_they_write_them() {
    let looked = look(&two_languages()).unwrap();
    assert_eq!(looked.acc.in_any_order().map(|d| d.message.clone()).collect::<Vec<_>>(), Vec::<String>::new());
    let out = tempfile::tempdir().unwrap();
    assemble(&looked, out.path(), &|_| true).unwrap().unwrap();
    let read = |path: &str| std::fs::read_to_string(out.path().join("M7QK3WZD").join(path)).unwrap();
    let (english, german) = (read("part/fridge/index.html"), read("de/part/fridge/index.html"));
    assert!(english.contains("It draws 0.587\u{a0}A") && !english.contains("Er nimmt"), "{english}");
    assert!(german.contains("Er nimmt 0,587\u{a0}A") && german.contains("lang=\"de\""), "{german}");
    assert!(read("de/G1/index.html").contains("WARNUNG") && !read("G1/index.html").contains("WARNUNG"));
    let mut acc = Acc::default();
    output_link::check(&mut acc, out.path(), false).unwrap();
    assert_eq!(acc.in_any_order().map(|d| d.message.clone()).collect::<Vec<_>>(), Vec::<String>::new());
}

#[test]
fn a_translation_without_a_warning_is_an_error() {
    let mut files = two_languages();
    let text = String::from_utf8(files.0["content/gas/locker/text.de.md"].clone()).unwrap();
    let without: Vec<_> = text.lines().filter(|line| !line.starts_with('>')).collect();
    files.0.insert("content/gas/locker/text.de.md".into(), without.join("\n").into_bytes());
    let looked = look(&files).unwrap();
    let rules: Vec<_> = looked.acc.in_any_order().map(|d| d.rule.id).collect();
    assert_eq!(rules, ["translation-differs"]);
}

#[test]
fn pictures_and_files_of_a_part_come_along_under_an_address_that_can_be_written() {
    let mut files = book("//- content/cooling/fridge/a plan.txt\nwords\n");
    let path = "content/cooling/fridge/text.md";
    let text = String::from_utf8(files.0[path].clone()).unwrap();
    let text =
        text.replace("Keeps food cold.", "Keeps food cold. ![The lever points down](lever.svg) [A plan](<a plan.txt>)");
    files.0.insert(path.into(), text.into_bytes());
    let svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><path d=\"M1 1v7\"/></svg>";
    files.0.insert("content/cooling/fridge/lever.svg".into(), svg.into());
    let looked = look(&files).unwrap();
    assert_eq!(looked.acc.in_any_order().map(|d| d.message.clone()).collect::<Vec<_>>(), Vec::<String>::new());
    let out = tempfile::tempdir().unwrap();
    assemble(&looked, out.path(), &|_| true).unwrap().unwrap();
    let page = std::fs::read_to_string(out.path().join("M7QK3WZD/part/fridge/index.html")).unwrap();
    assert!(
        page.contains("<img src=\"../../files/cooling/fridge/lever.svg\" alt=\"The lever points down\" width=\"900\" height=\"900\">"),
        "{page}"
    );
    assert!(page.contains("href=\"../../files/cooling/fridge/a%20plan.txt\""), "{page}");
    let mut acc = Acc::default();
    output_link::check(&mut acc, out.path(), false).unwrap();
    assert_eq!(acc.in_any_order().map(|d| d.message.clone()).collect::<Vec<_>>(), Vec::<String>::new());
}

/// What is put into manifests never becomes markup.
#[test]
fn characters_of_markup_in_manifests_have_no_effect() {
    let nasty = "<script>alert('x')</script> \\\" & {{ 7 * 7 }}";
    let van = format!(
        "//- models/test/one.toml\nkey = \"M7QK3WZD\"\nname = \"{nasty}\"\n[[tip]]\nfit = \"gas\"\nsays = \"{nasty}\"\n"
    );
    let looked = look(&book(&van)).unwrap();
    let artifacts = guide(looked.theme.as_ref().unwrap(), &looked.book, &looked.vans[0]).unwrap();
    let mut seen = 0;
    for artifact in artifacts.iter().filter(|artifact| artifact.path.ends_with(".html")) {
        let html = String::from_utf8(artifact.bytes.clone()).unwrap();
        assert!(!html.contains("<script>alert"), "{}", artifact.path);
        seen += usize::from(html.contains("&lt;script&gt;alert") && html.contains("{{ 7 * 7 }}"));
    }
    assert!(seen > 5, "the name is on {seen} pages");
}
