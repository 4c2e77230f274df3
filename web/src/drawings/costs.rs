//! The budget as a bar cut into its parts, and two ways of paying with the count at which they cost the same.

use super::parts::{Fill, Lean, Line, area, dot, line, polyline, px, text, text_width};
use super::{Axis, Drawing, Labels, Paper, Plate, Plot, Span, Table};
use crate::shown::{NBSP, money};
use crate::state::State;
use crate::words::{self, Tongue, costs as said, filled};
use buildbook::sheets::costs::Asked;
use buildbook::{Key, Lack, MoneyFinding};
use measure::{Decimal, Money};
use trade::costs::{BreakEven, Choice, Reckoned};
use yew::{Html, html};

/// The budget: paid, committed, planned, held back, left.
pub static BUDGET: Plate = Plate::new("costs/budget", 0.84, budget);

/// Hire or buy.
pub static HIRE: Plate = Plate::new("costs/hire_even", 0.62, hire);

/// Send out or do here.
pub static SEND: Plate = Plate::new("costs/send_even", 0.62, send);

/// A decimal as a place on the paper: a float is fine enough for that.
fn float(value: Decimal) -> f64 {
    value.to_string().parse().unwrap_or(0.0)
}

fn known(finding: Option<&MoneyFinding>) -> Option<Money> {
    finding?
        .as_ref()
        .ok()
        .map(|reckoned: &Reckoned| reckoned.money)
}

/// The parts of the budget, each from where the last one ended.
fn budget(state: &State, paper: &Paper) -> Option<Drawing> {
    let found = &state.findings.costs.found;
    let limit = *state.findings.costs.sheet.limit.value()?;
    let parts = [
        ("costs/paid", Fill::Now),
        ("costs/committed", Fill::Metal),
        ("costs/planned", Fill::Before),
        ("costs/contingency", Fill::Uncertain),
    ];
    let mut amounts = Vec::new();
    for (id, fill) in parts {
        amounts.push((id, known(found.money(id))?, Some(fill)));
    }
    let left = known(found.money("costs/left"))?;
    amounts.push(("costs/left", left, None));
    let tongue = paper.tongue;
    let rows: Vec<Row> = rows(state, &amounts, tongue);
    let spent = rows.iter().map(|row| row.to).fold(0.0, f64::max);
    let whole = float(limit.amount()).max(spent);
    let list: Vec<String> = rows
        .iter()
        .map(|row| format!("{} {}", row.name, row.amount))
        .collect();
    let over = left.is_negative().then(|| {
        filled(
            tongue.say(said::BUDGET_OVER),
            &[money(&left.negated(), state)],
        )
    });
    let description = filled(tongue.say(said::BUDGET_SAID), &[list.join(", ")]);
    let share = |row: &Row| {
        format!(
            "{:.0}\u{a0}%",
            (row.to - row.from) / float(limit.amount()).max(1e-9) * 100.0
        )
    };
    let table = rows
        .iter()
        .map(|row| vec![row.name.clone(), row.amount.clone(), share(row)])
        .collect();
    Some(Drawing {
        title: tongue.say(said::BUDGET_TITLE).to_owned(),
        description: over.map_or(description.clone(), |over| format!("{description} {over}")),
        marks: bars(
            &rows,
            whole,
            float(limit.amount()),
            &money(&limit, state),
            paper,
        ),
        table: Table {
            head: [said::PART, said::AMOUNT, said::OF_LIMIT]
                .map(|phrase| tongue.say(phrase).to_owned())
                .to_vec(),
            rows: table,
        },
    })
}

struct Row {
    name: String,
    amount: String,
    from: f64,
    to: f64,
    fill: Option<Fill>,
}

