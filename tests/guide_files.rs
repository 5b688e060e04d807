//! What stands beside the pages of a guide: the data of search, the worker's list, the manifest, the fingerprint.

mod common;

use common::{book, root};
use lockerleaf::load::disk::Folder;
use lockerleaf::load::files::Files;
use lockerleaf::render::Artifact;
use lockerleaf::{guide, look};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

fn guides(files: &dyn Files) -> Vec<BTreeMap<String, Vec<u8>>> {
    let looked = look(files).unwrap();
    let theme = looked.theme.as_ref().expect("the theme is ready");
    let below = |artifact: Artifact| (artifact.path.split_once('/').unwrap().1.to_string(), artifact.bytes);
    looked.vans.iter().map(|van| guide(theme, &looked.book, van).unwrap().into_iter().map(below).collect()).collect()
}

fn text<'a>(guide: &'a BTreeMap<String, Vec<u8>>, path: &str) -> &'a str {
    std::str::from_utf8(guide.get(path).unwrap_or_else(|| panic!("there is no {path}"))).unwrap()
}

/// What a script gives a name to.
fn named(script: &str, name: &str) -> Value {
    let line = script.lines().next().unwrap();
    let value =
        line.strip_prefix(name).and_then(|rest| rest.strip_prefix(" = ")).and_then(|rest| rest.strip_suffix(';'));
    serde_json::from_str(value.unwrap_or_else(|| panic!("{line:.80}"))).unwrap()
}

#[test]
fn everything_that_search_finds_is_there() {
    for guide in guides(&Folder::new(root())) {
        let script = text(&guide, "search-index.js");
        assert!(!script.contains('<'), "markup in the data of search");
        let data = named(script, "globalThis.guideSearch");
        let found = data["found"].as_array().unwrap();
        assert!(found.len() > 200, "only {} things can be found", found.len());
        for thing in found {
            let (page, anchor) = (thing[2].as_str().unwrap(), thing[3].as_str().unwrap());
            let page = if page.is_empty() { "index.html".to_string() } else { format!("{page}/index.html") };
            let html = text(&guide, &page);
            assert!(anchor.is_empty() || html.contains(&format!(" id=\"{anchor}\"")), "{page} has no {anchor}");
        }
        let kinds: BTreeSet<_> = found.iter().map(|thing| thing[0].as_str().unwrap()).collect();
        for kind in ["part", "place", "task", "fault", "control", "hazard", "routine", "emergency", "page"] {
            assert!(kinds.contains(kind), "nothing of the kind {kind} can be found");
        }
    }
}

#[test]
fn the_worker_knows_every_file_but_itself() {
    for guide in guides(&book("")) {
        let kept = named(text(&guide, "worker.js"), "const GUIDE");
        let lists = ["text", "photos"].map(|list| kept[list].as_object().unwrap());
        let mut known: BTreeSet<_> = lists.iter().flat_map(|list| list.keys().map(String::as_str)).collect();
        known.insert("worker.js");
        assert_eq!(known, guide.keys().map(String::as_str).collect());
        let fingerprint = kept["fingerprint"].as_str().unwrap();
        assert!(text(&guide, "about/index.html").contains(fingerprint));
        assert_eq!(named(text(&guide, "fingerprint.js"), "globalThis.guideFingerprint"), fingerprint);
    }
}

#[test]
fn one_word_more_changes_the_fingerprint_and_only_the_files_that_hold_it() {
    let text_of = |name: &str| {
        format!("//- models/test/one.toml\nkey = \"M7QK3WZD\"\n[[tip]]\nfit = \"gas\"\nsays = \"{name}\"\n")
    };
    let [one, two] = ["Turn it.", "Turn it twice."].map(|says| guides(&book(&text_of(says))).remove(0));
    let [before, after] = [&one, &two].map(|guide| named(text(guide, "worker.js"), "const GUIDE"));
    assert_ne!(before["fingerprint"], after["fingerprint"]);
    for (path, hash) in before["text"].as_object().unwrap() {
        assert_eq!(one[path] == two[path], *hash == after["text"][path], "{path}");
    }
}

#[test]
fn the_manifest_lets_a_phone_keep_the_guide() {
    let guide = guides(&book("")).remove(0);
    let manifest: Value = serde_json::from_str(text(&guide, "guide.webmanifest")).unwrap();
    for member in ["name", "short_name", "start_url", "scope", "display", "lang"] {
        assert!(manifest[member].as_str().is_some_and(|text| !text.is_empty()), "{member}");
    }
    for icon in manifest["icons"].as_array().unwrap() {
        assert!(
            guide.contains_key(icon["src"].as_str().unwrap()) && icon["purpose"].as_str().unwrap().contains("maskable")
        );
    }
}
