//! `lockerleaf book-in`: a manifest for a new van, with a key of its own.

use super::Outcome;
use super::shared::{Shared, show};
use crate::book_in::{Fits, New, book_in, free_name};
use crate::diag::suggest;
use crate::error::Error;
use crate::model::book::Model;
use crate::model::files::forms::is_id;
use clap::Args;
use std::io::{BufRead, IsTerminal, Write};

/// Makes the manifest of a new van, with a new key; asks what it needs when it is run by hand
#[derive(Args)]
pub(super) struct BookIn {
    /// The model: a folder of `models/`
    #[arg(value_name = "MODEL")]
    model: String,
    /// What the manifest is called: small letters, digits and hyphens
    #[arg(value_name = "NAME")]
    name: Option<String>,
    /// The year the van was built
    #[arg(long)]
    year: Option<u32>,
    /// The dealer's stock number; it is never published
    #[arg(long, value_name = "NUMBER")]
    stock: Option<String>,
    /// What readers call the van, such as its make, model and colour; no owner's name
    #[arg(long, value_name = "WORDS")]
    title: Option<String>,
    /// A fit of the model that this van lacks; more than one may be given
    #[arg(long, value_name = "FIT")]
    without: Vec<String>,
    /// Ask nothing, even on a terminal
    #[arg(long)]
    no_questions: bool,
}

pub(super) fn run(command: &BookIn, shared: &Shared) -> Result<Outcome, Error> {
    let root = match shared.root() {
        Ok(root) => root,
        Err(outcome) => return Ok(outcome),
    };
    let before = shared.look(root.clone())?;
    let models = &before.book.models;
    let Some(model) = models.iter().find(|model| model.name == command.model) else {
        let known = models.iter().map(|model| model.name.as_str());
        eprintln!(
            "lockerleaf: there is no model `{}`; {}",
            command.model,
            suggest::did_you_mean(&command.model, known)
        );
        return Ok(Outcome::Usage);
    };
    let new = match asked(command, model) {
        Ok(new) => new,
        Err(wrong) => {
            eprintln!("lockerleaf: {wrong}");
            return Ok(Outcome::Usage);
        }
    };
    let booked = book_in(&root, &before.book, &before.vans, &new)?;
    say!("{} has the key {}", booked.path.display(), booked.key);
    let after = shared.look(root)?;
    show(&after);
    match after.acc.has_errors() {
        true => {
            eprintln!("the manifest is there; mend what is said above before labels are printed");
            Ok(Outcome::Problems)
        }
        false => {
            say!("nothing is missing; its guide will be at {}/{}/", after.book.settings.address, booked.key);
            Ok(Outcome::Done)
        }
    }
}

/// What the command line says, and what the person at the terminal adds.
fn asked(command: &BookIn, model: &Model) -> Result<New, String> {
    let by_hand = !command.no_questions && std::io::stdin().is_terminal() && std::io::stdout().is_terminal();
    let ask = |question: &str| if by_hand { answer(question) } else { None };
    let free = free_name(model);
    let name = command.name.clone().or_else(|| ask(&format!("Name of the manifest [{free}]"))).unwrap_or(free);
    if !is_id(&name) || name == "model" {
        return Err(format!("`{name}` cannot be the name of a manifest; use small letters, digits and single hyphens"));
    }
    if model.vans.iter().any(|van| van.name == name) {
        return Err(format!("there is a van `{}/{name}` already; give this one another name", model.name));
    }
    let year = match command.year {
        Some(year) => Some(year),
        None => match ask("Year it was built") {
            Some(text) => Some(text.parse().map_err(|_| format!("`{text}` is not a year; write it as 2019"))?),
            None => None,
        },
    };
    let stock = command.stock.clone().or_else(|| ask("Stock number (never published)"));
    let title = command.title.clone().or_else(|| ask(&format!("What readers call it [{}]", model.facts.title.value)));
    let fits = Fits::of(model);
    let mut without = command.without.clone();
    if without.is_empty() {
        let words = ask(&format!("Which of these does it lack? {} [none]", fits.names().join(", ")));
        without = words
            .iter()
            .flat_map(|words| words.split([' ', ',']))
            .filter(|word| !word.is_empty())
            .map(str::to_string)
            .collect();
    }
    if let Some(unknown) = without.iter().find(|name| !fits.names().contains(&name.as_str())) {
        let names = fits.names();
        return Err(format!(
            "`{}` has no fit `{unknown}`; {}",
            model.name,
            suggest::did_you_mean(unknown, names.iter().copied())
        ));
    }
    Ok(New { model: model.name.clone(), name, year, stock, title, without })
}

/// What a person answers; nothing for an empty line.
fn answer(question: &str) -> Option<String> {
    let mut out = std::io::stdout();
    let _ = write!(out, "{question}: ").and_then(|()| out.flush());
    let mut line = String::new();
    std::io::stdin().lock().read_line(&mut line).ok()?;
    Some(line.trim().to_string()).filter(|line| !line.is_empty())
}
