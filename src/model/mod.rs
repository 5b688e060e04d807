//! The types that flow from phase to phase.

pub mod book;
pub mod colour;
pub mod expected;
pub mod files;
pub mod guide;
pub mod inputs;
pub mod photo;
pub mod phrases;
pub mod quantity;
pub mod search;
pub mod sheet;
pub mod source;
pub mod sums;
pub mod text;
pub mod van;
