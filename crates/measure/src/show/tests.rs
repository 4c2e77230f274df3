//! Figures as they are written.

use proptest::prelude::*;

use super::{Shown, show, show_exact, show_working, shown, shown_no_finer};
use crate::kind::Kind;
use crate::manner::{Manner, System};
use crate::mark::Mark;
use crate::read::{Ask, read};
use crate::reading::{Reading, Stated};
use crate::unit::{self, Unit};
use crate::{Figure, Length, Ratio, Rotation, Temperature, difference};

fn plain(shown: &Shown) -> String {
    shown.to_string().replace(['\u{a0}', '\u{202f}'], " ")
}

/// A value with its ± in this very unit, as a metric book with a point shows it.
fn written(value: f64, plus: f64, minus: f64, unit: &'static Unit) -> String {
    let step = |x: f64| x * unit.factor;
    plain(&shown(
        unit.to_si(value),
        step(plus),
        step(minus),
        unit,
        &Manner::of(System::Metric),
    ))
}

#[test]
fn what_remains_of_a_reading_is_no_finer_than_the_reading() {
    let mm = |value: f64, error: f64| {
        let within = (error * 1e-3, error * 1e-3);
        let manner = Manner::of(System::Metric);
        plain(&shown_no_finer(
            value * 1e-3,
            within,
            &unit::MILLIMETRE,
            &manner,
        ))
    };
    for (value, error, text) in [
        (-0.002, 0.5, "0.0 mm"),
        (-0.06, 0.5, "−0.1 mm"),
        (0.34, 0.5, "0.3 mm"),
        (0.34, 2.0, "0 mm"),
        (10.27, 0.14, "10.27 mm"),
    ] {
        assert_eq!(mm(value, error), text);
    }
}

#[test]
fn a_value_is_rounded_to_what_its_error_supports() {
    for (value, error, text) in [
        (412.5, 0.5, "412.5 ± 0.5 mm"),
        (412.5234, 0.48, "412.5 ± 0.5 mm"),
        (412.5234, 0.14, "412.52 ± 0.14 mm"),
        (412.5234, 0.148, "412.52 ± 0.15 mm"),
        (412.5234, 0.96, "412.5 ± 1.0 mm"),
        (412.5234, 0.196, "412.52 ± 0.20 mm"),
        (412.5234, 1.0, "412.5 ± 1.0 mm"),
        (412.5234, 2.0, "413 ± 2 mm"),
        (412.5234, 23.0, "410 ± 20 mm"),
        (12_345.6, 234.0, "12 300 ± 200 mm"),
        (1234.6, 2.4, "1235 ± 2 mm"),
        (45.0, 200.0, "50 ± 200 mm"),
        (0.0, 0.3, "0.0 ± 0.3 mm"),
        (-0.04, 0.3, "−0.04 ± 0.3 mm"),
        (-12.34, 0.3, "−12.3 ± 0.3 mm"),
        (1.0, 0.001, "1.0000 ± 0.0010 mm"),
    ] {
        assert_eq!(written(value, error, error, &unit::MILLIMETRE), text);
    }
}

#[test]
fn sides_that_differ_are_shown_apart() {
    assert_eq!(
        written(412.5, 0.1, 0.3, &unit::MILLIMETRE),
        "412.50 +0.10 −0.30 mm"
    );
    assert_eq!(
        written(412.5, 0.2, 0.3, &unit::MILLIMETRE),
        "412.5 +0.2 −0.3 mm"
    );
    assert_eq!(
        written(412.5, 0.2, 0.0, &unit::MILLIMETRE),
        "412.5 +0.2 −0.0 mm"
    );
    assert_eq!(
        written(412.5, 0.301, 0.299, &unit::MILLIMETRE),
        "412.5 ± 0.3 mm"
    );
    assert_eq!(
        written(412.0, 0.02, 3.0, &unit::MILLIMETRE),
        "412.0 +0.0 −3.0 mm"
    );
}

