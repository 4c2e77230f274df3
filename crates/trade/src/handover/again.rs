//! When to look again: by distance on the odometer, and by the days that the distance takes.

use measure::{Kind, Length, Time, unit};

use crate::TradeError;

/// What the odometer shows when a check is due: its reading at the start and the distance.
///
/// # Units
/// Metres.
///
/// # Source
/// Addition.
#[must_use]
pub fn due_at(odometer: &Length, after: &Length) -> Length {
    (odometer + after).called("s").of_kind(Kind::Distance)
}

/// How long a distance takes at so much a week: 7 d × s / w.
///
/// # Units
/// Seconds.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a vehicle that stands still.
///
/// # Source
/// Proportion.
///
/// # Example
/// 500 km at 250 km a week: 14 days.
pub fn due_after(after: &Length, per_week: &Length) -> Result<Time, TradeError> {
    if per_week.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "per_week",
            lowest: 1_000.0,
            highest: 10_000_000.0,
        });
    }
    let week = Time::of(1.0, &unit::WEEK);
    Ok((week * after / per_week).called("t").of_kind(Kind::Days))
}
