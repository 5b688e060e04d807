//! The invariants of the house, each held by a look at its own source.

mod common;

use common::{read, root};
use lockerleaf::model::files;
use lockerleaf::model::files::forms::Signal;
use lockerleaf::{check, figures};
use std::path::PathBuf;
use walkdir::WalkDir;

fn sources() -> Vec<(String, String)> {
    let files =
        WalkDir::new(root().join("src")).sort_by_file_name().into_iter().map(|entry| entry.unwrap().into_path());
    let rust: Vec<PathBuf> = files.filter(|path| path.extension().is_some_and(|e| e == "rs")).collect();
    rust.into_iter()
        .map(|path| {
            (path.strip_prefix(root()).unwrap().to_string_lossy().into_owned(), std::fs::read_to_string(&path).unwrap())
        })
        .collect()
}

/// The files of `src` whose code, tests left out, holds one of `words`.
fn holding(words: &[&str]) -> Vec<String> {
    let code = |text: &str| text.split("#[cfg(test)]").next().unwrap_or_default().to_string();
    sources()
        .into_iter()
        .filter(|(_, text)| words.iter().any(|word| code(text).contains(word)))
        .map(|(path, _)| path)
        .collect()
}

#[test]
fn only_two_files_touch_the_disk() {
    assert_eq!(
        holding(&["std::fs", "use std::fs", "File::open", "WalkDir"]),
        ["src/load/disk.rs", "src/write/disk.rs"]
    );
}

#[test]
fn each_crate_has_one_owner() {
    let owners = [
        ("pulldown_cmark", "src/load/markdown.rs"),
        ("syntect", "src/load/code.rs"),
        ("lychee_lib", "src/check/output_link.rs"),
        ("tera::", "src/render/theme.rs"),
        ("qrcode::", "src/label/code.rs"),
        ("getrandom::", "src/book_in.rs"),
        ("rustix::", "src/write/disk.rs"),
        ("toml_edit::", "src/write/ledger.rs"),
        ("fluent_bundle", "src/model/phrases.rs"),
        ("annotate_snippets", "src/diag/print.rs"),
        ("strsim", "src/diag/suggest.rs"),
        ("use png::", "src/render/png.rs"),
        ("quick_junit", "src/diag/report/junit.rs"),
        ("csv::", "src/due/comma_separated.rs"),
        ("roxmltree::", "src/load/assets.rs"),
        ("sha2::", "src/render/offline.rs"),
        ("indicatif", "src/cli/print.rs"),
        ("typst::", "src/render/paper/engine.rs"),
        ("typst_pdf", "src/render/paper/engine.rs"),
        ("image::", "src/load/picture.rs"),
        ("fast_image_resize", "src/load/picture.rs"),
    ];
    for (name, owner) in owners {
        assert_eq!(holding(&[name]), [owner], "{name}");
    }
}

#[test]
fn composing_knows_no_output_format_and_rendering_no_manifests() {
    let compose: Vec<_> = sources().into_iter().filter(|(path, _)| path.starts_with("src/compose/")).collect();
    assert!(compose.len() > 5);
    for (path, text) in compose {
        for word in ["crate::render", "<a ", "href", "<p>", ".html", "svg"] {
            assert!(!text.contains(word), "{path} says {word}");
        }
    }
    for (path, text) in sources().into_iter().filter(|(path, _)| path.starts_with("src/render/")) {
        for word in ["VanFile", "ModelFile", "ModuleFile", "model::van::Van", "crate::resolve", "crate::load"] {
            assert!(!text.contains(word), "{path} knows {word}");
        }
    }
}

#[test]
fn only_the_folder_of_a_book_knows_today() {
    assert_eq!(holding(&["SystemTime", "Zoned", "Timestamp::now", "chrono"]), ["src/load/disk.rs"]);
}

#[test]
fn checks_and_calculations_are_listed_in_order_and_once() {
    let checks = holding(&["pub(super) static CHECK"]);
    assert_eq!(checks.len(), check::CHECKS.len(), "a file of a check is not in the list: {checks:?}");
    let names: Vec<_> = figures::CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert!(names.windows(2).all(|pair| pair[0] < pair[1]), "{names:?}");
}

