//! Moisture: whether the metal is warm enough to stay dry.

use measure::{Kind, Ratio, Temperature};

use super::sources::{DEW_MARGIN, MAGNUS};
use crate::TradeError;

/// How far above the dew point the metal should be, in kelvin (or degrees Celsius: it is a difference).
pub const DEW_MARGIN_KELVIN: f64 = 3.0;

/// Where water begins to settle out of the air.
///
/// `γ = ln φ + a θ / (b + θ)`, `θ_dew = b γ / (a - γ)`, a = 17.62, b = 243.12 °C
///
/// # Units
/// Absolute temperatures; humidity as a pure number.
/// # Valid range
/// Air from -45 to 60 °C, humidity above 0 up to 1.
/// # Errors
/// [`TradeError::OutOfRange`] outside of that.
/// # Source
/// Magnus formula, constants of Sonntag (1990).
/// # Example
/// 30 °C at 55 %: about 20 °C.
pub fn dew_point(air: &Temperature, humidity: &Ratio) -> Result<Temperature, TradeError> {
    if !(228.15..=333.15).contains(&air.value()) {
        return Err(TradeError::OutOfRange {
            entry: "air",
            lowest: 228.15,
            highest: 333.15,
        });
    }
    if !(1e-3..=1.0).contains(&humidity.value()) {
        return Err(TradeError::OutOfRange {
            entry: "humidity",
            lowest: 1e-3,
            highest: 1.0,
        });
    }
    let a = Ratio::constant("a", 17.62, Kind::Ratio, &MAGNUS);
    let b = Temperature::exact(243.12);
    let ice_point = Temperature::exact(273.15);
    let celsius = air - &ice_point;
    let gamma = (humidity.ln() + &a * (&celsius / (&b + &celsius))).called("γ");
    let dew = b * (&gamma / (a - &gamma)) + ice_point;
    Ok(dew
        .called("θ_dew")
        .of_kind(Kind::Temperature)
        .cited(&MAGNUS))
}

/// How warm the metal must be, so that it stays dry while it is painted.
///
/// `θ_least = θ_dew + 3 °C`
///
/// # Units
/// Absolute temperatures.
/// # Source
/// ISO 8502-4.
/// # Example
/// Dew point 20 °C: 23 °C.
#[must_use]
pub fn least_metal_temperature(dew_point: &Temperature) -> Temperature {
    let margin = Temperature::exact(DEW_MARGIN_KELVIN);
    (dew_point + margin)
        .called("θ_least")
        .of_kind(Kind::Temperature)
        .cited(&DEW_MARGIN)
}
