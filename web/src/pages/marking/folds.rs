//! How the groups of the page fold: what each holds, what its heading shows when closed, and which stand open.

use super::making::steps;
use super::templates::length;
use crate::shown::answer_of;
use crate::state::State;
use crate::widgets::Folds;
use crate::words::{self, Phrase, filled, marking as said, templates};
use measure::Kind;
use trade::marking::Check;

/// A group of entries that stands closed.
const fn closed(holds: &'static [&'static str], said: fn(&State) -> Option<String>) -> Folds {
    Folds {
        holds,
        said,
        open: |_| false,
    }
}

/// The datums: open until there is a first distance.
pub static DATUMS: Folds = Folds {
    open: |state| state.findings.marking.sheet.ab.is_blank(),
    ..closed(
        &[
            "seen_from",
            "ab",
            "ac",
            "bc",
            "c_side",
            "ad",
            "bd",
            "d_side",
            "cd",
            "taken_with",
        ],
        |state| {
            let marking = &state.findings.marking;
            let count = marking.taken.datums.as_ref().map_or(0, Vec::len);
            let ab = marking.sheet.ab.value();
            Some(ab.map_or_else(String::new, |ab| {
                say(
                    state,
                    said::DATUMS_ARE,
                    &[count.to_string(), length(ab, state)],
                )
            }))
        },
    )
};
/// The features: open until there are several.
pub static FEATURES: Folds = Folds {
    open: |state| state.findings.marking.sheet.features.len() < 2,
    ..closed(&["features"], |state| {
        let marking = &state.findings.marking;
        let goes = marking.moved.features.iter();
        let placed = goes.filter(|goes| goes.at.is_ok()).count();
        let all = marking.sheet.features.len();
        Some(say(
            state,
            said::FEATURES_ARE,
            &[all.to_string(), placed.to_string()],
        ))
    })
};
/// Where it goes: the move, the new side's datums, and the pairs that give the centre line.
pub static NEW_SIDE: Folds = closed(
    &[
        "move_by",
        "shift_along",
        "shift_across",
        "new_ab",
        "new_ac",
        "new_bc",
        "new_ad",
        "new_bd",
        "new_cd",
        "pairs",
    ],
    |state| {
        let sheet = &state.findings.marking.sheet;
        let by = words::choice(
            "marking/move_by",
            sheet.move_by.value()?,
            state.settings.tongue,
        );
        let ab = sheet.new_ab.value();
        let ab = ab.map(|ab| say(state, said::NEW_DATUMS, &[length(ab, state)]));
        Some(
            [Some(by), ab]
                .into_iter()
                .flatten()
                .collect::<Vec<_>>()
                .join(", "),
        )
    },
);
/// What is there already, and the edges.
pub static THERE: Folds = closed(&["there", "edges"], |state| {
    let marking = &state.findings.marking;
    let counts = [marking.moved.there.len(), marking.edges.len()];
    Some(say(
        state,
        said::THERE_ARE,
        &counts.map(|count| count.to_string()),
    ))
});
/// The sheet metal, the tools, and what is seldom said of the datums.
pub static METAL: Folds = closed(
    &[
        "sheet",
        "land",
        "weld_gap",
        "saw_kerf",
        "pilot",
        "drilling",
        "a_is",
        "b_is",
        "c_is",
        "d_is",
        "datum_diameter",
        "taken",
        "panel_radius",
    ],
    |state| {
        let thick = state.findings.marking.sheet.sheet.value();
        let thick = thick.map(|thick| say(state, said::METAL_IS, &[length(thick, state)]));
        Some(thick.unwrap_or_default())
    },
);
/// Made here, hired or bought.
pub static GETTING: Folds = closed(
    &[
        "template_got",
        "template_hire",
        "template_days",
        "template_buy",
    ],
    |state| {
        let got = state.findings.marking.sheet.template_got.value()?;
        Some(words::choice(
            "marking/template_got",
            got,
            state.settings.tongue,
        ))
    },
);

/// What to strike with: it stands open, since it is what one comes for.
pub static STRIKE: Folds = Folds {
    open: |_| true,
    ..closed(&[], |state| {
        let mut goes = state.findings.marking.moved.features.iter();
        goes.any(|goes| goes.at.is_ok()).then(String::new)
    })
};
/// The templates.
pub static TEMPLATES: Folds = closed(
    &[
        "template_for",
        "template_seen",
        "goes_on",
        "datum_lean",
        "overlap",
        "bar_along",
        "bar_up",
        "cutter_kerf",
    ],
    |state| {
        let moved = &state.findings.marking.moved;
        let any = moved.features.iter().any(|goes| goes.placed.is_ok());
        let files = if any {
            templates::READY
        } else {
            templates::NOTHING_YET
        };
        Some(say(state, files, &[]))
    },
);
/// How the readings agree: open where they do not.
pub static READINGS: Folds = Folds {
    open: |state| {
        let fixes = fixes(state);
        fixes
            .iter()
            .any(|check| !matches!(check, Check::Agree | Check::Nothing))
    },
    ..closed(&[], |state| {
        let fixes = fixes(state);
        let agree = fixes.iter().filter(|check| matches!(check, Check::Agree));
        let counts = [agree.count(), fixes.len()].map(|count| count.to_string());
        (!fixes.is_empty()).then(|| say(state, said::AGREE_ARE, &counts))
    })
};
/// The drill schedule.
pub static SCHEDULE: Folds = closed(&[], |state| {
    let shapes = &state.findings.marking.taken.features;
    let any = shapes.iter().any(|one| one.shape.is_ok());
    any.then(|| {
        let count = steps(state).map(|steps| steps.len().to_string());
        count.map_or_else(String::new, |count| say(state, said::STEPS_ARE, &[count]))
    })
});
/// The old holes.
pub static CLOSING: Folds = closed(&[], |state| {
    let shapes = state.findings.marking.taken.features.iter();
    let cut = shapes.filter(|one| one.shape.as_ref().is_ok_and(|shape| shape.is_cut()));
    let metal = answer_of(state, "marking/patches")?.ok()?.whole();
    Some(say(state, said::OLD_ARE, &[cut.count().to_string(), metal]))
});
/// What else comes of it.
pub static RESULTS: Folds = closed(&[], |state| {
    let found = &state.findings.marking.found;
    let line = found.figure("marking/centre");
    let mut rows = state.findings.marking.sheet.features.iter();
    let edge = rows.any(|row| {
        found
            .result(&format!("marking/edge/{}", row.id()))
            .is_some()
    });
    (line.is_some() || edge).then(|| {
        line.map_or_else(String::new, |line| {
            let at = crate::shown::plain(line.value(), Kind::Length, &state.settings.manner());
            format!(
                "{} {at}",
                words::result(&state.book, "marking/centre", state.settings.tongue)
            )
        })
    })
});

fn fixes(state: &State) -> Vec<&Check> {
    let features = state.findings.marking.taken.features.iter();
    let fixes = features.filter_map(|one| one.fix.as_ref().ok());
    fixes.map(|fix| &fix.check).collect()
}

fn say(state: &State, phrase: Phrase, with: &[String]) -> String {
    filled(state.settings.tongue.say(phrase), with)
}
