//! The results of a sheet as a record: those of the whole as pairs, those of rows in a table a list, however deep the list lies.

use super::Piece;
use super::record::{MOST_COLUMNS, with_money};
use crate::drawings::Table;
use crate::shown::{Written, answer_of};
use crate::state::State;
use crate::words::{self, Told, filled};
use buildbook::Key;

/// Results of more rows than this stand with a line for each row.
const MOST_ROWS_ACROSS: usize = 5;

/// The results of a list's rows: a line for what they tell, a column for each row.
struct OfRows {
    /// The list; or a path below a row, for what is numbered and has no row of its own: a coat, a stage.
    list: Key,
    columns: Vec<String>,
    lines: Vec<(String, Vec<Written>)>,
}

/// The results of a sheet.
pub fn results(state: &State, sheet: &str) -> Vec<Piece> {
    let (Some(found), Some(words)) = (state.findings.found(sheet), words::subject(sheet)) else {
        return Vec::new();
    };
    let tongue = state.settings.tongue;
    let mut pairs = Vec::new();
    let mut tables = Vec::new();
    let results = found.results().map(|(id, _)| id);
    let amounts = found.amounts().filter(|_| with_money(state));
    for id in results.chain(amounts.map(|(id, _)| id)) {
        let numbered = |told: &&Told| {
            told.rows.is_empty() && told.pattern.contains('*') && words::matches(told.pattern, id)
        };
        // One of several that are numbered may have words of its own elsewhere; here it stands among the others.
        let told = words.results.iter().find(numbered);
        let told = told.or_else(|| words.result(id));
        let (Some(Ok(written)), Some(told)) = (answer_of(state, id), told) else {
            continue;
        };
        // The plan tells these.
        if told.pattern.contains("due_at") {
            continue;
        }
        let (mut rows, numbers) = words::result_rows(told, id);
        // What is numbered stands below its row, as a row stands in its list.
        let above = rows.last().cloned().unwrap_or_else(|| Key::from(sheet));
        rows.extend(numbers.last().map(|number| above.under("n").under(number)));
        match rows
            .last()
            .and_then(|row| Some((row.parent()?, row.field())))
        {
            Some((list, row)) => {
                put(
                    &mut tables,
                    list,
                    row,
                    bare(tongue.say(told.phrase)),
                    written,
                );
            }
            None => pairs.push((
                words::told_whole(&state.book, &state.findings, id, tongue),
                written.shortly(),
            )),
        }
    }
    let mut pieces = Vec::new();
    if !(pairs.is_empty() && tables.is_empty()) {
        pieces.push(Piece::Heading(words::group("handover/results", tongue)));
    }
    if !pairs.is_empty() {
        pieces.push(Piece::Pairs(pairs));
    }
    for of_rows in tables {
        table(state, of_rows, &mut pieces);
    }
    pieces
}

/// The table of a list under the names of the rows that it stands in.
fn table(state: &State, of_rows: OfRows, pieces: &mut Vec<Piece>) {
    let tongue = state.settings.tongue;
    let OfRows {
        list,
        columns,
        lines,
    } = of_rows;
    let above = words::row_names(&state.book, &list, tongue);
    if !above.is_empty() {
        pieces.push(Piece::Heading(above.join(": ")));
    }
    let title = words::list_words(list.as_str()).map(|words| tongue.say(words.title));
    let names = columns.into_iter().map(|id| match title {
        Some(_) => words::row_name(&state.book, &list, &id, tongue),
        None => words::subject(list.sheet())
            .and_then(|words| words.word(&id))
            .map_or(id, |word| tongue.say(word).to_owned()),
    });
    let head = std::iter::once(title.unwrap_or_default().to_owned()).chain(names);
    let table = Table {
        head: head.collect(),
        rows: lines.into_iter().map(line).collect(),
    };
    if table.head.len() > MOST_ROWS_ACROSS + 1 {
        pieces.extend(parted(&flipped(&table)).map(Piece::Table));
    } else {
        pieces.push(Piece::Results(table));
    }
}

/// A line: what is told, with the unit where all figures have the same, then the figures.
fn line((told, mut figures): (String, Vec<Written>)) -> Vec<String> {
    let there = |figure: &&Written| !figure.value.is_empty();
    let mut units = figures.iter().filter(there).map(|figure| &figure.unit);
    let unit = units.next().cloned().unwrap_or_default();
    let told = if !unit.is_empty() && units.all(|other| *other == unit) {
        for figure in &mut figures {
            figure.unit.clear();
        }
        format!("{told}, {unit}")
    } else {
        told
    };
    let figures = figures.iter().map(Written::shortly);
    std::iter::once(told).chain(figures).collect()
}

