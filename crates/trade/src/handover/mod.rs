//! Handing over: brake tests, toe as measured, how old a tyre is, and when to look again.

mod again;
mod brakes;
mod date_code;

pub use again::{due_after, due_at};
pub use brakes::{brake_efficiency, brake_imbalance, toe_in};
pub use date_code::DateCode;
