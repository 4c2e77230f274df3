//! Costs as a table, out and in. On the way in nothing is lost: what cannot be read is kept as it stands and shown.

use measure::{Currency, Manner, Mark};
use trade::costs::csv::{Separator, TableFault, table, table_text};

use super::{CostLine, CostsFindings, LineFinding};
use crate::field::{Form, always_a_row};
use crate::{Answer, Asking, Book, Change, Edit, Entry, Key, Log, Place, Row, Spot};

/// The columns, which are the fields of a line in their order; a payer goes by name.
fn columns() -> impl Iterator<Item = &'static str> {
    CostLine::SPEC.items.iter().map(|item| item.name)
}

/// Columns that are written for the reader and not read back: what the line comes to, and where it has its price from.
const WRITTEN_ONLY: [&str; 3] = ["total", "currency", "from_sheet"];

/// An entry as it was typed. A figure that could be taken otherwise where another decimal mark is usual has its marks changed over.
fn typed_text(entry: &Entry, mark: Mark) -> String {
    if entry.mark.is_none_or(|settled| settled == mark) {
        return entry.text.to_string();
    }
    let chars: Vec<char> = entry.text.chars().collect();
    let digit = |at: Option<usize>| {
        at.and_then(|at| chars.get(at))
            .is_some_and(char::is_ascii_digit)
    };
    let changed = chars.iter().enumerate().map(|(at, c)| {
        let between = digit(at.checked_sub(1)) && digit(Some(at + 1));
        match c {
            '.' if between => ',',
            ',' if between => '.',
            c => *c,
        }
    });
    changed.collect()
}

/// Every line as a table: entries as they were typed, purchases of other sheets as they stand and as the reader's language calls them,
/// and what each comes to.
#[must_use]
pub fn costs_table(
    book: &Book,
    findings: &CostsFindings,
    mark: Mark,
    called: &dyn Fn(&LineFinding) -> String,
) -> String {
    let mut rows = vec![
        columns()
            .chain(WRITTEN_ONLY)
            .map(str::to_owned)
            .collect::<Vec<_>>(),
    ];
    for line in &findings.lines {
        let typed = |field: &str| -> String {
            let entry = book.entry(line.key.under(field).as_str());
            entry
                .map(|entry| typed_text(entry, mark))
                .unwrap_or_default()
        };
        let cell = |column: &str| match (column, &line.from) {
            ("payer", _) => payer_name(findings, line.payer.as_deref()),
            ("what", Some(_)) => called(line),
            ("sheet", Some(from)) => from.sheet.to_owned(),
            ("quantity", Some(_)) => line.quantity.normalize().to_string(),
            ("price", Some(_)) => line
                .unit_price
                .map(|price| format!("{} {}", price.figures(mark), price.currency()))
                .unwrap_or_default(),
            _ => typed(column),
        };
        let mut row: Vec<String> = columns().map(cell).collect();
        row.push(match &line.amounts {
            Ok(amounts) => amounts.total.figures(mark),
            Err(_) => String::new(),
        });
        row.push(findings.terms.home.to_string());
        row.push(
            line.from
                .as_ref()
                .map(|from| from.sheet.to_owned())
                .unwrap_or_default(),
        );
        rows.push(row);
    }
    let separator = match mark {
        Mark::Point => Separator::Comma,
        Mark::Comma => Separator::Semicolon,
    };
    table_text(&rows, separator)
}

fn payer_name(findings: &CostsFindings, id: Option<&str>) -> String {
    let payer = findings.payers.iter().find(|payer| Some(&*payer.id) == id);
    payer.map_or_else(
        || id.unwrap_or_default().to_owned(),
        |payer| payer.name.to_string(),
    )
}

/// What is odd about a cell, a row or the whole table.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Problem {
    /// The cell cannot be read as its field needs; it comes in as it stands.
    Unreadable(crate::BookError),
    /// The column is none of ours; its cells go to the note.
    UnknownColumn,
    /// The row has more cells than there are columns; the surplus goes to the note.
    SurplusCells,
    /// A quote was never closed, or something stood behind a closing quote.
    Quotes,
    /// The first line names no column of ours: the cells are taken in the order what, price, state.
    NoHeading,
    /// A line that another sheet prices: it stands there already and is left out.
    FromSheet,
}

/// A problem and its place.
#[derive(Debug, Clone, PartialEq)]
pub struct CellProblem {
    /// The row, counted from 1 below the heading; 0 for the heading.
    pub row: usize,
    /// The column's heading.
    pub column: String,
    /// What stood there.
    pub text: String,
    /// What is odd.
    pub why: Problem,
}