/// Columns for lines and lines for columns.
fn flipped(table: &Table) -> Table {
    let column = |at: usize| {
        let cells = table.rows.iter().map(|row| row.get(at).cloned());
        let head = table.head.get(at).cloned().unwrap_or_default();
        let cells = cells.map(Option::unwrap_or_default);
        std::iter::once(head).chain(cells).collect::<Vec<_>>()
    };
    Table {
        head: column(0),
        rows: (1..table.head.len()).map(column).collect(),
    }
}

/// How many stand in each part where so many at most may: the parts are of about one size.
pub fn even(all: usize, most: usize) -> usize {
    all.div_ceil(all.div_ceil(most).max(1)).max(1)
}

/// A wide table as several of about one width that fit the page, each with the first column before its own.
fn parted(table: &Table) -> impl Iterator<Item = Table> {
    let columns: Vec<usize> = (1..table.head.len()).collect();
    let part = |columns: &[usize]| {
        let of = |row: &Vec<String>| {
            let cells = columns.iter().map(|at| row[*at].clone());
            std::iter::once(row[0].clone()).chain(cells).collect()
        };
        Table {
            head: of(&table.head),
            rows: table.rows.iter().map(of).collect(),
        }
    };
    let wide = even(columns.len(), MOST_COLUMNS - 1);
    let parts: Vec<Table> = columns.chunks(wide).map(part).collect();
    parts.into_iter()
}

/// Puts a result of a row into the table of its list.
fn put(tables: &mut Vec<OfRows>, list: Key, row: &str, told: String, figure: Written) {
    // What shares neither its row nor what it tells with a table stands in another, though both are numbered below one row.
    let shares = |known: &OfRows| {
        known.columns.iter().any(|column| column == row)
            || known.lines.iter().any(|(line, _)| *line == told)
            || words::list_words(list.as_str()).is_some()
    };
    let mut all = tables.iter();
    let at = all.position(|known| known.list == list && shares(known));
    let at = at.unwrap_or_else(|| {
        tables.push(OfRows {
            list,
            columns: Vec::new(),
            lines: Vec::new(),
        });
        tables.len() - 1
    });
    let OfRows { columns, lines, .. } = &mut tables[at];
    let column = columns.iter().position(|known| *known == row);
    let column = column.unwrap_or_else(|| {
        columns.push(row.to_owned());
        columns.len() - 1
    });
    let line = lines.iter().position(|(line, _)| *line == told);
    let line = line.unwrap_or_else(|| {
        lines.push((told, Vec::new()));
        lines.len() - 1
    });
    let figures = &mut lines[line].1;
    figures.resize(columns.len().max(figures.len()), Written::default());
    figures[column] = figure;
}

/// What a result of a row tells, without the row: "{0}: rate" is "Rate", "Area of {0}" is "Area of …".
fn bare(phrase: &str) -> String {
    const BETWEEN: [char; 6] = [':', ',', ' ', '…', '(', ')'];
    let gap = || "…".to_owned();
    let said = filled(phrase, &[gap(), gap(), gap()]);
    let said = said.trim_start_matches(BETWEEN);
    // After a colon or a comma the row only names itself; after a word it belongs to the phrase.
    let without = said.trim_end_matches(['…', ' ']);
    let said = without.strip_suffix([':', ',']).unwrap_or(said);
    let mut letters = said.chars();
    let first = letters.next().map(measure::capital).into_iter();
    first.chain(letters).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_result_of_a_row_tells_stands_without_the_row() {
        for (phrase, told) in [
            ("Rate: {0}", "Rate"),
            ("{0}: rate when new", "Rate when new"),
            ("{0}, {1}: nip stress", "Nip stress"),
            ("{1} ({0}), dry film a coat", "Dry film a coat"),
            ("{1} ({0}): share of {2}", "Share of …"),
            ("Speed at 1000 rpm in {0}", "Speed at 1000 rpm in …"),
            ("Force (clamped)", "Force (clamped)"),
        ] {
            assert_eq!(bare(phrase), told);
        }
    }
}
