//! The wrench: settings with an extension, its range and class, stages, prevailing torque.

use measure::{Angle, Held, Kind, Length, Ratio, Source, Torque};

use crate::TradeError;

static LEVER: Source = Source {
    title: "Statics: the lever of a torque wrench with an extension",
    place: "setting = T L / (L + A cos a)",
    held: Held::Seen,
};

static ISO_6789: Source = Source {
    title: "ISO 6789-1:2017, Hand torque tools",
    place: "permissible deviation by type and class",
    held: Held::Memory,
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

/// How a wrench shows or gives its torque, by the types and classes of ISO 6789-1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WrenchKind {
    /// Set beforehand, gives way with a click (type II, classes A to C).
    Setting,
    /// With a dial, scale or display in a stiff body (type I, classes B and C).
    Dial,
    /// A bar that bends or twists beside a pointer (type I, class A).
    Beam,
    /// A screwdriver with a scale or a setting (type I, class D; type II, classes D and F).
    Screwdriver,
}

/// A torque wrench: its kind and the ends of its scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WrenchClass {
    /// How it works.
    pub kind: WrenchKind,
    /// The lowest setting on its scale, newton metres.
    pub lowest: f64,
    /// The highest.
    pub highest: f64,
}

impl WrenchClass {
    /// The permitted error at any setting, as a share: 6 % for bending bars, screwdrivers and whatever reaches 10 N·m at
    /// most, 4 % for the others.
    ///
    /// # Source
    /// ISO 6789-1:2017, tables of permissible deviation by type and class, from memory.
    #[must_use]
    pub fn error(self) -> f64 {
        match self.kind {
            WrenchKind::Beam | WrenchKind::Screwdriver => 0.06,
            WrenchKind::Setting | WrenchKind::Dial if self.highest <= 10.0 => 0.06,
            WrenchKind::Setting | WrenchKind::Dial => 0.04,
        }
    }
}

/// How far the torque may be from the setting: the setting times the permitted error of the wrench's class.
///
/// # Units
/// Newton metres.
///
/// # Source
/// ISO 6789-1:2017, from memory.
///
/// # Example
/// 100 N·m on a setting wrench: 4 N·m.
#[must_use]
pub fn wrench_error(setting: &Torque, wrench: WrenchClass) -> Torque {
    let share = Ratio::constant("e", wrench.error(), Kind::Percent, &ISO_6789);
    (setting * share).called("ΔM").of_kind(Kind::Torque)
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
