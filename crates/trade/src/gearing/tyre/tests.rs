//! Every form of designation met on old vehicles and their modern substitutes, and those that are refused.

use proptest::prelude::*;

use super::*;

fn read(text: &str) -> Designation {
    Designation::read(text).unwrap_or_else(|fault| panic!("{text}: {fault}"))
}

#[test]
fn every_form_is_read() {
    use Construction::{Diagonal, Radial};
    use Form::{BeadedEdge, Flotation, HighPressure, Inch, Metric, MetricPlain};
    let forms = [
        ("185/80 R 14", Metric, Radial, 185.0, Some(14.0)),
        ("P205/60R15", Metric, Radial, 205.0, Some(15.0)),
        ("LT235/85R16 120/116R", Metric, Radial, 235.0, Some(16.0)),
        ("185/80-14", Metric, Radial, 185.0, Some(14.0)),
        ("185/80 D 14", Metric, Diagonal, 185.0, Some(14.0)),
        ("195/60 VR 14", Metric, Radial, 195.0, Some(14.0)),
        ("225/70 R 19,5", Metric, Radial, 225.0, Some(19.5)),
        ("185 R 14 C", MetricPlain, Radial, 185.0, Some(14.0)),
        ("165 SR 13", MetricPlain, Radial, 165.0, Some(13.0)),
        ("155-13", MetricPlain, Radial, 155.0, Some(13.0)),
        ("165 x 400", MetricPlain, Radial, 165.0, Some(400.0 / 25.4)),
        ("6.40-13", Inch, Diagonal, 6.40 * 25.4, Some(13.0)),
        ("5.60–15", Inch, Diagonal, 5.60 * 25.4, Some(15.0)),
        ("5,60 x 15", Inch, Diagonal, 5.60 * 25.4, Some(15.0)),
        ("7.50-16 LT", Inch, Diagonal, 7.50 * 25.4, Some(16.0)),
        ("750-16 8PR", Inch, Diagonal, 7.50 * 25.4, Some(16.0)),
        ("7.50 R 16", Inch, Radial, 7.50 * 25.4, Some(16.0)),
        ("9.00 20", Inch, Diagonal, 9.00 * 25.4, Some(20.0)),
        (
            "31x10.50 R 15 LT",
            Flotation,
            Radial,
            10.5 * 25.4,
            Some(15.0),
        ),
        ("31×10,50-15", Flotation, Diagonal, 10.5 * 25.4, Some(15.0)),
        ("820x120", BeadedEdge, Diagonal, 120.0, None),
        ("30 x 3 1/2", BeadedEdge, Diagonal, 3.5 * 25.4, None),
        ("30x3½", BeadedEdge, Diagonal, 3.5 * 25.4, None),
        ("34x7", HighPressure, Diagonal, 7.0 * 25.4, Some(20.0)),
        (
            "34 x 7 12PR",
            HighPressure,
            Diagonal,
            7.0 * 25.4,
            Some(20.0),
        ),
        ("32x6-20", HighPressure, Diagonal, 6.0 * 25.4, Some(20.0)),
        ("36x6", HighPressure, Diagonal, 6.0 * 25.4, Some(24.0)),
        ("150 x 40", MetricPlain, Diagonal, 150.0, Some(400.0 / 25.4)),
        ("12x45", Inch, Diagonal, 120.0, Some(450.0 / 25.4)),
        ("12.4x38", Inch, Diagonal, 12.4 * 25.4, Some(38.0)),
        ("13/80-20", Metric, Radial, 13.0 * 25.4, Some(20.0)),
        ("5.25/5.50-16", Inch, Diagonal, 5.375 * 25.4, Some(16.0)),
        ("5.60/15", Inch, Diagonal, 5.60 * 25.4, Some(15.0)),
        ("5.60/15 85S", Inch, Diagonal, 5.60 * 25.4, Some(15.0)),
        ("7.50/16 8PR", Inch, Diagonal, 7.50 * 25.4, Some(16.0)),
        ("10.0/75-15.3", Metric, Radial, 254.0, Some(15.3)),
        ("11 R 22.5", Inch, Radial, 11.0 * 25.4, Some(22.5)),
        ("12.4-28", Inch, Diagonal, 12.4 * 25.4, Some(28.0)),
        ("12.4/11-36", Inch, Diagonal, 11.7 * 25.4, Some(36.0)),
    ];
    for (text, form, construction, width, rim) in forms {
        let tyre = read(text);
        assert_eq!(
            (tyre.form, tyre.construction),
            (form, construction),
            "{text}"
        );
        assert!(
            (tyre.width_mm - width).abs() < 1e-9,
            "{text}: {}",
            tyre.width_mm
        );
        match (tyre.rim_in(), rim) {
            (Some(found), Some(rim)) => assert!((found - rim).abs() < 1e-9, "{text}: {found}"),
            (found, rim) => assert_eq!(found, rim, "{text}"),
        }
    }
}

