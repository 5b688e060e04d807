//! Pages about one thing: a place, a part, a system, a routine.

use super::around::{TextAround, rendered};
use super::{Stand, c, label};
use crate::model::expected::Standing;
use crate::model::files::forms::System;
use crate::model::guide::{FitPage, FitSummary, OldLabel, PlacePage, ReadingEntry, RoutinePage, Shown, Step};
use crate::model::phrases::Given;
use crate::model::text::{Block, Text, each_note, words};
use crate::render::html;

impl Stand<'_> {
    pub(super) fn place(&self, place: &PlacePage) -> c::Place {
        let entry = &self.guide.places[place.place];
        c::Place {
            place: self.place_link(place.place),
            plan_html: self.drawings.above(&self.way.up(), Some(place.place)),
            sides_html: self.drawings.sides(self.guide, &self.way.up(), Some(place.place)),
            parts: place
                .fits
                .iter()
                .map(|(fit, roles)| c::PartHere {
                    part: self.part_link(*fit),
                    roles: roles.iter().map(ToString::to_string).collect(),
                })
                .collect(),
            notes: place.notes.iter().map(|warned| self.note(warned)).collect(),
            sections: self.sections(&place.sections, true),
            tips: place.tips.iter().map(ToString::to_string).collect(),
            photos: self.pictured(&place.photos),
            dates: place.dates.iter().map(|date| self.date(date)).collect(),
            related: place.related.iter().map(|place| self.place_link(*place)).collect(),
            code_href: if entry.labelled { self.way.file(&format!("{}/code.svg", entry.code)) } else { String::new() },
            address: label::address(self.guide.identity.address, self.guide.identity.key, entry.code),
        }
    }

    pub(super) fn old_label(&self, label: &OldLabel) -> c::OldLabel {
        c::OldLabel {
            code: label.code.to_string(),
            why: label.why.to_string(),
            to: label.to.iter().map(|place| self.place_link(*place)).collect(),
        }
    }

    pub(super) fn part(&self, fit: &FitPage) -> c::Part {
        let entry = &self.guide.fits[fit.fit];
        let fact = |(title, value): &(String, String)| c::Fact {
            title: title.clone(),
            value: value.clone(),
            ..Default::default()
        };
        c::Part {
            system: self.system_link(entry.system),
            intro_html: self.intro(fit.fit),
            sections: self.sections(&fit.sections, false),
            places: fit
                .places
                .iter()
                .map(|(title, places)| c::RolePlaces {
                    title: title.to_string(),
                    places: places.iter().map(|place| self.place_link(*place)).collect(),
                })
                .collect(),
            facts: fit.facts.iter().map(fact).collect(),
            figures: fit
                .figures
                .iter()
                .map(|(title, value, how)| c::Fact {
                    title: title.clone(),
                    value: value.clone(),
                    how: how.to_string(),
                    ..Default::default()
                })
                .collect(),
            readings: fit.readings.iter().map(|reading| self.reading(reading)).collect(),
            dates: fit.dates.iter().map(|date| self.date(date)).collect(),
            tips: fit.tips.iter().map(ToString::to_string).collect(),
            photos: self.pictured(&fit.photos),
            sources: fit
                .sources
                .iter()
                .map(|(says, is, from)| c::Source {
                    says: says.to_string(),
                    is: is.to_string(),
                    from: from.word(),
                    from_word: self.phrases.get(&format!("from-{}", from.word())),
                })
                .collect(),
        }
    }

    /// What was measured, with a word for how it stands against what it should be.
    fn reading(&self, reading: &ReadingEntry) -> c::Fact {
        let state = reading.expected.as_ref().map_or("", |(_, standing)| match standing {
            Standing::In => "in",
            Standing::Near => "near",
            Standing::Out => "out",
        });
        let expected = reading
            .expected
            .as_ref()
            .map(|(expected, _)| self.phrases.with("reading-expected", &[("expected", Given::Text(expected))]));
        c::Fact {
            title: reading.title.clone(),
            value: reading.value.clone(),
            how: [Some(self.day(reading.on)), expected].into_iter().flatten().collect::<Vec<_>>().join(". "),
            state,
            state_word: if state.is_empty() { String::new() } else { self.phrases.get(&format!("reading-{state}")) },
        }
    }

    /// What stands before the first section, of the part's own text and of those it takes in.
    pub(super) fn intro(&self, fit: usize) -> String {
        let mut out = String::new();
        let own = self.guide.fits[fit].module;
        for (origin, view) in
            self.guide.views.iter().filter(|((number, _), _)| *number == fit).map(|((_, origin), view)| (*origin, view))
        {
            let around = TextAround { stand: self, view, deeper: 0 };
            match origin == own {
                true => out.insert_str(0, &rendered(&view.text.intro, &around)),
                // Of a shared text only the safety notes: its first words say what the shared text is.
                false => each_note(&view.text.intro, &mut |note| html::note(&mut out, note, &around)),
            }
        }
        out
    }

    pub(super) fn system(&self, system: System, fits: &[FitSummary]) -> c::System {
        let named = |shown: &Shown| c::Named { title: words(&shown.section.title), href: self.section_href(shown) };
        let summary = |fit: &FitSummary| c::PartSummary {
            part: self.part_link(fit.fit),
            lead_html: self.lead(fit.fit),
            tasks: fit.tasks.iter().map(named).collect(),
            faults: fit.faults.iter().map(named).collect(),
        };
        c::System { id: system.word(), parts: fits.iter().map(summary).collect() }
    }

    /// The first paragraph of a part.
    pub(super) fn lead(&self, fit: usize) -> String {
        let entry = &self.guide.fits[fit];
        let Some(view) = self.guide.views.get(&(fit, entry.module)) else {
            return String::new();
        };
        let first = entry
            .text
            .intro
            .iter()
            .take(1)
            .filter(|block| matches!(block, Block::Paragraph(_)))
            .cloned()
            .collect::<Vec<_>>();
        rendered(&first, &TextAround { stand: self, view, deeper: 0 })
    }

    pub(super) fn routine(&self, routine: &RoutinePage) -> c::Routine {
        let alone = |blocks: fn(&Text) -> Option<&[Block]>| {
            let view = routine.view.as_ref();
            view.and_then(|view| Some(rendered(blocks(view.text)?, &TextAround { stand: self, view, deeper: 0 })))
                .unwrap_or_default()
        };
        c::Routine {
            intro_html: alone(|text| Some(&text.intro)),
            nothing_html: alone(|text| {
                text.sections
                    .iter()
                    .find(|section| section.id.value == "nothing")
                    .map(|section| section.blocks.as_slice())
            }),
            steps: routine.steps.iter().map(|step| self.step(step)).collect(),
        }
    }

    /// A step with the notes it brings along before its own words.
    fn step(&self, step: &Step) -> c::Section {
        let mut section = self.section(&step.shown, true);
        let notes: String = step.notes.iter().map(|warned| self.note(warned).html).collect();
        section.html.insert_str(0, &notes);
        section
    }
}
