//! The line drawing on each question: what the sheet is about, in the strokes of a workshop drawing.

use yew::{Html, html};

/// Strokes on a field of 120 by 72; the heavy ones are outlines, the light ones centre lines and construction.
struct Motif {
    sheet: &'static str,
    heavy: &'static [&'static str],
    light: &'static [&'static str],
}

static MOTIFS: [Motif; 10] = [
    Motif {
        sheet: "vehicle",
        heavy: &[
            "M6 52V36l10-2 5-16h19v34M40 40h74v8H40M6 52h8M34 52h50M104 52h10v-4",
            "M24 62a9 9 0 1 1 0-18 9 9 0 0 1 0 18ZM94 62a9 9 0 1 1 0-18 9 9 0 0 1 0 18Z",
        ],
        light: &["M24 36v34M94 36v34M24 69h70M2 62h116"],
    },
    Motif {
        sheet: "marking",
        heavy: &[
            "M6 66V14q54-12 108 0v52H74q0-14-14-14t-14 14Z",
            "M92 34a8 8 0 1 1-16 0 8 8 0 0 1 16 0ZM98 52a3 3 0 1 1-6 0 3 3 0 0 1 6 0ZM100 26a3 3 0 1 1-6 0 3 3 0 0 1 6 0Z",
        ],
        light: &[
            "M60 4v64M44 34a8 8 0 1 1-16 0 8 8 0 0 1 16 0ZM28 52a3 3 0 1 1-6 0 3 3 0 0 1 6 0ZM26 26a3 3 0 1 1-6 0 3 3 0 0 1 6 0Z",
            "M16 58 38 28M50 58 34 28M12 58h42",
        ],
    },
    Motif {
        sheet: "conversion",
        heavy: &[
            "M4 24h14v30H4ZM102 18h14v30h-14ZM18 39h84M30 39l6-16h52l2 14",
            "M36 23l10 31M56 61a8 8 0 1 1-16 0 8 8 0 0 1 16 0Z",
        ],
        light: &["M60 2v68M11 14v50M109 8v50M2 39h116"],
    },
    Motif {
        sheet: "gearing",
        heavy: &[
            "M78 66a30 30 0 1 1 0-60 30 30 0 0 1 0 60ZM78 46a10 10 0 1 1 0-20 10 10 0 0 1 0 20Z",
            "M33 48a12 12 0 1 1 0-24 12 12 0 0 1 0 24Z",
        ],
        light: &[
            "M78 61a25 25 0 1 1 0-50 25 25 0 0 1 0 50ZM33 44.5a8.5 8.5 0 1 1 0-17 8.5 8.5 0 0 1 0 17Z",
            "M10 36h106M78 2v68M33 18v36",
        ],
    },
    Motif {
        sheet: "springs",
        heavy: &[
            "M8 24q52 40 104 0M22 37q38 25 76 0M36 48.5q24 12 48 0",
            "M8 24a5 5 0 1 1 0-10 5 5 0 0 1 0 10ZM112 24a5 5 0 1 1 0-10 5 5 0 0 1 0 10ZM52 40v22M68 40v22M48 62h24",
        ],
        light: &["M2 19h116M60 6v62"],
    },
    Motif {
        sheet: "paint",
        heavy: &[
            "M22 30h40v36H22ZM18 24h48v6H18ZM22 38c-8-30 48-30 40 0",
            "M78 26h22v-6h10v12H100l-10 8v26M104 16V8M108 14l5-6M100 14l-5-6",
        ],
        light: &["M22 46h40M28 52h28M28 58h20"],
    },
    Motif {
        sheet: "final_drive",
        heavy: &[
            "M56 6l26 12v36L56 66ZM82 24h14v24H82",
            "M50 58 38 70H22l12-20M4 46h20l10 4-8 12H4ZM16 62v8",
        ],
        light: &["M2 54h40M89 2v68M50 36h68M40 70l48-46"],
    },
    Motif {
        sheet: "torque",
        heavy: &[
            "M22 20h28l8 14-8 14H22l-8-14ZM50 34a14 14 0 1 1-28 0 14 14 0 0 1 28 0Z",
            "M56 26h52a7 7 0 0 1 0 15H56",
        ],
        light: &["M36 8v52M6 34h110M78 62a46 46 0 0 0 8-10M84 66l-7-3 2-8"],
    },
    Motif {
        sheet: "handover",
        heavy: &[
            "M26 8h50l14 14v44H26ZM76 8v14h14",
            "M36 32l4 4 7-8M36 46l4 4 7-8",
        ],
        light: &["M52 34h28M52 48h28M30 8v58M36 58h44M98 58c4-10 8 6 14-8"],
    },
    Motif {
        sheet: "costs",
        heavy: &["M20 8h80v58H20Z", "M70 8v58M84 8v58"],
        light: &[
            "M20 20h80M20 30h80M20 40h80M26 15h30M26 25h24M26 35h34M26 45h20M70 54h30M70 58h30",
        ],
    },
];

/// The motif of a sheet; nothing for a sheet without one.
pub fn motif(sheet: &str) -> Html {
    let Some(motif) = MOTIFS.iter().find(|motif| motif.sheet == sheet) else {
        return html! {};
    };
    let strokes = |paths: &'static [&'static str], class: &'static str| {
        paths
            .iter()
            .map(|d| html! { <path {class} d={*d} /> })
            .collect::<Html>()
    };
    html! {
        <svg class="motif" viewBox="0 0 120 72" aria-hidden="true" focusable="false">
            { strokes(motif.light, "light") }
            { strokes(motif.heavy, "heavy") }
        </svg>
    }
}