#[test]
fn van_and_lorry_tyres_and_service_marks_are_known() {
    assert!(read("185 R 14 C").commercial);
    assert!(read("750-16 8PR").commercial);
    assert!(!read("6.40-13 4PR").commercial);
    let tyre = read("205/65 R 15 94H");
    assert_eq!((tyre.load_index, tyre.speed_symbol), (Some(94), Some('H')));
    let tyre = read("LT235/85R16 120/116R");
    assert_eq!((tyre.load_index, tyre.speed_symbol), (Some(120), Some('R')));
}

#[test]
fn what_stands_for_no_tyre_is_refused_with_the_reason() {
    for (text, fault) in [
        ("", TyreFault::Empty),
        ("   ", TyreFault::Empty),
        ("7.50", TyreFault::NoRim),
        ("185/80 R", TyreFault::NoRim),
        ("R 14", TyreFault::NoWidth),
        ("0/60 R 15", TyreFault::Width),
        ("185/12 R 14", TyreFault::Aspect),
        ("185/80 R 3", TyreFault::Rim),
        ("185/80 R 44", TyreFault::Rim),
        ("E78-14", TyreFault::LetterSize),
        ("FR70-15", TyreFault::LetterSize),
        ("185/80 # 14", TyreFault::Unread { at: 7 }),
    ] {
        assert_eq!(Designation::read(text), Err(fault), "{text}");
    }
}

#[test]
fn a_rule_of_thumb_says_so_and_is_wide() {
    let (listed, thumb) = (
        tyre_diameter(&read("6.40-13")),
        tyre_diameter(&read("6.20-13")),
    );
    assert_eq!(
        (listed.basis, thumb.basis),
        (Basis::Table, Basis::RuleOfThumb)
    );
    assert!(thumb.plus_m / thumb.metres > listed.plus_m / listed.metres);
}

#[test]
fn the_rule_of_thumb_holds_every_listed_size_within_its_own_limits() {
    for text in [
        "5.60-15", "6.40-13", "6.70-15", "5.20-10", "5.90-14", "7.10-15",
    ] {
        let listed = tyre_diameter(&read(text));
        // A hundredth more in width takes the size off the list, and the rule of thumb steps in.
        let (width, rim) = text.split_once('-').unwrap();
        let other = format!("{}-{rim}", width.parse::<f64>().unwrap() + 0.01);
        let thumb = tyre_diameter(&read(&other));
        assert_eq!(thumb.basis, Basis::RuleOfThumb, "{other}");
        assert!(
            (thumb.metres - listed.metres).abs() <= thumb.plus_m.max(thumb.minus_m),
            "{text}"
        );
    }
}

proptest! {
    #[test]
    fn a_metric_tyre_has_two_heights_and_a_rim(width in 100u32..400, aspect in 30u32..100, rim in 10u32..23) {
        let tyre = read(&format!("{width}/{aspect} R {rim}"));
        let expected = f64::from(rim) * 25.4 + 2.0 * f64::from(width) * f64::from(aspect) / 100.0;
        prop_assert!((tyre_diameter(&tyre).metres * 1e3 - expected).abs() < 1e-9);
    }

    #[test]
    fn nothing_typed_stops_the_program(text in "[0-9RXCLTP/., x½-]{0,14}") {
        let _ = Designation::read(&text).map(|tyre| tyre_diameter(&tyre));
    }
}
