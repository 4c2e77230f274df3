//! Whole jobs: a book of entries as they would be typed, and some of its results.

use buildbook::{Book, Entry, Key, evaluate};

use crate::Inputs;

/// The results named, in SI units or in the currency's major unit, of a book with these entries: `paint/gun = conventional`.
///
/// # Errors
/// When an input is missing, an entry is no entry, or a result is not there.
pub fn results(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let entry = |line: &str| {
        let (key, text) = line
            .split_once(" = ")
            .ok_or(format!("`{line}` is no entry"))?;
        Ok((Key::from(key), Entry::new(text)))
    };
    let entries = inputs.texts("entries")?.into_iter().map(entry);
    let entries: Vec<_> = entries.collect::<Result<_, String>>()?;
    let findings = evaluate(&Book::of("job", entries), None);
    let result = |id: &str| {
        let found = id.split('/').next().and_then(|sheet| findings.found(sheet));
        let found = found.ok_or(format!("`{id}` is of no sheet"))?;
        if let Some(money) = found.money(id) {
            let money = money
                .as_ref()
                .map_err(|lack| format!("{id}: {:?}", lack.why()))?;
            return money
                .money
                .amount()
                .to_string()
                .parse()
                .map_err(|error| format!("{id}: {error}"));
        }
        match found.result(id) {
            Some(Ok(figure)) => Ok(figure.value()),
            Some(Err(lack)) => Err(format!("{id}: {:?}", lack.why())),
            None => Err(format!("there is no `{id}`")),
        }
    };
    inputs.texts("results")?.into_iter().map(result).collect()
}
