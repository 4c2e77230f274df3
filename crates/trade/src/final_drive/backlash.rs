//! Backlash: what the dial gauge says, and how far the crown wheel has to move.

use measure::{Angle, Held, Kind, Length, Ratio, Source, Standing};

use crate::TradeError;

static PITCH_CONE: Source = Source {
    title: "Pitch cone geometry of bevel gears",
    place: "change of backlash = 2 tan α sin δ / cos β × move of the wheel",
    held: Held::Computed,
};
static DIAL: Source = Source {
    title: "Dial readings at a radius: backlash grows with the radius",
    place: "similar triangles",
    held: Held::Computed,
};

/// What the readings round the wheel come to.
#[derive(Debug, Clone)]
pub struct Backlash {
    /// The least reading at the heel: the one that counts.
    pub least: Length,
    /// The greatest.
    pub greatest: Length,
    /// Greatest less least: run-out of the wheel shows here.
    pub spread: Length,
}

/// The least, greatest and spread of readings taken at several teeth; corrected to the heel's radius where the dial
/// stood elsewhere.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::TooFew`] without a reading; [`TradeError::OutOfRange`] for a reading below nothing.
///
/// # Source
/// Backlash is judged on its least reading: common practice, no source; radius by similar triangles.
pub fn backlash_readings(
    readings: &[Length],
    dial: Option<(&Length, &Length)>,
) -> Result<Backlash, TradeError> {
    if readings.is_empty() {
        return Err(TradeError::TooFew {
            entry: "backlash readings",
            least: 1,
        });
    }
    if readings.iter().any(|reading| reading.value() < 0.0) {
        return Err(TradeError::OutOfRange {
            entry: "backlash",
            lowest: 0.0,
            highest: 0.002,
        });
    }
    let at_heel: Vec<(&'static str, Length)> = readings
        .iter()
        .map(|reading| match dial {
            Some((heel, dial)) => (
                "reading",
                (reading * (heel / dial))
                    .of_kind(Kind::Thickness)
                    .cited(&DIAL),
            ),
            None => ("reading", reading.clone()),
        })
        .collect();
    let least = Length::least_of(&at_heel)
        .called("j")
        .of_kind(Kind::Thickness);
    let greatest = Length::greatest_of(&at_heel)
        .called("jmax")
        .of_kind(Kind::Thickness);
    let spread = (&greatest - &least)
        .called("spread")
        .of_kind(Kind::Thickness);
    Ok(Backlash {
        least,
        greatest,
        spread,
    })
}

/// How much the backlash changes for a move of the crown wheel along its axis: 2 tan α sin δ / cos β, with
/// tan δ = ratio.
///
/// # Units
/// Radians in, a pure number out.
///
/// # Source
/// Pitch cone geometry: the two pitch cones part by the move times sin δ, on both flanks.
///
/// # Example
/// 20°, straight teeth, 41/10: 0.7072.
#[must_use]
pub fn backlash_factor(pressure: &Angle, spiral: &Angle, ratio: &Ratio) -> Ratio {
    let cone = ratio.atan().called("δ").of_kind(Kind::Angle);
    (pressure.tan() * cone.sin() / spiral.cos() * 2.0)
        .called("k")
        .of_kind(Kind::Ratio)
        .cited(&PITCH_CONE)
}

/// How much the backlash falls for a move of the pinion towards the crown wheel along its own axis: 2 tan α cos δ / cos β.
///
/// # Units
/// Radians in, a pure number out.
///
/// # Source
/// Pitch cone geometry, as for the crown wheel, with the pinion's cone.
///
/// # Example
/// 20°, 35° of spiral, 41/10: 0.2106.
#[must_use]
pub fn pinion_factor(pressure: &Angle, spiral: &Angle, ratio: &Ratio) -> Ratio {
    let cone = ratio.atan().called("δ").of_kind(Kind::Angle);
    (pressure.tan() * cone.cos() / spiral.cos() * 2.0)
        .called("kp")
        .of_kind(Kind::Ratio)
        .cited(&PITCH_CONE)
}

/// How the crown wheel is to be moved.
#[derive(Debug, Clone)]
pub struct Adjustment {
    /// Away from the pinion is above nothing.
    pub away: Length,
    /// Whether the backlash is already right within its ±.
    pub already: bool,
}

/// The move of the crown wheel that brings the least backlash to the wanted one: (wanted - least) / factor.
///
/// Shims of this thickness go from one side to the other, so that the side preload stays.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a factor outside 0.2 to 1.5.
///
/// # Source
/// Pitch cone geometry, or the slope of the trials.
///
/// # Example
/// 0.05 mm more at 0.7072: 0.0707 mm away.
pub fn crown_move(
    least: &Length,
    wanted: &Length,
    factor: &Ratio,
) -> Result<Adjustment, TradeError> {
    if !(0.2..=1.5).contains(&factor.value()) {
        return Err(TradeError::OutOfRange {
            entry: "backlash factor",
            lowest: 0.2,
            highest: 1.5,
        });
    }
    if wanted.value() < 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "wanted backlash",
            lowest: 0.0,
            highest: 0.002,
        });
    }
    let away = ((wanted - least) / factor)
        .called("move")
        .of_kind(Kind::Thickness)
        .cited(&PITCH_CONE);
    let already = least.standing(wanted) == Standing::TooCloseToCall;
    Ok(Adjustment { away, already })
}

