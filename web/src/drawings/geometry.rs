//! Paper, points, spans and the fit of a true shape on the paper.

use crate::words::Tongue;
use measure::Manner;

/// A point on the paper: across, down, in pixels.
pub type Point = (f64, f64);

/// A phone's width: what is drawn in less has no room beside it, and the page is scrolled anyway.
pub const NARROW: f64 = 480.0;

/// Room to draw on, and how numbers and words are shown on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Paper {
    /// Pixels across.
    pub width: f64,
    /// Pixels down.
    pub height: f64,
    /// How figures are shown.
    pub manner: Manner,
    /// Which English.
    pub tongue: Tongue,
    /// How near the eye has come.
    pub near: Near,
}

impl Paper {
    /// Whether a point lies on the paper.
    pub fn holds(&self, at: Point) -> bool {
        (0.0..=self.width).contains(&at.0) && (0.0..=self.height).contains(&at.1)
    }
}

/// How near the eye has come to a drawing whose parts lie close together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Near {
    /// How many times as large as the whole.
    pub zoom: f64,
    /// How far it was moved by hand: across, down, in pixels.
    pub moved: Point,
}

impl Default for Near {
    fn default() -> Self {
        Self {
            zoom: 1.0,
            moved: (0.0, 0.0),
        }
    }
}

impl Near {
    /// As near as it gets.
    const NEAREST: f64 = 16.0;

    /// So many times nearer, or further; the whole is the furthest. What the eye is on stays where it is.
    #[must_use]
    pub fn by(self, times: f64) -> Self {
        self.about(times, (0.0, 0.0))
    }

    /// The same about another place, so many pixels across and down from where what the eye is on lies in the whole.
    #[must_use]
    pub fn about(self, times: f64, from: Point) -> Self {
        let zoom = (self.zoom * times).clamp(1.0, Self::NEAREST);
        let share = zoom / self.zoom;
        let held = |moved: f64, from: f64| share * moved + (1.0 - share) * from;
        let moved = (held(self.moved.0, from.0), held(self.moved.1, from.1));
        if zoom > 1.0 {
            Self { zoom, moved }
        } else {
            Self::default()
        }
    }

    /// Moved by so many pixels; the whole stays where it is.
    #[must_use]
    pub fn shifted(self, across: f64, down: f64) -> Self {
        if self.zoom <= 1.0 {
            return self;
        }
        Self {
            moved: (self.moved.0 + across, self.moved.1 + down),
            ..self
        }
    }
}

/// A range of values on an axis, lowest first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The least value.
    pub lowest: f64,
    /// The greatest value.
    pub highest: f64,
}

impl Span {
    /// From the least to the greatest of some values; `None` when there are none, or no finite ones.
    pub fn of(values: impl IntoIterator<Item = f64>) -> Option<Self> {
        let mut span: Option<Self> = None;
        for value in values.into_iter().filter(|v| v.is_finite()) {
            let grown = span.map_or(
                Self {
                    lowest: value,
                    highest: value,
                },
                |s| Self {
                    lowest: s.lowest.min(value),
                    highest: s.highest.max(value),
                },
            );
            span = Some(grown);
        }
        span
    }

    /// The same span, begun at nought (or ended there, for negative values).
    pub fn with_nought(self) -> Self {
        Self {
            lowest: self.lowest.min(0.0),
            highest: self.highest.max(0.0),
        }
    }

    /// The same span with a share of its extent added at both ends; a span of one value is given some extent.
    pub fn widened(self, share: f64) -> Self {
        let extent = self.extent();
        let room = if extent > 0.0 {
            extent * share
        } else {
            self.highest.abs().max(1.0) * 0.5
        };
        Self {
            lowest: self.lowest - room,
            highest: self.highest + room,
        }
    }

    /// Highest less lowest.
    pub fn extent(self) -> f64 {
        self.highest - self.lowest
    }

    /// Round values for ticks within the span, about `wanted` of them, in steps of 1, 2 or 5.
    pub fn ticks(self, wanted: usize) -> Vec<f64> {
        let extent = self.extent();
        if !(extent.is_finite() && extent > 0.0) || wanted == 0 {
            return vec![self.lowest];
        }
        let raw = extent / wanted as f64;
        let decade = 10_f64.powf(raw.log10().floor());
        let step = [1.0, 2.0, 5.0, 10.0]
            .into_iter()
            .map(|s| s * decade)
            .find(|s| *s >= raw * 0.999)
            .unwrap_or(decade * 10.0);
        let first = (self.lowest / step - 1e-9).ceil();
        let last = (self.highest / step + 1e-9).floor();
        let count = (last - first).clamp(0.0, 200.0) as usize;
        (0..=count).map(|i| (first + i as f64) * step).collect()
    }
}

/// Places a true shape (metres, y up) on the paper at one scale, centred, with a margin for dimensions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// Pixels a metre, across and down alike.
    pub scale: f64,
    left: f64,
    top: f64,
    lowest_x: f64,
    highest_y: f64,
}

