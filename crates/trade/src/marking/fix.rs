//! A feature's position from readings, by least squares, and what its readings say of each other.

use measure::{Figure, Held, Kind, Length, Quantity, Source, Table, Traced};

use super::frame::{meeting, meets, weight};
use super::normal::settle;
use super::{Point, Side};
use crate::TradeError;

static LEAST_SQUARES: Source = Source {
    title: "JCGM 100:2008, Guide to the expression of uncertainty in measurement",
    place: "H.3 (least squares), 5.2 (correlated input quantities)",
    held: Held::Memory,
};

/// One reading of a feature's centre: edges and diameters are allowed for before.
#[derive(Debug, Clone)]
pub enum Sight {
    /// A distance from a datum.
    From {
        /// The datum.
        datum: Point,
        /// How far the feature's centre lies from it.
        distance: Length,
    },
    /// How far along the datum line from the first datum.
    Along(Length),
    /// How far from the datum line, to the side that the fix asks for.
    Across(Length),
}

/// Where a feature lies and how far that can be trusted.
#[derive(Debug, Clone)]
pub struct Fix {
    /// The position.
    pub at: Point,
    /// Each reading less what the position gives.
    pub residuals: Vec<Length>,
    /// What the readings say of each other.
    pub check: Check,
}

/// What a feature's readings say of each other.
#[derive(Debug, Clone, PartialEq)]
pub enum Check {
    /// As many readings as unknowns: nothing checks them.
    Nothing,
    /// The readings agree within their ±.
    Agree,
    /// They disagree, and with one reading to spare nobody can say which is wrong.
    OneIsBad,
    /// They disagree; without this reading the others agree.
    Spoiled {
        /// The reading at fault.
        reading: usize,
        /// Other readings that could be at fault as well, since the rest agree without them too.
        or: Vec<usize>,
    },
    /// They disagree, and leaving out any one does not help.
    SeveralAreBad,
}

/// The 95 % point of the chi-squared distribution for 1 to 10 degrees of freedom (NIST/SEMATECH e-Handbook, 1.3.6.7.4).
const CHI_SQUARED_95: [f64; 10] = [
    3.841, 5.991, 7.815, 9.488, 11.070, 12.592, 14.067, 15.507, 16.919, 18.307,
];

/// A reading as plain numbers: kind, datum, value.
#[derive(Clone, Copy)]
enum Row {
    From([f64; 2], f64),
    Along(f64),
    Across(f64),
}

impl Row {
    /// Slopes by x and y, and the remainder (position less reading).
    fn equation(self, at: &[f64; 2]) -> ([f64; 2], f64) {
        match self {
            Self::From(datum, distance) => {
                let (dx, dy) = (at[0] - datum[0], at[1] - datum[1]);
                let d = dx.hypot(dy).max(1e-9);
                ([dx / d, dy / d], d - distance)
            }
            Self::Along(x) => ([1.0, 0.0], at[0] - x),
            Self::Across(y) => ([0.0, 1.0], at[1] - y),
        }
    }
}

/// The position of a feature from two or more readings, to the given side of the datum line.
///
/// The sum of the squared remainders, each weighed by its ± and that of its datum, is made least.
///
/// # Units
/// Lengths in metres.
///
/// # Errors
/// [`TradeError::Undetermined`] with fewer than two readings, or with readings that do not fix a place (all datums in
/// one line with the feature); [`TradeError::CannotMeet`] where two distances alone cannot meet.
///
/// # Source
/// JCGM 100:2008, H.3.
pub fn fix(sights: &[Sight], side: Side) -> Result<Fix, TradeError> {
    let own = |sight: &Sight| match sight {
        Sight::From { datum, .. } => datum_deviation_m(datum),
        _ => 0.0,
    };
    fix_from(sights, &sights.iter().map(own).collect::<Vec<_>>(), side)
}

/// The standard deviation of a datum, metres: that of its less certain coordinate.
#[must_use]
pub fn datum_deviation_m(datum: &Point) -> f64 {
    deviation_m(&datum.x).max(deviation_m(&datum.y))
}

