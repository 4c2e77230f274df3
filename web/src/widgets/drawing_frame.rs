//! A drawing with its title, its one sentence for those who do not see it, and the same as a table.

use super::icon::{Icon, icon};
use crate::desk::{use_settings, use_slice};
use crate::drawings::parts::px;
use crate::drawings::{Drawing, Paper, Plate, Table};
use crate::words::{self, Tongue, found, frame};
use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{Element, ResizeObserver};
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
    let settings = use_settings();
    let tabled = use_state(|| false);
    let paper = Paper {
        width,
        height: (width * plate.shape).clamp(220.0, 520.0).round(),
        manner: settings.manner(),
        tongue: settings.tongue,
    };
    let drawing = {
        let paper = paper.clone();
        use_slice(move |state| (plate.draw)(state, &paper)).flatten()
    };
    let body = match &drawing {
        None => empty(plate, settings.tongue),
        Some(drawing) if *tabled => table(&drawing.table),
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
fn empty(plate: &Plate, tongue: Tongue) -> Html {
    let said = words::subject(plate.id)
        .and_then(|words| found(words.plates, plate.id))
        .unwrap_or(frame::DRAWING_EMPTY);
    html! { <div class="drawing-empty">{ icon(Icon::Measure) }<p>{ tongue.say(said) }</p></div> }
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
