//! The whole thing in a real browser, as a person would use it.
//!
//! A [`Machine`] is one browser process; a [`Journey`] is a person with a tablet: it taps, types and reads what the
//! page shows. Every journey has a server, and so an origin and an empty store, of its own. The journeys are in
//! [`journeys`].

mod commands;
mod eyes;
mod hands;
pub mod journey;
pub mod journeys;
pub mod look;
mod machine;
mod page_checks;
pub mod paper;
mod scripts;

pub use journey::{Device, Journey};
pub use machine::Machine;

/// A journey fails with one sentence.
pub type Outcome<T = ()> = Result<T, String>;
