//! The build book: a map of what was typed, sheet by sheet.

use std::collections::BTreeMap;
use std::ops::Range;
use std::rc::Rc;

use crate::key::RANK;
use measure::{Currency, Mark, MoneyAsk, Rounding, System, read_money};

use crate::field::{Item, choice, count, list_of, text};
use crate::{Change, Edit, Entry, Given, Key, sheet};

/// The entries of one sheet.
pub type Entries = BTreeMap<Key, Entry>;

/// The version of the defaults a new book starts with: see [`crate::Field::assumed`].
pub const DEFAULTS_VERSION: u32 = 2;

/// Where the version of the defaults stands in the book.
pub const DEFAULTS_KEY: &str = "book/defaults";

/// Where the book's currency stands, by its ISO 4217 code.
pub const CURRENCY_KEY: &str = "book/currency";

/// Where it stands which units the book is shown in.
pub const UNITS_KEY: &str = "book/units";

/// The families of units, by the names that a book and a reader's settings know them by.
pub const UNITS: [(&str, System); 3] = [
    ("metric", System::Metric),
    ("imperial", System::Imperial),
    ("us", System::UnitedStates),
];

sheet! {
    /// What the book says of itself.
    pub struct BookSheet = "book" {
        /// Its name.
        name: Given<Rc<str>> = text(),
        /// The version of the defaults it was begun with.
        defaults: Given<measure::Ratio> = count("v"),
        /// The currency of amounts that name none, by its ISO 4217 code.
        currency: Given<Rc<str>> = text().assumed("GBP"),
        /// Which units it is shown in, and a bare number is understood in; those of its reader where it does not say.
        units: Given<&'static str> = choice(&[UNITS[0].0, UNITS[1].0, UNITS[2].0]),
    }
}

/// Where the book's name stands.
pub const NAME_KEY: &str = "book/name";

/// What one vehicle's rebuild is known by: every entry of every sheet.
///
/// A book is a value: [`Book::with`] gives a new one and shares with the old one every sheet that did not change, so that an
/// evaluation can tell by the address of a sheet's entries whether there is anything to reckon again.
#[derive(Debug, Clone, PartialEq)]
pub struct Book {
    id: Rc<str>,
    sheets: BTreeMap<Rc<str>, Rc<Entries>>,
}

thread_local! {
    // All sheets without an entry share this one, so that they too compare by address.
    static NO_ENTRIES: Rc<Entries> = Rc::new(Entries::new());
}

impl Book {
    /// An empty book. Its identity is given: the core knows no random source.
    #[must_use]
    pub fn new(id: impl Into<Rc<str>>) -> Self {
        Self {
            id: id.into(),
            sheets: BTreeMap::new(),
        }
    }

    /// A new book as its owner begins it: empty, save for the version of the defaults, which it keeps.
    #[must_use]
    pub fn begun(id: impl Into<Rc<str>>) -> Self {
        let version = Entry::new(DEFAULTS_VERSION.to_string());
        Self::of(id, [(Key::from(DEFAULTS_KEY), version)])
    }

    /// A book of these entries.
    #[must_use]
    pub fn of(id: impl Into<Rc<str>>, entries: impl IntoIterator<Item = (Key, Entry)>) -> Self {
        let mut sheets: BTreeMap<Rc<str>, Entries> = BTreeMap::new();
        for (key, entry) in entries {
            if let Some(sheet) = sheets.get_mut(key.sheet()) {
                sheet.insert(key, entry);
            } else {
                let name: Rc<str> = key.sheet().into();
                let mut entries = Entries::new();
                entries.insert(key, entry);
                sheets.insert(name, entries);
            }
        }
        let made = sheets.into_iter();
        let mut sheets = BTreeMap::new();
        sheets.extend(made.map(|(name, entries)| (name, Rc::new(entries))));
        Self {
            id: id.into(),
            sheets,
        }
    }

    /// The book's identity: it stays when the book is renamed or sent.
    #[must_use]
    pub fn id(&self) -> &Rc<str> {
        &self.id
    }

