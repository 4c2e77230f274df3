//! Curves over axes: scales, ticks, and where a pair of values lies.

use super::parts::{Lean, Line, line, px, text, text_on, text_width};
use super::{Paper, Point, Span};
use yew::{Html, html};

/// What stands along one axis: its name with the unit, and each tick as text.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis {
    /// `Engine speed, rpm`
    pub name: String,
    /// Where the ticks lie, in the plot's values, and what stands at them.
    pub ticks: Vec<(f64, String)>,
}

impl Axis {
    /// Ticks at round values of a span that is already in the shown unit.
    pub fn round(
        name: impl Into<String>,
        span: Span,
        wanted: usize,
        show: impl Fn(f64) -> String,
    ) -> Self {
        Self {
            name: name.into(),
            ticks: span
                .ticks(wanted)
                .into_iter()
                .map(|v| (v, show(v)))
                .collect(),
        }
    }
}

/// A pair of axes on the paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plot {
    /// What runs across.
    pub x: Span,
    /// What runs up.
    pub y: Span,
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
}

impl Plot {
    /// Axes with `left` and `right` pixels kept free beside them (for long ticks, or labels at the ends of curves).
    pub fn with_room(paper: &Paper, x: Span, y: Span, left: f64, right: f64) -> Self {
        Self {
            x,
            y,
            left,
            right: (paper.width - right).max(left + 1.0),
            top: 34.0,
            bottom: (paper.height - 58.0).max(35.0),
        }
    }

    /// Where a pair of values lies on the paper.
    pub fn at(&self, x: f64, y: f64) -> Point {
        let share = |v: f64, span: Span| {
            if span.extent() > 0.0 {
                (v - span.lowest) / span.extent()
            } else {
                0.5
            }
        };
        (
            self.left + share(x, self.x) * (self.right - self.left),
            self.bottom - share(y, self.y) * (self.bottom - self.top),
        )
    }

    /// A run of pairs on the paper.
    pub fn all(&self, pairs: &[(f64, f64)]) -> Vec<Point> {
        pairs.iter().map(|(x, y)| self.at(*x, *y)).collect()
    }

    /// Grid, axes, ticks and the names of both axes.
    pub fn axes(&self, x: &Axis, y: &Axis) -> Html {
        let corner = (self.left, self.bottom);
        html! {
            <g class="axes">
                { y.ticks.iter().filter_map(|(v, said)| self.rung(*v, said)).collect::<Html>() }
                { self.feet(x) }
                { line((self.left, self.top), corner, Line::Outline) }
                { line(corner, (self.right, self.bottom), Line::Outline) }
                { text((8.0, 20.0), Lean::Start, &y.name) }
                <text class="axis-name" x={px(self.right)} y={px(self.bottom + 50.0)} text-anchor="end">{ &x.name }</text>
            </g>
        }
    }

    fn rung(&self, value: f64, said: &str) -> Option<Html> {
        let (_, y) = self.at(self.x.lowest, value);
        (y >= self.top - 0.5 && y <= self.bottom + 0.5).then(|| {
            html! {
                <>
                    { line((self.left, y), (self.right, y), Line::Fine) }
                    { text((self.left - 8.0, y + 6.0), Lean::End, said) }
                </>
            }
        })
    }

    /// Ticks under the axis; one whose text would touch the last one keeps its stroke and loses its text.
    fn feet(&self, axis: &Axis) -> Html {
        let mut free_from = f64::NEG_INFINITY;
        let mut feet = Vec::with_capacity(axis.ticks.len());
        for (value, said) in &axis.ticks {
            let (x, _) = self.at(*value, self.y.lowest);
            if x < self.left - 0.5 || x > self.right + 0.5 {
                continue;
            }
            let half = text_width(said) / 2.0;
            let shown = x - half >= free_from;
            if shown {
                free_from = x + half + 8.0;
            }
            feet.push(html! {
                <>
                    { line((x, self.bottom), (x, self.bottom + 6.0), Line::Fine) }
                    if shown { { text((x, self.bottom + 26.0), Lean::Middle, said) } }
                </>
            });
        }
        feet.into_iter().collect()
    }

    /// A limit up the plot at a value of x, with its name beside the upper end.
    pub fn upright(&self, x: f64, said: &str) -> Html {
        let top = self.at(x, self.y.highest);
        let room = self.right - top.0 > text_width(said) + 12.0;
        let (off, lean) = if room {
            (6.0, Lean::Start)
        } else {
            (-6.0, Lean::End)
        };
        html! {
            <>
                { line(self.at(x, self.y.lowest), top, Line::Limit) }
                { text_on((top.0 + off, top.1 + 14.0), lean, said) }
            </>
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Tongue;
    use measure::Manner;

    #[test]
    fn the_corners_of_the_values_are_the_corners_of_the_plot() {
        let paper = Paper {
            width: 400.0,
            height: 300.0,
            manner: Manner::default(),
            tongue: Tongue::British,
            near: crate::drawings::Near::default(),
        };
        let plot = Plot::with_room(
            &paper,
            Span {
                lowest: 0.0,
                highest: 10.0,
            },
            Span {
                lowest: -1.0,
                highest: 1.0,
            },
            64.0,
            20.0,
        );
        assert_eq!(plot.at(0.0, -1.0), (64.0, 242.0));
        assert_eq!(plot.at(10.0, 1.0), (380.0, 34.0));
        assert_eq!(plot.at(5.0, 0.0), (222.0, 138.0));
    }

    #[test]
    fn values_without_extent_lie_in_the_middle() {
        let paper = Paper {
            width: 400.0,
            height: 300.0,
            manner: Manner::default(),
            tongue: Tongue::British,
            near: crate::drawings::Near::default(),
        };
        let one = Span {
            lowest: 3.0,
            highest: 3.0,
        };
        assert_eq!(
            Plot::with_room(&paper, one, one, 64.0, 20.0).at(3.0, 3.0),
            (222.0, 138.0)
        );
    }
}
