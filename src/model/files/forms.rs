//! Names, codes, references and conditions: the small forms that several files share.

use crate::load::read::{Map, Node, OneOrMany, Read, Reader};
use crate::model::source::At;
use crate::{form, record, words};
use serde_json::{Value as Json, json};
use toml::de::DeValue;

form! {
    /// A name in lower case: letters, digits and single hyphens.
    Id, "a name in lower case", "use letters a to z, digits and single hyphens, as in `gas-locker`", "^[a-z0-9]+(-[a-z0-9]+)*$", is_id;
    /// A module: `cooling/absorption-fridge`.
    ModuleName, "the name of a module", "write its folder below `content/`, as in `cooling/absorption-fridge`", "^[a-z0-9-]+/[a-z0-9-]+$",
        |text| text.split_once('/').is_some_and(|(system, name)| is_id(system) && is_id(name));
    /// The short code of a place: `A1`.
    Code, "the code of a place", "use one or two capital letters and one or two digits, as in `G1`", "^[A-Z]{1,2}[0-9]{1,2}$", is_code;
    /// A van's public key.
    Key, "a key", "use 8 of 23456789ABCDEFGHJKMNPQRSTVWXYZ, as in `M7QK3WZD`; make a new one for each van", "^[2-9A-HJKMNP-TV-Z]{8}$",
        |text| text.len() == 8 && text.chars().all(|c| "23456789ABCDEFGHJKMNPQRSTVWXYZ".contains(c));
    /// A language tag of two or three letters, with or without a region.
    Language, "a language", "use a tag of BCP 47, as in `en` or `pt-BR`", "^[a-z]{2,3}(-[A-Z]{2})?$",
        |text| text.parse::<unic_langid::LanguageIdentifier>().is_ok_and(|tag| tag == text);
    /// A section of a capability: `lpg-supply#turn-on`.
    SectionName, "a section of a capability", "write `capability#section`, as in `lpg-supply#turn-on`", "^[a-z0-9-]+#[a-z0-9-]+$",
        |text| text.split_once('#').is_some_and(|(part, section)| is_id(part) && is_id(section));
    /// An address of the web over TLS, without a slash at its end.
    WebAddress, "an address of the web", "write it as `https://guides.example`, with no slash at the end", "^https://[A-Za-z0-9.-]+(:[0-9]+)?(/[A-Za-z0-9._~-]+)*$", is_web_address;
    /// A colour: `#1a5276`.
    Colour, "a colour", "write it as six hexadecimal digits, as in `#1a5276`", "^#[0-9a-fA-F]{6}$",
        |text| text.strip_prefix('#').is_some_and(|hex| hex.len() == 6 && hex.chars().all(|c| c.is_ascii_hexdigit()));
}

/// Whether `text` is a name in lower case.
pub fn is_id(text: &str) -> bool {
    !text.is_empty()
        && text
            .split('-')
            .all(|word| !word.is_empty() && word.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit()))
}

/// Whether `text` is the code of a place.
pub fn is_code(text: &str) -> bool {
    let letters = text.bytes().take_while(u8::is_ascii_uppercase).count();
    let digits = text.len() - letters;
    (1..=2).contains(&letters) && (1..=2).contains(&digits) && text.bytes().skip(letters).all(|b| b.is_ascii_digit())
}

fn is_web_address(text: &str) -> bool {
    let Some((host, path)) = text.strip_prefix("https://").map(|rest| rest.split_once('/').unwrap_or((rest, "x")))
    else {
        return false;
    };
    let (name, port) = host.split_once(':').unwrap_or((host, "1"));
    let host_is = !name.is_empty() && name.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'.' || b == b'-');
    let unreserved = |b: u8| b.is_ascii_alphanumeric() || b"-._~".contains(&b);
    host_is
        && port.parse::<u16>().is_ok()
        && path.split('/').all(|segment| !segment.is_empty() && segment.bytes().all(unreserved))
}

words! {
    /// What a fit belongs to.
    System {
        /// Water.
        Water = "water",
        /// Gas.
        Gas = "gas",
        /// 12 volt.
        TwelveVolt = "12v",
        /// Mains electricity.
        Mains = "mains",
        /// Toilet.
        Toilet = "toilet",
        /// Heating.
        Heating = "heating",
        /// Cooking.
        Cooking = "cooking",
        /// Cooling.
        Cooling = "cooling",
        /// Safety.
        Safety = "safety",
        /// Body.
        Body = "body",
        /// Vehicle.
        Vehicle = "vehicle",
    }
    /// A signal word of ANSI Z535.6 and ISO 3864-2, weakest first.
    Signal {
        /// Not related to injury.
        Notice = "NOTICE",
        /// Could result in minor or moderate injury.
        Caution = "CAUTION",
        /// Could result in death or serious injury.
        Warning = "WARNING",
        /// Will result in death or serious injury.
        Danger = "DANGER",
    }
    /// What something draws from.
    Supply {
        /// The hook-up.
        Mains = "mains",
        /// The leisure battery.
        TwelveVolt = "12v",
        /// Liquefied petroleum gas.
        Lpg = "lpg",
        /// The vehicle's diesel.
        Diesel = "diesel",
        /// The fresh water.
        Water = "water",
    }
    /// A fact of the vehicle that a condition can ask for.
    VanFact {
        /// The kind of body.
        Body = "body",
        /// The side of the steering wheel.
        Drive = "drive",
        /// What the engine runs on.
        Fuel = "fuel",
    }
}

/// Words for readers: one text for all languages, or one for each.
#[derive(Debug, Clone, Default)]
pub struct Words(pub Vec<(String, String)>);

