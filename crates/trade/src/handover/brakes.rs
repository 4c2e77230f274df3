//! Brake efficiency and imbalance from a brake tester's forces, and toe from two measurements.

use measure::{Acceleration, Force, Held, Kind, Length, Mass, Ratio, Source, unit};

use crate::TradeError;

static MANUAL: Source = Source {
    title: "MOT Inspection Manual, class 5, January 2012",
    place: "3.8, method of calculating brake performance",
    held: Held::Seen,
};
static TOE: Source = Source {
    title: "Toe-in is what the rims stand closer together ahead of the axle than behind it",
    place: "",
    held: Held::CommonPractice,
};

/// Brake efficiency: the forces of all wheels over the weight, z = ΣF / (m g).
///
/// # Units
/// A plain ratio, shown in per cent.
///
/// # Valid range
/// Forces of one application on the tester; the mass that the test counts (as presented, or the lesser of plated and laden: local rules say).
///
/// # Errors
/// [`TradeError::OutOfRange`] for no mass.
///
/// # Source
/// MOT Inspection Manual, class 5, 3.8: total effort / mass × 100, both in kilograms.
pub fn brake_efficiency(effort: &Force, mass: &Mass) -> Result<Ratio, TradeError> {
    if mass.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "brake_mass",
            lowest: 50.0,
            highest: 40_000.0,
        });
    }
    let gravity = Acceleration::of(1.0, &unit::GRAVITY).called("g");
    Ok((effort / (mass * gravity))
        .called("z")
        .of_kind(Kind::Percent)
        .cited(&MANUAL))
}

/// Imbalance of an axle: how much the weaker side lacks of the stronger, (higher − lower) / higher.
///
/// # Units
/// A plain ratio, shown in per cent.
///
/// # Errors
/// [`TradeError::OutOfRange`] where neither side brakes.
///
/// # Source
/// MOT Inspection Manual, class 5, 3.8.
pub fn brake_imbalance(left: &Force, right: &Force) -> Result<Ratio, TradeError> {
    let higher = left.greatest(right);
    if higher.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "left",
            lowest: 1.0,
            highest: 100_000.0,
        });
    }
    let lower = left.least(right);
    Ok(((&higher - lower) / &higher)
        .called("imbalance")
        .of_kind(Kind::Percent)
        .cited(&MANUAL))
}

/// Toe-in from the distance between the rims ahead of the axle and behind it, at hub height: behind − ahead; below zero it is toe-out.
///
/// # Units
/// Metres.
///
/// # Source
/// Common practice; the vehicle is rolled on half a turn between the two, so that the run-out of the rims drops out.
#[must_use]
pub fn toe_in(ahead: &Length, behind: &Length) -> Length {
    (behind - ahead)
        .called("toe")
        .of_kind(Kind::Thickness)
        .cited(&TOE)
}
