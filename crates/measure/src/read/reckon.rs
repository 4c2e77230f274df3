//! From the parts of an entry to its value and ± in SI base units, within the limits of the field.

use std::f64::consts::FRAC_PI_2;

use super::Ask;
use super::cursor::Fault;
use super::error::EntryProblem;
use super::gauge::GAUGE_SCATTER;
use super::grammar::{Amount, Entry, Parts, Term};
use super::name::Named;
use super::number::Number;
use super::tolerance::{Bound, Tolerance};
use crate::kind::Kind;
use crate::mark::Mark;
use crate::reading::{Ambiguous, Doubt, Reading, Stated};
use crate::unit::{self, Unit};

/// Beyond this no entry in any unit makes sense; keeps every later product finite.
const BOUNDLESS: f64 = 1e18;

/// A typed limit and the same limit reached through another unit's factor may differ in the last place.
const SLACK: f64 = 1e-12;

/// The reading of an entry when this mark is the decimal one.
pub(super) fn reading(entry: &Entry, ask: &Ask, mark: Mark) -> Result<Reading, Fault> {
    let (unit, bare) = unit_of(entry, ask);
    let value = value(entry, ask, mark, unit, false)?;
    let boundless = |number: &Number| number.value(mark) >= BOUNDLESS;
    let any_boundless = match (&entry.amount, &entry.tolerance) {
        // One number alone, as most entries are.
        (Amount::Parts(Parts::One([only])), Tolerance::Blank) => boundless(&only.number),
        _ => entry.numbers().any(boundless),
    };
    if !value.is_finite() || value.abs() >= BOUNDLESS || any_boundless {
        return Err((entry.at.clone(), EntryProblem::Boundless));
    }
    within_limits(value, entry, ask)?;
    let (plus, minus, stated) = sides(entry, ask, mark, unit, value)?;
    if stated == Stated::Typed && ask.lowest.is_some_and(|lowest| lowest > 0.0) && minus >= value {
        let bound = match &entry.tolerance {
            Tolerance::Both(bound) | Tolerance::Sides { minus: bound, .. } => {
                bound.term.number.at.clone()
            }
            _ => entry.at.clone(),
        };
        return Err((bound, EntryProblem::ToleranceTooLarge));
    }
    Ok(Reading {
        value,
        plus,
        minus,
        stated,
        unit,
        bare,
        mark: None,
        shared: shared_unit(entry),
        ambiguous: None,
    })
}

/// The unit of the entry, and whether it is the field's own because none was typed.
fn unit_of(entry: &Entry, ask: &Ask) -> (&'static Unit, bool) {
    let typed = match &entry.amount {
        Amount::Parts(parts) => parts
            .last()
            .and_then(|part| part.unit.as_ref())
            .map(|named| named.unit),
        Amount::Gauge { .. } => Some(&unit::INCH),
        Amount::Quotient { .. } | Amount::Fraction(_) => Some(ask.bare),
    };
    match typed.or_else(|| unit_of_tolerance(entry, ask)) {
        Some(unit) => (unit, false),
        None => (ask.bare, true),
    }
}

/// `412.5 ± 0.5 mm`: one unit behind both serves both.
fn unit_of_tolerance(entry: &Entry, ask: &Ask) -> Option<&'static Unit> {
    let bound = match &entry.tolerance {
        Tolerance::Both(bound) => bound,
        Tolerance::Sides { plus, minus } if plus.term.unit.is_none() => minus,
        Tolerance::Sides { plus, .. } => plus,
        _ => return None,
    };
    let unit = bound.term.unit.as_ref()?.unit;
    // In a field for shares `45 ± 2 %` is in points; in one for ratios `4.11 ± 2 %` is not.
    (unit != &unit::PERCENT || ask.bare == &unit::PERCENT).then_some(unit)
}

/// The value in SI, a bare number in `unit`. With `swapped`, units that another country calls the same are taken for those of that country.
fn value(
    entry: &Entry,
    ask: &Ask,
    mark: Mark,
    unit: &'static Unit,
    swapped: bool,
) -> Result<f64, Fault> {
    let of = |named: &Named| match swapped {
        true => named.other.unwrap_or(named.unit),
        false => named.unit,
    };
    let sign = if entry.negative { -1.0 } else { 1.0 };
    match &entry.amount {
        Amount::Gauge { gauge, number } => Ok(sign * gauge.thickness(*number).unwrap_or(f64::NAN)),
        Amount::Fraction(number) => Ok(sign * number.value(mark)),
        Amount::Quotient {
            over,
            under,
            is_slope,
        } => {
            let under_value = under.value(mark);
            if under_value == 0.0 {
                return Err((under.at.clone(), EntryProblem::Fraction));
            }
            let ratio = sign * over.value(mark) / under_value;
            Ok(if *is_slope && ask.kind == Kind::Angle {
                ratio.atan()
            } else {
                ratio
            })
        }
        Amount::Parts(parts) if parts.len() == 1 => {
            let unit = parts[0].unit.as_ref().map_or(unit, of);
            as_asked(
                unit.to_si(sign * parts[0].number.value(mark)),
                unit,
                entry,
                ask,
            )
        }
        Amount::Parts(parts) => {
            descending(parts, mark)?;
            let sum: f64 = parts
                .iter()
                .filter_map(|part| Some(of(part.unit.as_ref()?).factor * part.number.value(mark)))
                .sum();
            let last = parts
                .last()
                .and_then(|part| part.unit.as_ref())
                .map_or(unit, of);
            as_asked(sign * sum, last, entry, ask)
        }
    }
}

