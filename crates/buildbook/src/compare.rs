//! Before and now, side by side: entries kept as they were, and what both come to.

use std::collections::BTreeMap;
use std::rc::Rc;

use measure::{Figure, difference};

use crate::{
    Book, Change, Edit, Entries, Finding, Findings, Found, Key, evaluate, reads, reads_entry,
};

/// The sheet that holds the entries kept as before.
const BEFORE: &str = "before";

/// The key that an entry kept as before stands for: `before/gearing/gearing/final_drive` is `gearing/final_drive` of gearing's before.
#[must_use]
pub fn frozen_key(key: &Key) -> Option<Key> {
    let (_, rest) = key.as_str().strip_prefix("before/")?.split_once('/')?;
    Key::checked(rest).ok()
}

impl Book {
    /// The edit that keeps a sheet, and what it reads of others, as before. What was kept earlier gives way.
    #[must_use]
    pub fn keeping_as_before(&self, sheet: &str) -> Edit {
        let mut edit = self.forgetting_before(sheet);
        let sheets = [sheet, "book"]
            .into_iter()
            .chain(reads(sheet).iter().copied());
        for name in sheets {
            let of_sheet = self.sheet(name);
            let read = of_sheet
                .iter()
                .filter(|(key, _)| name == sheet || reads_entry(sheet, name, &of_sheet, key));
            for (key, entry) in read {
                let kept = Key::from(format!("{BEFORE}/{sheet}/{key}"));
                match edit.0.iter_mut().find(|change| change.key == kept) {
                    Some(change) => change.new = Some(entry.clone()),
                    None => edit.0.push(Change {
                        key: kept,
                        old: None,
                        new: Some(entry.clone()),
                    }),
                }
            }
        }
        edit.0.retain(|change| change.old != change.new);
        edit
    }

    /// The edit that forgets what was kept as a sheet's before.
    #[must_use]
    pub fn forgetting_before(&self, sheet: &str) -> Edit {
        let kept = Key::from(format!("{BEFORE}/{sheet}"));
        self.taking_out(&kept)
    }

    /// The book as it was when a sheet was kept as before; `None` when it was not.
    #[must_use]
    pub fn before(&self, sheet: &str) -> Option<Self> {
        let kept = Key::from(format!("{BEFORE}/{sheet}"));
        let mut entries = self
            .below(&kept)
            .filter_map(|(key, entry)| Some((frozen_key(key)?, entry.clone())))
            .peekable();
        entries.peek()?;
        Some(Self::of(Rc::clone(self.id()), entries))
    }
}

/// What was kept as before, and what it comes to. Made again only when what was kept has changed.
#[derive(Debug, Clone, Default)]
pub struct Befores {
    kept: Option<Rc<Entries>>,
    sheets: BTreeMap<&'static str, (Book, Findings)>,
}

impl Befores {
    /// What the book keeps as before; `old` is given back where that has not changed.
    #[must_use]
    pub fn of(book: &Book, old: Option<&Self>) -> Self {
        let kept = book.sheet(BEFORE);
        if let Some(old) = old
            && old
                .kept
                .as_ref()
                .is_some_and(|known| Rc::ptr_eq(known, &kept))
        {
            return old.clone();
        }
        let mut sheets = BTreeMap::new();
        sheets.extend(crate::SHEETS.into_iter().filter_map(|sheet| {
            let before = book.before(sheet)?;
            let findings = evaluate(&before, None);
            Some((sheet, (before, findings)))
        }));
        Self {
            sheets,
            kept: Some(kept),
        }
    }

    /// The book as it was, and what it came to, when the sheet was kept as before.
    #[must_use]
    pub fn sheet(&self, sheet: &str) -> Option<&(Book, Findings)> {
        self.sheets.get(sheet)
    }
}

/// One result, before and now.
#[derive(Debug, Clone, PartialEq)]
pub struct BeforeNow {
    /// The result's name.
    pub id: Rc<str>,
    /// What it was; `None` when there was no such result.
    pub before: Option<Finding>,
    /// What it is.
    pub now: Option<Finding>,
    /// Now less before, where both are there.
    pub change: Option<Difference>,
}

/// What changed, with the ± taken jointly: a measurement that both rest on counts once.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// Now less before.
    pub figure: Figure,
    /// Whether it is greater than its ±; if not, there is no clear difference.
    pub clear: bool,
}

