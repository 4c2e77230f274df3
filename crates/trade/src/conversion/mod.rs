//! Moving the driving position to the other side: steering, pedals and hydraulics, cables and pipes.
//!
//! Vehicle axes as ISO 8855: x forward, y to the left, z up; metres and radians. A wheel's steer angle is positive when
//! it turns to the left.

mod cables;
mod direction;
mod linkage;
mod pedals;
mod steering;
mod turning;

pub use cables::{
    Bend, bend_too_tight, capstan_efficiency, lever_travel, matching_lever, pipe_to_cut,
    route_length,
};
pub use direction::{ArmSwing, BallPlace, Steers, steers};
pub use linkage::{Linkage, Shaft, SpringEye};
pub use pedals::{
    bulkhead_load, foot_force, lever_ratio, line_pressure, master_travel, pedal_travel,
    piston_area, piston_force, push_force, slave_travel,
};
pub use steering::{Steering, Swept};
pub use turning::{
    ackermann_error, ground_offset, ideal_outer, kerb_circle, other_wheel, other_wheel_in_front,
    trail,
};
