//! What the reference checks of the vehicle are computed with.

use measure::{Kind, Length, Mass, Power, Ratio, Rotation};
use trade::vehicle as trade;

use crate::Inputs;

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, or an input is missing.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let mass = |name: &str| -> Result<Mass, String> { inputs.quantity(name, Kind::Mass) };
    let length = |name: &str| -> Result<Length, String> { inputs.quantity(name, Kind::Length) };
    let ratio = |name: &str| -> Result<Ratio, String> { inputs.quantity(name, Kind::Ratio) };
    let revs = |name: &str| -> Result<Rotation, String> { inputs.quantity(name, Kind::Rotation) };
    let value = match of {
        "front_share" => trade::front_share(&mass("front")?, &mass("rear")?).value(),
        "centre" => {
            let wheelbase = length("wheelbase")?;
            trade::centre_behind_front_axle(&mass("front")?, &mass("rear")?, &wheelbase).value()
        }
        "load_on_front" => {
            let (ahead, wheelbase) = (length("ahead")?, length("wheelbase")?);
            trade::load_on_front_axle(&mass("load")?, &ahead, &wheelbase).value()
        }
        "load_to_limit" => {
            let (limit, unladen) = (mass("limit")?, mass("unladen")?);
            trade::load_to_axle_limit(&limit, &unladen, &ratio("share")?).value()
        }
        "swept_volume" => {
            let (bore, stroke) = (length("bore")?, length("stroke")?);
            trade::swept_volume(&bore, &stroke, &ratio("cylinders")?).value()
        }
        "piston_speed" => trade::mean_piston_speed(&length("stroke")?, &revs("at")?).value(),
        "torque_at_power" => {
            let power: Power = inputs.quantity("power", Kind::Power)?;
            trade::torque_at_power(&power, &revs("at")?).value()
        }
        "power_to_mass" => {
            let power: Power = inputs.quantity("power", Kind::Power)?;
            trade::power_to_mass(&power, &mass("mass")?).value()
        }
        "frontal_area" => {
            let (width, height) = (length("width")?, length("height")?);
            trade::frontal_area(&ratio("share")?, &width, &height).value()
        }
        _ => return Err(crate::unknown(of)),
    };
    Ok(vec![value])
}
