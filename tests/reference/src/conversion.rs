//! What the reference checks of the LHD/RHD conversion are computed with.

use buildbook::{Book, Entry, evaluate};
use measure::{Force, Length, Ratio, unit};
use trade::conversion::{
    self, ArmSwing, BallPlace, Bend, Shaft, SpringEye, Steering, Steers, capstan_efficiency,
    foot_force, ground_offset, ideal_outer, kerb_circle, lever_ratio, lever_travel, line_pressure,
    master_travel, matching_lever, other_wheel, other_wheel_in_front, piston_force, push_force,
    route_length, slave_travel, trail,
};

use crate::Inputs;

/// The values named `of` from these inputs: lengths in millimetres, angles in degrees, else SI.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "ideal_outer"
        | "kerb_circle"
        | "ground_offset"
        | "trail"
        | "other_wheel"
        | "other_wheel_in_front" => wheels(of, inputs),
        "push" | "pressure" | "piston_force" | "master_travel" | "lever_ratio" | "foot_force"
        | "slave_travel" => pedals(of, inputs),
        "route" | "capstan" | "lever_travel" | "matching_lever" => cables(of, inputs),
        "steers" => steers(inputs),
        "foot_limit" => foot_limit(inputs),
        _ => linkage(of, inputs),
    }
}

#[expect(
    clippy::unnecessary_wraps,
    reason = "every branch of the table answers so"
)]
fn one(value: f64) -> Result<Vec<f64>, String> {
    Ok(vec![value])
}

/// What is assumed of the foot's greatest force in a sort of vehicle, newton.
fn foot_limit(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let sort = Entry::new(inputs.text("sort")?);
    let found = evaluate(&Book::of("b", [("vehicle/sort".into(), sort)]), None).conversion;
    let assumed = found.found.assumption(&"conversion/foot_limit".into());
    let newtons = assumed.and_then(|text| text.split(' ').next()?.parse().ok());
    one(newtons.ok_or("nothing is assumed")?)
}

fn refuse<T>(found: Result<T, trade::TradeError>) -> Result<T, String> {
    found.map_err(|error| format!("{error:?}"))
}

fn mm(inputs: &Inputs, name: &str) -> Result<Length, String> {
    Ok(Length::of(inputs.number(name)?, &unit::MILLIMETRE))
}

fn degrees(inputs: &Inputs, name: &str) -> Result<Ratio, String> {
    Ok(Ratio::exact(inputs.number(name)?.to_radians()))
}

fn wheels(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "ideal_outer" => {
            let inner = degrees(inputs, "inner")?;
            one(
                ideal_outer(&inner, &mm(inputs, "pivots")?, &mm(inputs, "wheelbase")?)
                    .value()
                    .to_degrees(),
            )
        }
        "kerb_circle" => {
            let outer = degrees(inputs, "outer")?;
            let trail = mm(inputs, "trail").unwrap_or_else(|_| Length::exact(0.0));
            let (wheelbase, offset) = (mm(inputs, "wheelbase")?, mm(inputs, "offset")?);
            let circle = kerb_circle(&outer, &wheelbase, &offset, &trail);
            one(circle.in_unit(&unit::MILLIMETRE))
        }
        "ground_offset" => {
            let (track, pivots) = (mm(inputs, "track")?, mm(inputs, "pivots")?);
            let (radius, lean) = (mm(inputs, "radius")?, degrees(inputs, "inclination")?);
            one(ground_offset(&track, &pivots, &radius, &lean).in_unit(&unit::MILLIMETRE))
        }
        "trail" => {
            let (radius, castor) = (mm(inputs, "radius")?, degrees(inputs, "castor")?);
            one(trail(&radius, &castor).in_unit(&unit::MILLIMETRE))
        }
        "other_wheel_in_front" => {
            let (turned, outward) = (degrees(inputs, "turned")?, degrees(inputs, "outward")?);
            let (pivots, arm) = (mm(inputs, "pivots")?, mm(inputs, "arm")?);
            let lean = ["castor", "inclination"].map(|name| or_upright(inputs, name));
            let lean = lean.each_ref();
            let other = other_wheel_in_front(&turned, &pivots, &arm, &outward, lean);
            one(refuse(other)?.value().to_degrees())
        }
        _ => {
            let turned = degrees(inputs, "turned")?;
            let toe = degrees(inputs, "toe")?;
            let (pivots, arm) = (mm(inputs, "pivots")?, mm(inputs, "arm")?);
            let lean = ["castor", "inclination"].map(|name| or_upright(inputs, name));
            let other = other_wheel(&turned, &pivots, &arm, &toe, lean.each_ref());
            one(refuse(other)?.value().to_degrees())
        }
    }
}

fn pedals(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let force = |name: &str| Ok::<_, String>(Force::exact(inputs.number(name)?));
    match of {
        "push" => {
            let ratio = Ratio::exact(inputs.number("ratio")?);
            one(push_force(&force("foot")?, &ratio, &Ratio::exact(1.0)).value())
        }
        "lever_ratio" => one(refuse(lever_ratio(
            &mm(inputs, "pad_arm")?,
            &mm(inputs, "rod_arm")?,
        ))?
        .value()),
        "pressure" => one(refuse(line_pressure(&force("push")?, &mm(inputs, "bore")?))?.value()),
        "piston_force" => {
            let pressure = refuse(line_pressure(&force("push")?, &mm(inputs, "master")?))?;
            one(piston_force(&pressure, &mm(inputs, "bore")?).value())
        }
        "foot_force" => {
            let bore = mm(inputs, "bore")?;
            let pressure = refuse(line_pressure(&force("push")?, &bore))?;
            let (ratio, servo) = (
                Ratio::exact(inputs.number("ratio")?),
                Ratio::exact(inputs.number("servo")?),
            );
            one(refuse(foot_force(&pressure, &bore, &ratio, &servo))?.value())
        }
        "slave_travel" => {
            let travel = slave_travel(
                &mm(inputs, "stroke")?,
                &mm(inputs, "master")?,
                &mm(inputs, "slave")?,
            );
            one(refuse(travel)?.in_unit(&unit::MILLIMETRE))
        }
        _ => {
            let (bore, travel) = (mm(inputs, "bore")?, mm(inputs, "travel")?);
            let pistons = vec![(bore, travel); inputs.count("pistons")? as usize];
            one(master_travel(&mm(inputs, "master")?, &pistons).in_unit(&unit::MILLIMETRE))
        }
    }
}

