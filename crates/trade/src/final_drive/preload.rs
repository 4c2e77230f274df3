//! Bearing preload as a turning torque, and how to measure it with a spring balance.

use measure::{Force, Held, Kind, Length, Ratio, Source, Torque};

use crate::TradeError;

static LEVER: Source = Source {
    title: "Statics: torque = pull × radius",
    place: "definition",
    held: Held::Computed,
};

/// The pull on a spring balance for a turning torque at a radius: T / r.
///
/// The turning torque counts, not the breakaway; oiled, without seal and crown wheel.
///
/// # Units
/// Newtons.
///
/// # Errors
/// [`TradeError::OutOfRange`] for no radius.
///
/// # Source
/// Statics.
///
/// # Example
/// 12 lbf·in at 1.5 in: 8 lbf.
pub fn pull_for_torque(torque: &Torque, radius: &Length) -> Result<Force, TradeError> {
    if radius.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "radius",
            lowest: 0.005,
            highest: 1.0,
        });
    }
    Ok((torque / radius)
        .called("pull")
        .of_kind(Kind::Force)
        .cited(&LEVER))
}

/// The radius at which a cord wound on a flange pulls: half the flange and half the cord.
///
/// # Units
/// Metres.
///
/// # Source
/// The pull runs along the cord's middle.
#[must_use]
pub fn cord_radius(flange: &Length, cord: &Length) -> Length {
    ((flange + cord) / 2.0).called("r").of_kind(Kind::Length)
}

/// What the side bearings' drag comes to at the pinion: drag over the ratio.
///
/// # Source
/// Power in is power out: the pinion turns faster by the ratio.
#[must_use]
pub fn side_drag(drag: &Torque, ratio: &Ratio) -> Torque {
    (drag / ratio)
        .called("side drag")
        .of_kind(Kind::Torque)
        .cited(&LEVER)
}
