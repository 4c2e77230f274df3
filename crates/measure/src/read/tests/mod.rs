//! What the trade types, understood.

mod any_text;
mod doubts;
mod names;
mod slips;

use super::{Ask, EntryProblem, read};
use crate::kind::Kind;
use crate::manner::{Manner, System};
use crate::reading::{Reading, Stated, Tool};

fn metric(kind: Kind) -> Ask {
    Ask::of(kind, &Manner::of(System::Metric))
}

fn understood(text: &str, ask: &Ask) -> Reading {
    read(text, ask).unwrap_or_else(|error| panic!("{text}: {error}"))
}

/// The value in SI of a text in a metric book.
fn si(kind: Kind, text: &str) -> f64 {
    understood(text, &metric(kind)).value
}

fn close(left: f64, right: f64) -> bool {
    (left - right).abs() <= 1e-12 * left.abs().max(right.abs()).max(1e-12)
}

#[test]
fn lengths_are_read_as_the_trade_writes_them() {
    for (text, millimetres) in [
        ("412.5", 412.5),
        ("412,5 mm", 412.5),
        ("412.", 412.0),
        (".5 mm", 0.5),
        ("41.25cm", 412.5),
        ("2 m", 2000.0),
        ("1 250 mm", 1250.0),
        ("1\u{a0}250,5 mm", 1250.5),
        ("1.250,5 mm", 1250.5),
        ("1,250.5 mm", 1250.5),
        ("1,250,000 mm", 1_250_000.0),
        ("5/16 in", 7.9375),
        ("5/16\"", 7.9375),
        ("5⁄16″", 7.9375),
        ("1 1/4\"", 31.75),
        ("1-1/4 in", 31.75),
        ("¾ in", 19.05),
        ("1¾\"", 44.45),
        ("1 ¾ in.", 44.45),
        ("1-¾\"", 44.45),
        ("4'3 1/2\"", 1308.1),
        ("4' 3-1/2\"", 1308.1),
        ("4'-3½\"", 1308.1),
        ("4′3½″", 1308.1),
        ("4’3½”", 1308.1),
        ("4'3½''", 1308.1),
        ("4 ft 3 1/2 in", 1308.1),
        ("4ft3.5in", 1308.1),
        ("4'3", 1295.4),
        ("4'", 1219.2),
        ("6 feet", 1828.8),
        ("0.004\"", 0.1016),
        ("4 thou", 0.1016),
        ("10 thou.", 0.254),
        ("12 mil", 0.3048),
        ("1 yd 2 ft", 1524.0),
        ("50 µm", 0.05),
        ("50 um", 0.05),
        ("50 \u{3bc}m", 0.05),
        ("１２ ｍｍ", 12.0),
        ("1.2e3 mm", 1200.0),
        ("  12   mm  ", 12.0),
        ("1 250 1/4 mm", 1250.25),
    ] {
        let got = si(Kind::Length, text);
        assert!(close(got, millimetres / 1000.0), "{text}: {got}");
    }
}

#[test]
fn weights_are_read_in_parts() {
    for (text, pounds) in [
        ("12 cwt 2 qr 14 lb", 1414.0),
        ("12cwt 2qr 14lb", 1414.0),
        ("2 tons 3 cwt", 4816.0),
        ("1 long ton", 2240.0),
        ("1 short ton", 2000.0),
        ("11 st 4 lb", 158.0),
        ("11 st 4", 158.0),
        ("3 lb 8 oz", 3.5),
        ("1,414 lb", 1414.0),
    ] {
        let got = si(Kind::Mass, text);
        assert!(close(got, pounds * 0.453_592_37), "{text}: {got}");
    }
    assert_eq!(si(Kind::Mass, "1.2 t"), 1200.0);
    assert_eq!(si(Kind::SmallMass, "250"), 0.25);
}

