//! Least squares by the normal equations: small, dense and good enough for a handful of unknowns.

/// Solves the normal equations of weighted rows (slopes, remainder, weight); none where they do not determine the unknowns.
pub(super) fn step<const N: usize>(rows: &[([f64; N], f64, f64)]) -> Option<[f64; N]> {
    let mut a = [[0.0; N]; N];
    let mut b = [0.0; N];
    for (slopes, remainder, weight) in rows {
        for i in 0..N {
            b[i] -= weight * slopes[i] * remainder;
            for j in 0..N {
                a[i][j] += weight * slopes[i] * slopes[j];
            }
        }
    }
    solve(a, b)
}

/// Gaussian elimination with the largest pivot of each column.
pub(super) fn solve<const N: usize>(mut a: [[f64; N]; N], mut b: [f64; N]) -> Option<[f64; N]> {
    let scale: [f64; N] = std::array::from_fn(|i| a[i][i].abs());
    for column in 0..N {
        let pivot =
            (column..N).max_by(|i, j| a[*i][column].abs().total_cmp(&a[*j][column].abs()))?;
        a.swap(column, pivot);
        b.swap(column, pivot);
        // A pivot that has lost all its digits means that the rows do not hold this unknown.
        if a[column][column].abs() <= 1e-12 * scale[column].max(f64::MIN_POSITIVE) {
            return None;
        }
        for row in column + 1..N {
            let factor = a[row][column] / a[column][column];
            let above = a[column];
            for (value, over) in a[row].iter_mut().zip(above).skip(column) {
                *value -= factor * over;
            }
            b[row] -= factor * b[column];
        }
    }
    let mut x = [0.0; N];
    for row in (0..N).rev() {
        let known: f64 = (row + 1..N).map(|k| a[row][k] * x[k]).sum();
        x[row] = (b[row] - known) / a[row][row];
    }
    x.iter().all(|v| v.is_finite()).then_some(x)
}

/// Gauss-Newton: repeats the linear step, halved while it makes matters worse, until it no longer moves.
pub(super) fn settle<const N: usize>(
    start: [f64; N],
    rows: impl Fn(&[f64; N]) -> Vec<([f64; N], f64, f64)>,
) -> Option<[f64; N]> {
    let cost = |rows: &[([f64; N], f64, f64)]| rows.iter().map(|(_, r, w)| w * r * r).sum::<f64>();
    let mut x = start;
    let mut at_x = rows(&x);
    let mut here = cost(&at_x);
    for _ in 0..100 {
        let by = step(&at_x)?;
        let mut share = 1.0;
        let mut next = x;
        let mut at_next = Vec::new();
        let mut there = f64::INFINITY;
        while share > 1e-6 {
            next = std::array::from_fn(|i| x[i] + share * by[i]);
            at_next = rows(&next);
            there = cost(&at_next);
            if there <= here {
                break;
            }
            share *= 0.5;
        }
        let moved = (0..N).map(|i| (next[i] - x[i]).abs()).fold(0.0, f64::max);
        if there > here {
            return Some(x);
        }
        (x, at_x, here) = (next, at_next, there);
        if moved < 1e-13 {
            break;
        }
    }
    Some(x)
}
