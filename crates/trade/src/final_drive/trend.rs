//! What recorded trials tell: straight lines of least squares through them.

use measure::{Force, Held, Kind, Length, Ratio, Source, Torque};

use crate::TradeError;

static LEAST_SQUARES: Source = Source {
    title: "Least squares of a straight line",
    place: "slope = Σ(x - x̄)(y - ȳ) / Σ(x - x̄)²",
    held: Held::Computed,
};

/// Positions nearer together than this (square metres, summed) tell no slope.
const ONE_PLACE: f64 = 1e-14;

/// The means of both columns, and the slope of the line, of points given as pairs of quantities.
macro_rules! line_through {
    ($points:expr, $y:ty) => {{
        let count = $points.len() as f64;
        let mx = (Length::sum_of($points.iter().map(|(x, _)| x)) / count).called("x̄");
        let my = (<$y>::sum_of($points.iter().map(|(_, y)| y)) / count).called("ȳ");
        let squares: Vec<_> = $points.iter().map(|(x, _)| (x - &mx).squared()).collect();
        let below = measure::Area::sum_of(&squares);
        if $points.len() < 2 || below.value() < ONE_PLACE {
            return Err(TradeError::TooFew {
                entry: "trials at different positions",
                least: 2,
            });
        }
        let mut products = $points.iter().map(|(x, y)| (x - &mx) * (y - &my));
        // There are two points or more.
        let first = products.next().unwrap_or_else(|| (&mx - &mx) * (&my - &my));
        let above = products.fold(first, |sum, product| sum + product);
        (mx, my, above / below)
    }};
}

/// The slope of recorded trials: backlash against the position of the crown wheel. It beats any formula, since it is this
/// axle's own. Backlash that a shim of the pinion changed meanwhile is to be taken out first: [`without_pinion`].
///
/// # Units
/// Metres in, a pure number out.
///
/// # Errors
/// [`TradeError::TooFew`] with fewer than two different positions.
///
/// # Source
/// Least squares of a straight line.
///
/// # Example
/// Vehicle maker's workshop manual: 0.05 mm of shim changes the backlash by 0.03 mm: 0.6.
pub fn slope_of_trials(trials: &[(Length, Length)]) -> Result<Ratio, TradeError> {
    let (_, _, slope) = line_through!(trials, Length);
    Ok(slope.called("k").of_kind(Kind::Ratio).cited(&LEAST_SQUARES))
}

/// The backlash of a trial as it would be with the pinion where it stood at the first one: what its way towards the crown wheel
/// has taken is given back.
///
/// # Units
/// Metres.
///
/// # Source
/// Pitch cone geometry.
#[must_use]
pub fn without_pinion(backlash: &Length, pinion_in: &Length, pinion_factor: &Ratio) -> Length {
    (backlash + pinion_in * pinion_factor).of_kind(Kind::Thickness)
}

/// The next pinion shim from the trials made so far, each a shim and the height of its marks (low on the tooth below nothing,
/// high above): where the line through them crosses the middle. Its ± is what reading the marks is worth.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::TooFew`] with fewer than two different shims; [`TradeError::Undetermined`] where the marks did not move.
///
/// # Source
/// Least squares of a straight line; that marks move evenly with the shim is common practice, no source.
///
/// # Example
/// Face at 0.50 mm, flank at 0.90 mm: 0.70 mm.
pub fn next_shim(trials: &[(Length, Ratio)]) -> Result<Length, TradeError> {
    let (mx, my, slope) = line_through!(trials, Ratio);
    if slope.value().abs() < 1.0 {
        // Less than a thousandth of the tooth's half height for a millimetre: the marks stand still.
        return Err(TradeError::Undetermined { entry: "marks" });
    }
    Ok((mx - my / slope)
        .called("s")
        .of_kind(Kind::Thickness)
        .cited(&LEAST_SQUARES))
}

/// What a preload pack more does, from trials of pack and turning torque: the slope of the line, torque for a thickness.
///
/// # Units
/// Newton metres for a metre.
///
/// # Errors
/// [`TradeError::TooFew`] with fewer than two different packs.
///
/// # Source
/// Least squares of a straight line; that the turning torque grows evenly once there is preload is common practice, no source.
///
/// # Example
/// 0.4 N·m at 1.00 mm, 1.4 N·m at 0.95 mm: 0.2 N·m less for 0.01 mm more.
pub fn torque_for_thickness(trials: &[(Length, Torque)]) -> Result<Force, TradeError> {
    let (_, _, slope) = line_through!(trials, Torque);
    Ok(slope.called("k").cited(&LEAST_SQUARES))
}

/// The pack at which the line through the trials reaches the wanted turning torque.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::TooFew`] with fewer than two different packs; [`TradeError::Undetermined`] where the torque did not change.
///
/// # Source
/// Least squares of a straight line.
///
/// # Example
/// The trials above, 1.2 N·m wanted: 0.96 mm.
pub fn pack_for_preload(
    trials: &[(Length, Torque)],
    wanted: &Torque,
) -> Result<Length, TradeError> {
    let (mx, my, slope) = line_through!(trials, Torque);
    if slope.value() == 0.0 {
        return Err(TradeError::Undetermined {
            entry: "turning torque",
        });
    }
    Ok((mx + (wanted - my) / slope)
        .called("s")
        .of_kind(Kind::Thickness)
        .cited(&LEAST_SQUARES))
}
