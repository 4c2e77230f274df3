//! What the reference checks of torque settings are computed with.

use measure::{Force, Kind, Length, Ratio, Torque, unit};
use trade::torque::{
    Friction, Head, Joint, Purpose, Scatter, Thread, WrenchClass, WrenchKind, circle_order,
    clamp_load_of, extension_setting, flange_face, grade, in_range, rectangle_order, size, stages,
    tightening, with_prevailing, wrench_error,
};

use crate::Inputs;

/// The values named `of`, in SI units, from these inputs; diameters in metres, areas in square metres.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "pitch_and_minor" => {
            let thread = thread(inputs)?;
            Ok(vec![thread.effective().value(), thread.minor().value()])
        }
        "root" => Ok(vec![thread(inputs)?.root().value()]),
        "stress_area" => Ok(vec![thread(inputs)?.stress_area().value()]),
        "strengths" => {
            let grade = grade_of(inputs)?;
            Ok(vec![
                grade.tensile().value(),
                grade.yielding().value(),
                grade.proof().value(),
            ])
        }
        "proof_load" => {
            let load: Force = thread(inputs)?.stress_area() * grade_of(inputs)?.proof();
            Ok(vec![load.value()])
        }
        "clamp" | "torque" => {
            let found = tightening(&joint(inputs)?).map_err(|error| format!("{error:?}"))?;
            Ok(vec![if of == "clamp" {
                found.clamp.value()
            } else {
                found.torque.value()
            }])
        }
        "extension" => {
            let inches =
                |name: &str| Ok::<_, String>(Length::of(inputs.number(name)?, &unit::INCH));
            let angle = Ratio::exact(inputs.number("angle")?.to_radians());
            let wanted = Torque::of(inputs.number("wanted")?, &unit::POUND_FOOT);
            let found =
                extension_setting(&wanted, &inches("wrench")?, &inches("extension")?, &angle);
            Ok(vec![found.map_err(|error| format!("{error:?}"))?.value()])
        }
        "in_range" => {
            let setting = Torque::exact(inputs.number("setting")?);
            in_range(&setting, wrench(inputs)?).map_err(|error| format!("{error:?}"))?;
            Ok(vec![1.0])
        }
        "wrench_error" => {
            let setting = Torque::exact(inputs.number("setting")?);
            let certified = inputs.has("certified");
            let certified = certified.then(|| inputs.number("certified")).transpose()?;
            let certified = certified.map(|percent| Ratio::exact(percent / 100.0));
            Ok(vec![
                wrench_error(&setting, wrench(inputs)?, certified.as_ref()).value(),
            ])
        }
        "flange_face" => {
            let face = flange_face(&inputs.quantity("thread", Kind::Length)?);
            Ok(vec![face.value()])
        }
        "holds_from" => Ok(vec![wrench(inputs)?.holds_from()]),
        "scatter" => Ok(vec![match inputs.text("method")? {
            "feel" => Scatter::ByFeel.share(),
            "wrench" => Scatter::TorqueWrench.share(),
            "angle" => Scatter::Angle.share(),
            other => return Err(format!("no method is called `{other}`")),
        }]),
        "stages" => {
            let figure = Torque::exact(inputs.number("figure")?);
            let stages = stages(&figure, inputs.count("count")? as usize);
            Ok(stages.iter().map(Torque::value).collect())
        }
        "prevailing" => {
            let newton_metres = |name: &str| Ok::<_, String>(Torque::exact(inputs.number(name)?));
            let found = with_prevailing(&newton_metres("figure")?, &newton_metres("prevailing")?);
            Ok(vec![found.value()])
        }
        "clamp_of_torque" => {
            let torque = Torque::exact(inputs.number("torque")?);
            Ok(vec![clamp_load_of(&torque, &joint(inputs)?).value()])
        }
        "circle_order" => Ok(circle_order(inputs.count("bolts")? as usize)
            .iter()
            .map(|i| *i as f64 + 1.0)
            .collect()),
        "rectangle_first" => {
            let order = rectangle_order(
                inputs.count("rows")? as usize,
                inputs.count("columns")? as usize,
            );
            let mut first: Vec<f64> = order[..2].iter().map(|i| *i as f64 + 1.0).collect();
            first.sort_by(f64::total_cmp);
            Ok(first)
        }
        _ => Err(crate::unknown(of)),
    }
}

fn wrench(inputs: &Inputs) -> Result<WrenchClass, String> {
    let kind = match inputs
        .has("kind")
        .then(|| inputs.text("kind"))
        .transpose()?
    {
        None | Some("setting") => WrenchKind::Setting,
        Some("dial") => WrenchKind::Dial,
        Some("beam") => WrenchKind::Beam,
        Some("screwdriver") => WrenchKind::Screwdriver,
        Some(other) => return Err(format!("no wrench is called `{other}`")),
    };
    Ok(WrenchClass {
        kind,
        lowest: inputs.number("lowest")?,
        highest: inputs.number("highest")?,
    })
}

fn thread(inputs: &Inputs) -> Result<Thread, String> {
    let name = inputs.text("thread")?;
    size(name)
        .map(|size| size.thread())
        .ok_or_else(|| format!("UnknownThread: `{name}`"))
}

fn grade_of(inputs: &Inputs) -> Result<&'static trade::torque::Grade, String> {
    let name = inputs.text("grade")?;
    let major = if inputs.has("thread") {
        thread(inputs)?.major
    } else {
        Length::of(inputs.number("diameter")?, &unit::MILLIMETRE)
    };
    grade(name, &major).ok_or_else(|| format!("UnknownGrade: `{name}`"))
}

fn joint(inputs: &Inputs) -> Result<Joint, String> {
    let friction = Ratio::exact(inputs.number("friction")?);
    let mm = |name: &str| Ok::<_, String>(Length::of(inputs.number(name)?, &unit::MILLIMETRE));
    let purpose = match inputs
        .has("purpose")
        .then(|| inputs.text("purpose"))
        .transpose()?
    {
        Some("steering") => Purpose::Steering,
        Some("brakes") => Purpose::Brakes,
        Some("wheels") => Purpose::Wheels,
        Some(other) => return Err(format!("no purpose is called `{other}`")),
        None => Purpose::Other,
    };
    Ok(Joint {
        purpose,
        grade: grade_of(inputs)?,
        thread: thread(inputs)?,
        friction: Friction {
            thread: friction.clone(),
            head: friction,
        },
        head: Head {
            bearing: mm("bearing")?,
            hole: mm("hole")?,
        },
        shank: None,
        use_of_yield: Ratio::exact(0.9),
        scatter: Scatter::TorqueWrench,
    })
}
