//! What the reference checks of the final drive are computed with.

use measure::{Length, Ratio, Torque, unit};
use trade::final_drive::{
    self, MarkSense, Shim, ShimPlace, agma_backlash, backlash_factor, cord_radius, crown_move,
    notches_for, pull_for_torque, shim_by_depth, shim_by_marks, shim_pack, side_drag,
};

use crate::{Inputs, units};

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "agma_backlash" => {
            let module = Length::of(25.4 / inputs.number("diametral_pitch")?, &unit::MILLIMETRE);
            let (least, greatest) = refuse(agma_backlash(&module))?;
            Ok(vec![least, greatest])
        }
        "factor" => {
            let degrees =
                |name: &str| Ok::<_, String>(Ratio::exact(inputs.number(name)?.to_radians()));
            let ratio = Ratio::exact(inputs.number("crown")? / inputs.number("pinion")?);
            one(backlash_factor(&degrees("pressure")?, &degrees("spiral")?, &ratio).value())
        }
        "crown_move" => {
            let factor = Ratio::exact(inputs.number("factor")?);
            let found = refuse(crown_move(
                &length(inputs, "least")?,
                &length(inputs, "wanted")?,
                &factor,
            ))?;
            one(found.away.value())
        }
        "notches" => {
            let notches = Ratio::exact(inputs.number("notches")?);
            one(refuse(notches_for(
                &length(inputs, "away")?,
                &length(inputs, "pitch")?,
                &notches,
            ))?
            .value())
        }
        "pull" => one(refuse(pull_for_torque(
            &torque(inputs, "torque")?,
            &length(inputs, "radius")?,
        ))?
        .value()),
        "cord_radius" => {
            one(cord_radius(&length(inputs, "flange")?, &length(inputs, "cord")?).value())
        }
        "side_drag" => {
            let ratio = Ratio::exact(inputs.number("ratio")?);
            one(side_drag(&torque(inputs, "drag")?, &ratio).value())
        }
        "with_carrier" | "drag_behind" | "spread" | "both_sides" => sides(of, inputs),
        "shim_by_marks" => one(shim_by_marks(
            &length(inputs, "old_shim")?,
            &length(inputs, "old_mark")?,
            &length(inputs, "new_mark")?,
            sense(inputs)?,
            place(inputs)?,
        )
        .value()),
        "shim_by_depth" => one(shim_by_depth(
            &length(inputs, "depth")?,
            &length(inputs, "bearing")?,
            &length(inputs, "nominal")?,
            &length(inputs, "mark")?,
            sense(inputs)?,
            place(inputs)?,
        )
        .value()),
        "pack" => pack(inputs),
        "pinion_factor" => {
            let degrees =
                |name: &str| Ok::<_, String>(Ratio::exact(inputs.number(name)?.to_radians()));
            let ratio = Ratio::exact(inputs.number("crown")? / inputs.number("pinion")?);
            one(
                final_drive::pinion_factor(&degrees("pressure")?, &degrees("spiral")?, &ratio)
                    .value(),
            )
        }
        "notch" => {
            let (notches, factor) = (inputs.number("notches")?, inputs.number("factor")?);
            let found = final_drive::backlash_of_a_notch(
                &length(inputs, "pitch")?,
                &Ratio::exact(notches),
                &Ratio::exact(factor),
            );
            one(refuse(found)?.value())
        }
        "slope" | "next_shim" | "preload_pack" => trend(of, inputs),
        "least_backlash" => {
            let readings: Result<Vec<Length>, String> = inputs
                .texts("readings")?
                .into_iter()
                .map(length_of)
                .collect();
            let found = refuse(final_drive::backlash_readings(&readings?, None))?;
            Ok(vec![found.least.value(), found.spread.value()])
        }
        _ => Err(crate::unknown(of)),
    }
}

#[expect(
    clippy::unnecessary_wraps,
    reason = "every branch of the table answers so"
)]
fn one(value: f64) -> Result<Vec<f64>, String> {
    Ok(vec![value])
}

fn refuse<T>(found: Result<T, trade::TradeError>) -> Result<T, String> {
    found.map_err(|error| format!("{error:?}"))
}

fn length_of(text: &str) -> Result<Length, String> {
    let (number, symbol) = text.split_once(' ').ok_or("a number and a unit")?;
    let number: f64 = number
        .parse()
        .map_err(|_| format!("`{text}` is not a number"))?;
    Ok(Length::exact(units::unit(symbol)?.to_si(number)))
}

