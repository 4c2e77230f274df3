//! What worked-back answers and limits must hold for any vehicle.

use measure::{
    Acceleration, Area, Density, Kind, Length, Mass, Ratio, Reading, Rotation, Speed, Stated,
    Torque, unit,
};
use proptest::prelude::*;

use super::*;

fn entry(key: &'static str, value: f64, off: f64) -> Ratio {
    let reading = Reading {
        plus: off,
        minus: off,
        stated: Stated::Typed,
        ..Reading::exact(value, &unit::ONE)
    };
    Ratio::entry(key, "x", Kind::Ratio, &reading)
}

fn lorry(axle: f64) -> (Pull, TorqueCurve, Resistance, EngineLimits) {
    let points: Vec<_> = [
        (800.0, 214.0),
        (1600.0, 255.0),
        (2400.0, 243.0),
        (3600.0, 181.0),
    ]
    .map(|(rpm, torque)| (Rotation::exact(rpm / 60.0), Torque::exact(torque)))
    .to_vec();
    let pull = Pull {
        overall: Ratio::exact(axle),
        efficiency: Ratio::exact(0.9),
        circumference: Length::exact(2.412),
    };
    let resistance = Resistance {
        mass: Mass::exact(5200.0),
        rolling: entry("rolling", 0.018, 0.003),
        air: Density::exact(1.225),
        drag_coefficient: Ratio::exact(0.8),
        frontal_area: Area::exact(4.6),
    };
    let limits = EngineLimits {
        lowest: Rotation::exact(800.0 / 60.0),
        highest: Rotation::exact(60.0),
        piston: None,
    };
    (
        pull,
        TorqueCurve::through(&points).unwrap(),
        resistance,
        limits,
    )
}

#[test]
fn power_limits_a_tall_axle_and_revs_a_short_one() {
    for (axle, governs) in [(3.4, limit::POWER), (6.2, limit::REVS)] {
        let (pull, curve, resistance, limits) = lorry(axle);
        let top = top_speed(&pull, &curve, &resistance, &limits).unwrap();
        assert_eq!(top.governing(), Some(governs), "{axle}");
    }
}

#[test]
fn at_a_top_speed_by_power_effort_equals_road_load_and_more_rolling_lowers_it() {
    let (pull, curve, resistance, limits) = lorry(3.4);
    let top = top_speed(&pull, &curve, &resistance, &limits).unwrap();
    let left = pull.effort(&curve, &top) - resistance.at(&top);
    assert!(left.value().abs() < 1e-6 * resistance.at(&top).value());
    assert!(top.figure(Kind::Speed).slope("rolling") < 0.0);
    assert!(top.plus() > 0.0);
}

#[test]
fn a_gear_too_tall_to_hold_the_level_has_no_top_speed() {
    let (pull, curve, resistance, limits) = lorry(0.9);
    assert!(top_speed(&pull, &curve, &resistance, &limits).is_none());
}

#[test]
fn the_slope_by_central_difference_is_the_slope_of_the_crossing() {
    let (pull, curve, resistance, limits) = lorry(3.4);
    let top = |rolling: f64| {
        let rolling = Ratio::exact(rolling);
        top_speed(
            &pull,
            &curve,
            &Resistance {
                rolling,
                ..resistance.clone()
            },
            &limits,
        )
        .unwrap()
        .value()
    };
    let slope = (top(0.01801) - top(0.01799)) / 0.00002;
    let found = top_speed(&pull, &curve, &resistance, &limits)
        .unwrap()
        .figure(Kind::Speed)
        .slope("rolling");
    assert!((found / slope - 1.0).abs() < 1e-3, "{found} beside {slope}");
}

#[test]
fn front_drive_climbs_less_than_rear_drive_and_both_axles_most() {
    let stance = Stance {
        wheelbase: Length::exact(3.15),
        height: Length::exact(0.9),
        rear_share: Ratio::exact(0.5),
    };
    let slope = |driven| {
        let at_rest = Acceleration::exact(0.0);
        grip_slope(
            &Ratio::exact(0.5),
            &Ratio::exact(0.015),
            &stance,
            driven,
            &at_rest,
        )
        .unwrap()
        .value()
    };
    assert!(slope(Driven::Front) < slope(Driven::Rear));
    assert!(slope(Driven::Rear) < slope(Driven::All));
}

