//! Reports for machines, read back by readers that are not ours: the published schema and the types of the crate
//! serde-sarif, the readers of the crates quick-junit and roxmltree, and serde_json.

mod common;

use common::{book, fixtures, split};
use lockerleaf::check;
use lockerleaf::diag::report::{Inspected, KINDS, Unchecked};
use lockerleaf::diag::{Acc, Diagnostic, Rule, Severity, print};
use lockerleaf::look;
use lockerleaf::model::source::{Sources, Span};
use serde_json::{Value, json};
use serde_sarif::sarif::Sarif;
use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::LazyLock;

/// The text of the report of that kind.
fn report(kind: &str, acc: &Acc, sources: &Sources, unchecked: &[Unchecked]) -> String {
    let kind = KINDS.iter().find(|listed| listed.name == kind).unwrap();
    (kind.text)(&Inspected::new(acc, sources, &check::rules(), unchecked))
}

fn parsed(kind: &str, acc: &Acc, sources: &Sources) -> Value {
    serde_json::from_str(&report(kind, acc, sources, &[])).unwrap()
}

fn rule(severity: Severity) -> &'static Rule {
    check::rules().into_iter().find(|rule| rule.severity == severity).unwrap()
}

/// What a fixture of a mistake finds.
fn found_in(fixture: &str) -> (Acc, Sources) {
    let (wrong, _) = split(fixture.split("//=\n").next().unwrap());
    let looked = look(&book(&wrong)).unwrap();
    assert!(looked.acc.in_any_order().count() > 0);
    (looked.acc, looked.book.sources)
}

/// What all fixtures of mistakes find.
fn each_fixture(mut see: impl FnMut(&str, &Acc, &Sources)) {
    static FOUND: LazyLock<Vec<(String, (Acc, Sources))>> =
        LazyLock::new(|| fixtures().into_iter().map(|(name, text)| (name, found_in(&text))).collect());
    assert!(FOUND.len() > 30, "only {} fixtures", FOUND.len());
    FOUND.iter().for_each(|(name, (acc, sources))| see(name, acc, sources));
}

const PATH: &str = "content/gas/a b \u{e9}:#/text.md";
const LINE: &str = "<\"&'> \u{1f525}\u{1f525} fire\u{1b}[31m {0} ]]>";
/// What no report may swallow: it ends with a word that has to come through.
const NASTY: &str =
    "`<\"&'>` \u{1f525} ]]> \u{1}\u{1b}]0;x \u{9b}31m\t\u{ffff}\u{fffe}\u{7f} line\r\nnext [a](b) {0} end";

/// Findings with everything that is hard to write, `above` being put before the text they are about.
fn hard(above: &str) -> (Acc, Sources) {
    let mut sources = Sources::default();
    let text = format!("{above}first\r\n{LINE}\nfire\nlast");
    let file = sources.add(PATH.into(), text.clone());
    let at = |word: &str| Span::new(file, text.find(word).unwrap()..text.find(word).unwrap() + word.len());
    let last = Span::new(file, text.rfind("fire").unwrap()..text.len());
    let (error, warning) = (rule(Severity::Error), rule(Severity::Warning));
    let mut acc = Acc::default();
    let found = Diagnostic::new(error, at("fire"), NASTY).label("[b] here\u{1}").other(at("first"), "a ]label[ & more");
    acc.add(found.help("write `[Gas](hazard:gas)`").van("test/one").van("test/two"));
    acc.add(Diagnostic::new(error, last, NASTY));
    acc.add(Diagnostic::new(warning, Span::new(file, 0..0), "look at <this>"));
    acc.add(Diagnostic::new(error, None, NASTY));
    (acc, sources)
}

/// The text of a region whose columns count units of the width that `width` gives.
fn under(text: &str, start: (u64, u64), end: (u64, u64), width: fn(char) -> usize) -> String {
    let at = |(line, column): (u64, u64)| {
        let before: usize = text.split_inclusive('\n').take(line as usize - 1).map(str::len).sum();
        let mut units = column as usize - 1;
        let mut byte = before;
        for c in text[before..].chars() {
            if units == 0 {
                break;
            }
            units = units.checked_sub(width(c)).expect("a column within a character");
            byte += c.len_utf8();
        }
        assert_eq!(units, 0, "a column after the end of the text");
        byte
    };
    text[at(start)..at(end)].to_string()
}

// SARIF.

