//! The inputs of a check, read as what the formula needs, and a record of which were read.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use toml::Value;

/// What goes into a check. Every input must be read by the subject's module, or the check fails.
pub struct Inputs {
    values: BTreeMap<String, Value>,
    read: RefCell<BTreeSet<String>>,
}

impl Inputs {
    /// The inputs of one check.
    #[must_use]
    pub fn new(values: BTreeMap<String, Value>) -> Self {
        Self {
            values,
            read: RefCell::default(),
        }
    }

    /// Whether the check gives this input.
    #[must_use]
    pub fn has(&self, name: &str) -> bool {
        self.values.contains_key(name)
    }

    /// The input as it stands in the file.
    ///
    /// # Errors
    /// When the check does not give it.
    pub fn value(&self, name: &str) -> Result<&Value, String> {
        self.read.borrow_mut().insert(name.to_owned());
        self.values
            .get(name)
            .ok_or_else(|| format!("the check gives no input `{name}`"))
    }

    /// A pure number: `4.11`, or `"37/8"`-like texts are left to [`Inputs::text`].
    ///
    /// # Errors
    /// When it is absent or not a number.
    pub fn number(&self, name: &str) -> Result<f64, String> {
        number_of(name, self.value(name)?)
    }

    /// A list of pure numbers.
    ///
    /// # Errors
    /// When it is absent or not a list of numbers.
    pub fn numbers(&self, name: &str) -> Result<Vec<f64>, String> {
        self.list(name)?
            .iter()
            .map(|value| number_of(name, value))
            .collect()
    }

    /// A whole number.
    ///
    /// # Errors
    /// When it is absent or not a whole number from 0 up.
    pub fn count(&self, name: &str) -> Result<u32, String> {
        self.value(name)?
            .as_integer()
            .and_then(|value| u32::try_from(value).ok())
            .ok_or_else(|| format!("input `{name}` is not a whole number from 0 up"))
    }

    /// Yes or no.
    ///
    /// # Errors
    /// When it is absent or neither.
    pub fn yes(&self, name: &str) -> Result<bool, String> {
        self.value(name)?
            .as_bool()
            .ok_or_else(|| format!("input `{name}` is not true or false"))
    }

    /// A text, as typed.
    ///
    /// # Errors
    /// When it is absent or not a text.
    pub fn text(&self, name: &str) -> Result<&str, String> {
        self.value(name)?
            .as_str()
            .ok_or_else(|| format!("input `{name}` is not a text"))
    }

    /// A list of texts.
    ///
    /// # Errors
    /// When it is absent or not a list of texts.
    pub fn texts(&self, name: &str) -> Result<Vec<&str>, String> {
        self.list(name)?
            .iter()
            .map(|value| {
                value
                    .as_str()
                    .ok_or_else(|| format!("input `{name}` is not a list of texts"))
            })
            .collect()
    }

    /// A list of anything: rows of a table are lists in a list.
    ///
    /// # Errors
    /// When it is absent or not a list.
    pub fn list(&self, name: &str) -> Result<&[Value], String> {
        self.value(name)?
            .as_array()
            .map(Vec::as_slice)
            .ok_or_else(|| format!("input `{name}` is not a list"))
    }

    /// A list of rows, each a set of inputs of its own: `leaves = [{ width = "63 mm" }, ...]`.
    ///
    /// # Errors
    /// When it is absent or not a list of tables.
    pub fn rows(&self, name: &str) -> Result<Vec<Self>, String> {
        self.list(name)?
            .iter()
            .map(|value| {
                value
                    .as_table()
                    .map(|table| Self::new(table.clone().into_iter().collect()))
                    .ok_or_else(|| format!("input `{name}` is not a list of tables"))
            })
            .collect()
    }

    /// The inputs that nothing read: a stale name, or a subject that ignores what it is given.
    #[must_use]
    pub fn unread(&self) -> Vec<&str> {
        let read = self.read.borrow();
        self.values
            .keys()
            .filter(|name| !read.contains(*name))
            .map(String::as_str)
            .collect()
    }
}

fn number_of(name: &str, value: &Value) -> Result<f64, String> {
    match value {
        Value::Float(number) => Ok(*number),
        #[expect(
            clippy::cast_precision_loss,
            reason = "reference inputs are far below 2^53"
        )]
        Value::Integer(number) => Ok(*number as f64),
        _ => Err(format!("input `{name}` is not a number")),
    }
}
