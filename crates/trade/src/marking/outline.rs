//! An outline as a scriber draws it: straight lines and arcs from corner to corner.

/// A corner of an outline, and how far the way to the next one bulges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corner {
    /// Where it lies: x and y, metres.
    pub at: [f64; 2],
    /// The tangent of a quarter of the arc's sweep to the next corner: 0 is a straight line, 1 half a circle
    /// anticlockwise, below 0 clockwise.
    pub bulge: f64,
}

/// Corners joined by lines and arcs; in a closed outline the last joins the first.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// The corners, in order.
    pub corners: Vec<Corner>,
    /// Whether it comes back to where it began, so that it has an inside.
    pub closed: bool,
}

/// An arc of an outline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arc {
    /// Its centre, metres.
    pub centre: [f64; 2],
    /// Its radius, metres.
    pub radius: f64,
    /// Where it begins, from the x axis, radians.
    pub start: f64,
    /// How far it goes round, radians; below nothing is clockwise.
    pub sweep: f64,
}

/// The way from one corner to the next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    /// Where it begins, metres.
    pub from: [f64; 2],
    /// Where it ends, metres.
    pub to: [f64; 2],
    /// The arc, where it is not straight.
    pub arc: Option<Arc>,
}

impl Piece {
    fn new(from: [f64; 2], to: [f64; 2], bulge: f64) -> Self {
        let (dx, dy) = (to[0] - from[0], to[1] - from[1]);
        let arc = (bulge != 0.0 && dx.hypot(dy) > 0.0).then(|| {
            // From the middle of the chord to the centre, in chords, to the left of the way.
            let left = (1.0 - bulge * bulge) / (4.0 * bulge);
            let centre = [
                0.5 * (from[0] + to[0]) - left * dy,
                0.5 * (from[1] + to[1]) + left * dx,
            ];
            Arc {
                centre,
                radius: dx.hypot(dy) * (1.0 + bulge * bulge) / (4.0 * bulge.abs()),
                start: (from[1] - centre[1]).atan2(from[0] - centre[0]),
                sweep: 4.0 * bulge.atan(),
            }
        });
        Self { from, to, arc }
    }

    /// How long it is, metres.
    #[must_use]
    pub fn length(&self) -> f64 {
        match self.arc {
            Some(arc) => arc.radius * arc.sweep.abs(),
            None => (self.to[0] - self.from[0]).hypot(self.to[1] - self.from[1]),
        }
    }
}

impl Arc {
    /// The point of its circle in a direction, radians.
    #[must_use]
    pub fn point(&self, direction: f64) -> [f64; 2] {
        let (sin, cos) = direction.sin_cos();
        [
            self.centre[0] + self.radius * cos,
            self.centre[1] + self.radius * sin,
        ]
    }
}

impl Outline {
    /// A closed outline of straight lines.
    #[must_use]
    pub fn of_points(points: impl IntoIterator<Item = [f64; 2]>) -> Self {
        let corners = points.into_iter().map(|at| Corner { at, bulge: 0.0 });
        Self {
            corners: corners.collect(),
            closed: true,
        }
    }

    /// A circle, metres.
    #[must_use]
    pub fn circle(centre: [f64; 2], radius: f64) -> Self {
        let half = |side: f64| Corner {
            at: [centre[0] + side * radius, centre[1]],
            bulge: 1.0,
        };
        Self {
            corners: vec![half(1.0), half(-1.0)],
            closed: true,
        }
    }

