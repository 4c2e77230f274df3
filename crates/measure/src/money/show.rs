//! Showing money by locale, and saving it as text.

use std::fmt;
use std::str::FromStr;

use rust_decimal::Decimal;

use super::{Currency, Money, MoneyError};
use crate::Mark;

impl Money {
    /// The amount as people of the locale write it: `£1,234.50`, `1.234,50 €`.
    ///
    /// A sign that the home currency shares gives way to the three letters. At least the currency's decimals are
    /// shown, and finer ones where a unit price has them.
    #[must_use]
    pub fn shown(&self, mark: Mark, home: Currency) -> String {
        let mut amount = self.amount().normalize();
        if amount.scale() < self.currency().minor_units() {
            amount.rescale(self.currency().minor_units());
        }
        let figures = shown_decimal(amount.abs(), mark);
        let minus = if self.is_negative() { "\u{2212}" } else { "" };
        let sign = self.currency().sign_beside(home);
        match (sign, mark) {
            // The stop of an abbreviation would run into the figures.
            (Some(sign), Mark::Point) if sign.ends_with('.') => {
                format!("{minus}{sign}\u{a0}{figures}")
            }
            (Some(sign), Mark::Point) => format!("{minus}{sign}{figures}"),
            (Some(sign), Mark::Comma) => format!("{minus}{figures}\u{a0}{sign}"),
            (None, _) => format!("{minus}{figures}\u{a0}{}", self.currency()),
        }
    }

    /// The figures alone, as they would be typed, without thousands marks.
    #[must_use]
    pub fn figures(&self, mark: Mark) -> String {
        let mut amount = self.amount().normalize();
        if amount.scale() < self.currency().minor_units() {
            amount.rescale(self.currency().minor_units());
        }
        match mark {
            Mark::Point => amount.to_string(),
            Mark::Comma => amount.to_string().replace('.', ","),
        }
    }
}

/// A plain decimal number by locale, with thousands marks.
#[must_use]
pub fn shown_decimal(value: Decimal, mark: Mark) -> String {
    let (decimal_mark, thousands) = match mark {
        Mark::Point => ('.', ','),
        Mark::Comma => (',', '.'),
    };
    let text = value.abs().to_string();
    let (whole, decimals) = text.split_once('.').unwrap_or((&text, ""));
    let mut shown = String::new();
    if value.is_sign_negative() && !value.is_zero() {
        shown.push('\u{2212}');
    }
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index).is_multiple_of(3) {
            shown.push(thousands);
        }
        shown.push(digit);
    }
    if !decimals.is_empty() {
        shown.push(decimal_mark);
        shown.push_str(decimals);
    }
    shown
}

/// The saved form: `12.50 GBP`.
impl fmt::Display for Money {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut amount = self.amount().normalize();
        if amount.scale() < self.currency().minor_units() {
            amount.rescale(self.currency().minor_units());
        }
        write!(f, "{amount} {}", self.currency())
    }
}

impl FromStr for Money {
    type Err = MoneyError;

    fn from_str(saved: &str) -> Result<Self, MoneyError> {
        let (amount, code) = saved.split_once(' ').ok_or(MoneyError::Unreadable)?;
        let currency = Currency::of_code(code).ok_or(MoneyError::Unreadable)?;
        let amount = Decimal::from_str_exact(amount).map_err(|_| MoneyError::Unreadable)?;
        Ok(Self::new(amount, currency))
    }
}
