//! Working back: the entry that gives a wanted answer.

use std::rc::Rc;

use measure::{Figure, Manner, Mark, MeasureError, System, Unit, zeros};

use crate::evaluate::evaluate_only;
use crate::field::{Number, field_of};
use crate::{Book, Edit, Entry, Findings, Key, evaluate};

/// The entry that gives a wanted answer.
#[derive(Debug, Clone)]
pub struct WorkedBack {
    /// The entry to put in.
    pub entry: Entry,
    /// The edit that puts it in.
    pub edit: Edit,
    /// The entry's value (SI).
    pub value: f64,
    /// The entry's value with the ± that all other entries give it; `None` where the slope has no bound.
    pub figure: Option<Figure>,
    /// The result with the entry put in: its working shows the answer at its place.
    pub result: Figure,
    /// What every sheet finds with the entry put in.
    pub findings: Findings,
    /// Other values of the entry that give the wanted answer as well (SI), the nearest to the present one first.
    pub others: Vec<f64>,
    /// For an entry of whole numbers: whether the wanted answer is met, or only come nearest to.
    pub met: bool,
}

/// Why no entry gives the wanted answer.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum WorkBackError {
    /// The entry is not a number.
    NotANumber(Key),
    /// The result has no value, whatever the entry is: other entries are missing or refused.
    NoResult(Rc<str>),
    /// The result does not depend on the entry.
    NoPart(Key),
    /// No value of the entry gives the wanted answer.
    NoRoot {
        /// The value that comes nearest (SI).
        nearest: f64,
        /// What the result is there (SI).
        reached: f64,
        /// The lowest value that was tried (SI).
        lowest: f64,
        /// The highest value that was tried (SI).
        highest: f64,
    },
}

/// Finds the entry at `key` that makes the result `id` what is wanted (SI). `manner` says in which unit and with which mark it is written.
///
/// # Errors
/// [`WorkBackError`].
pub fn work_back(
    book: &Book,
    findings: &Findings,
    id: &str,
    key: &Key,
    wanted: f64,
    manner: &Manner,
) -> Result<WorkedBack, WorkBackError> {
    let number = field_of(key)
        .and_then(|field| field.number())
        .ok_or_else(|| WorkBackError::NotANumber(key.clone()))?;
    let search = Search {
        book,
        findings,
        id,
        key,
        wanted,
        number,
    };
    let present = findings
        .result(id)
        .and_then(|found| found.as_ref().ok())
        .and_then(|figure| {
            figure
                .contributions()
                .iter()
                .find(|part| *part.key == *key.as_str())
                .map(|part| part.value)
        });
    let (lowest, highest) = search.bounds(present);
    let mut answers = if number.whole {
        search.whole_answers(lowest, highest)?
    } else {
        search.answers(lowest, highest)?
    };
    let near = present.unwrap_or(answers[0]);
    measure::sort_by(&mut answers, |a, b| {
        (a - near).abs().total_cmp(&(b - near).abs())
    });
    search.worked_back(&answers, manner)
}

struct Search<'a> {
    book: &'a Book,
    findings: &'a Findings,
    id: &'a str,
    key: &'a Key,
    wanted: f64,
    number: &'static Number,
}

/// The most whole numbers that are tried one by one.
const MOST_WHOLE: f64 = 400.0;

