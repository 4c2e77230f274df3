//! What is marked out: holes, slots, openings, studs and bracket corners, each about a centre of its own.

use measure::{Kind, Length, Ratio, Traced};

use super::outline::grown;
use super::{Corner, MirrorLine, Move, Outline, Point};
use crate::TradeError;
use crate::paint::outline_crosses;

/// What kind of shape it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// A round hole: its diameter.
    Round,
    /// A slot with round ends: its whole length, along x, and its width.
    Slot,
    /// A rectangle: its length, along x, its width, and the radius of its corners.
    Rectangle,
    /// A round hole with one flat, which faces x: its diameter, and from the flat straight across.
    DHole,
    /// An oval, as a round tube leaves it that passes at a slant: its long axis, along x, and its short one.
    Oval,
    /// An outline by its corners about the centre: x and y of each, in order.
    Free,
    /// A stud that stands on the sheet: its diameter.
    Stud,
    /// A corner of a bracket's foot, with its two edges along x and along y: their lengths.
    Bracket,
}

/// A shape about its own centre. It is made by the function of its kind, which refuses sizes that make no shape.
#[derive(Debug, Clone)]
pub struct Shape {
    form: Form,
    sizes: Vec<Length>,
}

impl Shape {
    /// A round hole.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] without a diameter.
    pub fn round(diameter: Length) -> Result<Self, TradeError> {
        within("diameter", &diameter, f64::INFINITY)?;
        Ok(Self {
            form: Form::Round,
            sizes: vec![diameter],
        })
    }

    /// A slot with round ends: its whole length and its width.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] where it is wider than long.
    pub fn slot(length: Length, width: Length) -> Result<Self, TradeError> {
        within("length", &length, f64::INFINITY)?;
        within("width", &width, length.value())?;
        Ok(Self {
            form: Form::Slot,
            sizes: vec![length, width],
        })
    }

    /// A rectangle with the radius of its corners, which may be nothing.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] where a side is nothing, or the radius more than half of the shorter side.
    pub fn rectangle(length: Length, width: Length, corner: Length) -> Result<Self, TradeError> {
        within("length", &length, f64::INFINITY)?;
        within("width", &width, f64::INFINITY)?;
        let half = length.value().min(width.value()) / 2.0;
        if corner.value() != 0.0 {
            within("corner", &corner, half)?;
        }
        Ok(Self {
            form: Form::Rectangle,
            sizes: vec![length, width, corner],
        })
    }

    /// A round hole with one flat: its diameter, and from the flat straight across.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] where across is more than the diameter.
    pub fn d_hole(diameter: Length, across: Length) -> Result<Self, TradeError> {
        within("diameter", &diameter, f64::INFINITY)?;
        within("across", &across, diameter.value())?;
        Ok(Self {
            form: Form::DHole,
            sizes: vec![diameter, across],
        })
    }

    /// An oval: its long axis and its short one.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] where the short axis is the longer one.
    pub fn oval(long: Length, short: Length) -> Result<Self, TradeError> {
        within("length", &long, f64::INFINITY)?;
        within("width", &short, long.value())?;
        Ok(Self {
            form: Form::Oval,
            sizes: vec![long, short],
        })
    }

    /// An outline by its corners about the centre, in order, either way round.
    ///
    /// # Errors
    /// [`TradeError::TooFew`] below three corners, [`TradeError::OutlineCrosses`] where two edges cross.
    pub fn free(corners: Vec<[Length; 2]>) -> Result<Self, TradeError> {
        if corners.len() < 3 {
            return Err(TradeError::TooFew {
                entry: "corners",
                least: 3,
            });
        }
        let points: Vec<[f64; 2]> = corners
            .iter()
            .map(|[x, y]| [x.value(), y.value()])
            .collect();
        if let Some((first, second)) = outline_crosses(&points) {
            return Err(TradeError::OutlineCrosses { first, second });
        }
        Ok(Self {
            form: Form::Free,
            sizes: corners.into_iter().flatten().collect(),
        })
    }

    /// A stud that stands on the sheet.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] without a diameter.
    pub fn stud(diameter: Length) -> Result<Self, TradeError> {
        within("diameter", &diameter, f64::INFINITY)?;
        Ok(Self {
            form: Form::Stud,
            sizes: vec![diameter],
        })
    }

    /// A corner of a bracket's foot: how far its two edges run.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] without an edge.
    pub fn bracket(along: Length, across: Length) -> Result<Self, TradeError> {
        within("length", &along, f64::INFINITY)?;
        within("width", &across, f64::INFINITY)?;
        Ok(Self {
            form: Form::Bracket,
            sizes: vec![along, across],
        })
    }

    /// What kind of shape it is.
    #[must_use]
    pub fn form(&self) -> Form {
        self.form
    }

    /// Its sizes, in the order of its kind.
    #[must_use]
    pub fn sizes(&self) -> &[Length] {
        &self.sizes
    }

