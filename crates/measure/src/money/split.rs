//! Splitting a sum into parts that always add up to it.

use rust_decimal::Decimal;

use super::{Money, MoneyError};

impl Money {
    /// The amount split by shares, in whole minor units, so that the parts always add up to it.
    ///
    /// Each part is its exact share rounded down; the minor units left over go one each to the largest
    /// remainders, the earlier part first where two are alike. A negative amount is split as its positive.
    ///
    /// `parts_i = floor(total * share_i / sum of shares)`, plus one for the largest remainders.
    ///
    /// # Errors
    /// [`MoneyError::Shares`] for no shares, one below nothing, or all nothing; [`MoneyError::Fraction`] when
    /// the amount holds parts of a minor unit; [`MoneyError::Overflow`].
    ///
    /// # Source
    /// The method of largest remainders (Hamilton's method of apportionment).
    pub fn split(&self, shares: &[Decimal]) -> Result<Vec<Self>, MoneyError> {
        let total = self.minor_units()?;
        let weights = whole_weights(shares)?;
        let weight_sum = weights
            .iter()
            .try_fold(0_i128, |sum, weight| sum.checked_add(*weight))
            .ok_or(MoneyError::Overflow)?;
        if weight_sum == 0 {
            return Err(MoneyError::Shares);
        }
        let magnitude = total.abs();
        let mut parts = Vec::with_capacity(weights.len());
        let mut remainders = Vec::with_capacity(weights.len());
        for (index, weight) in weights.iter().enumerate() {
            let product = magnitude.checked_mul(*weight).ok_or(MoneyError::Overflow)?;
            parts.push(product / weight_sum);
            remainders.push((product % weight_sum, index));
        }
        let mut left = magnitude - parts.iter().sum::<i128>();
        crate::sort_by(&mut remainders, |a, b| b.0.cmp(&a.0).then(a.1.cmp(&b.1)));
        for (_, index) in remainders {
            if left == 0 {
                break;
            }
            parts[index] += 1;
            left -= 1;
        }
        parts
            .into_iter()
            .map(|part| Self::of_minor_units(part * total.signum(), self.currency()))
            .collect()
    }
}

/// The shares as whole numbers in the same proportion.
fn whole_weights(shares: &[Decimal]) -> Result<Vec<i128>, MoneyError> {
    let scale = shares
        .iter()
        .map(|share| share.normalize().scale())
        .max()
        .ok_or(MoneyError::Shares)?;
    shares
        .iter()
        .map(|share| {
            let share = share.normalize();
            if share.is_sign_negative() && !share.is_zero() {
                return Err(MoneyError::Shares);
            }
            10_i128
                .checked_pow(scale - share.scale())
                .and_then(|factor| share.mantissa().checked_mul(factor))
                .ok_or(MoneyError::Overflow)
        })
        .collect()
}
