//! What the reference checks of costs are computed with.

use std::str::FromStr;

use measure::{
    Currency, Decimal, Mark, Money, MoneyAsk, MoneyWorking, Rounding, measured_decimal, read_money,
};
use trade::costs::choice::choice;
use trade::costs::csv::table;
use trade::costs::line::line_amounts;
use trade::costs::settle::settlement;
use trade::costs::standing::{left_to_spend, standing};
use trade::costs::worth::{value_of_hours, worth_when_done};
use trade::costs::{
    BreakEven, Contingency, Course, LineState, LineTerms, OwnHours, Payer, PlacedLine, Reckoned,
    Tax, TaxBasis, Terms,
};

use crate::Inputs;

/// The values named `of`, as plain numbers: amounts in the currency's major unit.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "minor_units" => minor_units(inputs),
        "currencies" => Ok(vec![f64::from(
            u32::try_from(Currency::all().count()).map_err(text)?,
        )]),
        "rounded" => rounded(inputs),
        "read" => read(inputs),
        "priced" => priced(inputs),
        "exchanged" => exchanged(inputs),
        "line" => line(inputs),
        "split" => split(inputs),
        "break_even" => break_even(inputs),
        "first_whole" => first_whole(inputs),
        "course_totals" => course_totals(inputs),
        "transfers" => transfers(inputs),
        "ahead" => ahead(inputs),
        "left" => left(inputs),
        "worth" => worth(inputs),
        "table" => table_shape(inputs),
        "job" => crate::books::results(inputs),
        _ => Err(crate::unknown(of)),
    }
}

fn text(error: impl std::fmt::Debug) -> String {
    format!("{error:?}")
}

fn decimal(inputs: &Inputs, name: &str) -> Result<Decimal, String> {
    Decimal::from_str(inputs.text(name)?).map_err(|error| format!("input `{name}`: {error}"))
}

fn decimal_or_nothing(inputs: &Inputs, name: &str) -> Result<Decimal, String> {
    if inputs.has(name) {
        decimal(inputs, name)
    } else {
        Ok(Decimal::ZERO)
    }
}

fn decimals(inputs: &Inputs, name: &str) -> Result<Vec<Decimal>, String> {
    inputs
        .texts(name)?
        .into_iter()
        .map(|typed| Decimal::from_str(typed).map_err(|error| format!("input `{name}`: {error}")))
        .collect()
}

fn number(value: Decimal) -> Result<f64, String> {
    f64::from_str(&value.to_string()).map_err(text)
}

fn numbers(values: impl IntoIterator<Item = Decimal>) -> Result<Vec<f64>, String> {
    values.into_iter().map(number).collect()
}

fn currency(inputs: &Inputs, name: &str) -> Result<Currency, String> {
    let code = inputs.text(name)?;
    Currency::of_code(code).ok_or_else(|| format!("no currency {code}"))
}

fn rule(inputs: &Inputs) -> Result<Rounding, String> {
    match inputs.text("rule")? {
        "half even" => Ok(Rounding::HalfEven),
        "half up" => Ok(Rounding::HalfUp),
        other => Err(format!("no rule `{other}`")),
    }
}

fn terms(inputs: &Inputs) -> Result<Terms, String> {
    Ok(Terms {
        home: if inputs.has("home") {
            currency(inputs, "home")?
        } else {
            Currency::EUR
        },
        rounding: if inputs.has("rule") {
            rule(inputs)?
        } else {
            Rounding::HalfEven
        },
        tax_counts: true,
    })
}

fn money(inputs: &Inputs, name: &str) -> Result<Money, String> {
    Ok(Money::new(
        decimal_or_nothing(inputs, name)?,
        terms(inputs)?.home,
    ))
}

fn minor_units(inputs: &Inputs) -> Result<Vec<f64>, String> {
    inputs
        .texts("codes")?
        .into_iter()
        .map(|code| {
            let currency = Currency::of_code(code).ok_or_else(|| format!("no currency {code}"))?;
            Ok(f64::from(currency.minor_units()))
        })
        .collect()
}