fn rows(
    state: &State,
    amounts: &[(&'static str, Money, Option<Fill>)],
    tongue: Tongue,
) -> Vec<Row> {
    let mut at = 0.0;
    let row = |(id, amount, fill): &(&'static str, Money, Option<Fill>)| {
        let from = at;
        at += float(amount.amount());
        Row {
            name: words::result(&state.book, id, tongue),
            amount: money(amount, state),
            from,
            to: at,
            fill: *fill,
        }
    };
    amounts.iter().map(row).collect()
}

fn bars(rows: &[Row], whole: f64, limit: f64, limit_said: &str, paper: &Paper) -> Html {
    let (left, right, top) = (16.0, paper.width - 16.0, 40.0);
    let step = (paper.height - top - 6.0) / 5.0;
    let lowest = rows
        .iter()
        .flat_map(|row| [row.from, row.to])
        .fold(0.0, f64::min);
    let across = |value: f64| left + (value - lowest) / (whole - lowest).max(1e-9) * (right - left);
    let bar = |row: &Row, at: usize| {
        let y = top + step * f64::from(u32::try_from(at).unwrap_or(0));
        let (base, tall) = (y + 28.0, (step - 34.0).clamp(10.0, 44.0));
        let (from, to) = (across(row.from.min(row.to)), across(row.from.max(row.to)));
        let to = to.max(from + 1.0);
        let corners = [
            (from, base),
            (to, base),
            (to, base + tall),
            (from, base + tall),
        ];
        let over = row.to < row.from;
        html! {
            <>
                { text((left, y + 20.0), Lean::Start, &row.name) }
                { text((right - 10.0, y + 20.0), Lean::End, &row.amount) }
                { match row.fill {
                    Some(fill) => area(&corners, fill),
                    None if over => area(&corners, Fill::Hatched),
                    None => html! { <path class="outline" d={format!("M{} {}H{}V{}H{}Z", px(from), px(base), px(to), px(base + tall), px(from))} /> },
                } }
                { line((left, base + tall), (right, base + tall), Line::Fine) }
            </>
        }
    };
    let mark = across(limit);
    let leans = if mark - left > text_width(limit_said) + 12.0 {
        Lean::End
    } else {
        Lean::Start
    };
    html! {
        <>
            { rows.iter().enumerate().map(|(at, row)| bar(row, at)).collect::<Html>() }
            { line((mark, top - 12.0), (mark, paper.height - 2.0), Line::Limit) }
            { text((mark - 10.0, 20.0), leans, limit_said) }
        </>
    }
}

/// The question that is being asked: the one whose field or answer is at hand, else the first.
fn at_hand<'a, T>(state: &State, list: &str, asked: &'a [Asked<T>]) -> Option<&'a Asked<T>> {
    let field = state.view.field.as_ref().map(Key::as_str);
    let answer = state.view.answers.get("costs").map(|id| &**id);
    let of = |path: &str| {
        asked
            .iter()
            .find(|question| path.starts_with(&format!("{}/", question.key)))
    };
    let wanted = [field, answer]
        .into_iter()
        .flatten()
        .find(|path| path.starts_with(list))
        .and_then(of);
    wanted
        .filter(|question| question.answer.is_ok())
        .or_else(|| asked.iter().find(|question| question.answer.is_ok()))
}

struct Sides {
    question: String,
    first: &'static str,
    second: &'static str,
    unit: &'static str,
    count: Option<Decimal>,
}

fn hire(state: &State, paper: &Paper) -> Option<Drawing> {
    let costs = &state.findings.costs;
    let question = at_hand(state, "costs/hire/", &costs.hire)?;
    let choice: Result<&Choice, &Lack> = question.answer.as_ref();
    let row = costs
        .sheet
        .hire
        .iter()
        .find(|row| row.key == question.key)?;
    let tongue = paper.tongue;
    let sides = Sides {
        question: question.what.to_string(),
        first: tongue.say(said::HIRE),
        second: tongue.say(said::BUY),
        unit: tongue.say(said::DAYS),
        count: row.days.value().copied(),
    };
    two_ways(choice.ok()?, &sides, paper)
}

fn send(state: &State, paper: &Paper) -> Option<Drawing> {
    let costs = &state.findings.costs;
    let question = at_hand(state, "costs/send/", &costs.send)?;
    let answer = question.answer.as_ref().ok()?;
    let row = costs
        .sheet
        .send
        .iter()
        .find(|row| row.key == question.key)?;
    let tongue = paper.tongue;
    let sides = Sides {
        question: question.what.to_string(),
        first: tongue.say(said::SEND_OUT),
        second: tongue.say(said::DO_HERE),
        unit: tongue.say(said::PIECES),
        count: row.count.value().copied(),
    };
    two_ways(&answer.with_hours, &sides, paper)
}

