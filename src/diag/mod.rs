//! What is wrong with a book, as data; [`print`] shows it to people, [`report`] to machines.

pub mod print;
pub mod report;
pub mod rules;
pub mod suggest;

use crate::model::source::{Sources, Span};
use std::collections::HashMap;

/// How much a finding weighs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Nothing is published while it stands.
    Error,
    /// Worth a look; it stops nothing.
    Warning,
}

impl Severity {
    /// Its word, as it stands before a finding.
    pub fn word(self) -> &'static str {
        match self {
            Severity::Error => "error",
            Severity::Warning => "warning",
        }
    }
}

/// What a rule asks, why, and where that comes from; `lockerleaf explain` prints it.
#[derive(Debug)]
pub struct Rule {
    /// The rule's name. It is never given to another rule.
    pub id: &'static str,
    /// How much a finding of it weighs.
    pub severity: Severity,
    /// What the rule asks, in one sentence.
    pub asks: &'static str,
    /// Why it asks that.
    pub why: &'static str,
    /// Who says so.
    pub source: &'static str,
    /// What it finds.
    pub wrong: &'static str,
    /// The same, mended.
    pub right: &'static str,
}

/// One finding.
#[derive(Debug, Clone)]
pub struct Diagnostic {
    /// The rule that found it.
    pub rule: &'static Rule,
    /// How much it weighs: as its rule says, unless the book tolerates it.
    pub severity: Severity,
    /// One phrase, lower case, in the author's own words.
    pub message: String,
    /// Where.
    pub span: Option<Span>,
    /// What to say under the span.
    pub label: Option<String>,
    /// A second place that belongs to it, with what to say there.
    pub other: Option<(Span, String)>,
    /// What to do.
    pub help: Vec<String>,
    /// The vans in which it shows, where it takes a van to show.
    pub vans: Vec<String>,
}

impl Diagnostic {
    /// A finding of `rule` at `span`.
    pub fn new(rule: &'static Rule, span: impl Into<Option<Span>>, message: impl Into<String>) -> Self {
        Diagnostic {
            rule,
            severity: rule.severity,
            message: message.into(),
            span: span.into(),
            label: None,
            other: None,
            help: Vec::new(),
            vans: Vec::new(),
        }
    }

    /// With what to say under the span.
    pub fn label(mut self, label: impl Into<String>) -> Self {
        self.label = Some(label.into());
        self
    }

    /// With a second place.
    pub fn other(mut self, span: Span, label: impl Into<String>) -> Self {
        self.other = Some((span, label.into()));
        self
    }

    /// With what to do.
    pub fn help(mut self, help: impl Into<String>) -> Self {
        self.help.push(help.into());
        self
    }

    /// As a warning, whatever its rule says.
    pub fn as_warning(mut self) -> Self {
        self.severity = Severity::Warning;
        self
    }

    /// In this van.
    pub fn van(mut self, van: impl Into<String>) -> Self {
        self.vans.push(van.into());
        self
    }
}

/// The accumulator: each phase adds what it finds and goes on with its best value.
#[derive(Debug, Default)]
pub struct Acc {
    found: Vec<Diagnostic>,
    seen: HashMap<(&'static str, Option<Span>, String), usize>,
}

impl Extend<Diagnostic> for Acc {
    fn extend<T: IntoIterator<Item = Diagnostic>>(&mut self, found: T) {
        found.into_iter().for_each(|diagnostic| self.add(diagnostic));
    }
}

impl Acc {
    /// Adds a finding; the same finding in another van only adds that van.
    pub fn add(&mut self, diagnostic: Diagnostic) {
        let key = (diagnostic.rule.id, diagnostic.span, diagnostic.message.clone());
        match self.seen.get(&key) {
            Some(&at) => {
                for van in diagnostic.vans {
                    if !self.found[at].vans.contains(&van) {
                        self.found[at].vans.push(van);
                    }
                }
            }
            None => {
                self.seen.insert(key, self.found.len());
                self.found.push(diagnostic);
            }
        }
    }

    /// Takes in what another accumulator found.
    pub fn merge(&mut self, other: Acc) {
        for diagnostic in other.found {
            self.add(diagnostic);
        }
    }

    /// Whether anything stops publishing.
    pub fn has_errors(&self) -> bool {
        self.count(Severity::Error) > 0
    }

    /// How many findings there are.
    pub fn len(&self) -> usize {
        self.found.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.found.is_empty()
    }

    /// Whether the rule of that name found anything.
    pub fn has_found(&self, rule: &str) -> bool {
        self.found.iter().any(|d| d.rule.id == rule)
    }

    /// How many findings of this weight there are.
    pub fn count(&self, severity: Severity) -> usize {
        self.found.iter().filter(|d| d.severity == severity).count()
    }

    /// All findings, in the order in which they were found.
    pub fn in_any_order(&self) -> impl Iterator<Item = &Diagnostic> {
        self.found.iter()
    }

    /// All findings, in the order of files and places in them.
    pub fn in_file_order(&self, sources: &Sources) -> Vec<&Diagnostic> {
        let mut all: Vec<_> = self.found.iter().collect();
        let place = |d: &Diagnostic| d.span.map(|s| (sources.get(s.file).path.clone(), s.start));
        all.sort_by_cached_key(|d| (place(d), d.rule.id, d.message.clone()));
        all
    }
}
