//! The geometry of an arched leaf: curve, camber, and the distance between the eyes.

use measure::{Kind, Length, PerLength};

use super::leaf::{Leaf, Pack};
use super::source;

/// Curve of a leaf that lies loose, from its arch: the arc through the centre bolt whose tips' chord lies `arch` above it.
///
/// arch = (yf xr + yr xf) / (xf + xr), x = sin(κ s) / κ, y = (1 - cos(κ s)) / κ at the two tips
///
/// # Units
/// Metres; per metre.
/// # Valid range
/// An even curve, arch up to a third of the length.
/// # Errors
/// None: an arch that no such arc reaches gives the curve that comes nearest.
/// # Source
/// Plane geometry.
#[must_use]
pub fn loose_curvature(leaf: &Leaf) -> Option<PerLength> {
    let arch = leaf.arch.as_ref()?;
    Some(
        PerLength::tabled("curve of arch", &[arch, &leaf.front, &leaf.rear], |v| {
            Arc::with_rise(v[0], v[1], v[2], 0.0).curvature_per_m
        })
        .cited(&source::GEOMETRY)
        .called("κ"),
    )
}

/// Camber of the main leaf's middle line, from the arch of the spring.
///
/// h = arch + t/2 - e, with e how far the eye's centre lies above the middle line of the leaf there
///
/// # Units
/// Metres.
/// # Valid range
/// Arch from the line of the eye centres to the upper face of the main leaf at the seat.
/// # Errors
/// None.
/// # Source
/// Plane geometry.
#[must_use]
pub fn camber(arch: &Length, main_thickness: &Length, eye_rise: &Length) -> Length {
    (arch + main_thickness / 2.0 - eye_rise).called("h")
}

/// Arch of the spring from the camber of its main leaf's middle line: [`camber`] turned round.
///
/// arch = h - t/2 + e
///
/// # Units
/// Metres.
/// # Valid range
/// As [`camber`].
/// # Errors
/// None.
/// # Source
/// Plane geometry.
#[must_use]
pub fn arch_of_camber(camber: &Length, main_thickness: &Length, eye_rise: &Length) -> Length {
    (camber - main_thickness / 2.0 + eye_rise).called("arch")
}

/// Camber of the main leaf's middle line when it has a curve from the edges of a flat seat on.
///
/// h = (yf xr + yr xf) / (xf + xr), the tips as for the arch of a loose leaf
///
/// # Units
/// Per metre; metres.
/// # Valid range
/// An even curve.
/// # Errors
/// None.
/// # Source
/// Plane geometry.
#[must_use]
pub fn camber_of_curve(pack: &Pack, curvature: &PerLength) -> Length {
    Length::tabled(
        "camber of curve",
        &[curvature, &pack.main().front, &pack.main().rear, &pack.dead],
        |v| {
            Arc {
                curvature_per_m: v[0],
                front_m: v[1],
                rear_m: v[2],
                dead_m: v[3],
            }
            .rise_m()
        },
    )
    .of_kind(Kind::Length)
    .cited(&source::GEOMETRY)
    .called("h")
}

/// Distance between the eye centres, along their line, of a main leaf that has this camber.
///
/// L = xf + xr of the two arcs that rise from the flat seat; about s - 8 h² / 3 s
///
/// # Units
/// Metres.
/// # Valid range
/// Camber up to a third of the length, up or reversed.
/// # Errors
/// None.
/// # Source
/// Plane geometry.
/// # Example
/// A strip of 821.17 mm with 80 mm camber spans 800 mm.
#[must_use]
pub fn eye_to_eye(pack: &Pack, camber: &Length) -> Length {
    Length::tabled(
        "chord of arc",
        &[camber, &pack.main().front, &pack.main().rear, &pack.dead],
        |v| Arc::with_rise(v[0], v[1], v[2], v[3]).chord_m(),
    )
    .of_kind(Kind::Length)
    .cited(&source::GEOMETRY)
    .called("L_eyes")
}

/// A main leaf bent evenly on a flat seat, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Arc {
    pub curvature_per_m: f64,
    pub front_m: f64,
    pub rear_m: f64,
    pub dead_m: f64,
}

impl Arc {
    /// The arc whose eyes' line lies `rise` above its seat.
    pub fn with_rise(rise_m: f64, front_m: f64, rear_m: f64, dead_m: f64) -> Self {
        let mut arc = Self {
            curvature_per_m: 2.0 * rise_m / (front_m * rear_m),
            front_m,
            rear_m,
            dead_m,
        };
        // Newton's method on a nearly straight line: a handful of steps settle it.
        for _ in 0..12 {
            let step = 1e-4;
            let off = arc.rise_m() - rise_m;
            // A thousandth of a micrometre: far below what any rule reads.
            if off.abs() < 1e-12 {
                break;
            }
            let beyond = Self {
                curvature_per_m: arc.curvature_per_m + step,
                ..arc
            };
            let slope = (beyond.rise_m() - arc.rise_m()) / step;
            if slope.abs() < 1e-6 {
                break;
            }
            arc.curvature_per_m -= off / slope;
        }
        arc
    }

    /// Place of a point `along` the leaf from the centre bolt, the seat flat: (outwards, up).
    pub fn point(&self, along_m: f64) -> (f64, f64) {
        let flat = along_m.min(self.dead_m / 2.0);
        let s = along_m - flat;
        let angle = self.curvature_per_m * s;
        if angle.abs() < 1e-6 {
            (flat + s, angle * s / 2.0)
        } else {
            (
                flat + angle.sin() / self.curvature_per_m,
                (1.0 - angle.cos()) / self.curvature_per_m,
            )
        }
    }

    /// Height of the line of the eyes above the seat, square above the centre bolt.
    pub fn rise_m(&self) -> f64 {
        let (xf, yf) = self.point(self.front_m);
        let (xr, yr) = self.point(self.rear_m);
        (yf * xr + yr * xf) / (xf + xr)
    }

    /// Distance between the eyes.
    pub fn chord_m(&self) -> f64 {
        let (xf, yf) = self.point(self.front_m);
        let (xr, yr) = self.point(self.rear_m);
        (xf + xr).hypot(yf - yr)
    }
}
