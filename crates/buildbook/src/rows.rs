//! Rows of lists: adding, removing, moving. Each is one edit.

use std::rc::Rc;

use crate::field::always_a_row;
use crate::key::RANK;
use crate::{Book, Change, Edit, Entry, Key, Log};

/// Where a new row goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place<'a> {
    /// Before all others.
    First,
    /// After all others.
    Last,
    /// Just after the row of this id.
    After(&'a str),
}

impl Book {
    /// An id that no row of the list has, nor had as far as the log remembers.
    #[must_use]
    pub fn fresh_row(&self, list: &Key, log: &Log) -> Rc<str> {
        let start = list.as_str().len() + 1;
        let id_of = |key: &Key| -> Option<u64> {
            if !key.is_under(list) {
                return None;
            }
            key.as_str().get(start..)?.split('/').next()?.parse().ok()
        };
        let here = self.below(list).filter_map(|(key, _)| id_of(key));
        let frozen = self.sheet("before");
        let kept = frozen
            .keys()
            .filter_map(|key| crate::compare::frozen_key(key).and_then(|key| id_of(&key)));
        let once = log
            .done
            .iter()
            .chain(&log.undone)
            .flat_map(|edit| &edit.0)
            .filter_map(|change| id_of(&change.key));
        let shown = u64::from(always_a_row(list));
        let highest = here.chain(kept).chain(once).max().unwrap_or(0).max(shown);
        highest.saturating_add(1).to_string().into()
    }

    /// The edit that adds a row, and its id. `with` are the fields it starts with.
    #[must_use]
    pub fn adding_row(
        &self,
        list: &Key,
        place: Place<'_>,
        log: &Log,
        with: &[(&str, Entry)],
    ) -> (Rc<str>, Edit) {
        let id = self.fresh_row(list, log);
        let row = list.under(&id);
        let mut edit = self.ranking(list, &id, place);
        edit.0.extend(with.iter().map(|(field, entry)| Change {
            key: row.under(field),
            old: None,
            new: Some(entry.clone()),
        }));
        (id, edit)
    }

    /// The edit that adds a copy of a row, with all that stands below it, just after it.
    #[must_use]
    pub fn copying_row(&self, list: &Key, from: &str, log: &Log) -> (Rc<str>, Edit) {
        let id = self.fresh_row(list, log);
        let (source, row) = (list.under(from), list.under(&id));
        let mut edit = self.ranking(list, &id, Place::After(from));
        let rank = row.under(RANK);
        for (key, entry) in self.below(&source) {
            let copy = Key::from(format!("{row}{}", &key.as_str()[source.as_str().len()..]));
            if copy != rank {
                edit.0.push(Change {
                    key: copy,
                    old: None,
                    new: Some(entry.clone()),
                });
            }
        }
        (id, edit)
    }

    /// The edit that removes a row and all that stands below it.
    #[must_use]
    pub fn removing_row(&self, list: &Key, id: &str) -> Edit {
        self.taking_out(&list.under(id))
    }

    /// The edit that takes out all that stands below a key.
    pub(crate) fn taking_out(&self, above: &Key) -> Edit {
        Edit(
            self.below(above)
                .map(|(key, entry)| Change {
                    key: key.clone(),
                    old: Some(entry.clone()),
                    new: None,
                })
                .collect(),
        )
    }

    /// The edit that moves a row to another place.
    #[must_use]
    pub fn moving_row(&self, list: &Key, id: &str, place: Place<'_>) -> Edit {
        self.ranking(list, id, place)
    }

