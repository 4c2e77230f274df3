//! "Hire or buy?", "Send out or do here?", answered in a sentence; and quotes that have run out.

use crate::browser;
use crate::desk::{use_settings, use_slice};
use crate::shown::money;
use crate::state::State;
use crate::widgets::{Icon, icon};
use crate::words::costs::word;
use crate::words::{Tongue, costs, filled, frame, lack};
use measure::{Money, shown_decimal};
use trade::costs::{BreakEven, Choice, LineState, Side};
use yew::prelude::*;

#[derive(Clone, PartialEq)]
struct Verdict {
    id: String,
    what: String,
    said: Vec<String>,
}

/// How a pair of ways is spoken of.
struct Ways {
    first: &'static str,
    second: &'static str,
    first_cheaper: &'static str,
    second_cheaper: &'static str,
    even: &'static str,
    never: &'static str,
}

const HIRE: Ways = Ways {
    first: "hire",
    second: "buy",
    first_cheaper: "hire_cheaper",
    second_cheaper: "buy_cheaper",
    even: "even_at_days",
    never: "never_days",
};
const SEND: Ways = Ways {
    first: "send",
    second: "here",
    first_cheaper: "send_cheaper",
    second_cheaper: "here_cheaper",
    even: "even_at_pieces",
    never: "never_pieces",
};

fn way(name: &str, tongue: Tongue) -> String {
    let phrase = match name {
        "hire" => costs::HIRE,
        "buy" => costs::BUY,
        "send" => costs::SEND_OUT,
        _ => costs::DO_HERE,
    };
    tongue.say(phrase).to_owned()
}

fn cheaper(side: Side, gap: &Money, first: &str, second: &str, state: &State) -> String {
    let tongue = state.settings.tongue;
    let gap = [money(gap, state)];
    match side {
        Side::First => filled(tongue.say(word(first)), &gap),
        Side::Second => filled(tongue.say(word(second)), &gap),
        Side::Alike => tongue.say(word("same_cost")).to_owned(),
    }
}

fn break_even(choice: &Choice, ways: &Ways, state: &State) -> String {
    let tongue = state.settings.tongue;
    let name = |side: Side| match side {
        Side::First => way(ways.first, tongue),
        _ => way(ways.second, tongue),
    };
    let mark = state.settings.manner().mark;
    match &choice.break_even {
        BreakEven::At {
            count,
            from,
            beyond,
            ..
        } => {
            let figures = [count, from].map(|count| shown_decimal(count.normalize(), mark));
            let [count, from] = figures;
            filled(tongue.say(word(ways.even)), &[count, from, name(*beyond)])
        }
        BreakEven::Never(Side::Alike) => tongue.say(word("same_cost")).to_owned(),
        BreakEven::Never(side) => filled(tongue.say(word(ways.never)), &[name(*side)]),
    }
}

fn hired(state: &State) -> Vec<Verdict> {
    let verdict = |asked: &buildbook::sheets::costs::HireFinding| {
        let said = match &asked.answer {
            Ok(choice) => {
                let less = choice.cheaper.as_ref();
                let less = less.map(|(side, gap)| {
                    cheaper(*side, gap, HIRE.first_cheaper, HIRE.second_cheaper, state)
                });
                less.into_iter()
                    .chain([break_even(choice, &HIRE, state)])
                    .collect()
            }
            Err(why) => vec![lack::said(why, &state.book, state.settings.tongue)],
        };
        Verdict {
            id: asked.key.to_string(),
            what: asked.what.to_string(),
            said,
        }
    };
    state.findings.costs.hire.iter().map(verdict).collect()
}

fn sent(state: &State) -> Vec<Verdict> {
    let tongue = state.settings.tongue;
    let verdict = |asked: &buildbook::sheets::costs::SendFinding| {
        let said = match &asked.answer {
            Ok(answer) => {
                let with_hours = &answer.with_hours;
                let less = with_hours.cheaper.as_ref();
                let less = less.map(|(side, gap)| {
                    cheaper(*side, gap, SEND.first_cheaper, SEND.second_cheaper, state)
                });
                let cash = answer.cash.cheaper.as_ref();
                let cash = cash.map(|(side, gap)| {
                    cheaper(*side, gap, "send_cheaper_cash", "here_cheaper_cash", state)
                });
                let earned = answer.earned_each_hour.as_ref();
                let earned = earned.map(|earned| {
                    filled(
                        tongue.say(word("hour_earns")),
                        &[money(&earned.money, state)],
                    )
                });
                let even = Some(break_even(with_hours, &SEND, state));
                [less, cash, earned, even].into_iter().flatten().collect()
            }
            Err(why) => vec![lack::said(why, &state.book, tongue)],
        };
        Verdict {
            id: asked.key.to_string(),
            what: asked.what.to_string(),
            said,
        }
    };
    state.findings.costs.send.iter().map(verdict).collect()
}

fn verdicts(found: Vec<Verdict>) -> Html {
    let said = found.into_iter().map(|verdict| {
        html! {
            <div class="verdict" key={verdict.id.clone()} data-result={format!("{}/verdict", verdict.id)}>
                if !verdict.what.is_empty() { <h3>{ verdict.what }</h3> }
                { verdict.said.into_iter().map(|said| html! { <p>{ said }</p> }).collect::<Html>() }
            </div>
        }
    });
    said.collect()
}

/// The answers to "hire or buy?".
#[component]
pub fn HireVerdicts() -> Html {
    verdicts(use_slice(hired).unwrap_or_default())
}

/// The answers to "send out or do here?".
#[component]
pub fn SendVerdicts() -> Html {
    verdicts(use_slice(sent).unwrap_or_default())
}

/// Quotes that no longer hold, of lines that are not paid.
#[component]
pub fn QuoteRunsOut() -> Html {
    let tongue = use_settings().tongue;
    let found = use_slice(|state| {
        let today = browser::today()?;
        let costs = &state.findings.costs;
        let rows = costs.sheet.lines.iter();
        let gone = rows.filter_map(|row| {
            let line = costs.lines.iter().find(|line| line.key == row.key)?;
            let day = row
                .holds_until
                .value()
                .filter(|day| **day < today && line.state != LineState::Paid)?;
            Some((line.key.to_string(), line.what.to_string(), day.to_string()))
        });
        Some(gone.collect::<Vec<_>>())
    });
    let gone = found.flatten().unwrap_or_default();
    if gone.is_empty() {
        return html! {};
    }
    let said = gone.into_iter().map(|(key, what, day)| {
        html! {
            <li {key} data-remark="quote_ran_out"><p>{ filled(tongue.say(word("runs_out")), &[what, day]) }</p></li>
        }
    });
    html! {
        <div class="remarks">
            <section class="remark caution">
                { icon(Icon::Caution) }
                <span class="rank">{ tongue.say(frame::CAUTION_WORD) }</span>
                <ul>{ said.collect::<Html>() }</ul>
            </section>
        </div>
    }
}
