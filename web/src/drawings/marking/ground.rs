//! What a pattern lies on: how the places of both sides come together in one view, and the vehicle's outline about them.

use crate::state::State;
use buildbook::sheets::marking::{MarkingFindings, Moved};
use trade::marking::{Outline, mirrored};

/// A place in metres: x to the right, y up.
pub type Place = [f64; 2];

/// The vehicle's centre line: where it crosses the line A–B, and how far it leans from square, radians.
#[derive(Clone, Copy)]
pub struct Centre {
    /// A point of the line.
    pub foot: Place,
    /// Along it, upward.
    pub up: Place,
    /// Whether it was measured.
    pub measured: bool,
}

impl Centre {
    /// The point of the line that lies so far up from its foot.
    pub fn at(&self, y: f64) -> Place {
        let far = y - self.foot[1];
        [
            self.foot[0] + self.up[0] * far,
            self.foot[1] + self.up[1] * far,
        ]
    }
}

/// How the new side's places come into the view, which is that of the side the pattern was taken off.
pub struct View {
    /// Where A of the new side lies.
    origin: Place,
    /// From the new A towards the new B.
    along: Place,
}

impl View {
    /// The view of a move; where nothing was measured across the vehicle, the centre line stands where it is drawn.
    pub fn of(moved: &Moved, old: [Place; 2], centre: &Centre) -> Self {
        let ends = if moved.mirrors {
            moved
                .twins
                .as_ref()
                .map(|twins| [twins[0].values(), twins[1].values()])
                .unwrap_or_else(|| old.map(|at| image(moved, at, centre)))
        } else {
            old
        };
        let (dx, dy) = (ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]);
        let length = dx.hypot(dy).max(1e-9);
        Self {
            origin: ends[0],
            along: [dx / length, dy / length],
        }
    }

    /// A place of the new side.
    pub fn at(&self, [x, y]: Place) -> Place {
        let [ux, uy] = self.along;
        [
            self.origin[0] + ux * x - uy * y,
            self.origin[1] + uy * x + ux * y,
        ]
    }

    /// An outline of the new side.
    pub fn outline(&self, outline: &Outline) -> Outline {
        outline.placed(false, self.along[1].atan2(self.along[0]), self.origin)
    }
}

/// The image of a place in the centre line.
fn image(moved: &Moved, at: Place, centre: &Centre) -> Place {
    match &moved.line {
        Some(line) => mirrored(&trade::marking::Point::exact(at[0], at[1]), line).values(),
        None => [2.0 * centre.foot[0] - at[0], at[1]],
    }
}

/// The centre line as measured, or drawn beside the pattern on the side where the vehicle's middle is.
pub fn centre(state: &State, marking: &MarkingFindings, lowest: f64, highest: f64) -> Centre {
    if let Some(line) = &marking.moved.line {
        let (sin, cos) = line.normal.value().sin_cos();
        let offset = line.offset.value();
        let up = if cos > 0.0 { [-sin, cos] } else { [sin, -cos] };
        return Centre {
            foot: [offset / cos, 0.0],
            up,
            measured: true,
        };
    }
    let on_the_left = state.findings.vehicle.sheet.steering_now.value() == Some(&"left");
    let from_the_seat = marking.sheet.seen_from.value() != Some(&"front");
    let gap = 0.3 * (highest - lowest).max(0.2);
    let x = if on_the_left == from_the_seat {
        highest + gap
    } else {
        lowest - gap
    };
    Centre {
        foot: [x, 0.0],
        up: [0.0, 1.0],
        measured: false,
    }
}

/// The outline of the bulkhead about the centre line: scuttle above, the tunnel below; or of the floor, seen from above.
/// `half` is half the vehicle's width there, `low` and `high` what it has to hold.
pub fn panel(from_above: bool, centre: &Centre, half: f64, low: f64, high: f64) -> Vec<Place> {
    let tall = high - low;
    // Heights above `low`, distances from the centre line as shares of half the width, on the right side from the bottom up.
    let side: &[Place] = if from_above {
        &[
            [0.16, 0.0],
            [0.98, 0.0],
            [1.0, 0.86],
            [0.9, 1.0],
            [0.3, 1.06],
            [0.0, 1.06],
        ]
    } else {
        &[
            [0.15, 0.3],
            [0.19, 0.2],
            [0.24, 0.0],
            [0.86, 0.0],
            [0.97, 0.16],
            [1.0, 0.5],
            [0.97, 0.94],
            [0.9, 1.0],
            [0.45, 1.05],
            [0.0, 1.07],
        ]
    };
    let right = side.iter().map(|[x, y]| [x * half, low + y * tall]);
    let left = side.iter().rev().map(|[x, y]| [-x * half, low + y * tall]);
    right
        .chain(left)
        .map(|[x, y]| {
            let [ux, uy] = centre.up;
            [
                centre.foot[0] + uy * x + ux * y,
                centre.foot[1] - ux * x + uy * y,
            ]
        })
        .collect()
}
