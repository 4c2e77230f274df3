//! The project's own commands: set-up, serve, test, check, bench and build; and the house rules.
//!
//! The server is used by the browser tests too, so that they meet the release as it is served.

pub mod bundle;
pub mod commands;
pub mod places;
pub mod rules;
pub mod server;
pub mod setup;
pub mod steps;
pub mod styles;
pub mod text_files;

/// Everything here fails with one sentence for the person at the keyboard.
pub type Outcome<T = ()> = Result<T, String>;
