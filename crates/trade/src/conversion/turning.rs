//! Both wheels on lock: correct steering, what a track rod makes of it, and the circle between kerbs.

use measure::{Angle, Held, Kind, Length, Source, zeros};

use crate::TradeError;

static CORRECT_STEERING: Source = Source {
    title: "Correct steering: cot(outer) - cot(inner) = pivot distance / wheelbase",
    place: "any text on the theory of machines, chapter on steering gears",
    held: Held::Seen,
};

static FOUR_BAR: Source = Source {
    title: "Plane geometry of the track rod: its length stays as both arms turn",
    place: "four-bar linkage",
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

/// The angle of the other wheel, by the track rod, when one is turned by `turned` (positive towards the outside of the
/// rod's first arm): arms of one length that stand at `toe` from straight back, inward positive.
///
/// # Units
/// Radians and metres.
///
/// # Valid range
/// Arms behind the axle; a rod in front has a negative toe.
///
/// # Errors
/// [`TradeError::Undetermined`] where the rod cannot follow.
///
/// # Source
/// Plane geometry.
pub fn other_wheel(
    turned: &Angle,
    pivots: &Length,
    arm: &Length,
    toe: &Angle,
) -> Result<Angle, TradeError> {
    let other = Angle::tabled(
        "other wheel by the track rod",
        &[turned, pivots, arm, toe],
        |n| follow(n[0], n[1], n[2], n[3]).unwrap_or(f64::NAN),
    );
    other
        .of_kind(Kind::Angle)
        .cited(&FOUR_BAR)
        .finite()
        .map_err(|_| TradeError::Undetermined { entry: "track rod" })
}

/// Left pin at the origin, right pin at -pivots along y; x forward; both wheels turn to the left by positive angles.
fn follow(left: f64, pivots: f64, arm: f64, toe: f64) -> Option<f64> {
    let end = |side: f64, steer: f64| {
        // Straight ahead the arm points back and inward (towards the middle) by the toe.
        let (x, y) = (-arm * toe.cos(), -side * arm * toe.sin());
        let (sin, cos) = steer.sin_cos();
        [cos * x - sin * y, side * pivots / 2.0 + sin * x + cos * y]
    };
    let apart = |a: [f64; 2], b: [f64; 2]| (a[0] - b[0]).hypot(a[1] - b[1]);
    let rod = apart(end(1.0, 0.0), end(-1.0, 0.0));
    let found = zeros(-1.2, 1.2, |right| {
        apart(end(1.0, left), end(-1.0, right)) - rod
    })
    .ok()?;
    found
        .into_iter()
        .min_by(|a, b| (a - left).abs().total_cmp(&(b - left).abs()))
}

/// How far the outer wheel stands from correct steering: actual less ideal.
#[must_use]
pub fn ackermann_error(outer: &Angle, inner: &Angle, pivots: &Length, wheelbase: &Length) -> Angle {
    (outer - ideal_outer(inner, pivots, wheelbase)).of_kind(Kind::Angle)
}

/// The turning circle between kerbs: 2 (b / sin(outer) + offset), with the king pin's offset to the tyre's middle.
///
/// # Units
/// Metres.
///
/// # Source
/// Plane geometry of correct steering.
#[must_use]
pub fn kerb_circle(outer: &Angle, wheelbase: &Length, offset: &Length) -> Length {
    ((wheelbase / outer.sin() + offset) * 2.0)
        .of_kind(Kind::Length)
        .cited(&CORRECT_STEERING)
}
