//! A flank of a crown wheel's tooth, seen square on, and marks on it.

use crate::drawings::parts::{Fill, Line, area, outline};
use crate::drawings::{Point, Span};
use yew::{Html, html};

/// A flank on the paper: the toe, lower, to the left; the heel, taller, to the right.
#[derive(Clone, Copy)]
pub(super) struct Flank {
    /// From the toe to the heel.
    pub across: Span,
    /// From the heel's tip down to the root.
    pub down: Span,
}

/// How much lower the tip lies at the toe, as a share of the height at the heel.
const TAPER: f64 = 0.34;

impl Flank {
    /// The tip's height at a share of the way from toe to heel.
    fn tip(&self, along: f64) -> f64 {
        self.down.lowest + (self.down.highest - self.down.lowest) * TAPER * (1.0 - along)
    }

    /// A place on the flank: along from the toe (0) to the heel (1), up from the root (0) to the tip (1).
    fn at(&self, along: f64, up: f64) -> Point {
        let x = self.across.lowest + (self.across.highest - self.across.lowest) * along;
        (
            x,
            self.down.highest + (self.tip(along) - self.down.highest) * up,
        )
    }

    /// The flank: its edge, and the body of the wheel below the root.
    pub(super) fn drawn(&self) -> Html {
        let corners: Vec<Point> = [(0.0, 0.0), (0.0, 1.0), (1.0, 1.0), (1.0, 0.0)]
            .map(|(along, up)| self.at(along, up))
            .to_vec();
        html! { <>{ area(&corners, Fill::Metal) }{ outline(&corners, Line::Outline) }</> }
    }

    /// The middle of marks at a place, both from minus one to one.
    pub(super) fn middle(&self, along: f64, up: f64) -> Point {
        self.at(0.5 + 0.33 * along, 0.5 + 0.3 * up)
    }

    /// Marks at a place, both from minus one to one: toe to heel, root to tip. The bearing area is an oval that leans with the tooth.
    pub(super) fn marked(&self, along: f64, up: f64, fill: Fill) -> Html {
        let (along, up) = (0.5 + 0.33 * along, 0.5 + 0.3 * up);
        let oval: Vec<Point> = (0..36)
            .map(|i| {
                let angle = std::f64::consts::TAU * f64::from(i) / 36.0;
                self.at(along + 0.15 * angle.cos(), up + 0.17 * angle.sin())
            })
            .collect();
        area(&oval, fill)
    }
}