/// Two straight lines, where they meet, and the count that is wanted.
fn two_ways(choice: &Choice, sides: &Sides, paper: &Paper) -> Option<Drawing> {
    let tongue = paper.tongue;
    let meeting = match &choice.break_even {
        BreakEven::At { count, .. } => Some(*count),
        BreakEven::Never(_) => None,
    };
    let wanted = sides.count.map(float).unwrap_or(0.0);
    let met = meeting.map(float).unwrap_or(0.0);
    let most = (met * 1.8).max(wanted * 1.25).max(2.0);
    let cost = |course: &trade::costs::Course, n: f64| {
        float(course.fixed.money.amount()) + float(course.each.money.amount()) * n
    };
    let ends = [
        cost(&choice.first, most),
        cost(&choice.second, most),
        cost(&choice.first, 0.0),
        cost(&choice.second, 0.0),
    ];
    let x = Span {
        lowest: 0.0,
        highest: most,
    };
    let y = Span::of(ends)?.with_nought();
    let plot = Plot::with_room(paper, x, y, 78.0, 24.0);
    let currency = choice.first.fixed.money.currency();
    let whole = |value: f64| shown_count(value, paper);
    let x_axis = Axis::round(sides.unit, x, 6, |v| shown_count(v, paper));
    let y_axis = Axis::round(
        format!("{}, {currency}", tongue.say(said::COST)),
        y,
        5,
        whole,
    );
    let run = |course| plot.all(&[(0.0, cost(course, 0.0)), (most, cost(course, most))]);
    let (one, two) = (run(&choice.first), run(&choice.second));
    let mut labels = Labels::new(paper);
    let near_end = |course| plot.at(most * 0.4, cost(course, most * 0.4));
    labels.add(near_end(&choice.first), sides.first);
    labels.add(near_end(&choice.second), sides.second);
    let told = meeting.map_or_else(
        || tongue.say(said::NEVER_ALIKE).to_owned(),
        |count| {
            filled(
                tongue.say(said::ALIKE_AT),
                &[format!(
                    "{} {}",
                    measure::shown_decimal(count.normalize(), paper.manner.mark),
                    sides.unit.to_ascii_lowercase()
                )],
            )
        },
    );
    let marks = html! {
        <>
            { plot.axes(&x_axis, &y_axis) }
            { meeting.map(|count| {
                let count = measure::shown_decimal(count.round_dp(1).normalize(), paper.manner.mark);
                plot.upright(met, &format!("{count}{NBSP}{}", sides.unit.to_ascii_lowercase()))
            }) }
            { polyline(&one, Line::Against) }
            { polyline(&two, Line::Now) }
            if wanted > 0.0 {
                { dot(plot.at(wanted, cost(&choice.first, wanted)), Fill::Before) }
                { dot(plot.at(wanted, cost(&choice.second, wanted)), Fill::Now) }
            }
            { labels.placed() }
        </>
    };
    let mut counts = vec![0.0, wanted, met, most.floor()];
    counts.retain(|n| n.is_finite());
    measure::sort_by(&mut counts, f64::total_cmp);
    counts.dedup();
    let rows = counts
        .iter()
        .map(|n| {
            vec![
                shown_count(*n, paper),
                whole(cost(&choice.first, *n)),
                whole(cost(&choice.second, *n)),
            ]
        })
        .collect();
    Some(Drawing {
        title: filled(
            tongue.say(said::CHOICE_TITLE),
            std::slice::from_ref(&sides.question),
        ),
        description: filled(
            tongue.say(said::CHOICE_SAID),
            &[sides.first.to_owned(), sides.second.to_owned(), told],
        ),
        marks,
        table: Table {
            head: vec![
                sides.unit.to_owned(),
                sides.first.to_owned(),
                sides.second.to_owned(),
            ],
            rows,
        },
    })
}

fn shown_count(value: f64, paper: &Paper) -> String {
    let rounded = measure::measured_decimal(value)
        .unwrap_or_default()
        .normalize();
    measure::shown_decimal(rounded, paper.manner.mark)
}
