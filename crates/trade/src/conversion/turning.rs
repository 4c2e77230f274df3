//! Both wheels on lock: correct steering, what a track rod makes of it, and the circle between kerbs.

use measure::{Angle, Held, Kind, Length, Source};

use super::linkage::{about_pin, angle_near, arm_parts, dot, heading, less, pin_way, turned_arm};
use crate::TradeError;

static CORRECT_STEERING: Source = Source {
    title: "Correct steering: cot(outer) - cot(inner) = pivot distance / wheelbase",
    place: "any text on the theory of machines, chapter on steering gears",
    held: Held::Seen,
};

static FOUR_BAR: Source = Source {
    title: "Spatial geometry of the track rod: its length stays as both arms turn about their king pins",
    place: "four-bar linkage; each wheel's heading as seen on the ground",
    held: Held::Computed,
};

static ON_THE_GROUND: Source = Source {
    title: "Plane geometry: where the king pin's line meets the ground",
    place: "right triangle of the wheel's radius and the pin's lean",
    held: Held::Computed,
};

/// The outer wheel's angle that rolls without scrub at an inner angle: acot(cot(inner) + c/b).
///
/// # Units
/// Radians and metres.
///
/// # Valid range
/// Inner angle above nothing and below a right angle.
///
/// # Source
/// The condition of correct steering.
#[must_use]
pub fn ideal_outer(inner: &Angle, pivots: &Length, wheelbase: &Length) -> Angle {
    let cot_outer = 1.0 / inner.tan() + pivots / wheelbase;
    (1.0 / cot_outer)
        .atan()
        .of_kind(Kind::Angle)
        .cited(&CORRECT_STEERING)
}

/// The angle of the other wheel on the ground, by the track rod, when one is turned by `turned` (positive towards the outside of the
/// rod's first arm): arms of one length that stand at `toe` from straight back, inward positive, about pins that lean: `lean` is the
/// castor, and the inclination of their tops towards the vehicle's middle.
///
/// # Units
/// Radians and metres.
///
/// # Valid range
/// Arms behind the axle, square to the ground as seen from the side straight ahead; the pins' distance at the height of the rod's
/// balls. With the rod in front the picture is turned about: see [`other_wheel_in_front`].
///
/// # Errors
/// [`TradeError::CannotReach`] where the rod cannot follow.
///
/// # Source
/// Spatial geometry.
pub fn other_wheel(
    turned: &Angle,
    pivots: &Length,
    arm: &Length,
    toe: &Angle,
    lean: [&Angle; 2],
) -> Result<Angle, TradeError> {
    let other = Angle::tabled(
        "other wheel by the track rod",
        &[turned, pivots, arm, toe, lean[0], lean[1]],
        |n| follow(n[0], [n[1], n[2], n[3]], [n[4], n[5]]).unwrap_or(f64::NAN),
    );
    other
        .of_kind(Kind::Angle)
        .cited(&FOUR_BAR)
        .finite()
        .map_err(|_| TradeError::CannotReach { link: "track rod" })
}

/// The same with the track rod in front of the axle, its arms standing at `outward` from straight ahead.
///
/// # Units
/// Radians and metres.
///
/// # Errors
/// As [`other_wheel`].
///
/// # Source
/// Spatial geometry: seen in a mirror across the axle, arms in front that stand outward are arms behind that stand
/// outward, pins that lean back lean forward, and both wheels turn the other way.
pub fn other_wheel_in_front(
    turned: &Angle,
    pivots: &Length,
    arm: &Length,
    outward: &Angle,
    [castor, inclination]: [&Angle; 2],
) -> Result<Angle, TradeError> {
    let lean = [&-castor, inclination];
    Ok(-other_wheel(&-turned, pivots, arm, &-outward, lean)?)
}

/// Pins at ± pivots / 2 along y; x forward, z up; both wheels turn to the left by positive angles.
fn follow(left: f64, [pivots, arm, toe]: [f64; 3], lean: [f64; 2]) -> Option<f64> {
    // Straight ahead the arms point back and inward (towards the middle) by the toe.
    let (back, inward) = (-arm * toe.cos(), arm * toe.sin());
    let ways = [1.0, -1.0].map(|side| pin_way(lean[0], lean[1], side));
    let turned = about_pin(ways[0], left)?;
    // From the right pin to the left arm's end; there the right arm's end lies a rod away.
    let mut end = turned_arm(arm_parts(ways[0], [back, -inward, 0.0]), turned);
    end[1] += pivots;
    let [middle, out, across] = arm_parts(ways[1], [back, inward, 0.0]);
    let away = less(end, middle);
    let apart = dot(out, out) + dot(away, away) - (pivots - 2.0 * inward).powi(2);
    let other = angle_near(turned, dot(away, out), dot(away, across), apart / 2.0)?;
    Some(heading(ways[1], other))
}

/// How far the outer wheel stands from correct steering: actual less ideal.
#[must_use]
pub fn ackermann_error(outer: &Angle, inner: &Angle, pivots: &Length, wheelbase: &Length) -> Angle {
    (outer - ideal_outer(inner, pivots, wheelbase)).of_kind(Kind::Angle)
}

/// How far outward of the king pin's line the tyre's middle stands on the ground: half of what the track is wider than the pins, less what
/// the pin's lean brings its line outward down there, r tan(inclination).
///
/// # Units
/// Metres and radians.
///
/// # Valid range
/// The pins' distance taken at the height of the wheel's middle.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn ground_offset(
    track: &Length,
    pivots: &Length,
    radius: &Length,
    inclination: &Angle,
) -> Length {
    ((track - pivots) / 2.0 - radius * inclination.tan())
        .called("s")
        .of_kind(Kind::Length)
        .cited(&ON_THE_GROUND)
}

/// How far the tyre's middle stands behind the point where the king pin's line meets the ground: r tan(castor).
///
/// # Units
/// Metres and radians.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn trail(radius: &Length, castor: &Angle) -> Length {
    (radius * castor.tan())
        .called("t")
        .of_kind(Kind::Length)
        .cited(&ON_THE_GROUND)
}

/// The turning circle between kerbs: 2 (b / sin(outer) + s + t tan(outer / 2)), with the tyre's place on the ground outward of the king
/// pin's line and behind it.
///
/// The outer wheel turns about the point where its pin's line meets the ground, which takes the tyre's middle forward by s sin(outer) and
/// t (1 - cos(outer)); the circle's radius is what its distance from the rear axle is over sin(outer).
///
/// # Units
/// Metres and radians.
///
/// # Valid range
/// Outer angle above nothing and below a right angle, as the wheel heads on the ground.
///
/// # Source
/// Plane geometry of correct steering.
#[must_use]
pub fn kerb_circle(outer: &Angle, wheelbase: &Length, offset: &Length, trail: &Length) -> Length {
    let forward = trail * (outer / 2.0).tan();
    ((wheelbase / outer.sin() + offset + forward) * 2.0)
        .of_kind(Kind::Length)
        .cited(&CORRECT_STEERING)
}