    /// The same entries under another identity: a copy.
    #[must_use]
    pub fn known_as(&self, id: impl Into<Rc<str>>) -> Self {
        Self {
            id: id.into(),
            sheets: self.sheets.clone(),
        }
    }

    /// The book's name, empty when it has none.
    #[must_use]
    pub fn name(&self) -> &str {
        self.entry(NAME_KEY).map_or("", |entry| &entry.text)
    }

    /// The version of the defaults the book was begun with; the first one where it does not say.
    #[must_use]
    pub fn defaults_version(&self) -> u32 {
        self.entry(DEFAULTS_KEY)
            .and_then(|entry| entry.text.trim().parse().ok())
            .unwrap_or(1)
    }

    /// The currency of amounts that name none.
    #[must_use]
    pub fn currency(&self) -> Currency {
        let named = self
            .entry(CURRENCY_KEY)
            .and_then(|entry| Currency::of_code(entry.text.trim()));
        named.unwrap_or(Currency::GBP)
    }

    /// The currency of an amount that names none: that of the price on its row, else the book's.
    #[must_use]
    pub fn currency_at(&self, key: &Key) -> Currency {
        let home = self.currency();
        let price = key.row().filter(|_| key.field() != "price");
        let price = price.and_then(|row| self.entry(row.under("price").as_str()));
        let read = |entry: &Entry| read_money(&entry.text, &MoneyAsk::price(home, Mark::Point));
        let reading = price.and_then(|entry| read(entry).ok());
        reading.map_or(home, |reading| reading.money.currency())
    }

    /// How a tie is rounded in all sums of money.
    #[must_use]
    pub fn rounding(&self) -> Rounding {
        match self.entry("costs/rounding") {
            Some(entry) if entry.text.trim() == "half_up" => Rounding::HalfUp,
            _ => Rounding::HalfEven,
        }
    }

    /// The units it is shown in, where it says so; else its reader's serve.
    #[must_use]
    pub fn units(&self) -> Option<System> {
        let named = self.entry(UNITS_KEY)?.text.trim();
        let (_, units) = UNITS.iter().find(|(name, _)| *name == named)?;
        Some(*units)
    }

    /// The book as it is handed on: shown in these units, unless it says so itself.
    #[must_use]
    pub fn carrying(&self, units: &str) -> Self {
        if self.entry(UNITS_KEY).is_some() {
            return self.clone();
        }
        self.with(&self.setting(UNITS_KEY, Some(Entry::new(units))))
    }

    /// The entries of one sheet. The same `Rc` as long as none of them changes.
    #[must_use]
    pub fn sheet(&self, name: &str) -> Rc<Entries> {
        self.sheets
            .get(name)
            .map_or_else(|| NO_ENTRIES.with(Rc::clone), Rc::clone)
    }

    /// The names of the sheets that have entries.
    pub fn sheet_names(&self) -> impl Iterator<Item = &str> {
        self.sheets.keys().map(|name| &**name)
    }

    /// One entry.
    #[must_use]
    pub fn entry(&self, key: &str) -> Option<&Entry> {
        self.sheets.get(key.split('/').next()?)?.get(key)
    }

    /// All entries, in the order of their keys within each sheet.
    pub fn entries(&self) -> impl Iterator<Item = (&Key, &Entry)> {
        self.sheets.values().flat_map(|sheet| sheet.iter())
    }

