//! One declaration for each table of a file: its type, how it is read, and its JSON Schema.

use serde_json::{Map as JsonMap, Value as Json, json};

/// `mains_power` as authors write it: `mains-power`. A trailing `_` only avoids a word of the language.
pub fn key(field: &str) -> String {
    field.trim_end_matches('_').replace('_', "-")
}

/// The schema of a table: each key with its description, its schema and whether it must be there.
pub fn object(about: &str, keys: &[(String, &str, Json, bool)]) -> Json {
    let mut properties = JsonMap::new();
    let mut required = Vec::new();
    for (name, about, schema, must) in keys {
        let mut schema = schema.clone();
        if let Json::Object(object) = &mut schema {
            object.insert("description".into(), json!(about.trim()));
        }
        properties.insert(name.clone(), schema);
        if *must {
            required.push(json!(name));
        }
    }
    json!({
        "type": "object",
        "description": about.trim(),
        "properties": properties,
        "required": required,
        "additionalProperties": false,
    })
}

/// Declares a table: its keys are the field names with hyphens; keys of types with an absent value may be left out.
#[macro_export]
macro_rules! record {
    ($($(#[doc = $about:literal])+ $name:ident { $($(#[doc = $doc:literal])+ $field:ident: $ty:ty,)* })+) => {$(
        $(#[doc = $about])+
        #[derive(Debug, Clone)]
        pub struct $name { $($(#[doc = $doc])+ pub $field: $ty,)* }

        impl $crate::load::read::Read for $name {
            fn read(r: &mut $crate::load::read::Reader, node: &$crate::load::read::Node) -> Option<Self> {
                let table = r.table(node)?;
                r.unknown(table, &[$($crate::load::record::key(stringify!($field)),)*]);
                $(let $field = r.field::<$ty>(table, node, &$crate::load::record::key(stringify!($field)));)*
                Some(Self { $($field: $field?,)* })
            }
            fn schema() -> serde_json::Value {
                $crate::load::record::object(concat!($($about,)+), &[$((
                    $crate::load::record::key(stringify!($field)),
                    concat!($($doc,)+),
                    <$ty as $crate::load::read::Read>::schema(),
                    <$ty as $crate::load::read::Read>::absent().is_none(),
                ),)*])
            }
        }
    )+};
}

/// Declares a closed list of words.
#[macro_export]
macro_rules! words {
    ($($(#[doc = $about:literal])+ $name:ident { $($(#[doc = $doc:literal])+ $variant:ident = $word:literal,)+ })+) => {$(
        $(#[doc = $about])+
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name { $($(#[doc = $doc])+ $variant,)+ }

        impl $name {
            /// All of them.
            pub const ALL: &'static [$name] = &[$($name::$variant,)+];

            /// The word as authors write it.
            pub fn word(self) -> &'static str {
                match self { $($name::$variant => $word,)+ }
            }

            /// The one that `word` names.
            pub fn from_word(word: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.word() == word)
            }
        }

        impl $crate::load::read::Read for $name {
            fn read(r: &mut $crate::load::read::Reader, node: &$crate::load::read::Node) -> Option<Self> {
                let text = r.text(node)?;
                Self::from_word(text).or_else(|| {
                    let help = $crate::diag::suggest::did_you_mean(text, Self::ALL.iter().map(|one| one.word()));
                    r.wrong_form(node, "one of the words this key takes", &help);
                    None
                })
            }
            fn schema() -> serde_json::Value {
                serde_json::json!({ "enum": [$($word,)+] })
            }
        }
    )+};
}

/// Declares text of a given form.
#[macro_export]
macro_rules! form {
    ($($(#[doc = $about:literal])+ $name:ident, $asked:literal, $help:literal, $pattern:literal, $is:expr;)+) => {$(
        $(#[doc = $about])+
        #[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(pub String);

        impl std::ops::Deref for $name {
            type Target = str;
            fn deref(&self) -> &str { &self.0 }
        }

        impl $crate::load::read::Read for $name {
            fn read(r: &mut $crate::load::read::Reader, node: &$crate::load::read::Node) -> Option<Self> {
                let text = r.text(node)?;
                let is: fn(&str) -> bool = $is;
                if is(text) {
                    return Some($name(text.to_string()));
                }
                r.wrong_form(node, $asked, $help);
                None
            }
            fn schema() -> serde_json::Value {
                serde_json::json!({ "type": "string", "pattern": $pattern })
            }
        }
    )+};
}
