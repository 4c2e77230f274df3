//! The press test: rate and friction from a spring pressed down and let up again.

use measure::{Area, Force, Kind, Length, Pressure, Quantity, Ratio, Reading, SpringRate, Stated};

use super::source;
use crate::TradeError;

/// Which way the ram was going when a point was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Going {
    /// The load was going up.
    Up,
    /// The load was coming off.
    Down,
}

impl Going {
    /// The names of the choices.
    pub const IDS: &'static [&'static str] = &["up", "down"];

    /// The choice with this name.
    #[must_use]
    pub fn named(id: &str) -> Option<Self> {
        match id {
            "up" => Some(Self::Up),
            "down" => Some(Self::Down),
            _ => None,
        }
    }

    fn sign(self) -> f64 {
        match self {
            Self::Up => 1.0,
            Self::Down => -1.0,
        }
    }
}

/// One point of the press test.
#[derive(Debug, Clone)]
pub struct PressPoint {
    /// How far the spring is pressed down from a fixed mark.
    pub travel: Length,
    /// Load on the seat.
    pub load: Force,
    /// Which way the ram was going.
    pub going: Going,
}

/// What the press test says.
#[derive(Debug, Clone)]
pub struct PressTest {
    /// Rate: the slope that both branches share; its ± holds the points' own ± and their scatter.
    pub rate: SpringRate,
    /// Standard error of the rate from the scatter alone; none with as many points as unknowns.
    pub standard_error: Option<f64>,
    /// Friction: half the height of the band between the branches; none when only one branch was read.
    pub friction: Option<Force>,
    /// Friction as a share of the mean load.
    pub friction_share: Option<Ratio>,
}

/// Load of a ram from its gauge: F = p A.
///
/// # Units
/// Pascals, square metres; newtons.
/// # Valid range
/// Gauge at the ram, its own friction neglected.
/// # Errors
/// None.
/// # Source
/// Definition of pressure.
#[must_use]
pub fn ram_load(pressure: &Pressure, area: &Area) -> Force {
    (pressure * area).of_kind(Kind::Force).called("F")
}

/// Area of a ram from its bore: A = π d² / 4.
///
/// # Units
/// Metres; square metres.
/// # Valid range
/// Single-acting, full bore.
/// # Errors
/// None.
/// # Source
/// Plane geometry.
#[must_use]
pub fn ram_area(bore: &Length) -> Area {
    (bore.squared() * (core::f64::consts::PI / 4.0))
        .of_kind(Kind::Section)
        .called("A")
}

/// Rate and friction from the points of a press test by least squares.
///
/// One slope for all points, one line for each branch, the friction half their distance:
/// k = Σ (x - x̄)(F - F̄) / Σ (x - x̄)², the means taken in each branch
///
/// # Units
/// Metres and newtons.
/// # Valid range
/// Eyes free on rollers; two points or more on a branch; the helper not touching.
/// # Errors
/// [`TradeError::TooFewPoints`] when no branch has two different points; [`TradeError::PressFalls`] when the load does not
/// grow with the travel, or is more coming off than going up, which no spring does.
/// # Source
/// Ordinary least squares, compared with NumPy.
pub fn press_test(points: &[PressPoint]) -> Result<PressTest, TradeError> {
    let branches: Vec<Branch<'_>> = [Going::Up, Going::Down]
        .into_iter()
        .filter_map(|going| Branch::of(points, going))
        .collect();
    let spread: f64 = branches.iter().map(Branch::spread).sum();
    if spread <= 0.0 || spread.is_nan() {
        return Err(TradeError::TooFewPoints {
            have: points.len(),
            need: 2,
        });
    }
    let mut above = Vec::new();
    let mut below = Vec::new();
    for branch in &branches {
        for point in &branch.points {
            let off = &point.travel - &branch.travel;
            above.push(&off * (&point.load - &branch.load));
            below.push(off.squared());
        }
    }
    let slope: SpringRate = Quantity::sum_of(above.iter()) / Quantity::sum_of(below.iter());
    let slope = slope
        .of_kind(Kind::SpringRate)
        .cited(&source::LEAST_SQUARES)
        .called("k_press");
    if slope.value() <= 0.0 {
        return Err(TradeError::PressFalls);
    }
    let unknowns = branches.len() + 1;
    let standard_error = (points.len() > unknowns).then(|| {
        let k = slope.value();
        let squares: f64 = branches.iter().map(|branch| branch.remainder(k)).sum();
        #[expect(clippy::cast_precision_loss, reason = "a handful of points")]
        let free = (points.len() - unknowns) as f64;
        (squares / free / spread).sqrt()
    });
    let rate = match standard_error {
        Some(error) if error > 0.0 => {
            (&slope + scatter(error, points.len() - unknowns)).called("k_press")
        }
        _ => slope.clone(),
    };
    let (friction, friction_share) = match &branches[..] {
        [up, down] => {
            let (friction, mean) = band(up, down, &slope, points);
            // A little below nought is scatter; more is two branches that were taken for each other.
            if friction.value() + friction.plus() < -0.01 {
                return Err(TradeError::PressFalls);
            }
            let share = (&friction / mean).of_kind(Kind::Percent).called("μ");
            (Some(friction), Some(share))
        }
        _ => (None, None),
    };
    Ok(PressTest {
        rate,
        standard_error,
        friction,
        friction_share,
    })
}

