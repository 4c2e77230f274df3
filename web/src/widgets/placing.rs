//! How a subject lays out the rows of its lists: what is always seen, what stands behind "More", what is of no use.

use crate::state::State;
use buildbook::Key;

/// Where a field or a list stands in its row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spot {
    /// Among those that are always seen.
    Open,
    /// Behind the key "More".
    More,
    /// Nowhere: the other entries of the row leave no use for it.
    Nowhere,
}

/// How a subject lays out the rows of a list and of the lists within them.
pub struct Placing {
    /// Its name, by which two are told apart.
    pub name: &'static str,
    /// Where a field or list stands, by the row's key and the field's name.
    pub spot: fn(&State, &Key, &str) -> Spot,
    /// The result that a row's heading shows, by the row's key.
    pub found: fn(&Key) -> Option<String>,
}

impl PartialEq for Placing {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}
