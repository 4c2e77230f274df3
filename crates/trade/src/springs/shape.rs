//! The spring as a drawing needs it: each leaf's outline at true size, free or loaded. Plain metres.

use super::arch::Arc;
use super::leaf::{LeafKind, Pack};

/// A point on the side view: forwards (towards the rear) and up, from the upper face of the main leaf at the centre bolt.
pub type Place = (f64, f64);

/// The outline of one leaf in side view.
#[derive(Debug, Clone, PartialEq)]
pub struct LeafShape {
    /// What the leaf does.
    pub kind: LeafKind,
    /// Upper face, front tip to rear tip.
    pub upper: Vec<Place>,
    /// Lower face, front tip to rear tip.
    pub lower: Vec<Place>,
}

/// A whole spring in side view, front to the left.
#[derive(Debug, Clone, PartialEq)]
pub struct SpringShape {
    /// The leaves, from the top of the pile.
    pub leaves: Vec<LeafShape>,
    /// Centre of the front eye.
    pub front_eye: Place,
    /// Centre of the rear eye.
    pub rear_eye: Place,
    /// Arch: height of the line of the eyes over the upper face of the main leaf at the seat.
    pub arch_m: f64,
    /// Half of the length that does not bend.
    pub half_dead_m: f64,
}

/// Points along each half of a leaf: enough that an arc looks round at the size of a screen.
const POINTS: u8 = 24;

/// How a spring lies: what its shape follows from. The shape itself is worked out when a drawing asks for it.
#[derive(Debug, Clone)]
pub struct SpringLie {
    /// The leaves.
    pub pack: Pack,
    /// Arch of the main leaf.
    pub arch_m: f64,
    /// How far the eyes' centres lie above the middle line of the main leaf's ends.
    pub eye_rise_m: f64,
}

impl SpringLie {
    /// The side view, the leaves lying on one another.
    #[must_use]
    pub fn shape(&self) -> SpringShape {
        spring_shape(&self.pack, self.arch_m, self.eye_rise_m)
    }
}

fn spring_shape(pack: &Pack, arch_m: f64, eye_rise_m: f64) -> SpringShape {
    let main = pack.main();
    let half_thickness = main.thickness.value() / 2.0;
    let arc = Arc::with_rise(
        arch_m + half_thickness - eye_rise_m,
        main.front.value(),
        main.rear.value(),
        pack.dead.value(),
    );
    let mut depth = half_thickness + pack.pile_above().value();
    // Depth counts from the middle line of the main leaf, upwards positive.
    let leaves = pack
        .leaves()
        .iter()
        .map(|leaf| {
            let thickness = leaf.thickness.value();
            let tips = (leaf.front.value(), leaf.rear.value());
            let line = middle_line(&arc, tips);
            let upper = face(&line, depth, half_thickness);
            let lower = face(&line, depth - thickness, half_thickness);
            depth -= thickness;
            LeafShape {
                kind: leaf.kind,
                upper,
                lower,
            }
        })
        .collect();
    let eye = |along: f64, sign: f64| {
        let (out, up) = arc.point(along);
        let (sin, cos) = angle(&arc, along).sin_cos();
        (
            sign * (out - sin * eye_rise_m),
            up + cos * eye_rise_m - half_thickness,
        )
    };
    SpringShape {
        leaves,
        front_eye: eye(main.front.value(), -1.0),
        rear_eye: eye(main.rear.value(), 1.0),
        arch_m,
        half_dead_m: pack.dead.value() / 2.0,
    }
}

/// Slope of the main leaf at a place along it.
fn angle(arc: &Arc, along: f64) -> f64 {
    arc.curvature_per_m * (along - arc.dead_m / 2.0).max(0.0)
}

/// A point of the main leaf's middle line, and which way it is square to it: (forwards, up).
struct Along {
    at: Place,
    square: Place,
}

/// The main leaf's middle line as far as a leaf's tips, front to rear.
fn middle_line(arc: &Arc, tips: (f64, f64)) -> Vec<Along> {
    let point = |along: f64, sign: f64| {
        let (out, up) = arc.point(along);
        let (sin, cos) = angle(arc, along).sin_cos();
        Along {
            at: (sign * out, up),
            square: (-sign * sin, cos),
        }
    };
    let step = |tip: f64, i: u8| tip * f64::from(i) / f64::from(POINTS);
    let front = (1..=POINTS).rev().map(|i| point(step(tips.0, i), -1.0));
    let rear = (0..=POINTS).map(|i| point(step(tips.1, i), 1.0));
    front.chain(rear).collect()
}

/// One face of a leaf: the middle line moved square to itself.
fn face(line: &[Along], offset: f64, half_thickness: f64) -> Vec<Place> {
    let moved = |along: &Along| {
        (
            along.at.0 + along.square.0 * offset,
            along.at.1 + along.square.1 * offset - half_thickness,
        )
    };
    line.iter().map(moved).collect()
}
