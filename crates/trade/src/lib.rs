//! The calculations of the trade, one module a subject: pure, and knowing no document, storage or browser.

mod error;
pub mod costs;
pub mod gearing;
pub mod paint;
pub mod springs;

pub use error::TradeError;
