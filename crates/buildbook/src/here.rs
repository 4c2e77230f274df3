//! Looking for a row's fields among its own entries: those of a sheet stand in the order of their keys, and so those of a row together.

use std::ops::Range;

use crate::book::Entries;
use crate::{Entry, Key};

/// The entries of a sheet, and where in them the row stands that is read.
pub(crate) struct OfSheet<'b> {
    all: Vec<(&'b Key, &'b Entry)>,
    here: Here,
}

/// Which entries are a row's, and how much of their keys is the row's own path.
#[doc(hidden)]
pub struct Here {
    entries: Range<usize>,
    path: usize,
}

impl<'b> OfSheet<'b> {
    pub fn new(entries: &'b Entries) -> Self {
        let all: Vec<_> = entries.iter().collect();
        let here = Here {
            entries: 0..all.len(),
            path: 0,
        };
        Self { all, here }
    }

    /// Goes into a row of the one that is read, and returns where to come back to.
    pub fn enter(&mut self, at: &Key) -> Here {
        let within = self.here.entries.clone();
        let path = at.as_str();
        let behind = |key: &str| key.as_bytes().get(path.len()).copied();
        let all = &self.all[within.clone()];
        // Of the keys that begin with the path, those of its fields stand behind those where something less than a stroke follows.
        let start = all.partition_point(|(key, _)| match key.as_str().get(..path.len()) {
            Some(same) if same == path => behind(key.as_str()).is_none_or(|next| next < b'/'),
            _ => key.as_str() < path,
        });
        let below = |(key, _): &(&Key, &Entry)| {
            key.as_str().starts_with(path) && behind(key.as_str()) == Some(b'/')
        };
        let count = all[start..].partition_point(below);
        let start = within.start + start;
        let inner = Here {
            entries: start..start + count,
            path: path.len() + 1,
        };
        std::mem::replace(&mut self.here, inner)
    }

    /// Comes back to the row above.
    pub fn leave(&mut self, above: Here) {
        self.here = above;
    }

    /// The entry of a field of the row that is read, with its key.
    pub fn entry(&self, field: &str) -> Option<(&'b Key, &'b Entry)> {
        let Here { entries, path } = &self.here;
        let entries = &self.all[entries.clone()];
        let place = entries.binary_search_by(|(key, _)| key.as_str()[*path..].cmp(field));
        place.ok().map(|place| entries[place])
    }

    /// What stands below the row or list that is read, by the rest of its path.
    pub fn here(&self) -> impl Iterator<Item = (&'b str, &'b Entry)> {
        let Here { entries, path } = &self.here;
        let entries = self.all[entries.clone()].iter();
        entries.map(|(key, entry)| (&key.as_str()[*path..], *entry))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rows_entries_are_found_among_neighbours_that_begin_alike() {
        let keys = [
            "a/list/1",
            "a/list/1 b/x",
            "a/list/1/list/2/x",
            "a/list/1/x",
            "a/list/11/x",
            "a/x",
        ];
        let entries: Entries = keys.map(|key| (key.into(), Entry::new(key))).into();
        let mut of_sheet = OfSheet::new(&entries);
        let text = |found: Option<(&Key, &Entry)>| found.map(|(_, entry)| entry.text.to_string());
        let sheet = of_sheet.enter(&"a".into());
        assert_eq!(text(of_sheet.entry("x")), Some("a/x".into()));
        let row = of_sheet.enter(&"a/list/1".into());
        assert_eq!(text(of_sheet.entry("x")), Some("a/list/1/x".into()));
        assert_eq!(text(of_sheet.entry("y")), None);
        let inner = of_sheet.enter(&"a/list/1/list/2".into());
        assert_eq!(text(of_sheet.entry("x")), Some("a/list/1/list/2/x".into()));
        of_sheet.leave(inner);
        of_sheet.leave(row);
        let row = of_sheet.enter(&"a/list/11".into());
        assert_eq!(text(of_sheet.entry("x")), Some("a/list/11/x".into()));
        of_sheet.leave(row);
        let row = of_sheet.enter(&"a/list/2".into());
        assert_eq!(text(of_sheet.entry("x")), None);
        of_sheet.leave(row);
        of_sheet.leave(sheet);
    }
}
