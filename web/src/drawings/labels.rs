//! Labels that stand beside what they name and never on one another.

use super::parts::{Lean, leader, text_on, text_width};
use super::{Paper, Point};
use yew::{Html, html};

const LINE: f64 = 22.0;
const STEPS: usize = 24;

/// Collects labels and then finds a free place for each, the nearest first.
pub struct Labels {
    width: f64,
    height: f64,
    taken: Vec<Area>,
    wanted: Vec<(Point, String)>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
struct Area {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
}

impl Area {
    fn meets(&self, other: &Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }

    fn within(&self, width: f64, height: f64) -> bool {
        self.left >= 0.0 && self.top >= 0.0 && self.right <= width && self.bottom <= height
    }
}

/// Where a label came to stand.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// The start of its baseline.
    pub at: Point,
    /// What it names.
    pub names: Point,
    /// What it says.
    pub said: String,
    /// Whether it stands so far off that a leader is due.
    pub led: bool,
}

impl Labels {
    /// No labels yet.
    pub fn new(paper: &Paper) -> Self {
        Self {
            width: paper.width,
            height: paper.height,
            taken: Vec::new(),
            wanted: Vec::new(),
        }
    }

    /// A label for the point.
    pub fn add(&mut self, names: Point, said: impl Into<String>) {
        if names.0.is_finite() && names.1.is_finite() {
            self.wanted.push((names, said.into()));
        }
    }

    /// Where each label comes to stand: the first of a widening ring of places that is free and on the paper.
    pub fn places(&self) -> Vec<Placed> {
        let mut taken = self.taken.clone();
        let mut places = Vec::with_capacity(self.wanted.len());
        for (names, said) in &self.wanted {
            let (area, far) = self.free_area(*names, text_width(said), &taken);
            taken.push(area);
            places.push(Placed {
                at: (area.left, area.bottom - 6.0),
                names: *names,
                said: said.clone(),
                led: far,
            });
        }
        places
    }

    fn free_area(&self, names: Point, wide: f64, taken: &[Area]) -> (Area, bool) {
        let at = |left: f64, top: f64| Area {
            left,
            top,
            right: left + wide,
            bottom: top + LINE,
        };
        let mut fallback = None;
        for step in 0..STEPS {
            let off = 8.0 + step as f64 * 12.0;
            let places = [
                at(names.0 + off, names.1 - LINE / 2.0),
                at(names.0 + 6.0, names.1 - LINE - off + 4.0),
                at(names.0 - off - wide, names.1 - LINE / 2.0),
                at(names.0 + 6.0, names.1 + off - 4.0),
                at(names.0 - wide - 6.0, names.1 - LINE - off + 4.0),
                at(names.0 - wide - 6.0, names.1 + off - 4.0),
            ];
            for place in places {
                if !place.within(self.width, self.height) {
                    continue;
                }
                fallback.get_or_insert(place);
                if !taken.iter().any(|t| t.meets(&place)) {
                    return (place, step > 1);
                }
            }
        }
        let left = (names.0 + 8.0).min(self.width - wide).max(0.0);
        let top = (names.1 - LINE).clamp(0.0, (self.height - LINE).max(0.0));
        (fallback.unwrap_or(at(left, top)), false)
    }

    /// The labels as SVG, with leaders where they had to stand off.
    pub fn placed(&self) -> Html {
        self.places()
            .into_iter()
            .map(|label| {
                let foot = (label.at.0 - 2.0, label.at.1 - 5.0);
                html! {
                    <>
                        if label.led { { leader(foot, label.names) } }
                        { text_on(label.at, Lean::Start, &label.said) }
                    </>
                }
            })
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Tongue;
    use measure::Manner;

    fn paper() -> Paper {
        Paper {
            width: 400.0,
            height: 300.0,
            manner: Manner::default(),
            tongue: Tongue::British,
            near: crate::drawings::Near::default(),
        }
    }

    #[test]
    fn labels_of_points_that_nearly_touch_do_not_overlap() {
        let mut labels = Labels::new(&paper());
        for i in 0..6 {
            labels.add((200.0, 150.0 + f64::from(i)), format!("gear {i}"));
        }
        let places = labels.places();
        let areas: Vec<Area> = places
            .iter()
            .map(|p| Area {
                left: p.at.0,
                top: p.at.1 + 6.0 - LINE,
                right: p.at.0 + text_width(&p.said),
                bottom: p.at.1 + 6.0,
            })
            .collect();
        for (i, a) in areas.iter().enumerate() {
            assert!(a.within(400.0, 300.0), "{a:?}");
            assert!(areas[i + 1..].iter().all(|b| !a.meets(b)), "{places:?}");
        }
    }

    #[test]
    fn a_label_at_the_edge_stays_on_the_paper() {
        let mut labels = Labels::new(&paper());
        labels.add((399.0, 1.0), "at the corner");
        let place = &labels.places()[0];
        assert!(place.at.0 + text_width(&place.said) <= 400.0);
        assert!(place.at.1 > 0.0);
    }

    #[test]
    fn a_point_that_is_no_number_gets_no_label() {
        let mut labels = Labels::new(&paper());
        labels.add((f64::NAN, 3.0), "nowhere");
        assert!(labels.places().is_empty());
    }
}