/// Every fact file of the demo holds against the schema that editors are given.
#[test]
fn the_demo_holds_against_the_schemas() {
    let schemas: Vec<_> = files::schemas()
        .into_iter()
        .map(|(name, schema)| (name, jsonschema::validator_for(&schema).unwrap()))
        .collect();
    let mut checked = 0;
    for entry in WalkDir::new(root()).into_iter().filter_entry(|entry| {
        !["target", "out", ".git", "benches", "tests", "themes"]
            .contains(&entry.file_name().to_str().unwrap_or_default())
    }) {
        let path = entry.unwrap().into_path();
        let relative = path.strip_prefix(root()).unwrap().to_string_lossy().into_owned();
        let name = match relative.as_str() {
            "book.toml" => "book",
            path if path.ends_with("/module.toml") => "module",
            path if path.ends_with("/model.toml") => "model",
            "models/ledger.toml" => "ledger",
            path if path.starts_with("models/") && path.ends_with(".toml") => "van",
            "content/hazards.toml" => "hazards",
            "content/capabilities.toml" => "capabilities",
            "content/words.toml" => "words",
            _ => continue,
        };
        let value: toml::Value = toml::from_str(&read(&relative)).unwrap();
        let mut json = serde_json::to_value(&value).unwrap();
        dates_as_text(&mut json);
        let validator = &schemas.iter().find(|(kind, _)| *kind == name).unwrap().1;
        let errors: Vec<_> = validator.iter_errors(&json).map(|e| format!("{}: {e}", e.instance_path())).collect();
        assert!(errors.is_empty(), "{relative}: {errors:?}");
        let mut wrong = json.clone();
        wrong.as_object_mut().unwrap().insert("no-such-key".into(), serde_json::json!(12.5));
        assert!(!validator.is_valid(&wrong), "the schema for {relative} takes anything");
        checked += 1;
    }
    assert!(checked > 30, "only {checked} files");
}

/// The TOML crate gives a date as a table of one private key; JSON has dates as text.
fn dates_as_text(json: &mut serde_json::Value) {
    match json {
        serde_json::Value::Object(object) => match object.get("$__toml_private_datetime").cloned() {
            Some(text) => *json = text,
            None => object.values_mut().for_each(dates_as_text),
        },
        serde_json::Value::Array(items) => items.iter_mut().for_each(dates_as_text),
        _ => {}
    }
}

/// The README's words about commands are the program's own.
#[test]
fn the_readme_names_every_command() {
    let readme = read("README.md");
    for command in ["assemble", "book-in", "due", "explain", "inspect", "print", "publish", "schemas"] {
        assert!(readme.contains(&format!("lockerleaf {command}")), "{command}");
    }
    assert!(readme.contains("cargo run --release") && readme.contains("bash tests/run"));
}

/// The codes of ISO 7010 that hazards may carry, with what their signs mean; names from a public sign package of 2025.
const SIGNS: [(&str, &str); 17] = [
    ("W001", "general warning"),
    ("W002", "explosive material"),
    ("W008", "drop"),
    ("W009", "biological hazard"),
    ("W012", "electricity"),
    ("W016", "toxic material"),
    ("W017", "hot surface"),
    ("W019", "crushing"),
    ("W021", "flammable material"),
    ("W023", "corrosive substance"),
    ("W026", "battery charging"),
    ("W029", "pressurized cylinder"),
    ("W041", "asphyxiating atmosphere"),
    ("W070", "step down"),
    ("W079", "hot content"),
    ("P005", "not drinking water"),
    ("P023", "do not obstruct"),
];

#[test]
fn hazards_have_a_source_what_implies_them_and_a_sign_of_the_standard() {
    let looked = lockerleaf::look(&common::demo()).unwrap();
    let hazards = &looked.book.hazards.0;
    assert!(hazards.iter().count() >= 28);
    for (name, hazard) in hazards.iter() {
        let implied = !hazard.implied_by.is_empty()
            || looked.book.modules.iter().any(|module| {
                module.sections.iter().filter_map(|section| section.wiring.as_ref()).any(|wiring| {
                    wiring.exposes.iter().chain(wiring.warns.iter()).any(|exposed| *exposed.value == *name.value)
                })
            });
        assert!(implied && hazard.source.len() > 20, "{}", name.value);
        let harms = hazard.at_least.value > Signal::Notice;
        let sign = hazard.sign.as_ref().map(|sign| sign.value.as_str());
        assert!(harms || sign.is_none(), "{}: damage only has no sign", name.value);
        assert!(sign.is_none_or(|sign| SIGNS.iter().any(|(code, _)| *code == sign)), "{}: {sign:?}", name.value);
    }
}

#[test]
fn signs_are_drawn_after_the_shape_rules_of_the_standard() {
    let looked = lockerleaf::look(&common::demo()).unwrap();
    let drawn: Vec<_> = looked.book.theme.signs().collect();
    assert_eq!(drawn.len(), SIGNS.len());
    for (code, _) in SIGNS {
        let (_, svg) = drawn.iter().find(|(name, _)| *name == code.to_lowercase()).unwrap_or_else(|| panic!("{code}"));
        // ISO 3864-1: a yellow triangle with a black edge warns, a red ring with a bar on white prohibits.
        let shape: &[&str] = if code.starts_with('W') {
            &["<path d=\"M50 5.5 95 83.5H5Z\" fill=\"#f9a800\" stroke=\"#1c1c1c\""]
        } else {
            &["<circle cx=\"50\" cy=\"50\" r=\"43\" fill=\"#fff\"/>", "stroke=\"#9b2423\""]
        };
        assert!(shape.iter().all(|part| svg.contains(part)), "{code}");
        assert!(roxmltree::Document::parse(svg).is_ok() && svg.len() < 1500, "{code}");
    }
}
