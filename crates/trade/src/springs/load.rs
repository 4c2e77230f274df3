//! What a spring carries, how it swings, and what friction hides.

use measure::{Acceleration, Force, Frequency, Kind, Length, Mass, Ratio, SpringRate};

use super::source;

/// Standard acceleration of free fall.
#[must_use]
pub fn gravity() -> Acceleration {
    Acceleration::constant("g", 9.806_65, Kind::Acceleration, &source::STANDARD_GRAVITY)
}

/// Load on one spring: its share of what the axle carries, less what rides below the springs.
///
/// F = (axle load - unsprung mass) × share × g
///
/// # Units
/// Kilograms; newtons.
/// # Valid range
/// Share one half unless the sides were weighed apart.
/// # Errors
/// None.
/// # Source
/// Definition; standard gravity.
#[must_use]
pub fn spring_load(axle_load: &Mass, unsprung: &Mass, share: &Ratio) -> Force {
    ((axle_load - unsprung) * share * gravity())
        .of_kind(Kind::Force)
        .called("F")
}

/// Natural frequency of the mass that the spring carries.
///
/// f = √(k g / F) / 2π
///
/// # Units
/// Newtons per metre, newtons; swings per second.
/// # Valid range
/// Tyre left out; friction not sticking.
/// # Errors
/// None.
/// # Source
/// Bevan, The Theory of Machines, chapter 15.
/// # Example
/// 50 lbf on 100 lbf/in: 4.42 Hz.
#[must_use]
pub fn natural_frequency(rate: &SpringRate, load: &Force) -> Frequency {
    ((rate * gravity() / load).sqrt() / core::f64::consts::TAU)
        .of_kind(Kind::Frequency)
        .cited(&source::VIBRATION)
        .called("f")
}

/// How far up or down of its even height friction can hold the spring.
///
/// s = friction × F / k
///
/// # Units
/// Metres.
/// # Valid range
/// Friction as a share of the load, half of the band between load going up and coming off.
/// # Errors
/// None.
/// # Source
/// Definition.
#[must_use]
pub fn friction_height(friction: &Ratio, load: &Force, rate: &SpringRate) -> Length {
    (load * friction / rate).of_kind(Kind::Length).called("s_f")
}
