//! The inputs of a check, read as what the formula needs, and a record of which were read.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use toml::Value;

/// What goes into a check. Every input must be read by the subject's module, or the check fails.
pub struct Inputs {
    values: BTreeMap<String, Value>,
    /// The names read so far, shared with the rows of lists; a list read as rows is marked by `name[]`.
    read: Rc<RefCell<BTreeSet<String>>>,
    /// What stands before the names of a row: `leaves/0/`.
    prefix: String,
}

impl Inputs {
    /// The inputs of one check.
    #[must_use]
    pub fn new(values: BTreeMap<String, Value>) -> Self {
        Self {
            values,
            read: Rc::default(),
            prefix: String::new(),
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
        self.mark(name);
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
        self.mark(&format!("{name}[]"));
        self.list(name)?
            .iter()
            .enumerate()
            .map(|(place, value)| {
                let table = value
                    .as_table()
                    .ok_or_else(|| format!("input `{name}` is not a list of tables"))?;
                Ok(Self {
                    values: table.clone().into_iter().collect(),
                    read: Rc::clone(&self.read),
                    prefix: format!("{}{name}/{place}/", self.prefix),
                })
            })
            .collect()
    }

    /// The inputs that nothing read: a stale name, or a subject that ignores what it is given.
    #[must_use]
    pub fn unread(&self) -> Vec<String> {
        let mut unread = Vec::new();
        for name in self.values.keys() {
            let path = format!("{}{name}", self.prefix);
            if !self.read.borrow().contains(&path) {
                unread.push(path);
            } else if self.read.borrow().contains(&format!("{path}[]")) {
                for row in self.rows(name).unwrap_or_default() {
                    unread.extend(row.unread());
                }
            }
        }
        unread
    }

    fn mark(&self, name: &str) {
        self.read
            .borrow_mut()
            .insert(format!("{}{name}", self.prefix));
    }
}

pub(crate) fn number_of(name: &str, value: &Value) -> Result<f64, String> {
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_that_is_not_read_whole_is_told_by_its_place() {
        let table = "leaves = [{ width = 63, colour = 1 }, { width = 63 }]\nload = 4";
        let values: toml::Table = toml::from_str(table).expect("a table");
        let inputs = Inputs::new(values.into_iter().collect());
        for row in inputs.rows("leaves").expect("rows") {
            row.number("width").expect("a width");
        }
        assert_eq!(inputs.unread(), ["leaves/0/colour", "load"]);
    }
}