/// An angle typed for a slope becomes its tangent; all else stays.
fn as_asked(si: f64, unit: &Unit, entry: &Entry, ask: &Ask) -> Result<f64, Fault> {
    if ask.kind != Kind::Slope || !is_angle(unit) {
        return Ok(si);
    }
    if si.abs() >= FRAC_PI_2 {
        return Err((entry.at.clone(), EntryProblem::Boundless));
    }
    Ok(si.tan())
}

fn is_angle(unit: &Unit) -> bool {
    Kind::Angle.units().contains(&unit)
}

/// Parts go from large to small, each less than one of the part before, and only the last has decimals.
fn descending(parts: &[Term], mark: Mark) -> Result<(), Fault> {
    for pair in parts.windows(2) {
        let [above, below] = pair else { continue };
        let (Some(large), Some(small)) = (&above.unit, &below.unit) else {
            continue;
        };
        if above.number.value(mark).fract() != 0.0 || large.unit.offset != 0.0 {
            return Err((above.number.at.clone(), EntryProblem::PartNotWhole));
        }
        if large.unit.factor <= small.unit.factor {
            return Err((small.at.clone(), EntryProblem::PartsNotDescending));
        }
        let ratio = large.unit.factor / small.unit.factor;
        if below.number.value(mark) >= ratio * (1.0 - SLACK) {
            return Err((below.number.at.clone(), EntryProblem::PartTooLarge));
        }
    }
    Ok(())
}

fn within_limits(value: f64, entry: &Entry, ask: &Ask) -> Result<(), Fault> {
    let fault = |why| Err((entry.at.clone(), why));
    if entry.negative && value < 0.0 && !ask.signed {
        return fault(EntryProblem::Negative);
    }
    if ask.whole && value.fract() != 0.0 {
        return fault(EntryProblem::NotWhole);
    }
    if let Some(lowest) = ask
        .lowest
        .filter(|lowest| value < lowest - SLACK * lowest.abs())
    {
        return fault(EntryProblem::TooSmall {
            lowest: ask.bare.from_si(lowest),
            unit: ask.bare,
        });
    }
    if let Some(highest) = ask
        .highest
        .filter(|highest| value > highest + SLACK * highest.abs())
    {
        return fault(EntryProblem::TooLarge {
            highest: ask.bare.from_si(highest),
            unit: ask.bare,
        });
    }
    Ok(())
}

/// The ± above and below, SI, and where it comes from.
fn sides(
    entry: &Entry,
    ask: &Ask,
    mark: Mark,
    unit: &'static Unit,
    value: f64,
) -> Result<(f64, f64, Stated), Fault> {
    match &entry.tolerance {
        Tolerance::Exact => Ok((0.0, 0.0, Stated::Exact)),
        Tolerance::Blank => Ok(assumed(entry, ask, value)),
        Tolerance::Both(bound) => {
            let (plus, minus) = side(bound, ask, mark, unit, value)?;
            Ok((plus, minus, Stated::Typed))
        }
        Tolerance::Sides { plus, minus } => {
            let above = side(plus, ask, mark, unit, value)?.0;
            let below = side(minus, ask, mark, unit, value)?.1;
            Ok((above, below, Stated::Typed))
        }
    }
}

fn assumed(entry: &Entry, ask: &Ask, value: f64) -> (f64, f64, Stated) {
    let Some(tool) = ask.tool else {
        return (0.0, 0.0, Stated::Exact);
    };
    if ask.kind == Kind::Ratio && is_counted(&entry.amount) {
        return (0.0, 0.0, Stated::Exact);
    }
    let usual = tool.usual_error(value);
    // A gauge number names a thickness; nobody has measured it.
    let error = match entry.amount {
        Amount::Gauge { .. } => usual.max(GAUGE_SCATTER * value),
        _ => usual,
    };
    (
        error,
        error,
        if error == 0.0 {
            Stated::Exact
        } else {
            Stated::Assumed
        },
    )
}

