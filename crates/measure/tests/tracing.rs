//! The traced quantity: value, ±, shares, working and roots from one record.

use measure::{
    Expr, Kind, Length, MeasureError, Ratio, Reading, Rotation, Speed, Standing, Stated, Table,
    difference, unit,
};
use proptest::prelude::*;

fn reading(value: f64, plus: f64, minus: f64) -> Reading {
    Reading {
        plus,
        minus,
        stated: Stated::Typed,
        ..Reading::exact(value, &unit::METRE)
    }
}

fn length(key: &str, value: f64, either: f64) -> Length {
    let symbol = key.to_owned().leak();
    Length::entry(key, symbol, Kind::Length, &reading(value, either, either))
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-12)
}

#[test]
fn an_entry_that_passes_through_is_unchanged() {
    let entry = Length::entry("a", "a", Kind::Length, &reading(0.4125, 0.0001, 0.0003));
    let figure = entry.clone().called("b").figure(Kind::Length);
    assert_eq!(
        (figure.value(), figure.plus(), figure.minus()),
        (0.4125, 0.0001, 0.0003)
    );
    let turned = (-entry).figure(Kind::Length);
    assert_eq!((turned.plus(), turned.minus()), (0.0003, 0.0001));
}

#[test]
fn a_quantity_less_itself_is_exactly_nothing() {
    let c = length("c", 2.0, 0.01);
    let nothing = &c - &c;
    assert_eq!((nothing.value(), nothing.plus()), (0.0, 0.0));
    // The same entry read twice is still one measurement.
    let again = length("c", 2.0, 0.01);
    assert_eq!((&c - &again).plus(), 0.0);
    let other = length("d", 2.0, 0.01);
    assert!(close((&c - &other).plus(), 0.01 * 2f64.sqrt()));
}

#[test]
fn products_and_quotients_add_relative_errors_in_quadrature() {
    // JCGM 100:2008, 5.1.6: relative variances add.
    let (a, b) = (length("a", 3.0, 0.03), length("b", 4.0, 0.08));
    let area = &a * &b;
    assert!(close(
        area.plus() / 12.0,
        (0.01f64.powi(2) + 0.02f64.powi(2)).sqrt()
    ));
    let shares = area.figure(Kind::Area).shares();
    assert_eq!(&*shares[0].key, "b");
    assert!(close(shares[0].fraction, 0.8));
    assert!(close(shares[1].fraction, 0.2));
}

#[test]
fn the_least_of_limits_tells_which_governs_and_when_that_is_in_doubt() {
    let limits = [
        ("power", length("p", 10.0, 0.5)),
        ("revs", length("r", 10.3, 0.1)),
        ("grip", length("g", 30.0, 0.1)),
    ];
    let least = Length::least_of(&limits).called("limit");
    assert_eq!(least.governing(), Some("power"));
    assert!(least.contested());
    let clear = Length::least_of(&limits[1..]);
    assert_eq!(clear.governing(), Some("revs"));
    assert!(!clear.contested());
}

#[test]
fn a_root_carries_the_error_of_its_entries_by_implicit_differentiation() {
    // i = C n / v, in closed form and by search.
    let c = length("c", 2.0, 0.01);
    let n = Rotation::entry("n", "n", Kind::Rotation, &reading(50.0, 0.5, 0.5));
    let v = Speed::entry("v", "v", Kind::Speed, &reading(25.0, 0.2, 0.2));
    let closed: Ratio = &c * &n / &v;
    let found = Ratio::root("i", 1.0, 20.0, |i| &c * &n / i - &v).expect("within the bounds");
    assert!(close(found.value(), closed.value()));
    assert!(close(found.plus(), closed.plus()));
    assert!(close(found.minus(), closed.minus()));
}

#[test]
fn a_wish_out_of_reach_names_the_nearest_place() {
    let v = Speed::exact(100.0);
    let found = Ratio::root("i", 1.0, 20.0, |i| Speed::exact(50.0) / i - &v);
    let Err(MeasureError::NoRoot { nearest, remainder }) = found else {
        panic!("{found:?}")
    };
    assert!(close(nearest, 1.0));
    assert!(close(remainder, -50.0));
}

#[test]
fn all_roots_are_found_and_a_pole_is_none() {
    let parabola = |x: &Ratio| x.squared() - 4.0;
    let roots = Ratio::roots("x", -10.0, 9.5, parabola).expect("two");
    assert_eq!(
        roots.iter().map(|x| x.value().round()).collect::<Vec<_>>(),
        [-2.0, 2.0]
    );
    assert!(measure::zeros(-1.03, 1.0, |x| 1.0 / x).is_err());
}

