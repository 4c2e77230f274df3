//! Every working of the example book, as displayed, evaluated by an evaluator that is not ours.

mod evaluator;

use std::collections::BTreeSet;

use buildbook::{SHEETS, evaluate, example};
use evaluator::{displayed, evaluated, slack};
use measure::{Expr, Manner, ShownLine, System, Working, show_working};

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

#[test]
fn every_working_of_the_example_book_gives_what_it_shows() {
    let book = example::book();
    let findings = evaluate(&book, None);
    let (mut lines_evaluated, mut tables, mut faults) = (0, BTreeSet::new(), Vec::new());
    for system in [System::Metric, System::Imperial, System::UnitedStates] {
        let manner = Manner::of(system);
        for sheet in SHEETS {
            let Some(found) = findings.found(sheet) else {
                continue;
            };
            for (id, finding) in found.results() {
                let Ok(figure) = finding else { continue };
                let working: Working = figure.working();
                for (line, shown) in working.lines.iter().zip(show_working(&working, &manner)) {
                    if has_table(&line.formula) {
                        tables.insert(
                            shown
                                .formula
                                .split('(')
                                .next()
                                .unwrap_or_default()
                                .to_owned(),
                        );
                        continue;
                    }
                    lines_evaluated += 1;
                    if let Some(why) = fault(&shown) {
                        faults.push(format!(
                            "{id}: {} = {}: {why}",
                            shown.symbol.unwrap_or("?"),
                            shown.numbers
                        ));
                    }
                }
            }
        }
    }
    println!(
        "{lines_evaluated} lines evaluated; look-ups and integrations left to their own tests: {tables:?}"
    );
    assert!(
        lines_evaluated > 100,
        "only {lines_evaluated} lines were evaluated"
    );
    assert!(
        faults.is_empty(),
        "{} of {lines_evaluated}:\n{}",
        faults.len(),
        faults[..faults.len().min(40)].join("\n")
    );
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
