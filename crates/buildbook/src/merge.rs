//! Two books that were one: what differs, and how edits made apart come together.

use std::collections::{BTreeMap, BTreeSet};

use crate::{Book, Change, Edit, Entry, Key, Log, field_of};

/// An entry that two books hold differently.
#[derive(Debug, Clone, PartialEq)]
pub struct Differing {
    /// Where.
    pub key: Key,
    /// What this book holds.
    pub mine: Option<Entry>,
    /// What the other book holds.
    pub theirs: Option<Entry>,
    /// Whether both texts say the same value, in other words or units.
    pub same_value: bool,
}

impl Differing {
    /// The change that takes the other book's entry.
    #[must_use]
    pub fn taking_theirs(&self) -> Change {
        Change {
            key: self.key.clone(),
            old: self.mine.clone(),
            new: self.theirs.clone(),
        }
    }
}

/// What differs between two books, value by value, in the order of the keys.
#[must_use]
pub fn differences(mine: &Book, theirs: &Book) -> Vec<Differing> {
    let mut differing: Vec<Differing> = mine
        .edit_to(theirs)
        .0
        .into_iter()
        .map(|change| {
            let same_value = same_value(&change);
            Differing {
                key: change.key,
                mine: change.old,
                theirs: change.new,
                same_value,
            }
        })
        .collect();
    measure::sort_by(&mut differing, |a, b| a.key.cmp(&b.key));
    differing
}

/// Whether the texts before and after are read as the same number with the same ±.
fn same_value(change: &Change) -> bool {
    let Some(number) = field_of(&change.key).and_then(crate::Field::number) else {
        return false;
    };
    let read = |entry: &Option<Entry>| {
        let entry = entry.as_ref()?;
        measure::read(&entry.text, &crate::ask(number, entry)).ok()
    };
    match (read(&change.old), read(&change.new)) {
        (Some(a), Some(b)) => {
            let near = |a: f64, b: f64| (a - b).abs() <= 1e-12 * a.abs().max(b.abs());
            near(a.value, b.value) && near(a.plus, b.plus) && near(a.minus, b.minus)
        }
        _ => false,
    }
}

/// What comes of putting edits that were made elsewhere into a book.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Merged {
    /// The edit to make.
    pub edit: Edit,
    /// Entries that both sides changed, each in its own way. The edit leaves this book's entry.
    pub conflicts: Vec<Differing>,
}

impl Book {
    /// Puts an edit made elsewhere, on an earlier state, into this book. What its `old` says is the base of the merge: an entry that
    /// stands as it was is changed, one that was changed here as well is a conflict. A row that both sides added under one id is two
    /// rows, and the other side's gets a fresh id.
    #[must_use]
    pub fn merging(&self, theirs: &Edit, log: &Log) -> Merged {
        let renamed = self.rows_to_rename(theirs, log);
        let mut merged = Merged::default();
        for change in squashed(theirs) {
            let change = Change {
                key: renamed_key(&change.key, &renamed),
                ..change
            };
            let mine = self.entry(change.key.as_str());
            if mine == change.new.as_ref() {
                continue;
            }
            if mine == change.old.as_ref() {
                merged.edit.0.push(change);
            } else {
                let same_value = same_value(&Change {
                    old: mine.cloned(),
                    ..change.clone()
                });
                merged.conflicts.push(Differing {
                    key: change.key,
                    mine: mine.cloned(),
                    theirs: change.new,
                    same_value,
                });
            }
        }
        merged
    }

    /// Rows that the edit adds under an id that another row has here by now, and their new paths.
    fn rows_to_rename(&self, theirs: &Edit, log: &Log) -> BTreeMap<Key, Key> {
        let changes = squashed(theirs);
        let mut added = BTreeSet::new();
        let new = changes.iter().filter(|change| change.old.is_none());
        added.extend(new.filter_map(|change| change.key.row()));
        // A row is new to the other side when nothing of it stood there before.
        added.retain(|row| {
            changes
                .iter()
                .all(|change| !change.key.is_under(row) || change.old.is_none())
        });
        let mut renamed = BTreeMap::new();
        let mut taken = log.clone();
        for row in added {
            let mine: Vec<_> = self.below(&row).collect();
            let clash = mine.iter().any(|(key, entry)| {
                changes
                    .iter()
                    .any(|change| change.key == **key && change.new.as_ref() != Some(entry))
            });
            let (false, true, Some(list)) = (mine.is_empty(), clash, row.parent()) else {
                continue;
            };
            let fresh = list.under(&self.fresh_row(&list, &taken));
            // Noted as given, so that a second row of the same list gets another one.
            taken.done.push(Edit(vec![Change {
                key: fresh.under("rank"),
                old: None,
                new: None,
            }]));
            renamed.insert(row, fresh);
        }
        renamed
    }
}