    /// How many entries there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.sheets.values().map(|sheet| sheet.len()).sum()
    }

    /// Whether there is no entry at all.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// The entries below a path, that of a row for example.
    pub fn below<'a>(&'a self, path: &'a Key) -> impl Iterator<Item = (&'a Key, &'a Entry)> {
        self.sheets
            .get(path.sheet())
            .into_iter()
            .flat_map(move |sheet| {
                sheet
                    .range(path.clone()..)
                    .take_while(move |(key, _)| key.as_str().starts_with(path.as_str()))
            })
            .filter(move |(key, _)| key.is_under(path))
    }

    /// The edit that puts an entry in, or takes it out with `None`. A blank text takes it out too.
    #[must_use]
    pub fn setting(&self, key: impl Into<Key>, new: Option<Entry>) -> Edit {
        let key = key.into();
        let old = self.entry(key.as_str()).cloned();
        // A rank or a name may be blank for a reason of its own; a typed entry that is blank is no entry.
        let new = new.filter(|entry| !entry.is_blank());
        Edit(vec![Change { key, old, new }])
    }

    /// The edit that makes this book's entries those of `other`.
    #[must_use]
    pub fn edit_to(&self, other: &Self) -> Edit {
        let mut changes = Vec::new();
        for (key, old) in self.entries() {
            let new = other.entry(key.as_str());
            if new != Some(old) {
                changes.push(Change {
                    key: key.clone(),
                    old: Some(old.clone()),
                    new: new.cloned(),
                });
            }
        }
        for (key, new) in other.entries() {
            if self.entry(key.as_str()).is_none() {
                changes.push(Change {
                    key: key.clone(),
                    old: None,
                    new: Some(new.clone()),
                });
            }
        }
        Edit(changes)
    }

    /// The book after an edit. Sheets that the edit does not touch keep their `Rc`.
    #[must_use]
    pub fn with(&self, edit: &Edit) -> Self {
        let mut after = self.clone();
        for change in &edit.0 {
            if self.sheets_differ(&after, change) {
                after.put(&change.key, change.new.as_ref());
            }
        }
        after
    }

    /// Whether a change would alter `after` at all.
    fn sheets_differ(&self, after: &Self, change: &Change) -> bool {
        debug_assert_eq!(self.id, after.id);
        after.entry(change.key.as_str()) != change.new.as_ref()
    }

    fn put(&mut self, key: &Key, new: Option<&Entry>) {
        let name = key.sheet();
        match new {
            Some(entry) => {
                if let Some(sheet) = self.sheets.get_mut(name) {
                    Rc::make_mut(sheet).insert(key.clone(), entry.clone());
                } else {
                    let only = Entries::from([(key.clone(), entry.clone())]);
                    self.sheets.insert(name.into(), Rc::new(only));
                }
            }
            None => {
                if let Some(sheet) = self.sheets.get_mut(name) {
                    Rc::make_mut(sheet).remove(key);
                    if sheet.is_empty() {
                        self.sheets.remove(name);
                    }
                }
            }
        }
    }

    /// The ids of a list's rows, in their order: by rank, and by id where ranks are equal.
    ///
    /// A row is there when it has any entry; a row without a rank stands where its id says. A list begins with its preset rows; one that always has a row shows its
    /// first one before that.
    #[must_use]
    pub fn rows(&self, list: &Key) -> Vec<Rc<str>> {
        let below = self.below(list);
        let below = below
            .filter_map(|(key, entry)| Some((key.as_str().get(list.as_str().len() + 1..)?, entry)));
        let ids = match list_of(list) {
            Some(item) => row_ids(below, item),
            None => row_ids(below, &UNKNOWN),
        };
        ids.into_iter().map(|(id, _)| Rc::from(id)).collect()
    }

    /// A row's place among its neighbours.
    pub(crate) fn rank(&self, list: &Key, id: &str) -> f64 {
        rank(id, self.entry(list.under(id).under(RANK).as_str()))
    }
}

/// A list of a newer version.
static UNKNOWN: Item = Item {
    name: "",
    field: None,
    row: None,
    always: false,
    preset: &[],
};

/// A row of a list: its id, and which of the entries below the list are its own.
pub(crate) type RowOf<'b> = (&'b str, Range<usize>);