#[test]
fn an_exact_result_that_never_ends_is_cut_to_five_figures() {
    let manner = Manner::of(System::Imperial);
    for (si, kind, text) in [
        (41.0 / 9.0, Kind::Ratio, "4.5556"),
        (4.625, Kind::Ratio, "4.625"),
        (0.000_937, Kind::Thickness, "0.03689\u{a0}in"),
    ] {
        assert_eq!(show(&Figure::exact(si, kind), &manner).to_string(), text);
    }
}

#[test]
fn what_is_itself_an_error_has_the_figures_of_one() {
    // One figure, two where it begins with 1: as JCGM 100, 7.2.6, would have an uncertainty.
    for (newton_metres, said) in [
        (3.145_5, "3"),
        (1.355_8, "1.4"),
        (14.21, "14"),
        (0.37, "0.4"),
    ] {
        let error = Figure::exact(newton_metres, Kind::TorqueError);
        assert_eq!(
            show(&error, &Manner::default()).to_string(),
            format!("{said}\u{a0}N·m")
        );
    }
}

#[test]
fn an_exact_conversion_of_what_no_instrument_reads_so_finely_is_cut_to_a_thousandth() {
    // 1 lbf·ft is 1.3558179483314004 N·m and 1 kgf 9.80665 N by definition.
    let manner = Manner::default();
    let shown = |si: f64, kind: Kind| show(&Figure::exact(si, kind), &manner).value;
    for (pound_feet, said) in [
        (58.0, "78.6"),
        (75.0, "101.7"),
        (26.0, "35.25"),
        (120.0, "162.7"),
        (1000.0, "1356"),
        (0.5, "0.678"),
    ] {
        let si = pound_feet * 1.355_817_948_331_400_4;
        assert_eq!(shown(si, Kind::Torque), said, "{pound_feet} lbf·ft");
        let back: f64 = said.parse().expect("a number");
        assert!((back - si).abs() <= 1e-3 * si);
    }
    // What ends within five figures stands as it is: typed so, or a conversion that comes out.
    for (si, said) in [(45.0, "45"), (101.69, "101.69"), (0.125, "0.125")] {
        assert_eq!(shown(si, Kind::Torque), said);
    }
    assert_eq!(shown(3.7 * 9.806_65, Kind::Force), "36.28");
    // 70 km/h: 1 mile is 1609.344 m by definition.
    let speed = Figure::exact(70.0 / 3.6, Kind::Speed);
    assert_eq!(show(&speed, &Manner::of(System::Imperial)).value, "43.5");
    // 500 km are 310.685 596... miles.
    let distance = Figure::exact(500_000.0, Kind::Distance);
    assert_eq!(
        show(&distance, &Manner::of(System::Imperial)).value,
        "310.7"
    );
    // A length is read finer than that, and a ratio of teeth is counted: they keep their five figures.
    let length = show(
        &Figure::exact(3.048_5, Kind::Length),
        &Manner::of(System::Imperial),
    );
    assert_eq!(length.value, "120.02");
    assert_eq!(shown(41.0 / 9.0, Kind::Ratio), "4.5556");
}

#[test]
fn exact_values_show_the_figures_they_have() {
    for (value, unit, text) in [
        (37.0, &unit::ONE, "37"),
        (4.625, &unit::ONE, "4.625"),
        (41.0 / 9.0, &unit::ONE, "4.555556"),
        (412.5, &unit::MILLIMETRE, "412.5 mm"),
        (123_456_789.0, &unit::MILLIMETRE, "123 456 789 mm"),
        (1234.0, &unit::ONE, "1234"),
        (0.000_123_4, &unit::ONE, "0.0001234"),
        (12.5, &unit::DEGREE, "12.5°"),
        (45.0, &unit::PERCENT, "45 %"),
        (0.0, &unit::ONE, "0"),
        (1.5e13, &unit::ONE, "1.5e13"),
        (1.5e-9, &unit::ONE, "1.5e−9"),
        (f64::NAN, &unit::ONE, "—"),
    ] {
        assert_eq!(written(value, 0.0, 0.0, unit), text);
    }
    assert!(show_exact(1.0, &unit::ONE, &Manner::default()).exact);
    assert!(!shown(1.0, 0.1, 0.1, &unit::ONE, &Manner::default()).exact);
}