    /// Whether metal is cut out for it: a stud and a bracket's corner are only marked.
    #[must_use]
    pub fn is_cut(&self) -> bool {
        !matches!(self.form, Form::Stud | Form::Bracket)
    }

    /// Its outline about its own centre.
    #[must_use]
    pub fn outline(&self) -> Outline {
        let sizes = self.values();
        let none = || Outline {
            corners: Vec::new(),
            closed: true,
        };
        outline_of(self.form, &sizes, 0.0).unwrap_or_else(none)
    }

    /// The outline at a distance outside its own, as a cutter's middle runs; below nothing it lies inside.
    ///
    /// Straight sides stay parallel, round ones keep their centre; an outside corner gets an arc about it, which leaves the
    /// corner itself sharp.
    ///
    /// # Units
    /// Metres.
    ///
    /// # Errors
    /// [`TradeError::OutOfRange`] where nothing of a side is left, or for a bracket's corner, which encloses nothing.
    pub fn offset(&self, by: &Length) -> Result<Outline, TradeError> {
        let outline = outline_of(self.form, &self.values(), by.value());
        outline
            .filter(|outline| outline.closed)
            .ok_or(TradeError::OutOfRange {
                entry: "kerf",
                lowest: 0.0,
                highest: self
                    .sizes
                    .iter()
                    .map(Length::value)
                    .fold(f64::INFINITY, f64::min)
                    .abs()
                    / 2.0,
            })
    }

    pub(super) fn values(&self) -> Vec<f64> {
        self.sizes.iter().map(Length::value).collect()
    }
}

fn within(entry: &'static str, length: &Length, highest: f64) -> Result<(), TradeError> {
    // What a slot or a corner may just reach, it may reach after a sum of decimals too.
    if length.value() > 0.0 && length.value() <= highest * (1.0 + 1e-12) {
        return Ok(());
    }
    Err(TradeError::OutOfRange {
        entry,
        lowest: 0.0,
        highest,
    })
}

/// An oval is drawn with so many corners: the chords of one that is 100 mm long lie no more than 0.03 mm inside it.
const OVAL_CORNERS: u32 = 96;

/// A body of points anticlockwise, and how far the shape reaches beyond it: every shape but the D-hole is one.
pub(super) fn body(form: Form, sizes: &[f64]) -> (Vec<[f64; 2]>, f64) {
    match form {
        Form::Round | Form::Stud | Form::DHole => (vec![[0.0; 2]], sizes[0] / 2.0),
        Form::Slot => {
            let half = (sizes[0] - sizes[1]) / 2.0;
            (vec![[-half, 0.0], [half, 0.0]], sizes[1] / 2.0)
        }
        Form::Rectangle => {
            let (x, y) = (sizes[0] / 2.0 - sizes[2], sizes[1] / 2.0 - sizes[2]);
            (vec![[-x, -y], [x, -y], [x, y], [-x, y]], sizes[2])
        }
        Form::Oval => {
            let corner = |i: u32| {
                let turn = std::f64::consts::TAU * f64::from(i) / f64::from(OVAL_CORNERS);
                [turn.cos() * sizes[0] / 2.0, turn.sin() * sizes[1] / 2.0]
            };
            ((0..OVAL_CORNERS).map(corner).collect(), 0.0)
        }
        Form::Free => {
            let mut points: Vec<[f64; 2]> =
                sizes.chunks_exact(2).map(|at| [at[0], at[1]]).collect();
            if Outline::of_points(points.iter().copied()).signed_area_m2() < 0.0 {
                points.reverse();
            }
            (points, 0.0)
        }
        Form::Bracket => (vec![[sizes[0], 0.0], [0.0, 0.0], [0.0, sizes[1]]], 0.0),
    }
}

/// The outline of a kind with these sizes, at a distance outside it.
pub(super) fn outline_of(form: Form, sizes: &[f64], by: f64) -> Option<Outline> {
    let (points, reach) = body(form, sizes);
    match form {
        Form::DHole => d_outline(sizes[0] / 2.0 + by, sizes[1] - sizes[0] / 2.0 + by),
        Form::Bracket => {
            let corners = points.into_iter().map(|at| Corner { at, bulge: 0.0 });
            Some(Outline {
                corners: corners.collect(),
                closed: false,
            })
        }
        _ => grown(&points, reach + by),
    }
}

/// A circle about the origin less what lies beyond a flat; none where nothing is left.
fn d_outline(radius: f64, flat: f64) -> Option<Outline> {
    if radius <= 0.0 || flat <= -radius {
        return None;
    }
    if flat >= radius {
        return Some(Outline::circle([0.0; 2], radius));
    }
    let half = (flat / radius).acos();
    let (y, bulge) = (
        radius * half.sin(),
        ((std::f64::consts::PI - half) / 4.0).tan(),
    );
    let corners = vec![
        Corner {
            at: [flat, y],
            bulge,
        },
        Corner {
            at: [-radius, 0.0],
            bulge,
        },
        Corner {
            at: [flat, -y],
            bulge: 0.0,
        },
    ];
    Some(Outline {
        corners,
        closed: true,
    })
}

