//! Looking for a row's fields among its own entries: those of a sheet stand in the order of their keys, and so those of a row together.

use std::ops::Range;

use crate::book::Entries;
use crate::{Entry, Key};

/// The entries of a sheet, and where in them the row stands that is read.
pub(crate) struct OfSheet<'b> {
    all: Vec<(&'b Key, &'b Entry)>,
    here: Here,
}

/// Up to so many entries are looked through from the first.
const FEW: usize = 16;

/// Which entries are a row's, and how much of their keys is the row's own path.
pub(crate) struct Here {
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

    /// Goes into a row of the list that is read, whose own entries among those of the list are known, and returns where to come
    /// back to.
    pub fn enter_own(&mut self, at: &Key, own: Range<usize>) -> Here {
        let start = self.here.entries.start;
        let inner = Here {
            entries: start + own.start..start + own.end,
            path: at.as_str().len() + 1,
        };
        std::mem::replace(&mut self.here, inner)
    }

    /// Goes into a row or list of the row that is read, and returns where to come back to.
    pub fn enter(&mut self, at: &Key) -> Here {
        let Here { entries, path } = &self.here;
        // All that stand here begin with the path of the row that is read; what follows it is compared.
        let next = &at.as_str().as_bytes()[*path..];
        let follows = |key: &Key| {
            let rest = &key.as_str().as_bytes()[*path..];
            let (rest, behind) = rest.split_at(rest.len().min(next.len()));
            // Of the keys that begin with the path, those of its fields stand behind those where something less than a stroke follows.
            rest.cmp(next).then(behind.first().cmp(&Some(&b'/')))
        };
        let all = &self.all[entries.clone()];
        let start = all.partition_point(|(key, _)| follows(key).is_lt());
        let count = all[start..].partition_point(|(key, _)| follows(key).is_le());
        let start = entries.start + start;
        let inner = Here {
            entries: start..start + count,
            path: path + next.len() + 1,
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
        // Of the few entries of a row, most are of another length than the one that is looked for.
        if entries.len() <= FEW {
            let found = entries.iter().find(|(key, _)| {
                let key = key.as_str();
                key.len() == path + field.len() && key.ends_with(field)
            });
            return found.copied();
        }
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
