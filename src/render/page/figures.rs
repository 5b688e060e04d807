//! The page of figures: sums, plots, and what a script needs to answer as the reader turns the dials.

use super::{Stand, c};
use crate::model::sums::{Plot, Sum, SumGroup, SumsPage};
use crate::render::plot;

impl Stand<'_> {
    pub(super) fn figures(&self, sums: &SumsPage) -> c::Figures {
        let dials = &sums.dials;
        let known = [
            ("pressure", dials.gas.is_some()),
            ("gas", dials.gas.is_some()),
            ("water", dials.water.is_some()),
            ("battery", dials.battery.is_some()),
            ("off", dials.mains.is_some()),
            ("axles", dials.axles.is_some()),
        ];
        let answer = |id: &'static str| c::Answer { id, title: self.phrases.get(&format!("answer-{id}")) };
        c::Figures {
            groups: sums.groups.iter().map(|group| self.sum_group(group)).collect(),
            dials: serde_json::to_string(dials).unwrap_or_default(),
            settings: self.settings(sums),
            answers: known.iter().filter(|(_, known)| *known).map(|(id, _)| answer(id)).collect(),
        }
    }

    /// The dials that change an answer of this van.
    fn settings(&self, sums: &SumsPage) -> Vec<c::Dial> {
        let own = &sums.dials;
        let people = own.people as f64;
        let stays = own.gas.is_some() || own.water.is_some() || own.battery.is_some();
        let loads = own.axles.is_some();
        let carries = own.axles.as_ref().is_some_and(|axles| axles.water != [0.0, 0.0]);
        let all = [
            ("people", "", [1.0, people, 1.0], people.min(2.0), own.water.is_some() || loads),
            ("days", "", [1.0, 21.0, 1.0], 3.0, stays),
            ("outside", "°C", [-20.0, 40.0, 1.0], 10.0, own.gas.is_some()),
            ("pitch", "A", [3.0, 16.0, 1.0], 10.0, own.mains.is_some()),
            ("luggage", "kg", [0.0, 500.0, 10.0], 100.0, loads),
            ("water", "%", [0.0, 100.0, 10.0], 100.0, carries),
        ];
        let dial = |(id, unit, [least, most, step], value, _): (&'static str, &'static str, [f64; 3], f64, bool)| {
            c::Dial { id, title: self.phrases.get(&format!("dial-{id}")), unit, least, most, step, value }
        };
        all.into_iter().filter(|(.., shown)| *shown).map(dial).collect()
    }

    fn sum_group(&self, group: &SumGroup) -> c::SumGroup {
        c::SumGroup {
            id: group.id,
            title: group.title.clone(),
            sums: group.sums.iter().map(sum).collect(),
            plots: group.plots.iter().map(plot_view).collect(),
        }
    }
}

fn plot_view(plot: &Plot) -> c::PlotView {
    c::PlotView { id: plot.id, title: plot.title.clone(), html: plot::draw(plot) }
}

fn sum(sum: &Sum) -> c::SumView {
    let table = sum.table.as_ref();
    let input = |(title, value): &(String, String)| c::Fact {
        title: title.clone(),
        value: value.clone(),
        ..Default::default()
    };
    c::SumView {
        id: sum.id,
        title: sum.title.clone(),
        result: sum.result.clone(),
        caution: sum.caution.clone(),
        head: table.map_or(vec![], |table| table.head.clone()),
        rows: table.map_or(vec![], |table| table.rows.clone()),
        inputs: sum.inputs.iter().map(input).collect(),
        working: sum.working.clone(),
        limits: sum.limits.clone(),
        source: sum.source.clone(),
    }
}
