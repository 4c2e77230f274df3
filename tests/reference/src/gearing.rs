//! What the reference checks of gearing are computed with.

use measure::{
    Acceleration, Area, Density, Dimension, Force, Kind, Length, Mass, PerLength, Power, Pressure,
    Quantity, Ratio, Reading, Rotation, Speed, Stated, Temperature, Torque, unit,
};
use trade::gearing::*;

use crate::Inputs;
use crate::gearing_engine::{engine, lorry};
use crate::units;

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "overall_diameter"
        | "rolling_circumference"
        | "circumference_by_factor"
        | "rolled_out"
        | "circumference_of_turns" => tyre(of, inputs),
        "road_speed"
        | "speed_per_1000"
        | "engine_speed"
        | "turns_per_distance"
        | "propeller_shaft_speed"
        | "piston_speed"
        | "engine_speed_at_piston_speed"
        | "ratio_for_speed"
        | "ratio_for_force" => speeds(of, inputs),
        "train_ratio" | "hunting" | "tooth_pairs" => teeth(of, inputs),
        "shown_band" | "true_band" | "shown_after" | "adapter_ratio" | "cable_turns" => {
            dial(of, inputs)
        }
        "air_pressure" | "relative_density" | "air_density" | "engine_air_factor" => {
            air(of, inputs)
        }
        "rolling_power" | "air_drag" | "hill_power" | "slope_held" | "grip_hill"
        | "restart_hill" => road(of, inputs),
        "tractive_effort"
        | "acceleration"
        | "mass_factor"
        | "shaft_critical_speed"
        | "torque"
        | "torque_from_peaks" => engine(of, inputs),
        "top_speed" | "hill_in_gear" | "time_to_speed" => lorry(of, inputs),
        _ => Err(crate::unknown(of)),
    }
}

/// A quantity typed as a number and a unit.
pub(crate) fn quantity<D: Dimension>(inputs: &Inputs, name: &str) -> Result<Quantity<D>, String> {
    let text = inputs.text(name)?;
    let (number, symbol) = text
        .split_once(' ')
        .ok_or_else(|| format!("`{text}` is not a number and a unit"))?;
    let number: f64 = number
        .parse()
        .map_err(|_| format!("`{number}` is no number"))?;
    let unit = units::unit(symbol)?;
    if unit.dims != D::POWERS {
        return Err(format!("`{symbol}` is not a unit of `{name}`"));
    }
    Ok(Quantity::exact(unit.to_si(number)))
}

pub(crate) fn ratio(inputs: &Inputs, name: &str) -> Result<Ratio, String> {
    inputs.number(name).map(Ratio::exact)
}

/// A ratio typed as teeth or as a decimal.
fn typed_ratio(text: &str) -> Result<Ratio, String> {
    match Teeth::read(text) {
        Some(teeth) => Ok(Ratio::exact(teeth.ratio())),
        None => text
            .parse()
            .map(Ratio::exact)
            .map_err(|_| format!("`{text}` is no ratio")),
    }
}

pub(crate) fn overalls(inputs: &Inputs) -> Result<Vec<Ratio>, String> {
    let axle = typed_ratio(inputs.text("final_drive")?)?;
    let train = Train::of_axle(axle);
    Ok(inputs
        .numbers("gears")?
        .into_iter()
        .map(|gear| train.overall(&Ratio::exact(gear)))
        .collect())
}

fn diameter(inputs: &Inputs) -> Result<(Designation, Length), String> {
    let tyre =
        Designation::read(inputs.text("tyre")?).map_err(|fault| format!("{fault:?}: {fault}"))?;
    let found = tyre_diameter(&tyre);
    let reading = Reading {
        plus: found.plus_m,
        minus: found.minus_m,
        stated: Stated::Assumed,
        ..Reading::exact(found.metres, &unit::METRE)
    };
    Ok((tyre, Length::entry("tyre", "D", Kind::Length, &reading)))
}

fn tyre(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let found = match of {
        "overall_diameter" => diameter(inputs)?.1,
        "rolling_circumference" => {
            let (tyre, diameter) = diameter(inputs)?;
            let (factor, _) = rolling_factor(tyre.construction);
            rolling_circumference(&diameter, &Ratio::exact(factor))
        }
        "circumference_by_factor" => {
            rolling_circumference(&quantity(inputs, "diameter")?, &ratio(inputs, "factor")?)
        }
        "rolled_out" => rolled_out(&quantity(inputs, "distance")?, &ratio(inputs, "turns")?),
        _ => {
            let turns =
                PerLength::exact(unit::TURN_PER_MILE.to_si(inputs.number("turns_per_mile")?));
            circumference_of_turns(&turns)
        }
    };
    Ok(vec![found.value()])
}

