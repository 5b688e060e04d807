//! The booklet: the whole guide of a vehicle.

use super::Teller;
use super::data::{Block, Due, Fact, Group, Named, Note, Place, Section, Shell, Topic};
use crate::model::files::forms::Signal;
use crate::model::files::forms::System;
use crate::model::guide::{FitPage, Page, PageBody, RoutinePage, Step, View, Warned, WordEntry};
use crate::model::text::{self, Block as Said, each_note};
use serde::Serialize;

/// What the template of a booklet is given.
#[derive(Serialize)]
pub(super) struct Booklet<'a> {
    #[serde(flatten)]
    pub(super) shell: Shell<'a>,
    #[serde(flatten)]
    pub(super) said: Contents,
}

/// What a booklet says.
#[derive(Serialize, Default)]
pub(super) struct Contents {
    /// All safety notes, gravest first.
    warnings: Vec<Graded>,
    /// The places, in the order of a walk.
    places: Vec<Place>,
    /// Lists for occasions.
    routines: Vec<Routine>,
    /// The parts, by system.
    systems: Vec<Chapter>,
    /// Faults, by system.
    faults: Vec<Listed>,
    /// What falls due.
    dates: Vec<Due>,
    /// Names and owners' words, by first letter.
    words: Vec<Letter>,
    /// What to do at once.
    emergency: Option<Emergency>,
}

/// The notes of one signal word.
#[derive(Serialize)]
pub(super) struct Graded {
    signal: String,
    word: String,
    meaning: String,
    pub(super) notes: Vec<Note>,
}

/// A list for an occasion.
#[derive(Serialize)]
pub(super) struct Routine {
    title: String,
    to: String,
    intro: Vec<Block>,
    /// What to do when there are no tasks.
    nothing: Vec<Block>,
    tasks: Vec<Section>,
}

/// The parts of one system.
#[derive(Serialize)]
pub(super) struct Chapter {
    title: String,
    parts: Vec<Part>,
}

/// Everything about one part.
#[derive(Serialize)]
pub(super) struct Part {
    title: String,
    to: String,
    intro: Vec<Block>,
    places: Vec<Here>,
    groups: Vec<Group>,
    facts: Vec<Fact>,
    figures: Vec<Fact>,
    readings: Vec<Fact>,
    dates: Vec<Due>,
    tips: Vec<String>,
    sources: Vec<Source>,
}

/// What stands at some places.
#[derive(Serialize)]
struct Here {
    title: String,
    places: Vec<Named>,
}

/// Where a number comes from.
#[derive(Serialize)]
struct Source {
    says: String,
    is: String,
    from: String,
    /// Whether it is known from memory alone.
    unsure: bool,
}

/// Sections of one system, as a list.
#[derive(Serialize)]
struct Listed {
    title: String,
    topics: Vec<Topic>,
}

/// Words with one first letter.
#[derive(Serialize)]
struct Letter {
    letter: String,
    words: Vec<Word>,
}

/// A word and where it leads.
#[derive(Serialize)]
struct Word {
    word: String,
    title: String,
    to: String,
}

/// What to do at once.
#[derive(Serialize)]
struct Emergency {
    intro: Vec<Block>,
    sections: Vec<Section>,
}

impl<'a> Teller<'a> {
    pub(super) fn booklet(&'a self) -> Contents {
        let mut contents = Contents::default();
        for page in &self.guide.pages {
            self.add(page, &mut contents);
        }
        contents
    }

    fn add(&'a self, page: &'a Page<'a>, contents: &mut Contents) {
        match &page.body {
            PageBody::Place(place) => contents.places.push(self.place(place)),
            PageBody::System(_, fits) => {
                let pages = fits.iter().filter_map(|summary| self.fit_page(summary.fit));
                let parts = pages.map(|page| self.whole_part(page)).collect();
                contents.systems.push(Chapter { title: page.title.clone(), parts });
            }
            PageBody::Routine(routine) => contents.routines.push(self.routine(page, routine)),
            PageBody::Faults(systems) => {
                let listed = |(system, faults): &(System, Vec<_>)| Listed {
                    title: self.phrases.get(&format!("system-{}", system.word())),
                    topics: faults.iter().map(|shown| self.topic(shown)).collect(),
                };
                contents.faults = systems.iter().map(listed).collect();
            }
            PageBody::Dates(dates) => contents.dates = dates.iter().map(|date| self.due(date)).collect(),
            PageBody::Warnings(groups) => contents.warnings = self.graded(groups),
            PageBody::Emergency(Some(view)) => contents.emergency = Some(self.emergency(view)),
            PageBody::Words(letters) => {
                let letter = |(letter, words): &(String, Vec<WordEntry>)| Letter {
                    letter: letter.clone(),
                    words: words.iter().map(|word| self.word(word)).collect(),
                };
                contents.words = letters.iter().map(letter).collect();
            }
            _ => {}
        }
    }

