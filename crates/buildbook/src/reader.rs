//! From typed text to traced values: what a sheet's declaration reads its entries with.

use std::rc::Rc;

use measure::{
    Ask, Currency, Decimal, Dimension, Kind, Mark, Money, MoneyAsk, MoneyReading, Quantity,
    Rounding, System, Tool, Unit,
};

use crate::book::row_ids;
use crate::field::Finest;
use crate::field::{Field, Form, Item, Number, Spec, tool_in};
use crate::given::Value;
use crate::here::OfSheet;
use crate::{Book, BookError, Date, Entry, Given, Key, Spot, Typed};

/// Reads the entries of one sheet, and notes what cannot be used.
pub struct Reader<'b> {
    book: &'b Book,
    entries: OfSheet<'b>,
    defaults: u32,
    currency: Currency,
    errors: Vec<(Key, BookError)>,
    /// The last entry that says a tool, and which.
    tool: Option<(&'static str, Option<Tool>)>,
}

/// What came of reading a sheet.
#[derive(Debug, Clone)]
pub struct Read<S> {
    /// The sheet as far as it could be read.
    pub sheet: Rc<S>,
    /// The entries that could not be used, and why.
    pub errors: Vec<(Key, BookError)>,
    /// Whether the sheet has any entry.
    pub begun: bool,
    /// The book's currency.
    pub currency: Currency,
    /// How the book rounds a tie.
    pub rounding: Rounding,
}

impl Reader<'_> {
    /// One field's value.
    fn given<T: Answer>(&mut self, above: &Key, item: &'static Item) -> Given<T> {
        let entry = self.entries.entry(item.name);
        let entry = entry.filter(|(_, entry)| !entry.is_blank());
        let spot = match entry {
            Some((key, _)) => Spot::from(key),
            None => Spot::under(above, item),
        };
        let assumed = || item.field?.assumed_in(self.defaults).map(Typed::plain);
        let typed = entry.map(|(_, entry)| Typed::from(entry));
        let (Some(text), Some(field)) = (typed.or_else(assumed), item.field) else {
            let value = Value::Blank;
            return Given { spot, value };
        };
        let value = match (typed, self.value(text, &spot, field)) {
            (Some(_), Ok(value)) => Value::Typed(value),
            (None, Ok(value)) => Value::Assumed(value),
            (Some(_), Err(error)) => {
                self.errors.push((spot.key().clone(), error));
                Value::Bad
            }
            // A test reads every default; should one slip through, the entry counts as missing.
            (None, Err(_)) => Value::Blank,
        };
        Given { spot, value }
    }

    /// What was typed or is assumed, as it is read.
    fn value<T: Answer>(
        &mut self,
        text: Typed<'_>,
        spot: &Spot,
        field: &'static Field,
    ) -> Result<T, BookError> {
        let by_book;
        let field = match field.number().and_then(|number| number.tool_by) {
            Some(by) => {
                let known = self.tool.filter(|(known, _)| *known == by);
                let tool = known.unwrap_or_else(|| (by, tool_in(self.book, by)));
                self.tool = Some(tool);
                by_book = field.measured_by(tool.1);
                &by_book
            }
            None => field,
        };
        let currency = match field.form {
            Form::Money(Finest::Coin) => self.book.currency_at(spot.key()),
            _ => self.currency,
        };
        let asking = Asking {
            spot,
            field,
            currency,
        };
        T::read(text, &asking)
    }
}

/// The unit of this symbol that measures this kind.
fn named_unit(kind: Kind, symbol: Option<&str>) -> Option<&'static Unit> {
    let symbol = symbol?;
    kind.units()
        .iter()
        .copied()
        .find(|unit| unit.symbol == symbol)
}

/// What a number field asks of the text typed into it.
#[must_use]
pub fn ask(number: &Number, entry: &Entry) -> Ask {
    asked(number, entry.into())
}

fn asked(number: &Number, entry: Typed<'_>) -> Ask {
    let bare = named_unit(number.kind, entry.unit).unwrap_or_else(|| number.unit(System::Metric));
    Ask {
        kind: number.kind,
        bare,
        tool: number.tool,
        // A unit name that two countries share is the one of the country whose unit stands beside it.
        system: bare.system.unwrap_or_default(),
        usual: Mark::Point,
        mark: entry.mark,
        lowest: Some(number.lowest),
        highest: Some(number.highest),
        whole: number.whole,
        signed: number.lowest < 0.0,
    }
}