/// A shape in its place on the flat.
#[derive(Debug, Clone)]
pub struct Placed {
    /// The shape.
    pub shape: Shape,
    /// Where its centre lies.
    pub at: Point,
    /// How far it is turned, anticlockwise, radians.
    pub turn: Ratio,
    /// Whether it is mirrored, in its own x axis, before it is turned.
    pub mirrored: bool,
}

impl Placed {
    /// A shape as it was taken off: not mirrored.
    #[must_use]
    pub fn new(shape: Shape, at: Point, turn: Ratio) -> Self {
        Self {
            shape,
            at,
            turn,
            mirrored: false,
        }
    }

    /// A straight strip, as a rib or a seam: a rectangle from the middle of one end to the middle of the other, so wide.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where both ends lie in one place, [`TradeError::OutOfRange`] without a width.
    ///
    /// # Source
    /// Plane geometry.
    pub fn strip([one, two]: &[Point; 2], width: Length) -> Result<Self, TradeError> {
        let length = one.distance(two);
        if length.value() < 1e-6 {
            return Err(TradeError::Undetermined { entry: "strip" });
        }
        let (dx, dy) = (&two.x - &one.x, &two.y - &one.y);
        let turn = Ratio::tabled("direction of the strip", &[&dx, &dy], |d| d[1].atan2(d[0]));
        let at = Point {
            x: (&one.x + &two.x) / 2.0,
            y: (&one.y + &two.y) / 2.0,
        };
        let shape = Shape::rectangle(length, width, Length::exact(0.0))?;
        Ok(Self::new(shape, at, turn.of_kind(Kind::Angle)))
    }

    /// Its outline where it lies.
    #[must_use]
    pub fn outline(&self) -> Outline {
        self.here(&self.shape.outline())
    }

    /// The outline at a distance outside its own, where it lies.
    ///
    /// # Errors
    /// As [`Shape::offset`].
    pub fn offset(&self, by: &Length) -> Result<Outline, TradeError> {
        Ok(self.here(&self.shape.offset(by)?))
    }

    fn here(&self, outline: &Outline) -> Outline {
        outline.placed(self.mirrored, self.turn.value(), self.at.values())
    }

    /// The shape where a move takes it, turned and mirrored with it.
    #[must_use]
    pub fn moved(&self, by: &Move) -> Self {
        let turn = if by.mirrored {
            &by.turn - &self.turn
        } else {
            &by.turn + &self.turn
        };
        Self {
            shape: self.shape.clone(),
            at: by.of(&self.at),
            turn: turn.of_kind(Kind::Angle),
            mirrored: self.mirrored != by.mirrored,
        }
    }

    /// The shape where a move takes it, turned with it, but never mirrored: a part that has a hand of its own keeps it.
    #[must_use]
    pub fn kept_in_hand(&self, by: &Move) -> Self {
        Self {
            mirrored: self.mirrored,
            ..self.moved(by)
        }
    }

    /// Where it is punched, metres: its centre; both ends of a slot; the corners of a rectangle, each where its radius has its centre,
    /// and the rectangle's own centre last. These are the spots that the drill schedule counts.
    #[must_use]
    pub fn spots(&self) -> Vec<[f64; 2]> {
        let mut points = match self.shape.form {
            Form::Slot => body(Form::Slot, &self.shape.values()).0,
            Form::Rectangle => {
                let mut points = body(Form::Rectangle, &self.shape.values()).0;
                points.push([0.0; 2]);
                points
            }
            _ => vec![[0.0; 2]],
        };
        let line = Outline::of_points(points.drain(..));
        self.here(&line)
            .corners
            .into_iter()
            .map(|corner| corner.at)
            .collect()
    }

    /// All that its outline is made from: place, turn and sizes.
    pub(super) fn inputs(&self) -> Vec<&dyn Traced> {
        let place: [&dyn Traced; 3] = [&self.at.x, &self.at.y, &self.turn];
        place
            .into_iter()
            .chain(self.shape.sizes.iter().map(|size| size as &dyn Traced))
            .collect()
    }
}

impl MirrorLine {
    /// The reflection in this line as a move: mirrored in the x axis, turned, shifted.
    ///
    /// turn = 2n - π, where n is the direction of the normal; shift = 2c along the normal.
    ///
    /// # Source
    /// Plane geometry.
    #[must_use]
    pub fn as_move(&self) -> Move {
        let twice = &self.offset * 2.0;
        Move {
            mirrored: true,
            turn: (&self.normal * 2.0 - std::f64::consts::PI).of_kind(Kind::Angle),
            dx: (&twice * self.normal.cos()).of_kind(Kind::Length),
            dy: (&twice * self.normal.sin()).of_kind(Kind::Length),
        }
    }
}
