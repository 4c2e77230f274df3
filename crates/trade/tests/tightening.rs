//! Torque settings: threads, computed figures, wrenches and order.

use measure::{Force, Length, Ratio, Torque, unit};
use proptest::prelude::*;
use trade::TradeError;
use trade::torque::*;

fn mm(value: f64) -> Length {
    Length::of(value, &unit::MILLIMETRE)
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within
}

fn joint(name: &str, class: &str, friction: f64, bearing: f64, hole: f64) -> Joint {
    let thread = size(name).expect("a standard thread").thread();
    Joint {
        purpose: Purpose::Other,
        grade: grade(class, &thread.major).expect("a class"),
        thread,
        friction: Friction {
            thread: Ratio::exact(friction),
            head: Ratio::exact(friction),
        },
        head: Head {
            bearing: mm(bearing),
            hole: mm(hole),
        },
        shank: None,
        use_of_yield: Ratio::exact(0.9),
        scatter: Scatter::TorqueWrench,
    }
}

#[test]
fn fine_threads_come_to_the_published_figures() {
    // VDI 2230 (2001) as printed in a fastener maker's catalogue: M8x1, M12x1.25, M16x1.5 at 0.12, class 8.8.
    for (name, bearing, hole, clamp, torque, within) in [
        ("M8x1", 11.63, 9.0, 20.2, 26.1, 0.15),
        ("M12x1.25", 16.63, 13.5, 48.0, 90.0, 0.6),
        ("M16x1.5", 22.49, 17.5, 87.6, 218.0, 0.6),
    ] {
        let found = tightening(&joint(name, "8.8", 0.12, bearing, hole)).expect("a figure");
        assert!(
            near(found.clamp.value() / 1000.0, clamp, 0.15),
            "{name}: {:?}",
            found.clamp
        );
        assert!(
            near(found.torque.value(), torque, within),
            "{name}: {:?}",
            found.torque
        );
    }
}

#[test]
fn steering_brakes_and_wheels_take_the_makers_figure_only() {
    for purpose in [Purpose::Steering, Purpose::Brakes, Purpose::Wheels] {
        let asked = Joint {
            purpose,
            ..joint("M10", "8.8", 0.12, 14.63, 11.0)
        };
        assert_eq!(
            tightening(&asked).unwrap_err(),
            TradeError::MakersFigureOnly
        );
    }
}

#[test]
fn an_unknown_class_and_friction_out_of_all_reason_are_refused() {
    assert!(grade("8.9", &mm(10.0)).is_none());
    assert!(grade("9.8", &mm(20.0)).is_none());
    let dry = joint("M10", "8.8", 0.9, 14.63, 11.0);
    assert!(matches!(
        tightening(&dry),
        Err(TradeError::OutOfRange {
            entry: "thread friction",
            ..
        })
    ));
}

#[test]
fn a_thread_is_found_however_it_is_spaced() {
    for (typed, name) in [
        ("m10 x 1.25", "M10x1.25"),
        ("3/8 unf", "3/8-24 UNF"),
        ("2ba", "2 BA"),
        ("M8", "M8"),
        ("1/2 bsf", "1/2 BSF"),
    ] {
        assert_eq!(size(typed).map(|size| size.name), Some(name), "{typed}");
    }
    assert!(size("M7.3").is_none());
}

#[test]
fn an_extension_in_line_lowers_the_setting_and_one_at_a_right_angle_changes_nothing() {
    // A hand-tool maker's leaflet: 20 lbf·ft, 12 in wrench, 3 in in line: 16.
    let wanted = Torque::of(20.0, &unit::POUND_FOOT);
    let (wrench, extension) = (Length::of(12.0, &unit::INCH), Length::of(3.0, &unit::INCH));
    let in_line =
        extension_setting(&wanted, &wrench, &extension, &Ratio::exact(0.0)).expect("a setting");
    assert!(near(in_line.in_unit(&unit::POUND_FOOT), 16.0, 1e-9));
    let square = Ratio::exact(std::f64::consts::FRAC_PI_2);
    let across = extension_setting(&wanted, &wrench, &extension, &square).expect("a setting");
    assert!(near(across.value(), wanted.value(), 1e-9));
}

#[test]
fn a_wrench_beyond_its_range_says_what_it_can_do() {
    let wrench = WrenchClass {
        kind: WrenchKind::Setting,
        lowest: 40.0,
        highest: 200.0,
    };
    assert!(in_range(&Torque::exact(100.0), wrench).is_ok());
    let refused = in_range(&Torque::exact(250.0), wrench);
    assert_eq!(
        refused,
        Err(TradeError::OutOfRange {
            entry: "wrench setting",
            lowest: 40.0,
            highest: 200.0
        })
    );
}

#[test]
fn a_circle_is_tightened_crosswise() {
    assert_eq!(circle_order(4)[..2], [0, 2]);
    assert_eq!(circle_order(6)[..2], [0, 3]);
    for bolts in [3, 4, 5, 6, 8, 10, 12] {
        let mut order = circle_order(bolts);
        order.sort_unstable();
        assert_eq!(order, (0..bolts).collect::<Vec<_>>());
    }
}

#[test]
fn a_rectangle_is_tightened_from_the_middle_outwards() {
    let order = rectangle_order(2, 5);
    assert_eq!(
        {
            let mut middle = order[..2].to_vec();
            middle.sort_unstable();
            middle
        },
        [2, 7]
    );
    let mut corners = order[6..].to_vec();
    corners.sort_unstable();
    assert_eq!(corners, [0, 4, 5, 9]);
}

