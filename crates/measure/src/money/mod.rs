//! Money: a decimal amount and its ISO 4217 currency, never a float, with checked operations only.

mod currency;
mod error;
mod exact;
mod read;
mod show;
mod split;
mod working;

pub use currency::Currency;
pub use error::{MoneyEntryError, MoneyError, MoneyFault};
pub use exact::{PRICED_DECIMALS, Rounding, measured_decimal};
pub use read::{DecimalReading, MoneyAsk, MoneyReading, read_decimal, read_money};
pub use rust_decimal::Decimal;
pub use show::shown_decimal;
pub use working::{MoneyExpr, MoneyLine, MoneyWorking};

use exact::{exact_product, exact_sum, rounded_quotient};

/// An amount of one currency, exact.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Money {
    amount: Decimal,
    currency: Currency,
}

impl Money {
    /// An amount of a currency.
    #[must_use]
    pub fn new(amount: Decimal, currency: Currency) -> Self {
        Self { amount, currency }
    }

    /// Nothing of a currency.
    #[must_use]
    pub fn zero(currency: Currency) -> Self {
        Self::new(Decimal::ZERO, currency)
    }

    /// A whole number of minor units: pence, cents, fils.
    ///
    /// # Errors
    /// [`MoneyError::Overflow`] when the amount has more digits than a decimal keeps.
    pub fn of_minor_units(count: i128, currency: Currency) -> Result<Self, MoneyError> {
        Decimal::try_from_i128_with_scale(count, currency.minor_units())
            .map(|amount| Self::new(amount, currency))
            .map_err(|_| MoneyError::Overflow)
    }

    /// The amount, in the currency's major unit.
    #[must_use]
    pub fn amount(&self) -> Decimal {
        self.amount
    }

    /// The currency.
    #[must_use]
    pub fn currency(&self) -> Currency {
        self.currency
    }

    /// Whether the amount is nothing.
    #[must_use]
    pub fn is_zero(&self) -> bool {
        self.amount.is_zero()
    }

    /// Whether the amount is below nothing.
    #[must_use]
    pub fn is_negative(&self) -> bool {
        self.amount.is_sign_negative() && !self.amount.is_zero()
    }

    /// The amount as a whole number of minor units.
    ///
    /// # Errors
    /// [`MoneyError::Fraction`] when it holds parts of a minor unit: round it first.
    pub fn minor_units(&self) -> Result<i128, MoneyError> {
        let amount = self.amount.normalize();
        let places = self.currency.minor_units();
        let missing = places
            .checked_sub(amount.scale())
            .ok_or(MoneyError::Fraction)?;
        10_i128
            .checked_pow(missing)
            .and_then(|factor| amount.mantissa().checked_mul(factor))
            .ok_or(MoneyError::Overflow)
    }

    /// The amount rounded to the currency's minor units.
    ///
    /// # Source
    /// ISO 4217, column "minor unit"; the rules of rounding: ISO 80000-1 Annex B, rules A and B.
    #[must_use]
    pub fn rounded(&self, rounding: Rounding) -> Self {
        let places = self.currency.minor_units();
        let mut amount = rounding.to_places(self.amount, places);
        amount.rescale(places);
        Self::new(amount, self.currency)
    }

    /// The sum of two amounts of one currency.
    ///
    /// # Errors
    /// [`MoneyError::Mixed`] for two currencies, [`MoneyError::Overflow`] beyond 28 digits.
    pub fn plus(&self, other: &Self) -> Result<Self, MoneyError> {
        self.same_currency(other)?;
        Ok(Self::new(
            exact_sum(self.amount, other.amount)?,
            self.currency,
        ))
    }

    /// What is left of this amount after another is taken.
    ///
    /// # Errors
    /// As [`Money::plus`].
    pub fn minus(&self, other: &Self) -> Result<Self, MoneyError> {
        self.plus(&other.negated())
    }

    /// The amount with its sign turned.
    #[must_use]
    pub fn negated(&self) -> Self {
        Self::new(-self.amount, self.currency)
    }

    /// The amount so many times, exact: nothing is rounded.
    ///
    /// # Errors
    /// [`MoneyError::Overflow`] when the product has more digits than a decimal keeps.
    pub fn times(&self, count: Decimal) -> Result<Self, MoneyError> {
        Ok(Self::new(exact_product(self.amount, count)?, self.currency))
    }

    /// The amount times a fraction, rounded once to the currency's minor units.
    ///
    /// # Errors
    /// [`MoneyError::DividedByNothing`], [`MoneyError::Overflow`].
    pub fn times_fraction(
        &self,
        over: Decimal,
        under: Decimal,
        rounding: Rounding,
    ) -> Result<Self, MoneyError> {
        let numerator = exact_product(self.amount, over)?;
        let places = self.currency.minor_units();
        Ok(Self::new(
            rounded_quotient(numerator, under, places, rounding)?,
            self.currency,
        ))
    }

    /// How many times another amount goes into this one, to so many decimals.
    ///
    /// # Errors
    /// [`MoneyError::Mixed`], [`MoneyError::DividedByNothing`], [`MoneyError::Overflow`].
    pub fn over(
        &self,
        other: &Self,
        places: u32,
        rounding: Rounding,
    ) -> Result<Decimal, MoneyError> {
        self.same_currency(other)?;
        rounded_quotient(self.amount, other.amount, places, rounding)
    }

    /// The amount in another currency at a rate: so many of the other for one of this, rounded once.
    ///
    /// # Errors
    /// [`MoneyError::Overflow`].
    pub fn exchanged(
        &self,
        rate: Decimal,
        into: Currency,
        rounding: Rounding,
    ) -> Result<Self, MoneyError> {
        Ok(Self::new(exact_product(self.amount, rate)?, into).rounded(rounding))
    }

    /// The sum of amounts of one currency; nothing when there are none.
    ///
    /// # Errors
    /// As [`Money::plus`].
    pub fn sum<'a>(
        amounts: impl IntoIterator<Item = &'a Self>,
        currency: Currency,
    ) -> Result<Self, MoneyError> {
        amounts
            .into_iter()
            .try_fold(Self::zero(currency), |sum, amount| sum.plus(amount))
    }

    /// Which of two amounts of one currency is the greater.
    ///
    /// # Errors
    /// [`MoneyError::Mixed`] for two currencies.
    pub fn compared(&self, other: &Self) -> Result<std::cmp::Ordering, MoneyError> {
        self.same_currency(other)?;
        Ok(self.amount.cmp(&other.amount))
    }

    fn same_currency(&self, other: &Self) -> Result<(), MoneyError> {
        if self.currency == other.currency {
            Ok(())
        } else {
            Err(MoneyError::Mixed {
                left: self.currency,
                right: other.currency,
            })
        }
    }
}

#[cfg(test)]
mod tests;
