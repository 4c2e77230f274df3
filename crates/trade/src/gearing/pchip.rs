//! Monotone cubic interpolation: a curve through points that never swings beyond them.

/// A piecewise cubic through points in ascending order, without overshoot.
///
/// Slopes at inner points are weighted harmonic means of the neighbouring chords, nil where those change sign; at the ends
/// a three-point formula, kept within what is monotone.
///
/// # Source
/// F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304 (from memory); agrees with SciPy's
/// `PchipInterpolator`.
#[derive(Debug, Clone, PartialEq)]
pub struct Pchip {
    x: Vec<f64>,
    y: Vec<f64>,
    slope: Vec<f64>,
}

impl Pchip {
    /// The curve through the points; none with fewer than two, or where the first coordinates do not ascend.
    #[must_use]
    pub fn through(x: &[f64], y: &[f64]) -> Option<Self> {
        let ascending = x.windows(2).all(|two| two[0] < two[1]);
        if x.len() < 2 || x.len() != y.len() || !ascending {
            return None;
        }
        let step: Vec<f64> = x.windows(2).map(|two| two[1] - two[0]).collect();
        let chord: Vec<f64> = y
            .windows(2)
            .zip(&step)
            .map(|(two, h)| (two[1] - two[0]) / h)
            .collect();
        Some(Self {
            x: x.to_vec(),
            y: y.to_vec(),
            slope: slopes(&step, &chord),
        })
    }

    /// The first and last first coordinate.
    #[must_use]
    pub fn range(&self) -> (f64, f64) {
        (self.x[0], self.x[self.x.len() - 1])
    }

    /// The value at a place; beyond the ends, the value of the end.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        let (first, last) = self.range();
        let x = x.clamp(first, last);
        let i = self
            .x
            .partition_point(|known| *known <= x)
            .clamp(1, self.x.len() - 1)
            - 1;
        let h = self.x[i + 1] - self.x[i];
        hermite(
            (x - self.x[i]) / h,
            [self.y[i], self.y[i + 1]],
            [self.slope[i] * h, self.slope[i + 1] * h],
        )
    }
}

/// The cubic over a unit interval with given values and slopes at its ends.
pub(super) fn hermite(t: f64, value: [f64; 2], slope: [f64; 2]) -> f64 {
    let (t2, t3) = (t * t, t * t * t);
    value[0] * (2.0 * t3 - 3.0 * t2 + 1.0)
        + slope[0] * (t3 - 2.0 * t2 + t)
        + value[1] * (3.0 * t2 - 2.0 * t3)
        + slope[1] * (t3 - t2)
}

fn slopes(step: &[f64], chord: &[f64]) -> Vec<f64> {
    let last = chord.len();
    if last == 1 {
        return vec![chord[0]; 2];
    }
    let mut slope = vec![0.0; last + 1];
    for i in 1..last {
        if chord[i - 1] * chord[i] > 0.0 {
            let (w1, w2) = (2.0 * step[i] + step[i - 1], step[i] + 2.0 * step[i - 1]);
            slope[i] = (w1 + w2) / (w1 / chord[i - 1] + w2 / chord[i]);
        }
    }
    slope[0] = end_slope(step[0], step[1], chord[0], chord[1]);
    slope[last] = end_slope(
        step[last - 1],
        step[last - 2],
        chord[last - 1],
        chord[last - 2],
    );
    slope
}

fn end_slope(near: f64, next: f64, chord: f64, next_chord: f64) -> f64 {
    let slope = ((2.0 * near + next) * chord - near * next_chord) / (near + next);
    if slope * chord <= 0.0 {
        0.0
    } else if chord * next_chord <= 0.0 && slope.abs() > 3.0 * chord.abs() {
        3.0 * chord
    } else {
        slope
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn points_out_of_order_make_no_curve() {
        assert!(Pchip::through(&[1.0, 1.0], &[2.0, 3.0]).is_none());
        assert!(Pchip::through(&[1.0], &[2.0]).is_none());
    }

    proptest! {
        #[test]
        fn the_curve_stays_between_neighbouring_points(
            steps in proptest::collection::vec((0.1f64..5.0, -50.0f64..50.0), 2..9),
            at in 0.0f64..1.0,
        ) {
            let mut place = 0.0;
            let x: Vec<f64> = steps.iter().map(|(h, _)| { place += h; place }).collect();
            let y: Vec<f64> = steps.iter().map(|(_, y)| *y).collect();
            let curve = Pchip::through(&x, &y).unwrap();
            let here = x[0] + at * (x[x.len() - 1] - x[0]);
            let i = x.partition_point(|k| *k <= here).clamp(1, x.len() - 1) - 1;
            let (low, high) = (y[i].min(y[i + 1]), y[i].max(y[i + 1]));
            prop_assert!(curve.at(here) >= low - 1e-9 && curve.at(here) <= high + 1e-9);
        }
    }
}
