//! Quantities that remember how they came about: text typed, traced value, text shown.
//!
//! A [`Quantity`] holds the step that made it and, as its type, its dimension. Operators record as they compute; from the
//! same record come the value, the ± with each entry's share ([`Figure::shares`]) and the working ([`Figure::working`]).
//!
//! ```
//! use measure::{Kind, Ratio, Reading, Rotation, Length, Speed, Stated};
//!
//! let reading = Reading::exact(2.0, &measure::unit::METRE);
//! let circumference = Length::entry("tyre/roll_out", "C", Kind::Length, &reading);
//! let turns = Rotation::exact(50.0);
//! let axle = Ratio::exact(4.0);
//! let speed: Speed = (circumference * turns / axle).called("v");
//! assert_eq!(speed.value(), 25.0);
//! ```

mod dimension;
mod error;
mod extreme;
mod figure;
mod function;
mod kind;
mod kinds;
mod letters;
mod manner;
mod mark;
mod money;
mod node;
mod operators;
mod order;
mod quantity;
mod read;
mod reading;
mod root;
mod show;
mod source;
mod sweep;
mod table;
pub mod unit;
mod units;
mod working;

pub use dimension::*;
pub use error::MeasureError;
pub use extreme::Steps;
pub use figure::{Figure, Share, difference};
pub use function::Function;
pub use kind::Kind;
pub use letters::{capital, small, small_letters};
pub use manner::{Manner, System};
pub use mark::Mark;
pub use money::{
    Currency, Decimal, DecimalReading, Money, MoneyAsk, MoneyEntryError, MoneyError, MoneyExpr,
    MoneyFault, MoneyLine, MoneyReading, MoneyWorking, PRICED_DECIMALS, Rounding, measured_decimal,
    read_decimal, read_money, shown_decimal,
};
pub use order::{sort_by, sort_by_key};
pub use quantity::{Quantity, Standing, Traced};
pub use read::{Ask, EntryError, EntryProblem, Gauge, read};
pub use reading::{Ambiguous, Doubt, Reading, Stated, Tool};
pub use root::{zero, zeros};
pub use show::{
    Shown, ShownLine, show, show_exact, show_in, show_reading, show_term, show_working, shown,
    shown_no_finer,
};
pub use source::{Held, Source};
pub use sweep::Contribution;
pub use table::Table;
pub use unit::{Powers, Unit};
pub use working::{Expr, Line, Term, Working};