    /// The edit that gives a row the rank of its place; where ranks have come too close to fit one between, all are given anew.
    fn ranking(&self, list: &Key, id: &str, place: Place<'_>) -> Edit {
        let others: Vec<Rc<str>> = self
            .rows(list)
            .into_iter()
            .filter(|row| &**row != id)
            .collect();
        // A first row that was only shown comes into being beside the new one.
        let shown_only = self.below(list).next().is_none() && others.len() == 1;
        let at = match place {
            Place::First => 0,
            Place::Last => others.len(),
            Place::After(row) => others
                .iter()
                .position(|other| &**other == row)
                .map_or(others.len(), |at| at + 1),
        };
        let before = at.checked_sub(1).map(|at| self.rank(list, &others[at]));
        let after = others.get(at).map(|row| self.rank(list, row));
        let rank = match (before, after) {
            (None, None) => 1.0,
            (Some(before), None) => before.floor() + 1.0,
            (None, Some(after)) => after.ceil() - 1.0,
            (Some(before), Some(after)) => f64::midpoint(before, after),
        };
        // Ranks are written to six decimals; a place that they cannot tell apart means that the list is numbered anew.
        let written = format!("{}", (rank * 1e6).round() / 1e6);
        let rank: f64 = written.parse().unwrap_or(rank);
        if before.is_none_or(|before| before < rank)
            && after.is_none_or(|after| rank < after)
            && rank.abs() < 1e9
        {
            let mut edit = self.setting(list.under(id).under(RANK), Some(written.into()));
            if shown_only {
                let first = list.under(&others[0]).under(RANK);
                edit.0.extend(self.setting(first, Some("1".into())).0);
            }
            return edit;
        }
        let mut order = others;
        order.insert(at, id.into());
        let changes = order.iter().enumerate().flat_map(|(place, row)| {
            self.setting(
                list.under(row).under(RANK),
                Some((place + 1).to_string().into()),
            )
            .0
        });
        Edit(changes.collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ids(book: &Book, list: &Key) -> Vec<String> {
        book.rows(list).iter().map(ToString::to_string).collect()
    }

    #[test]
    fn rows_stand_where_they_are_put() {
        let list = Key::from("gearing/gears");
        let mut book = Book::new("b");
        let log = Log::default();
        for _ in 0..3 {
            let (_, edit) = book.adding_row(&list, Place::Last, &log, &[]);
            book = book.with(&edit);
        }
        assert_eq!(ids(&book, &list), ["1", "2", "3"]);
        let (id, edit) =
            book.adding_row(&list, Place::After("1"), &log, &[("ratio", "2.4".into())]);
        book = book.with(&edit);
        assert_eq!(&*id, "4");
        assert_eq!(ids(&book, &list), ["1", "4", "2", "3"]);
        book = book.with(&book.moving_row(&list, "3", Place::First));
        assert_eq!(ids(&book, &list), ["3", "1", "4", "2"]);
        book = book.with(&book.removing_row(&list, "1"));
        assert_eq!(ids(&book, &list), ["3", "4", "2"]);
    }

    #[test]
    fn a_row_that_was_only_shown_stays_when_another_is_added() {
        let list = Key::from("paint/systems");
        let book = Book::new("b");
        assert_eq!(ids(&book, &list), ["1"]);
        let (id, edit) = book.adding_row(&list, Place::Last, &Log::default(), &[]);
        assert_eq!(&*id, "2");
        assert_eq!(ids(&book.with(&edit), &list), ["1", "2"]);
        let (id, edit) = book.copying_row(&list, "1", &Log::default());
        assert_eq!(&*id, "2");
        assert_eq!(ids(&book.with(&edit), &list), ["1", "2"]);
        assert_eq!(
            ids(&book.with(&book.removing_row(&list, "1")), &list),
            ["1"]
        );
    }

    #[test]
    fn rows_are_numbered_anew_when_no_rank_fits_between() {
        let list = Key::from("gearing/gears");
        let mut book = Book::new("b");
        let log = Log::default();
        for _ in 0..2 {
            let (_, edit) = book.adding_row(&list, Place::Last, &log, &[]);
            book = book.with(&edit);
        }
        let mut expected = vec!["1".to_owned(), "2".to_owned()];
        for _ in 0..60 {
            let (id, edit) = book.adding_row(&list, Place::After("1"), &log, &[]);
            book = book.with(&edit);
            expected.insert(1, id.to_string());
            assert_eq!(ids(&book, &list), expected);
        }
    }

    #[test]
    fn an_id_is_not_given_again_while_its_removal_can_be_undone() {
        let list = Key::from("gearing/gears");
        let mut book = Book::new("b");
        let mut log = Log::default();
        let (_, edit) = book.adding_row(&list, Place::Last, &log, &[]);
        book = book.with(&edit);
        log.record(edit, false);
        let removal = book.removing_row(&list, "1");
        book = book.with(&removal);
        log.record(removal, false);
        assert_eq!(&*book.fresh_row(&list, &log), "2");
    }

    #[test]
    fn a_copied_row_brings_what_stands_below_it() {
        let list = Key::from("springs/springs");
        let book = Book::of(
            "b",
            [
                ("springs/springs/1/side".into(), "left".into()),
                ("springs/springs/1/leaves/1/width".into(), "60".into()),
                ("springs/springs/10/side".into(), "right".into()),
            ],
        );
        let (id, edit) = book.copying_row(&list, "1", &Log::default());
        let book = book.with(&edit);
        assert_eq!(&*id, "11");
        assert_eq!(
            book.entry("springs/springs/11/leaves/1/width")
                .map(|e| &*e.text),
            Some("60")
        );
        assert_eq!(ids(&book, &list), ["1", "11", "10"]);
    }
}
