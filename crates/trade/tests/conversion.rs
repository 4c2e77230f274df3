//! The driving position on the other side: steering, pedals, cables.

use measure::{Force, Length, Ratio, unit};
use proptest::prelude::*;
use trade::conversion::*;

fn mm(value: f64) -> Length {
    Length::of(value, &unit::MILLIMETRE)
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within
}

/// A lorry's linkage on the right side: box behind the axle, drop arm hanging, link running forward to the arm's ball.
fn lorry() -> Steering {
    Steering {
        castor: Ratio::exact(0.0),
        inclination: Ratio::exact(0.0),
        shaft: Shaft::Across,
        box_at: [mm(-900.0), mm(-700.0), mm(700.0)],
        drop_arm: mm(200.0),
        at_centre: Ratio::exact(0.0),
        ball: [mm(10.0), mm(-640.0), mm(505.0)],
        pin: [mm(0.0), mm(-820.0)],
        fixed_eye: SpringEye::Front,
        half_spring: mm(600.0),
        seat_above_eye: mm(30.0),
    }
}

#[test]
fn an_arm_in_front_of_the_pin_must_be_pulled_to_the_side_that_is_steered() {
    assert_eq!(steers(ArmSwing::Right, BallPlace::Front), Steers::True);
    assert_eq!(steers(ArmSwing::Left, BallPlace::Front), Steers::Backwards);
    // An arm behind the axle moves the other way.
    assert_eq!(steers(ArmSwing::Left, BallPlace::Behind), Steers::True);
    // A side ball on the right of its pin: pulled back, the wheel turns right.
    assert_eq!(
        steers(ArmSwing::Backward, BallPlace::RightOfPin),
        Steers::True
    );
    assert_eq!(
        steers(ArmSwing::Forward, BallPlace::RightOfPin),
        Steers::Backwards
    );
    // The same box moved across to a left pin with its ball on the left must swing the other way.
    assert_eq!(
        steers(ArmSwing::Forward, BallPlace::LeftOfPin),
        Steers::True
    );
    assert_eq!(
        steers(ArmSwing::Forward, BallPlace::Front),
        Steers::NotAtAll
    );
}

#[test]
fn the_traced_drag_link_is_the_linkages() {
    let steering = lorry();
    assert!(near(
        steering.drag_link().value(),
        steering.linkage().drag_link(),
        1e-12
    ));
}

#[test]
fn with_box_on_centre_and_axle_at_rest_the_wheel_stands_straight() {
    let steering = lorry();
    assert!(near(
        steering.bump_steer(&mm(0.0)).expect("reaches").value(),
        0.0,
        1e-9
    ));
    assert!(near(
        steering.steer(&Ratio::exact(0.0)).expect("reaches").value(),
        0.0,
        1e-9
    ));
}

#[test]
fn the_best_box_height_takes_the_slope_out_of_bump_steer() {
    let mut steering = lorry();
    let by = steering.best_box_height().expect("within reach");
    let slope = |steering: &Steering| {
        let at = |rise| steering.bump_steer(&mm(rise)).expect("reaches").value();
        (at(5.0) - at(-5.0)).abs()
    };
    let before = slope(&steering);
    steering.box_at[2] = &steering.box_at[2] + by;
    assert!(
        slope(&steering) < 0.05 * before,
        "{} against {before}",
        slope(&steering)
    );
}

#[test]
fn equal_arms_that_stay_parallel_pass_the_swing_on_unchanged() {
    // A drop arm and a steering arm of one length, in one plane, with a link that makes a parallelogram.
    let steering = Steering {
        shaft: Shaft::Upright,
        box_at: [mm(0.0), mm(-500.0), mm(500.0)],
        drop_arm: mm(180.0),
        at_centre: Ratio::exact(0.0),
        ball: [mm(-180.0), mm(300.0), mm(500.0)],
        pin: [mm(0.0), mm(300.0)],
        ..lorry()
    };
    let ratio = steering.ratio(&Ratio::exact(0.0)).expect("reaches").value();
    assert!(near(ratio, 1.0, 1e-6), "{ratio}");
}

#[test]
fn a_track_rod_with_parallel_arms_turns_both_wheels_alike() {
    let upright = Ratio::exact(0.0);
    let other = other_wheel(
        &Ratio::exact(0.4),
        &mm(1400.0),
        &mm(150.0),
        &Ratio::exact(0.0),
        [&upright, &upright],
    )
    .expect("follows");
    assert!(near(other.value(), 0.4, 1e-9));
}

#[test]
fn inward_arms_behind_the_axle_turn_the_inner_wheel_further() {
    let inward = Ratio::exact(0.25);
    let (turned, upright) = (Ratio::exact(0.5), Ratio::exact(0.0));
    let lean = [&upright, &upright];
    let other = other_wheel(&turned, &mm(1400.0), &mm(150.0), &inward, lean).expect("follows");
    assert!(other.value() < 0.5, "{}", other.value());
    assert!(other.value() > 0.3, "{}", other.value());
}

proptest! {
    #[test]
    fn correct_steering_leaves_no_error(inner in 0.05..0.7f64, pivots in 1.0..2.0f64, base in 2.0..4.0f64) {
        let (inner, pivots, base) = (Ratio::exact(inner), Length::exact(pivots), Length::exact(base));
        let outer = ideal_outer(&inner, &pivots, &base);
        prop_assert!(outer.value() < inner.value());
        // Both perpendiculars meet on the line of the rear axle.
        let (ri, ro) = (base.value() / inner.value().tan(), base.value() / outer.value().tan());
        prop_assert!(near(ro - ri, pivots.value(), 1e-9));
    }

    #[test]
    fn what_the_master_displaces_arrives_at_the_wheels(bore in 15.0..30.0f64, wheel in 15.0..40.0f64, travel in 0.5..4.0f64) {
        let stroke = master_travel(&mm(bore), &[(mm(wheel), mm(travel)), (mm(wheel), mm(travel))]);
        prop_assert!(near(stroke.value(), 2.0 * travel / 1000.0 * (wheel / bore).powi(2), 1e-12));
        // Work in is work out: force times travel.
        let push = Force::exact(1500.0);
        let pressure = line_pressure(&push, &mm(bore)).expect("a bore");
        let out = piston_force(&pressure, &mm(wheel)).value() * 2.0 * travel / 1000.0;
        prop_assert!(near(push.value() * stroke.value(), out, 1e-9 * out));
    }

    #[test]
    fn a_lever_matched_to_a_travel_makes_that_travel(travel in 0.005..0.08f64, swing in 0.2..1.5f64) {
        let (travel, swing) = (Length::exact(travel), Ratio::exact(swing));
        let arm = matching_lever(&travel, &swing).expect("a swing");
        prop_assert!(near(lever_travel(&arm, &swing).value(), travel.value(), 1e-12));
    }
}