/// A list's rows in their order, from what stands below it by the rest of its path.
pub(crate) fn row_ids<'b>(
    below: impl Iterator<Item = (&'b str, &'b Entry)>,
    list: &Item,
) -> Vec<RowOf<'b>> {
    let mut preset: Vec<RowOf<'_>> = list.preset.iter().map(|id| (*id, 0..0)).collect();
    let mut rows: Vec<(f64, u64, RowOf<'_>)> = Vec::new();
    for (place, (rest, entry)) in below.enumerate() {
        // The entries of a row come together, and so most are one more of the last row.
        if let Some((by, _, (id, own))) = rows.last_mut()
            && own.end == place
            && let Some(field) = rest
                .strip_prefix(*id)
                .and_then(|rest| rest.strip_prefix('/'))
        {
            own.end += 1;
            if field == RANK {
                *by = rank(id, Some(entry));
            }
            continue;
        }
        let (id, field) = rest.split_once('/').unwrap_or((rest, ""));
        let known = preset.iter_mut().find(|(known, _)| *known == id);
        let own = match known {
            Some((_, own)) => own,
            None => {
                let known = rows.iter().rposition(|(_, _, known)| known.0 == id);
                let row = known.unwrap_or_else(|| {
                    let by_id = id.parse().unwrap_or(u64::MAX);
                    rows.push((rank(id, None), by_id, (id, 0..0)));
                    rows.len() - 1
                });
                let row = &mut rows[row];
                if field == RANK {
                    row.0 = rank(id, Some(entry));
                }
                &mut row.2.1
            }
        };
        if id.len() < rest.len() {
            let start = if own.end == 0 { place } else { own.start };
            *own = start..place + 1;
        }
    }
    if rows.is_empty() && list.always {
        return vec![("1", 0..0)];
    }
    measure::sort_by(&mut rows, |a, b| {
        a.0.total_cmp(&b.0)
            .then(a.1.cmp(&b.1))
            .then_with(|| a.2.0.cmp(b.2.0))
    });
    preset.extend(rows.into_iter().map(|(_, _, row)| row));
    preset
}

/// A row's place among its neighbours: as it is written, else as its id says.
fn rank(id: &str, written: Option<&Entry>) -> f64 {
    written
        .and_then(|entry| entry.text.trim().parse::<f64>().ok())
        .filter(|rank| rank.is_finite())
        .or_else(|| id.parse::<u32>().ok().map(f64::from))
        .unwrap_or(f64::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sheet_whose_entries_did_not_change_keeps_its_address() {
        let book = Book::of(
            "b",
            [
                ("vehicle/wheelbase".into(), "3 m".into()),
                ("gearing/final_drive".into(), "4.1".into()),
            ],
        );
        let after = book.with(&book.setting("gearing/final_drive", Some("3.7".into())));
        assert!(Rc::ptr_eq(&book.sheet("vehicle"), &after.sheet("vehicle")));
        assert!(!Rc::ptr_eq(&book.sheet("gearing"), &after.sheet("gearing")));
        assert!(
            Rc::ptr_eq(&book.sheet("paint"), &after.sheet("paint")),
            "sheets without an entry"
        );
    }

    #[test]
    fn the_same_text_again_changes_nothing() {
        let book = Book::of("b", [("gearing/final_drive".into(), "4.1".into())]);
        let after = book.with(&book.setting("gearing/final_drive", Some("4.1".into())));
        assert!(Rc::ptr_eq(&book.sheet("gearing"), &after.sheet("gearing")));
    }

    #[test]
    fn a_blank_entry_is_no_entry() {
        let book = Book::of("b", [("gearing/final_drive".into(), "4.1".into())]);
        let after = book.with(&book.setting("gearing/final_drive", Some("  ".into())));
        assert_eq!(after.entry("gearing/final_drive"), None);
        assert_eq!(after, Book::new("b"));
    }

    #[test]
    fn a_book_carries_its_units_and_keeps_those_it_has() {
        let book = Book::begun("b");
        assert_eq!(book.units(), None, "its reader's serve");
        let inches = book.carrying("imperial");
        assert_eq!(inches.units(), Some(System::Imperial));
        assert_eq!(inches.carrying("metric"), inches);
        // Units of a newer version stay in the book, and the reader's serve.
        let cubits = book.carrying("cubits");
        assert_eq!(cubits.units(), None);
        assert_eq!(cubits.carrying("metric"), cubits);
    }

    #[test]
    fn an_edit_between_two_books_makes_the_one_into_the_other() {
        let one = Book::of(
            "b",
            [("a/x".into(), "1".into()), ("a/y".into(), "2".into())],
        );
        let two = Book::of(
            "b",
            [("a/y".into(), "3".into()), ("c/z".into(), "4".into())],
        );
        assert_eq!(one.with(&one.edit_to(&two)), two);
        assert_eq!(two.with(&two.edit_to(&one)), one);
    }
}