#[test]
fn a_worked_back_axle_climbs_the_wanted_hill() {
    let (pull, curve, resistance, limits) = lorry(6.0);
    let (train, gear) = (Train::of_axle(Ratio::exact(1.0)), Ratio::exact(5.87));
    for wanted in [0.12, 0.2, 0.28] {
        let wanted = Ratio::exact(wanted);
        let engaged = (&train, &gear, &pull.efficiency);
        let axle = axle_for_hill(
            &wanted,
            engaged,
            &pull.circumference,
            &curve,
            &resistance,
            limits.range(),
        )
        .unwrap();
        let pull = Pull {
            overall: train.with_axle(axle.clone()).overall(&gear),
            ..pull.clone()
        };
        let hill = steepest_hill(&pull, &curve, &resistance, limits.range()).unwrap();
        assert!(
            (hill.slope.value() / wanted.value() - 1.0).abs() < 1e-6,
            "{axle:?}"
        );
        assert!(axle.figure(Kind::Ratio).slope("rolling") > 0.0);
    }
}

proptest! {
    #[test]
    fn speed_and_engine_speed_turn_round(c in 1.2f64..3.5, rpm in 500.0f64..7000.0, i in 2.0f64..60.0) {
        let (c, i) = (Length::exact(c), Ratio::exact(i));
        let v = road_speed(&c, &Rotation::exact(rpm / 60.0), &i);
        prop_assert!((engine_speed(&c, &v, &i).value() * 60.0 / rpm - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_worked_back_axle_gives_the_wanted_engine_speed(
        c in 1.2f64..3.5, v in 5.0f64..40.0, rpm in 800.0f64..6000.0, gear in 0.6f64..6.0,
    ) {
        let (c, v, n, gear) = (Length::exact(c), Speed::exact(v), Rotation::exact(rpm / 60.0), Ratio::exact(gear));
        let train = Train::of_axle(axle_for_speed(&c, &v, &n, &gear));
        prop_assert!((engine_speed(&c, &v, &train.overall(&gear)).value() * 60.0 / rpm - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_worked_back_axle_gives_the_wanted_force(force in 500.0f64..40e3, torque in 50.0f64..500.0, gear in 0.6f64..7.0) {
        let (torque, gear, c) = (Torque::exact(torque), Ratio::exact(gear), Length::exact(2.4));
        let (wanted, efficiency) = (measure::Force::exact(force), Ratio::exact(0.85));
        let axle = axle_for_force(&wanted, &torque, &gear, &efficiency, &c);
        let found = tractive_effort(&torque, &Train::of_axle(axle).overall(&gear), &efficiency, &c);
        prop_assert!((found.value() / force - 1.0).abs() < 1e-12);
    }

    #[test]
    fn the_doubt_never_shrinks_when_an_entry_is_known_less_well(off in 0.0001f64..0.5, more in 0.0001f64..0.5) {
        let c = Length::exact(2.0);
        let doubt = |off| road_speed(&c, &Rotation::exact(50.0), &entry("axle", 4.1, off)).plus();
        prop_assert!(doubt(off + more) >= doubt(off));
    }

    #[test]
    fn thin_or_hot_air_never_helps_a_petrol_engine(altitude in 0.0f64..4000.0, higher in 1.0f64..1000.0, celsius in -10.0f64..35.0) {
        let state = Rating::Din.state();
        let share = |altitude: f64, celsius: f64| {
            let temperature = measure::Temperature::exact(celsius + 273.15);
            engine_air_factor(Breathing::Spark, &air_pressure(&Length::exact(altitude)), &temperature, &state).value()
        };
        prop_assert!(share(altitude + higher, celsius) < share(altitude, celsius));
        prop_assert!(share(altitude, celsius + 5.0) < share(altitude, celsius));
    }
}