fn cables(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let bends = || -> Result<Vec<Bend>, String> {
        let (radii, angles) = (inputs.numbers("radii")?, inputs.numbers("angles")?);
        let bend = |(radius, angle): (&f64, &f64)| Bend {
            radius: Length::of(*radius, &unit::MILLIMETRE),
            angle: Ratio::exact(angle.to_radians()),
        };
        Ok(radii.iter().zip(&angles).map(bend).collect())
    };
    match of {
        "route" => {
            let straights: Vec<Length> = inputs
                .numbers("straights")?
                .iter()
                .map(|x| Length::of(*x, &unit::MILLIMETRE))
                .collect();
            one(route_length(&straights, &bends()?).in_unit(&unit::MILLIMETRE))
        }
        "capstan" => {
            let friction = Ratio::exact(inputs.number("friction")?);
            one(refuse(capstan_efficiency(&friction, &bends()?))?.value())
        }
        "lever_travel" => one(
            lever_travel(&mm(inputs, "arm")?, &degrees(inputs, "swing")?)
                .in_unit(&unit::MILLIMETRE),
        ),
        _ => {
            let arm = refuse(matching_lever(
                &mm(inputs, "travel")?,
                &degrees(inputs, "swing")?,
            ))?;
            one(arm.in_unit(&unit::MILLIMETRE))
        }
    }
}

/// One for true, nothing for not at all, minus one for backwards.
fn steers(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let swing = match inputs.text("arm_swings")? {
        "forward" => ArmSwing::Forward,
        "backward" => ArmSwing::Backward,
        "left" => ArmSwing::Left,
        "right" => ArmSwing::Right,
        other => return Err(format!("no swing is called `{other}`")),
    };
    let ball = match inputs.text("ball")? {
        "front" => BallPlace::Front,
        "behind" => BallPlace::Behind,
        "left" => BallPlace::LeftOfPin,
        "right" => BallPlace::RightOfPin,
        other => return Err(format!("no place is called `{other}`")),
    };
    one(match conversion::steers(swing, ball) {
        Steers::True => 1.0,
        Steers::NotAtAll => 0.0,
        Steers::Backwards => -1.0,
    })
}

fn steering(inputs: &Inputs) -> Result<Steering, String> {
    let shaft = match inputs.text("shaft")? {
        "across" => Shaft::Across,
        "along" => Shaft::Along,
        "upright" => Shaft::Upright,
        "rack" => Shaft::Rack,
        other => return Err(format!("no shaft lies `{other}`")),
    };
    let fixed_eye = match inputs.text("fixed_eye")? {
        "front" => SpringEye::Front,
        "rear" => SpringEye::Rear,
        other => return Err(format!("no eye is called `{other}`")),
    };
    let at = |name: &str| -> Result<Vec<Length>, String> {
        Ok(inputs
            .numbers(name)?
            .iter()
            .map(|x| Length::of(*x, &unit::MILLIMETRE))
            .collect())
    };
    let three = |name: &str| {
        <[Length; 3]>::try_from(at(name)?).map_err(|_| format!("`{name}` has three numbers"))
    };
    let two = |name: &str| {
        <[Length; 2]>::try_from(at(name)?).map_err(|_| format!("`{name}` has two numbers"))
    };
    Ok(Steering {
        shaft,
        box_at: three("box_at")?,
        drop_arm: mm(inputs, "drop_arm")?,
        at_centre: degrees(inputs, "at_centre")?,
        ball: three("ball")?,
        pin: two("pin")?,
        castor: or_upright(inputs, "castor"),
        inclination: or_upright(inputs, "inclination"),
        fixed_eye,
        half_spring: mm(inputs, "half_spring")?,
        seat_above_eye: mm(inputs, "seat_above_eye")?,
    })
}

/// A lean of the king pin; checks of an upright one name none.
fn or_upright(inputs: &Inputs, name: &str) -> Ratio {
    degrees(inputs, name).unwrap_or_else(|_| Ratio::exact(0.0))
}

fn linkage(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let steering = steering(inputs)?;
    match of {
        "drag_link" => one(steering.drag_link().in_unit(&unit::MILLIMETRE)),
        "steer" => one(refuse(steering.steer(&degrees(inputs, "swing")?))?
            .value()
            .to_degrees()),
        "bump_steer" => one(refuse(steering.bump_steer(&mm(inputs, "rise")?))?
            .value()
            .to_degrees()),
        "swing" => one(refuse(steering.swing(&degrees(inputs, "steer")?))?
            .value()
            .to_degrees()),
        "best_drop_arm" => {
            inputs.numbers("between")?;
            one(refuse(steering.best_drop_arm())?.in_unit(&unit::MILLIMETRE))
        }
        "linkage_ratio" => one(refuse(steering.ratio(&degrees(inputs, "at")?))?.value()),
        "best_box_height" => {
            inputs.numbers("between")?;
            one(refuse(steering.best_box_height())?.in_unit(&unit::MILLIMETRE))
        }
        _ => Err(crate::unknown(of)),
    }
}
