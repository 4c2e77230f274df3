//! Lines for the drawing of speed against engine speed.

/// One gear's line: from the lowest to the highest engine speed, each point as engine speed (turns per second) and road
/// speed (m/s).
pub type GearLine = [(f64, f64); 2];

/// The line of each gear.
#[must_use]
pub fn gear_lines(
    circumference_m: f64,
    overall: &[f64],
    (lowest, highest): (f64, f64),
) -> Vec<GearLine> {
    overall
        .iter()
        .map(|i| [lowest, highest].map(|n| (n, n * circumference_m / i)))
        .collect()
}

/// The saw-tooth of driving up through the gears: along each gear to the highest engine speed, then down to the engine
/// speed that the next gear has at that road speed. Ratios in falling order.
#[must_use]
pub fn saw_tooth(
    circumference_m: f64,
    overall: &[f64],
    (lowest, highest): (f64, f64),
) -> Vec<(f64, f64)> {
    let mut line = Vec::with_capacity(2 * overall.len());
    for (place, i) in overall.iter().enumerate() {
        let begin = match place.checked_sub(1).map(|last| overall[last]) {
            Some(last) => highest * i / last,
            None => lowest,
        };
        line.push((begin, begin * circumference_m / i));
        line.push((highest, highest * circumference_m / i));
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_change_of_gear_keeps_the_road_speed() {
        let line = saw_tooth(2.0, &[20.0, 10.0, 5.0], (10.0, 50.0));
        assert_eq!(line.len(), 6);
        for change in [1, 3] {
            assert!((line[change].1 - line[change + 1].1).abs() < 1e-12);
            assert!(line[change + 1].0 < line[change].0);
        }
    }
}
