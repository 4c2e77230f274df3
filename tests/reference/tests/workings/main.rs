//! Every working of the example book, and of books that are unlike it, as displayed, evaluated by an evaluator that is not ours.

mod evaluator;

use std::collections::BTreeSet;

use buildbook::{Book, Edit, Entry, Form, Found, Key, SHEETS, ask, evaluate, example, field_of};
use evaluator::{displayed, evaluated, slack};
use measure::{Expr, Manner, ShownLine, System, Working, show_working};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;

/// Why a line does not give what it shows, if so.
fn fault(line: &ShownLine) -> Option<String> {
    let check = || -> Result<Option<String>, String> {
        let shown = if line.solves {
            0.0
        } else {
            displayed(&line.result.value, &line.result.unit)?
        };
        let value = evaluated(&line.numbers)?;
        // Seven figures of the result, and what those of the numbers can do.
        let agrees = (value - shown).abs() <= 5.1e-7 * shown.abs()
            || (value - shown).abs() <= 5.1e-7 * shown.abs() + slack(&line.numbers)?;
        Ok((!agrees).then(|| format!("gives {value:e} and shows {shown:e}")))
    };
    check().unwrap_or_else(Some)
}

/// Whether a formula holds a look-up or integration, which only our own code can evaluate.
fn has_table(formula: &Expr) -> bool {
    match formula {
        Expr::Table(..) => true,
        Expr::Sum(parts) => parts.iter().any(has_table),
        Expr::Least(parts, _) | Expr::Greatest(parts, _) => {
            parts.iter().any(|(_, part)| has_table(part))
        }
        Expr::Difference(a, b) | Expr::Product(a, b) | Expr::Quotient(a, b) => {
            has_table(a) || has_table(b)
        }
        Expr::Negative(a) | Expr::Power(a, _) | Expr::Apply(_, a) | Expr::Solved(a) => has_table(a),
        _ => false,
    }
}

/// What became of the workings of a book.
#[derive(Default)]
struct Seen {
    lines: usize,
    tables: BTreeSet<String>,
    faults: Vec<String>,
}

impl Seen {
    /// Evaluates every working of a book, as a page in these units shows it.
    fn look_at(&mut self, book: &Book, system: System) {
        let (findings, manner) = (evaluate(book, None), Manner::of(system));
        let results = SHEETS
            .iter()
            .filter_map(|sheet| findings.found(sheet))
            .flat_map(Found::results);
        for (id, finding) in results {
            let Ok(figure) = finding else { continue };
            let working: Working = figure.working();
            for (line, shown) in working.lines.iter().zip(show_working(&working, &manner)) {
                if has_table(&line.formula) {
                    let name = shown.formula.split('(').next().unwrap_or_default();
                    self.tables.insert(name.to_owned());
                    continue;
                }
                self.lines += 1;
                if let Some(why) = fault(&shown) {
                    self.faults.push(format!(
                        "{id}: {} = {}: {why}",
                        shown.symbol.unwrap_or("?"),
                        shown.numbers
                    ));
                }
            }
        }
    }

    fn told(&self) -> String {
        let first = &self.faults[..self.faults.len().min(40)];
        format!(
            "{} of {}:\n{}",
            self.faults.len(),
            self.lines,
            first.join("\n")
        )
    }
}

#[test]
fn every_working_of_the_example_book_gives_what_it_shows() {
    let mut seen = Seen::default();
    for system in [System::Metric, System::Imperial, System::UnitedStates] {
        seen.look_at(&example::book(), system);
    }
    println!(
        "{} lines evaluated; look-ups and integrations left to their own tests: {:?}",
        seen.lines, seen.tables
    );
    assert!(seen.lines > 100, "only {} lines were evaluated", seen.lines);
    assert!(seen.faults.is_empty(), "{}", seen.told());
}

/// The example book with an entry made otherwise: a figure so many times as large, another choice, or nothing at all.
fn changed(book: &Book, key: &Key, times: f64, choice: usize) -> Option<Edit> {
    let text = match field_of(key)?.form {
        _ if choice == 0 => return Some(book.setting(key.clone(), None)),
        Form::Number(number) => {
            let reading = measure::read(
                &book.entry(key.as_str())?.text,
                &ask(&number, book.entry(key.as_str())?),
            )
            .ok()?;
            let value = (reading.value * times).clamp(number.lowest, number.highest);
            let value = number.unit(System::Metric).from_si(value);
            let value = if number.whole { value.round() } else { value };
            format!("{value:.6} ± {:.6}", 0.01 * value.abs())
        }
        Form::Choice(choices) => choices[choice % choices.len()].to_owned(),
        Form::YesNo => ["yes", "no"][choice % 2].to_owned(),
        _ => return None,
    };
    Some(book.setting(key.clone(), Some(Entry::new(text))))
}

proptest! {
    // A book has thousands of lines.
    #![proptest_config(ProptestConfig::with_cases(10))]

    #[test]
    fn every_working_of_an_odd_book_gives_what_it_shows(
        changes in vec((any::<Index>(), 0.4_f64..2.5, 0_usize..12), 1..80), system in 0_usize..3,
    ) {
        let mut book = example::book();
        let keys: Vec<Key> = book.entries().map(|(key, _)| key.clone()).collect();
        for (place, times, choice) in changes {
            if let Some(edit) = changed(&book, place.get(&keys), times, choice) {
                book = book.with(&edit);
            }
        }
        let mut seen = Seen::default();
        seen.look_at(&book, [System::Metric, System::Imperial, System::UnitedStates][system]);
        prop_assert!(seen.lines > 100);
        prop_assert!(seen.faults.is_empty(), "{}", seen.told());
    }
}

#[test]
fn a_working_that_shows_something_else_is_found_out() {
    let formula = "(1987.38\u{a0}mm) * (1000\u{a0}rpm) / 4.11";
    // 1.98738 m x 1000 / 60 / 4.11, by hand.
    assert!((evaluated(formula).unwrap() - 8.059_124_1).abs() < 1e-6);
    assert_eq!(
        evaluated("min(3; max(1; 2); 5) \u{2212} 2^2").unwrap(),
        -2.0
    );
    assert_eq!(
        evaluated("\u{2212}(2^2) + (\u{2212}3) * (1.5e3\u{a0}mm)").unwrap(),
        -8.5
    );
    let manner = Manner::of(System::Metric);
    let line = |value: f64| ShownLine {
        symbol: None,
        formula: "C * n / i".into(),
        numbers: formula.into(),
        solves: false,
        result: measure::show_exact(value, &measure::unit::KILOMETRE_PER_HOUR, &manner),
        source: None,
    };
    assert_eq!(fault(&line(8.059_124)), None);
    assert!(fault(&line(8.0592)).is_some());
}
