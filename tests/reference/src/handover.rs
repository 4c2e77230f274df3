//! What the reference checks of handing over are computed with.

use buildbook::Date;
use measure::{Force, Length, Mass, unit};
use trade::handover::{DateCode, brake_efficiency, brake_imbalance, due_after, toe_in};

use crate::{Inputs, units, unknown};

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let refused = |error: trade::TradeError| format!("{error:?}");
    match of {
        "date_code" => {
            let code = DateCode::read(inputs.text("code")?).map_err(refused)?;
            Ok(vec![f64::from(code.week), f64::from(code.year)])
        }
        "tyre_week" => {
            let (year, week) = (inputs.number("year")? as u16, inputs.number("week")? as u8);
            day(Date::of_tyre_week(year, week))
        }
        "tyre_age" => {
            let code = DateCode::read(inputs.text("code")?).map_err(refused)?;
            let code = inputs
                .number("decade")
                .map_or(code, |decade| code.in_decade(decade as u16));
            let made = Date::of_tyre_week(code.year, code.week).ok_or("beyond the calendar")?;
            let (years, months) = begin(inputs)?
                .age_since(made)
                .ok_or("made after it was read")?;
            Ok(vec![f64::from(years), f64::from(months)])
        }
        "days_after" => {
            let days = inputs.number("days")? as i64;
            day(begin(inputs)?.plus_days(days))
        }
        "due" => {
            let (after, per_week) = (length(inputs, "after")?, length(inputs, "per_week")?);
            let time = due_after(&after, &per_week).map_err(refused)?;
            let days = time.in_unit(&unit::DAY).floor() as i64;
            day(begin(inputs)?.plus_days(days))
        }
        "efficiency" => {
            let mass = Mass::exact(si(inputs, "mass")?);
            let efficiency = brake_efficiency(&force(inputs, "effort")?, &mass);
            Ok(vec![efficiency.map_err(refused)?.value()])
        }
        "imbalance" => {
            let imbalance = brake_imbalance(&force(inputs, "left")?, &force(inputs, "right")?);
            Ok(vec![imbalance.map_err(refused)?.value()])
        }
        "toe" => Ok(vec![
            toe_in(&length(inputs, "ahead")?, &length(inputs, "behind")?).value(),
        ]),
        _ => Err(unknown(of)),
    }
}

/// The value of a number and its unit, in SI units.
fn si(inputs: &Inputs, name: &str) -> Result<f64, String> {
    let text = inputs.text(name)?;
    let (number, symbol) = text.split_once(' ').ok_or("a number and a unit")?;
    let number: f64 = number
        .parse()
        .map_err(|_| format!("`{text}` is not a number"))?;
    Ok(units::unit(symbol)?.to_si(number))
}

fn force(inputs: &Inputs, name: &str) -> Result<Force, String> {
    si(inputs, name).map(Force::exact)
}

fn length(inputs: &Inputs, name: &str) -> Result<Length, String> {
    si(inputs, name).map(Length::exact)
}

fn begin(inputs: &Inputs) -> Result<Date, String> {
    let text = inputs.text("day")?;
    Date::read(text).ok_or_else(|| format!("`{text}` is no day"))
}

fn day(day: Option<Date>) -> Result<Vec<f64>, String> {
    let day = day.ok_or("beyond the calendar")?;
    Ok(vec![
        f64::from(day.year()),
        f64::from(day.month()),
        f64::from(day.day()),
    ])
}
