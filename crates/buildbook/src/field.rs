//! What a field asks for: its form, its limits and what is assumed when it is blank.
//!
//! The one table from which the reader's checks, a page's rows and every message about an entry come.

use measure::{Kind, System, Tool, Unit};

use crate::key::RANK;
use crate::{Book, Key};

/// What a field takes.
#[derive(Debug, Clone, Copy)]
pub enum Form {
    /// A measured or counted number.
    Number(Number),
    /// Free text.
    Text,
    /// One of several words, kept by these names; pages show their own words for them.
    Choice(&'static [&'static str]),
    /// A row of a list of the book, kept by its id: the payer of a line, the system of a panel.
    OneOf(&'static str),
    /// Yes or no, kept as `yes` and `no`.
    YesNo,
    /// An amount of money in the book's currency, or one that names its own.
    Money(Finest),
    /// An exact decimal number with so many places at most: a quantity bought, a rate of exchange, a rate of tax.
    Decimal(u32),
    /// A day, kept as it was typed.
    Date,
}

/// How fine an amount of money may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Finest {
    /// The currency's smallest unit.
    Coin,
    /// A unit price, which may be finer.
    Price,
}

/// What a number field takes.
#[derive(Debug, Clone, Copy)]
pub struct Number {
    /// What it measures.
    pub kind: Kind,
    /// The units of a bare number: metric, imperial, United States. Without them, those of the kind.
    pub units: Option<[&'static Unit; 3]>,
    /// What it is measured with: the usual error of that tool stands in for an untyped ±. `None` is exact (a count, a ratio of teeth).
    pub tool: Option<Tool>,
    /// The entry that names another tool, where the user says what was measured with: `marking/taken_with`.
    pub tool_by: Option<&'static str>,
    /// The lowest value that makes sense (SI).
    pub lowest: f64,
    /// The highest value that makes sense (SI).
    pub highest: f64,
    /// Only whole numbers.
    pub whole: bool,
}

impl Number {
    /// The unit of a bare number in a system of units.
    #[must_use]
    pub fn unit(&self, system: System) -> &'static Unit {
        match (self.units, system) {
            (Some([metric, _, _]), System::Metric) => metric,
            (Some([_, imperial, _]), System::Imperial) => imperial,
            (Some([_, _, states]), System::UnitedStates) => states,
            (None, system) => self.kind.default_unit(system),
        }
    }
}

/// One field of a sheet or of a row.
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// Its name, the last part of its key.
    pub name: &'static str,
    /// The symbol that workings show for it.
    pub symbol: &'static str,
    /// What it takes.
    pub form: Form,
    /// The lowest and highest amount or decimal number that make sense; a measured number has its own.
    pub limits: Option<(f64, f64)>,
    /// What is assumed while it is blank, as it would be typed. Shown as an assumption that the user can change.
    pub assumed: Option<&'static str>,
    /// What was assumed once: up to and including which version of the defaults, and what. Oldest first.
    pub assumed_once: &'static [(u32, &'static str)],
    /// A person decides it; nobody measures it: an axle ratio, a number of coats. Working back offers it first.
    pub chosen: bool,
}

/// A number field with a symbol for workings. Unlimited from zero up, and exact, until said otherwise.
#[must_use]
pub const fn number(symbol: &'static str, kind: Kind) -> Field {
    Field {
        name: "",
        symbol,
        form: Form::Number(Number {
            kind,
            units: None,
            tool: None,
            tool_by: None,
            lowest: 0.0,
            highest: f64::MAX,
            whole: false,
        }),
        limits: None,
        assumed: None,
        assumed_once: &[],
        chosen: false,
    }
}

/// A number field that takes whole numbers only.
#[must_use]
pub const fn count(symbol: &'static str) -> Field {
    let mut field = number(symbol, Kind::Count);
    if let Form::Number(number) = &mut field.form {
        number.whole = true;
    }
    field
}

const fn plain(form: Form) -> Field {
    Field {
        name: "",
        symbol: "",
        form,
        limits: None,
        assumed: None,
        assumed_once: &[],
        chosen: false,
    }
}

/// A field of free text.
#[must_use]
pub const fn text() -> Field {
    plain(Form::Text)
}

/// A field that takes one of several words.
#[must_use]
pub const fn choice(of: &'static [&'static str]) -> Field {
    plain(Form::Choice(of))
}

