//! Leaf springs: rate, stress, height, and what may be done to them.
//!
//! A [`Pack`] of [`Leaf`]s gives its rate by the handbook ([`load_line`]) and by a beam worked leaf by leaf ([`Beam`]), and
//! on the press ([`press_test`]). A load on it gives the stress in each leaf, the arch that is left, and with the
//! [`Seat`] the height at which the frame comes to stand.

mod arch;
mod beam;
mod change;
mod contact;
pub mod defaults;
mod handbook;
mod height;
mod leaf;
mod load;
mod press;
mod shape;
pub mod source;

#[cfg(test)]
mod tests;

pub use arch::{arch_of_camber, camber, camber_of_curve, eye_to_eye, loose_curvature};
pub use beam::{Beam, tight_rate};
pub use change::{as_new, block_for, free_arch_for, leaf_thickness_for, with_leaf, without_leaf};
pub use handbook::{
    Bending, HelperStep, LEAF_NAMES, LeafEnds, LoadLine, even_nip, even_nip_bolt_pull,
    load_at_stress, load_line, nip_stress, rate_of, stiffening_factor, unclamped_rate,
};
pub use height::{
    Mounting, Seat, Shackle, lean_across, loaded_arch, rake, seat_turn, shackle_lean,
};
pub use leaf::{Leaf, LeafKind, Pack, SeatRule, dead_length};
pub use load::{friction_height, gravity, natural_frequency, spring_load};
pub use press::{Going, PressPoint, PressTest, press_test, ram_area, ram_load};
pub use shape::{LeafShape, SpringLie, SpringShape};