fn speeds(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let circumference = |inputs| -> Result<Length, String> { quantity(inputs, "circumference") };
    Ok(match of {
        "road_speed" => {
            let (c, n): (Length, Rotation) =
                (circumference(inputs)?, quantity(inputs, "engine_speed")?);
            overalls(inputs)?
                .iter()
                .map(|i| road_speed(&c, &n, i).value())
                .collect()
        }
        "speed_per_1000" => {
            let c = circumference(inputs)?;
            overalls(inputs)?
                .iter()
                .map(|i| speed_per_1000(&c, i).value())
                .collect()
        }
        "engine_speed" => {
            let (c, v): (Length, Speed) = (circumference(inputs)?, quantity(inputs, "road_speed")?);
            let axles = inputs.texts("final_drives")?;
            let axles: Result<Vec<_>, _> = axles.into_iter().map(typed_ratio).collect();
            axles?
                .iter()
                .map(|i| engine_speed(&c, &v, i).value())
                .collect()
        }
        "turns_per_distance" => {
            let c = circumference(inputs)?;
            overalls(inputs)?
                .iter()
                .map(|i| turns_per_distance(&c, i).value())
                .collect()
        }
        "propeller_shaft_speed" => {
            let n = quantity(inputs, "engine_speed")?;
            let overdrive = Some(ratio(inputs, "overdrive")?);
            let train = Train {
                overdrive,
                ..Train::of_axle(Ratio::exact(1.0))
            };
            let gears = inputs.numbers("gears")?;
            gears
                .into_iter()
                .map(|gear| propeller_shaft_speed(&n, &train.to_shaft(&Ratio::exact(gear))).value())
                .collect()
        }
        "piston_speed" => {
            vec![
                mean_piston_speed(
                    &quantity(inputs, "stroke")?,
                    &quantity(inputs, "engine_speed")?,
                )
                .value(),
            ]
        }
        "engine_speed_at_piston_speed" => vec![
            engine_speed_at_piston_speed(
                &quantity(inputs, "stroke")?,
                &quantity(inputs, "piston_speed")?,
            )
            .value(),
        ],
        "ratio_for_speed" => {
            let (c, v): (Length, Speed) = (circumference(inputs)?, quantity(inputs, "road_speed")?);
            let n = quantity(inputs, "engine_speed")?;
            vec![axle_for_speed(&c, &v, &n, &ratio(inputs, "gear")?).value()]
        }
        _ => {
            let (force, torque): (Force, Torque) =
                (quantity(inputs, "force")?, quantity(inputs, "torque")?);
            let (gear, efficiency) = (ratio(inputs, "gear")?, ratio(inputs, "efficiency")?);
            vec![
                axle_for_force(&force, &torque, &gear, &efficiency, &circumference(inputs)?)
                    .value(),
            ]
        }
    })
}

fn teeth(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    Ok(match of {
        "train_ratio" => inputs
            .texts("trains")?
            .into_iter()
            .map(|train| {
                train.split('*').try_fold(1.0, |product, pair| {
                    let (driven, driver) =
                        pair.split_once('/').ok_or("a train is pairs of teeth")?;
                    let count = |text: &str| text.trim().parse::<u32>().map_err(|e| e.to_string());
                    let pair =
                        Teeth::new(count(driven)?, count(driver)?).map_err(|e| e.to_string())?;
                    Ok::<_, String>(product * pair.ratio())
                })
            })
            .collect::<Result<_, _>>()?,
        "hunting" => {
            let pair = Teeth::new(inputs.count("crown")?, inputs.count("pinion")?)
                .map_err(|fault| format!("{fault:?}: {fault}"))?;
            let meeting = pair.meeting();
            [meeting.common, meeting.pinion_turns, meeting.crown_turns]
                .map(f64::from)
                .to_vec()
        }
        _ => {
            let limits = ToothLimits {
                pinion: (inputs.count("least_pinion")?, inputs.count("most_pinion")?),
                crown: (inputs.count("least_crown")?, inputs.count("most_crown")?),
            };
            let wanted = inputs
                .text("wanted")?
                .parse::<f64>()
                .map_err(|e| e.to_string())?;
            let count = usize::try_from(inputs.count("count")?).map_err(|e| e.to_string())?;
            tooth_pairs(wanted, limits, count)
                .into_iter()
                .flat_map(|pair| [pair.crown, pair.pinion].map(f64::from))
                .collect()
        }
    })
}

