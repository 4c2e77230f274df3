//! Sheet and wire gauges: numbers that stand for a thickness.

use crate::unit::INCH;

/// A numbered series of thicknesses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Gauge {
    /// British Standard Wire Gauge, `SWG`.
    ///
    /// # Source
    /// BS 3737:1964 (withdrawn); the series of the Order in Council of 1883.
    StandardWire,
    /// Manufacturers' Standard Gauge for steel sheet, United States, `ga`.
    ///
    /// # Source
    /// Weights in ounces per square foot of 15 U.S.C. § 206, turned into thickness with 41.82 lb/ft² for each inch.
    ManufacturersStandard,
}

/// SWG from 7/0 to 50, in ten-thousandths of an inch.
const STANDARD_WIRE: [u16; 57] = [
    5000, 4640, 4320, 4000, 3720, 3480, 3240, // 7/0 to 0
    3000, 2760, 2520, 2320, 2120, 1920, 1760, 1600, 1440, 1280, // 1 to 10
    1160, 1040, 920, 800, 720, 640, 560, 480, 400, 360, // 11 to 20
    320, 280, 240, 220, 200, 180, 164, 148, 136, 124, // 21 to 30
    116, 108, 100, 92, 84, 76, 68, 60, 52, 48, // 31 to 40
    44, 40, 36, 32, 28, 24, 20, 16, 12, 10, // 41 to 50
];

/// Ounces per square foot of US gauges 3 to 38, in quarter ounces.
const STATUTE_QUARTER_OUNCES: [u16; 36] = [
    640, 600, 560, 520, 480, 440, 400, 360, // 3 to 10
    320, 280, 240, 200, 180, 160, 144, 128, 112, 96, // 11 to 20
    88, 80, 72, 64, 56, 48, 44, 40, 36, 32, // 21 to 30
    28, 26, 24, 22, 20, 18, 17, 16, // 31 to 38
];

/// Weight of one square foot of steel sheet an inch thick, in pounds, by which the Manufacturers' Standard is reckoned.
const POUNDS_PER_SQUARE_FOOT_INCH: f64 = 41.82;

/// What sheet sold by a gauge number may differ from it, as a share: rolling tolerance, common practice, no source.
pub(super) const GAUGE_SCATTER: f64 = 0.08;

impl Gauge {
    /// How the gauge is written behind its number.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::StandardWire => "SWG",
            Self::ManufacturersStandard => "ga",
        }
    }

    /// The thickness in metres of a gauge number; `7/0` is -6, `2/0` is -1.
    #[must_use]
    pub fn thickness(self, number: i32) -> Option<f64> {
        let inches = match self {
            Self::StandardWire => {
                let place = usize::try_from(number.checked_add(6)?).ok()?;
                f64::from(*STANDARD_WIRE.get(place)?) / 10_000.0
            }
            Self::ManufacturersStandard => {
                let place = usize::try_from(number.checked_sub(3)?).ok()?;
                let ounces = f64::from(*STATUTE_QUARTER_OUNCES.get(place)?) / 4.0;
                ounces / 16.0 / POUNDS_PER_SQUARE_FOOT_INCH
            }
        };
        Some(inches * INCH.factor)
    }
}