/// The edit with each key once: its first `old` and its last `new`.
fn squashed(edit: &Edit) -> Vec<Change> {
    let mut last: BTreeMap<Key, Change> = BTreeMap::new();
    for change in &edit.0 {
        match last.get_mut(&change.key) {
            Some(known) => known.new.clone_from(&change.new),
            None => {
                last.insert(change.key.clone(), change.clone());
            }
        }
    }
    last.into_values()
        .filter(|change| change.old != change.new)
        .collect()
}

/// The key with the outermost renamed row above it put in.
fn renamed_key(key: &Key, renamed: &BTreeMap<Key, Key>) -> Key {
    for (from, to) in renamed {
        if key.is_under(from) {
            return Key::from(format!("{to}{}", &key.as_str()[from.as_str().len()..]));
        }
    }
    key.clone()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Place;

    fn base() -> Book {
        Book::of(
            "b",
            [
                ("vehicle/wheelbase".into(), "3 m".into()),
                ("vehicle/name".into(), "Lorry".into()),
                ("gearing/gears/1/ratio".into(), "6.1".into()),
            ],
        )
    }

    #[test]
    fn edits_of_different_entries_come_together() {
        let base = base();
        let mine = base.with(&base.setting("vehicle/name", Some("Hop lorry".into())));
        let theirs = base.setting("vehicle/wheelbase", Some("3.1 m".into()));
        let merged = mine.merging(&theirs, &Log::default());
        assert_eq!(merged.conflicts, []);
        let both = mine.with(&merged.edit);
        assert_eq!(both.entry("vehicle/name"), Some(&"Hop lorry".into()));
        assert_eq!(both.entry("vehicle/wheelbase"), Some(&"3.1 m".into()));
    }

    #[test]
    fn an_entry_that_both_changed_is_a_conflict_and_stays() {
        let base = base();
        let mine = base.with(&base.setting("vehicle/wheelbase", Some("3.2 m".into())));
        let theirs = base.setting("vehicle/wheelbase", Some("3.1 m".into()));
        let merged = mine.merging(&theirs, &Log::default());
        assert!(merged.edit.is_empty());
        assert_eq!(merged.conflicts.len(), 1);
        assert_eq!(merged.conflicts[0].theirs, Some("3.1 m".into()));
    }

    #[test]
    fn the_same_edit_on_both_sides_is_no_conflict() {
        let base = base();
        let edit = base.setting("vehicle/wheelbase", Some("3.1 m".into()));
        assert_eq!(
            base.with(&edit).merging(&edit, &Log::default()),
            Merged::default()
        );
    }

    #[test]
    fn rows_added_on_both_sides_are_two_rows() {
        let base = base();
        let list = Key::from("gearing/gears");
        let log = Log::default();
        let (mine_id, edit) = base.adding_row(&list, Place::Last, &log, &[("ratio", "3.1".into())]);
        let mine = base.with(&edit);
        let (their_id, edit) =
            base.adding_row(&list, Place::Last, &log, &[("ratio", "3.4".into())]);
        assert_eq!(mine_id, their_id);
        let merged = mine.merging(&edit, &log);
        assert_eq!(merged.conflicts, []);
        let both = mine.with(&merged.edit);
        assert_eq!(both.rows(&list).len(), 3);
        assert_eq!(both.entry("gearing/gears/2/ratio"), Some(&"3.1".into()));
        assert_eq!(both.entry("gearing/gears/3/ratio"), Some(&"3.4".into()));
    }

    #[test]
    fn the_same_length_in_other_units_is_the_same_value() {
        let mine = base();
        let theirs = mine.with(&mine.setting("vehicle/wheelbase", Some("3000 ± 1 mm".into())));
        assert!(
            differences(&mine, &theirs)[0].same_value,
            "3 m by the tape: ± 1 mm"
        );
        let theirs = mine.with(&mine.setting("vehicle/wheelbase", Some("3001 mm".into())));
        assert!(!differences(&mine, &theirs)[0].same_value);
        assert_eq!(differences(&mine, &mine), []);
    }
}
