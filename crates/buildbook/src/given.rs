//! What a field was found to hold, and where it stands.

use std::cell::OnceCell;

use measure::{Currency, Dimension, Quantity};

use crate::{Answer, Asking, Field, Item, Key, Lack, Typed};

/// What a field was found to hold.
#[derive(Debug, Clone)]
pub struct Given<T> {
    pub(crate) spot: Spot,
    pub(crate) value: Value<T>,
}

/// Where a field stands. Most fields are blank and few of those are ever asked where they stand, so the path is put together only then.
#[derive(Debug, Clone)]
pub struct Spot {
    above: Key,
    item: Option<&'static Item>,
    whole: OnceCell<Key>,
}

impl Spot {
    pub(crate) fn under(above: &Key, item: &'static Item) -> Self {
        Self {
            above: above.clone(),
            item: Some(item),
            whole: OnceCell::new(),
        }
    }

    /// The field's whole path.
    #[must_use]
    pub fn key(&self) -> &Key {
        let name = self.item.map_or("", |item| item.name);
        self.whole.get_or_init(|| self.above.under(name))
    }
}

impl From<&Key> for Spot {
    fn from(key: &Key) -> Self {
        Self {
            above: key.clone(),
            item: None,
            whole: key.clone().into(),
        }
    }
}

#[derive(Debug, Clone)]
pub(crate) enum Value<T> {
    Typed(T),
    Assumed(T),
    Blank,
    Bad,
}

impl<T> Given<T> {
    /// Where the field stands.
    #[must_use]
    pub fn key(&self) -> &Key {
        self.spot.key()
    }

    /// The value, typed or assumed; `None` when blank or unreadable.
    #[must_use]
    pub fn value(&self) -> Option<&T> {
        match &self.value {
            Value::Typed(value) | Value::Assumed(value) => Some(value),
            Value::Blank | Value::Bad => None,
        }
    }

    /// The value, or what a result that rests on it lacks.
    ///
    /// # Errors
    /// [`Why::Needs`](crate::Why) when blank, [`Why::Entry`](crate::Why) when what stands there cannot be used.
    pub fn ask(&self) -> Result<&T, Lack> {
        match &self.value {
            Value::Typed(value) | Value::Assumed(value) => Ok(value),
            Value::Blank => Err(Lack::needs_one(self.key())),
            Value::Bad => Err(Lack::entry(self.key().clone())),
        }
    }

    /// The value where there is one, which a result may do without.
    ///
    /// # Errors
    /// [`Why::Entry`](crate::Why) when what stands there cannot be used.
    pub fn ask_or_none(&self) -> Result<Option<&T>, Lack> {
        match &self.value {
            Value::Blank => Ok(None),
            _ => self.ask().map(Some),
        }
    }

    /// The value where one was typed; `None` where it is merely assumed.
    #[must_use]
    pub fn typed(&self) -> Option<&T> {
        match &self.value {
            Value::Typed(value) => Some(value),
            _ => None,
        }
    }

    /// Whether the value is the default, not an entry.
    #[must_use]
    pub fn is_assumed(&self) -> bool {
        matches!(self.value, Value::Assumed(_))
    }

    /// Whether nothing was typed and nothing is assumed.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        matches!(self.value, Value::Blank)
    }

    /// Whether something was typed that cannot be used.
    #[must_use]
    pub fn is_bad(&self) -> bool {
        matches!(self.value, Value::Bad)
    }
}

impl<D: Dimension> Given<Quantity<D>> {
    /// The same, with this text as the default where the field is blank: for a default that follows from other entries.
    pub(crate) fn or_assumed(&self, text: &str) -> Self {
        let item = self
            .spot
            .item
            .filter(|_| self.is_blank() && !text.is_empty());
        let read = |field: &'static Field| {
            let asking = Asking {
                spot: &self.spot,
                field,
                currency: Currency::EUR,
            };
            Quantity::read(Typed::plain(text), &asking).ok()
        };
        match item.and_then(|item| item.field).and_then(read) {
            Some(value) => Self {
                spot: self.spot.clone(),
                value: Value::Assumed(value),
            },
            None => self.clone(),
        }
    }
}