    /// Its lines and arcs, in order.
    pub fn pieces(&self) -> impl Iterator<Item = Piece> + '_ {
        let count = self.corners.len();
        let ways = if self.closed {
            count
        } else {
            count.saturating_sub(1)
        };
        (0..ways).map(move |i| {
            let corner = self.corners[i];
            Piece::new(corner.at, self.corners[(i + 1) % count].at, corner.bulge)
        })
    }

    /// The lowest and the highest x and y that it reaches, metres.
    #[must_use]
    pub fn bounds(&self) -> [[f64; 2]; 2] {
        let mut reach = [[f64::INFINITY; 2], [f64::NEG_INFINITY; 2]];
        let mut take = |at: [f64; 2]| {
            for axis in 0..2 {
                reach[0][axis] = reach[0][axis].min(at[axis]);
                reach[1][axis] = reach[1][axis].max(at[axis]);
            }
        };
        for corner in &self.corners {
            take(corner.at);
        }
        for arc in self.pieces().filter_map(|piece| piece.arc) {
            // An arc reaches furthest where it passes one of the four directions of the axes.
            for quarter in 0..4 {
                let direction = f64::from(quarter) * std::f64::consts::FRAC_PI_2;
                if arc.passes(direction) {
                    take(arc.point(direction));
                }
            }
        }
        reach
    }

    /// The area inside, square metres: the surveyor's rule, and a segment for every arc. Nothing where it is open.
    #[must_use]
    pub fn area_m2(&self) -> f64 {
        self.signed_area_m2().abs()
    }

    /// The area inside, above nothing where the outline runs anticlockwise.
    pub(super) fn signed_area_m2(&self) -> f64 {
        if !self.closed {
            return 0.0;
        }
        let part = |piece: Piece| {
            let under = 0.5 * (piece.from[0] * piece.to[1] - piece.to[0] * piece.from[1]);
            let segment = piece.arc.map_or(0.0, |arc| {
                0.5 * arc.radius.powi(2) * (arc.sweep - arc.sweep.sin())
            });
            under + segment
        };
        self.pieces().map(part).sum()
    }

    /// How long its lines and arcs are together, metres.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        self.pieces().map(|piece| piece.length()).sum()
    }

    /// The outline mirrored in the x axis where asked, then turned (radians), then shifted (metres).
    #[must_use]
    pub fn placed(&self, mirrored: bool, turn: f64, shift: [f64; 2]) -> Self {
        let sign = if mirrored { -1.0 } else { 1.0 };
        let (sin, cos) = turn.sin_cos();
        let corners = self.corners.iter().map(|corner| {
            let [x, y] = [corner.at[0], sign * corner.at[1]];
            Corner {
                at: [shift[0] + cos * x - sin * y, shift[1] + sin * x + cos * y],
                bulge: sign * corner.bulge,
            }
        });
        Self {
            corners: corners.collect(),
            closed: self.closed,
        }
    }

    /// Corners alone, arcs broken into chords of no more than so many radians.
    pub(super) fn chords(&self, step: f64) -> Vec<[f64; 2]> {
        let mut points = Vec::new();
        for piece in self.pieces() {
            points.push(piece.from);
            if let Some(arc) = piece.arc {
                let count = (arc.sweep.abs() / step).ceil().max(1.0);
                let parts = 1..count as usize;
                points.extend(parts.map(|i| arc.point(arc.start + arc.sweep * i as f64 / count)));
            }
        }
        if let (false, Some(last)) = (self.closed, self.corners.last()) {
            points.push(last.at);
        }
        points
    }
}

impl Arc {
    fn passes(&self, direction: f64) -> bool {
        let along = (direction - self.start) * self.sweep.signum();
        along.rem_euclid(std::f64::consts::TAU) <= self.sweep.abs()
    }
}

/// The outline at a distance from a body of points given anticlockwise: a point grows to a circle, a line to a slot, a
/// polygon keeps its sides parallel and has arcs about its corners. Below nothing the outline lies inside; none where nothing
/// of a side is left.
pub(super) fn grown(points: &[[f64; 2]], by: f64) -> Option<Outline> {
    let mut body: Vec<[f64; 2]> = points.to_vec();
    body.dedup_by(|a, b| near(*a, *b));
    if body.len() > 1 && near(body[0], body[body.len() - 1]) {
        body.pop();
    }
    let count = body.len();
    if count < 2 {
        return (count == 1 && by > 0.0).then(|| Outline::circle(body[0], by));
    }
    if by == 0.0 {
        return Some(Outline::of_points(body));
    }
    let direction = |i: usize| {
        let (a, b) = (body[i], body[(i + 1) % count]);
        let length = (b[0] - a[0]).hypot(b[1] - a[1]);
        [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
    };
    let directions: Vec<[f64; 2]> = (0..count).map(direction).collect();
    let beside = |at: [f64; 2], d: [f64; 2], far: f64| [at[0] + far * d[1], at[1] - far * d[0]];
    let mut corners = Vec::with_capacity(2 * count);
    // Where each straight side begins and ends.
    let mut sides = Vec::with_capacity(count);
    for (i, at) in body.iter().enumerate() {
        let (into, out) = (directions[(i + count - 1) % count], directions[i]);
        let (cross, dot) = (
            into[0] * out[1] - into[1] * out[0],
            into[0] * out[0] + into[1] * out[1],
        );
        // A way straight back turns half round to the left: the end of a line.
        let turn = if dot < 0.0 && cross.abs() < 1e-12 {
            std::f64::consts::PI
        } else {
            cross.atan2(dot)
        };
        let end = corners.len();
        if turn * by > 1e-9 {
            corners.push(Corner {
                at: beside(*at, into, by),
                bulge: (turn / 4.0).tan(),
            });
            corners.push(Corner {
                at: beside(*at, out, by),
                bulge: 0.0,
            });
        } else {
            let both = [into[0] + out[0], into[1] + out[1]];
            corners.push(Corner {
                at: beside(*at, both, by / (1.0 + dot)),
                bulge: 0.0,
            });
        }
        sides.push((corners.len() - 1, end));
    }
    // Every side must still run the way it ran, or the outline has turned inside out.
    let runs = (0..count).all(|i| {
        let (from, to) = (corners[sides[i].0].at, corners[sides[(i + 1) % count].1].at);
        let d = directions[i];
        d[0] * (to[0] - from[0]) + d[1] * (to[1] - from[1]) > 1e-9
    });
    runs.then_some(Outline {
        corners,
        closed: true,
    })
}

fn near(a: [f64; 2], b: [f64; 2]) -> bool {
    (a[0] - b[0]).hypot(a[1] - b[1]) < 1e-9
}
