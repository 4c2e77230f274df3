//! The pages, a file each. They are made from widgets only and hold no arithmetic.

mod costs;
mod gearing;
mod paint;
mod plain;
mod questions;
mod settings;
mod springs;
mod vehicle;

pub use costs::Costs;
pub use gearing::Gearing;
pub use paint::Paint;
pub use questions::Questions;
pub use settings::SettingsPage;
pub use springs::Springs;
pub use vehicle::Vehicle;
