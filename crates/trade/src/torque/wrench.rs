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

    /// From which setting on it holds its class: a fifth of its end, where its scale does not begin above that.
    ///
    /// # Source
    /// ISO 6789 checks from 20 % of the greatest value on (a hand-tool maker's manual that reviews it); TM 1-1500-204-23-9, table 8-1:
    /// no requirement from 0 to 20 % of full scale.
    #[must_use]
    pub fn holds_from(self) -> f64 {
        self.lowest.max(0.2 * self.highest)
    }
}

/// How far the torque may be from the setting: the setting times the error that the wrench's certificate states, else the permitted
/// error of its class.
///
/// # Units
/// Newton metres.
///
/// # Source
/// ISO 6789-1:2017, from memory; of a setting wrench it was seen in a hand-tool maker's manual. A certificate goes before it.
///
/// # Example
/// 100 N·m on a setting wrench: 4 N·m; certified to 1.5 %: 1.5 N·m.
#[must_use]
pub fn wrench_error(setting: &Torque, wrench: WrenchClass, certified: Option<&Ratio>) -> Torque {
    let share = match certified {
        Some(certified) => certified.clone(),
        None => Ratio::constant("e", wrench.error(), Kind::Percent, &ISO_6789),
    };
    (setting * share).called("ΔM").of_kind(Kind::Torque)
}

/// The wrench to take, each given with what it would be set to (an extension changes that by the wrench's length): of those that hold
/// their class at the setting the one with the smallest range; where none does, the one whose range lies nearest. None of none.
///
/// # Source
/// Common practice, no source: a setting high in the range of a small wrench is finer than one low in that of a large one.
#[must_use]
pub fn wrench_for(wrenches: &[(WrenchClass, Torque)]) -> Option<usize> {
    let beyond = |(wrench, setting): &(WrenchClass, Torque)| {
        let value = setting.value();
        (wrench.holds_from() - value)
            .max(value - wrench.highest)
            .max(0.0)
    };
    let rank = |at: &usize| (beyond(&wrenches[*at]), wrenches[*at].0.highest);
    (0..wrenches.len()).min_by(|a, b| {
        let (a, b) = (rank(a), rank(b));
        a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
    })
}

/// Refuses a setting outside the wrench's range, or in its lowest fifth where few wrenches hold their class.
///
/// # Errors
/// [`TradeError::OutOfRange`] with what the wrench can do.
///
/// # Source
/// [`WrenchClass::holds_from`].
pub fn in_range(setting: &Torque, wrench: WrenchClass) -> Result<(), TradeError> {
    let lowest = wrench.holds_from();
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