/// A field that takes a row of a list, by its id. Read as text: the row may have gone.
#[must_use]
pub const fn one_of(list: &'static str) -> Field {
    plain(Form::OneOf(list))
}

/// A field that takes yes or no.
#[must_use]
pub const fn yes_no() -> Field {
    plain(Form::YesNo)
}

/// A field that takes an amount of money.
#[must_use]
pub const fn money() -> Field {
    plain(Form::Money(Finest::Coin))
}

/// A field that takes a unit price, which may be finer than the currency's smallest unit.
#[must_use]
pub const fn price() -> Field {
    plain(Form::Money(Finest::Price))
}

/// A field that takes an exact decimal number with so many places at most.
#[must_use]
pub const fn decimal(places: u32) -> Field {
    plain(Form::Decimal(places))
}

/// A field that takes a day.
#[must_use]
pub const fn date() -> Field {
    plain(Form::Date)
}

/// The tool that an entry of the book says, where it says one.
pub(crate) fn tool_in(book: &Book, by: &str) -> Option<Tool> {
    match book.entry(by)?.text.trim() {
        "tape" => Some(Tool::Tape),
        "rule" => Some(Tool::Rule),
        "trammel" => Some(Tool::Trammel),
        "caliper" => Some(Tool::Caliper),
        _ => None,
    }
}

impl Field {
    /// The lowest and highest value that make sense: of a number in the SI unit of the kind, of an amount in its currency.
    #[must_use]
    pub const fn between(mut self, lowest: f64, highest: f64) -> Self {
        assert!(lowest <= highest, "the lowest value lies above the highest");
        match &mut self.form {
            Form::Number(number) => {
                number.lowest = lowest;
                number.highest = highest;
            }
            Form::Money(_) | Form::Decimal(_) => self.limits = Some((lowest, highest)),
            _ => panic!("only a number or an amount has limits"),
        }
        self
    }

    /// What the number is measured with.
    #[must_use]
    pub const fn measured_with(mut self, tool: Tool) -> Self {
        match &mut self.form {
            Form::Number(number) => number.tool = Some(tool),
            _ => panic!("only a number is measured"),
        }
        self
    }

    /// What the number is measured with, unless an entry of the book says otherwise.
    #[must_use]
    pub const fn measured_as(mut self, tool: Tool, by: &'static str) -> Self {
        self = self.measured_with(tool);
        if let Form::Number(number) = &mut self.form {
            number.tool_by = Some(by);
        }
        self
    }

    /// The field as it stands in a book, whose entries may say what was measured with.
    #[must_use]
    pub fn in_book(&self, book: &Book) -> Self {
        let by = self.number().and_then(|number| number.tool_by);
        self.measured_by(by.and_then(|by| tool_in(book, by)))
    }

    /// The field where another tool is said, by what stands in the book.
    pub(crate) fn measured_by(&self, tool: Option<Tool>) -> Self {
        let mut field = *self;
        if let Form::Number(number) = &mut field.form {
            number.tool = tool.or(number.tool);
        }
        field
    }

    /// The units of a bare number where they are not those of the kind: metric, imperial, United States.
    #[must_use]
    pub const fn in_units(
        mut self,
        metric: &'static Unit,
        imperial: &'static Unit,
        states: &'static Unit,
    ) -> Self {
        match &mut self.form {
            Form::Number(number) => number.units = Some([metric, imperial, states]),
            _ => panic!("only a number has a unit"),
        }
        self
    }

    /// What is assumed while the field is blank, as it would be typed in metric units.
    #[must_use]
    pub const fn assumed(mut self, text: &'static str) -> Self {
        self.assumed = Some(text);
        self
    }

    /// What was assumed up to and including a version of the defaults: old books keep it until their owner takes the new one.
    #[must_use]
    pub const fn assumed_once(mut self, until: &'static [(u32, &'static str)]) -> Self {
        self.assumed_once = until;
        self
    }

    /// What a person decides, though it may be typed as a measurement.
    #[must_use]
    pub const fn chosen(mut self) -> Self {
        self.chosen = true;
        self
    }

    /// The same field under its name: the sheet's declaration does this.
    #[must_use]
    pub const fn named(mut self, name: &'static str) -> Self {
        self.name = name;
        self
    }

    /// What a book with this version of the defaults assumes while the field is blank.
    #[must_use]
    pub fn assumed_in(&self, defaults_version: u32) -> Option<&'static str> {
        let once = self
            .assumed_once
            .iter()
            .find(|(until, _)| defaults_version <= *until);
        once.map(|(_, text)| *text).or(self.assumed)
    }

    /// What the field takes, when that is a number.
    #[must_use]
    pub fn number(&self) -> Option<&Number> {
        match &self.form {
            Form::Number(number) => Some(number),
            _ => None,
        }
    }
}