/// The change from one figure to another.
#[must_use]
pub fn change(before: &Figure, now: &Figure) -> Difference {
    let figure = difference(before, now);
    let by = figure.value();
    let reach = if by > 0.0 {
        figure.minus()
    } else {
        figure.plus()
    };
    Difference {
        clear: by.abs() > reach,
        figure,
    }
}

/// Before and now of every result that either has, in the order of now.
#[must_use]
pub fn before_and_now(before: &Found, now: &Found) -> Vec<BeforeNow> {
    let gone = before.results().filter(|(id, _)| now.result(id).is_none());
    let ids = now.results().chain(gone).map(|(id, _)| id);
    ids.map(|id| row(id, before.result(id), now.result(id)))
        .collect()
}

/// Before and now of one result.
#[must_use]
pub fn before_and_now_of(id: &str, before: &Found, now: &Found) -> BeforeNow {
    row(&id.into(), before.result(id), now.result(id))
}

fn row(id: &Rc<str>, before: Option<&Finding>, now: Option<&Finding>) -> BeforeNow {
    let change = match (before, now) {
        (Some(Ok(before)), Some(Ok(now))) if before.kind() == now.kind() => {
            Some(change(before, now))
        }
        _ => None,
    };
    BeforeNow {
        id: Rc::clone(id),
        before: before.cloned(),
        now: now.cloned(),
        change,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn book() -> Book {
        Book::of(
            "b",
            [
                ("vehicle/front_unladen".into(), "1000 ± 20 kg".into()),
                ("vehicle/rear_unladen".into(), "800 ± 20 kg".into()),
                ("vehicle/wheelbase".into(), "3000 ± 1 mm".into()),
            ],
        )
    }

    #[test]
    fn before_equals_now_when_nothing_changes() {
        let book = book();
        let book = book.with(&book.keeping_as_before("vehicle"));
        let befores = Befores::of(&book, None);
        let now = evaluate(&book, None);
        let rows = before_and_now(
            &befores.sheet("vehicle").unwrap().1.vehicle.found,
            &now.vehicle.found,
        );
        let changes: Vec<_> = rows.iter().filter_map(|row| row.change.as_ref()).collect();
        assert!(changes.len() >= 3, "{rows:?}");
        for change in changes {
            assert_eq!(change.figure.value(), 0.0);
            assert_eq!((change.figure.plus(), change.figure.minus()), (0.0, 0.0));
            assert!(!change.clear);
        }
    }

    #[test]
    fn what_both_rest_on_counts_once_in_the_difference() {
        let book = book();
        let book = book.with(&book.keeping_as_before("vehicle"));
        let book = book.with(&book.setting("vehicle/front_unladen", Some("1100 ± 20 kg".into())));
        let befores = Befores::of(&book, None);
        let now = evaluate(&book, None);
        let before = &befores.sheet("vehicle").unwrap().1.vehicle.found;
        let row = before_and_now_of("vehicle/unladen", before, &now.vehicle.found);
        let change = row.change.unwrap();
        assert!((change.figure.value() - 100.0).abs() < 1e-9);
        // Both front weighings count, the rear one cancels: sqrt(20² + 20²), JCGM 100 5.1.2.
        assert!((change.figure.plus() - 800.0_f64.sqrt()).abs() < 1e-9);
        assert!(change.clear);
    }

    #[test]
    fn what_was_kept_is_reckoned_once() {
        let book = book();
        let book = book.with(&book.keeping_as_before("vehicle"));
        let one = Befores::of(&book, None);
        let other = book.with(&book.setting("vehicle/wheelbase", Some("3.1 m".into())));
        let two = Befores::of(&other, Some(&one));
        let at = |befores: &Befores| Rc::clone(&befores.sheet("vehicle").unwrap().1.vehicle);
        assert!(Rc::ptr_eq(&at(&one), &at(&two)));
    }

    #[test]
    fn forgetting_leaves_nothing_behind() {
        let book = book();
        let kept = book.with(&book.keeping_as_before("vehicle"));
        assert!(kept.len() > book.len());
        assert_eq!(kept.with(&kept.forgetting_before("vehicle")), book);
    }
}