#[test]
fn torque_is_read_in_every_order() {
    let pound_foot = 4.448_221_615_260_5 * 0.3048;
    for text in [
        "26 lb ft",
        "26 lbf·ft",
        "26 ft-lb",
        "26 ft lb",
        "26 lbf ft",
        "26 lb.ft",
        "26 lb-ft",
        "26 ft.lbs",
        "26 LB FT",
        "26 ft*lb",
    ] {
        assert!(close(si(Kind::Torque, text), 26.0 * pound_foot), "{text}");
    }
    for text in ["26 lb in", "26 in-lb", "26 lbf·in"] {
        assert!(
            close(si(Kind::Torque, text), 26.0 * pound_foot / 12.0),
            "{text}"
        );
    }
    for text in ["3.6 kgf m", "3.6 mkp", "3.6 kgm", "3,6 m·kg", "3.6 kg m"] {
        assert!(close(si(Kind::Torque, text), 3.6 * 9.806_65), "{text}");
    }
    for text in [
        "35 Nm",
        "35 N·m",
        "35 N m",
        "35 newton metres",
        "3.5 daNm",
        "35",
    ] {
        assert!(close(si(Kind::Torque, text), 35.0), "{text}");
    }
}

#[test]
fn the_other_quantities_are_read_as_the_trade_writes_them() {
    let pound_force = 4.448_221_615_260_5;
    let psi = pound_force / (0.0254 * 0.0254);
    for (kind, text, expected) in [
        (Kind::SpringRate, "35 N/mm", 35_000.0),
        (Kind::SpringRate, "200 lb/in", 200.0 * pound_force / 0.0254),
        (
            Kind::SpringRate,
            "200 lb per inch",
            200.0 * pound_force / 0.0254,
        ),
        (
            Kind::SpringRate,
            "200 lbs/in.",
            200.0 * pound_force / 0.0254,
        ),
        (Kind::Pressure, "35 psi", 35.0 * psi),
        (Kind::Pressure, "35 lb/sq in", 35.0 * psi),
        (Kind::Pressure, "35 lb per sq. in.", 35.0 * psi),
        (Kind::Pressure, "2.4", 240_000.0),
        (Kind::Pressure, "240 kPa", 240_000.0),
        (Kind::Pressure, "2,4 kgf/cm²", 2.4 * 98_066.5),
        (Kind::Stress, "32 tsi", 32.0 * 2240.0 * psi),
        (Kind::Stress, "32 tons/sq in", 32.0 * 2240.0 * psi),
        (Kind::Stress, "500 MPa", 5e8),
        (Kind::Speed, "50 mph", 50.0 * 1609.344 / 3600.0),
        (Kind::Speed, "50 m.p.h.", 50.0 * 1609.344 / 3600.0),
        (Kind::Speed, "50 miles per hour", 50.0 * 1609.344 / 3600.0),
        (Kind::Speed, "80 km/h", 80.0 / 3.6),
        (Kind::Speed, "80", 80.0 / 3.6),
        (Kind::SurfaceSpeed, "12.7", 12.7),
        (Kind::Rotation, "2400 rpm", 40.0),
        (Kind::Rotation, "2 400 1/min", 40.0),
        (Kind::Rotation, "2400 min⁻¹", 40.0),
        (Kind::Rotation, "2400 r.p.m.", 40.0),
        (Kind::Rotation, "2,400", 40.0),
        (Kind::Power, "74 hp", 74.0 * 550.0 * 0.3048 * pound_force),
        (Kind::Power, "74 bhp", 74.0 * 550.0 * 0.3048 * pound_force),
        (Kind::Power, "75 PS", 75.0 * 735.498_75),
        (Kind::Power, "75 metric hp", 75.0 * 735.498_75),
        (Kind::Power, "55", 55_000.0),
        (Kind::Volume, "1.5 L", 1.5e-3),
        (Kind::Volume, "2 imp gal", 2.0 * 4.546_09e-3),
        (Kind::Volume, "2 US gal", 2.0 * 3.785_411_784e-3),
        (Kind::Volume, "1 US fl. oz.", 29.573_529_562_5e-6),
        (Kind::Volume, "2199 cc", 2199e-6),
        (Kind::Temperature, "20", 293.15),
        (Kind::Temperature, "-5 °C", 268.15),
        (Kind::Temperature, "\u{2212}5°C", 268.15),
        (Kind::Temperature, "68 F", 293.15),
        (Kind::Temperature, "293.15 K", 293.15),
        (Kind::Duration, "1 h 30 min", 5400.0),
        (Kind::Duration, "1h30", 5400.0),
        (Kind::Duration, "90 min", 5400.0),
        (Kind::Duration, "1.5", 5400.0),
        (Kind::Angle, "12.5 deg", 12.5f64.to_radians()),
        (Kind::Angle, "12°30'", 12.5f64.to_radians()),
        (Kind::Angle, "12° 30′ 36″", 12.51f64.to_radians()),
        (Kind::Angle, "12.5", 12.5f64.to_radians()),
        (Kind::Slope, "1 in 40", 0.025),
        (Kind::Slope, "1:40", 0.025),
        (Kind::Slope, "2.5 %", 0.025),
        (Kind::Slope, "2.5", 0.025),
        (Kind::Slope, "45°", 1.0),
        (Kind::Slope, "1/4", 0.25),
        (Kind::Ratio, "4.11 to 1", 4.11),
        (Kind::Percent, "60 per cent", 0.6),
        (Kind::Rotation, "2400/min", 40.0),
        (Kind::Rotation, "2400 per minute", 40.0),
        (Kind::Torque, "26 lb/ft", 26.0 * 0.3048 * pound_force),
        (Kind::Pressure, "35 lb", 35.0 * psi),
        (Kind::Stress, "32 tons", 32.0 * 2240.0 * psi),
        (Kind::Stress, "32 tons per square inch", 32.0 * 2240.0 * psi),
        (Kind::Duration, "1h 30m", 5400.0),
        (Kind::Percent, "45", 0.45),
        (Kind::Percent, "45 %", 0.45),
        (Kind::Ratio, "37/8", 4.625),
        (Kind::Ratio, "4.11:1", 4.11),
        (Kind::Ratio, "85 %", 0.85),
        (Kind::Count, "37", 37.0),
        (Kind::SpreadingRate, "9 m²/L", 9000.0),
        (Kind::SpreadingRate, "9 m2/l", 9000.0),
        (Kind::TurnsPerDistance, "640 turns/km", 0.64),
        (Kind::Density, "1.2 kg/L", 1200.0),
        (Kind::AirDensity, "1.2", 1.2),
        (Kind::Concentration, "420", 420.0),
        (Kind::Flow, "10 cfm", 10.0 * 0.3048f64.powi(3) / 60.0),
    ] {
        let got = si(kind, text);
        assert!(
            close(got, expected),
            "{kind:?} {text}: {got} not {expected}"
        );
    }
}