proptest! {
    #[test]
    fn torque_to_clamp_load_and_back(friction in 0.08..0.2f64, which in 0usize..4) {
        let (name, bearing, hole) = [("M8", 11.63, 9.0), ("M12", 16.63, 13.5), ("3/8-24 UNF", 14.0, 10.0), ("3/8 BSF", 14.0, 10.0)][which];
        let asked = joint(name, "8.8", friction, bearing, hole);
        let found = tightening(&asked).expect("a figure");
        let back = clamp_load_of(&found.torque, &asked);
        prop_assert!(near(back.value(), found.clamp.value(), 1e-9 * found.clamp.value()));
        prop_assert!(found.share_of_yield.value() <= 0.9);
        prop_assert!(Force::value(&found.least_clamp) < found.clamp.value());
    }

    #[test]
    fn an_extension_at_a_right_angle_changes_nothing(figure in 5.0..500.0f64, wrench in 0.1..1.5f64, extension in 0.0..0.5f64) {
        let square = Ratio::exact(std::f64::consts::FRAC_PI_2);
        let setting = extension_setting(&Torque::exact(figure), &Length::exact(wrench), &Length::exact(extension), &square).expect("a setting");
        prop_assert!(near(setting.value(), figure, 1e-9 * figure));
    }

    #[test]
    fn an_extension_gives_the_wanted_torque_by_its_lever(figure in 5.0..500.0f64, wrench in 0.1..1.5f64, extension in 0.0..0.5f64, angle in 0.0..1.5f64) {
        let setting = extension_setting(&Torque::exact(figure), &Length::exact(wrench), &Length::exact(extension), &Ratio::exact(angle)).expect("a setting");
        // The pull on the grip is setting / wrench; its lever about the bolt is what the extension adds straight ahead.
        let at_bolt = setting.value() / wrench * (wrench + extension * angle.cos());
        prop_assert!(near(at_bolt, figure, 1e-9 * figure));
    }

    #[test]
    fn stages_rise_and_end_on_the_figure(figure in 5.0..500.0f64, count in 1usize..6) {
        let figure = Torque::exact(figure);
        let stages = stages(&figure, count);
        prop_assert_eq!(stages.len(), count);
        prop_assert!(stages.windows(2).all(|pair| pair[0].value() < pair[1].value()));
        prop_assert_eq!(stages[count - 1].value(), figure.value());
    }

    #[test]
    fn the_wrench_to_take_is_the_smallest_that_holds_its_class(ranges in prop::collection::vec((1.0..60.0f64, 61.0..400.0f64), 1..6), settings in prop::collection::vec(0.5..500.0f64, 6)) {
        let wrenches: Vec<(WrenchClass, Torque)> = ranges.iter().zip(&settings).map(|((lowest, highest), setting)| {
            (WrenchClass { kind: WrenchKind::Setting, lowest: *lowest, highest: *highest }, Torque::exact(*setting))
        }).collect();
        let taken = wrench_for(&wrenches).expect("one of them");
        let holds = |at: &usize| in_range(&wrenches[*at].1, wrenches[*at].0).is_ok();
        let able: Vec<usize> = (0..wrenches.len()).filter(holds).collect();
        if able.is_empty() {
            prop_assert!(!holds(&taken));
        } else {
            prop_assert!(able.contains(&taken));
            prop_assert!(able.iter().all(|at| wrenches[taken].0.highest <= wrenches[*at].0.highest));
        }
    }
}

#[test]
fn a_thread_is_known_however_a_hand_writes_it() {
    for (written, name) in [
        ("m10", "M10"),
        ("M10 x 1.5", "M10"),
        ("M10×1,25", "M10x1.25"),
        ("3/8\" UNF", "3/8-24 UNF"),
        ("3/8 - 24 unf", "3/8-24 UNF"),
        ("7/8 UNC", "7/8-9 UNC"),
        ("5/16″ bsf", "5/16 BSF"),
        ("2ba", "2 BA"),
        ("1 BA", "1 BA"),
        ("1 BSF", "1 BSF"),
    ] {
        assert_eq!(size(written).map(|size| size.name), Some(name), "{written}");
    }
    for unknown in ["M10x1.4", "M10.5", "3/8", "BSF", "", "x", "20 BA"] {
        assert_eq!(size(unknown), None, "{unknown}");
    }
}

#[test]
fn a_grade_is_known_with_or_without_the_word_before_it() {
    let known = |name: &str| grade(name, &mm(10.0)).map(|grade| grade.name);
    for (written, name) in [
        ("8,8", "8.8"),
        ("Class 10.9", "10.9"),
        ("SAE 5", "grade 5"),
        ("SAE grade 8", "grade 8"),
        ("5", "grade 5"),
        ("Grade R", "R"),
        ("s", "S"),
    ] {
        assert_eq!(known(written), Some(name), "{written}");
    }
    for unknown in ["8.9", "grade", "", "88", "Z"] {
        assert_eq!(known(unknown), None, "{unknown}");
    }
}

#[test]
fn no_two_threads_are_written_alike() {
    for one in sizes() {
        assert_eq!(size(one.name).map(|size| size.name), Some(one.name));
    }
}

#[test]
fn without_a_wrench_none_is_taken_and_where_none_holds_the_nearest_is() {
    assert_eq!(wrench_for(&[]), None);
    let wrench = |lowest, highest, setting| {
        let kind = WrenchKind::Setting;
        let class = WrenchClass {
            kind,
            lowest,
            highest,
        };
        (class, Torque::exact(setting))
    };
    assert_eq!(
        wrench_for(&[wrench(5.0, 50.0, 240.0), wrench(40.0, 200.0, 240.0)]),
        Some(1)
    );
    assert_eq!(
        wrench_for(&[wrench(40.0, 200.0, 4.0), wrench(5.0, 50.0, 4.0)]),
        Some(1)
    );
}