/// The side bearings' preload.
fn sides(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "with_carrier" => {
            let ratio = Ratio::exact(inputs.number("ratio")?);
            let (pinion, drag) = (torque(inputs, "pinion")?, torque(inputs, "drag")?);
            one(final_drive::turning_torque_with_carrier(&pinion, &drag, &ratio).value())
        }
        "drag_behind" => {
            let ratio = Ratio::exact(inputs.number("ratio")?);
            one(final_drive::drag_behind_rise(&torque(inputs, "rise")?, &ratio).value())
        }
        "spread" => {
            let (wanted, measured) = (length(inputs, "wanted")?, length(inputs, "measured")?);
            let to_add = final_drive::spread_to_add(&wanted, &measured);
            let each = final_drive::spread_each_side(&to_add);
            Ok(vec![to_add.value(), each.value()])
        }
        "both_sides" => {
            let (to_add, away) = (length(inputs, "to_add")?, length(inputs, "away")?);
            let both = final_drive::shims_of_both_sides(&to_add, &away);
            Ok(both.iter().map(Length::value).collect())
        }
        _ => Err(crate::unknown(of)),
    }
}

/// What a straight line through trials tells.
fn trend(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "slope" => {
            let backlashes = millimetres(inputs, "backlashes")?;
            let trials: Vec<_> = millimetres(inputs, "positions")?
                .into_iter()
                .zip(backlashes)
                .collect();
            one(refuse(final_drive::slope_of_trials(&trials))?.value())
        }
        "next_shim" => {
            let heights = inputs.numbers("heights")?.into_iter().map(Ratio::exact);
            let trials: Vec<_> = millimetres(inputs, "shims")?
                .into_iter()
                .zip(heights)
                .collect();
            one(refuse(final_drive::next_shim(&trials))?.value())
        }
        "preload_pack" => {
            let torques = inputs.numbers("torques")?.into_iter().map(Torque::exact);
            let trials: Vec<_> = millimetres(inputs, "packs")?
                .into_iter()
                .zip(torques)
                .collect();
            let wanted = Torque::exact(inputs.number("wanted")?);
            one(refuse(final_drive::pack_for_preload(&trials, &wanted))?.value())
        }
        _ => Err(crate::unknown(of)),
    }
}

fn millimetres(inputs: &Inputs, name: &str) -> Result<Vec<Length>, String> {
    let numbers = inputs.numbers(name)?;
    Ok(numbers
        .into_iter()
        .map(|n| Length::of(n, &unit::MILLIMETRE))
        .collect())
}

fn length(inputs: &Inputs, name: &str) -> Result<Length, String> {
    length_of(inputs.text(name)?)
}

fn torque(inputs: &Inputs, name: &str) -> Result<Torque, String> {
    let text = inputs.text(name)?;
    let (number, symbol) = text.split_once(' ').ok_or("a number and a unit")?;
    let number: f64 = number
        .parse()
        .map_err(|_| format!("`{text}` is not a number"))?;
    Ok(Torque::exact(units::unit(symbol)?.to_si(number)))
}

fn sense(inputs: &Inputs) -> Result<MarkSense, String> {
    match inputs.text("plus")? {
        "further" => Ok(MarkSense::PlusIsFurther),
        "nearer" => Ok(MarkSense::PlusIsNearer),
        other => Err(format!("no sense is called `{other}`")),
    }
}

fn place(inputs: &Inputs) -> Result<ShimPlace, String> {
    match inputs.text("place")? {
        "head_to_cone" => Ok(ShimPlace::HeadToCone),
        "behind_cup" => Ok(ShimPlace::BehindCup),
        "carrier_flange" => Ok(ShimPlace::CarrierFlange),
        other => Err(format!("no place is called `{other}`")),
    }
}

/// How many shims, and what they come to.
fn pack(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let shims: Result<Vec<Shim>, String> = inputs
        .texts("shims")?
        .into_iter()
        .map(|text| {
            Ok(Shim {
                thickness: length_of(text)?.value(),
                count: None,
            })
        })
        .collect();
    let (target, tolerance) = (length(inputs, "target")?, length(inputs, "tolerance")?);
    let pack = refuse(shim_pack(target.value(), tolerance.value(), &shims?))?;
    Ok(vec![pack.shims() as f64, pack.thickness * 1000.0])
}