impl Search<'_> {
    /// Where to look: between the field's limits, or a hundredfold round the present value where it has none.
    fn bounds(&self, present: Option<f64>) -> (f64, f64) {
        let (mut lowest, mut highest) = (self.number.lowest, self.number.highest);
        let size = present.map_or(1.0, f64::abs).max(f64::MIN_POSITIVE);
        if highest >= f64::MAX / 2.0 {
            highest = 100.0 * size;
        }
        if lowest <= f64::MIN / 2.0 {
            lowest = -100.0 * size;
        }
        // From nothing up, the search goes by ratios, which needs a lowest value above nothing.
        if lowest == 0.0 && !self.number.whole && highest > 0.0 {
            lowest = highest * 1e-9;
        }
        (lowest, highest)
    }

    /// The book with this value for the entry, written in full in the field's metric unit and exact.
    fn put(&self, value: f64) -> Edit {
        let unit = self.number.unit(System::Metric);
        self.book.setting(
            self.key.clone(),
            Some(Entry::new(format!("{} exact", unit.from_si(value)))),
        )
    }

    fn found(&self, edit: &Edit) -> Findings {
        evaluate(&self.book.with(edit), Some(self.findings))
    }

    fn remainder(&self, value: f64) -> f64 {
        let sheet = self.id.split('/').next().unwrap_or_default();
        let findings = evaluate_only(&self.book.with(&self.put(value)), self.findings, sheet);
        match findings.result(self.id) {
            Some(Ok(figure)) => figure.value() - self.wanted,
            _ => f64::NAN,
        }
    }

    fn answers(&self, lowest: f64, highest: f64) -> Result<Vec<f64>, WorkBackError> {
        // The bounds themselves may round to a value beyond them when they are written.
        let room = (highest - lowest) * 1e-12;
        zeros(lowest + room, highest - room, |value| self.remainder(value)).map_err(|error| {
            match error {
                MeasureError::NoRoot { nearest, remainder } => {
                    self.no_root(nearest, remainder, lowest, highest)
                }
                _ => WorkBackError::NoResult(self.id.into()),
            }
        })
    }

    fn no_root(&self, nearest: f64, remainder: f64, lowest: f64, highest: f64) -> WorkBackError {
        let flat = [lowest, 0.5 * (lowest + highest), highest]
            .into_iter()
            .map(|value| self.remainder(value))
            .filter(|other| other.is_finite())
            .all(|other| other == remainder);
        if flat {
            return WorkBackError::NoPart(self.key.clone());
        }
        WorkBackError::NoRoot {
            nearest,
            reached: self.wanted + remainder,
            lowest,
            highest,
        }
    }

    /// The whole numbers at which the result meets the wanted one or passes it; the nearer of each two.
    fn whole_answers(&self, lowest: f64, highest: f64) -> Result<Vec<f64>, WorkBackError> {
        let (first, last) = (
            lowest.ceil(),
            highest.floor().min(lowest.ceil() + MOST_WHOLE),
        );
        let mut tried: Vec<(f64, f64)> = Vec::new();
        let mut value = first;
        while value <= last {
            let remainder = self.remainder(value);
            if remainder.is_finite() {
                tried.push((value, remainder));
            }
            value += 1.0;
        }
        let mut answers: Vec<f64> = tried
            .iter()
            .filter(|(_, y)| *y == 0.0)
            .map(|(x, _)| *x)
            .collect();
        for pair in tried.windows(2) {
            let [(a, fa), (b, fb)] = [pair[0], pair[1]];
            if fa * fb < 0.0 {
                answers.push(if fa.abs() <= fb.abs() { a } else { b });
            }
        }
        answers.dedup();
        let nearest = tried.iter().min_by(|a, b| a.1.abs().total_cmp(&b.1.abs()));
        match (answers.is_empty(), nearest) {
            (false, _) => Ok(answers),
            (true, Some((nearest, remainder))) => {
                Err(self.no_root(*nearest, *remainder, first, last))
            }
            (true, None) => Err(WorkBackError::NoResult(self.id.into())),
        }
    }

    fn worked_back(&self, answers: &[f64], manner: &Manner) -> Result<WorkedBack, WorkBackError> {
        let no_result = || WorkBackError::NoResult(self.id.into());
        let exact = self.found(&self.put(answers[0]));
        let at_answer = exact
            .result(self.id)
            .and_then(|found| found.as_ref().ok())
            .ok_or_else(no_result)?;
        let figure = at_answer.solved_for(self.key.as_str(), answers[0], self.number.kind);
        let least = |result: &Figure| result.plus().min(result.minus());
        let unit = self.unit(manner);
        // As few digits as still give the wanted answer: that is what a person would write down.
        for digits in 3..=17 {
            let entry = self.written(answers[0], digits, unit, manner);
            let edit = self.book.setting(self.key.clone(), Some(entry.clone()));
            let findings = self.found(&edit);
            let Some(Ok(result)) = findings.result(self.id) else {
                continue;
            };
            // Where the answer is steep, its own ± would let anything pass: what the entry as written leads to has a say.
            let doubt = least(at_answer).min(least(result));
            let tolerance = (1e-6 * self.wanted.abs()).max(0.02 * doubt);
            let met = (result.value() - self.wanted).abs() <= tolerance;
            if met || digits == 17 || self.number.whole {
                let (result, others) = (result.clone(), answers[1..].to_vec());
                return Ok(WorkedBack {
                    entry,
                    edit,
                    value: answers[0],
                    figure,
                    result,
                    findings,
                    others,
                    met,
                });
            }
        }
        Err(no_result())
    }

    /// The unit to write the answer in: the one the present entry is understood in, else the one of the reader's manner.
    fn unit(&self, manner: &Manner) -> &'static Unit {
        let own = self.book.entry(self.key.as_str()).and_then(|entry| {
            let reading = measure::read(&entry.text, &crate::ask(self.number, entry)).ok()?;
            Some(reading.unit)
        });
        own.unwrap_or_else(|| self.number.unit(manner.units))
    }

    fn written(&self, value: f64, digits: usize, unit: &'static Unit, manner: &Manner) -> Entry {
        let text = significant(unit.from_si(value), digits);
        let mut entry = match manner.mark {
            Mark::Point => Entry::new(text).with_mark(Mark::Point),
            Mark::Comma => Entry::new(text.replace('.', ",")).with_mark(Mark::Comma),
        };
        if unit != self.number.unit(System::Metric) {
            entry = entry.in_unit(unit.symbol);
        }
        entry
    }
}

