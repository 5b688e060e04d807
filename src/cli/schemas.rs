//! `lockerleaf schemas`: JSON Schemas of the files that people write.

use super::Outcome;
use crate::error::Error;
use crate::model::files;
use crate::render::Artifact;
use crate::write::write;
use clap::Args;
use std::path::PathBuf;

/// Writes the JSON Schemas of all fact files, for editors
#[derive(Args)]
pub(super) struct Schemas {
    /// Where they go
    #[arg(value_name = "FOLDER", default_value = "schemas")]
    folder: PathBuf,
}

pub(super) fn run(command: &Schemas) -> Result<Outcome, Error> {
    let schemas = files::schemas();
    let file = |(name, schema): &(&str, serde_json::Value)| {
        Artifact::text(format!("{name}.schema.json"), format!("{schema:#}\n"))
    };
    let artifacts: Vec<_> = schemas.iter().map(file).collect();
    write(&command.folder, &artifacts)?;
    for artifact in &artifacts {
        say!("{}", command.folder.join(&artifact.path).display());
    }
    Ok(Outcome::Done)
}
