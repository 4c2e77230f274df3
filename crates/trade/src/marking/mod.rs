//! Marking out: holes found by tape and trammel, moved to the other side, and set out there.
//!
//! Everything lies on one flat: x along the line from the first datum to the second, y to the left of it as one looks
//! from the first to the second. A pattern is taken off ([`frame`], [`fix`]), moved ([`mirror_line`], [`rigid_fit`],
//! [`Move`]) and set out again ([`arcs`], [`land_between`], [`drill_schedule`]); what is left behind is closed ([`plate`], [`swap`]).

mod apart;
mod fit;
mod fix;
mod frame;
mod hole;
mod mirror;
mod normal;
mod outline;
mod patch;
mod point;
mod schedule;
mod setting_out;
mod shape;
mod worst;

pub use apart::{
    Body, land_between, land_to_edge, left_between, left_to_edge, usual_edge, usual_land,
};
pub use fit::{Fit, Move, rigid_fit};
pub use fix::{Check, Ellipse, Fix, Sight, datum_deviation_m, error_ellipse, fix, fix_from};
pub use frame::{Side, frame};
pub use hole::{
    Circle, Reach, arc_over_chord, centre_distance, chord_of_arc, circle_through, slanted_length,
};
pub use mirror::{MirrorLine, mirror_line, mirrored};
pub use outline::{Arc, Corner, Outline, Piece};
pub use patch::{Patch, Plate, Swap, patch, plate, slug_diameter, swap};
pub use point::Point;
pub use schedule::{Step, Tool, drill_schedule, round_tool};
pub use setting_out::{Land, LandVerdict, arcs, judged, land, offsets, swing};
pub use shape::{Form, Placed, Shape};
pub use worst::{Series, bolt_through, clearance_hole, tolerated, worst_error};
