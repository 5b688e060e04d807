//! One page of a guide: what its template is given, and the file that comes out.

mod around;
mod dates;
mod figures;
mod lists;
mod parts;
mod photos;
mod pieces;

use super::context as c;
use super::links::{Way, folder};
use super::plan_input::Drawings;
use super::theme::Theme;
use super::{Artifact, label, links, offline, search};
use crate::model::guide::{Guide, Page, PageBody};
use crate::model::phrases::Phrases;
use serde::Serialize;

/// The file of `page`. The fingerprint is for the page about the guide.
pub fn page(
    theme: &Theme,
    guide: &Guide,
    drawings: &Drawings,
    page: &Page,
    fingerprint: &str,
) -> Result<Artifact, String> {
    let phrases = theme.phrases(guide.language);
    let stand = Stand { guide, page, way: Way::from(guide, page), phrases, theme, drawings };
    let html = stand.html(fingerprint)?;
    let folder = folder(guide, &page.address);
    let slash = if folder.is_empty() { "" } else { "/" };
    Ok(Artifact::text(format!("{}/{folder}{slash}index.html", guide.identity.key), html))
}

/// A page, and where it stands.
struct Stand<'a> {
    guide: &'a Guide<'a>,
    page: &'a Page<'a>,
    way: Way<'a>,
    phrases: &'a Phrases,
    theme: &'a Theme,
    drawings: &'a Drawings,
}

impl Stand<'_> {
    fn html(&self, fingerprint: &str) -> Result<String, String> {
        match &self.page.body {
            PageBody::Home => self.fill("home", &self.home()),
            PageBody::Place(place) => self.fill("place", &self.place(place)),
            PageBody::Fit(fit) => self.fill("part", &self.part(fit)),
            PageBody::System(system, fits) => self.fill("system", &self.system(*system, fits)),
            PageBody::Routine(routine) => self.fill("routine", &self.routine(routine)),
            PageBody::Places => self.fill("places", &self.places()),
            PageBody::Tasks(systems) => self.fill("tasks", &self.listed(systems)),
            PageBody::Faults(systems) => self.fill("faults", &self.listed(systems)),
            PageBody::Dates(dates) => self.fill("dates", &self.dates_page(dates)),
            PageBody::Figures(sums) => self.fill("figures", &self.figures(sums)),
            PageBody::Warnings(signals) => self.fill("warnings", &self.warnings(signals)),
            PageBody::Emergency(view) => self.fill("emergency", &self.emergency(view.as_ref())),
            PageBody::Words(letters) => self.fill("words", &self.words(letters)),
            PageBody::OldLabel(label) => self.fill("old-label", &self.old_label(label)),
            PageBody::About(routines) => {
                let about = c::About {
                    fingerprint: fingerprint.to_string(),
                    systems: self.systems(),
                    routines: self.named_routines(routines),
                };
                self.fill("about", &about)
            }
        }
    }

    fn fill(&self, kind: &'static str, page: &impl Serialize) -> Result<String, String> {
        self.theme.page(kind, self.guide.language, &self.shell(kind), page)
    }

    fn shell(&self, kind: &'static str) -> c::Shell {
        let to = |address| self.way.to(address);
        c::Shell {
            language: self.guide.language.to_string(),
            kind,
            title: self.page.title.clone(),
            style_href: self.way.file("style.css"),
            scripts: self.theme.script_hrefs(|name| self.way.file(name)),
            search: self.search(),
            offline: self.offline(),
            page_address: self.address(),
            tell: self.tell(),
            van: c::Van::new(&self.guide.identity, |name| self.way.file(name)),
            to: c::Ways {
                home: to(""),
                places: to("places"),
                tasks: to("tasks"),
                faults: to("faults"),
                dates: to("dates"),
                figures: to("figures"),
                warnings: to("warnings"),
                emergency: to("emergency"),
                words: to("words"),
                about: to("about"),
            },
            languages: self.languages(),
        }
    }

    fn search(&self) -> c::Search {
        let index = [folder(self.guide, ""), search::FILE.to_string()];
        let index = index.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("/");
        let scripts = ["minisearch.js", "wording.js", "finder.js"].map(|name| self.way.file(name));
        c::Search { index: self.way.file(&index), scripts: scripts.join(" ") }
    }

    fn offline(&self) -> c::Offline {
        let [worker, manifest, fingerprint] =
            [offline::WORKER, offline::MANIFEST, offline::FINGERPRINT].map(|name| self.way.file(name));
        c::Offline { worker, manifest, fingerprint }
    }

    /// The published address of this page, as a reader would type it.
    fn address(&self) -> String {
        let identity = &self.guide.identity;
        let folder = folder(self.guide, &self.page.address);
        let parts = [identity.address.trim_end_matches('/'), identity.key, &folder];
        parts.into_iter().filter(|part| !part.is_empty()).map(|part| format!("{part}/")).collect()
    }

    /// A message to the dealer about this page, which its reader completes and sends.
    fn tell(&self) -> String {
        let identity = &self.guide.identity;
        let subject = format!("{}: {}", self.phrases.get("tell-subject"), identity.title);
        let (wrong, page) = (self.phrases.get("tell-wrong"), self.phrases.get("tell-page"));
        let body = format!("{wrong}\r\n\r\n\r\n{page}: {}\r\n", self.address());
        match identity.dealer_email {
            "" => String::new(),
            email => links::mailto(email, &subject, &body),
        }
    }

    fn languages(&self) -> Vec<c::Language> {
        let others = self.guide.languages.iter().filter(|language| **language != self.guide.language);
        let folder = |language: &str| {
            let inner = if self.guide.languages.first() == Some(&language) { "" } else { language };
            [inner, &self.page.address].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("/")
        };
        others
            .map(|language| c::Language { tag: language.to_string(), href: self.way.to_other(&folder(language)) })
            .collect()
    }

    fn home(&self) -> c::Home {
        let routines = self.guide.pages.iter().filter(|page| matches!(page.body, PageBody::Routine(_)));
        c::Home {
            plan_html: self.drawings.above(&self.way.up(), None),
            places: (0..self.guide.places.len()).map(|place| self.place_link(place)).collect(),
            routines: routines
                .map(|page| c::Named { title: page.title.clone(), href: self.way.to(&page.address) })
                .collect(),
            systems: self.systems(),
        }
    }
}
