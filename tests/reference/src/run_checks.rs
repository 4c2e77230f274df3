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

#[cfg(test)]
mod tests {
    use super::*;

    /// Computes `double` of the input `x`, and refuses numbers below zero.
    fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
        match of {
            "double" => match inputs.number("x")? {
                x if x < 0.0 => Err("OutOfRange: x".into()),
                x => Ok(vec![2.0 * x]),
            },
            _ => Err(unknown(of)),
        }
    }

    const SUBJECT: Subject = Subject {
        name: "doubles",
        least: 1,
        computed,
    };

    const SOUND: &str = r#"
        [[check]]
        id = "D1"
        what = "Twice three"
        of = "double"
        inputs = { x = 3 }
        expected = [6.0]
        tolerance = 0.0
        why = "whole numbers"
        source = "Arithmetic"
        held = "computed"
    "#;

    /// The outcome of the sound check after one change of its text.
    fn after(old: &str, new: &str) -> Result<(), String> {
        assert!(SOUND.contains(old));
        let checks = SUBJECT.checks(&SOUND.replace(old, new))?;
        outcome(&SUBJECT, &checks[0])
    }

    #[test]
    fn a_sound_check_passes() {
        assert_eq!(after("6.0", "6.0"), Ok(()));
    }

    #[test]
    fn a_wrong_value_a_missing_value_and_a_surplus_value_fail() {
        assert!(after("[6.0]", "[6.1]").is_err());
        assert!(after("[6.0]", "[6.0, 6.0]").is_err());
        assert!(after("[6.0]", "[]").is_err());
    }

    #[test]
    fn a_name_that_nothing_computes_fails_even_where_a_refusal_is_wanted() {
        assert!(after("\"double\"", "\"treble\"").is_err());
        let refused = SOUND
            .replace("expected = [6.0]", "refused = \"name\"")
            .replace("\"double\"", "\"treble\"");
        let checks = SUBJECT.checks(&refused).expect("a well-formed file");
        assert!(outcome(&SUBJECT, &checks[0]).is_err());
    }

    #[test]
    fn an_input_that_nothing_reads_fails() {
        assert!(after("x = 3", "x = 3, y = 4").is_err());
        assert!(after("x = 3", "y = 3").is_err());
    }

    #[test]
    fn a_key_outside_the_format_and_a_missing_source_fail() {
        assert!(after("held =", "colour = \"red\"\nheld =").is_err());
        assert!(after("source = \"Arithmetic\"", "").is_err());
        assert!(after("\"Arithmetic\"", "\" \"").is_err());
        assert!(after("tolerance = 0.0", "").is_err());
        assert!(after("\"computed\"", "\"library\"").is_err());
        assert!(after("\"computed\"", "\"hearsay\"").is_err());
    }

    #[test]
    fn a_refusal_must_happen_and_for_the_reason_given() {
        let refused = |part: &str, x: &str| {
            let text = SOUND
                .replace("expected = [6.0]", &format!("refused = \"{part}\""))
                .replace("x = 3", x);
            let checks = SUBJECT.checks(&text)?;
            outcome(&SUBJECT, &checks[0])
        };
        assert_eq!(refused("OutOfRange", "x = -3"), Ok(()));
        assert!(refused("OutOfRange", "x = 3").is_err());
        assert!(refused("NoRoot", "x = -3").is_err());
        assert!(refused(" ", "x = -3").is_err());
    }

    #[test]
    fn a_file_without_checks_or_with_an_id_twice_fails() {
        assert!(SUBJECT.checks("").is_err());
        assert!(SUBJECT.checks("check = []").is_err());
        assert!(SUBJECT.checks(&format!("{SOUND}{SOUND}")).is_err());
    }
}
