//! Costs as a table: saved to a file, and brought in from one with a look at what is odd before anything is taken.

use super::priced::called;
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::files;
use crate::state::{Action, State};
use crate::widgets::{Icon, icon};
use crate::words::costs::word;
use crate::words::{self, Tongue, entry, filled};
use buildbook::Key;
use buildbook::sheets::costs::{CellProblem, Preview, Problem, costs_table, preview};
use measure::Manner;
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

/// The most problems that are listed one by one.
const MOST: usize = 12;

fn problem(found: &CellProblem, manner: &Manner, tongue: Tongue) -> String {
    let place = |why: &str| {
        let column = found.column.trim().to_owned();
        let parts = [found.row.to_string(), column, found.text.clone()];
        format!(
            "{} {}",
            filled(tongue.say(word("problem_row")), &parts),
            tongue.say(word(why))
        )
    };
    match &found.why {
        Problem::Unreadable(error) => {
            format!(
                "{} {}",
                place("problem_unreadable"),
                entry::fault(error, manner, tongue).said
            )
        }
        Problem::UnknownColumn => {
            format!("“{}” {}", found.text, tongue.say(word("problem_column")))
        }
        Problem::SurplusCells => place("problem_surplus"),
        Problem::Quotes => place("problem_quotes"),
        Problem::NoHeading => tongue.say(word("problem_heading")).to_owned(),
        Problem::FromSheet => place("problem_from_sheet"),
        _ => place("problem_unreadable"),
    }
}

fn shown(found: &Preview, manner: &Manner, tongue: Tongue) -> Html {
    let columns = ["what", "price", "state", "quantity", "payer", "day"];
    let head = columns.map(|name| html! { <th scope="col">{ words::label(&format!("costs/lines/1/{name}"), tongue) }</th> });
    let rows = found.rows.iter().take(50).map(|row| {
        let cell = |name: &str| row.iter().find(|(known, _)| *known == name).map(|(_, text)| text.clone());
        html! { <tr>{ columns.iter().map(|name| html! { <td>{ cell(name) }</td> }).collect::<Html>() }</tr> }
    });
    let problems = found
        .problems
        .iter()
        .take(MOST)
        .map(|found| html! { <li>{ problem(found, manner, tongue) }</li> });
    let count = match found.rows.len() {
        1 => tongue.say(word("one_row_found")).to_owned(),
        count => filled(tongue.say(word("rows_found")), &[count.to_string()]),
    };
    html! {
        <>
            <p data-do="table-rows">{ count }</p>
            if found.problems.is_empty() {
                <p class="muted" data-do="table-problems">{ tongue.say(word("no_problems")) }</p>
            } else {
                <ul class="problems" data-do="table-problems">{ problems.collect::<Html>() }</ul>
            }
            <div class="table-hold" tabindex="0"><table class="table"><thead><tr>{ head.into_iter().collect::<Html>() }</tr></thead><tbody>{ rows.collect::<Html>() }</tbody></table></div>
        </>
    }
}

/// Every line of cost as a table.
fn text(state: &State) -> String {
    costs_table(
        &state.book,
        &state.findings.costs,
        state.settings.mark,
        &|line| called(line, state.settings.tongue),
    )
}

fn save(desk: &Desk, tongue: Tongue) {
    let text = text(&desk.state());
    let name = format!("{}.csv", tongue.say(word("file_name")));
    files::save(&name, "text/csv;charset=utf-8", &text);
}

/// The keys that save and bring in a table.
#[component]
pub fn CostsTable() -> Html {
    let (desk, settings) = (use_desk(), use_settings());
    let tongue = settings.tongue;
    let currency = use_slice(|state| state.book.currency());
    let (open, text) = (use_state(|| false), use_state(String::new));
    let (Some(desk), Some(currency)) = (desk, currency) else {
        return html! {};
    };
    let manner = settings.manner();
    let found = (!text.trim().is_empty()).then(|| preview(&text, currency, manner.mark));
    let flip = {
        let open = open.clone();
        Callback::from(move |_: MouseEvent| open.set(!*open))
    };
    let saved = {
        let desk = desk.clone();
        Callback::from(move |_: MouseEvent| save(&desk, tongue))
    };
    let take = found.clone().filter(|found| !found.rows.is_empty()).map(|found| {
        let (text, open) = (text.clone(), open.clone());
        let taken = Callback::from(move |_: MouseEvent| {
            let state = desk.state();
            desk.send(Action::Change(found.edit(&state.book, &state.log)));
            text.set(String::new());
            open.set(false);
        });
        html! { <button type="button" class="key main tall" data-do="take-table" onclick={taken}>{ icon(Icon::Ready) }{ tongue.say(word("take_rows")) }</button> }
    });
    html! {
        <div class="paste" data-list={Key::from("costs/table").to_string()}>
            <div class="keys">
                <button type="button" class="key tall" data-do="save-table" onclick={saved}>{ icon(Icon::Table) }{ tongue.say(word("save_table")) }</button>
                <button type="button" class="key quiet tall" data-do="bring-table" aria-expanded={if *open { "true" } else { "false" }} onclick={flip}>
                    { icon(Icon::Paste) }{ tongue.say(word("take_table")) }
                </button>
            </div>
            if *open {
                { source(&text, tongue) }
                { found.map(|found| shown(&found, &manner, tongue)) }
                { take }
            }
        </div>
    }
}

/// Where a table is pasted, or a file chosen.
fn source(text: &UseStateHandle<String>, tongue: Tongue) -> Html {
    let input = {
        let text = text.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(area) = event.target_dyn_into::<HtmlTextAreaElement>() {
                text.set(area.value());
            }
        })
    };
    let picked = {
        let text = text.clone();
        Callback::from(move |event: Event| {
            let field = event.target_dyn_into::<HtmlInputElement>();
            if let Some(file) = field.as_ref().and_then(files::chosen) {
                let text = text.clone();
                files::read(file, move |read| {
                    if let Some(read) = read {
                        text.set(read);
                    }
                });
            }
        })
    };
    html! {
        <>
            <label>{ tongue.say(word("paste_table")) }<textarea data-do="table-text" value={(**text).clone()} oninput={input} /></label>
            <label class="key file">{ tongue.say(word("choose_file")) }
                <input type="file" class="unseen" accept=".csv,.txt,text/csv,text/plain" data-do="table-file" onchange={picked} />
            </label>
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route::Route;
    use crate::settings::Settings;
    use buildbook::{Book, Log};

    #[test]
    fn a_purchase_without_words_of_its_own_has_the_name_in_the_file_that_the_page_gives_it() {
        for (tongue, name) in [
            (Tongue::British, "Drilling template"),
            (Tongue::American, "Drilling template"),
        ] {
            let entries = [
                ("marking/template_got", "bought"),
                ("marking/template_buy", "45"),
                ("final_drive/shim_price", "2"),
            ];
            let book = Book::of("b", entries.map(|(key, text)| (key.into(), text.into())));
            let settings = Settings {
                tongue,
                ..Settings::default()
            };
            let state = State::new(book, Log::default(), settings, Route::Costs);
            let text = text(&state);
            let lines: Vec<&str> = text.lines().skip(1).collect();
            assert_eq!(lines.len(), 1, "{text}");
            assert!(lines[0].starts_with(name), "{text}");
        }
    }
}