    /// All safety notes, by signal word.
    pub(super) fn graded(&self, groups: &[(Signal, Vec<Warned>)]) -> Vec<Graded> {
        let graded = |(signal, notes): &(Signal, Vec<Warned>)| {
            let word = signal.word().to_lowercase();
            let meaning = self.phrases.get(&format!("meaning-{word}"));
            let notes = notes.iter().filter_map(|warned| self.warned(warned)).collect();
            Graded { signal: word, word: self.signal(*signal), meaning, notes }
        };
        groups.iter().map(graded).collect()
    }

    fn routine(&'a self, page: &Page, routine: &'a RoutinePage<'a>) -> Routine {
        let alone = |blocks: fn(&text::Text) -> Option<&[Said]>| {
            let view = routine.view.as_ref();
            view.and_then(|view| Some(self.alone(view).blocks(blocks(view.text)?))).unwrap_or_default()
        };
        Routine {
            title: page.title.clone(),
            to: page.address.replace('/', "."),
            intro: alone(|text| Some(&text.intro)),
            nothing: if routine.steps.is_empty() {
                alone(|text| {
                    text.sections
                        .iter()
                        .find(|section| section.id.value == "nothing")
                        .map(|section| section.blocks.as_slice())
                })
            } else {
                vec![]
            },
            tasks: routine.steps.iter().map(|step| self.step(step)).collect(),
        }
    }

    /// A task with the notes it brings along before its own words.
    fn step(&self, step: &Step) -> Section {
        let mut section = self.section(&step.shown);
        section.blocks.splice(0..0, self.warned_blocks(&step.notes));
        section
    }

    fn whole_part(&self, page: &FitPage) -> Part {
        let entry = &self.guide.fits[page.fit];
        let here = |(title, places): &(&str, Vec<usize>)| Here {
            title: title.to_string(),
            places: places.iter().map(|place| self.place_named(*place)).collect(),
        };
        let fact =
            |(title, value, how): (&String, &String, String)| Fact { title: title.clone(), value: value.clone(), how };
        let source = |(says, is, from): &(&str, &str, crate::model::files::module::Origin)| Source {
            says: says.to_string(),
            is: is.to_string(),
            from: self.phrases.get(&format!("from-{}", from.word())),
            unsure: from.word() == "memory",
        };
        Part {
            title: entry.title.to_string(),
            to: super::anchor::fit(self.guide, page.fit),
            intro: self.intro(page.fit),
            places: page.places.iter().map(here).collect(),
            groups: self.groups(&page.sections),
            facts: Self::facts(&page.facts),
            figures: page.figures.iter().map(|(title, value, how)| fact((title, value, how.to_string()))).collect(),
            readings: page
                .readings
                .iter()
                .map(|reading| fact((&reading.title, &reading.value, self.phrases.day(reading.on))))
                .collect(),
            dates: page.dates.iter().map(|date| self.due(date)).collect(),
            tips: page.tips.iter().map(ToString::to_string).collect(),
            sources: page.sources.iter().map(source).collect(),
        }
    }

    fn place_named(&self, place: usize) -> Named {
        Named { title: self.guide.places[place].code.to_string(), to: super::anchor::place(self.guide, place) }
    }

    /// What stands before the first section: of the part's own text all of it, of a text it takes in the safety notes.
    pub(super) fn intro(&self, fit: usize) -> Vec<Block> {
        let own = self.guide.fits[fit].module;
        let mut out = Vec::new();
        for (&(_, origin), view) in self.guide.views.range((fit, 0)..=(fit, usize::MAX)) {
            let Some(reading) = self.reading(fit, origin) else {
                continue;
            };
            if origin == own {
                out.splice(0..0, reading.blocks(&view.text.intro));
                continue;
            }
            each_note(&view.text.intro, &mut |note| out.push(Block::Note { note: Box::new(reading.note(note, None)) }));
        }
        out
    }

    fn emergency(&'a self, view: &'a View<'a>) -> Emergency {
        let reading = self.alone(view);
        let section = |section: &text::Section| Section {
            title: reading.inlines(&section.title),
            name: text::words(&section.title),
            to: String::new(),
            blocks: reading.blocks(&section.blocks),
            part: Named::default(),
        };
        Emergency {
            intro: reading.blocks(&view.text.intro),
            sections: view.text.sections.iter().map(section).collect(),
        }
    }

    /// An entry of the index; the address of its page becomes an anchor.
    fn word(&self, word: &WordEntry) -> Word {
        let to = match (word.address.strip_prefix("part/"), &word.section) {
            (Some(part), Some(section)) => format!("part.{part}.{section}"),
            (Some(part), None) => format!("part.{part}"),
            (None, _) => format!("place.{}", word.address),
        };
        Word { word: word.word.clone(), title: word.title.clone(), to: self.known(to) }
    }
}
