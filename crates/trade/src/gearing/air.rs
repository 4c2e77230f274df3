//! What thin or hot air takes from an engine.

use measure::{Kind, Pressure, Ratio, Temperature};

use super::sources;

/// How an engine draws its air and fuel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Breathing {
    /// Petrol, unblown: loses power with density.
    Spark,
    /// Diesel, unblown: loses less.
    Diesel,
    /// Blown: the loss is small enough to leave out at road heights.
    Blown,
}

/// The share of rated torque that an engine gives in the air it has.
///
/// Petrol: 1 / (1.18 (p0/p) sqrt(T/T0) - 0.18), the correction factor of the test code turned over, with the reference
/// state of the rating. Diesel, unblown: ((p/p0) (T0/T)^0.7)^0.7. Blown: 1.
///
/// # Units
/// A share.
///
/// # Valid range
/// 0.6 to 1.1 bar, -30 to 50 °C.
///
/// # Source
/// SAE J1349 (June 1990); ISO 1585 for diesels (from memory).
#[must_use]
pub fn engine_air_factor(
    breathing: Breathing,
    pressure: &Pressure,
    temperature: &Temperature,
    reference: &RatingState,
) -> Ratio {
    let p0 = Pressure::exact(reference.pressure_pa);
    let t0 = Temperature::exact(reference.temperature_k);
    match breathing {
        Breathing::Spark => {
            let correction = 1.18 * (p0 / pressure) * (temperature / t0).sqrt() - 0.18;
            (1.0 / correction)
                .of_kind(Kind::Ratio)
                .cited(&sources::SPARK_AIR)
                .called("k_a")
        }
        Breathing::Diesel => {
            let state = (pressure / p0) * (t0 / temperature).powf(0.7);
            state
                .powf(0.7)
                .of_kind(Kind::Ratio)
                .cited(&sources::DIESEL_AIR)
                .called("k_a")
        }
        Breathing::Blown => Ratio::exact(1.0).of_kind(Kind::Ratio),
    }
}

/// The state of the air that a rating is stated for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatingState {
    /// Dry pressure, Pa.
    pub pressure_pa: f64,
    /// Temperature, K.
    pub temperature_k: f64,
}

/// How an engine's torque and power were stated: they differ by what hung on the engine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rating {
    /// As fitted, all ancillaries on: DIN 70020 and the European rating since.
    Din,
    /// As fitted: SAE net.
    SaeNet,
    /// Bare engine on the bench: SAE gross, about a fifth too much.
    SaeGross,
}

impl Rating {
    /// The state of the air at the test.
    ///
    /// # Source
    /// DIN 70020 (1013 mbar, 20 °C) and SAE J1349 (990 mbar, 25 °C), seen at dynomitedyno.com; SAE gross (J245: 29.38 inHg,
    /// 85 °F) from memory.
    #[must_use]
    pub fn state(self) -> RatingState {
        let (pressure_pa, temperature_k) = match self {
            Self::Din => (101_325.0, 293.15),
            Self::SaeNet => (99_000.0, 298.15),
            Self::SaeGross => (99_500.0, 302.6),
        };
        RatingState {
            pressure_pa,
            temperature_k,
        }
    }

    /// The share of stated torque that the engine gives as fitted, and how far that can be off (95 %).
    ///
    /// # Source
    /// Common practice, no source: gross figures lie 15 to 25 % above those of the same engine as fitted.
    #[must_use]
    pub fn share(self) -> (f64, f64) {
        match self {
            Self::Din | Self::SaeNet => (1.0, 0.05),
            Self::SaeGross => (0.80, 0.06),
        }
    }
}