/// The published schema, which the crate serde-sarif holds among its sources.
fn schema() -> Option<Value> {
    let home = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    let home = home.or_else(|| std::env::var_os("HOME").map(|home| Path::new(&home).join(".cargo")))?;
    let registries = std::fs::read_dir(home.join("registry/src")).ok()?;
    let files = registries.filter_map(Result::ok).map(|entry| entry.path().join("serde-sarif-0.8.0/src/schema.json"));
    let text = files.filter_map(|file| std::fs::read_to_string(file).ok()).next();
    if text.is_none() {
        // Past the capture of output, so that a test that passes without its instrument says so.
        let _ = writeln!(std::io::stderr(), "skipped: the schema of SARIF is not below {}", home.display());
    }
    let mut schema: Value = serde_json::from_str(&text?).unwrap();
    sound_patterns(&mut schema);
    Some(schema)
}

/// Takes away the schema's pattern for languages, which is malformed: a bracket closes that none opens.
fn sound_patterns(schema: &mut Value) {
    match schema {
        Value::Object(object) => {
            if object.get("pattern").and_then(Value::as_str).is_some_and(|pattern| pattern.ends_with("]?$")) {
                object.remove("pattern");
            }
            object.values_mut().for_each(sound_patterns);
        }
        Value::Array(items) => items.iter_mut().for_each(sound_patterns),
        _ => {}
    }
}

fn validator() -> Option<jsonschema::Validator> {
    let schema = schema()?;
    Some(jsonschema::options().should_validate_formats(true).build(&schema).unwrap())
}

fn errors(validator: &jsonschema::Validator, report: &Value) -> Vec<String> {
    validator.iter_errors(report).map(|error| format!("{}: {error}", error.instance_path())).collect()
}

#[test]
fn sarif_holds_against_the_published_schema() {
    let Some(validator) = validator() else { return };
    let none = (Acc::default(), Sources::default());
    for (acc, sources) in [none, hard("")] {
        assert_eq!(errors(&validator, &parsed("sarif", &acc, &sources)), Vec::<String>::new());
    }
    each_fixture(|name, acc, sources| {
        assert_eq!(errors(&validator, &parsed("sarif", acc, sources)), Vec::<String>::new(), "{name}");
    });
}

#[test]
fn the_published_schema_refuses_a_broken_report() {
    let Some(validator) = validator() else { return };
    let (acc, sources) = hard("");
    let good = parsed("sarif", &acc, &sources);
    let placed = good["runs"][0]["results"].as_array().unwrap().iter();
    let at =
        placed.clone().position(|result| result["locations"][0]["physicalLocation"]["region"].is_object()).unwrap();
    let place = format!("/runs/0/results/{at}/locations/0/physicalLocation");
    let breaks = [
        ("/version".to_string(), json!("2.0.0")),
        ("/runs".to_string(), json!(null)),
        ("/runs/0/columnKind".to_string(), json!("bytes")),
        ("/runs/0/tool/driver/name".to_string(), json!(1)),
        ("/runs/0/results/0/level".to_string(), json!("fatal")),
        ("/runs/0/results/0/message".to_string(), json!({})),
        ("/runs/0/results/0/ruleIndex".to_string(), json!("0")),
        (format!("{place}/region/startLine"), json!(0)),
        (format!("{place}/artifactLocation/uri"), json!("a b#%%")),
        (format!("{place}/region"), json!({ "startLine": 1, "line": 1 })),
    ];
    for (pointer, wrong) in breaks {
        let mut broken = good.clone();
        *broken.pointer_mut(&pointer).unwrap_or_else(|| panic!("{pointer}")) = wrong;
        assert!(!validator.is_valid(&broken), "{pointer}");
    }
}