fn rounded(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let rule = rule(inputs)?;
    let amounts = decimals(inputs, "amounts")?;
    if inputs.has("currency") {
        let currency = currency(inputs, "currency")?;
        return numbers(
            amounts
                .into_iter()
                .map(|amount| Money::new(amount, currency).rounded(rule).amount()),
        );
    }
    let places = inputs.count("places")?;
    numbers(
        amounts
            .into_iter()
            .map(|amount| rule.to_places(amount, places)),
    )
}

fn read(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let usual = match inputs.text("mark")? {
        "point" => Mark::Point,
        "comma" => Mark::Comma,
        other => return Err(format!("no mark `{other}`")),
    };
    let ask = MoneyAsk::amount(currency(inputs, "currency")?, usual);
    inputs
        .texts("typed")?
        .into_iter()
        .map(|typed| number(read_money(typed, &ask).map_err(text)?.money.amount()))
        .collect()
}

fn priced(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let quantity = measured_decimal(inputs.number("quantity")?).map_err(text)?;
    let line = LineTerms::plain("l", quantity, money(inputs, "price")?, LineState::Planned);
    let total = line_amounts(&line, &terms(inputs)?).map_err(text)?.total;
    numbers([quantity, total.amount()])
}

fn exchanged(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let abroad = Money::new(decimal(inputs, "amount")?, currency(inputs, "from")?);
    let home = abroad
        .exchanged(
            decimal(inputs, "rate")?,
            currency(inputs, "into")?,
            rule(inputs)?,
        )
        .map_err(text)?;
    numbers([home.amount()])
}

/// Net, duty, tax and total of a line.
fn line(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let quantity = if inputs.has("quantity") {
        decimal(inputs, "quantity")?
    } else {
        Decimal::ONE
    };
    let mut line = LineTerms::plain("l", quantity, money(inputs, "price")?, LineState::Paid);
    line.carriage = money(inputs, "carriage")?;
    line.duty_percent = decimal_or_nothing(inputs, "duty")?;
    let basis = match inputs.text("basis")? {
        "in" => TaxBasis::In,
        "out" => TaxBasis::Out,
        other => return Err(format!("no basis `{other}`")),
    };
    line.tax = Some(Tax {
        percent: decimal(inputs, "tax")?,
        basis,
    });
    let amounts = line_amounts(&line, &terms(inputs)?).map_err(text)?;
    numbers([amounts.net, amounts.duty, amounts.tax, amounts.total].map(|part| part.amount()))
}

fn split(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let parts = money(inputs, "total")?
        .split(&decimals(inputs, "shares")?)
        .map_err(text)?;
    numbers(parts.into_iter().map(|part| part.amount()))
}

fn course(inputs: &Inputs, fixed: &str, each: &str) -> Result<Course, String> {
    let part = |name| {
        Ok::<_, String>(Reckoned {
            money: money(inputs, name)?,
            working: MoneyWorking::default(),
        })
    };
    Ok(Course {
        fixed: part(fixed)?,
        each: part(each)?,
    })
}

fn meeting(inputs: &Inputs) -> Result<(Decimal, Decimal), String> {
    let first = course(inputs, "fixed_first", "each_first")?;
    let second = course(inputs, "fixed_second", "each_second")?;
    match choice(first, second, None, &terms(inputs)?)
        .map_err(text)?
        .break_even
    {
        BreakEven::At { count, from, .. } => Ok((count, from)),
        BreakEven::Never(side) => Err(format!("Never({side:?})")),
    }
}

fn break_even(inputs: &Inputs) -> Result<Vec<f64>, String> {
    numbers([meeting(inputs)?.0])
}

fn first_whole(inputs: &Inputs) -> Result<Vec<f64>, String> {
    numbers([meeting(inputs)?.1])
}

fn course_totals(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let first = course(inputs, "fixed_first", "each_first")?;
    let second = course(inputs, "fixed_second", "each_second")?;
    let count = Some(decimal(inputs, "count")?);
    let answer = choice(first, second, count, &terms(inputs)?).map_err(text)?;
    let (Some(one), Some(two)) = (answer.first_total, answer.second_total) else {
        return Err("no totals".to_owned());
    };
    numbers([one.money.amount(), two.money.amount()])
}

