//! The pages, a file each. They are made from widgets only and hold no arithmetic.

mod books;
mod conversion;
mod costs;
mod final_drive;
mod gearing;
mod handover;
mod marking;
mod pack;
mod paint;
mod questions;
mod received;
mod send;
mod settings;
mod springs;
mod tick_off;
mod tightening;
mod torque;
mod vehicle;

pub use books::Books;
pub use conversion::Conversion;
pub use costs::Costs;
pub use final_drive::FinalDrive;
pub use gearing::Gearing;
pub use handover::Handover;
pub use marking::Marking;
pub use pack::PackPage;
pub use paint::Paint;
pub use questions::Questions;
pub use received::ReceivedLink;
pub use send::Send;
pub use settings::SettingsPage;
pub use springs::Springs;
pub use tick_off::TickOff;
pub use torque::Torque;
pub use vehicle::Vehicle;