#[test]
fn sarif_says_of_each_finding_its_rule_level_and_place() {
    let rules = check::rules();
    each_fixture(|name, acc, sources| {
        let sarif: Sarif = serde_json::from_str(&report("sarif", acc, sources, &[])).unwrap();
        let run = &sarif.runs[0];
        let listed = run.tool.driver.rules.as_ref().unwrap();
        assert_eq!(
            listed.iter().map(|r| r.id.as_str()).collect::<Vec<_>>(),
            rules.iter().map(|r| r.id).collect::<Vec<_>>()
        );
        let results = run.results.as_ref().unwrap();
        let findings = acc.in_file_order(sources);
        assert_eq!(results.len(), findings.len(), "{name}");
        for (result, found) in results.iter().zip(findings) {
            assert_eq!(result.rule_id.as_deref(), Some(found.rule.id));
            assert_eq!(rules[result.rule_index.unwrap() as usize].id, found.rule.id);
            assert_eq!(json!(result.level), found.severity.word());
            let place = result.locations.as_ref().unwrap()[0].physical_location.as_ref().unwrap();
            let uri = place.artifact_location.as_ref().unwrap().uri.as_deref().unwrap();
            let Some(span) = found.span else {
                assert!(uri == "book.toml" && place.region.is_none());
                continue;
            };
            assert_eq!(uri, sources.get(span.file).path);
            let region = place.region.as_ref().unwrap();
            let number = |number: Option<i64>| number.unwrap() as u64;
            let start = (number(region.start_line), number(region.start_column));
            let end = (number(region.end_line), number(region.end_column));
            let text = &sources.get(span.file).text;
            assert_eq!(under(text, start, end, char::len_utf16), sources.slice(span), "{name}: {}", found.message);
        }
    });
}

#[test]
fn sarif_encodes_paths_and_counts_columns_in_code_units_of_utf_16() {
    let (acc, sources) = hard("");
    let report = parsed("sarif", &acc, &sources);
    let results = report["runs"][0]["results"].as_array().unwrap();
    let result = results.iter().find(|result| result["relatedLocations"].is_array()).unwrap();
    let place = &result["locations"][0]["physicalLocation"];
    assert_eq!(place["artifactLocation"]["uri"], "content/gas/a%20b%20%C3%A9%3A%23/text.md");
    // `<"&'> ` is six units, each flame two, a space one: `fire` begins at the twelfth.
    assert_eq!(place["region"], json!({ "startLine": 2, "startColumn": 12, "endLine": 2, "endColumn": 16 }));
    assert_eq!(result["relatedLocations"][0]["id"], 1);
    assert_eq!(result["properties"]["vans"], json!(["test/one", "test/two"]));
    let message = result["message"]["text"].as_str().unwrap();
    for words in [
        "`<\"&'>` \u{1f525} ]]>",
        "\\[a\\](b) {{0}} end",
        "see: [a \\]label\\[ & more](1)",
        "help: write `\\[Gas\\](hazard:gas)`",
    ] {
        assert!(message.contains(words), "{words} in {message}");
    }
}

#[test]
fn sarif_fingerprints_are_each_their_own_and_stay_when_lines_are_added_above() {
    let prints = |above: &str| {
        let (acc, sources) = hard(above);
        let report = parsed("sarif", &acc, &sources);
        let results = report["runs"][0]["results"].as_array().unwrap().clone();
        results
            .iter()
            .map(|r| r["partialFingerprints"]["lockerleafFinding/v1"].as_str().unwrap().to_string())
            .collect::<Vec<_>>()
    };
    let before = prints("");
    assert_eq!(before.iter().collect::<BTreeSet<_>>().len(), 4);
    assert_eq!(before, prints("a line\nand another\n"));
}

// JUnit.

/// How often each word stands: tests, failures, skipped for warnings, skipped since unchecked, passed.
fn counts(xml: &str) -> BTreeMap<&'static str, usize> {
    let document = roxmltree::Document::parse(xml).unwrap();
    let root = document.root_element();
    assert_eq!(root.tag_name().name(), "testsuites");
    let cases: Vec<_> = root.descendants().filter(|node| node.has_tag_name("testcase")).collect();
    let holding = |tag: &str, kind: &str| {
        let is = |node: roxmltree::Node| node.has_tag_name(tag) && node.attribute("type") == Some(kind);
        cases.iter().filter(|case| case.children().any(is)).count()
    };
    let counted = BTreeMap::from([
        ("tests", cases.len()),
        ("errors", holding("failure", "error")),
        ("warnings", holding("skipped", "warning")),
        ("unchecked", holding("skipped", "unchecked")),
        ("passed", cases.iter().filter(|case| !case.has_children()).count()),
    ]);
    for node in root.descendants().filter(|node| node.tag_name().name().starts_with("testsuite")) {
        let below = |tag: &str| node.descendants().filter(|n| n.has_tag_name(tag)).count().to_string();
        assert_eq!(node.attribute("tests"), Some(&*below("testcase")));
        assert_eq!(node.attribute("failures"), Some(&*below("failure")));
        assert_eq!(node.attribute("skipped"), Some(&*below("skipped")));
        assert_eq!(node.attribute("errors"), Some("0"));
    }
    counted
}