/// The standard deviation of a length (k = 2), by the greater of its two sides.
pub(super) fn deviation_m(length: &Length) -> f64 {
    // The figure finds both sides in one.
    let figure = length.figure(Kind::Length);
    0.5 * figure.plus().max(figure.minus())
}

/// As [`fix`], with the standard deviation of the datum of each reading (metres; nothing for an offset) where many features are read
/// from the same datums.
///
/// # Units
/// Lengths in metres.
///
/// # Errors
/// As [`fix`].
///
/// # Source
/// As [`fix`].
pub fn fix_from(sights: &[Sight], datums: &[f64], side: Side) -> Result<Fix, TradeError> {
    if sights.len() < 2 {
        return Err(TradeError::Undetermined { entry: "readings" });
    }
    if let [
        Sight::From {
            datum: a,
            distance: r1,
        },
        Sight::From {
            datum: b,
            distance: r2,
        },
    ] = sights
    {
        meets(&a.distance(b), r1, r2)?;
    }
    let weights: Vec<f64> = sights
        .iter()
        .zip(datums)
        .map(|(sight, datum)| {
            // A reading weighs by its own ±, and can be no better than the datum it runs from.
            let own = weight(reading(sight));
            own / (1.0 + own * datum * datum)
        })
        .collect();
    let (inputs, shape) = inputs(sights);
    let sign = side.sign();
    let start = rows(
        &shape,
        &inputs.iter().map(|input| input.1).collect::<Vec<_>>(),
        sign,
    );
    let whole =
        place(&start, &weights, sign).ok_or(TradeError::Undetermined { entry: "readings" })?;
    let traced: Vec<&dyn Traced> = inputs.iter().map(|input| input.0).collect();
    let (at, slopes) = beside(whole, &start, &weights, sign);
    let table = Table::known("position by least squares", &traced, at.into(), slopes);
    let coordinate = |i: usize| table.output(i).of_kind(Kind::Length).cited(&LEAST_SQUARES);
    let at = Point {
        x: coordinate(0),
        y: coordinate(1),
    };
    let residuals = sights
        .iter()
        .map(|sight| residual(sight, &at, sign))
        .collect();
    Ok(Fix {
        at,
        residuals,
        check: check(&start, &weights, sign, whole),
    })
}

fn reading(sight: &Sight) -> &Length {
    match sight {
        Sight::From { distance, .. } => distance,
        Sight::Along(x) => x,
        Sight::Across(y) => y,
    }
}

fn residual(sight: &Sight, at: &Point, sign: f64) -> Length {
    match sight {
        Sight::From { datum, distance } => distance - at.distance(datum),
        Sight::Along(x) => x - &at.x,
        Sight::Across(y) => y - &at.y * sign,
    }
}

/// What shape each reading has: how many numbers it takes and of which kind.
#[derive(Clone, Copy)]
enum Shape {
    From,
    Along,
    Across,
}

type Input<'a> = (&'a dyn Traced, f64);

fn inputs(sights: &[Sight]) -> (Vec<Input<'_>>, Vec<Shape>) {
    fn input<D>(quantity: &Quantity<D>) -> Input<'_>
    where
        D: measure::Dimension,
    {
        (quantity, quantity.value())
    }
    let mut inputs: Vec<Input<'_>> = Vec::new();
    let mut shape = Vec::new();
    for sight in sights {
        match sight {
            Sight::From { datum, distance } => {
                inputs.extend([input(&datum.x), input(&datum.y), input(distance)]);
                shape.push(Shape::From);
            }
            Sight::Along(x) => {
                inputs.push(input(x));
                shape.push(Shape::Along);
            }
            Sight::Across(y) => {
                inputs.push(input(y));
                shape.push(Shape::Across);
            }
        }
    }
    (inputs, shape)
}

fn rows(shape: &[Shape], numbers: &[f64], sign: f64) -> Vec<Row> {
    let mut numbers = numbers.iter().copied();
    let mut next = || numbers.next().unwrap_or(f64::NAN);
    shape
        .iter()
        .map(|shape| match shape {
            Shape::From => Row::From([next(), next()], next()),
            Shape::Along => Row::Along(next()),
            Shape::Across => Row::Across(sign * next()),
        })
        .collect()
}