#[test]
fn a_change_of_temperature_is_no_temperature() {
    let at = |key: &'static str, celsius: f64| {
        let reading = Reading {
            unit: &unit::CELSIUS,
            ..reading(celsius + 273.15, 1.0)
        };
        Temperature::entry(key, key, Kind::Temperature, &reading).figure(Kind::Temperature)
    };
    let change = difference(&at("before", 12.0), &at("now", 20.0));
    let written = |system| plain(&show(&change, &Manner::of(system)));
    // 1.4 = sqrt(1^2 + 1^2), 8 K = 14.4 °F (NIST SP 811, B.8).
    assert_eq!(written(System::Metric), "8.0 ± 1.4 °C");
    assert_eq!(written(System::UnitedStates), "14 ± 3 °F");
}

#[test]
fn a_comma_book_writes_commas_and_thin_spaces() {
    let manner = Manner {
        mark: Mark::Comma,
        ..Manner::default()
    };
    let shown = shown(12.345_6, 0.000_3, 0.000_3, &unit::MILLIMETRE, &manner);
    assert_eq!(shown.to_string(), "12\u{202f}345,6\u{a0}±\u{a0}0,3\u{a0}mm");
    assert_eq!(shown.without_error(), "12\u{202f}345,6\u{a0}mm");
}

#[test]
fn inches_are_shown_in_fractions_as_fine_as_the_error() {
    let manner = Manner {
        fractions: true,
        ..Manner::of(System::Imperial)
    };
    let inches = |value: f64, error: f64| {
        plain(&shown(
            value * 0.0254,
            error * 0.0254,
            error * 0.0254,
            &unit::INCH,
            &manner,
        ))
    };
    assert_eq!(inches(4.3125, 0.0), "4 5/16 in");
    assert_eq!(inches(0.75, 0.0), "3/4 in");
    assert_eq!(inches(-1.5, 0.0), "−1 1/2 in");
    assert_eq!(inches(6.0, 0.0), "6 in");
    assert_eq!(inches(4.3, 0.0), "4.3 in");
    assert_eq!(inches(16.240, 0.04), "16 1/4 ± 0.04 in");
    assert_eq!(inches(16.240, 0.02), "16 1/4 ± 0.02 in");
    assert_eq!(inches(16.230, 0.01), "16 15/64 ± 0.010 in");
    assert_eq!(inches(16.2401, 0.0004), "16.2401 ± 0.0004 in");
}

fn reading(value: f64, plus: f64) -> Reading {
    Reading {
        plus,
        minus: plus,
        stated: Stated::Typed,
        ..Reading::exact(value, &unit::METRE)
    }
}

#[test]
fn a_working_shows_symbols_numbers_and_result() {
    let c = Length::entry(
        "tyre/roll_out",
        "C",
        Kind::Length,
        &reading(1.987_38, 0.005),
    );
    let n = Rotation::entry(
        "n",
        "n",
        Kind::Rotation,
        &Reading::exact(1000.0 / 60.0, &unit::REVOLUTION_PER_MINUTE),
    );
    let gear = Ratio::entry("g", "i₄", Kind::Ratio, &Reading::exact(1.0, &unit::ONE));
    let final_drive = Ratio::entry("f", "i_f", Kind::Ratio, &Reading::exact(4.11, &unit::ONE));
    let overall = (&gear * &final_drive).called("i");
    let speed = (&c * &n / &overall).called("v").of_kind(Kind::Speed);
    let lines = show_working(&speed.figure(Kind::Speed).working(), &Manner::default());
    assert_eq!(lines.len(), 2);
    assert_eq!(lines[0].formula, "i₄ * i_f");
    assert_eq!(lines[0].numbers, "1 * 4.11");
    assert_eq!(plain(&lines[0].result), "4.11");
    assert_eq!(lines[1].formula, "C * n / i");
    assert_eq!(
        lines[1].numbers.replace('\u{a0}', " "),
        "(1987.38 mm) * (1000 rpm) / 4.11"
    );
    assert_eq!(plain(&lines[1].result), "29.01285 km/h");
}