#[test]
fn junit_has_a_case_for_each_finding_and_each_rule_that_found_nothing() {
    let check = |name: &str, acc: &Acc, sources: &Sources| {
        let xml = report("junit", acc, sources, &[]);
        let found: BTreeSet<_> = acc.in_any_order().map(|found| found.rule.id).collect();
        let passed = check::rules().len() - found.len();
        let (errors, warnings) = (acc.count(Severity::Error), acc.count(Severity::Warning));
        let expected = [
            ("tests", errors + warnings + passed),
            ("errors", errors),
            ("warnings", warnings),
            ("unchecked", 0),
            ("passed", passed),
        ];
        assert_eq!(counts(&xml), BTreeMap::from(expected), "{name}");
        let read = quick_junit::Report::deserialize_from_str(&xml).unwrap();
        assert_eq!((read.tests, read.failures, read.skipped), (errors + warnings + passed, errors, warnings), "{name}");
        let cases = read.test_suites.iter().flat_map(|suite| &suite.test_cases);
        let names: BTreeSet<_> = cases.map(|case| (case.classname.clone().unwrap(), case.name.clone())).collect();
        assert_eq!(names.len(), read.tests, "{name}: two cases have one name");
    };
    check("nothing", &Acc::default(), &Sources::default());
    let (acc, sources) = hard("");
    check("hard", &acc, &sources);
    each_fixture(check);
}

#[test]
fn junit_holds_what_xml_cannot_and_loses_no_word() {
    let (acc, sources) = hard("");
    let xml = report("junit", &acc, &sources, &[]);
    let document = roxmltree::Document::parse(&xml).unwrap();
    let failures: Vec<_> = document.descendants().filter(|node| node.has_tag_name("failure")).collect();
    assert_eq!(failures.len(), 3);
    let r = char::REPLACEMENT_CHARACTER;
    let message = format!("`<\"&'>` \u{1f525} ]]> {r}{r}]0;x {r}31m {r}{r}{r} line next [a](b) {{0}} end");
    for failure in failures {
        assert_eq!(failure.attribute("message"), Some(&*message));
        assert!(failure.text().unwrap().contains("end"), "{:?}", failure.text());
    }
    let placed = document.descendants().find(|node| node.attribute("line") == Some("2")).unwrap();
    assert_eq!(placed.attribute("file"), Some(PATH));
    let text = placed.first_element_child().unwrap().text().unwrap();
    for words in ["fire", "[b] here", "a ]label[ & more", "write `[Gas](hazard:gas)`", "test/two", "lockerleaf explain"]
    {
        assert!(text.contains(words), "{words} in {text}");
    }
}

#[test]
fn junit_and_sarif_say_which_rules_were_not_checked() {
    let unchecked = [Unchecked { rule: rule(Severity::Warning), why: "there was <no> time" }];
    let (acc, sources) = (Acc::default(), Sources::default());
    let xml = report("junit", &acc, &sources, &unchecked);
    assert_eq!((counts(&xml)["unchecked"], counts(&xml)["passed"]), (1, check::rules().len() - 1));
    assert!(xml.contains("there was &lt;no&gt; time"));
    let sarif = report("sarif", &acc, &sources, &unchecked);
    let read: Value = serde_json::from_str(&sarif).unwrap();
    let notes = &read["runs"][0]["invocations"][0]["toolExecutionNotifications"];
    assert_eq!(notes[0]["associatedRule"]["id"], unchecked[0].rule.id);
    if let Some(validator) = validator() {
        assert_eq!(errors(&validator, &read), Vec::<String>::new());
    }
    let json: Value = serde_json::from_str(&report("json", &acc, &sources, &unchecked)).unwrap();
    assert_eq!(json["unchecked"], json!([{ "rule": unchecked[0].rule.id, "why": "there was <no> time" }]));
}

// JSON.

