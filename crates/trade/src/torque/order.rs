//! The order in which the bolts of a joint are tightened.

/// Crosswise on a circle of bolts counted round from 0: each next one lies as far as can be from those already done.
///
/// # Source
/// Common practice, no source: opposite, then square to it, then between.
#[must_use]
pub fn circle_order(bolts: usize) -> Vec<usize> {
    let places: Vec<[f64; 2]> = (0..bolts)
        .map(|i| {
            let angle = std::f64::consts::TAU * i as f64 / bolts as f64;
            [angle.cos(), angle.sin()]
        })
        .collect();
    let mut order: Vec<usize> = Vec::new();
    while order.len() < bolts {
        let next = (0..bolts).filter(|i| !order.contains(i)).max_by(|a, b| {
            let score = |i: usize| {
                (
                    opposite_to_last(&places, &order, i),
                    room(&places, &order, i),
                )
            };
            let ((oa, ra), (ob, rb)) = (score(*a), score(*b));
            oa.total_cmp(&ob).then(ra.total_cmp(&rb)).then(b.cmp(a))
        });
        order.extend(next);
    }
    order
}

/// On every second bolt: how nearly opposite to the last one; else nothing.
fn opposite_to_last(places: &[[f64; 2]], order: &[usize], i: usize) -> f64 {
    match order.last() {
        Some(last) if order.len() % 2 == 1 => round(apart(places[*last], places[i])),
        _ => 0.0,
    }
}

/// The distance to the nearest bolt already done.
fn room(places: &[[f64; 2]], order: &[usize], i: usize) -> f64 {
    round(
        order
            .iter()
            .map(|done| apart(places[*done], places[i]))
            .fold(9.0, f64::min),
    )
}

/// Ties between like places must not hang on the last digit.
fn round(x: f64) -> f64 {
    (x * 1e6).round() / 1e6
}

fn apart(a: [f64; 2], b: [f64; 2]) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

/// From the middle outwards on a rectangle of rows by columns (row by row from 0), as a cylinder head is pulled down.
///
/// # Source
/// Common practice, no source.
#[must_use]
pub fn rectangle_order(rows: usize, columns: usize) -> Vec<usize> {
    let (mid_row, mid_column) = (
        (rows.max(1) - 1) as f64 / 2.0,
        (columns.max(1) - 1) as f64 / 2.0,
    );
    let from_middle = |i: &usize| {
        let (row, column) = ((i / columns.max(1)) as f64, (i % columns.max(1)) as f64);
        let (dr, dc) = (row - mid_row, column - mid_column);
        // Distance first; at the same distance, one diagonal before the other.
        (round(dr.hypot(dc)), if dr * dc >= 0.0 { 0 } else { 1 }, *i)
    };
    let mut order: Vec<usize> = (0..rows * columns).collect();
    order.sort_by(|a, b| {
        let (x, y) = (from_middle(a), from_middle(b));
        x.0.total_cmp(&y.0).then(x.1.cmp(&y.1)).then(x.2.cmp(&y.2))
    });
    order
}