impl Words {
    /// The words in `language`, or else the first there are.
    pub fn text(&self, language: &str) -> &str {
        let own = self.0.iter().find(|(tag, _)| tag == language);
        own.or(self.0.first()).map_or("", |(_, text)| text)
    }
}

impl Read for Words {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        match node.get_ref() {
            DeValue::String(text) => Some(Words(vec![(String::new(), text.to_string())])),
            DeValue::Table(_) => Map::<String>::read(r, node)
                .map(|map| Words(map.0.into_iter().map(|(tag, text)| (tag.value, text)).collect())),
            _ => {
                r.wrong_form(
                    node,
                    "words in quotes",
                    "write `key = \"words\"`, or `key = { en = \"words\", de = \"Worte\" }`",
                );
                None
            }
        }
    }
    fn schema() -> Json {
        json!({ "anyOf": [{ "type": "string" }, { "type": "object", "additionalProperties": { "type": "string" } }] })
    }
}

/// A value as a manifest gives it: words in quotes, or a whole number for a count.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Given(pub String);

impl Read for Given {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        match node.get_ref() {
            DeValue::String(text) => Some(Given(text.to_string())),
            DeValue::Integer(number) => Some(Given(number.as_str().to_string())),
            _ => {
                r.wrong_form(
                    node,
                    "a value",
                    "write a quantity with its unit in quotes, as in `\"6 kg\"`, or one of the choices",
                );
                None
            }
        }
    }
    fn schema() -> Json {
        json!({ "type": ["string", "integer"] })
    }
}

record! {
    /// A condition: exactly one of `value`, `fitted`, `van`, `all`, `any` and `not`.
    ConditionTable {
        /// The name of a value of this fit; with `is`, `at-least` or `at-most`.
        value: Option<At<Id>>,
        /// The choice, or choices, that the value or van fact is.
        is: OneOrMany<At<String>>,
        /// The least quantity.
        at_least: Option<At<String>>,
        /// The greatest quantity.
        at_most: Option<At<String>>,
        /// A capability that some fit of the van provides.
        fitted: Option<At<Id>>,
        /// A fact of the vehicle; with `is`.
        van: Option<At<VanFact>>,
        /// All of these hold.
        all: Vec<Condition>,
        /// At least one of these holds.
        any: Vec<Condition>,
        /// This does not hold.
        not: Option<Box<Condition>>,
    }
}

/// What must be so for a section or load to count.
#[derive(Debug, Clone)]
pub enum Condition {
    /// A value is one of some choices.
    ValueIs(At<Id>, Vec<At<String>>),
    /// A value is at least, or at most, a quantity.
    ValueWithin {
        /// The value.
        value: At<Id>,
        /// The least.
        at_least: Option<At<String>>,
        /// The most.
        at_most: Option<At<String>>,
    },
    /// Some fit provides a capability.
    Fitted(At<Id>),
    /// A fact of the vehicle is one of some words.
    Van(At<VanFact>, Vec<At<String>>),
    /// All hold.
    All(Vec<Condition>),
    /// At least one holds.
    Any(Vec<Condition>),
    /// It does not hold.
    Not(Box<Condition>),
}

impl Read for Box<Condition> {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        Condition::read(r, node).map(Box::new)
    }
    fn schema() -> Json {
        Condition::schema()
    }
}

impl Read for Condition {
    fn read(r: &mut Reader, node: &Node) -> Option<Self> {
        let table = ConditionTable::read(r, node)?;
        let condition = table.condition();
        if condition.is_none() {
            let help = "write one of `{ value = …, is = … }`, `{ value = …, at-least = … }`, `{ fitted = … }`, `{ van = …, is = … }`, `{ all = [ … ] }`, `{ any = [ … ] }`, `{ not = { … } }`";
            r.wrong_form(node, "one condition", help);
        }
        condition
    }
    /// Conditions inside a condition are only said to be tables: the schema would have no end otherwise.
    fn schema() -> Json {
        let inner = json!({ "type": "object" });
        let words = OneOrMany::<String>::schema();
        json!({
            "type": "object",
            "description": "A condition: exactly one of `value`, `fitted`, `van`, `all`, `any` and `not`.",
            "properties": {
                "value": Id::schema(), "is": words, "at-least": String::schema(), "at-most": String::schema(),
                "fitted": Id::schema(), "van": VanFact::schema(),
                "all": { "type": "array", "items": inner }, "any": { "type": "array", "items": inner }, "not": inner,
            },
            "additionalProperties": false,
        })
    }
}

impl ConditionTable {
    fn condition(self) -> Option<Condition> {
        let kinds = [
            self.value.is_some(),
            self.fitted.is_some(),
            self.van.is_some(),
            !self.all.is_empty(),
            !self.any.is_empty(),
            self.not.is_some(),
        ];
        if kinds.iter().filter(|there| **there).count() != 1 {
            return None;
        }
        let bounds = self.at_least.is_some() || self.at_most.is_some();
        match (self.value, self.van) {
            (Some(value), _) if bounds && self.is.is_empty() => {
                Some(Condition::ValueWithin { value, at_least: self.at_least, at_most: self.at_most })
            }
            (Some(value), _) if !bounds && !self.is.is_empty() => Some(Condition::ValueIs(value, self.is.0)),
            (None, Some(fact)) if !bounds && !self.is.is_empty() => Some(Condition::Van(fact, self.is.0)),
            (None, None) if !bounds && self.is.is_empty() => {
                if let Some(fitted) = self.fitted {
                    Some(Condition::Fitted(fitted))
                } else if let Some(not) = self.not {
                    Some(Condition::Not(not))
                } else if self.any.is_empty() {
                    Some(Condition::All(self.all))
                } else {
                    Some(Condition::Any(self.any))
                }
            }
            _ => None,
        }
    }
}
