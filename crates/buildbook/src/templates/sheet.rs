//! The pattern turned so that UP is at the top, in millimetres.

use trade::marking::{Corner, Outline};

use super::ink::around;
use super::{Feature, Template};

/// What takes places of the pattern, in metres, to the paper, in millimetres.
#[derive(Debug, Clone, Copy)]
pub(super) struct Lay {
    turn: f64,
    from_behind: bool,
}

impl Lay {
    pub(super) fn of(template: &Template) -> Self {
        Self {
            turn: std::f64::consts::FRAC_PI_2 - template.up,
            from_behind: template.from_behind,
        }
    }

    /// What leaves the pattern's own axes as they are.
    pub(super) fn upright() -> Self {
        Self {
            turn: 0.0,
            from_behind: false,
        }
    }

    /// A place on the paper.
    pub(super) fn place(self, at: [f64; 2]) -> [f64; 2] {
        let (sin, cos) = self.turn.sin_cos();
        let side = if self.from_behind { -1.0 } else { 1.0 };
        [
            side * 1e3 * (cos * at[0] - sin * at[1]),
            1e3 * (sin * at[0] + cos * at[1]),
        ]
    }

    /// A direction on the paper, radians.
    pub(super) fn direction(self, angle: f64) -> f64 {
        let angle = angle + self.turn;
        if self.from_behind {
            std::f64::consts::PI - angle
        } else {
            angle
        }
    }

    /// An outline on the paper.
    pub(super) fn outline(self, outline: &Outline) -> Outline {
        let side = if self.from_behind { -1.0 } else { 1.0 };
        let corners = outline.corners.iter().map(|corner| Corner {
            at: self.place(corner.at),
            bulge: side * corner.bulge,
        });
        Outline {
            corners: corners.collect(),
            closed: outline.closed,
        }
    }
}

/// The box around everything, in millimetres; none where there is nothing.
pub(super) fn extent(template: &Template) -> Option<[[f64; 2]; 2]> {
    let lay = Lay::of(template);
    let features = template.features.iter();
    let features = features.map(|Feature { outline, .. }| lay.outline(outline).bounds());
    let datums = template.datums.iter().map(|(_, at)| {
        let [x, y] = lay.place(*at);
        [[x - 6.0, y - 6.0], [x + 6.0, y + 6.0]]
    });
    let edges = template.edges.iter().map(|[from, to]| {
        let [from, to] = [from, to].map(|at| lay.place(*at));
        around([from; 2], [to; 2])
    });
    features.chain(datums).chain(edges).reduce(around)
}
