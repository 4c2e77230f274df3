//! A heading with the ledger's double rule, and what stands under it; where it folds, the heading shows its own result.

use super::icon::{Icon, icon};
use crate::desk::{use_slice, use_tongue};
use crate::state::{CallTo, State};
use crate::words::{self, frame};
use buildbook::Key;
use std::rc::Rc;
use yew::prelude::*;

/// The props of [`Group`].
#[derive(Properties, PartialEq)]
pub struct GroupProps {
    /// Its id, by which the words know its heading: `gearing/tyre`.
    pub id: AttrValue,
    /// Entries, lists, results.
    #[prop_or_default]
    pub children: Html,
    /// Whether the entries stand on one card (lists bring a card of their own).
    #[prop_or(true)]
    pub card: bool,
    /// How it folds; without it, it stands open.
    #[prop_or_default]
    pub folds: Option<&'static Folds>,
}

/// How a group folds.
pub struct Folds {
    /// The fields and lists it holds, within the sheet: a call to one of them opens it.
    pub holds: &'static [&'static str],
    /// What its heading shows when it is closed; without anything, the group is of no use yet and left out.
    pub said: fn(&State) -> Option<String>,
    /// Whether it stands open when the page is come to.
    pub open: fn(&State) -> bool,
}

impl PartialEq for Folds {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}

/// A group of entries under a heading.
#[component]
pub fn Group(props: &GroupProps) -> Html {
    let tongue = use_tongue();
    let id = format!("g-{}", props.id.replace('/', "-"));
    let head = words::group(&props.id, tongue);
    let inner = || {
        if props.card {
            html! { <div class="rows">{ props.children.clone() }</div> }
        } else {
            props.children.clone()
        }
    };
    let Some(folds) = props.folds else {
        return html! {
            <section class="group" aria-labelledby={id.clone()}>
                <h2 class="ruled" {id}>{ head }</h2>
                { inner() }
            </section>
        };
    };
    html! { <Folding id={props.id.clone()} {folds} inner={inner()} /> }
}

#[derive(Properties, PartialEq)]
struct FoldingProps {
    id: AttrValue,
    folds: &'static Folds,
    inner: Html,
}

/// What a group that folds shows of the state.
#[derive(Clone, PartialEq)]
struct Slice {
    said: Option<String>,
    /// Whether it would stand open if the page were come to now.
    open: bool,
    /// The number of the last call, where it was to something in this group.
    called: Option<u32>,
    printing: bool,
    /// Whether an entry in it cannot be used as it stands.
    faulty: bool,
    book: Rc<str>,
}

fn slice(state: &State, id: &str, folds: &Folds) -> Slice {
    let sheet = id.split('/').next().unwrap_or_default();
    let holds = |key: &Key| {
        let mut path = key.as_str().split('/');
        path.next() == Some(sheet) && path.next().is_some_and(|part| folds.holds.contains(&part))
    };
    let called = match &state.view.call.to {
        CallTo::Entry(key) | CallTo::Row(key) => holds(key),
        _ => false,
    };
    let found = state.findings.found(sheet);
    Slice {
        said: (folds.said)(state),
        open: (folds.open)(state),
        called: called.then_some(state.view.call.number),
        printing: state.view.printing,
        faulty: found.is_some_and(|found| found.errors.iter().any(|(key, _)| holds(key))),
        book: Rc::clone(state.book.id()),
    }
}

/// A group that folds. It stays as it was left for as long as the page is shown; a call to what it holds opens it, and on paper it
/// stands open.
#[component]
fn Folding(props: &FoldingProps) -> Html {
    let (tongue, folds) = (use_tongue(), props.folds);
    let now = {
        let id = props.id.clone();
        use_slice(move |state| slice(state, &id, folds))
    };
    let book = now.as_ref().map(|now| Rc::clone(&now.book));
    let first = use_memo(book, |_| now.as_ref().is_some_and(|now| now.open));
    // As it was put by hand or by a call, and the call that was answered by then; for this book.
    let put = use_state(|| None::<(bool, Option<u32>, Rc<str>)>);
    let calls = now
        .as_ref()
        .and_then(|now| Some((now.called?, Rc::clone(&now.book))));
    {
        let put = put.clone();
        use_effect_with(calls, move |calls| {
            if let Some((call, book)) = calls {
                put.set(Some((true, Some(*call), Rc::clone(book))));
            }
        });
    }
    let Some(now) = now else { return html! {} };
    let Some(said) = now.said else {
        return html! {};
    };
    let by_hand = put.as_ref().filter(|(.., book)| *book == now.book);
    let answered = by_hand.and_then(|(_, call, _)| *call);
    let called = now.called.is_some() && now.called != answered;
    let open = now.printing || called || by_hand.map_or(*first, |(open, ..)| *open);
    let id = format!("g-{}", props.id.replace('/', "-"));
    let press = {
        let (put, call, book) = (put.clone(), now.called, now.book);
        Callback::from(move |_: MouseEvent| put.set(Some((!open, call, Rc::clone(&book)))))
    };
    html! {
        <section class={classes!("group", "folds")} aria-labelledby={id.clone()}>
            <h2 class={open.then_some("ruled")} {id}>
                <button type="button" class="fold" data-do={format!("open {}", props.id)}
                    aria-expanded={if open { "true" } else { "false" }} onclick={press}>
                    { icon(if open { Icon::Open } else { Icon::Close }) }
                    <span class="name">{ words::group(&props.id, tongue) }</span>
                    if now.faulty { <span class="faulty">{ icon(Icon::Warning) }{ tongue.say(frame::WARNING) }</span> }
                    if !open { <span class="num found">{ said }</span> }
                </button>
            </h2>
            if open { { props.inner.clone() } }
        </section>
    }
}