#[test]
fn a_working_brackets_what_binds_less() {
    let a = || Ratio::entry("a", "a", Kind::Ratio, &Reading::exact(2.0, &unit::ONE));
    let b = || Ratio::entry("b", "b", Kind::Ratio, &Reading::exact(3.0, &unit::ONE));
    for (quantity, text) in [
        ((a() + b()) * a(), "(a + b) * a"),
        (a() / (b() * a()), "a / (b * a)"),
        (a() - (b() - a()), "a − (b − a)"),
        ((a() + b()).squared(), "(a + b)^2"),
        ((a() * b()).cubed(), "(a * b)^3"),
        (-a().squared(), "−(a^2)"),
        ((a() * b()).powf(-1.5), "(a * b)^(−1.5)"),
        ((a() * b()).powf(0.5), "sqrt(a * b)"),
        (a().exp() * b(), "exp(a) * b"),
    ] {
        let lines = show_working(
            &quantity.called("x").figure(Kind::Ratio).working(),
            &Manner::default(),
        );
        assert_eq!(lines[0].formula, text);
    }
}

proptest! {
    #[test]
    fn what_is_shown_is_read_as_the_same(
        kind in 0..Kind::all().len(),
        system in 0..3usize,
        comma in any::<bool>(),
        fractions in any::<bool>(),
        figures in 0.1..1e4f64,
        plus in 1e-4..0.5f64,
        minus in 1e-4..0.5f64,
        even in any::<bool>(),
    ) {
        let kind = Kind::all().nth(kind).unwrap();
        let units = [System::Metric, System::Imperial, System::UnitedStates][system];
        let mark = if comma { Mark::Comma } else { Mark::Point };
        let manner = Manner { mark, fractions, ..Manner::of(units) };
        let unit = manner.unit(kind);
        let minus = if even { plus } else { minus };
        let step = figures * unit.factor;
        let (si, plus, minus) = (unit.to_si(figures), plus * step, minus * step);
        let text = shown(si, plus, minus, unit, &manner).to_string();
        let ask = Ask { whole: false, ..Ask::of(kind, &manner) };
        let back = read(&text, &ask);
        prop_assert!(back.is_ok(), "{text}: {back:?}");
        let back = back.unwrap();
        prop_assert!(back.ambiguous.is_none(), "{text}: {back:?}");
        prop_assert!((back.value - si).abs() <= plus.max(minus), "{text}: {back:?}");
        let widest = plus.max(minus);
        prop_assert!((back.plus - plus).abs() <= 0.26 * widest, "{text}: {back:?} {plus}");
        prop_assert!((back.minus - minus).abs() <= 0.26 * widest, "{text}: {back:?} {minus}");

        let exact = show_exact(si, unit, &Manner { fractions: false, ..manner.clone() }).to_string();
        let back = read(&exact, &ask).unwrap();
        prop_assert!((back.value - si).abs() <= 1e-6 * step, "{exact}: {back:?} {si}");
    }

    #[test]
    fn any_number_can_be_shown(value in any::<f64>(), plus in any::<f64>(), minus in any::<f64>(), fractions in any::<bool>()) {
        let manner = Manner { fractions, ..Manner::of(System::Imperial) };
        let shown = shown(value, plus.abs(), minus.abs(), &unit::INCH, &manner);
        prop_assert!(!shown.value.is_empty() && shown.value.len() < 60, "{shown}");
    }
}