/// What would come in, before anything does.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Preview {
    /// The rows: what each field would hold.
    pub rows: Vec<Vec<(&'static str, String)>>,
    /// What is odd about them.
    pub problems: Vec<CellProblem>,
    /// The decimal mark the figures are understood with.
    pub mark: Mark,
}

/// What a table would bring in. Semicolons between the cells mean a comma for decimals, commas a point; between tabs it is
/// the reader's own mark that settles a doubt.
#[must_use]
pub fn preview(text: &str, currency: Currency, mark: Mark) -> Preview {
    let table = table(text);
    let mark = match Separator::of_text(text) {
        Separator::Comma => Mark::Point,
        Separator::Semicolon => Mark::Comma,
        Separator::Tab => mark,
    };
    let mut preview = Preview {
        mark,
        ..Preview::default()
    };
    let mut rows = table.rows.into_iter();
    let first = rows.next().unwrap_or_default();
    let known = |heading: &str| {
        let heading = heading.trim().to_ascii_lowercase().replace([' ', '-'], "_");
        columns().find(|name| *name == heading)
    };
    let written_only =
        |heading: &str| WRITTEN_ONLY.contains(&heading.trim().to_ascii_lowercase().as_str());
    let mut headings: Vec<(Option<&'static str>, String)> = first
        .iter()
        .map(|heading| (known(heading), heading.clone()))
        .collect();
    let mut data: Vec<Vec<String>> = rows.collect();
    if headings.iter().all(|(name, _)| name.is_none()) && !first.is_empty() {
        preview.note(0, "", &first.join(" "), Problem::NoHeading);
        let usual = ["what", "price", "state"].map(known);
        let widest = data.iter().map(Vec::len).max().unwrap_or(0);
        headings = (0..first.len().max(widest))
            .map(|at| (usual.get(at).copied().flatten(), String::new()))
            .collect();
        data.insert(0, first);
    } else {
        for (name, heading) in &headings {
            if name.is_none() && !written_only(heading) {
                preview.note(0, heading, heading, Problem::UnknownColumn);
            }
        }
    }
    for TableFault::OpenQuote { line } | TableFault::AfterQuote { line } in table.faults {
        preview.note(line.saturating_sub(1), "", "", Problem::Quotes);
    }
    let from_sheet = headings
        .iter()
        .position(|(_, heading)| heading.trim() == "from_sheet");
    for (at, cells) in data.into_iter().enumerate() {
        if let Some(sheet) = from_sheet
            .and_then(|column| cells.get(column))
            .filter(|cell| !cell.is_empty())
        {
            preview.note(at + 1, "from_sheet", sheet, Problem::FromSheet);
            continue;
        }
        preview.take(at + 1, &headings, cells, currency);
    }
    preview
}

impl Preview {
    fn note(&mut self, row: usize, column: &str, text: &str, why: Problem) {
        self.problems.push(CellProblem {
            row,
            column: column.to_owned(),
            text: text.chars().take(60).collect(),
            why,
        });
    }

    /// Takes one row in: known columns to their fields, all else to the note.
    fn take(
        &mut self,
        row: usize,
        headings: &[(Option<&'static str>, String)],
        cells: Vec<String>,
        currency: Currency,
    ) {
        let mut fields: Vec<(&'static str, String)> = Vec::new();
        let mut rest = Vec::new();
        // A bare price from a book of another currency is in that currency still.
        let foreign = headings
            .iter()
            .position(|(_, heading)| heading.trim() == "currency")
            .and_then(|column| Currency::of_code(cells.get(column)?.trim()))
            .filter(|theirs| *theirs != currency);
        for (at, cell) in cells.into_iter().enumerate() {
            if cell.trim().is_empty() {
                continue;
            }
            match headings.get(at) {
                Some((Some(name), heading)) => {
                    let mut text = as_kept(name, &cell);
                    if let Some(theirs) = foreign
                        && *name == "price"
                        && !text.contains(|c: char| c.is_alphabetic() || "£$€¥".contains(c))
                    {
                        text = format!("{text} {theirs}");
                    }
                    if let Some(error) = unreadable(name, &text, &fields, currency, self.mark) {
                        self.note(row, heading, &cell, Problem::Unreadable(error));
                    }
                    match fields.iter_mut().find(|(known, _)| known == name) {
                        Some((_, kept)) => *kept = format!("{kept} {text}"),
                        None => fields.push((name, text)),
                    }
                }
                Some((None, heading)) if WRITTEN_ONLY.contains(&heading.trim()) => {}
                Some((None, heading)) if heading.trim().is_empty() => rest.push(cell),
                Some((None, heading)) => rest.push(format!("{}: {cell}", heading.trim())),
                None => {
                    self.note(row, "", &cell, Problem::SurplusCells);
                    rest.push(cell);
                }
            }
        }
        if !rest.is_empty() {
            let rest = rest.join("; ");
            match fields.iter_mut().find(|(name, _)| *name == "note") {
                Some((_, note)) => *note = format!("{note}; {rest}"),
                None => fields.push(("note", rest)),
            }
        }
        if !fields.is_empty() {
            self.rows.push(fields);
        }
    }

    /// The edit that brings the rows in, after the lines that are there. A payer's name that is not yet known becomes a
    /// payer; nothing that stands in the book is changed.
    #[must_use]
    pub fn edit(&self, book: &Book, log: &Log) -> Edit {
        let manner = Manner {
            mark: self.mark,
            ..Manner::default()
        };
        let list = Key::from("costs/lines");
        let people = Key::from("costs/payers");
        let mut edit = Edit::default();
        let mut grown = book.clone();
        let add =
            |edit: &mut Edit, grown: &mut Book, list: &Key, fields: &[(&'static str, Entry)]| {
                // The row that always stands there takes the first line.
                let (id, more) = if always_a_row(list) && grown.below(list).next().is_none() {
                    let row = list.under("1");
                    let set = |(field, entry): &(&str, Entry)| {
                        grown.setting(row.under(field), Some(entry.clone()))
                    };
                    (
                        "1".into(),
                        fields.iter().map(set).fold(Edit::default(), Edit::then),
                    )
                } else {
                    grown.adding_row(list, Place::Last, log, fields)
                };
                *grown = grown.with(&more);
                edit.0.extend(more.0);
                id
            };
        for row in &self.rows {
            let mut fields = Vec::new();
            for (name, text) in row {
                let entry = if *name == "payer" {
                    let known = grown.rows(&people).into_iter().find(|id| {
                        let name = grown.entry(people.under(id).under("name").as_str());
                        name.is_some_and(|name| name.text.trim().eq_ignore_ascii_case(text.trim()))
                    });
                    let id = known.unwrap_or_else(|| {
                        add(
                            &mut edit,
                            &mut grown,
                            &people,
                            &[("name", Entry::new(text.as_str()))],
                        )
                    });
                    Entry::new(id)
                } else {
                    match CostLine::SPEC.field(name) {
                        Some(field) => crate::typed(field, text, &manner),
                        None => Entry::new(text.as_str()),
                    }
                };
                fields.push((*name, entry));
            }
            add(&mut edit, &mut grown, &list, &fields);
        }
        merged(edit)
    }
}

/// One change a key: adding rows one after another may rank the same row twice.
fn merged(edit: Edit) -> Edit {
    let mut changes: Vec<Change> = Vec::new();
    for change in edit.0 {
        match changes.iter_mut().find(|known| known.key == change.key) {
            Some(known) => known.new = change.new,
            None => changes.push(change),
        }
    }
    Edit(changes)
}

/// The text as the field keeps it: choices go by their own small words.
fn as_kept(name: &str, cell: &str) -> String {
    match CostLine::SPEC.field(name).map(|field| &field.form) {
        Some(Form::Choice(_)) => cell.trim().to_ascii_lowercase(),
        _ => cell.to_owned(),
    }
}

/// Why a cell cannot be read as its field needs, beside what stands in its row already.
fn unreadable(
    name: &str,
    text: &str,
    fields: &[(&'static str, String)],
    currency: Currency,
    mark: Mark,
) -> Option<crate::BookError> {
    let field = CostLine::SPEC.field(name)?;
    let at = |name: &str| Key::from(format!("costs/lines/1/{name}"));
    let price = fields.iter().find(|(known, _)| *known == "price");
    let price = price.map(|(_, price)| (at("price"), Entry::new(price.as_str())));
    let home = (Key::from("book/currency"), Entry::new(currency.code()));
    let key = at(name);
    let spot = Spot::from(&key);
    let asking = Asking {
        spot: &spot,
        field,
        currency: Book::of("row", price.into_iter().chain([home])).currency_at(&key),
    };
    let manner = Manner {
        mark,
        ..Manner::default()
    };
    let entry = crate::typed(field, text, &manner);
    match field.form {
        Form::Money(_) => measure::MoneyReading::read((&entry).into(), &asking).err(),
        Form::Decimal(_) => measure::Decimal::read((&entry).into(), &asking).err(),
        Form::Choice(_) => <&'static str>::read((&entry).into(), &asking).err(),
        Form::Date => crate::Date::read(text)
            .is_none()
            .then(|| crate::BookError::Date(text.chars().take(60).collect())),
        _ => None,
    }
}