#[test]
fn json_gives_back_every_finding_whole() {
    let check = |name: &str, acc: &Acc, sources: &Sources| {
        let text = report("json", acc, sources, &[]);
        let read: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(format!("{read:#}\n"), text, "{name}");
        assert_eq!(read["counts"]["errors"], acc.count(Severity::Error));
        assert_eq!(read["counts"]["warnings"], acc.count(Severity::Warning));
        let findings = read["findings"].as_array().unwrap();
        assert_eq!(findings.len(), acc.in_any_order().count(), "{name}");
        for (read, found) in findings.iter().zip(acc.in_file_order(sources)) {
            let keys: Vec<_> = read.as_object().unwrap().keys().map(String::as_str).collect();
            let all =
                ["rule", "severity", "message", "file", "line", "column", "end", "label", "help", "vans", "other"];
            assert_eq!(keys, all);
            assert_eq!((&read["rule"], &read["message"]), (&json!(found.rule.id), &json!(found.message)));
            assert_eq!(read["severity"], found.severity.word());
            assert_eq!(read["label"], json!(found.label));
            assert_eq!((&read["help"], &read["vans"]), (&json!(found.help), &json!(found.vans)));
            same_place(read, found.span, sources);
            assert_eq!(read["other"]["label"], json!(found.other.as_ref().map(|(_, label)| label)));
            same_place(&read["other"], found.other.as_ref().map(|(span, _)| *span), sources);
        }
    };
    let (acc, sources) = hard("");
    check("hard", &acc, &sources);
    check("nothing", &Acc::default(), &Sources::default());
    each_fixture(check);
}

fn same_place(read: &Value, span: Option<Span>, sources: &Sources) {
    let Some(span) = span else {
        assert!(["file", "line", "column", "end"].iter().all(|key| read[key].is_null()), "{read}");
        return;
    };
    let number = |value: &Value| value.as_u64().unwrap();
    let file = sources.get(span.file);
    assert_eq!(read["file"], file.path);
    let start = (number(&read["line"]), number(&read["column"]));
    let end = (number(&read["end"]["line"]), number(&read["end"]["column"]));
    assert_eq!((start.0 as usize, start.1 as usize), sources.line_column(span));
    assert_eq!(under(&file.text, start, end, |_| 1), sources.slice(span), "{read}");
}

// All kinds.

#[test]
fn the_same_book_gives_the_same_bytes_without_a_time() {
    let texts = |(acc, sources): (Acc, Sources)| KINDS.iter().map(move |kind| report(kind.name, &acc, &sources, &[]));
    let mut compared = 0;
    for (name, fixture) in fixtures().into_iter().step_by(7) {
        for (first, second) in texts(found_in(&fixture)).zip(texts(found_in(&fixture))) {
            assert!(first == second, "{name}");
            assert!(
                !first.contains("timestamp=") && !first.contains(" time=") && !first.contains("TimeUtc"),
                "{first}"
            );
            assert!(first.ends_with('\n'));
            compared += 1;
        }
    }
    assert!(compared > 15, "only {compared} reports");
}

#[test]
fn a_file_that_is_not_utf_8_is_in_every_report() {
    let mut files = book("");
    files.0.get_mut("content/cooling/fridge/text.md").unwrap().extend(b"\nAbout 4 \xb0C \xff.\n");
    let looked = look(&files).unwrap();
    let (acc, sources) = (&looked.acc, &looked.book.sources);
    assert!(print::print(acc, sources, false).contains("not-utf-8"));
    let read = parsed("sarif", acc, sources);
    if let Some(validator) = validator() {
        assert_eq!(errors(&validator, &read), Vec::<String>::new());
    }
    assert_eq!(counts(&report("junit", acc, sources, &[]))["errors"], acc.count(Severity::Error));
    let json = parsed("json", acc, sources);
    let found = json["findings"].as_array().unwrap().iter().find(|found| found["rule"] == "not-utf-8").unwrap();
    assert_eq!(found["file"], "content/cooling/fridge/text.md");
}

// The command.

/// The base book with the files of `fixture` over it, in a folder with a space in its name.
fn on_disk(fixture: &str) -> (tempfile::TempDir, PathBuf) {
    let aside = tempfile::tempdir().unwrap();
    let root = aside.path().join("a book");
    for (path, bytes) in book(fixture).0 {
        let path = root.join(path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, bytes).unwrap();
    }
    (aside, root)
}

fn inspect(root: &Path, arguments: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_lockerleaf"));
    command.current_dir(root).arg("inspect").args(arguments).output().unwrap()
}