/// A field, or a list of rows, in the order the sheet names them.
#[derive(Debug, Clone, Copy)]
pub struct Item {
    /// The name of the field or list.
    pub name: &'static str,
    /// The field, when it is one.
    pub field: Option<&'static Field>,
    /// What a row of the list holds, when it is a list.
    pub row: Option<&'static Spec>,
    /// Whether the list always shows a row: the first, with id `1`, is there before anything is entered in it.
    pub always: bool,
    /// The ids of rows that the list begins with, whatever was entered.
    pub preset: &'static [&'static str],
}

/// What a sheet, or a row of a list, holds.
#[derive(Debug, Clone, Copy)]
pub struct Spec {
    /// The fields and lists, in their order.
    pub items: &'static [Item],
}

impl Item {
    /// An item from its parts: just one of a field and a row. The sheet's declaration calls this.
    #[must_use]
    pub const fn of(
        name: &'static str,
        fields: &'static [Field],
        row: Option<&'static Spec>,
        always: bool,
        preset: &'static [&'static str],
    ) -> Self {
        let field = fields.first();
        assert!(
            field.is_some() != row.is_some(),
            "a field needs `= form`; a list has none"
        );
        Self {
            name,
            field,
            row,
            always,
            preset,
        }
    }
}

impl Spec {
    /// The item of this name.
    #[must_use]
    pub fn item(&self, name: &str) -> Option<&'static Item> {
        self.items.iter().find(|item| item.name == name)
    }

    /// The field at a path below this: `gears/2/ratio`.
    #[must_use]
    pub fn field(&self, path: &str) -> Option<&'static Field> {
        match path.split_once('/') {
            None => self.item(path)?.field,
            Some((list, rest)) => {
                let row = self.item(list)?.row?;
                row.field(rest.split_once('/')?.1)
            }
        }
    }

    /// The list at a path below this: `gears`, or `springs/1/leaves`.
    #[must_use]
    pub fn list(&self, path: &str) -> Option<&'static Item> {
        match path.split_once('/') {
            None => self.item(path).filter(|item| item.row.is_some()),
            Some((list, rest)) => self.item(list)?.row?.list(rest.split_once('/')?.1),
        }
    }

    /// What a row holds of the list at a path below this.
    #[must_use]
    pub fn row(&self, path: &str) -> Option<&'static Self> {
        self.list(path)?.row
    }

    /// Every field below this, with its pattern: `gearing/gears/*/ratio`.
    #[must_use]
    pub fn fields(&self, above: &str) -> Vec<(String, &'static Field)> {
        let mut all = Vec::new();
        for item in self.items {
            if let Some(field) = item.field {
                all.push((format!("{above}/{}", item.name), field));
            }
            if let Some(row) = item.row {
                all.extend(row.fields(&format!("{above}/{}/*", item.name)));
            }
        }
        all
    }
}

/// The field that a key names, of whichever sheet. `None` for keys of newer versions, and for a row's rank.
#[must_use]
pub fn field_of(key: &Key) -> Option<&'static Field> {
    let (sheet, path) = key.as_str().split_once('/')?;
    if key.field() == RANK {
        return None;
    }
    crate::sheets::spec_of(sheet)?.field(path)
}

/// What a row holds of the list that a key names.
#[must_use]
pub fn row_of(list: &Key) -> Option<&'static Spec> {
    let (sheet, path) = list.as_str().split_once('/')?;
    crate::sheets::spec_of(sheet)?.row(path)
}

pub(crate) fn list_of(list: &Key) -> Option<&'static Item> {
    let (sheet, path) = list.as_str().split_once('/')?;
    crate::sheets::spec_of(sheet)?.list(path)
}

/// Whether a list shows its first row before anything is entered in it.
#[must_use]
pub fn always_a_row(list: &Key) -> bool {
    list_of(list).is_some_and(|item| item.always)
}

/// The ids of the rows that a list begins with, whatever was entered.
#[must_use]
pub fn preset_rows(list: &Key) -> &'static [&'static str] {
    list_of(list).map_or(&[], |item| item.preset)
}
