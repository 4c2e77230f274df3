//! A drawing with its title, its one sentence for those who do not see it, and the same as a table.

use super::icon::{Icon, icon};
use crate::desk::{use_desk, use_settings, use_slice};
use crate::drawings::parts::px;
use crate::drawings::{CLOSE, Drawing, Near, Paper, Plate, Point, Table, first_to_measure};
use crate::words::{self, Tongue, found, frame};
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{AddEventListenerOptions, Element, ResizeObserver, TouchEvent};
use yew::prelude::*;

/// The props of [`DrawingFrame`].
#[derive(Properties, PartialEq)]
pub struct DrawingFrameProps {
    /// The drawing.
    pub plate: &'static Plate,
}

/// How wide a drawing is before its frame was measured.
const USUAL_WIDTH: f64 = 560.0;

/// The drawing at the width its frame has on the screen, so that text keeps its 18 px.
#[component]
pub fn DrawingFrame(props: &DrawingFrameProps) -> Html {
    let plate = props.plate;
    let hold = use_node_ref();
    let width = use_width(&hold);
    use_two_fingers(&hold);
    let settings = use_settings();
    let tabled = use_state(|| false);
    let near = use_state_eq(Near::default);
    let hand = use_mut_ref(Hand::default);
    let close = CLOSE.iter().find(|(id, _)| *id == plate.id);
    let desk = use_desk();
    let paper = Paper {
        near: *near,
        width,
        height: use_slice(move |state| plate.height(state, width)).unwrap_or_default(),
        manner: settings.manner(),
        tongue: settings.tongue,
    };
    let drawing = {
        let paper = paper.clone();
        use_slice(move |state| (plate.draw)(state, &paper)).flatten()
    };
    let eye = {
        let paper = paper.clone();
        Rc::new(move || {
            let (_, looks_at) = close?;
            looks_at(&desk.as_ref()?.state(), &paper)
        })
    };
    let touch = |touch| touched(&near, &hand, &eye, touch);
    let body = match &drawing {
        None => empty(plate, &paper),
        Some(drawing) if *tabled => table(&drawing.table),
        Some(drawing) if close.is_some() => html! {
            <div class={classes!("close", (near.zoom > 1.0).then_some("near"))}
                onpointerdown={touch(Touch::Down)} onpointermove={touch(Touch::Moves)}
                onpointerup={touch(Touch::Up)} onpointercancel={touch(Touch::Up)}>
                { svg(drawing, &paper, plate) }
                { nearer_keys(&near, &hand, plate, settings.tongue) }
            </div>
        },
        Some(drawing) => svg(drawing, &paper, plate),
    };
    let flip = {
        let tabled = tabled.clone();
        Callback::from(move |_: MouseEvent| tabled.set(!*tabled))
    };
    let said = if *tabled {
        frame::SHOW_AS_DRAWING
    } else {
        frame::SHOW_AS_TABLE
    };
    html! {
        <figure class="drawing" ref={hold} data-drawing={plate.id}>
            if let Some(drawing) = &drawing {
                <figcaption>
                    <h3>{ &drawing.title }</h3>
                    <button type="button" class="key quiet" data-do={format!("table {}", plate.id)}
                        aria-pressed={if *tabled { "true" } else { "false" }} onclick={flip}>
                        { icon(Icon::Table) }{ settings.tongue.say(said) }
                    </button>
                </figcaption>
            }
            { body }
        </figure>
    }
}

