//! Air by height above the sea: pressure, temperature, density.

use measure::{Density, Kind, Length, Pressure, Temperature};

use super::sources;

/// Pressure at sea level, Pa.
pub const SEA_LEVEL_PRESSURE_PA: f64 = 101_325.0;
/// Temperature at sea level, K.
pub const SEA_LEVEL_TEMPERATURE_K: f64 = 288.15;
const LAPSE_K_PER_M: f64 = 0.0065;
const GAS_CONSTANT: f64 = 287.052_87;
const GRAVITY: f64 = 9.806_65;
const EARTH_RADIUS_M: f64 = 6_356_766.0;

/// Standard gravity, m/s².
#[must_use]
pub fn gravity() -> measure::Acceleration {
    static SOURCE: measure::Source = measure::Source {
        title: "SI Brochure, 9th ed.",
        place: "standard acceleration of free fall",
        held: measure::Held::Computed,
    };
    measure::Acceleration::constant("g", GRAVITY, Kind::Acceleration, &SOURCE)
}

fn standard_temperature_k(altitude_m: f64) -> f64 {
    let geopotential = EARTH_RADIUS_M * altitude_m / (EARTH_RADIUS_M + altitude_m);
    SEA_LEVEL_TEMPERATURE_K - LAPSE_K_PER_M * geopotential
}

fn standard_pressure_pa(altitude_m: f64) -> f64 {
    let share = standard_temperature_k(altitude_m) / SEA_LEVEL_TEMPERATURE_K;
    SEA_LEVEL_PRESSURE_PA * share.powf(GRAVITY / (LAPSE_K_PER_M * GAS_CONSTANT))
}

/// The air pressure of the standard atmosphere: p = p0 (T/T0)^(g / L R).
///
/// # Units
/// Pascals.
///
/// # Valid range
/// From 2000 m below to 11000 m above the sea.
///
/// # Source
/// ISO 2533.
///
/// # Example
/// 2000 m: 0.7950 bar.
#[must_use]
pub fn air_pressure(altitude: &Length) -> Pressure {
    Pressure::tabled("standard pressure", &[altitude], |x| {
        standard_pressure_pa(x[0])
    })
    .of_kind(Kind::Pressure)
    .cited(&sources::ATMOSPHERE)
    .called("p")
}

/// The air temperature of the standard atmosphere.
///
/// # Source
/// ISO 2533.
#[must_use]
pub fn standard_temperature(altitude: &Length) -> Temperature {
    Temperature::tabled("standard temperature", &[altitude], |x| {
        standard_temperature_k(x[0])
    })
    .of_kind(Kind::Temperature)
    .cited(&sources::ATMOSPHERE)
    .called("T")
}

/// The density of dry air: p / (R T).
///
/// # Units
/// Kilograms per cubic metre.
///
/// # Source
/// ISO 2533.
#[must_use]
pub fn air_density(pressure: &Pressure, temperature: &Temperature) -> Density {
    Density::tabled("density of dry air", &[pressure, temperature], |x| {
        x[0] / (GAS_CONSTANT * x[1])
    })
    .of_kind(Kind::AirDensity)
    .cited(&sources::ATMOSPHERE)
    .called("ρ")
}
