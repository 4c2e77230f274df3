//! The wrench: settings with an extension, its range and class, stages, prevailing torque.

use measure::{Angle, Held, Kind, Length, Source, Torque};

use crate::TradeError;

static LEVER: Source = Source {
    title: "Statics: the lever of a torque wrench with an extension",
    place: "setting = T L / (L + A cos a)",
    held: Held::Seen,
};

/// The setting of a wrench that carries an extension at an angle: T L / (L + A cos a); in line at nothing, none at a right angle.
///
/// # Units
/// Newton metres, metres, radians.
///
/// # Valid range
/// From straight ahead to a right angle; the hand on the middle of the grip.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a wrench of no length, or an angle beyond a right angle.
///
/// # Source
/// Statics.
///
/// # Example
/// 20 lbf·ft, 12 in wrench, 3 in in line: 16 lbf·ft.
pub fn extension_setting(
    wanted: &Torque,
    wrench: &Length,
    extension: &Length,
    angle: &Angle,
) -> Result<Torque, TradeError> {
    if wrench.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "wrench length",
            lowest: 0.05,
            highest: 2.0,
        });
    }
    let square = std::f64::consts::FRAC_PI_2;
    if !(0.0..=square + 1e-12).contains(&angle.value().abs()) {
        return Err(TradeError::OutOfRange {
            entry: "extension angle",
            lowest: 0.0,
            highest: square,
        });
    }
    let setting = wanted * wrench / (wrench + extension * angle.cos());
    Ok(setting.called("Ms").of_kind(Kind::Torque).cited(&LEVER))
}

/// The error class of a wrench: ISO 6789-1, from memory: 4 % above 10 N·m (6 % up to it) for setting wrenches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WrenchClass {
    /// The lowest setting on its scale, newton metres.
    pub lowest: f64,
    /// The highest.
    pub highest: f64,
}

impl WrenchClass {
    /// The permitted error at a setting, as a share.
    #[must_use]
    pub fn error(self) -> f64 {
        if self.highest <= 10.0 { 0.06 } else { 0.04 }
    }
}

/// Refuses a setting outside the wrench's range, or in its lowest fifth where few wrenches hold their class.
///
/// # Errors
/// [`TradeError::OutOfRange`] with what the wrench can do.
///
/// # Source
/// ISO 6789-1 (calibrated from 20 % of full scale), from memory.
pub fn in_range(setting: &Torque, wrench: WrenchClass) -> Result<(), TradeError> {
    let lowest = wrench.lowest.max(0.2 * wrench.highest);
    if (lowest..=wrench.highest).contains(&setting.value()) {
        return Ok(());
    }
    Err(TradeError::OutOfRange {
        entry: "wrench setting",
        lowest,
        highest: wrench.highest,
    })
}

/// The figure split into rising stages of even steps; the last one is the figure itself.
#[must_use]
pub fn stages(figure: &Torque, count: usize) -> Vec<Torque> {
    let count = count.max(1);
    (1..=count)
        .map(|stage| {
            if stage == count {
                figure.clone()
            } else {
                figure * (stage as f64 / count as f64)
            }
        })
        .collect()
}

/// The figure with the torque that a self-locking nut takes by itself, measured and added.
#[must_use]
pub fn with_prevailing(figure: &Torque, prevailing: &Torque) -> Torque {
    (figure + prevailing).of_kind(Kind::Torque)
}
