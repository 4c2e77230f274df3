//! The speedometer: what it shows after a change, what approval allows, what adapter puts it right.

use measure::{Kind, Length, PerLength, Ratio, Speed};

use super::sources;

/// What a dial shows after a change of axle or tyre, when its cable is driven from behind the gearbox.
///
/// shown = v x (axle now / axle before) x (C before / C now) x (what it showed before / v)
///
/// # Source
/// The cable turns with the propeller shaft.
///
/// # Example
/// 60 km/h, 37/6 changed for 41/8: 49.86 km/h.
#[must_use]
pub fn shown_after(
    true_speed: &Speed,
    (axle_before, circumference_before): (&Ratio, &Length),
    (axle_now, circumference_now): (&Ratio, &Length),
    error_before: &Ratio,
) -> Speed {
    let share =
        (axle_now / axle_before) * (circumference_before / circumference_now) * error_before;
    (true_speed * share)
        .of_kind(Kind::Speed)
        .cited(&sources::CABLE)
        .called("v_s")
}

/// The highest speed that a dial may show at a true speed: v + v/10 + 4 km/h; the lowest is the true speed.
///
/// # Units
/// Metres per second.
///
/// # Source
/// UN Regulation No. 39, paragraph 5.3.
///
/// # Example
/// 50 km/h: shown 50 to 59.
#[must_use]
pub fn most_shown(true_speed: &Speed) -> Speed {
    (1.1 * true_speed + Speed::exact(4.0 / 3.6))
        .of_kind(Kind::Speed)
        .cited(&sources::R39)
        .called("v_1")
}

/// The lowest true speed when a dial shows a speed: (shown - 4 km/h) / 1.1; the highest is the shown speed.
///
/// # Source
/// UN Regulation No. 39, paragraph 5.3, solved for the true speed.
#[must_use]
pub fn least_true(shown: &Speed) -> Speed {
    ((shown - Speed::exact(4.0 / 3.6)) / 1.1)
        .of_kind(Kind::Speed)
        .cited(&sources::R39)
        .called("v_2")
}

/// How a dial stands to what approval allows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DialVerdict {
    /// Within the band.
    Within,
    /// It shows less than the true speed.
    ReadsLow,
    /// It shows more than a tenth and 4 km/h too much.
    ReadsHigh,
    /// Its ± reaches over an edge of the band.
    TooCloseToCall,
}

/// Whether a dial's reading at a true speed lies in the band that approval allows.
///
/// # Source
/// UN Regulation No. 39, paragraph 5.3.
#[must_use]
pub fn dial_verdict(true_speed: &Speed, shown: &Speed) -> DialVerdict {
    use measure::Standing::{Above, Below, TooCloseToCall};
    let most = most_shown(true_speed);
    match (shown.standing(true_speed), shown.standing(&most)) {
        (Below, _) => DialVerdict::ReadsLow,
        (_, Above) => DialVerdict::ReadsHigh,
        // A dial that is right to the last figure stands on the lower edge, which is allowed.
        (TooCloseToCall, _) if shown.plus() > 0.0 => DialVerdict::TooCloseToCall,
        (_, TooCloseToCall) if shown.plus() > 0.0 => DialVerdict::TooCloseToCall,
        _ => DialVerdict::Within,
    }
}

/// The cable's turns in a distance: axle / C x drive, the drive being cable turns for one turn of the propeller shaft.
///
/// # Units
/// Turns per metre.
///
/// # Source
/// Kinematics.
#[must_use]
pub fn cable_turns(circumference: &Length, axle: &Ratio, drive: &Ratio) -> PerLength {
    (axle * drive / circumference)
        .of_kind(Kind::TurnsPerDistance)
        .cited(&sources::CABLE)
        .called("N_c")
}

/// The ratio of an adapter between cable and dial that puts the dial right: wanted turns by turns made.
///
/// # Source
/// Kinematics.
#[must_use]
pub fn adapter_ratio(constant: &PerLength, turns_made: &PerLength) -> Ratio {
    (constant / turns_made)
        .of_kind(Kind::Ratio)
        .cited(&sources::CABLE)
        .called("i_a")
}
