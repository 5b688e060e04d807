//! Writes a synthetic book of any size, to measure with. The same arguments give the same bytes.
//!
//! Its texts have the size and the make-up of real ones and no meaning: nobody should read them for advice.

#[path = "synthetic/content.rs"]
mod content;
#[path = "synthetic/dice.rs"]
mod dice;
#[path = "synthetic/kinds.rs"]
mod kinds;
#[path = "synthetic/models.rs"]
mod models;
#[path = "synthetic/module.rs"]
mod module;
#[path = "synthetic/text.rs"]
mod text;
#[path = "synthetic/vans.rs"]
mod vans;

use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::{env, fs, io};

const USAGE: &str = "Writes a synthetic book into FOLDER, which must be empty or not there yet.

usage: synthetic [--vans N] [--modules M] [--pages P] [--seed S] FOLDER

  --vans N     vans, 25 of each model (1000)
  --modules M  kinds of components, 12 or more (60)
  --pages P    pages of each van, about, 24 or more (45)
  --seed S     another seed gives another book of the same size (1)";

/// What is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Size {
    /// Vans.
    vans: u64,
    /// Modules.
    modules: usize,
    /// Pages of each van, about.
    pages: usize,
    /// What the choices depend on.
    seed: u64,
}

fn main() -> ExitCode {
    match arguments(env::args().skip(1)) {
        Ok((size, Some(folder))) => match write(&size, &folder) {
            Ok(told) => {
                println!("{told}");
                ExitCode::SUCCESS
            }
            Err(error) => {
                eprintln!("synthetic: {}: {error}", folder.display());
                ExitCode::from(3)
            }
        },
        // Run with all other benches, and so without a folder, it has nothing to do.
        Ok((_, None)) => {
            println!("{USAGE}");
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("synthetic: {message}\n\n{USAGE}");
            ExitCode::from(2)
        }
    }
}

fn arguments(mut given: impl Iterator<Item = String>) -> Result<(Size, Option<PathBuf>), String> {
    let mut size = Size { vans: 1000, modules: 60, pages: 45, seed: 1 };
    let mut folder = None;
    while let Some(name) = given.next() {
        let mut number = |least: u64| {
            let number = given.next().and_then(|text| text.parse::<u64>().ok()).filter(|number| *number >= least);
            number.ok_or(format!("`{name}` takes a whole number of {least} or more"))
        };
        match name.as_str() {
            // What cargo passes to every bench.
            "--bench" => {}
            "--vans" => size.vans = number(1)?,
            "--modules" => size.modules = number(12)? as usize,
            "--pages" => size.pages = number(24)? as usize,
            "--seed" => size.seed = number(0)?,
            _ if name.starts_with('-') => return Err(format!("there is no option `{name}`")),
            _ if folder.is_none() => folder = Some(PathBuf::from(name)),
            _ => return Err("there is more than one folder".to_string()),
        }
    }
    Ok((size, folder))
}

/// Writes the book, and says what was written.
fn write(size: &Size, folder: &Path) -> io::Result<String> {
    if fs::read_dir(folder).is_ok_and(|mut entries| entries.next().is_some()) {
        return Err(io::Error::other("the folder is not empty"));
    }
    let mut files = content::files();
    let modules = module::all(size);
    files.extend(modules.iter().flat_map(module::Module::files));
    let models = models::all(size, &modules);
    files.extend(models.iter().map(models::Model::file));
    let vans = vans::all(size, &modules, &models);
    let told = told(&files, vans.len(), models.len(), modules.len());
    files.extend(vans);
    for (path, text) in files {
        let path = folder.join(path);
        fs::create_dir_all(path.parent().unwrap_or(folder))?;
        fs::write(path, text)?;
    }
    Ok(told)
}

fn told(files: &[(String, String)], vans: usize, models: usize, modules: usize) -> String {
    let texts = files.iter().filter(|(path, _)| path.ends_with("/text.md"));
    let bytes: usize = texts.map(|(_, text)| text.len()).sum();
    format!("{vans} vans of {models} models, {modules} modules with {} bytes of text each", bytes / modules)
}
