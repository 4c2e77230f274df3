//! Gearing: from tyre and teeth to speeds, hills, top speed, speedometer and propeller shaft.

mod acceleration;
mod air;
mod atmosphere;
mod effort;
mod engine;
mod grip;
mod hill;
mod lines;
mod pchip;
mod road_load;
mod shaft;
pub mod sources;
mod speedometer;
mod speeds;
mod teeth;
#[cfg(test)]
mod tests;
mod tooth_pairs;
mod top_speed;
mod tyre;
mod usual;

pub use acceleration::*;
pub use air::*;
pub use atmosphere::*;
pub use effort::*;
pub use engine::*;
pub use grip::*;
pub use hill::*;
pub use lines::*;
pub use pchip::Pchip;
pub use road_load::*;
pub use shaft::*;
pub use speedometer::*;
pub use speeds::*;
pub use teeth::*;
pub use tooth_pairs::*;
pub use top_speed::*;
pub use tyre::*;
pub use usual::*;
