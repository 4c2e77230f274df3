//! The speed at which a propeller shaft whirls.

use core::f64::consts::PI;

use measure::{Density, Kind, Length, Pressure, Rotation};

use super::sources;

/// Young's modulus of steel tube, Pa.
pub const STEEL_YOUNGS_MODULUS_PA: f64 = 206e9;
/// Density of steel, kg/m³.
pub const STEEL_DENSITY_KG_M3: f64 = 7850.0;

/// The share of the critical speed that a shaft should stay below.
///
/// # Source
/// Common practice, no source.
pub const SAFE_SHARE_OF_CRITICAL: f64 = 0.7;

/// The first critical speed of a steel tube between joints: (pi/8) sqrt(E/rho) sqrt(D² + d²) / L².
///
/// # Units
/// Turns per second.
///
/// # Valid range
/// Thin against its length, joints that hold it like pins; soft mountings bring it lower.
///
/// # Source
/// Euler-Bernoulli beam on pinned ends.
///
/// # Example
/// 76.2 mm outside, 72.9 mm bore, 1500 mm: 5657 rpm.
#[must_use]
pub fn shaft_critical_speed(outside: &Length, bore: &Length, length: &Length) -> Rotation {
    let youngs = Pressure::constant("E", STEEL_YOUNGS_MODULUS_PA, Kind::Stress, &sources::WHIRL);
    let density = Density::constant("ρ_s", STEEL_DENSITY_KG_M3, Kind::Density, &sources::WHIRL);
    let round = (outside.squared() + bore.squared()).sqrt();
    (PI / 8.0 * (youngs / density).sqrt() * round / length.squared())
        .of_kind(Kind::Rotation)
        .cited(&sources::WHIRL)
        .called("n_c")
}
