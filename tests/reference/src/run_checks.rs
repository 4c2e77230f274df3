//! Runs the checks of one subject.

use std::collections::BTreeSet;

use crate::check::{Check, CheckFile};
use crate::{Inputs, units};

/// A subject: its data file's name, the fewest checks it may have, and what computes its values.
pub struct Subject {
    /// The name of the data file, without its ending.
    pub name: &'static str,
    /// The fewest checks that make the file worth the name.
    pub least: usize,
    /// The values named by `of`, in SI units.
    pub computed: fn(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String>,
}

/// The error for a name that a subject does not compute.
#[must_use]
pub fn unknown(of: &str) -> String {
    format!("nothing is computed under the name `{of}`")
}

impl Subject {
    /// The checks of a data file, each known to be well formed.
    ///
    /// # Errors
    /// When the file is not of the format, has too few checks, or repeats an id.
    pub fn checks(&self, data: &str) -> Result<Vec<Check>, String> {
        let file: CheckFile = toml::from_str(data).map_err(|error| error.to_string())?;
        if file.check.len() < self.least {
            return Err(format!(
                "{} checks, and at least {} are wanted",
                file.check.len(),
                self.least
            ));
        }
        let mut ids = BTreeSet::new();
        for check in &file.check {
            check
                .well_formed()
                .map_err(|why| format!("{}: {why}", check.id))?;
            if !ids.insert(check.id.as_str()) {
                return Err(format!("{}: this id stands twice", check.id));
            }
        }
        Ok(file.check)
    }
}

/// What our code makes of one check.
///
/// # Errors
/// One sentence saying how it differs from what the source says.
pub fn outcome(subject: &Subject, check: &Check) -> Result<(), String> {
    let inputs = Inputs::new(check.inputs.clone());
    let computed = (subject.computed)(&check.of, &inputs);
    if let Err(error) = &computed
        && *error == unknown(&check.of)
    {
        return Err(error.clone());
    }
    match (&check.expected, &check.refused) {
        (Some(expected), _) => {
            let computed = computed.map_err(|error| format!("refused: {error}"))?;
            all_read(&inputs)?;
            agreement(check, expected.values(), &computed)
        }
        (None, Some(part)) => match computed {
            Ok(values) => Err(format!("gives {values:?} where it must be refused")),
            Err(error) if error.contains(part.as_str()) => Ok(()),
            Err(error) => Err(format!("is refused with `{error}`, not with `{part}`")),
        },
        (None, None) => Err("expects nothing".into()),
    }
}

fn all_read(inputs: &Inputs) -> Result<(), String> {
    let unread = inputs.unread();
    if unread.is_empty() {
        Ok(())
    } else {
        Err(format!("inputs that nothing reads: {}", unread.join(", ")))
    }
}

fn agreement(check: &Check, expected: &[f64], computed: &[f64]) -> Result<(), String> {
    if expected.len() != computed.len() {
        return Err(format!(
            "{} values expected, {} computed",
            expected.len(),
            computed.len()
        ));
    }
    let tolerance = check.tolerance.unwrap_or(0.0);
    let unit = check.unit.as_deref();
    for (place, (&wanted, &si)) in expected.iter().zip(computed).enumerate() {
        let found = units::in_unit(si, unit)?;
        // Half a last printed digit is itself subject to the rounding of binary fractions.
        let slack = 4.0 * f64::EPSILON * wanted.abs();
        let within = (found - wanted).abs() <= tolerance + slack;
        if !within {
            let unit = unit.unwrap_or("");
            return Err(format!(
                "value {}: expected {wanted} ± {tolerance} {unit}, computed {found} {unit}",
                place + 1
            ));
        }
    }
    Ok(())
}