/// A number with so many significant digits, without an exponent.
fn significant(value: f64, digits: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return "0".to_owned();
    }
    let rounded: f64 = format!("{value:.*e}", digits - 1).parse().unwrap_or(value);
    format!("{rounded}")
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
                ("vehicle/bore".into(), "85".into()),
                ("vehicle/stroke".into(), "90".into()),
                ("vehicle/cylinders".into(), "4".into()),
            ],
        )
    }

    fn back(id: &str, key: &str, wanted: f64) -> Result<WorkedBack, WorkBackError> {
        let book = book();
        let findings = evaluate(&book, None);
        work_back(
            &book,
            &findings,
            id,
            &key.into(),
            wanted,
            &Manner::default(),
        )
    }

    #[test]
    fn the_entry_gives_the_wanted_answer() {
        let back = back("vehicle/unladen", "vehicle/rear_unladen", 2000.0).unwrap();
        assert_eq!(&*back.entry.text, "1000");
        assert!(back.met && back.others.is_empty());
        // The other weighing's ± passes over to the answer, and nothing else.
        assert!((back.figure.unwrap().plus() - 20.0).abs() < 1e-9);
        assert_eq!(back.edit.only_key(), Some(&"vehicle/rear_unladen".into()));
    }

    #[test]
    fn a_wish_out_of_reach_says_how_far_one_gets() {
        let Err(WorkBackError::NoRoot {
            nearest, reached, ..
        }) = back("vehicle/unladen", "vehicle/rear_unladen", 100_000.0)
        else {
            panic!("100 t on two axles")
        };
        assert!(
            (nearest - 20_000.0).abs() < 1.0 && (reached - 21_000.0).abs() < 1.0,
            "{nearest} {reached}"
        );
    }

    #[test]
    fn an_entry_without_a_part_in_the_result_is_named() {
        assert_eq!(
            back("vehicle/unladen", "vehicle/wheelbase", 2000.0).err(),
            Some(WorkBackError::NoPart("vehicle/wheelbase".into()))
        );
        assert_eq!(
            back("vehicle/unladen", "vehicle/name", 2000.0).err(),
            Some(WorkBackError::NotANumber("vehicle/name".into()))
        );
    }

    #[test]
    fn a_whole_number_comes_as_near_as_it_can() {
        let swept = std::f64::consts::PI / 4.0 * 0.085 * 0.085 * 0.09;
        let exact = back("vehicle/swept_volume", "vehicle/cylinders", 6.0 * swept).unwrap();
        assert_eq!(&*exact.entry.text, "6");
        let nearest = back("vehicle/swept_volume", "vehicle/cylinders", 6.3 * swept).unwrap();
        assert_eq!(&*nearest.entry.text, "6");
        assert!(!nearest.met);
    }

    #[test]
    fn a_lasting_lack_is_said() {
        assert_eq!(
            back("vehicle/laden", "vehicle/wheelbase", 2000.0).err(),
            Some(WorkBackError::NoResult("vehicle/laden".into()))
        );
    }
}
