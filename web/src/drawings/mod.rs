//! The drawings. This folder alone computes coordinates; every drawing is made from the same parts.
//!
//! A drawing is a function from the state and a [`Paper`] to a [`Drawing`], named by a static [`Plate`], and is
//! shown by `widgets::DrawingFrame`. The paper's unit is the screen's pixel, so text keeps its 18 px and strokes keep
//! their weight at any size; the frame draws again when its width changes.
//!
//! ```ignore
//! pub static SPEEDS: Plate = Plate::new("gearing/speeds", 0.66, speeds);
//!
//! fn speeds(state: &State, paper: &Paper) -> Option<Drawing> {
//!     let found = state.findings.gearing.as_ref()?;            // None: the frame shows its empty state
//!     let plot = Plot::with_room(paper, Span::of(rpm)?, Span::of(speed)?, 64.0, 20.0);
//!     let mut labels = Labels::new(paper);
//!     labels.add(plot.at(x, y), "4th");
//!     Some(Drawing {
//!         title: ..., description: ..., table: ...,
//!         marks: html! { <>{ plot.axes(&x_axis, &y_axis) }{ polyline(&points, Line::Now) }{ labels.placed() }</> },
//!     })
//! }
//! ```

pub mod conversion;
pub mod costs;
pub mod final_drive;
pub mod first;
pub mod gearing;
pub mod geometry;
pub mod handover;
pub mod labels;
pub mod marking;
pub mod paint;
pub mod parts;
pub mod plot;
pub mod qr;
pub mod springs;
pub mod torque;
pub mod vehicle;

pub use first::first_to_measure;
pub use geometry::{Fit, NARROW, Near, Paper, Point, Span};
pub use labels::Labels;
pub use plot::{Axis, Plot};
pub use qr::qr_drawing;

use crate::state::State;
use yew::Html;

/// A finished drawing: what is seen, what is read out, and the same as a table.
#[derive(Clone, PartialEq)]
pub struct Drawing {
    /// A few words: the drawing's name.
    pub title: String,
    /// One sentence that says what is to be seen.
    pub description: String,
    /// The SVG.
    pub marks: Html,
    /// The same facts as rows.
    pub table: Table,
}

/// The facts of a drawing as rows under headings.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// Headings of the columns.
    pub head: Vec<String>,
    /// The rows, as many cells as headings.
    pub rows: Vec<Vec<String>>,
}

/// Where on the whole paper the place lies that the eye is on, which stays where it is as one comes nearer.
pub type LooksAt = fn(&State, &Paper) -> Option<Point>;

/// The drawings whose parts lie so close together that one has to come nearer.
pub const CLOSE: &[(&str, LooksAt)] = &[("marking/pattern", marking::looks_at)];

/// A drawing that a page can show: its id and how it is drawn.
pub struct Plate {
    /// `gearing/speeds`: also where the words look for its empty state.
    pub id: &'static str,
    /// Height over width on a wide screen.
    shape: f64,
    /// How high it must be at a width for all that it names.
    least: fn(&State, f64) -> f64,
    /// Draws it; `None` while too little is known.
    pub draw: fn(&State, &Paper) -> Option<Drawing>,
}

impl Plate {
    /// A drawing by its id, its height over its width on a wide screen, and how it is drawn.
    pub const fn new(
        id: &'static str,
        shape: f64,
        draw: fn(&State, &Paper) -> Option<Drawing>,
    ) -> Self {
        Self {
            id,
            shape,
            least: |_, _| 0.0,
            draw,
        }
    }

    /// The same, and never lower at a width than what it has to name asks for.
    pub const fn with_room(self, least: fn(&State, f64) -> f64) -> Self {
        Self { least, ..self }
    }

    /// How high the drawing is at a width: in its shape, and at least as high as what it has to name.
    pub fn height(&self, state: &State, width: f64) -> f64 {
        let usual = (width * self.shape).clamp(220.0, 520.0).round();
        usual.max((self.least)(state, width))
    }
}

impl PartialEq for Plate {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
    }
}