/// Half the band between the branches, and the mean load, of the least-squares lines.
fn band(
    up: &Branch<'_>,
    down: &Branch<'_>,
    slope: &SpringRate,
    points: &[PressPoint],
) -> (Force, Force) {
    let level = |branch: &Branch<'_>| &branch.load - slope * &branch.travel;
    let friction = ((level(up) - level(down)) / 2.0)
        .of_kind(Kind::Force)
        .cited(&source::LEAST_SQUARES)
        .called("F_f");
    let loads = Force::sum_of(points.iter().map(|point| &point.load));
    #[expect(clippy::cast_precision_loss, reason = "a handful of points")]
    let mean = loads / points.len() as f64;
    (friction, mean)
}

/// The scatter of the points about their lines, as an entry of its own: nothing, give or take.
fn scatter(standard_error: f64, free: usize) -> SpringRate {
    let half_width = standard_error * student(free);
    let reading = Reading {
        plus: half_width,
        minus: half_width,
        stated: Stated::Assumed,
        ..Reading::exact(0.0, &measure::unit::NEWTON_PER_METRE)
    };
    SpringRate::entry("springs/scatter", "scatter", Kind::SpringRate, &reading)
}

/// Student's factor for 95 %, two-sided.
fn student(free: usize) -> f64 {
    // Any table of Student's distribution.
    const FACTORS: [f64; 15] = [
        12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160,
        2.145, 2.131,
    ];
    let last = FACTORS.len() - 1;
    FACTORS[free.saturating_sub(1).min(last)]
}

/// The points of one way of the ram, with their means.
struct Branch<'a> {
    points: Vec<&'a PressPoint>,
    travel: Length,
    load: Force,
}

impl<'a> Branch<'a> {
    fn of(points: &'a [PressPoint], going: Going) -> Option<Self> {
        let points: Vec<_> = points
            .iter()
            .filter(|point| point.going.sign() == going.sign())
            .collect();
        if points.is_empty() {
            return None;
        }
        #[expect(clippy::cast_precision_loss, reason = "a handful of points")]
        let count = points.len() as f64;
        let travel = Length::sum_of(points.iter().map(|point| &point.travel)) / count;
        let load = Force::sum_of(points.iter().map(|point| &point.load)) / count;
        Some(Self {
            points,
            travel,
            load,
        })
    }

    fn spread(&self) -> f64 {
        let mean = self.travel.value();
        self.points
            .iter()
            .map(|point| (point.travel.value() - mean).powi(2))
            .sum()
    }

    fn remainder(&self, k: f64) -> f64 {
        let (x, f) = (self.travel.value(), self.load.value());
        self.points
            .iter()
            .map(|point| {
                let off = point.load.value() - f - k * (point.travel.value() - x);
                off * off
            })
            .sum()
    }
}