impl Fit {
    /// The greatest scale at which `x` by `y` metres fits within the paper less `margin` pixels on each side.
    pub fn new(paper: &Paper, x: Span, y: Span, margin: f64) -> Self {
        let across = (paper.width - 2.0 * margin).max(1.0);
        let down = (paper.height - 2.0 * margin).max(1.0);
        let wide = x.extent().max(1e-9);
        let high = y.extent().max(1e-9);
        let scale = (across / wide).min(down / high);
        Self {
            scale,
            left: margin + (across - wide * scale) / 2.0,
            top: margin + (down - high * scale) / 2.0,
            lowest_x: x.lowest,
            highest_y: y.highest,
        }
    }

    /// The same, as near as the eye has come: what it looks at stays where it is.
    #[must_use]
    pub fn nearer(self, near: Near, looks_at: (f64, f64)) -> Self {
        let (x, y) = self.at(looks_at.0, looks_at.1);
        Self {
            scale: self.scale * near.zoom,
            left: x - (x - self.left) * near.zoom + near.moved.0,
            top: y - (y - self.top) * near.zoom + near.moved.1,
            ..self
        }
    }

    /// Where a point of the shape comes to lie on the paper.
    pub fn at(&self, x: f64, y: f64) -> Point {
        (
            self.left + (x - self.lowest_x) * self.scale,
            self.top + (self.highest_y - y) * self.scale,
        )
    }

    /// A run of points of the shape on the paper.
    pub fn all(&self, points: &[(f64, f64)]) -> Vec<Point> {
        points.iter().map(|(x, y)| self.at(*x, *y)).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn paper() -> Paper {
        Paper {
            width: 500.0,
            height: 300.0,
            manner: Manner::default(),
            tongue: Tongue::British,
            near: Near::default(),
        }
    }

    #[test]
    fn ticks_are_round_and_lie_within_the_span() {
        let ticks = Span {
            lowest: 0.0,
            highest: 97.0,
        }
        .ticks(5);
        assert_eq!(ticks, vec![0.0, 20.0, 40.0, 60.0, 80.0]);
        let ticks = Span {
            lowest: -0.3,
            highest: 0.3,
        }
        .ticks(3);
        assert_eq!(ticks, vec![-0.2, 0.0, 0.2]);
    }

    #[test]
    fn a_span_without_extent_has_one_tick_and_can_be_widened() {
        let one = Span {
            lowest: 4.0,
            highest: 4.0,
        };
        assert_eq!(one.ticks(5), vec![4.0]);
        assert_eq!(
            one.widened(0.1),
            Span {
                lowest: 2.0,
                highest: 6.0
            }
        );
    }

    #[test]
    fn values_that_are_no_numbers_do_not_stretch_a_span() {
        let span = Span::of([1.0, f64::NAN, f64::INFINITY, 3.0]);
        assert_eq!(
            span,
            Some(Span {
                lowest: 1.0,
                highest: 3.0
            })
        );
        assert_eq!(Span::of([f64::NAN]), None);
    }

    #[test]
    fn a_true_shape_keeps_its_proportions_and_stays_within_the_margin() {
        let fit = Fit::new(
            &paper(),
            Span {
                lowest: -1.0,
                highest: 1.0,
            },
            Span {
                lowest: 0.0,
                highest: 0.2,
            },
            50.0,
        );
        assert_eq!(fit.scale, 200.0);
        assert_eq!(fit.at(-1.0, 0.2), (50.0, 130.0));
        assert_eq!(fit.at(1.0, 0.0), (450.0, 170.0));
    }

    #[test]
    fn what_is_looked_at_stays_where_it_is_when_one_comes_nearer() {
        let span = Span {
            lowest: 0.0,
            highest: 1.0,
        };
        let whole = Fit::new(&paper(), span, span, 10.0);
        let near = whole.nearer(Near::default().by(2.0), (0.25, 0.5));
        assert_eq!(near.at(0.25, 0.5), whole.at(0.25, 0.5));
        assert!((near.scale - 2.0 * whole.scale).abs() < 1e-9);
        assert_eq!(
            Near::default().by(2.0).shifted(9.0, 9.0).by(0.5),
            Near::default()
        );
        // Two fingers about (400, 100): what lies under them stays under them, again and again.
        let eye = whole.at(0.25, 0.5);
        let from = (400.0 - eye.0, 100.0 - eye.1);
        let mut hand = Near::default().by(1.5).shifted(20.0, -30.0);
        let shows = |hand: Near| {
            let fit = whole.nearer(hand, (0.25, 0.5));
            let origin = fit.at(0.0, 0.0);
            (
                (400.0 - origin.0) / fit.scale,
                (100.0 - origin.1) / fit.scale,
            )
        };
        let under = shows(hand);
        for times in [1.3, 1.7, 0.8] {
            hand = hand.about(times, from);
            let now = shows(hand);
            assert!((now.0 - under.0).abs() < 1e-9 && (now.1 - under.1).abs() < 1e-9);
        }
    }
}
