//! `lockerleaf explain`: what a rule asks, why, and its source.

use super::Outcome;
use crate::check;
use crate::diag::{Rule, Severity, suggest};
use crate::error::Error;
use clap::Args;

/// Says what a rule asks, why, and who says so; without a rule lists them all
#[derive(Args)]
pub(super) struct Explain {
    /// The rule, as it stands in square brackets after `error` or `warning`
    #[arg(value_name = "RULE")]
    rule: Option<String>,
}

pub(super) fn run(command: &Explain) -> Result<Outcome, Error> {
    let rules = check::rules();
    let Some(name) = &command.rule else {
        for rule in rules {
            say!("{:<22} {}", rule.id, rule.asks);
        }
        return Ok(Outcome::Done);
    };
    match rules.iter().find(|rule| rule.id == name) {
        Some(rule) => {
            say!("{}", explanation(rule));
            Ok(Outcome::Done)
        }
        None => {
            eprintln!(
                "lockerleaf: there is no rule `{name}`; {}",
                suggest::did_you_mean(name, rules.iter().map(|rule| rule.id))
            );
            Ok(Outcome::Usage)
        }
    }
}

fn explanation(rule: &Rule) -> String {
    let severity = match rule.severity {
        Severity::Error => "an error: nothing is published while it stands",
        Severity::Warning => "a warning: worth a look, stops nothing",
    };
    let indent = |text: &str| text.lines().map(|line| format!("    {line}")).collect::<Vec<_>>().join("\n");
    format!(
        "{} is {severity}\n\nWhat it asks\n{}\n\nWhy\n{}\n\nSource\n{}\n\nWrong\n{}\n\nRight\n{}",
        rule.id,
        indent(rule.asks),
        indent(rule.why),
        indent(rule.source),
        indent(rule.wrong),
        indent(rule.right)
    )
}