/// Nearer, further, and the whole.
fn nearer_keys(
    near: &UseStateHandle<Near>,
    hand: &Rc<RefCell<Hand>>,
    plate: &Plate,
    tongue: Tongue,
) -> Html {
    let now = **near;
    let key = |name: &str, sign: &'static str, said: words::Phrase, to: Near| {
        let still = now == to;
        let (near, hand) = (near.clone(), Rc::clone(hand));
        let press = Callback::from(move |_: MouseEvent| {
            hand.borrow_mut().near = to;
            near.set(to);
        });
        html! {
            <button type="button" class="key" data-do={format!("{name} {}", plate.id)} aria-label={tongue.say(said)} disabled={still}
                onclick={press}>{ sign }</button>
        }
    };
    html! {
        <div class="nearer" data-zoom={near.zoom.to_string()}>
            { key("further", "\u{2212}", frame::FURTHER, near.by(0.5)) }
            { key("nearer", "+", frame::NEARER, near.by(2.0)) }
            { key("whole", tongue.say(frame::WHOLE), frame::WHOLE, Near::default()) }
        </div>
    }
}

/// What the hand has done to a drawing: moves come faster than the page is drawn, so this is where they add up.
#[derive(Default)]
struct Hand {
    near: Near,
    fingers: Vec<(i32, Point)>,
}

#[derive(Clone, Copy)]
enum Touch {
    Down,
    Moves,
    Up,
}

/// Fingers on the drawing: one moves what was brought near, two bring it nearer or further and take it along, so that what lies between
/// them stays there.
fn touched(
    near: &UseStateHandle<Near>,
    hand: &Rc<RefCell<Hand>>,
    eye: &Rc<impl Fn() -> Option<Point> + 'static>,
    touch: Touch,
) -> Callback<PointerEvent> {
    let (near, hand, eye) = (near.clone(), Rc::clone(hand), Rc::clone(eye));
    Callback::from(move |event: PointerEvent| {
        let hand = &mut *hand.borrow_mut();
        let id = event.pointer_id();
        let here = (f64::from(event.client_x()), f64::from(event.client_y()));
        let held = hand.fingers.iter().position(|(finger, _)| *finger == id);
        match (touch, held) {
            (Touch::Down, _) => {
                // The first finger of a hand: whatever was not seen leaving is gone.
                if event.is_primary() {
                    hand.fingers.clear();
                }
                hand.fingers.push((id, here));
            }
            (Touch::Up, Some(at)) => drop(hand.fingers.swap_remove(at)),
            (Touch::Moves, Some(at)) => {
                let last = std::mem::replace(&mut hand.fingers[at].1, here);
                let other = hand.fingers.iter().find(|(finger, _)| *finger != id);
                hand.near = match other {
                    Some((_, other)) => {
                        let from = from_the_eye(&event, half_way(last, *other), eye());
                        let times = apart(here, *other) / apart(last, *other);
                        // Both fingers take it along, this one by half of its way.
                        hand.near
                            .about(times, from)
                            .shifted((here.0 - last.0) / 2.0, (here.1 - last.1) / 2.0)
                    }
                    None => hand.near.shifted(here.0 - last.0, here.1 - last.1),
                };
                near.set(hand.near);
            }
            _ => {}
        }
    })
}

fn apart(a: Point, b: Point) -> f64 {
    (a.0 - b.0).hypot(a.1 - b.1).max(1.0)
}

fn half_way(a: Point, b: Point) -> Point {
    ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0)
}

/// How far a point of the screen lies from where on the whole paper the eye is.
fn from_the_eye(event: &PointerEvent, at: Point, eye: Option<Point>) -> Point {
    let target = event.target_dyn_into::<Element>();
    let paper = target.and_then(|target| target.closest("svg.plate").ok().flatten());
    let (Some(paper), Some(eye)) = (paper, eye) else {
        return (0.0, 0.0);
    };
    let edges = paper.get_bounding_client_rect();
    (at.0 - edges.left() - eye.0, at.1 - edges.top() - eye.1)
}

