//! Before and now, side by side: what each result was, what it is, and whether the change is more than its ±.

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::drawings::Table;
use crate::shown::{NBSP, money, written};
use crate::state::{Action, State};
use crate::words::{self, Phrase, Tongue, frame};
use buildbook::{BeforeNow, Finding, Found, before_and_now_of};
use measure::{Manner, Money};
use std::rc::Rc;
use yew::prelude::*;

/// The props of [`BeforeNowTable`].
#[derive(Properties, PartialEq)]
pub struct BeforeNowProps {
    /// The sheet.
    pub sheet: &'static str,
    /// The results to compare, patterns allowed; empty: the sheet's headlines.
    #[prop_or_default]
    pub results: &'static [&'static str],
}

#[derive(Clone, PartialEq)]
struct Compared {
    id: Rc<str>,
    told: String,
    before: String,
    now: String,
    change: Change,
}

#[derive(Clone, Copy, PartialEq)]
enum Way {
    More,
    Less,
    Unclear,
    Same,
    Unknown,
}

#[derive(Clone, PartialEq)]
struct Change {
    way: Way,
    by: String,
}

/// The rows to compare; `None` while nothing is kept as before.
fn compared(state: &State, sheet: &str, patterns: &[&str]) -> Option<Vec<Compared>> {
    let (_, before) = state.befores.sheet(sheet)?;
    let (before, now) = (before.found(sheet)?, state.findings.found(sheet)?);
    let manner = state.settings.manner();
    let mut ids: Vec<Rc<str>> = Vec::new();
    let results = now.results().chain(before.results()).map(|(id, _)| id);
    let amounts = now.amounts().chain(before.amounts()).map(|(id, _)| id);
    let known = results.chain(amounts);
    let all: Vec<&Rc<str>> = known.collect();
    let wanted: Vec<&str> = if patterns.is_empty() {
        now.headlines.iter().map(|id| &**id).collect()
    } else {
        patterns.to_vec()
    };
    for pattern in wanted {
        for id in all.iter().filter(|id| words::matches(pattern, id)) {
            if !ids.contains(id) {
                ids.push(Rc::clone(id));
            }
        }
    }
    let rows = ids.into_iter().map(|id| {
        if now.money(&id).or_else(|| before.money(&id)).is_some() {
            return compared_money(state, id, before, now);
        }
        let row = before_and_now_of(&id, before, now);
        Compared {
            told: words::result(&state.book, &id, state.settings.tongue),
            before: said(row.before.as_ref(), &manner),
            now: said(row.now.as_ref(), &manner),
            change: change(&row, &manner),
            id,
        }
    });
    Some(
        rows.filter(|row| row.before != "—" || row.now != "—")
            .collect(),
    )
}

/// An amount of money, before and now: the change is exact.
fn compared_money(state: &State, id: Rc<str>, before: &Found, now: &Found) -> Compared {
    let amount = |found: &Found| {
        found
            .money(&id)
            .and_then(|amount| Some(amount.as_ref().ok()?.money))
    };
    let (was, is) = (amount(before), amount(now));
    let shown = |amount: Option<Money>| {
        amount.map_or_else(|| "—".to_owned(), |amount| money(&amount, state))
    };
    let by = was.zip(is).and_then(|(was, is)| is.minus(&was).ok());
    let change = match by {
        None => Change {
            way: Way::Unknown,
            by: String::new(),
        },
        Some(by) if by.is_zero() => Change {
            way: Way::Same,
            by: String::new(),
        },
        Some(by) if by.is_negative() => Change {
            way: Way::Less,
            by: money(&by, state),
        },
        Some(by) => Change {
            way: Way::More,
            by: format!("+{}", money(&by, state)),
        },
    };
    Compared {
        told: words::result(&state.book, &id, state.settings.tongue),
        before: shown(was),
        now: shown(is),
        change,
        id,
    }
}

fn said(finding: Option<&Finding>, manner: &Manner) -> String {
    match finding {
        Some(Ok(figure)) => written(figure, manner).whole(),
        _ => "—".to_owned(),
    }
}

fn change(row: &BeforeNow, manner: &Manner) -> Change {
    let Some(difference) = &row.change else {
        return Change {
            way: Way::Unknown,
            by: String::new(),
        };
    };
    let by = difference.figure.value();
    let shown = written(&difference.figure, manner).whole();
    let signed = if by > 0.0 { format!("+{shown}") } else { shown };
    let way = match (by == 0.0, difference.clear) {
        (true, _) => Way::Same,
        (_, false) => Way::Unclear,
        _ if by > 0.0 => Way::More,
        _ => Way::Less,
    };
    Change {
        way,
        by: if by == 0.0 { String::new() } else { signed },
    }
}

