//! A QR code: dark modules on a light field with the four modules of quiet zone that ISO/IEC 18004 asks for.

use buildbook::Qr;
use std::fmt::Write;
use yew::{Html, html};

const QUIET: usize = 4;

/// The code as a picture, black on white in every look: cameras want it so.
pub fn qr_drawing(code: &Qr, said: &str) -> Html {
    let mut path = String::new();
    for row in 0..code.size {
        let mut column = 0;
        while column < code.size {
            let run = (column..code.size)
                .take_while(|column| code.is_dark(*column, row))
                .count();
            if run > 0 {
                // Writing into a text cannot fail.
                let _ = write!(path, "M{} {}h{run}v1h-{run}z", column + QUIET, row + QUIET);
            }
            column += run.max(1);
        }
    }
    let side = code.size + 2 * QUIET;
    html! {
        <svg class="qr-code" viewBox={format!("0 0 {side} {side}")} role="img" aria-label={said.to_owned()} data-qr={code.size.to_string()}>
            <rect class="qr-paper" width={side.to_string()} height={side.to_string()} />
            <path class="qr-dark" d={path} shape-rendering="crispEdges" />
        </svg>
    }
}
