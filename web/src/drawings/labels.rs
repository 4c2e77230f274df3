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
    drawn: Vec<Area>,
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
    fn of(left: f64, top: f64, wide: f64, tall: f64) -> Self {
        Self {
            left,
            top,
            right: left + wide,
            bottom: top + tall,
        }
    }

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

/// Places about a point in a widening ring, and whether they are so far off that a leader is due.
fn around(names: Point, wide: f64) -> impl Iterator<Item = (Area, bool)> {
    (0..STEPS).flat_map(move |step| {
        let off = 8.0 + step as f64 * 12.0;
        let (right, left) = (names.0 + 6.0, names.0 - wide - 6.0);
        let (over, under) = (names.1 - LINE - off + 4.0, names.1 + off - 4.0);
        let level = names.1 - LINE / 2.0;
        let places = [
            (names.0 + off, level),
            (right, over),
            (names.0 - off - wide, level),
            (right, under),
            (left, over),
            (left, under),
        ];
        places.map(|(left, top)| (Area::of(left, top, wide, LINE), step > 1))
    })
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
            drawn: Vec::new(),
            wanted: Vec::new(),
        }
    }

    /// A label for the point.
    pub fn add(&mut self, names: Point, said: impl Into<String>) {
        if names.0.is_finite() && names.1.is_finite() {
            self.wanted.push((names, said.into()));
        }
    }

    /// Keeps labels off a text that stands where it must.
    pub fn keep_off_text(&mut self, at: Point, lean: Lean, said: &str) {
        let wide = text_width(said);
        let left = match lean {
            Lean::Start => at.0,
            Lean::Middle => at.0 - wide / 2.0,
            Lean::End => at.0 - wide,
        };
        self.taken
            .push(Area::of(left, at.1 - LINE + 6.0, wide, LINE));
    }

    /// Keeps labels off what is drawn about a point, as long as there is other room.
    pub fn keep_off(&mut self, at: Point, reach: f64) {
        let (left, top) = (at.0 - reach, at.1 - reach);
        self.drawn
            .push(Area::of(left, top, 2.0 * reach, 2.0 * reach));
    }

    /// Where each label comes to stand: the first of a widening ring of places that is free and on the paper. One that finds no
    /// room anywhere is left out.
    pub fn places(&self) -> Vec<Placed> {
        let mut taken = self.taken.clone();
        let mut places = Vec::with_capacity(self.wanted.len());
        for (names, said) in &self.wanted {
            let Some((area, far)) = self.free_area(*names, text_width(said), &taken) else {
                continue;
            };
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

    fn free_area(&self, names: Point, wide: f64, taken: &[Area]) -> Option<(Area, bool)> {
        let off_text = |place: &Area| {
            place.within(self.width, self.height) && !taken.iter().any(|t| t.meets(place))
        };
        let off_all = |place: &Area| off_text(place) && !self.drawn.iter().any(|d| d.meets(place));
        let ring = || around(names, wide);
        // Far from what it names a label may as well stand on a line.
        ring()
            .take(6 * STEPS / 2)
            .find(|(place, _)| off_all(place))
            .or_else(|| ring().find(|(place, _)| off_text(place)))
            .or_else(|| self.anywhere(names, wide, &off_text))
    }

    /// The free place on the paper that is nearest.
    fn anywhere(
        &self,
        names: Point,
        wide: f64,
        free: &dyn Fn(&Area) -> bool,
    ) -> Option<(Area, bool)> {
        let downs = (0..).map(|i| f64::from(i) * LINE / 2.0);
        let downs = downs.take_while(|top| top + LINE <= self.height);
        let all = downs.flat_map(|top| {
            let acrosses = (0..).map(|i| f64::from(i) * LINE / 2.0);
            let acrosses = acrosses.take_while(|left| left + wide <= self.width);
            acrosses.map(move |left| Area::of(left, top, wide, LINE))
        });
        let off = |place: &Area| {
            let middle = (
                (place.left + place.right) / 2.0,
                (place.top + place.bottom) / 2.0,
            );
            (middle.0 - names.0).hypot(middle.1 - names.1)
        };
        let nearest = all.filter(free).min_by(|a, b| off(a).total_cmp(&off(b)))?;
        Some((nearest, true))
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
    fn on_a_narrow_paper_labels_find_the_room_there_is_and_never_overlap() {
        let narrow = Paper {
            width: 240.0,
            height: 220.0,
            ..paper()
        };
        let mut labels = Labels::new(&narrow);
        labels.keep_off_text((120.0, 24.0), Lean::Middle, "Centre line, not measured");
        for i in 0..30 {
            labels.keep_off((f64::from(i) * 7.0, 110.0), 8.0);
            labels.add((f64::from(i) * 7.0, 110.0), format!("Feature {i}"));
        }
        let places = labels.places();
        // Ten lines of two of them, less the line of the text and what a ring leaves between.
        assert!(places.len() >= 12, "{}", places.len());
        let areas: Vec<Area> = places
            .iter()
            .map(|p| Area::of(p.at.0, p.at.1 + 6.0 - LINE, text_width(&p.said), LINE))
            .collect();
        for (i, a) in areas.iter().enumerate() {
            assert!(a.within(240.0, 220.0) && a.top >= 24.0 + 6.0, "{a:?}");
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
