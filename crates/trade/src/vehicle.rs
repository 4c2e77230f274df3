//! What the vehicle itself comes to: loads on its axles, its engine's swept volume.

use core::f64::consts::PI;

use measure::{Area, Length, Mass, Power, PowerToMass, Ratio, Rotation, Speed, Torque, Volume};

/// The share of the whole mass that stands on the front axle.
///
/// `s = m_f / (m_f + m_r)`
///
/// # Units
/// Masses in kilograms, the share as a plain number.
/// # Valid range
/// A whole mass above zero.
/// # Source
/// The definition.
#[must_use]
pub fn front_share(front: &Mass, rear: &Mass) -> Ratio {
    (front / (front + rear)).called("s_f")
}

/// How far the centre of gravity lies behind the front axle.
///
/// `x = l m_r / (m_f + m_r)`
///
/// # Units
/// Lengths in metres, masses in kilograms.
/// # Valid range
/// On level ground; a whole mass above zero.
/// # Source
/// Balance of moments about the front axle (elementary statics).
#[must_use]
pub fn centre_behind_front_axle(front: &Mass, rear: &Mass, wheelbase: &Length) -> Length {
    (wheelbase * rear / (front + rear)).called("x_g")
}

/// What a load on the bed puts on the front axle.
///
/// `m_f = m a / l`, with a the distance of the load's centre ahead of the rear axle.
///
/// # Units
/// Masses in kilograms, lengths in metres.
/// # Valid range
/// On level ground. A load behind the rear axle (a below zero) takes load off the front.
/// # Source
/// Balance of moments about the rear axle (elementary statics).
#[must_use]
pub fn load_on_front_axle(load: &Mass, ahead_of_rear_axle: &Length, wheelbase: &Length) -> Mass {
    (load * ahead_of_rear_axle / wheelbase).called("m_pf")
}

/// The load on the bed that brings an axle to its limit, when a share of each kilogram rests on that axle.
///
/// `m = (m_limit - m_unladen) / s`
///
/// # Units
/// Masses in kilograms, the share as a plain number.
/// # Valid range
/// A share above zero: an axle that the load does not rest on sets no limit.
/// # Source
/// Balance of moments, as [`load_on_front_axle`].
#[must_use]
pub fn load_to_axle_limit(limit: &Mass, unladen: &Mass, share: &Ratio) -> Mass {
    (limit - unladen) / share
}

/// The swept volume of the engine.
///
/// `V = π/4 b² h z`
///
/// # Units
/// Bore and stroke in metres, the volume in cubic metres.
/// # Source
/// The volume of a cylinder.
#[must_use]
pub fn swept_volume(bore: &Length, stroke: &Length, cylinders: &Ratio) -> Volume {
    (bore.squared() * stroke * cylinders * (PI / 4.0)).called("V_h")
}

/// The mean speed of the pistons.
///
/// `v = 2 h n`
///
/// # Units
/// Stroke in metres, n in turns per second, the speed in metres per second.
/// # Source
/// The definition: two strokes a turn.
#[must_use]
pub fn mean_piston_speed(stroke: &Length, engine_speed: &Rotation) -> Speed {
    (stroke * engine_speed * 2.0).called("v_p")
}

/// The torque that gives a power at a rotational speed.
///
/// `M = P / (2 π n)`
///
/// # Units
/// Power in watts, n in turns per second, torque in newton metres.
/// # Valid range
/// A speed above zero.
/// # Source
/// The definition of power.
#[must_use]
pub fn torque_at_power(power: &Power, engine_speed: &Rotation) -> Torque {
    (power / (engine_speed * (2.0 * PI))).called("M_P")
}

/// The engine's greatest power for each unit of the vehicle's mass.
///
/// `P_m = P / m`
///
/// # Units
/// Power in watts, mass in kilograms, the quotient in watts per kilogram, which are kilowatts per tonne.
/// # Valid range
/// A mass above zero.
/// # Source
/// The definition.
#[must_use]
pub fn power_to_mass(power: &Power, mass: &Mass) -> PowerToMass {
    (power / mass).called("P_m")
}

/// The area that the vehicle shows to the wind: a share of its width by its height.
///
/// `A = f w h`
///
/// # Units
/// Lengths in metres, the area in square metres.
/// # Source
/// Common practice, no source, for the share (0.85 for a lorry with a cab).
#[must_use]
pub fn frontal_area(share: &Ratio, width: &Length, height: &Length) -> Area {
    (share * width * height).called("A")
}
