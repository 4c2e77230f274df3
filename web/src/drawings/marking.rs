//! The pattern on the vehicle's own outline: dashed where it was, filled where it goes, and the arcs that place one feature.

mod ground;
mod names;
mod pattern;

pub use pattern::{PATTERN, looks_at};
