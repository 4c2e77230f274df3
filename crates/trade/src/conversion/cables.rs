//! Cables and pipes over a route: length, bends, friction and travel.

use measure::{Angle, Held, Kind, Length, Ratio, Source, Standing};

use crate::TradeError;

static ARC: Source = Source {
    title: "Plane geometry of the circle",
    place: "arc = r θ; chord = 2 r sin(θ/2)",
    held: Held::Computed,
};
static CAPSTAN: Source = Source {
    title: "The capstan equation (Euler-Eytelwein)",
    place: "exp(-μ θ)",
    held: Held::Computed,
};

/// A bend in a route.
#[derive(Debug, Clone)]
pub struct Bend {
    /// The radius of the middle line.
    pub radius: Length,
    /// The angle turned through.
    pub angle: Angle,
}

/// The length of a route: straights and the arcs between them.
///
/// # Units
/// Metres, radians.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn route_length(straights: &[Length], bends: &[Bend]) -> Length {
    let arcs: Vec<Length> = bends
        .iter()
        .map(|bend| &bend.radius * &bend.angle)
        .collect();
    Length::sum_of(straights.iter().chain(&arcs))
        .of_kind(Kind::Length)
        .cited(&ARC)
}

/// Whether a bend is tighter than the least radius; within the ± of the two it counts as too tight.
#[must_use]
pub fn bend_too_tight(bend: &Bend, least: &Length) -> bool {
    bend.radius.value() < least.value() || bend.radius.standing(least) == Standing::Below
}

/// The share of a pull that comes out of a cable's far end: exp(-μ Σθ).
///
/// # Valid range
/// Friction 0.05 (lined) to 0.3 (dry), from memory.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a friction below nothing or above 1.
///
/// # Source
/// The capstan equation.
pub fn capstan_efficiency(friction: &Ratio, bends: &[Bend]) -> Result<Ratio, TradeError> {
    if !(0.0..=1.0).contains(&friction.value()) {
        return Err(TradeError::OutOfRange {
            entry: "cable friction",
            lowest: 0.0,
            highest: 1.0,
        });
    }
    let angles: Vec<Angle> = bends.iter().map(|bend| bend.angle.clone()).collect();
    Ok((-(friction * Angle::sum_of(&angles)))
        .exp()
        .of_kind(Kind::Percent)
        .cited(&CAPSTAN))
}

/// The cable travel of a lever that swings evenly about square to its cable: 2 r sin(θ/2).
///
/// # Units
/// Metres, radians.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn lever_travel(arm: &Length, swing: &Angle) -> Length {
    (arm * (swing / 2.0).sin() * 2.0)
        .of_kind(Kind::Length)
        .cited(&ARC)
}

/// The arm of a lever that uses a travel over its swing: s / (2 sin(θ/2)).
///
/// # Errors
/// [`TradeError::OutOfRange`] for a swing of nothing.
///
/// # Source
/// Plane geometry.
pub fn matching_lever(travel: &Length, swing: &Angle) -> Result<Length, TradeError> {
    if swing.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "swing",
            lowest: 0.01,
            highest: 3.0,
        });
    }
    Ok((travel / ((swing / 2.0).sin() * 2.0))
        .of_kind(Kind::Length)
        .cited(&ARC))
}

/// The pipe to cut: its route and what each flare takes.
///
/// # Units
/// Metres.
///
/// # Source
/// Plane geometry; the allowance for a flare is the flaring tool maker's.
#[must_use]
pub fn pipe_to_cut(route: &Length, flares: &[Length]) -> Length {
    Length::sum_of(std::iter::once(route).chain(flares))
        .of_kind(Kind::Length)
        .cited(&ARC)
}
