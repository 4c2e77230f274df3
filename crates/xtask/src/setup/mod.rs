//! Sets up what is missing, and only that: the wasm target, the build tools, a browser, the reference libraries.

mod axe;
mod browser;
mod build_tools;
mod debian;
mod reference_libraries;

pub use axe::axe;
pub use browser::{Browser, browser};
pub use build_tools::{Toolbox, WASM_BINDGEN, build_tools, wasm_opt, wasm_target};
pub use reference_libraries::reference_libraries;
