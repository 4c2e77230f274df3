//! Real pairs of teeth near a wanted ratio.

use super::Teeth;

/// Which counts of teeth are looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ToothLimits {
    /// Pinion teeth, least and most.
    pub pinion: (u32, u32),
    /// Crown-wheel teeth, least and most.
    pub crown: (u32, u32),
}

/// Counts that spiral bevel and hypoid axles of cars and lorries are made in.
///
/// # Source
/// Common practice, no source.
pub const USUAL_TEETH: ToothLimits = ToothLimits {
    pinion: (5, 17),
    crown: (25, 60),
};

/// The pairs whose ratio lies nearest to the wanted one, nearest first, at most `count`.
///
/// Only pairs that hunt are given: of two that serve alike, the one that wears evenly is the better.
///
/// # Units
/// Pure numbers.
#[must_use]
pub fn tooth_pairs(wanted: f64, limits: ToothLimits, count: usize) -> Vec<Teeth> {
    let pairs = (limits.pinion.0..=limits.pinion.1).flat_map(|pinion| {
        (limits.crown.0..=limits.crown.1).map(move |crown| Teeth { crown, pinion })
    });
    let off = |pair: &Teeth| (pair.ratio() - wanted).abs();
    let mut nearest: Vec<Teeth> = Vec::with_capacity(count + 1);
    for pair in pairs {
        let nearer = |known: &Teeth| {
            let by_ratio = off(known).total_cmp(&off(&pair));
            by_ratio.then(known.pinion.cmp(&pair.pinion)).is_le()
        };
        let place = nearest.partition_point(nearer);
        if place < count && pair.meeting().hunting() {
            nearest.insert(place, pair);
            nearest.truncate(count);
        }
    }
    nearest
}

/// The least number of pinion teeth that axles of a ratio are usually made with; fewer are weak or undercut.
///
/// # Source
/// Gleason's recommendation for hypoid pairs, from memory.
#[must_use]
pub fn least_pinion(ratio: f64) -> u32 {
    match ratio {
        r if r >= 6.0 => 5,
        r if r >= 5.0 => 6,
        r if r >= 4.5 => 7,
        r if r >= 4.0 => 8,
        r if r >= 3.5 => 9,
        r if r >= 3.0 => 10,
        _ => 11,
    }
}

/// The counts to look at for a wanted ratio: pinions from the least that is usual, crown wheels up to 60 teeth. Axles with
/// reduction in the hubs have pinions nearly as large as their crown wheels; a worm has starts in place of teeth.
#[must_use]
pub fn usual_teeth(wanted: f64, worm: bool) -> ToothLimits {
    let crown = USUAL_TEETH.crown;
    if worm {
        let pinion = (2, 9);
        return ToothLimits { pinion, crown };
    }
    if wanted < 2.5 {
        return ToothLimits {
            pinion: (11, 32),
            crown: (17, crown.1),
        };
    }
    let least = least_pinion(wanted);
    ToothLimits {
        pinion: (least, least + 5),
        crown,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_pair_hunts_and_the_nearest_comes_first() {
        let pairs = tooth_pairs(4.3, usual_teeth(4.3, false), 6);
        assert_eq!(pairs.len(), 6);
        assert!(pairs.iter().all(|pair| pair.meeting().hunting()));
        assert_eq!(
            pairs[0],
            Teeth {
                crown: 43,
                pinion: 10
            }
        );
        let off = |pair: &Teeth| (pair.ratio() - 4.3).abs();
        assert!(pairs.windows(2).all(|two| off(&two[0]) <= off(&two[1])));
    }
    #[test]
    fn a_hunting_pair_lies_within_a_thirtieth_of_any_ratio_that_axles_are_made_in() {
        let near = |wanted: f64, worm: bool| tooth_pairs(wanted, usual_teeth(wanted, worm), 1)[0];
        for step in 0..=80 {
            let bevel = 1.1 + 0.1 * f64::from(step);
            let off = (near(bevel, false).ratio() / bevel - 1.0).abs();
            assert!(off < 1.0 / 30.0, "{bevel}");
        }
        let worm = near(8.25, true);
        assert_eq!((worm.crown, worm.pinion), (33, 4));
    }
}