#[test]
fn gauges_give_the_thickness_of_their_series() {
    for (text, inches) in [
        ("18 SWG", 0.048),
        ("18swg", 0.048),
        ("SWG 18", 0.048),
        ("7/0 SWG", 0.5),
        ("2/0 SWG", 0.348),
        ("0 SWG", 0.324),
        ("6 SWG", 0.192),
        ("50 SWG", 0.001),
        ("16 MSG", 40.0 / 16.0 / 41.82),
    ] {
        assert!(close(si(Kind::Thickness, text), inches * 0.0254), "{text}");
    }
    let american = Ask::of(Kind::Thickness, &Manner::of(System::UnitedStates));
    assert!(close(
        understood("16 ga", &american).value,
        2.5 / 41.82 * 0.0254
    ));
    for text in [
        "2147483647 SWG",
        "2147483647/0 SWG",
        "99999999999999999999 ga",
        "39 ga",
    ] {
        assert_eq!(
            read(text, &american).unwrap_err().why,
            EntryProblem::UnknownGauge
        );
    }
    for text in ["16 gauge", "gauge 16"] {
        assert_eq!(
            read(text, &american).unwrap_err().why,
            EntryProblem::GaugeSeries
        );
    }
    assert_eq!(
        read("51 SWG", &american).unwrap_err().why,
        EntryProblem::UnknownGauge
    );
}

