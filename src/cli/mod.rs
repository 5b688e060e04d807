//! The commands: one file each. Exit 0 done, 1 the book has problems, 2 wrong usage, 3 the machine failed.

/// Says something to whoever reads the output; when nobody does any more, that is no failure.
macro_rules! say {
    ($($words:tt)*) => {{
        use std::io::Write;
        let _ = writeln!(std::io::stdout(), $($words)*);
    }};
}

mod assemble;
mod book_in;
mod due;
mod explain;
mod inspect;
mod print;
mod publish;
mod schemas;
mod shared;

use clap::{Parser, Subcommand};
use shared::Shared;
use std::process::ExitCode;

/// Owner guides for campervans, motorhomes and caravans: one for each vehicle, assembled from component modules.
#[derive(Parser)]
#[command(version, about)]
struct Arguments {
    #[command(subcommand)]
    command: Option<Command>,
    #[command(flatten)]
    shared: Shared,
}

#[derive(Subcommand)]
enum Command {
    Assemble(assemble::Assemble),
    Inspect(inspect::Inspect),
    Due(due::Due),
    Explain(explain::Explain),
    BookIn(book_in::BookIn),
    Publish(publish::Publish),
    Print(print::Print),
    Schemas(schemas::Schemas),
}

/// What a command ends with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// Done.
    Done = 0,
    /// The book has problems.
    Problems = 1,
    /// The command was used wrongly.
    Usage = 2,
}

/// The exit code when disk, rights or network failed.
const MACHINE: u8 = 3;

/// Runs the command of the command line.
pub fn run() -> ExitCode {
    let arguments = Arguments::parse();
    let shared = &arguments.shared;
    let outcome = match &arguments.command {
        None => assemble::run(&assemble::Assemble::default(), shared),
        Some(Command::Assemble(command)) => assemble::run(command, shared),
        Some(Command::Inspect(command)) => inspect::run(command, shared),
        Some(Command::Due(command)) => due::run(command, shared),
        Some(Command::Explain(command)) => explain::run(command),
        Some(Command::BookIn(command)) => book_in::run(command, shared),
        Some(Command::Publish(command)) => publish::run(command, shared),
        Some(Command::Print(command)) => print::run(command, shared),
        Some(Command::Schemas(command)) => schemas::run(command),
    };
    match outcome {
        Ok(outcome) => ExitCode::from(outcome as u8),
        Err(error) => {
            eprintln!("lockerleaf: {error}");
            ExitCode::from(MACHINE)
        }
    }
}
