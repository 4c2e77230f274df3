//! The calculations of the trade, one module a subject: pure, and knowing no document, storage or browser.

pub mod conversion;
pub mod costs;
mod error;
pub mod final_drive;
pub mod gearing;
pub mod handover;
pub mod marking;
pub mod paint;
pub mod springs;
pub mod torque;
pub mod vehicle;

pub use error::TradeError;
