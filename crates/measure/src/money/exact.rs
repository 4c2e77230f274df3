//! Decimal arithmetic that is exact or refuses, and the two rules of rounding.

use std::str::FromStr;

use rust_decimal::{Decimal, RoundingStrategy};

use super::MoneyError;

/// A measured quantity is priced after rounding to so many decimals.
pub const PRICED_DECIMALS: u32 = 3;

/// How a tie is rounded.
///
/// # Source
/// ISO 80000-1 Annex B: rule A (to the even digit) and rule B (up, away from nothing).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Rounding {
    /// A tie goes to the even digit: 0.125 becomes 0.12, 0.135 becomes 0.14.
    #[default]
    HalfEven,
    /// A tie goes away from nothing: 0.125 becomes 0.13, -0.125 becomes -0.13.
    HalfUp,
}

impl Rounding {
    /// A decimal rounded to so many places.
    #[must_use]
    pub fn to_places(self, amount: Decimal, places: u32) -> Decimal {
        let strategy = match self {
            Self::HalfEven => RoundingStrategy::MidpointNearestEven,
            Self::HalfUp => RoundingStrategy::MidpointAwayFromZero,
        };
        amount.round_dp_with_strategy(places, strategy)
    }

    /// Whether a quotient is rounded away from nothing, given twice its remainder against the divisor.
    fn steps_up(self, quotient: i128, against: std::cmp::Ordering) -> bool {
        match against {
            std::cmp::Ordering::Greater => true,
            std::cmp::Ordering::Less => false,
            std::cmp::Ordering::Equal => self == Self::HalfUp || quotient % 2 != 0,
        }
    }
}

/// The sum, or a refusal where digits would be lost.
pub(super) fn exact_sum(left: Decimal, right: Decimal) -> Result<Decimal, MoneyError> {
    let sum = left.checked_add(right).ok_or(MoneyError::Overflow)?;
    // The decimal type drops digits rather than fail when a sum outgrows it.
    if sum.is_zero() || sum.scale() >= left.scale().max(right.scale()) {
        return Ok(sum);
    }
    let (left, right) = (left.normalize(), right.normalize());
    let sum = left.checked_add(right).ok_or(MoneyError::Overflow)?;
    if sum.scale() >= left.scale().max(right.scale()) {
        Ok(sum)
    } else {
        Err(MoneyError::Overflow)
    }
}

/// The product, or a refusal where digits would be lost.
pub(super) fn exact_product(left: Decimal, right: Decimal) -> Result<Decimal, MoneyError> {
    let (left, right) = (left.normalize(), right.normalize());
    let product = left.checked_mul(right).ok_or(MoneyError::Overflow)?;
    if left.is_zero() || right.is_zero() || product.scale() == left.scale() + right.scale() {
        Ok(product)
    } else {
        Err(MoneyError::Overflow)
    }
}

/// A quotient rounded once, from its exact remainder.
pub(super) fn rounded_quotient(
    over: Decimal,
    under: Decimal,
    places: u32,
    rounding: Rounding,
) -> Result<Decimal, MoneyError> {
    if under.is_zero() {
        return Err(MoneyError::DividedByNothing);
    }
    let (over, under) = (over.normalize(), under.normalize());
    let power = |n: u32| 10_u128.checked_pow(n).ok_or(MoneyError::Overflow);
    let raised = |d: Decimal, by: u32| {
        d.mantissa()
            .unsigned_abs()
            .checked_mul(power(by)?)
            .ok_or(MoneyError::Overflow)
    };
    // over / under * 10^places as a fraction of whole numbers.
    let up = i64::from(under.scale()) + i64::from(places) - i64::from(over.scale());
    let steps = u32::try_from(up.unsigned_abs()).map_err(|_| MoneyError::Overflow)?;
    let (top, bottom) = if up >= 0 {
        (raised(over, steps)?, under.mantissa().unsigned_abs())
    } else {
        (over.mantissa().unsigned_abs(), raised(under, steps)?)
    };
    let whole = i128::try_from(top / bottom).map_err(|_| MoneyError::Overflow)?;
    let rest = top % bottom;
    let against = rest.cmp(&(bottom - rest));
    let magnitude = whole + i128::from(rounding.steps_up(whole, against));
    let negative = over.is_sign_negative() != under.is_sign_negative();
    Decimal::try_from_i128_with_scale(if negative { -magnitude } else { magnitude }, places)
        .map_err(|_| MoneyError::Overflow)
}

/// A measured quantity as the decimal that is priced: half-even to three decimals.
///
/// The shortest decimal that stands for the float is rounded, so that 2.0005 is a tie as it is on paper.
///
/// # Errors
/// [`MoneyError::Quantity`] for no number, or one of 10¹² and more.
pub fn measured_decimal(value: f64) -> Result<Decimal, MoneyError> {
    if !value.is_finite() || value.abs() >= 1e12 {
        return Err(MoneyError::Quantity);
    }
    if value.abs() < 1e-9 {
        return Ok(Decimal::ZERO);
    }
    let written = Decimal::from_str(&value.to_string())
        .or_else(|_| Decimal::from_str(&format!("{value:.15}")))
        .map_err(|_| MoneyError::Quantity)?;
    Ok(Rounding::HalfEven.to_places(written, PRICED_DECIMALS))
}
