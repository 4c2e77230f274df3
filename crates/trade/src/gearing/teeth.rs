//! Ratios as teeth: exact fractions, and which teeth meet how often.

use crate::TradeError;

/// A pair of meshing wheels, by teeth: the driven wheel over the driving one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Teeth {
    /// Teeth of the driven wheel: the crown wheel.
    pub crown: u32,
    /// Teeth of the driving wheel: the pinion.
    pub pinion: u32,
}

/// How the teeth of a pair meet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Meeting {
    /// The greatest common divisor of the two counts.
    pub common: u32,
    /// Turns of the pinion until the same teeth meet again.
    pub pinion_turns: u32,
    /// Turns of the crown wheel until the same teeth meet again.
    pub crown_turns: u32,
}

impl Meeting {
    /// Whether every tooth of one meets every tooth of the other.
    #[must_use]
    pub fn hunting(&self) -> bool {
        self.common == 1
    }
}

impl Teeth {
    /// A pair of wheels.
    ///
    /// # Errors
    /// [`TradeError::Teeth`] where either count is nought or beyond 200.
    pub fn new(crown: u32, pinion: u32) -> Result<Self, TradeError> {
        if (1..=200).contains(&crown) && (1..=200).contains(&pinion) {
            Ok(Self { crown, pinion })
        } else {
            Err(TradeError::Teeth)
        }
    }

    /// Teeth typed as a pair: `41/8`, `41:8`, `41 x 8`; either may come first, since the greater is the crown wheel.
    /// Anything else, such as a plain ratio, is no pair.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let (first, second) = text.trim().split_once(['/', ':', 'x', 'X', '×'])?;
        let whole = |part: &str| part.trim().parse::<u32>().ok();
        let (first, second) = (whole(first)?, whole(second)?);
        Self::new(first.max(second), first.min(second)).ok()
    }

    /// The ratio.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        f64::from(self.crown) / f64::from(self.pinion)
    }

    /// Which teeth meet how often: a pair whose counts have no common divisor hunts, so that wear spreads over all teeth.
    ///
    /// g = gcd(z2, z1); the pinion turns z2/g times and the crown wheel z1/g times until the same teeth meet.
    ///
    /// # Source
    /// Gleason, Gear Technology Solutions, section 7.2, pages 95-96.
    ///
    /// # Example
    /// 30/12: after 5 turns of the pinion and 2 of the wheel.
    #[must_use]
    pub fn meeting(&self) -> Meeting {
        let common = greatest_common_divisor(self.crown, self.pinion);
        Meeting {
            common,
            pinion_turns: self.crown / common,
            crown_turns: self.pinion / common,
        }
    }
}

fn greatest_common_divisor(a: u32, b: u32) -> u32 {
    if b == 0 {
        a
    } else {
        greatest_common_divisor(b, a % b)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pair_is_read_in_either_order_and_a_ratio_is_no_pair() {
        let pair = Teeth {
            crown: 41,
            pinion: 8,
        };
        for text in ["41/8", "8/41", "41:8", " 8 x 41 ", "41×8"] {
            assert_eq!(Teeth::read(text), Some(pair), "{text}");
        }
        for text in ["5.125", "41/", "41/8.5", "0/8", "4 1/8"] {
            assert_eq!(Teeth::read(text), None, "{text}");
        }
    }
}