/// The place that makes the weighed squares least.
fn place(rows: &[Row], weights: &[f64], sign: f64) -> Option<[f64; 2]> {
    let best = starts(rows, sign)
        .into_iter()
        .min_by(|a, b| misfit(rows, weights, a).total_cmp(&misfit(rows, weights, b)))?;
    settled(best, rows, weights)
}

/// The place next to a first guess that makes the weighed squares least.
fn settled(guess: [f64; 2], rows: &[Row], weights: &[f64]) -> Option<[f64; 2]> {
    settle(guess, |at| {
        let with = rows.iter().zip(weights);
        with.map(|(row, weight)| {
            let (slopes, remainder) = row.equation(at);
            (slopes, remainder, *weight)
        })
        .collect()
    })
}

/// The place after one more step of Newton's with the whole second derivative, and its slopes by every number of the readings, in
/// their order: those that keep the slope of the squares at nothing (the theorem on implicit functions).
fn beside(at: [f64; 2], rows: &[Row], weights: &[f64], sign: f64) -> ([f64; 2], Vec<f64>) {
    let (mut whole, mut steep) = ([0.0; 3], [0.0; 2]);
    let bent = |row: &Row, weight: f64| {
        let ([ux, uy], remainder) = row.equation(&at);
        // A circle bends, an offset does not: what remains of a distance turns the slope.
        let bend = match row {
            Row::From(_, distance) => remainder / (remainder + distance).max(1e-9),
            _ => 0.0,
        };
        let second = [
            weight * (ux * ux + bend * uy * uy),
            weight * (ux * uy - bend * ux * uy),
            weight * (uy * uy + bend * ux * ux),
        ];
        ([weight * ux, weight * uy], remainder, second)
    };
    let rows: Vec<_> = rows
        .iter()
        .zip(weights)
        .map(|(row, weight)| (row, bent(row, *weight)))
        .collect();
    for (_, ([ux, uy], remainder, second)) in &rows {
        whole = std::array::from_fn(|i| whole[i] + second[i]);
        steep = [steep[0] + remainder * ux, steep[1] + remainder * uy];
    }
    let [xx, xy, yy] = whole;
    let determinant = xx * yy - xy * xy;
    let solved = |[x, y]: [f64; 2]| {
        [
            (yy * x - xy * y) / determinant,
            (xx * y - xy * x) / determinant,
        ]
    };
    let mut slopes = Vec::new();
    for (row, (up, _, [xx, xy, yy])) in rows {
        let own = match row {
            Row::From(..) => {
                slopes.extend([[xx, xy], [xy, yy]].into_iter().flat_map(solved));
                1.0
            }
            Row::Along(_) => 1.0,
            Row::Across(_) => sign,
        };
        slopes.extend(solved(up.map(|of| own * of)));
    }
    let by = solved(steep);
    ([at[0] - by[0], at[1] - by[1]], slopes)
}

/// First guesses: every pair of distances that meets, and every offset pair, on the side asked.
fn starts(rows: &[Row], sign: f64) -> Vec<[f64; 2]> {
    let mut starts = Vec::new();
    let along = rows.iter().find_map(|row| {
        if let Row::Along(x) = row {
            Some(*x)
        } else {
            None
        }
    });
    let across = rows.iter().find_map(|row| {
        if let Row::Across(y) = row {
            Some(*y)
        } else {
            None
        }
    });
    if let (Some(x), Some(y)) = (along, across) {
        starts.push([x, y]);
    }
    let circles: Vec<([f64; 2], f64)> = rows
        .iter()
        .filter_map(|row| {
            if let Row::From(datum, r) = row {
                Some((*datum, *r))
            } else {
                None
            }
        })
        .collect();
    for (i, one) in circles.iter().enumerate() {
        for two in &circles[i + 1..] {
            let both = [1.0, -1.0].map(|s| meeting(one.0, one.1, two.0, two.1, s));
            starts.extend(
                both.into_iter()
                    .flatten()
                    .filter(|at| at[1] * sign >= -1e-9),
            );
        }
        // One distance and one offset fix a place as well.
        if let Some(x) = along {
            let h = (one.1 * one.1 - (x - one.0[0]).powi(2)).max(0.0).sqrt();
            starts.extend([[x, one.0[1] + sign * h], [x, one.0[1] - sign * h]]);
        }
        if let Some(y) = across {
            let h = (one.1 * one.1 - (y - one.0[1]).powi(2)).max(0.0).sqrt();
            starts.extend([[one.0[0] + h, y], [one.0[0] - h, y]]);
        }
    }
    starts
}