fn dial(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    Ok(match of {
        "shown_band" => {
            let v: Speed = quantity(inputs, "true_speed")?;
            vec![v.value(), most_shown(&v).value()]
        }
        "true_band" => {
            let v: Speed = quantity(inputs, "shown")?;
            vec![least_true(&v).value(), v.value()]
        }
        "shown_after" => {
            let (before, now) = (
                typed_ratio(inputs.text("before")?)?,
                typed_ratio(inputs.text("now")?)?,
            );
            let (was, is) = (
                quantity(inputs, "circumference_before")?,
                quantity(inputs, "circumference_now")?,
            );
            let v = quantity(inputs, "true_speed")?;
            vec![shown_after(&v, (&before, &was), (&now, &is), &Ratio::exact(1.0)).value()]
        }
        "adapter_ratio" => {
            vec![adapter_ratio(&quantity(inputs, "constant")?, &quantity(inputs, "turns")?).value()]
        }
        _ => {
            let (driver, driven) = inputs
                .text("drive")?
                .split_once('/')
                .ok_or("a drive is starts by teeth")?;
            let count = |text: &str| text.trim().parse::<f64>().map_err(|e| e.to_string());
            let drive = Ratio::exact(count(driver)? / count(driven)?);
            let axle = typed_ratio(inputs.text("axle")?)?;
            vec![cable_turns(&quantity(inputs, "circumference")?, &axle, &drive).value()]
        }
    })
}

fn air(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let found = match of {
        "air_pressure" => air_pressure(&quantity(inputs, "altitude")?).value(),
        "relative_density" => {
            let at = |altitude: &Length| {
                air_density(&air_pressure(altitude), &standard_temperature(altitude)).value()
            };
            at(&quantity(inputs, "altitude")?) / at(&Length::exact(0.0))
        }
        "air_density" => {
            let temperature: Temperature = quantity(inputs, "temperature")?;
            air_density(&quantity(inputs, "pressure")?, &temperature).value()
        }
        _ => {
            let (pressure, temperature): (Pressure, Temperature) = (
                quantity(inputs, "pressure")?,
                quantity(inputs, "temperature")?,
            );
            let (p0, t0): (Pressure, Temperature) = (
                quantity(inputs, "reference_pressure")?,
                quantity(inputs, "reference_temperature")?,
            );
            let reference = RatingState {
                pressure_pa: p0.value(),
                temperature_k: t0.value(),
            };
            engine_air_factor(Breathing::Spark, &pressure, &temperature, &reference).value()
        }
    };
    Ok(vec![found])
}

pub(crate) fn refused(error: trade::TradeError) -> String {
    format!("{error:?}: {error}")
}

fn road(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let found = match of {
        "rolling_power" => {
            let (mass, speed): (Mass, Speed) =
                (quantity(inputs, "mass")?, quantity(inputs, "speed")?);
            (rolling_resistance(&mass, &ratio(inputs, "coefficient")?) * speed).value()
        }
        "air_drag" => {
            let (density, area): (Density, Area) =
                (quantity(inputs, "density")?, quantity(inputs, "area")?);
            let speed = quantity(inputs, "speed")?;
            air_drag(&density, &ratio(inputs, "coefficient")?, &area, &speed).value()
        }
        "hill_power" => {
            let weight: Force = quantity(inputs, "weight")?;
            let mass = weight / gravity();
            let slope = ratio(inputs, "sine")?.asin().tan();
            let force = force_on_slope(&slope, &mass, &Ratio::exact(0.0))
                + rolling_resistance(&mass, &ratio(inputs, "rolling")?);
            let speed: Speed = quantity(inputs, "speed")?;
            let power: Power = force * speed;
            power.value()
        }
        "slope_held" => {
            let (force, mass): (Force, Mass) =
                (quantity(inputs, "force")?, quantity(inputs, "mass")?);
            slope_held(&force, &mass, &ratio(inputs, "rolling")?)
                .map_err(refused)?
                .value()
        }
        "grip_hill" => {
            let stance = Stance {
                wheelbase: quantity(inputs, "wheelbase")?,
                height: quantity(inputs, "height")?,
                rear_share: ratio(inputs, "rear_share")?,
            };
            let driven = match inputs.text("driven")? {
                "rear" => Driven::Rear,
                "front" => Driven::Front,
                "all" => Driven::All,
                other => return Err(format!("`{other}` is no axle")),
            };
            let start: Acceleration = if inputs.has("start") {
                quantity(inputs, "start")?
            } else {
                Acceleration::exact(0.0)
            };
            grip_slope(
                &ratio(inputs, "grip")?,
                &ratio(inputs, "rolling")?,
                &stance,
                driven,
                &start,
            )
            .map_err(refused)?
            .value()
        }
        _ => {
            let torque: Torque = quantity(inputs, "clutch_torque")?;
            let (overall, efficiency) = (ratio(inputs, "overall")?, ratio(inputs, "efficiency")?);
            let force = tractive_effort(
                &torque,
                &overall,
                &efficiency,
                &quantity(inputs, "circumference")?,
            );
            let start: Acceleration = quantity(inputs, "start")?;
            restart_slope(
                &force,
                &quantity(inputs, "mass")?,
                &ratio(inputs, "rolling")?,
                &start,
            )
            .map_err(refused)?
            .value()
        }
    };
    Ok(vec![found])
}