#[test]
fn inspect_writes_several_reports_at_once_whether_or_not_something_is_wrong() {
    let wrong = "//- models/test/one.toml\nkey = \"M7QK3WZD\"\nyaer = 2019\n";
    for (fixture, exit, found, left_out) in [("", 0, 0, 0), (wrong, 1, 1, 2)] {
        let (_aside, root) = on_disk(fixture);
        let output =
            inspect(&root, &["--report", "json=re ports/all.json,junit=re ports/x.xml", "--report=sarif=x.sarif"]);
        assert_eq!(output.status.code(), Some(exit), "{}", String::from_utf8_lossy(&output.stderr));
        let read = |path: &str| std::fs::read_to_string(root.join(path)).unwrap();
        let json: Value = serde_json::from_str(&read("re ports/all.json")).unwrap();
        assert_eq!(json["findings"].as_array().unwrap().len(), found);
        assert_eq!(json["unchecked"].as_array().unwrap().len(), left_out);
        let counts = counts(&read("re ports/x.xml"));
        assert_eq!((counts["errors"], counts["unchecked"]), (found, left_out));
        let sarif: Sarif = serde_json::from_str(&read("x.sarif")).unwrap();
        assert_eq!(sarif.runs[0].results.as_ref().unwrap().len(), found);
        let left: Vec<_> = std::fs::read_dir(root.join("re ports")).unwrap().collect();
        assert_eq!(left.len(), 2, "something unfinished is left");
    }
}

#[test]
fn a_report_that_cannot_be_asked_for_is_wrong_usage_and_one_that_cannot_be_written_a_failure() {
    let (_aside, root) = on_disk("");
    for (arguments, exit, says) in [
        (["--report", "sarfi=x"], 2, "did you mean `sarif`?"),
        (["--report", "json"], 2, "an equals sign"),
        (["--report", "json="], 2, "names no file"),
        (["--report", "json=x,junit=x"], 2, "two reports go to `x`"),
        (["--report", "json=book.toml/x"], 3, "cannot make `book.toml`"),
        (["--report", "json=content"], 3, "cannot write `content`"),
    ] {
        let output = inspect(&root, &arguments);
        let said = String::from_utf8_lossy(&output.stderr);
        assert_eq!(output.status.code(), Some(exit), "{arguments:?}: {said}");
        assert!(said.contains(says), "{arguments:?}: {said}");
        assert!(!root.join("x").exists() && !root.join(".unfinished-content").exists());
    }
}

// Safety coverage.

/// The demo with one safety note taken out of the text of its hob.
fn demo_without_a_note() -> lockerleaf::Looked {
    let mut files = common::demo();
    let text = files.0.get_mut("content/cooking/gas-hob/text.md").unwrap();
    let whole = String::from_utf8(text.clone()).unwrap();
    let note = whole.split("\n\n").find(|block| block.contains("(hazard:lack-of-oxygen)")).unwrap();
    *text = whole.replacen(&format!("{note}\n\n"), "", 1).into_bytes();
    look(&files).unwrap()
}

#[test]
fn the_coverage_report_says_what_was_measured() {
    let looked = demo_without_a_note();
    let coverage = looked.coverage.as_ref().unwrap();
    let rules = check::rules();
    let inspected = Inspected::new(&looked.acc, &looked.book.sources, &rules, &[]).covered(coverage);
    let kind = |name: &str| KINDS.iter().find(|kind| kind.name == name).unwrap();
    let report: Value = serde_json::from_str(&(kind("coverage").text)(&inspected)).unwrap();
    let (asked, met) = coverage.counts();
    assert_eq!((report["asked"].as_u64(), report["met"].as_u64()), (Some(asked as u64), Some(met as u64)));
    assert!(met < asked);
    let vans = report["vans"].as_array().unwrap();
    let cells: Vec<&Value> = vans.iter().flat_map(|van| van["cells"].as_array().unwrap()).collect();
    let words = ["there", "strong", "whole", "before", "at-the-label", "on-paper"];
    let count = |word: &str| cells.iter().flat_map(|cell| words.map(|key| &cell[key])).filter(|is| *is == word).count();
    assert_eq!((count("met"), count("met") + count("missed")), (met, asked));
    let missed: Vec<_> = cells.iter().filter(|cell| cell["there"] == "missed").collect();
    assert!(!missed.is_empty());
    for cell in &missed {
        assert_eq!((&cell["fit"], &cell["hazard"]), (&json!("hob"), &json!("lack-of-oxygen")));
        assert_eq!(cell["file"], "content/cooking/gas-hob/module.toml");
    }
    let page = (kind("matrix").text)(&inspected);
    assert_eq!(page.matches("<td class=\"missed\">").count(), asked - met);
    assert_eq!(page.matches("<td class=\"met\">").count(), met);
    assert_eq!(page.matches("<h2 id=\"van-").count(), vans.len());
}

#[test]
fn coverage_that_was_not_measured_is_no_coverage() {
    let (acc, sources) = hard("");
    assert_eq!(parsed("coverage", &acc, &sources)["measured"], false);
    assert!(report("matrix", &acc, &sources, &[]).contains("was not measured"));
}
