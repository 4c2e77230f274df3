//! Where an entry stands in the book: a path such as `gearing/gears/2/ratio`.

use std::borrow::Borrow;
use std::cell::RefCell;
use std::fmt;
use std::rc::Rc;

use crate::BookError;

/// The longest path that is taken from outside, in bytes. Every path of ours is far shorter.
const LONGEST: usize = 240;

/// The name of the entry that holds a row's place among its neighbours.
pub const RANK: &str = "rank";

/// The path of one entry: the sheet, then a field, or a list, a row's id and a field of that row.
///
/// ```
/// use buildbook::Key;
/// let key = Key::from("gearing/gears/2/ratio");
/// assert_eq!(key.sheet(), "gearing");
/// assert_eq!(key.field(), "ratio");
/// assert_eq!(key.row().unwrap().as_str(), "gearing/gears/2");
/// ```
#[derive(Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Key(Rc<str>);

impl Clone for Key {
    // On the pages, one call each is smaller than the counting at every place.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl Key {
    /// A path that comes from outside (a file, a link): refused unless it has two or more parts, none of them empty.
    ///
    /// # Errors
    /// [`BookError::Key`] where the path is empty, too long, has an empty part or holds a control character.
    pub fn checked(path: &str) -> Result<Self, BookError> {
        let parts = path.split('/').count();
        let sound = path.len() <= LONGEST
            && parts >= 2
            && path.split('/').all(|part| !part.is_empty())
            && !path.chars().any(char::is_control);
        if sound {
            Ok(Self(path.into()))
        } else {
            Err(BookError::Key(path.chars().take(60).collect()))
        }
    }

    /// The whole path.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The path as shared text, for a traced quantity's leaf.
    #[must_use]
    pub fn shared(&self) -> Rc<str> {
        Rc::clone(&self.0)
    }

    /// The sheet the entry belongs to: the first part.
    #[must_use]
    pub fn sheet(&self) -> &str {
        self.0.split('/').next().unwrap_or_default()
    }

    /// The field's own name: the last part.
    #[must_use]
    pub fn field(&self) -> &str {
        let stroke = self.0.bytes().rposition(|byte| byte == b'/');
        &self.0[stroke.map_or(0, |place| place + 1)..]
    }

    /// The path of what this path stands in: of a field its row, or its sheet; of a row its list.
    #[must_use]
    pub fn parent(&self) -> Option<Self> {
        self.0.rsplit_once('/').map(|(above, _)| Self(above.into()))
    }

    /// The path of the row this field stands in, when it stands in one.
    #[must_use]
    pub fn row(&self) -> Option<Self> {
        let above = self.parent()?;
        (above.0.split('/').count() % 2 == 1 && above.0.contains('/')).then_some(above)
    }

    /// The path one part further down.
    #[must_use]
    pub fn under(&self, part: &str) -> Self {
        Self(joined(&[&self.0, part]))
    }

    /// Whether this path lies below `above` (or is it).
    #[must_use]
    pub fn is_under(&self, above: &Self) -> bool {
        self.0
            .strip_prefix(&*above.0)
            .is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
    }

    /// The field this path names, with every row's id put as `*`: `gearing/gears/*/ratio`.
    ///
    /// Parts stand in turn as sheet, list, id, list, id, ..., field; so each second part that is not the last is an id.
    #[must_use]
    pub fn pattern(&self) -> String {
        let parts: Vec<&str> = self.0.split('/').collect();
        let last = parts.len().saturating_sub(1);
        let mut pattern = String::with_capacity(self.0.len());
        for (place, part) in parts.iter().enumerate() {
            if place > 0 {
                pattern.push('/');
            }
            let id = place >= 2 && place % 2 == 0 && place < last;
            pattern.push_str(if id { "*" } else { part });
        }
        pattern
    }
}

thread_local! {
    /// Room to lay a path out in, so that room of its own is asked for but once.
    static ROOM: RefCell<String> = const { RefCell::new(String::new()) };
}

/// The path of these parts.
pub(crate) fn joined(parts: &[&str]) -> Rc<str> {
    ROOM.with_borrow_mut(|path| {
        path.clear();
        for part in parts {
            if !path.is_empty() {
                path.push('/');
            }
            path.push_str(part);
        }
        Rc::from(path.as_str())
    })
}

impl From<&str> for Key {
    fn from(path: &str) -> Self {
        Self(path.into())
    }
}

impl From<String> for Key {
    fn from(path: String) -> Self {
        Self(path.into())
    }
}

impl From<Key> for Rc<str> {
    fn from(key: Key) -> Self {
        key.0
    }
}

impl From<&Key> for Rc<str> {
    fn from(key: &Key) -> Self {
        Rc::clone(&key.0)
    }
}

impl Borrow<str> for Key {
    fn borrow(&self) -> &str {
        &self.0
    }
}

impl PartialEq<str> for Key {
    fn eq(&self, other: &str) -> bool {
        &*self.0 == other
    }
}

impl PartialEq<&str> for Key {
    fn eq(&self, other: &&str) -> bool {
        &*self.0 == *other
    }
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pattern_puts_a_star_for_each_row() {
        assert_eq!(
            Key::from("vehicle/wheelbase").pattern(),
            "vehicle/wheelbase"
        );
        assert_eq!(
            Key::from("gearing/gears/2/ratio").pattern(),
            "gearing/gears/*/ratio"
        );
        assert_eq!(
            Key::from("springs/springs/1/leaves/3/thickness").pattern(),
            "springs/springs/*/leaves/*/thickness"
        );
    }

    #[test]
    fn a_field_of_a_sheet_stands_in_no_row() {
        assert_eq!(Key::from("vehicle/wheelbase").row(), None);
        assert_eq!(
            Key::from("springs/springs/1/leaves/3/thickness").row(),
            Some(Key::from("springs/springs/1/leaves/3"))
        );
    }

    #[test]
    fn a_neighbour_with_the_same_beginning_is_not_below() {
        let row = Key::from("gearing/gears/1");
        assert!(Key::from("gearing/gears/1/ratio").is_under(&row));
        assert!(!Key::from("gearing/gears/11/ratio").is_under(&row));
    }

    #[test]
    fn a_path_from_outside_is_checked() {
        assert!(Key::checked("gearing/final_drive").is_ok());
        for bad in ["", "gearing", "gearing//x", "/x", "x/", "a/\u{0}b"] {
            assert!(Key::checked(bad).is_err(), "{bad:?}");
        }
        assert!(Key::checked(&format!("a/{}", "b".repeat(400))).is_err());
    }
}
