//! Icons: drawn here, in strokes on a 24 by 24 field. An icon never stands without its word.

use yew::{Html, html};

/// A picture on a key, or the shape of a standing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Icon {
    /// A question in a circle of chalk.
    Questions,
    /// A page behind a page.
    Sheets,
    /// An arrow back.
    Undo,
    /// An arrow on.
    Redo,
    /// Three studs.
    More,
    /// An arrow out of a tray.
    Send,
    /// A sheet through rollers.
    Print,
    /// A nut.
    Settings,
    /// A cloth on glass.
    Wipe,
    /// A fraction with its line.
    Working,
    /// An arrow that turns from the answer to the entry.
    WorkBack,
    /// A plus.
    Add,
    /// A cross.
    Remove,
    /// An arrow up.
    Up,
    /// An arrow down.
    Down,
    /// Two of the same.
    Copy,
    /// On to the next entry.
    Next,
    /// One letter back.
    Erase,
    /// A clipboard.
    Paste,
    /// Rows and columns.
    Table,
    /// A frame around a moment.
    Before,
    /// Solid octagon with a bar: danger.
    Danger,
    /// Solid triangle with a bar: warning.
    Warning,
    /// Outlined triangle: caution.
    Caution,
    /// Outlined square: remark.
    Remark,
    /// Tick: ready.
    Ready,
    /// Empty ring with a gap: entries are missing.
    Needs,
    /// A book.
    Books,
    /// A fold that opens.
    Open,
    /// A fold that closes.
    Close,
    /// A trammel point on a scale: measure this better.
    Measure,
}

fn strokes(icon: Icon) -> &'static [&'static str] {
    match icon {
        Icon::Questions => &[
            "M12 21a9 9 0 1 1 0-18 9 9 0 0 1 0 18Z",
            "M9.4 9.3a2.7 2.7 0 1 1 3.9 2.6c-.8.4-1.3 1-1.3 1.9v.4",
            "M12 17.2v.1",
        ],
        Icon::Sheets => &["M8 7h12v14H8Z", "M8 17H4V3h12v4", "M11.5 12h5M11.5 16h5"],
        Icon::Undo => &["M8 5 3.5 9.5 8 14", "M4 9.5h10a6 6 0 0 1 0 12h-3"],
        Icon::Redo => &["M16 5l4.5 4.5L16 14", "M20 9.5H10a6 6 0 0 0 0 12h3"],
        Icon::More => &[],
        Icon::Send => &["M12 15V3", "M7.5 7.5 12 3l4.5 4.5", "M4 14v6h16v-6"],
        Icon::Print => &["M7 9V3h10v6", "M7 18H3V9h18v9h-4", "M7 14h10v7H7Z"],
        Icon::Settings => &[
            "M8 4h8l4.6 8L16 20H8l-4.6-8Z",
            "M12 15.4a3.4 3.4 0 1 1 0-6.8 3.4 3.4 0 0 1 0 6.8Z",
        ],
        Icon::Wipe => &["M3 5h18v11H3Z", "M8 20h8", "M9 13l6-5M13 13.4l3-2.4"],
        Icon::Working => &["M4 12h16", "M9 4h6M12 4v5", "M8 16l3 4 5-5"],
        Icon::WorkBack => &["M20 4v7a5 5 0 0 1-5 5H4", "M8.5 11.5 4 16l4.5 4.5"],
        Icon::Add => &["M12 4v16M4 12h16"],
        Icon::Remove => &["M5 5l14 14M19 5 5 19"],
        Icon::Up => &["M12 20V5", "M6 11l6-6 6 6"],
        Icon::Down => &["M12 4v15", "M6 13l6 6 6-6"],
        Icon::Copy => &["M4 4h10v10H4Z", "M18 10h2v10H10v-2", "M9 6.5v5M6.5 9h5"],
        Icon::Next => &["M4 12h13", "M12 6l6 6-6 6", "M21 5v14"],
        Icon::Erase => &["M9 5h12v14H9l-6-7Z", "M12 9l6 6M18 9l-6 6"],
        Icon::Paste => &["M6 5H4v16h16V5h-2", "M9 3h6v4H9Z", "M8 12h8M8 16h8"],
        Icon::Table => &["M3 5h18v14H3Z", "M3 10h18M3 14.5h18M10 5v14"],
        Icon::Before => &["M4 8V4h4M16 4h4v4M20 16v4h-4M8 20H4v-4", "M12 8v4l3 2"],
        Icon::Books => &[
            "M4 4h11a3 3 0 0 1 3 3v14H7a3 3 0 0 1-3-3Z",
            "M4 18a3 3 0 0 1 3-3h11",
            "M8 8h6",
        ],
        Icon::Open => &["M6 9l6 6 6-6"],
        Icon::Close => &["M9 6l6 6-6 6"],
        Icon::Measure => &[
            "M2.5 15h19v6h-19Z",
            "M7 15v3M12 15v4M17 15v3",
            "M12 3v8M9 8l3 3 3-3",
        ],
        Icon::Danger | Icon::Warning | Icon::Caution | Icon::Remark | Icon::Ready | Icon::Needs => {
            &[]
        }
    }
}

/// The shapes that say a rank or a standing; they differ in outline as well as in colour.
fn shape(icon: Icon) -> Html {
    match icon {
        Icon::Danger => html! {
            <>
                <path class="solid" d="M8 2h8l6 6v8l-6 6H8l-6-6V8Z" />
                <path class="cut" d="M12 6.5v7M12 17.2v.2" />
            </>
        },
        Icon::Warning => html! {
            <>
                <path class="solid" d="M12 2.5 22.5 21h-21Z" />
                <path class="cut" d="M12 9v6M12 18v.2" />
            </>
        },
        Icon::Caution => html! {
            <>
                <path d="M12 3 22 20.5H2Z" />
                <path d="M12 9.5v5M12 17.3v.2" />
            </>
        },
        Icon::Remark => html! {
            <>
                <path d="M3.5 3.5h17v17h-17Z" />
                <path d="M12 11v5.5M12 7.3v.2" />
            </>
        },
        Icon::More => {
            html! { <path class="solid" d="M5 10.5a1.5 1.5 0 1 0 .1 0M12 10.5a1.5 1.5 0 1 0 .1 0M19 10.5a1.5 1.5 0 1 0 .1 0" /> }
        }
        Icon::Ready => html! { <path d="M4 13l5.5 5.5L20.5 6" /> },
        Icon::Needs => html! { <path d="M12 3a9 9 0 1 0 9 9" /> },
        _ => html! {},
    }
}

/// The icon as SVG; hidden from those who listen, because its word stands beside it.
pub fn icon(icon: Icon) -> Html {
    let paths = strokes(icon).iter().map(|d| html! { <path d={*d} /> });
    html! {
        <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
            { paths.collect::<Html>() }
            { shape(icon) }
        </svg>
    }
}
