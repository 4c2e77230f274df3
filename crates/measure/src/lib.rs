//! Quantities that remember how they came about: text typed, traced value, text shown.

mod kind;
mod manner;
mod mark;
mod money;
mod reading;
pub mod unit;
mod units;

pub use kind::Kind;
pub use manner::{Manner, System};
pub use mark::Mark;
pub use money::{
    Currency, Decimal, DecimalReading, Money, MoneyAsk, MoneyEntryError, MoneyError, MoneyExpr,
    MoneyFault, MoneyLine, MoneyReading, MoneyWorking, PRICED_DECIMALS, Rounding, measured_decimal,
    read_decimal, read_money, shown_decimal,
};
pub use reading::{Ambiguous, Doubt, Reading, Stated, Tool};
pub use unit::{Powers, Unit};
