//! Tables as comma-separated values, out and in: quoting, semicolons, byte order mark, and a guard against cells that a
//! spreadsheet would run as formulas.

/// The mark between cells.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Separator {
    /// A comma, where the decimal mark is a point.
    #[default]
    Comma,
    /// A semicolon, where the decimal mark is a comma.
    Semicolon,
    /// A tab, as pasted from a spreadsheet.
    Tab,
}

impl Separator {
    fn char(self) -> char {
        match self {
            Self::Comma => ',',
            Self::Semicolon => ';',
            Self::Tab => '\t',
        }
    }

    /// The separator of a text: the one that stands most often outside quotes in its first line.
    #[must_use]
    pub fn of_text(text: &str) -> Self {
        let count = |separator: Self| {
            let mut quoted = false;
            text.trim_start_matches('\u{feff}')
                .chars()
                .take_while(|c| {
                    quoted ^= *c == '"';
                    quoted || !matches!(c, '\n' | '\r')
                })
                .fold((0, false), |(count, quoted), c| match c {
                    '"' => (count, !quoted),
                    c if c == separator.char() && !quoted => (count + 1, quoted),
                    _ => (count, quoted),
                })
                .0
        };
        [Self::Comma, Self::Semicolon, Self::Tab]
            .into_iter()
            .rev()
            .max_by_key(|separator| count(*separator))
            .unwrap_or_default()
    }
}

/// What was odd in a table that was read; the cells are kept all the same.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TableFault {
    /// A quote that was opened in this line and never closed.
    OpenQuote {
        /// The line, counted from 1.
        line: usize,
    },
    /// Something stood between a closing quote and the next separator.
    AfterQuote {
        /// The line, counted from 1.
        line: usize,
    },
}

/// A table as read.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Table {
    /// The rows; empty lines are left out.
    pub rows: Vec<Vec<String>>,
    /// What was odd.
    pub faults: Vec<TableFault>,
}

/// The table as text, with a byte order mark so that spreadsheets take it for UTF-8.
///
/// # Source
/// RFC 4180 for quoting and line ends; the guard: an apostrophe before a cell that begins like a formula (`=`, `+`, `-`,
/// `@`, tab or return), as OWASP advises on CSV injection (from memory). Plain negative numbers need no guard.
#[must_use]
pub fn table_text(rows: &[Vec<String>], separator: Separator) -> String {
    let mut text = String::from("\u{feff}");
    for row in rows {
        for (index, cell) in row.iter().enumerate() {
            if index > 0 {
                text.push(separator.char());
            }
            push_cell(&mut text, cell, separator, row.len() == 1);
        }
        text.push_str("\r\n");
    }
    text
}

fn push_cell(text: &mut String, cell: &str, separator: Separator, alone: bool) {
    let guarded = if begins_like_a_formula(cell) {
        format!("'{cell}")
    } else {
        cell.to_owned()
    };
    let special =
        |c: char| c == separator.char() || matches!(c, '"' | '\n' | '\r' | ',' | ';' | '\t');
    let outer_gap =
        guarded.starts_with(char::is_whitespace) || guarded.ends_with(char::is_whitespace);
    let empty_row = alone && guarded.is_empty();
    if guarded.contains(special) || outer_gap || empty_row || guarded.starts_with('\u{feff}') {
        text.push('"');
        text.push_str(&guarded.replace('"', "\"\""));
        text.push('"');
    } else {
        text.push_str(&guarded);
    }
}

/// Whether a spreadsheet would run the cell, or take an apostrophe off it.
fn begins_like_a_formula(cell: &str) -> bool {
    let rest = cell.trim_start_matches('\'');
    let risky = rest.starts_with([
        '=', '+', '-', '@', '\t', '\r', '\n', '\u{2212}', '＝', '＋', '－', '＠',
    ]);
    let plain_number = cell.strip_prefix(['-', '\u{2212}']).is_some_and(|digits| {
        digits.starts_with(|c: char| c.is_ascii_digit())
            && digits
                .chars()
                .all(|c| c.is_ascii_digit() || ".,".contains(c))
    });
    risky && !plain_number
}

/// The text of a table, read: any of the three separators, quoted cells with line ends in them, with or without a byte
/// order mark. Nothing is lost: what is odd is reported and its cells are kept.
#[must_use]
pub fn table(text: &str) -> Table {
    let separator = Separator::of_text(text).char();
    let mut reader = Reader::default();
    let mut chars = text
        .strip_prefix('\u{feff}')
        .unwrap_or(text)
        .chars()
        .peekable();
    reader.line = 1;
    while let Some(c) = chars.next() {
        if reader.in_quotes {
            match c {
                '"' if chars.peek() == Some(&'"') => {
                    chars.next();
                    reader.cell.push('"');
                }
                '"' => {
                    reader.in_quotes = false;
                    reader.closed = true;
                }
                c => {
                    reader.line += usize::from(c == '\n');
                    reader.cell.push(c);
                }
            }
        } else if c == separator {
            reader.end_cell();
        } else if c == '\n' || c == '\r' {
            if c == '\r' && chars.peek() == Some(&'\n') {
                chars.next();
            }
            reader.end_row();
            reader.line += 1;
        } else if c == '"' && reader.cell.is_empty() && !reader.closed {
            reader.in_quotes = true;
            reader.opened = reader.line;
        } else {
            if reader.closed && !c.is_whitespace() {
                let fault = TableFault::AfterQuote { line: reader.line };
                if reader.table.faults.last() != Some(&fault) {
                    reader.table.faults.push(fault);
                }
            }
            if !(reader.closed && c.is_whitespace()) {
                reader.cell.push(c);
            }
        }
    }
    if reader.in_quotes {
        let line = reader.opened;
        reader.table.faults.push(TableFault::OpenQuote { line });
    }
    reader.end_row();
    reader.table
}

#[derive(Default)]
struct Reader {
    table: Table,
    row: Vec<String>,
    cell: String,
    in_quotes: bool,
    closed: bool,
    opened: usize,
    line: usize,
}

impl Reader {
    fn end_cell(&mut self) {
        let cell = std::mem::take(&mut self.cell);
        let kept = if self.closed {
            cell
        } else {
            cell.trim().to_owned()
        };
        self.row.push(unguarded(kept));
        self.closed = false;
    }

    fn end_row(&mut self) {
        let quoted = self.closed;
        self.end_cell();
        let row = std::mem::take(&mut self.row);
        // A line with nothing in it is no row, unless it says so in quotes.
        if row.len() > 1 || quoted || row.first().is_some_and(|cell| !cell.is_empty()) {
            self.table.rows.push(row);
        }
        self.in_quotes = false;
    }
}

/// The cell without the apostrophe that guarded it.
fn unguarded(cell: String) -> String {
    match cell.strip_prefix('\'') {
        Some(rest) if begins_like_a_formula(&cell) => rest.to_owned(),
        _ => cell,
    }
}
