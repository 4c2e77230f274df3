//! Where names stand, so that they do not cover what they name.

use super::ink::{Ink, overlap, rectangle, wide};

/// Height of the letters of names, millimetres.
const HIGH: f64 = 3.2;
/// Height of the letters of sizes.
const SMALL: f64 = 2.8;
/// Between a feature and its name.
const AWAY: f64 = 1.5;

type Box = [[f64; 2]; 2];

/// Boxes that are taken, and the names placed so far.
pub(super) struct Names {
    taken: Vec<Box>,
}

impl Names {
    /// Names among these boxes of lines.
    pub(super) fn among(taken: Vec<Box>) -> Self {
        Self { taken }
    }

    /// A name and a size within a box that has room for them, above its middle; else beside a box, at the first place that covers
    /// nothing, or the one that covers least.
    pub(super) fn place(
        &mut self,
        name: &str,
        size: &str,
        within: Option<Box>,
        beside: Box,
    ) -> Vec<Ink> {
        let long = wide(name, HIGH).max(wide(size, SMALL));
        let tall = HIGH + if size.is_empty() { 0.0 } else { SMALL + 1.2 };
        let [low, high] = beside;
        let middle = [
            (low[0] + high[0] - long) / 2.0,
            (low[1] + high[1] - tall) / 2.0,
        ];
        let (left, right) = (low[0] - AWAY - long, high[0] + AWAY);
        let (under, over) = (low[1] - AWAY - tall, high[1] + AWAY);
        let places = [
            [right, middle[1]],
            [right, over],
            [middle[0], over],
            [middle[0], under],
            [right, under],
            [left, middle[1]],
            [left, over],
            [left, under],
        ];
        let covers = |at: &[f64; 2]| {
            let mine = [*at, [at[0] + long, at[1] + tall]];
            self.taken
                .iter()
                .filter(|taken| overlap(mine, **taken))
                .count()
        };
        let roomy = |[low, high]: &Box| {
            high[0] - low[0] > long + 12.0 && high[1] - low[1] > 2.0 * tall + 16.0
        };
        let inside = within.filter(roomy).map(|[low, high]| {
            [
                (low[0] + high[0] - long) / 2.0,
                (low[1] + high[1]) / 2.0 + 5.0,
            ]
        });
        let at = inside.unwrap_or_else(|| places.into_iter().min_by_key(covers).unwrap_or(middle));
        self.taken.push([at, [at[0] + long, at[1] + tall]]);
        // Lines that a name must cross end before it.
        let behind = rectangle(
            [at[0] - 0.5, at[1] - 0.8],
            [at[0] + long + 0.5, at[1] + tall],
        );
        let mut ink = vec![
            Ink::Area(1.0, behind),
            Ink::bold([at[0], at[1] + tall - HIGH], HIGH, name),
        ];
        if !size.is_empty() {
            ink.push(Ink::text(at, SMALL, size));
        }
        ink
    }
}
