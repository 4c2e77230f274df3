//! Lines for the two drawings, in SI units.

use trade::gearing::saw_tooth;

use super::gears::{GearFound, Line};
use super::pull::Pulling;

/// What the drawings show: speed against engine speed, and effort against road load.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sketch {
    /// The engine speeds between which lines are drawn, turns per second.
    pub engine: (f64, f64),
    /// Each gear, and road speed for each turn of the engine (m).
    pub gears: Vec<(GearFound, f64)>,
    /// Up through the gears: engine speed (turns per second) and road speed (m/s).
    pub saw_tooth: Vec<(f64, f64)>,
    /// Effort in each gear.
    pub effort: Vec<EffortLine>,
    /// Road load on slopes: rise to run, and force over road speed.
    pub loads: Vec<(f64, Vec<(f64, f64)>)>,
    /// The cruise, m/s.
    pub cruise: Option<f64>,
}

/// The effort in one gear.
#[derive(Debug, Clone, PartialEq)]
pub struct EffortLine {
    /// The gear.
    pub gear: GearFound,
    /// Road speed (m/s) and force (N).
    pub points: Vec<(f64, f64)>,
}

/// Points along a curved line.
const POINTS: usize = 33;
/// Engine speeds for the drawing where none are known: from a slow idle to the speed told of.
const SLOWEST: f64 = 600.0 / 60.0;
const FASTEST: f64 = 4000.0 / 60.0;

impl Sketch {
    pub(super) fn of(line: &Line, pulling: &Pulling) -> Self {
        let told = line
            .sheet
            .engine_speed
            .value()
            .map(measure::Rotation::value);
        let red_line = pulling.red_line.as_ref().map(measure::Rotation::value);
        let engine = match &pulling.limits {
            Ok(limits) => limits.range(),
            Err(_) => (
                SLOWEST,
                red_line.or(told).unwrap_or(FASTEST).max(2.0 * SLOWEST),
            ),
        };
        let gears: Vec<(GearFound, f64)> = line
            .gears
            .iter()
            .zip(&pulling.pulls)
            .filter_map(|(gear, pull)| {
                let pull = pull.as_ref().ok()?;
                Some((
                    gear.found.clone(),
                    pull.circumference.value() / pull.overall.value(),
                ))
            })
            .collect();
        let mut falling: Vec<f64> = gears.iter().map(|(_, metres)| 1.0 / metres).collect();
        measure::sort_by(&mut falling, |a, b| b.total_cmp(a));
        Self {
            engine,
            saw_tooth: saw_tooth(1.0, &falling, engine),
            cruise: line.sheet.road_speed.value().map(measure::Speed::value),
            gears,
            ..Self::forces(line, pulling)
        }
    }

    fn forces(line: &Line, pulling: &Pulling) -> Self {
        let (Ok(curve), Ok(limits), Ok(resistance)) =
            (&pulling.curve, &pulling.limits, &pulling.resistance)
        else {
            return Self::default();
        };
        let effort: Vec<EffortLine> = line
            .gears
            .iter()
            .zip(&pulling.pulls)
            .filter_map(|(gear, pull)| {
                let pull = pull.as_ref().ok()?;
                Some(EffortLine {
                    gear: gear.found.clone(),
                    points: pull.line(curve, limits.range(), POINTS),
                })
            })
            .collect();
        let fastest = effort
            .iter()
            .filter_map(|line| line.points.last())
            .map(|(speed, _)| *speed)
            .fold(0.0, f64::max);
        let slopes = [0.0, 0.05, 0.10, 0.15, 0.20, 0.25];
        let loads = slopes
            .map(|slope| (slope, resistance.line(slope, fastest, POINTS)))
            .to_vec();
        Self {
            effort,
            loads,
            ..Self::default()
        }
    }
}
