//! Bearing preload as a turning torque, and how to measure it with a spring balance.

use measure::{Force, Held, Kind, Length, Ratio, Source, Torque};

use crate::TradeError;

static SPREAD: Source = Source {
    title: "Workshop manuals of axles: shims of both side bearings changed alike keep the backlash",
    place: "shim = free gap + preload; half on each side",
    held: Held::CommonPractice,
};

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

/// The side bearings' drag behind a rise of the turning torque at the pinion, once the carrier is in: rise × ratio.
///
/// # Units
/// Newton metres.
///
/// # Valid range
/// Turned by hand, without seal; the friction of the teeth is left out.
///
/// # Source
/// Power in is power out, as for [`side_drag`].
///
/// # Example
/// 0.4 N·m at 41/10: 1.64 N·m.
#[must_use]
pub fn drag_behind_rise(rise: &Torque, ratio: &Ratio) -> Torque {
    (rise * ratio)
        .called("M_s")
        .of_kind(Kind::Torque)
        .cited(&LEVER)
}

/// The turning torque to expect at the pinion with the carrier in: the pinion bearings' own, and the side bearings' drag over the ratio.
///
/// # Units
/// Newton metres.
///
/// # Source
/// Vehicle maker's workshop manual: total preload torque = pinion bearing preload torque + side bearing preload torque.
#[must_use]
pub fn turning_torque_with_carrier(pinion: &Torque, drag: &Torque, ratio: &Ratio) -> Torque {
    (pinion + side_drag(drag, ratio))
        .called("M_t")
        .of_kind(Kind::Torque)
        .cited(&LEVER)
}

/// The preload to add as a spread, both side bearings together: wanted less measured. End float that was measured is a spread below
/// nothing, and has to be taken up first.
///
/// # Units
/// Metres.
///
/// # Valid range
/// Exact where the maker's figure is one of shims beyond no play, which holds within it how far housing and bearings give way. A first
/// step where it is the housing's own spread under a dial: that shows only a part of each shim, so it is measured again. The housing's
/// stiffness is not asked for: no manual gives it, and a second measurement tells what a shim does here.
///
/// # Source
/// Vehicle maker's workshop manual: shim = gap between case and bearing + preload, 0.15 to 0.21 mm.
///
/// # Example
/// 0.25 mm wanted on bearings without play or preload: 0.25 mm, 0.125 mm on each side.
#[must_use]
pub fn spread_to_add(wanted: &Length, measured: &Length) -> Length {
    (wanted - measured)
        .called("Δp")
        .of_kind(Kind::Thickness)
        .cited(&SPREAD)
}

/// What goes on each side so that the crown wheel, and so the backlash, stays where it is: half.
///
/// # Units
/// Metres.
///
/// # Source
/// Vehicle maker's workshop manual: both shims changed by an equal amount keep the backlash as it was.
///
/// # Example
/// 0.25 mm in all: 0.125 mm.
#[must_use]
pub fn spread_each_side(to_add: &Length) -> Length {
    (to_add / 2.0)
        .called("Δp/2")
        .of_kind(Kind::Thickness)
        .cited(&SPREAD)
}

/// What goes on at the crown wheel's side and at the other one where the crown wheel moves away from the pinion besides: half the
/// spread to add less the move, and half of it plus the move. Below nothing it is taken off.
///
/// # Units
/// Metres.
///
/// # Source
/// What one side loses the other gains, so that their sum is the spread to add.
///
/// # Example
/// 0.25 mm to add and 0.05 mm away: 0.075 mm and 0.175 mm.
#[must_use]
pub fn shims_of_both_sides(to_add: &Length, away: &Length) -> [Length; 2] {
    let half = spread_each_side(to_add);
    [("Δs_1", &half - away), ("Δs_2", &half + away)]
        .map(|(symbol, change)| change.called(symbol).of_kind(Kind::Thickness))
}