#[test]
fn a_table_gives_several_results_and_their_slopes() {
    let (a, b) = (length("a", 3.0, 0.03), length("b", 4.0, 0.08));
    let table = Table::new("hypotenuse", &[&a, &b], |x| {
        vec![x[0].hypot(x[1]), x[0] * x[1]]
    });
    let hypotenuse: Length = table.output(0);
    assert_eq!(hypotenuse.value(), 5.0);
    let expected = ((3.0 / 5.0 * 0.03f64).powi(2) + (4.0 / 5.0 * 0.08f64).powi(2)).sqrt();
    assert!((hypotenuse.plus() - expected).abs() < 1e-8 * expected);
}

#[test]
fn the_working_has_a_line_for_each_named_step() {
    let (c, n) = (length("c", 2.0, 0.0), Rotation::exact(50.0));
    let overall = (Ratio::exact(2.0) * Ratio::exact(4.0)).called("i");
    let working = (c * n / overall).called("v").figure(Kind::Speed).working();
    let symbols: Vec<_> = working.lines.iter().map(|line| line.symbol).collect();
    assert_eq!(symbols, [Some("i"), Some("v")]);
    let Expr::Quotient(_, by) = &working.lines[1].formula else {
        panic!("a quotient")
    };
    assert!(matches!(&**by, Expr::Term(term) if term.symbol == Some("i")));
}

#[test]
fn a_difference_of_figures_counts_what_they_share_once() {
    let (a, b) = (length("a", 3.0, 0.03), length("b", 4.0, 0.08));
    let before = (&a * &b).figure(Kind::Area);
    let same = (length("a", 3.0, 0.03) * length("b", 4.0, 0.08)).figure(Kind::Area);
    let change = difference(&before, &same);
    assert_eq!((change.value(), change.plus()), (0.0, 0.0));
    let now = (length("a", 3.5, 0.03) * &b).figure(Kind::Area);
    let expected = ((0.5 * 0.08f64).powi(2) + 2.0 * (4.0 * 0.03f64).powi(2)).sqrt();
    assert!(close(difference(&before, &now).plus(), expected));
}

#[test]
fn a_limit_within_the_error_is_too_close_to_call() {
    let limit = Length::exact(1.0);
    assert_eq!(length("a", 1.2, 0.1).standing(&limit), Standing::Above);
    assert_eq!(length("a", 0.8, 0.1).standing(&limit), Standing::Below);
    assert_eq!(
        length("a", 0.95, 0.1).standing(&limit),
        Standing::TooCloseToCall
    );
}

#[test]
fn whole_steps_say_when_the_error_reaches_over() {
    let step = Length::exact(0.5);
    let steps = length("a", 1.9, 0.2).steps_up(&step);
    assert_eq!((steps.count, steps.fewest, steps.most), (4.0, 4.0, 5.0));
    assert!(steps.straddles());
    assert!(!length("a", 1.9, 0.05).steps_up(&step).straddles());
}

#[test]
fn a_long_chain_of_sums_does_not_exhaust_the_stack() {
    let mut total = length("start", 0.0, 0.001);
    for i in 0..20_000 {
        total = total + length(&format!("part/{i}"), 0.001, 0.0);
    }
    assert!((total.value() - 20.0).abs() < 1e-9);
    assert!(close(total.plus(), 0.001));
}

proptest! {
    #[test]
    fn the_error_never_shrinks_when_an_entrys_error_grows(
        a in 0.1..10.0f64, b in 0.1..10.0f64, u in 0.0..0.5f64, w in 0.0..0.5f64, more in 0.0..0.5f64,
    ) {
        let result = |u: f64| {
            let (a, b) = (length("a", a, u), length("b", b, w));
            let slope = (&a / &b).atan().sin();
            (&a * slope + &b).plus()
        };
        prop_assert!(result(u + more) >= result(u));
    }

    #[test]
    fn what_is_worked_back_reproduces_the_wish(wish in 5.0..60.0f64) {
        let (c, n, v) = (length("c", 2.0, 0.01), Rotation::exact(50.0), Speed::exact(wish));
        let speed = |i: &Ratio| &c * &n / i;
        let ratio = Ratio::root("i", 1.0, 30.0, |i| speed(i) - &v).expect("within reach");
        prop_assert!(close(speed(&ratio).value(), wish));
    }
}
