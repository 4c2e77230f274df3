//! Costs: lines and what is left to spend, who owes whom, own hours, and the choices between two ways of paying.
//!
//! All money here is exact: amounts are rounded only where the currency's smallest unit forces it, and every
//! total is the sum of the parts that are shown beside it.

pub mod choice;
pub mod csv;
pub mod line;
pub mod settle;
mod sources;
pub mod standing;
pub mod worth;

use measure::{Money, MoneyError, MoneyExpr, MoneyWorking, Rounding};

pub use choice::{BreakEven, Choice, Course, HireOrBuy, SendOrDo, SendOrDoAnswer, Side};
pub use line::{DepositState, LineAmounts, LineKind, LineState, LineTerms, Tax, TaxBasis};
pub use settle::{Payer, Settlement, Transfer};
pub use sources::source_of;
pub use standing::{Contingency, GroupSum, PlacedLine, Standing};
pub use worth::{OwnHours, WorthWhenDone};

use crate::TradeError;

/// An amount and how it came about.
#[derive(Debug, Clone, PartialEq)]
pub struct Reckoned {
    /// The amount.
    pub money: Money,
    /// Its working; the last line gives the amount.
    pub working: MoneyWorking,
}

/// How the amounts of a book are reckoned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Terms {
    /// The currency the book is kept in.
    pub home: measure::Currency,
    /// The rule for ties.
    pub rounding: Rounding,
    /// Whether tax counts as cost, or is claimed back and left out.
    pub tax_counts: bool,
}

/// A formula rounded to the currency's smallest unit.
pub(crate) fn rounded_formula(
    of: MoneyExpr,
    currency: measure::Currency,
    rounding: Rounding,
) -> MoneyExpr {
    MoneyExpr::Rounded {
        of: Box::new(of),
        places: currency.minor_units(),
        rounding,
    }
}

/// A line of the working, with its value as money.
pub(crate) fn money_line(
    working: &mut MoneyWorking,
    symbol: &'static str,
    formula: MoneyExpr,
    currency: measure::Currency,
) -> Result<Money, MoneyError> {
    Ok(Money::new(working.line(symbol, formula)?, currency))
}

impl From<MoneyError> for TradeError {
    fn from(error: MoneyError) -> Self {
        Self::Money(error)
    }
}

#[cfg(test)]
mod tests;
#[cfg(test)]
mod working_tests;
