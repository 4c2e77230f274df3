//! The example lorry as it was bought, which its sheets keep as before: on narrow worn tyres and its first axle, driven from the
//! right, a rear spring broken. Figures are made up.

use super::Typed;
use crate::{Book, Entry};

/// What was otherwise on the vehicle itself.
const BOUGHT: Typed = &[
    ("vehicle/tyre_front", "6.50-16"),
    ("vehicle/tyre_rear", "6.50-16"),
    ("vehicle/roll_out_rear", "6640 ± 15"),
];

/// What was otherwise on each sheet; a blank entry was not there.
const SHEETS: &[(&str, Typed)] = &[
    ("vehicle", &[]),
    (
        "conversion",
        &[
            ("conversion/now/1/side", "right"),
            ("conversion/now/1/arm_swings", "forward"),
            ("conversion/now/1/box_x", "-820"),
            ("conversion/now/1/box_out", "430"),
            ("conversion/now/1/box_z", "640"),
            ("conversion/now/1/at_centre", "0"),
            ("conversion/brake_now/1/pad_arm", "290"),
            ("conversion/brake_now/1/rod_arm", "58"),
            ("conversion/brake_now/1/master", "7/8 in"),
            ("conversion/brake_now/1/stroke", "32"),
            ("conversion/clutch_now/1/pad_arm", "280"),
            ("conversion/clutch_now/1/pad_travel", "150"),
        ],
    ),
    (
        "gearing",
        &[("gearing/axle", "37/7"), ("gearing/dial_axle", "37/7")],
    ),
    (
        "springs",
        &[
            ("springs/springs/4/free_arch", "104"),
            ("springs/springs/4/leaves/5/thickness", ""),
            ("springs/springs/4/leaves/5/new_thickness", ""),
            ("springs/springs/4/leaves/5/length", ""),
            ("springs/springs/4/leaves/10/kind", ""),
            ("springs/springs/4/leaves/10/thickness", ""),
            ("springs/springs/4/leaves/10/new_thickness", ""),
            ("springs/springs/4/leaves/10/length", ""),
            ("springs/springs/4/leaves/10/gap", ""),
        ],
    ),
];

/// The book with what its sheets keep as before.
pub(super) fn kept(now: Book) -> Book {
    SHEETS.iter().fold(now, |book, (sheet, own)| {
        let was = BOUGHT
            .iter()
            .chain(*own)
            .fold(book.clone(), |was, (key, text)| {
                let change = was.setting(*key, Some(Entry::new(*text)));
                was.with(&change)
            });
        book.with(&was.keeping_as_before(sheet))
    })
}