/// Whether a ratio is told as two whole numbers, `41/8` or `41:8`: teeth are counted, so nothing is off.
fn is_counted(amount: &Amount) -> bool {
    let whole =
        |number: &Number| number.denominator.is_none() && number.value(Mark::Point).fract() == 0.0;
    match amount {
        Amount::Parts(terms) => {
            matches!(&**terms, [only] if only.unit.is_none() && only.number.denominator.is_some())
        }
        Amount::Quotient { over, under, .. } => {
            whole(over) && whole(under) && under.value(Mark::Point) > 1.0
        }
        _ => false,
    }
}

/// How far one bound reaches above and below the value, SI.
fn side(
    bound: &Bound,
    ask: &Ask,
    mark: Mark,
    unit: &'static Unit,
    value: f64,
) -> Result<(f64, f64), Fault> {
    let at = bound.term.number.at.clone();
    let size = bound.term.number.value(mark);
    if !size.is_finite() || size >= BOUNDLESS {
        return Err((at, EntryProblem::Boundless));
    }
    // Nobody states an error in feet: behind feet a bare one is in inches.
    let bare = if unit == &unit::FOOT {
        &unit::INCH
    } else {
        unit
    };
    let typed = bound.term.unit.as_ref().map_or(bare, |named| named.unit);
    let in_points = unit == &unit::PERCENT || (unit == ask.bare && ask.bare == &unit::PERCENT);
    if bound.is_percent || (typed == &unit::PERCENT && !in_points) {
        if ask.kind == Kind::Temperature {
            return Err((at, EntryProblem::PercentOfDegrees));
        }
        let error = (value * size / 100.0).abs();
        return Ok((error, error));
    }
    let step = size * typed.factor;
    if ask.kind == Kind::Slope && is_angle(typed) {
        let angle = value.atan();
        if angle.abs() + step >= FRAC_PI_2 {
            return Err((at, EntryProblem::Boundless));
        }
        return Ok(((angle + step).tan() - value, value - (angle - step).tan()));
    }
    Ok((step, step))
}

/// The unit whose bare name another country fills differently.
fn shared_unit(entry: &Entry) -> Option<&'static Unit> {
    let Amount::Parts(parts) = &entry.amount else {
        return None;
    };
    let named = parts.iter().filter_map(|part| part.unit.as_ref());
    named
        .filter(|named| named.is_shared)
        .map(|named| named.unit)
        .next()
}

/// A name that two countries fill differently, where the book's system is neither; or a fraction of an inch typed bare
/// in a field for millimetres.
pub(super) fn other_unit(
    entry: &Entry,
    ask: &Ask,
    mark: Mark,
    understood: f64,
) -> Option<Ambiguous> {
    let ambiguous = |doubt, otherwise| {
        Some(Ambiguous {
            doubt,
            understood,
            otherwise,
        })
    };
    match &entry.amount {
        Amount::Parts(parts) => {
            let shared = parts
                .iter()
                .filter_map(|part| part.unit.as_ref())
                .find(|named| named.other.is_some());
            if let Some(named) = shared {
                let otherwise = value(entry, ask, mark, ask.bare, true).ok()?;
                return ambiguous(
                    Doubt::Unit {
                        understood: named.unit,
                        otherwise: named.other?,
                    },
                    otherwise,
                );
            }
            let [only] = &**parts else {
                return None;
            };
            let (unit, bare) = unit_of(entry, ask);
            if only.unit.is_none() && unit != ask.bare {
                // `12 ± 5 thou`: twelve thou, or twelve of the field's unit?
                let otherwise = value(entry, ask, mark, ask.bare, false).ok()?;
                return ambiguous(
                    Doubt::Unit {
                        understood: unit,
                        otherwise: ask.bare,
                    },
                    otherwise,
                );
            }
            let meant = fraction_unit(only.number.denominator.filter(|_| bare)?, ask)?;
            let sign = if entry.negative { -1.0 } else { 1.0 };
            let otherwise = meant.to_si(sign * only.number.value(mark));
            ambiguous(
                Doubt::Unit {
                    understood: unit,
                    otherwise: meant,
                },
                otherwise,
            )
        }
        _ => None,
    }
}

/// What a bare fraction may be meant in, other than the unit of the field: `5/16` in inches, `1/3` as a share.
fn fraction_unit(below: u32, ask: &Ask) -> Option<&'static Unit> {
    let binary = below.is_power_of_two() && (2..=128).contains(&below);
    if binary && ask.bare == &unit::MILLIMETRE {
        return Some(&unit::INCH);
    }
    (ask.bare == &unit::PERCENT).then_some(&unit::ONE)
}
