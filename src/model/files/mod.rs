//! The files that people write, as types. Each declaration is also the reader and the schema of its table.

pub mod book;
pub mod content;
pub mod forms;
pub mod ledger;
pub mod module;
pub mod stamped;
pub mod vehicle;

use crate::load::read::Read;
use serde_json::{Value as Json, json};

/// The schemas of all files, by the name of the kind of file.
pub fn schemas() -> Vec<(&'static str, Json)> {
    let whole = |title: &str, schema: Json| {
        let mut out = json!({ "$schema": "https://json-schema.org/draft/2020-12/schema", "title": title });
        if let (Json::Object(out), Json::Object(schema)) = (&mut out, schema) {
            out.extend(schema);
        }
        out
    };
    vec![
        ("book", whole("book.toml", book::BookFile::schema())),
        ("capabilities", whole("content/capabilities.toml", content::CapabilitiesFile::schema())),
        ("hazards", whole("content/hazards.toml", content::HazardsFile::schema())),
        ("ledger", whole("models/ledger.toml", ledger::LedgerFile::schema())),
        ("model", whole("models/<model>/model.toml", vehicle::ModelFile::schema())),
        ("module", whole("content/<system>/<name>/module.toml", module::ModuleFile::schema())),
        ("van", whole("models/<model>/<van>.toml", vehicle::VanFile::schema())),
        ("words", whole("content/words.toml", content::WordsFile::schema())),
    ]
}
