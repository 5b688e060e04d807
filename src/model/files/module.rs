//! `content/<system>/<name>/module.toml`: the facts of one kind of component.

use super::forms::{Condition, Id, ModuleName, SectionName, Supply, Words};
use crate::load::read::{Map, OneOrMany};
use crate::model::source::At;
use crate::{record, words};

words! {
    /// What is done when a life ends.
    Action {
        /// A new one is fitted.
        Renew = "renew",
        /// It is tried out.
        Test = "test",
        /// It is serviced.
        Service = "service",
        /// It is looked at.
        Check = "check",
        /// It is cleaned.
        Clean = "clean",
    }
    /// Where a number comes from.
    Origin {
        /// A standard or law.
        Standard = "standard",
        /// A published text.
        Published = "published",
        /// Worked out.
        Computed = "computed",
        /// Common practice of the trade.
        Practice = "practice",
        /// Memory: readers are told that it is not confirmed.
        Memory = "memory",
    }
}

record! {
    /// What is known of one kind of component.
    ModuleFile {
        /// Its short name, the same as the heading of its text.
        title: At<String>,
        /// The capabilities it provides.
        provides: Vec<At<Id>>,
        /// Owners' words for it.
        aliases: Vec<String>,
        /// Shared modules whose facts and sections it takes in.
        include: Vec<At<ModuleName>>,
        /// Physical facts, which imply hazards.
        traits: Map<OneOrMany<At<String>>>,
        /// What a manifest says of a fit.
        values: Map<ValueFacts>,
        /// The roles it plays at places of the vehicle.
        places: Map<RoleFacts>,
        /// What it draws.
        load: Vec<Load>,
        /// What wears out or must be looked at.
        life: Map<Life>,
        /// What a workshop measures.
        reading: Map<ReadingFacts>,
        /// Sums.
        figures: Map<FigureFacts>,
        /// Wiring of sections.
        section: Map<Wiring>,
        /// Where numbers of the text come from.
        source: Vec<NumberSource>,
    }
    /// A value: a quantity (`unit`), a choice (`choices`) or free words (`text`).
    ValueFacts {
        /// What it is called.
        title: Words,
        /// The unit of a quantity.
        unit: Option<At<String>>,
        /// The quantities that are plausible.
        range: Option<At<String>>,
        /// The words to choose from.
        choices: Vec<At<Id>>,
        /// How a choice reads in a sentence.
        words: Map<Words>,
        /// Choices that call for no section of their own.
        silent: Vec<At<Id>>,
        /// Whether it is free words.
        text: bool,
        /// Whether a manifest must give it.
        required: bool,
        /// What it is when a manifest does not give it.
        default: Option<At<super::forms::Given>>,
    }
    /// A role at a place.
    RoleFacts {
        /// What is there.
        title: Words,
        /// Whether a manifest must say where.
        required: bool,
        /// Whether a label is put there.
        labelled: bool,
        /// Whether it may be at more than one place.
        many: bool,
    }
    /// What a component draws.
    Load {
        /// From where.
        from: At<Supply>,
        /// How much: a quantity, or the name of a value or figure.
        draw: At<String>,
        /// Hours of that in a typical day of use.
        duty: Option<At<String>>,
        /// When it counts.
        when: Option<Condition>,
    }
    /// What wears out or must be looked at.
    Life {
        /// What.
        title: Words,
        /// How often.
        every: At<String>,
        /// What is done then.
        action: Action,
        /// The section that says how it is done, or who does it: of several the first that shows.
        section: OneOrMany<At<Id>>,
        /// What to look for on the part when no day is known.
        look: Option<Words>,
        /// Who says so.
        source: String,
    }
    /// What a workshop measures.
    ReadingFacts {
        /// What.
        title: Words,
        /// Its unit.
        unit: At<String>,
        /// What it should be: a quantity or range, or the name of a value or figure.
        expect: At<String>,
        /// How far out is still near: a share or a quantity.
        near: Option<At<String>>,
        /// Who says so.
        source: String,
    }
    /// A sum.
    FigureFacts {
        /// What it gives.
        title: Words,
        /// The calculation.
        calculation: At<Id>,
        /// Its inputs: quantities, words, or names of values and figures.
        with: Map<At<String>>,
    }
    /// Wiring of a section.
    Wiring {
        /// The roles at whose places it is shown.
        at: OneOrMany<At<Id>>,
        /// What must be so for it to be shown.
        when: Option<Condition>,
        /// The routines it is part of.
        routine: OneOrMany<At<Id>>,
        /// What must be done before it.
        needs: OneOrMany<At<SectionName>>,
        /// The hazards met while doing it.
        exposes: OneOrMany<At<Id>>,
        /// Hazards that it warns of itself, though the top of the part does too.
        warns: OneOrMany<At<Id>>,
    }
    /// Where a number of the text comes from.
    NumberSource {
        /// The number as it stands in the text.
        says: At<String>,
        /// What kind of source it is.
        from: Origin,
        /// Who says so.
        is: String,
    }
}