#[test]
fn tolerances_are_read_in_every_form() {
    let mut ask = metric(Kind::Length);
    ask.tool = Some(Tool::Tape);
    for (text, value, plus, minus) in [
        ("412.5 ± 0.5 mm", 412.5, 0.5, 0.5),
        ("412.5 mm ± 0.5", 412.5, 0.5, 0.5),
        ("412.5 mm (± 0.5)", 412.5, 0.5, 0.5),
        ("412.5 (± 0.5) mm", 412.5, 0.5, 0.5),
        ("12' ± 1/8", 3657.6, 3.175, 3.175),
        ("412.5 mm (+0.1 -0.3)", 412.5, 0.1, 0.3),
        ("412.5mm±0.5mm", 412.5, 0.5, 0.5),
        ("(412.5 ± 0.5) mm", 412.5, 0.5, 0.5),
        ("412.5 +/- 0.5", 412.5, 0.5, 0.5),
        ("412.5 +- 0.5", 412.5, 0.5, 0.5),
        ("412,5 +0,1 -0,3", 412.5, 0.1, 0.3),
        ("412.5 +0.1 -0.3 mm", 412.5, 0.1, 0.3),
        ("412.5 mm +0.1/-0.3", 412.5, 0.1, 0.3),
        ("412.5 +0.1, -0.3", 412.5, 0.1, 0.3),
        ("412.5 -0.3 +0.1", 412.5, 0.1, 0.3),
        ("412.5 +0.1 −0", 412.5, 0.1, 0.0),
        ("2 m ± 5 mm", 2000.0, 5.0, 5.0),
        ("400 ± 2 %", 400.0, 8.0, 8.0),
        ("400 mm +1% -2%", 400.0, 4.0, 8.0),
        ("4'3 1/2\" ± 1/16\"", 1308.1, 1.5875, 1.5875),
        ("4'3 1/2\" ± 1/16", 1308.1, 1.5875, 1.5875),
        ("16 in ± 1 mm", 406.4, 1.0, 1.0),
        ("412,5 ± 0,250", 412.5, 0.25, 0.25),
        ("412,5 ± 1,250", 412.5, 1.25, 1.25),
    ] {
        let reading = understood(text, &ask);
        assert!(close(reading.value, value / 1000.0), "{text}: {reading:?}");
        assert!(
            close(reading.plus, plus / 1000.0) && close(reading.minus, minus / 1000.0),
            "{text}: {reading:?}"
        );
        assert_eq!(reading.stated, Stated::Typed, "{text}");
        assert_eq!(reading.ambiguous, None, "{text}");
    }
    let temperature = understood("68 ± 9 °F", &metric(Kind::Temperature));
    assert!(close(temperature.value, 293.15) && close(temperature.plus, 5.0));
    let points = understood("45 ± 2 %", &metric(Kind::Percent));
    assert!(close(points.value, 0.45) && close(points.plus, 0.02));
    let share = understood("4.11 ± 2 %", &metric(Kind::Ratio));
    assert!(close(share.value, 4.11) && close(share.plus, 0.0822));
    let slope = understood("45° ± 1°", &metric(Kind::Slope));
    assert!(
        close(slope.plus, 46f64.to_radians().tan() - 1.0)
            && close(slope.minus, 1.0 - 44f64.to_radians().tan())
    );
}

#[test]
fn a_blank_tolerance_is_the_usual_error_of_the_tool() {
    let mut ask = metric(Kind::Length);
    assert_eq!(understood("400", &ask).stated, Stated::Exact);
    for (tool, millimetres) in [
        (Tool::Tape, 1.0),
        (Tool::Rule, 0.5),
        (Tool::Trammel, 0.3),
        (Tool::CentrePunch, 0.3),
        (Tool::Caliper, 0.05),
        (Tool::Micrometer, 0.01),
        (Tool::DataSheet, 20.0),
    ] {
        ask.tool = Some(tool);
        let reading = understood("400", &ask);
        assert!(
            close(reading.plus, millimetres / 1000.0) && reading.plus == reading.minus,
            "{tool:?}"
        );
        assert_eq!(reading.stated, Stated::Assumed);
        assert_eq!(understood("400 exact", &ask).stated, Stated::Exact);
        assert_eq!(understood("exact 400 mm", &ask).plus, 0.0);
    }
}

#[test]
fn a_ratio_of_counted_teeth_is_exact_and_a_printed_one_is_not() {
    let mut ask = metric(Kind::Ratio);
    ask.tool = Some(Tool::Within(0.005));
    for (text, stated) in [
        ("41/8", Stated::Exact),
        ("41:8", Stated::Exact),
        ("4.11", Stated::Assumed),
        ("4.11:1", Stated::Assumed),
        ("41/8 ± 0.1", Stated::Typed),
    ] {
        let reading = read(text, &ask).unwrap();
        assert_eq!(reading.stated, stated, "{text}");
    }
}
