//! The metal left between shapes that are not all round, and between a shape and an edge.

use measure::{Kind, Length, Traced};

use super::setting_out::judged;
use super::shape::{body, outline_of};
use super::{Form, Land, Placed, Point};

/// Arcs of D-holes are taken as chords of this many radians: at a radius of 50 mm they lie 0.016 mm inside the arc.
const CHORD: f64 = 0.05;

/// The room that a shape takes where it lies, without its ±: a line through points, and how far the shape reaches beyond it.
#[derive(Debug, Clone)]
pub struct Body {
    points: Vec<[f64; 2]>,
    closed: bool,
    reach: f64,
}

impl Body {
    /// The room that a shape takes, with few corners where it is round: at a radius of 50 mm that is little more than 0.1 mm less.
    #[must_use]
    pub fn here(placed: &Placed) -> Self {
        let [x, y] = placed.at.values();
        let mut numbers = vec![x, y, placed.turn.value()];
        numbers.extend(placed.shape.values());
        let form = placed.shape.form();
        let mut body = Self::of(form, placed.mirrored, &numbers, 2.5 * CHORD);
        if form == Form::Oval {
            body.points = body.points.into_iter().step_by(2).collect();
        }
        body
    }

    /// The body of a shape from place, turn and sizes, as [`Placed::inputs`] gives them.
    fn of(form: Form, mirrored: bool, numbers: &[f64], chord: f64) -> Self {
        let (place, sizes) = numbers.split_at(3);
        let (mut points, mut reach) = body(form, sizes);
        if form == Form::DHole {
            points = outline_of(form, sizes, 0.0).map_or(points, |outline| outline.chords(chord));
            reach = 0.0;
        }
        let (sin, cos) = place[2].sin_cos();
        let sign = if mirrored { -1.0 } else { 1.0 };
        for at in &mut points {
            let [x, y] = [at[0], sign * at[1]];
            *at = [place[0] + cos * x - sin * y, place[1] + sin * x + cos * y];
        }
        let closed = points.len() > 2 && form != Form::Bracket;
        Self {
            points,
            closed,
            reach,
        }
    }

    fn sides(&self) -> impl Iterator<Item = [[f64; 2]; 2]> + '_ {
        let count = self.points.len();
        let sides = if self.closed {
            count
        } else {
            (count - 1).max(1)
        };
        (0..sides).map(move |i| [self.points[i], self.points[(i + 1) % count]])
    }

    /// Whether a point lies inside: a line from it crosses the sides an odd number of times.
    fn holds(&self, at: [f64; 2]) -> bool {
        let crossed = |[a, b]: &[[f64; 2]; 2]| {
            (a[1] > at[1]) != (b[1] > at[1])
                && at[0] < a[0] + (at[1] - a[1]) * (b[0] - a[0]) / (b[1] - a[1])
        };
        self.closed && self.sides().filter(crossed).count() % 2 == 1
    }

    /// What is left between two, metres, as [`left_between`] without its ±: to find which of many is the nearest.
    #[must_use]
    pub fn left(&self, other: &Self) -> f64 {
        let apart = if self.holds(other.points[0]) || other.holds(self.points[0]) {
            0.0
        } else {
            let pairs = self
                .sides()
                .flat_map(|a| other.sides().map(move |b| square_between(a, b)));
            // One root at the end: what is nearest by its square is nearest.
            pairs.fold(f64::INFINITY, f64::min).sqrt()
        };
        apart - self.reach - other.reach
    }
}

/// The square of how far two straight sides are apart; nothing where they cross.
fn square_between(one: [[f64; 2]; 2], two: [[f64; 2]; 2]) -> f64 {
    let turn = |a: [f64; 2], b: [f64; 2], c: [f64; 2]| {
        (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    };
    let astride =
        |a: [[f64; 2]; 2], b: [[f64; 2]; 2]| turn(a[0], a[1], b[0]) * turn(a[0], a[1], b[1]) < 0.0;
    if astride(one, two) && astride(two, one) {
        return 0.0;
    }
    let ends = [(one[0], two), (one[1], two), (two[0], one), (two[1], one)];
    ends.into_iter()
        .map(|(at, side)| to_side(at, side))
        .fold(f64::INFINITY, f64::min)
}

/// The square of how far a point lies off a straight side.
fn to_side(at: [f64; 2], [a, b]: [[f64; 2]; 2]) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    let square = dx * dx + dy * dy;
    let along = ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square.max(f64::MIN_POSITIVE);
    let along = along.clamp(0.0, 1.0);
    let off = [at[0] - a[0] - along * dx, at[1] - a[1] - along * dy];
    off[0] * off[0] + off[1] * off[1]
}

