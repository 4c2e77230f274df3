//! A pack made up from the shims to hand: the fewest that come within tolerance.

use crate::TradeError;

/// A shim to hand: its thickness in metres as marked or measured, and how many there are (none for as many as wanted).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shim {
    /// Thickness, metres.
    pub thickness: f64,
    /// How many are to hand.
    pub count: Option<usize>,
}

/// A pack: which shims, how often each, and what they come to.
#[derive(Debug, Clone, PartialEq)]
pub struct Pack {
    /// How many of each shim, in the order given.
    pub of_each: Vec<usize>,
    /// Their sum, metres.
    pub thickness: f64,
}

impl Pack {
    /// How many shims there are in all.
    #[must_use]
    pub fn shims(&self) -> usize {
        self.of_each.iter().sum()
    }
}

/// The most shims that a pack may hold: more are springy and never seat.
const MOST: usize = 10;

/// The fewest shims whose sum lies within the tolerance of the target; of packs of one number the nearest.
///
/// # Units
/// Metres.
///
/// # Valid range
/// Up to ten shims and as many thicknesses as a workshop keeps.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a target below nothing; [`TradeError::NoPack`] where no ten shims come within it, with
/// what the nearest pack comes to.
pub fn shim_pack(target: f64, tolerance: f64, shims: &[Shim]) -> Result<Pack, TradeError> {
    if !target.is_finite() || target < -tolerance {
        return Err(TradeError::OutOfRange {
            entry: "shim pack",
            lowest: 0.0,
            highest: 0.02,
        });
    }
    let usable: Vec<usize> = (0..shims.len())
        .filter(|i| shims[*i].thickness > 0.0)
        .collect();
    let mut nearest: Option<Pack> = None;
    for count in 0..=MOST {
        let mut search = Search {
            target,
            shims,
            usable: &usable,
            best: None,
            pack: vec![0; shims.len()],
        };
        search.extend(0, count, 0.0);
        let Some(pack) = search.best else { continue };
        let off = |pack: &Pack| (pack.thickness - target).abs();
        // A hair for rounding: 0.05 mm three times must be 0.15 mm.
        if off(&pack) <= tolerance + 1e-12 {
            return Ok(pack);
        }
        if nearest.as_ref().is_none_or(|known| off(&pack) < off(known)) {
            nearest = Some(pack);
        }
    }
    Err(TradeError::NoPack {
        nearest: nearest.map_or(0.0, |pack| pack.thickness),
    })
}

struct Search<'a> {
    target: f64,
    shims: &'a [Shim],
    usable: &'a [usize],
    best: Option<Pack>,
    pack: Vec<usize>,
}

impl Search<'_> {
    /// Tries every way to add `left` more shims from the `from`-th usable one on.
    fn extend(&mut self, from: usize, left: usize, sum: f64) {
        if left == 0 {
            let better = self.best.as_ref().is_none_or(|best| {
                (sum - self.target).abs() < (best.thickness - self.target).abs() - 1e-15
            });
            if better {
                self.best = Some(Pack {
                    of_each: self.pack.clone(),
                    thickness: sum,
                });
            }
            return;
        }
        let Some(&which) = self.usable.get(from) else {
            return;
        };
        // What is left can at most be of the thickest and at least of the thinnest: pass by what cannot come near.
        let most = self.shims[which].count.unwrap_or(left).min(left);
        for taken in (0..=most).rev() {
            self.pack[which] = taken;
            self.extend(
                from + 1,
                left - taken,
                sum + taken as f64 * self.shims[which].thickness,
            );
        }
        self.pack[which] = 0;
    }
}
