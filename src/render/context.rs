//! What templates are given: plain data, and HTML where a name ends in `html`.

mod figures;
mod pages;
mod pieces;
mod shell;

pub use figures::*;
pub use pages::*;
pub use pieces::*;
pub use shell::*;