/// Notches of the side adjusters for a move: move / (thread pitch / notches a turn); one side out, the other in by as many.
///
/// # Units
/// A pure number of notches, to be rounded to whole ones by the hand.
///
/// # Errors
/// [`TradeError::OutOfRange`] without pitch or notches.
///
/// # Source
/// Definition of the pitch.
pub fn notches_for(away: &Length, pitch: &Length, notches: &Ratio) -> Result<Ratio, TradeError> {
    if pitch.value() <= 0.0 || notches.value() < 1.0 {
        return Err(TradeError::OutOfRange {
            entry: "adjuster",
            lowest: 1.0,
            highest: 100.0,
        });
    }
    Ok((away / pitch * notches)
        .called("notches")
        .of_kind(Kind::Ratio))
}

/// What one notch of the side adjusters does to the backlash: thread pitch / notches × factor.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::OutOfRange`] without pitch or notches.
///
/// # Source
/// Definition of the pitch, and pitch cone geometry.
///
/// # Example
/// 2 mm, 24 notches, 0.84: 0.07 mm.
pub fn backlash_of_a_notch(
    pitch: &Length,
    notches: &Ratio,
    factor: &Ratio,
) -> Result<Length, TradeError> {
    if pitch.value() <= 0.0 || notches.value() < 1.0 {
        return Err(TradeError::OutOfRange {
            entry: "adjuster",
            lowest: 1.0,
            highest: 100.0,
        });
    }
    Ok((pitch / notches * factor)
        .called("jn")
        .of_kind(Kind::Thickness))
}

const INCH: f64 = 0.0254;

/// AGMA's recommended backlash of bevel and hypoid gears, quality 7 to 13, by diametral pitch, inches.
const AGMA: &[(f64, f64, f64, f64)] = &[
    (1.00, 1.25, 0.020, 0.030),
    (1.25, 1.50, 0.018, 0.026),
    (1.50, 1.75, 0.016, 0.022),
    (1.75, 2.00, 0.014, 0.018),
    (2.00, 2.50, 0.012, 0.016),
    (2.50, 3.00, 0.010, 0.013),
    (3.00, 3.50, 0.008, 0.011),
    (3.50, 4.00, 0.007, 0.009),
    (4.00, 5.00, 0.006, 0.008),
    (5.00, 6.00, 0.005, 0.007),
    (6.00, 8.00, 0.004, 0.006),
    (8.00, 10.00, 0.003, 0.005),
    (10.00, 16.00, 0.002, 0.004),
    (16.00, 20.00, 0.001, 0.003),
];

/// The usual backlash for a module (pitch diameter over teeth), where the maker's figure is not known: least and
/// greatest, metres.
///
/// # Valid range
/// Module 1.27 to 25.4 mm.
///
/// # Errors
/// [`TradeError::OutOfRange`] outside it.
///
/// # Source
/// AGMA, recommended backlash for bevel and hypoid gears, quality 7 to 13.
pub fn agma_backlash(module: &Length) -> Result<(f64, f64), TradeError> {
    let pitch = INCH / module.value();
    AGMA.iter()
        .find(|(from, to, _, _)| pitch >= *from && pitch <= *to)
        .map(|(_, _, least, greatest)| (least * INCH, greatest * INCH))
        .ok_or(TradeError::OutOfRange {
            entry: "module",
            lowest: INCH / 20.0,
            highest: INCH,
        })
}
