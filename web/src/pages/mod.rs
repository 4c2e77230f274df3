//! The pages, a file each. They are made from widgets only and hold no arithmetic.

mod plain;
mod questions;
mod settings;
mod vehicle;

pub use plain::Plain;
pub use questions::Questions;
pub use settings::SettingsPage;
pub use vehicle::Vehicle;
