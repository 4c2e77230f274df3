//! What stands beside the parts of a pattern: letters, numbers, names, and how far the arcs are struck.

use super::pattern::{Scene, cross, length};
use crate::drawings::parts::Lean;
use crate::drawings::{Labels, Paper, Point};
use crate::state::State;
use crate::words::{self, marking};
use buildbook::Key;
use yew::{Html, html};

/// How much room about a place a label leaves free.
const ABOUT: f64 = 8.0;

impl Scene<'_> {
    /// The chosen feature by its name and the datums of both sides by their letters; once one has come nearer, the other features by
    /// their numbers and what is there by its name. Texts that stand already are kept clear.
    pub(super) fn named(
        &self,
        state: &State,
        paper: &Paper,
        texts: &[(Point, Lean, String)],
    ) -> Html {
        let mut labels = Labels::new(paper);
        for (at, lean, said) in texts {
            labels.keep_off_text(*at, *lean, said);
        }
        let list = Key::from("marking/features");
        let rows = self.marking.sheet.features.iter().enumerate();
        let goes = rows.zip(&self.marking.moved.features);
        let places: Vec<(usize, Point)> = goes
            .filter_map(|((at, _), goes)| {
                let place = self.on(self.view.at(goes.at.as_ref().ok()?.values()));
                Some((at, place))
            })
            .collect();
        let name = |at: usize| {
            let row = &self.marking.sheet.features[at];
            words::row_name(&state.book, &list, row.id(), paper.tongue)
        };
        let mut beside = |at: Point, said: String| {
            if paper.holds(at) {
                labels.keep_off(at, ABOUT);
                labels.add(at, said);
            }
        };
        let chosen = places.iter().find(|(at, _)| self.chosen == Some(*at));
        if let Some((at, place)) = chosen {
            beside(*place, name(*at));
        }
        for (middle, said) in self.distances(paper) {
            beside(middle, said);
        }
        let datums = self.old.iter().copied().zip(["A", "B", "C", "D"]);
        let from = self.marking.moved.from.iter().flatten();
        let new = from.chain(&self.marking.moved.others);
        let new = new.filter(|_| self.marking.moved.mirrors);
        let new = new.map(|at| self.view.at(at.values()));
        let mut crosses = Vec::new();
        for (at, letter) in datums.chain(new.zip(["A′", "B′", "C′", "D′"])) {
            let at = self.on(at);
            crosses.extend(paper.holds(at).then(|| cross(at)));
            beside(at, letter.to_owned());
        }
        // From afar the numbers would only hide what they stand beside.
        if paper.near.zoom > 1.0 {
            for (at, place) in places.iter().filter(|(at, _)| self.chosen != Some(*at)) {
                beside(*place, (at + 1).to_string());
            }
            for (row, placed) in &self.marking.moved.there {
                let name = self.marking.sheet.there[*row].name.value();
                let at = self.on(self.view.at(placed.at.values()));
                beside(at, name.map_or_else(String::new, ToString::to_string));
            }
            for (from, to, row) in self.edges() {
                let name = self.marking.edges[row].name.as_ref();
                let said = name.map_or(paper.tongue.say(marking::EDGE), |name| name);
                beside(half_way(from, to), said.to_owned());
            }
        }
        html! { <>{ crosses.into_iter().collect::<Html>() }{ labels.placed() }</> }
    }

    /// How far the arcs are struck, each beside its line: half way from its datum, or nearer where that lies off the paper.
    fn distances(&self, paper: &Paper) -> Vec<(Point, String)> {
        let moved = &self.marking.moved;
        let goes = self.chosen.and_then(|chosen| moved.features.get(chosen));
        let (Ok(from), Some(Ok(at))) = (&moved.from, goes.map(|goes| &goes.at)) else {
            return Vec::new();
        };
        let here = self.on(self.view.at(at.values()));
        let distance = |datum: &trade::marking::Point| {
            let there = self.on(self.view.at(datum.values()));
            let mut share = [0.5, 0.7, 0.85].into_iter().map(|share| {
                (
                    there.0 + share * (here.0 - there.0),
                    there.1 + share * (here.1 - there.1),
                )
            });
            let seen = share.find(|at| paper.holds(*at))?;
            Some((seen, length(&datum.distance(at), paper)))
        };
        from.iter().filter_map(distance).collect()
    }
}

fn half_way(from: Point, to: Point) -> Point {
    ((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0)
}
