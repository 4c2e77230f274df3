//! Tightening: threads, strengths, torque and clamp load, wrenches and the order of work.
//!
//! The vehicle maker's figure always comes first. A computed figure is for a joint on which the manual is silent, says
//! that it is computed, and is refused for steering, brakes and wheel fixings.

mod order;
mod preload;
mod sizes;
mod strength;
mod thread;
mod wrench;

pub use order::{circle_order, rectangle_order};
pub use preload::{
    Female, Friction, Head, Joint, Purpose, Scatter, Tightening, clamp_load_of, flange_face,
    least_engagement, tightening,
};
pub use sizes::{ThreadSize, size, sizes};
pub use strength::{Grade, grade, grades};
pub use thread::{Form, Thread};
pub use wrench::{
    WrenchClass, WrenchKind, extension_setting, in_range, stages, with_prevailing, wrench_error,
    wrench_for,
};