/// The metal left between two shapes of any kind; below nothing or at nothing they run into each other.
///
/// Round shapes are reckoned by their centres; for others it is the least distance between the outlines.
///
/// # Units
/// Metres.
///
/// # Source
/// Plane geometry: the distance of two segments.
#[must_use]
pub fn left_between(a: &Placed, b: &Placed) -> Length {
    let round = |placed: &Placed| matches!(placed.shape.form(), Form::Round | Form::Stud);
    if round(a) && round(b) {
        let both = &a.shape.sizes()[0] / 2.0 + &b.shape.sizes()[0] / 2.0;
        return (a.at.distance(&b.at) - both).of_kind(Kind::Length);
    }
    let (mut inputs, split) = (a.inputs(), a.inputs().len());
    inputs.extend(b.inputs());
    let (one, two) = ((a.shape.form(), a.mirrored), (b.shape.form(), b.mirrored));
    let left = Length::tabled("least distance of two outlines", &inputs, move |numbers| {
        let (first, second) = numbers.split_at(split);
        Body::of(one.0, one.1, first, CHORD).left(&Body::of(two.0, two.1, second, CHORD))
    });
    left.of_kind(Kind::Length)
}

/// The land between two shapes of any kind against a minimum. What is already there (a bracket, a box section, a pipe) is a
/// shape like any other, and its land is the room left to it.
///
/// # Units
/// Metres.
///
/// # Source
/// As [`left_between`].
#[must_use]
pub fn land_between(a: &Placed, b: &Placed, least: &Length) -> Land {
    judged(left_between(a, b), least)
}

/// The land between a shape and a straight edge of the sheet metal against a minimum.
///
/// # Units
/// Metres.
///
/// # Source
/// As [`left_to_edge`].
#[must_use]
pub fn land_to_edge(shape: &Placed, edge: &[Point; 2], metal: &Point, least: &Length) -> Land {
    judged(left_to_edge(shape, edge, metal), least)
}

/// The metal left between a shape and a straight edge of the sheet metal: the line through two points, which goes on beyond them. A
/// shape that reaches beyond the edge has less than nothing left.
///
/// min over the outline of s ((b - a) x (p - a)) / |b - a|, where s is 1 or -1 so that it is more than nothing on the side of `metal`.
///
/// # Units
/// Metres.
///
/// # Valid range
/// The two points apart from each other, and `metal` off the line.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn left_to_edge(shape: &Placed, edge: &[Point; 2], metal: &Point) -> Length {
    let (mut inputs, split) = (shape.inputs(), shape.inputs().len());
    let ends: [&dyn Traced; 4] = [&edge[0].x, &edge[0].y, &edge[1].x, &edge[1].y];
    inputs.extend(ends);
    let (form, mirrored, metal) = (shape.shape.form(), shape.mirrored, metal.values());
    let left = Length::tabled("least distance to the edge", &inputs, move |numbers| {
        let (shape, edge) = numbers.split_at(split);
        let (dx, dy) = (edge[2] - edge[0], edge[3] - edge[1]);
        let long = dx.hypot(dy);
        let off = |at: [f64; 2]| (dx * (at[1] - edge[1]) - dy * (at[0] - edge[0])) / long;
        let side = off(metal).signum();
        let body = Body::of(form, mirrored, shape, CHORD);
        let inward = body.points.iter().map(|at| side * off(*at));
        inward.fold(f64::INFINITY, f64::min) - body.reach
    });
    left.of_kind(Kind::Length)
}

/// The land that is usual between two holes for fastenings: 1.2 of the smaller diameter, which is a pitch of 2.2
/// diameters where the two are alike.
///
/// # Source
/// Common practice, no source.
#[must_use]
pub fn usual_land(smaller: &Length) -> Length {
    (smaller * 1.2).of_kind(Kind::Length)
}

/// The land that is usual between a fastening's hole and the edge: one diameter, which puts its centre 1.5 diameters in.
///
/// # Source
/// Common practice, no source.
#[must_use]
pub fn usual_edge(diameter: &Length) -> Length {
    diameter.clone()
}
