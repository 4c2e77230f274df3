//! Outlines of panels laid flat, for drawing them to scale.

use std::f64::consts::TAU;

/// Corners of a closed outline in metres, x to the right and y up, the lowest corner of its box at the origin.
pub type Outline = Vec<[f64; 2]>;

/// A rectangle.
#[must_use]
pub fn rectangle_outline(length: f64, height: f64) -> Outline {
    vec![[0.0, 0.0], [length, 0.0], [length, height], [0.0, height]]
}

/// A trapezium, drawn with its shorter edge above the middle of the longer.
#[must_use]
pub fn trapezium_outline(length: f64, top: f64, height: f64) -> Outline {
    let (low, high) = ((top - length).max(0.0) / 2.0, (length - top).max(0.0) / 2.0);
    vec![
        [low, 0.0],
        [low + length, 0.0],
        [high + top, height],
        [high, height],
    ]
}

/// A disc, as a polygon of many sides.
#[must_use]
pub fn disc_outline(diameter: f64) -> Outline {
    const SIDES: u32 = 48;
    let radius = diameter / 2.0;
    (0..SIDES)
        .map(|side| {
            let angle = TAU * f64::from(side) / f64::from(SIDES);
            [radius + radius * angle.cos(), radius + radius * angle.sin()]
        })
        .collect()
}

/// A traced outline, moved so that its box begins at the origin.
#[must_use]
pub fn traced_outline(corners: &[[f64; 2]]) -> Outline {
    let least = |axis: usize| {
        corners
            .iter()
            .map(|corner| corner[axis])
            .fold(f64::INFINITY, f64::min)
    };
    let (x, y) = (least(0), least(1));
    corners
        .iter()
        .map(|corner| [corner[0] - x, corner[1] - y])
        .collect()
}

/// The width and height of an outline's box.
#[must_use]
pub fn outline_size(outline: &[[f64; 2]]) -> [f64; 2] {
    outline.iter().fold([0.0, 0.0], |size: [f64; 2], corner| {
        [size[0].max(corner[0]), size[1].max(corner[1])]
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_trapezium_stands_within_its_own_box_either_way_up() {
        for (length, top) in [(1.2, 0.9), (0.9, 1.2)] {
            let outline = trapezium_outline(length, top, 0.6);
            assert_eq!(outline_size(&outline), [1.2, 0.6]);
            assert!(outline.iter().all(|corner| corner[0] >= 0.0));
        }
    }

    #[test]
    fn a_traced_outline_is_moved_to_the_origin() {
        assert_eq!(
            traced_outline(&[[2.0, 3.0], [4.0, 3.0], [4.0, 7.0]]),
            [[0.0, 0.0], [2.0, 0.0], [2.0, 4.0]]
        );
    }
}