/// What an entry is read for.
#[derive(Debug, Clone, Copy)]
pub struct Asking<'a> {
    /// Where it stands.
    pub spot: &'a Spot,
    /// What the field takes.
    pub field: &'a Field,
    /// The currency of an amount that names none.
    pub currency: Currency,
}

/// What can be read from one entry.
pub trait Answer: Sized {
    /// Reads an entry of a field.
    ///
    /// # Errors
    /// What is wrong with it.
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError>;
}

/// A field declared with a form that its type cannot be read from: a slip in a sheet's declaration.
fn misdeclared<T>(asking: &Asking<'_>) -> Result<T, BookError> {
    debug_assert!(
        false,
        "{} is declared with another form than its type",
        asking.spot.key()
    );
    Err(BookError::Key(asking.spot.key().to_string()))
}

fn shortened(text: &str) -> String {
    text.chars().take(60).collect()
}

impl<D: Dimension> Answer for Quantity<D> {
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError> {
        let Form::Number(number) = &asking.field.form else {
            return misdeclared(asking);
        };
        let reading = measure::read(entry.text, &asked(number, entry))?;
        Ok(Self::entry(
            asking.spot.key().shared(),
            asking.field.symbol,
            number.kind,
            &reading,
        ))
    }
}

impl Answer for MoneyReading {
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError> {
        let Form::Money(finest) = asking.field.form else {
            return misdeclared(asking);
        };
        let named = entry.unit.and_then(Currency::of_code);
        let currency = named.unwrap_or(asking.currency);
        let mut ask = match finest {
            Finest::Coin => MoneyAsk::amount(currency, Mark::Point),
            Finest::Price => MoneyAsk::price(currency, Mark::Point),
        };
        ask.mark = entry.mark;
        let mut reading = measure::read_money(entry.text, &ask)?;
        reading.named |= named.is_some();
        within_limits(reading.money.amount(), asking)?;
        Ok(reading)
    }
}

impl Answer for Money {
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError> {
        Ok(MoneyReading::read(entry, asking)?.money)
    }
}

impl Answer for Decimal {
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError> {
        let Form::Decimal(places) = asking.field.form else {
            return misdeclared(asking);
        };
        let value = measure::read_decimal(entry.text, Mark::Point, entry.mark, places)?.value;
        within_limits(value, asking)?;
        Ok(value)
    }
}

/// Refuses an amount or decimal number beyond the limits of its field.
fn within_limits(value: Decimal, asking: &Asking<'_>) -> Result<(), BookError> {
    let Some((lowest, highest)) = asking.field.limits else {
        return Ok(());
    };
    // Only compared, never reckoned with: a float is fine enough for that.
    let value: f64 = value.to_string().parse().unwrap_or(f64::NAN);
    if (lowest..=highest).contains(&value) {
        Ok(())
    } else {
        Err(BookError::Limits { lowest, highest })
    }
}

impl Answer for Date {
    fn read(entry: Typed<'_>, _: &Asking<'_>) -> Result<Self, BookError> {
        Self::read(entry.text).ok_or_else(|| BookError::Date(shortened(entry.text)))
    }
}

impl Answer for Rc<str> {
    fn read(entry: Typed<'_>, _: &Asking<'_>) -> Result<Self, BookError> {
        Ok(entry.text.trim().into())
    }
}

impl Answer for &'static str {
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError> {
        let Form::Choice(choices) = asking.field.form else {
            return misdeclared(asking);
        };
        let text = entry.text.trim();
        let known = choices.iter().find(|choice| **choice == text).copied();
        known.ok_or_else(|| BookError::Choice {
            text: shortened(text),
            choices,
        })
    }
}

impl Answer for bool {
    fn read(entry: Typed<'_>, _: &Asking<'_>) -> Result<Self, BookError> {
        match entry.text.trim() {
            "yes" => Ok(true),
            "no" => Ok(false),
            other => Err(BookError::Choice {
                text: shortened(other),
                choices: &["yes", "no"],
            }),
        }
    }
}

