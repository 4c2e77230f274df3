//! The working of a sum of money: formula, figures put in, and the amount, exact.

use std::rc::Rc;

use rust_decimal::Decimal;

use super::exact::{exact_product, exact_sum, rounded_quotient};
use super::{Money, MoneyError, Rounding};

/// A formula of money and plain numbers. What is displayed is what is reckoned: [`MoneyExpr::value`] evaluates it.
#[derive(Debug, Clone, PartialEq)]
pub enum MoneyExpr {
    /// An amount put in, named by the entry or line it comes from.
    Amount {
        /// The entry's key, or the symbol of an earlier line of the working.
        name: Rc<str>,
        /// The amount.
        money: Money,
    },
    /// A plain number put in: a count, a rate, a percentage.
    Number {
        /// The entry's key, or what the number is.
        name: Rc<str>,
        /// The number.
        value: Decimal,
    },
    /// A sum; the parts marked `true` are taken away.
    Sum(Vec<(bool, MoneyExpr)>),
    /// A product.
    Product(Vec<MoneyExpr>),
    /// A quotient rounded to so many decimals.
    Quotient {
        /// What is divided.
        over: Box<MoneyExpr>,
        /// What it is divided by.
        under: Box<MoneyExpr>,
        /// Decimals kept.
        places: u32,
        /// The rule for ties.
        rounding: Rounding,
    },
    /// A value rounded to so many decimals.
    Rounded {
        /// What is rounded.
        of: Box<MoneyExpr>,
        /// Decimals kept.
        places: u32,
        /// The rule for ties.
        rounding: Rounding,
    },
}

/// One line of a working.
#[derive(Debug, Clone, PartialEq)]
pub struct MoneyLine {
    /// What the line gives.
    pub symbol: Rc<str>,
    /// How.
    pub formula: MoneyExpr,
    /// The value, as displayed.
    pub value: Decimal,
}

/// The lines of a working, in the order they are reckoned; the last gives the result.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct MoneyWorking {
    /// The lines.
    pub lines: Vec<Rc<MoneyLine>>,
}

impl MoneyExpr {
    /// An amount put in.
    #[must_use]
    pub fn amount(name: impl Into<Rc<str>>, money: Money) -> Self {
        Self::Amount {
            name: name.into(),
            money,
        }
    }

    /// A plain number put in.
    #[must_use]
    pub fn number(name: impl Into<Rc<str>>, value: Decimal) -> Self {
        Self::Number {
            name: name.into(),
            value,
        }
    }

    /// The value of the formula.
    ///
    /// # Errors
    /// [`MoneyError::Overflow`], [`MoneyError::DividedByNothing`].
    pub fn value(&self) -> Result<Decimal, MoneyError> {
        match self {
            Self::Amount { money, .. } => Ok(money.amount()),
            Self::Number { value, .. } => Ok(*value),
            Self::Sum(parts) => parts.iter().try_fold(Decimal::ZERO, |sum, (taken, part)| {
                let value = part.value()?;
                exact_sum(sum, if *taken { -value } else { value })
            }),
            Self::Product(parts) => parts.iter().try_fold(Decimal::ONE, |product, part| {
                exact_product(product, part.value()?)
            }),
            Self::Quotient {
                over,
                under,
                places,
                rounding,
            } => rounded_quotient(over.value()?, under.value()?, *places, *rounding),
            Self::Rounded {
                of,
                places,
                rounding,
            } => Ok(rounding.to_places(of.value()?, *places)),
        }
    }

    /// The formula with its figures as plain text: `round_half_even(3 * 1.25, 2)`.
    #[must_use]
    pub fn plain(&self) -> String {
        let rule = |rounding: &Rounding| match rounding {
            Rounding::HalfEven => "half_even",
            Rounding::HalfUp => "half_up",
        };
        match self {
            Self::Amount { money, .. } => signed(money.amount()),
            Self::Number { value, .. } => signed(*value),
            Self::Sum(parts) if parts.is_empty() => "0".to_owned(),
            Self::Sum(parts) => {
                let mut text = String::from("(");
                for (index, (taken, part)) in parts.iter().enumerate() {
                    text.push_str(match (index, taken) {
                        (0, false) => "",
                        (0, true) => "0 - ",
                        (_, false) => " + ",
                        (_, true) => " - ",
                    });
                    text.push_str(&part.plain());
                }
                text.push(')');
                text
            }
            Self::Product(parts) => parts
                .iter()
                .map(Self::plain)
                .collect::<Vec<_>>()
                .join(" * "),
            Self::Quotient {
                over,
                under,
                places,
                rounding,
            } => {
                let divisor = match **under {
                    Self::Product(_) => format!("({})", under.plain()),
                    _ => under.plain(),
                };
                format!(
                    "round_{}({} / {divisor}, {places})",
                    rule(rounding),
                    over.plain()
                )
            }
            Self::Rounded {
                of,
                places,
                rounding,
            } => {
                format!("round_{}({}, {places})", rule(rounding), of.plain())
            }
        }
    }
}

fn signed(value: Decimal) -> String {
    if value.is_sign_negative() && !value.is_zero() {
        format!("(0 - {})", value.abs())
    } else {
        value.abs().to_string()
    }
}

impl MoneyWorking {
    /// Adds a line and gives its value.
    ///
    /// # Errors
    /// As [`MoneyExpr::value`].
    pub fn line(
        &mut self,
        symbol: impl Into<Rc<str>>,
        formula: MoneyExpr,
    ) -> Result<Decimal, MoneyError> {
        let value = formula.value()?;
        self.lines.push(Rc::new(MoneyLine {
            symbol: symbol.into(),
            formula,
            value,
        }));
        Ok(value)
    }
}