/// Chi-squared of a place.
fn misfit(rows: &[Row], weights: &[f64], at: &[f64; 2]) -> f64 {
    rows.iter()
        .zip(weights)
        .map(|(row, weight)| weight * row.equation(at).1.powi(2))
        .sum()
}

fn agrees(misfit: f64, spare: usize) -> bool {
    misfit <= CHI_SQUARED_95[spare.clamp(1, CHI_SQUARED_95.len()) - 1]
}

/// Two readings check nothing, three can only tell that one is bad, four can name it: the one without which the rest agree.
fn check(rows: &[Row], weights: &[f64], sign: f64, at: [f64; 2]) -> Check {
    let spare = rows.len() - 2;
    if spare == 0 {
        return Check::Nothing;
    }
    if agrees(misfit(rows, weights, &at), spare) {
        return Check::Agree;
    }
    if spare == 1 {
        return Check::OneIsBad;
    }
    let mut without: Vec<(usize, f64)> = (0..rows.len())
        .filter_map(|i| {
            let (mut rest, mut weigh) = (rows.to_vec(), weights.to_vec());
            rest.remove(i);
            weigh.remove(i);
            let at = place(&rest, &weigh, sign)?;
            Some((i, misfit(&rest, &weigh, &at)))
        })
        .filter(|(_, misfit)| agrees(*misfit, spare - 1))
        .collect();
    measure::sort_by(&mut without, |a, b| a.1.total_cmp(&b.1));
    match without.split_first() {
        None => Check::SeveralAreBad,
        Some(((reading, _), others)) => Check::Spoiled {
            reading: *reading,
            or: others.iter().map(|(i, _)| *i).collect(),
        },
    }
}

/// The 95 % ellipse of a position.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ellipse {
    /// Half the long axis, metres.
    pub long: f64,
    /// Half the short axis, metres.
    pub short: f64,
    /// From the x axis to the long axis, radians.
    pub angle: f64,
}

/// The ellipse that holds the true position with 95 % probability: the covariance of x and y by the entries they share,
/// scaled by sqrt(5.991), the 95 % point of chi-squared with two degrees of freedom.
///
/// # Units
/// Metres and radians.
///
/// # Source
/// JCGM 102:2011, 6.5.2.4 (elliptical coverage region, k = 2.45), from memory.
#[must_use]
pub fn error_ellipse(at: &Point) -> Ellipse {
    let (x, y) = (at.x.figure(Kind::Length), at.y.figure(Kind::Length));
    let deviation = |part: &measure::Contribution| 0.5 * part.plus.max(part.minus);
    let variance = |figure: &Figure| {
        figure
            .contributions()
            .iter()
            .map(|part| (part.slope * deviation(part)).powi(2))
            .sum::<f64>()
    };
    let both: f64 = x
        .contributions()
        .iter()
        .map(|part| part.slope * y.slope(&part.key) * deviation(part).powi(2))
        .sum();
    let (vx, vy) = (variance(&x), variance(&y));
    let (mean, half) = (0.5 * (vx + vy), 0.5 * (vx - vy));
    let reach = half.hypot(both);
    let axis = |v: f64| (CHI_SQUARED_95[1] * v.max(0.0)).sqrt();
    Ellipse {
        long: axis(mean + reach),
        short: axis(mean - reach),
        angle: 0.5 * (2.0 * both).atan2(vx - vy),
    }
}
