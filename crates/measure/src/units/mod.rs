//! The units, a file a quantity. Every factor is an expression from the published definitions: the SI Brochure (BIPM, 9th
//! edition 2019) and NIST SP 811 (2008 edition, appendix B); the tests compare each one with a figure from outside.

pub mod acceleration;
pub mod angle;
pub mod area;
pub mod density;
pub mod energy;
pub mod flow;
pub mod force;
pub mod inertia;
pub mod length;
pub mod mass;
pub mod power;
pub mod power_to_mass;
pub mod pressure;
pub mod ratio;
pub mod rotation;
pub mod section;
pub mod speed;
pub mod spreading_rate;
pub mod spring_rate;
pub mod temperature;
pub mod time;
pub mod torque;
pub mod turns_per_distance;
pub mod volume;