/// What has changed of these results, or of the headlines where none are named, as plain text for a record; `None` where nothing has, or
/// nothing is kept as before.
pub fn before_and_now_text(
    state: &State,
    sheet: &str,
    results: &[&str],
    with_money: bool,
) -> Option<Table> {
    let tongue = state.settings.tongue;
    let line = |row: Compared| {
        let word = said_of(row.change.way).map_or("", |(_, word, _)| tongue.say(word));
        let change = [row.change.by.as_str(), word].join(" ");
        vec![row.told, row.before, row.now, change.trim().to_owned()]
    };
    let money = |row: &Compared| {
        let found = state.findings.found(sheet);
        found.is_some_and(|found| found.money(&row.id).is_some())
    };
    let mut rows = compared(state, sheet, results)?;
    rows.retain(|row| row.change.way != Way::Same && (with_money || !money(row)));
    (!rows.is_empty()).then(|| Table {
        head: HEAD.map(|said| tongue.say(said).to_owned()).to_vec(),
        rows: rows.into_iter().map(line).collect(),
    })
}

/// The table, and the key that keeps today's figures as before.
#[component]
pub fn BeforeNowTable(props: &BeforeNowProps) -> Html {
    let (sheet, results) = (props.sheet, props.results);
    let rows = use_slice(move |state| compared(state, sheet, results)).flatten();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let Some(desk) = desk else { return html! {} };
    html! {
        <section class="panel before-now" aria-labelledby={format!("before-{sheet}")}>
            <div class="panel-head">
                <h2 class="ruled" id={format!("before-{sheet}")}>{ tongue.say(frame::BEFORE_AND_NOW) }</h2>
            </div>
            if let Some(rows) = &rows { { table(rows, sheet, tongue) } } else { <p class="muted">{ tongue.say(frame::KEEP_AS_BEFORE_SAID) }</p> }
            <div class="keys list-keys">
                { key(&desk, "keep-before", frame::KEEP_AS_BEFORE, Action::KeepBefore(sheet.into()), tongue) }
                if rows.is_some() {
                    { key(&desk, "back-to-before", frame::BACK_TO_BEFORE, Action::BackToBefore(sheet.into()), tongue) }
                    { key(&desk, "forget-before", frame::FORGET_BEFORE, Action::ForgetBefore(sheet.into()), tongue) }
                }
            </div>
        </section>
    }
}

fn key(desk: &Desk, name: &'static str, said: Phrase, action: Action, tongue: Tongue) -> Html {
    let desk = desk.clone();
    html! {
        <button type="button" class="key quiet" data-do={name} onclick={Callback::from(move |_| desk.send(action.clone()))}>
            if name == "keep-before" { { icon(Icon::Before) } }
            { tongue.say(said) }
        </button>
    }
}

fn table(rows: &[Compared], sheet: &str, tongue: Tongue) -> Html {
    let body = rows.iter().map(|row| {
        html! {
            <tr key={row.id.to_string()} data-before-now={row.id.to_string()}>
                <th scope="row">{ &row.told }</th>
                <td class="num">{ &row.before }</td>
                <td class="num">{ &row.now }</td>
                <td>{ change_said(&row.change, tongue) }</td>
            </tr>
        }
    });
    html! {
        <div class="table-hold" tabindex="0" role="group" aria-labelledby={format!("before-{sheet}")}>
            <table class="table compared">
                <thead><tr>{ HEAD.into_iter().map(|said| html! { <th scope="col">{ tongue.say(said) }</th> }).collect::<Html>() }</tr></thead>
                <tbody>{ body.collect::<Html>() }</tbody>
            </table>
        </div>
    }
}

/// The headings of the table.
const HEAD: [Phrase; 4] = [frame::QUANTITY, frame::BEFORE, frame::NOW, frame::CHANGE];

/// The sign, the word and the class of a change; none where it is not known.
fn said_of(way: Way) -> Option<(&'static str, Phrase, &'static str)> {
    Some(match way {
        Way::More => ("▲", frame::MORE_THAN, "now-more"),
        Way::Less => ("▼", frame::LESS_THAN, "now-less"),
        Way::Unclear => ("≈", frame::NO_CLEAR_DIFFERENCE, "clearness"),
        Way::Same => ("=", frame::SAME_AS_BEFORE, "clearness"),
        Way::Unknown => return None,
    })
}

fn change_said(change: &Change, tongue: Tongue) -> Html {
    let Some((arrow, word, class)) = said_of(change.way) else {
        return html! { "—" };
    };
    html! {
        <span {class}>
            <span class="num">{ &change.by }</span>
            { " " }<span class="nowrap">{ arrow }{ NBSP }{ tongue.say(word) }</span>
        </span>
    }
}