fn svg(drawing: &Drawing, paper: &Paper, plate: &Plate) -> Html {
    let id = plate.id.replace('/', "-");
    let (title, description) = (format!("{id}-title"), format!("{id}-description"));
    html! {
        <svg class="plate" role="img" viewBox={format!("0 0 {} {}", px(paper.width), px(paper.height))}
            aria-labelledby={title.clone()} aria-describedby={description.clone()}>
            <title id={title}>{ &drawing.title }</title>
            <desc id={description}>{ &drawing.description }</desc>
            { drawing.marks.clone() }
        </svg>
    }
}

/// The facts of a drawing as a table.
pub fn table(table: &Table) -> Html {
    let head = table
        .head
        .iter()
        .map(|cell| html! { <th scope="col">{ cell }</th> });
    let rows = table.rows.iter().map(|row| {
        let cells = row.iter().enumerate().map(|(at, cell)| {
            if at == 0 {
                html! { <th scope="row">{ cell }</th> }
            } else {
                html! { <td class="num">{ cell }</td> }
            }
        });
        html! { <tr>{ cells.collect::<Html>() }</tr> }
    });
    html! {
        <div class="table-hold" tabindex="0">
            <table class="table"><thead><tr>{ head.collect::<Html>() }</tr></thead><tbody>{ rows.collect::<Html>() }</tbody></table>
        </div>
    }
}

/// What is to be measured first, while there is nothing to draw.
fn empty(plate: &Plate, paper: &Paper) -> Html {
    let said = words::subject(plate.id)
        .and_then(|words| found(words.plates, plate.id))
        .unwrap_or(frame::DRAWING_EMPTY);
    let sketch = first_to_measure(plate.id, paper).unwrap_or_else(|| icon(Icon::Measure));
    html! { <div class="drawing-empty">{ sketch }<p>{ paper.tongue.say(said) }</p></div> }
}

/// Keeps two fingers on a drawing that is close from scrolling the page, which would take them from the drawing. Yew listens without
/// a say in what the browser does, so this is bound by hand.
#[hook]
fn use_two_fingers(hold: &NodeRef) {
    let hold = hold.clone();
    use_effect_with((), move |()| {
        let element = hold.cast::<Element>();
        let heard = Closure::<dyn Fn(TouchEvent)>::new(|event: TouchEvent| {
            let target = event.target_dyn_into::<Element>();
            let close = target.and_then(|target| target.closest(".close .plate").ok().flatten());
            if event.touches().length() > 1 && close.is_some() && event.cancelable() {
                event.prevent_default();
            }
        });
        let how = AddEventListenerOptions::new();
        how.set_passive(false);
        for event in ["touchstart", "touchmove"] {
            if let Some(element) = &element {
                let called = heard.as_ref().unchecked_ref();
                let _ = element.add_event_listener_with_callback_and_add_event_listener_options(
                    event, called, &how,
                );
            }
        }
        move || {
            for event in ["touchstart", "touchmove"] {
                if let Some(element) = &element {
                    let called = heard.as_ref().unchecked_ref();
                    let _ = element.remove_event_listener_with_callback(event, called);
                }
            }
        }
    });
}

/// The width of an element as it is laid out, in whole pixels.
#[hook]
fn use_width(hold: &NodeRef) -> f64 {
    let width = use_state_eq(|| USUAL_WIDTH);
    {
        let (hold, width) = (hold.clone(), width.clone());
        use_effect_with((), move |()| {
            let element = hold.cast::<Element>();
            let watched = element.clone();
            let heard = Closure::<dyn Fn()>::new(move || {
                if let Some(element) = &watched {
                    // A drawing that is put away has no width; it keeps the one it had.
                    let wide = f64::from(element.client_width());
                    if wide > 0.0 {
                        width.set(wide.max(240.0));
                    }
                }
            });
            let observer = ResizeObserver::new(heard.as_ref().unchecked_ref()).ok();
            if let (Some(observer), Some(element)) = (&observer, &element) {
                observer.observe(element);
            }
            move || {
                if let Some(observer) = observer {
                    observer.disconnect();
                }
                drop(heard);
            }
        });
    }
    *width
}