/// A part of a sheet or row: a field's value, or the rows of a list.
pub trait Part: Sized {
    /// What a row holds, when this is a list.
    const ROW: Option<&'static Spec>;
    /// Whether the list shows its first row before anything is entered in it.
    const ALWAYS: bool = false;
    /// The ids of the rows that stand in the list from the first, each under a name that the words give.
    const PRESET: &'static [&'static str] = &[];
    /// Reads it where it stands below the sheet or row.
    fn read(reader: &mut Reader<'_>, above: &Key, item: &'static Item) -> Self;

    /// Reads it where the next item of the table says: on the pages, one call for each of the many fields.
    ///
    /// # Panics
    /// When the table holds fewer items than the struct, which its declaration makes impossible.
    #[doc(hidden)]
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    fn next(
        reader: &mut Reader<'_>,
        above: &Key,
        items: &mut std::slice::Iter<'static, Item>,
    ) -> Self {
        let item = items
            .next()
            .expect("the table holds every field of the struct");
        Self::read(reader, above, item)
    }
}

impl<T: Answer> Part for Given<T> {
    const ROW: Option<&'static Spec> = None;
    fn read(reader: &mut Reader<'_>, above: &Key, item: &'static Item) -> Self {
        reader.given(above, item)
    }
}

impl<R: Row> Part for Vec<R> {
    const ROW: Option<&'static Spec> = Some(R::SPEC);
    fn read(reader: &mut Reader<'_>, above: &Key, item: &'static Item) -> Self {
        let list = above.under(item.name);
        let around = reader.entries.enter(&list);
        let rows = row_ids(reader.entries.here(), item).into_iter();
        let rows = rows.map(|(id, own)| {
            let at = list.under(id);
            let list = reader.entries.enter_own(&at, own);
            let row = R::read_at(reader, at);
            reader.entries.leave(list);
            row
        });
        let rows = rows.collect();
        reader.entries.leave(around);
        rows
    }
}

/// The rows of a list that always has one: while none is made, the first stands there with all that is assumed of it, and comes
/// into being with the first entry in it.
#[derive(Debug, Clone)]
pub struct AtLeastOne<R>(Vec<R>);

impl<R> std::ops::Deref for AtLeastOne<R> {
    type Target = [R];
    fn deref(&self) -> &[R] {
        &self.0
    }
}

impl<'a, R> IntoIterator for &'a AtLeastOne<R> {
    type Item = &'a R;
    type IntoIter = std::slice::Iter<'a, R>;
    fn into_iter(self) -> Self::IntoIter {
        self.0.iter()
    }
}

impl<R: Row> Part for AtLeastOne<R> {
    const ROW: Option<&'static Spec> = Some(R::SPEC);
    const ALWAYS: bool = true;
    fn read(reader: &mut Reader<'_>, above: &Key, item: &'static Item) -> Self {
        Self(Vec::read(reader, above, item))
    }
}

/// What a list holds from the first, by ids that are names: `wheel_nuts`.
pub trait Preset: Row {
    /// The ids, in their order.
    const IDS: &'static [&'static str];
}

/// The rows of a list that begins with preset ones, before anything is entered in them; rows of one's own come after.
#[derive(Debug, Clone)]
pub struct WithPresets<R>(Vec<R>);

impl<R> std::ops::Deref for WithPresets<R> {
    type Target = [R];
    fn deref(&self) -> &[R] {
        &self.0
    }
}

impl<R: Preset> Part for WithPresets<R> {
    const ROW: Option<&'static Spec> = Some(R::SPEC);
    const PRESET: &'static [&'static str] = R::IDS;
    fn read(reader: &mut Reader<'_>, above: &Key, item: &'static Item) -> Self {
        Self(Vec::read(reader, above, item))
    }
}

/// A sheet, or a row of a list, as its declaration makes it.
pub trait Row: Sized {
    /// What it holds.
    const SPEC: &'static Spec;
    /// Reads it where it stands, whose entries the reader has gone into.
    fn read_at(reader: &mut Reader<'_>, at: Key) -> Self;
}

/// A sheet of the book.
pub trait Sheet: Row {
    /// Its name, the first part of its keys.
    const NAME: &'static str;

    /// Reads the sheet from the book.
    #[must_use]
    fn read(book: &Book) -> Read<Self> {
        let currency = book.currency();
        let entries = book.sheet(Self::NAME);
        let mut reader = Reader {
            book,
            entries: OfSheet::new(&entries),
            defaults: book.defaults_version(),
            currency,
            errors: Vec::new(),
            tool: None,
        };
        let at = Key::from(Self::NAME);
        reader.entries.enter(&at);
        let sheet = Self::read_at(&mut reader, at);
        Read {
            sheet: Rc::new(sheet),
            errors: reader.errors,
            begun: !entries.is_empty(),
            currency,
            rounding: book.rounding(),
        }
    }
}