fn payers(inputs: &Inputs) -> Result<Vec<Payer>, String> {
    let home = terms(inputs)?.home;
    let paid = decimals(inputs, "paid")?;
    let shares = if inputs.has("shares") {
        decimals(inputs, "shares")?
    } else {
        vec![Decimal::ONE; paid.len()]
    };
    let payer = |(paid, share)| Payer {
        share,
        paid: Money::new(paid, home),
    };
    Ok(paid.into_iter().zip(shares).map(payer).collect())
}

/// How many transfers settle, once they are known to leave everybody even.
fn transfers(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let settled = settlement(&payers(inputs)?).map_err(text)?;
    let mut ahead = settled.ahead;
    for transfer in &settled.transfers {
        ahead[transfer.from] = ahead[transfer.from].plus(&transfer.amount).map_err(text)?;
        ahead[transfer.to] = ahead[transfer.to].minus(&transfer.amount).map_err(text)?;
    }
    if ahead.iter().any(|left| !left.is_zero()) {
        return Err(format!("not even after the transfers: {ahead:?}"));
    }
    Ok(vec![f64::from(
        u32::try_from(settled.transfers.len()).map_err(text)?,
    )])
}

fn ahead(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let settled = settlement(&payers(inputs)?).map_err(text)?;
    numbers(settled.ahead.iter().map(Money::amount))
}

/// Paid, committed and unpaid, planned, contingency, left.
fn left(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let terms = terms(inputs)?;
    let mut lines = Vec::new();
    for row in inputs.rows("lines")? {
        let state = match row.text("state")? {
            "planned" => LineState::Planned,
            "committed" => LineState::Committed,
            "paid" => LineState::Paid,
            other => return Err(format!("no state `{other}`")),
        };
        let price = Money::new(decimal(&row, "price")?, terms.home);
        let mut line = LineTerms::plain("l", decimal(&row, "quantity")?, price, state);
        if row.has("paid_so_far") {
            line.paid_so_far = Money::new(decimal(&row, "paid_so_far")?, terms.home);
        }
        lines.push(PlacedLine {
            key: "l".into(),
            group: "g".into(),
            payer: None,
            state,
            amounts: line_amounts(&line, &terms).map_err(text)?,
        });
    }
    let contingency = Contingency::Percent(decimal(inputs, "contingency_percent")?);
    let stands = standing(&lines, &contingency, &terms).map_err(text)?;
    let left = left_to_spend(&money(inputs, "limit")?, &stands, &terms).map_err(text)?;
    let parts = [
        stands.paid,
        stands.committed,
        stands.planned,
        stands.contingency,
        left,
    ];
    numbers(parts.map(|part| part.money.amount()))
}

/// The value of own hours; what is over in cash, after hours, and for each hour.
fn worth(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let terms = terms(inputs)?;
    let rates = decimals(inputs, "rates")?;
    let jobs: Vec<_> = decimals(inputs, "hours")?
        .into_iter()
        .zip(rates)
        .map(|(hours, rate)| OwnHours {
            key: "l".into(),
            hours,
            rate: Money::new(rate, terms.home),
        })
        .collect();
    let hours = trade::costs::worth::hours_in_all(&jobs).map_err(text)?;
    let value = value_of_hours(&jobs, &terms).map_err(text)?;
    let worth = worth_when_done(
        &money(inputs, "value_done")?,
        &money(inputs, "cash")?,
        hours,
        &value.money,
        &terms,
    )
    .map_err(text)?;
    let each = worth.each_hour.ok_or("no hours")?;
    numbers([value, worth.over_cash, worth.over_all, each].map(|part| part.money.amount()))
}

/// Rows, cells, and the characters of all cells.
fn table_shape(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let table = table(inputs.text("text")?);
    if !table.faults.is_empty() {
        return Err(text(table.faults));
    }
    let cells: Vec<&String> = table.rows.iter().flatten().collect();
    let characters = cells.iter().map(|cell| cell.chars().count()).sum();
    [table.rows.len(), cells.len(), characters]
        .into_iter()
        .map(|count: usize| u32::try_from(count).map(f64::from).map_err(text))
        .collect()
}
