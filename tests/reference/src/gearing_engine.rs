//! What the reference checks of engine and pull are computed with.

use measure::{Force, Inertia, Length, Power, Ratio, Rotation, Time, Torque};
use trade::gearing::*;

use crate::Inputs;
use crate::gearing::{overalls, quantity, ratio, refused};

fn curve(inputs: &Inputs) -> Result<TorqueCurve, String> {
    let torques = inputs.numbers("torques")?;
    let points: Vec<_> = inputs
        .numbers("engine_speeds")?
        .into_iter()
        .zip(torques)
        .map(|(rpm, torque)| (Rotation::exact(rpm / 60.0), Torque::exact(torque)))
        .collect();
    TorqueCurve::through(&points).map_err(refused)
}

pub(crate) fn engine(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let along = |curve: TorqueCurve| -> Result<Vec<f64>, String> {
        let at = inputs.numbers("at")?;
        Ok(at
            .into_iter()
            .map(|rpm| curve.torque(&Rotation::exact(rpm / 60.0)).value())
            .collect())
    };
    Ok(match of {
        "torque" => along(curve(inputs)?)?,
        "torque_from_peaks" => {
            let (torque, at): (Torque, Rotation) = (
                quantity(inputs, "peak_torque")?,
                quantity(inputs, "peak_torque_at")?,
            );
            let (power, power_at): (Power, Rotation) = (
                quantity(inputs, "peak_power")?,
                quantity(inputs, "peak_power_at")?,
            );
            along(TorqueCurve::between_peaks(&torque, &at, &power, &power_at).map_err(refused)?)?
        }
        "tractive_effort" => {
            let torque = quantity(inputs, "torque")?;
            let (overall, efficiency) = (ratio(inputs, "overall")?, ratio(inputs, "efficiency")?);
            vec![
                tractive_effort(
                    &torque,
                    &overall,
                    &efficiency,
                    &quantity(inputs, "circumference")?,
                )
                .value(),
            ]
        }
        "acceleration" => {
            let (effort, resistance): (Force, Force) =
                (quantity(inputs, "effort")?, quantity(inputs, "resistance")?);
            let factor = ratio(inputs, "mass_factor")?;
            vec![acceleration(&effort, &resistance, &quantity(inputs, "mass")?, &factor).value()]
        }
        "mass_factor" => vec![mass_factor(&ratio(inputs, "overall")?).value()],
        _ => {
            let (outside, bore): (Length, Length) =
                (quantity(inputs, "outside")?, quantity(inputs, "bore")?);
            vec![shaft_critical_speed(&outside, &bore, &quantity(inputs, "length")?).value()]
        }
    })
}

pub(crate) fn lorry(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let curve = curve(inputs)?;
    let circumference: Length = quantity(inputs, "circumference")?;
    let efficiencies = inputs.numbers("efficiencies")?;
    let gears: Vec<Pull> = overalls(inputs)?
        .into_iter()
        .zip(efficiencies)
        .map(|(overall, efficiency)| Pull {
            overall,
            efficiency: Ratio::exact(efficiency),
            circumference: circumference.clone(),
        })
        .collect();
    let resistance = Resistance {
        mass: quantity(inputs, "mass")?,
        rolling: ratio(inputs, "rolling")?,
        air: quantity(inputs, "air_density")?,
        drag_coefficient: ratio(inputs, "drag_coefficient")?,
        frontal_area: quantity(inputs, "frontal_area")?,
    };
    let (lowest, highest) = curve.range();
    let limits = EngineLimits {
        lowest: Rotation::exact(lowest),
        highest: Rotation::exact(highest),
        piston: None,
    };
    match of {
        "top_speed" => gears
            .iter()
            .map(|gear| {
                top_speed(gear, &curve, &resistance, &limits)
                    .map(|v| v.value())
                    .ok_or_else(|| "a gear holds no speed".to_owned())
            })
            .collect(),
        "hill_in_gear" => gears
            .iter()
            .map(|gear| {
                steepest_hill(gear, &curve, &resistance, limits.range())
                    .map(|hill| hill.slope.value())
                    .map_err(refused)
            })
            .collect(),
        _ => {
            let inertia: Inertia = quantity(inputs, "engine_inertia")?;
            let change: Time = quantity(inputs, "change")?;
            let start = Start {
                inertia: Some(inertia),
                change,
            };
            let target = quantity(inputs, "to")?;
            time_to_speed(&target, &gears, &curve, &resistance, &limits, &start)
                .map(|time| vec![time.value()])
                .ok_or_else(|| "out of reach".to_owned())
        }
    }
}
