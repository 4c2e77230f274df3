//! What actions do to the state.

use super::*;

fn state() -> State {
    State::new(
        Book::new("b"),
        Log::default(),
        Settings::default(),
        Route::Questions,
    )
}

fn typed_in(state: State, key: &str, text: &str) -> State {
    state.after(Action::Typed(key.into(), text.into()))
}

fn text(state: &State, key: &str) -> String {
    state
        .book
        .entry(key)
        .map_or_else(String::new, |entry| entry.text.to_string())
}

#[test]
fn the_letters_of_one_entry_are_undone_together() {
    let mut now = state().after(Action::Field(Some("vehicle/wheelbase".into())));
    for letters in ["3", "34", "345", "3450"] {
        now = typed_in(now, "vehicle/wheelbase", letters);
    }
    assert_eq!(text(&now, "vehicle/wheelbase"), "3450");
    assert_eq!(now.saved, Saved::Pending);
    let back = now.clone().after(Action::Undo);
    assert_eq!(text(&back, "vehicle/wheelbase"), "");
    assert_eq!(text(&back.after(Action::Redo), "vehicle/wheelbase"), "3450");
}

#[test]
fn an_entry_that_was_left_and_entered_again_is_undone_in_two_steps() {
    let key = Some(Key::from("vehicle/wheelbase"));
    let now = typed_in(
        state().after(Action::Field(key.clone())),
        "vehicle/wheelbase",
        "3",
    );
    let now = now.after(Action::Field(None)).after(Action::Field(key));
    let now = typed_in(now, "vehicle/wheelbase", "34");
    assert_eq!(text(&now.after(Action::Undo), "vehicle/wheelbase"), "3");
}

#[test]
fn a_bare_number_keeps_the_unit_it_was_shown_with() {
    let inches = state().after(Action::Set("units", "imperial"));
    let now = typed_in(inches, "vehicle/wheelbase", "130");
    let entry = now
        .book
        .entry("vehicle/wheelbase")
        .cloned()
        .unwrap_or_default();
    assert_eq!(entry.unit.as_deref(), Some("in"));
    let metres = now
        .findings
        .vehicle
        .sheet
        .wheelbase
        .value()
        .map(measure::Quantity::value);
    assert_eq!(metres, Some(130.0 * 0.0254));
}

/// The unit that a bare wheelbase is shown with, and the one that it stands in the book with.
fn units_of_wheelbase(state: &State) -> (String, Option<String>) {
    let key = Key::from("vehicle/wheelbase");
    let shown = crate::shown::tail(state, &key).unit.unwrap_or_default();
    let entry = state.book.entry(key.as_str());
    (
        shown,
        entry.and_then(|entry| entry.unit.as_ref().map(ToString::to_string)),
    )
}

fn opened(state: State, book: Book) -> State {
    state.after(Action::Open(Rc::new(book), Rc::new(Log::default())))
}

#[test]
fn each_book_is_shown_in_its_own_units_and_one_without_in_the_reader_s() {
    let millimetres = opened(state(), Book::new("m").carrying("metric"));
    let inches = opened(millimetres.clone(), Book::new("i").carrying("imperial"));
    assert_eq!(units_of_wheelbase(&millimetres).0, "mm");
    assert_eq!(units_of_wheelbase(&inches).0, "in");
    // What the reader is used to is that of neither, and serves a book that says nothing.
    let usual = inches.after(Action::Set("units", "us"));
    assert_eq!(usual.settings.units, measure::System::Imperial);
    let plain = opened(usual, Book::new("n"));
    assert_eq!(plain.settings.units, measure::System::UnitedStates);
}

#[test]
fn units_of_a_book_are_an_edit_and_bare_numbers_keep_those_they_were_typed_in() {
    let now = typed_in(state(), "vehicle/wheelbase", "3000");
    let inches = now.after(Action::Put(
        buildbook::UNITS_KEY.into(),
        Some(Entry::new("imperial")),
    ));
    assert_eq!(units_of_wheelbase(&inches), ("mm".to_owned(), None));
    let length = |state: &State, of: &str| {
        let sheet = &state.findings.vehicle.sheet;
        let given = if of == "wheelbase" {
            &sheet.wheelbase
        } else {
            &sheet.length
        };
        given.value().map(measure::Quantity::value)
    };
    assert_eq!(length(&inches, "wheelbase"), Some(3.0));
    // A number typed now is in inches, and stays so when the book goes back.
    let typed = typed_in(inches, "vehicle/length", "200");
    // 25.4 mm to the inch: NIST SP 811, B.8.
    assert_eq!(length(&typed, "length"), Some(200.0 * 0.0254));
    let back = typed.clone().after(Action::Undo).after(Action::Undo);
    assert_eq!(back.settings.units, measure::System::Metric);
    let metric = typed.after(Action::Put(
        buildbook::UNITS_KEY.into(),
        Some(Entry::new("metric")),
    ));
    assert_eq!(metric.settings.units, measure::System::Metric);
    assert_eq!(length(&metric, "length"), Some(200.0 * 0.0254));
}

#[test]
fn that_nothing_is_kept_stays_said_through_edits_and_other_books() {
    let off = Saved::Fault(BookError::Off);
    let now = state().after(Action::Saved(off));
    let typing = typed_in(now.clone(), "vehicle/wheelbase", "3450");
    assert_eq!(
        (typing.saved.clone(), typing.fault.clone()),
        (Saved::Pending, Some(BookError::Off))
    );
    let other = opened(typing, Book::new("other"));
    assert_eq!(other.fault, Some(BookError::Off));
    // That one book found no room says nothing of the next, and is over once it is kept.
    let full = now.after(Action::Saved(Saved::Fault(BookError::Full)));
    assert_eq!(opened(full.clone(), Book::new("other")).fault, None);
    assert_eq!(
        full.after(Action::Saved(Saved::At("10:15".into()))).fault,
        None
    );
}

#[test]
fn a_page_that_only_shows_the_book_changes_nothing_in_it() {
    let now = state().after(Action::ReadOnly(true));
    let now = typed_in(now, "vehicle/wheelbase", "3450");
    assert!(now.book.is_empty());
    assert_eq!(
        now.after(Action::Go(Route::Paint, None)).route,
        Route::Paint
    );
}

#[test]
fn another_page_puts_the_last_one_s_panels_away_and_calls_the_heading() {
    let now = state().after(Action::Panel(Panel::Working("vehicle/unladen".into())));
    let now = now
        .after(Action::Drawer(Some(Drawer::Sheets)))
        .after(Action::Go(Route::Gearing, None));
    assert_eq!(
        (now.view.panel.clone(), now.view.drawer),
        (Panel::Drawing, None)
    );
    assert_eq!(now.view.call.to, CallTo::Heading);
}

#[test]
fn who_comes_back_finds_what_stood_open_and_who_opens_the_page_anew_does_not() {
    let working = Panel::Working("vehicle/unladen".into());
    let left = state()
        .after(Action::Go(Route::Vehicle, None))
        .after(Action::Panel(working.clone()))
        .after(Action::Call(CallTo::Entry("gearing/axle".into())));
    assert_eq!(left.view.panel, Panel::Drawing);
    let stood = Stand {
        down: 300.0,
        focus: None,
    };
    let back = left
        .clone()
        .after(Action::Go(Route::Vehicle, Some(stood.clone())));
    assert_eq!(back.view.panel, working);
    assert_eq!(back.view.call.to, CallTo::Back(stood));
    let anew = left.after(Action::Go(Route::Vehicle, None));
    assert_eq!(anew.view.panel, Panel::Drawing);
    assert_eq!(anew.view.call.to, CallTo::Heading);
}

#[test]
fn a_call_to_an_entry_of_another_sheet_opens_its_page() {
    let now = state().after(Action::Call(CallTo::Entry("vehicle/wheelbase".into())));
    assert_eq!(now.route, Route::Vehicle);
    assert_eq!(now.view.call.to, CallTo::Entry("vehicle/wheelbase".into()));
}

#[test]
fn a_call_to_an_entry_of_a_row_that_is_not_there_yet_adds_the_first_row() {
    let now = state().after(Action::Call(CallTo::Entry("gearing/gears/1/ratio".into())));
    assert_eq!(now.book.rows(&"gearing/gears".into()), ["1".into()]);
    assert_eq!(now.route, Route::Gearing);
    assert_eq!(now.view.call.to, CallTo::Row("gearing/gears/1".into()));
    // A list that always has a row needs none.
    let first = CallTo::Entry("paint/systems/1/layers/1/coats".into());
    let now = state().after(Action::Call(first.clone()));
    assert!(now.book.is_empty());
    assert_eq!(now.view.call.to, first);
}

#[test]
fn going_back_to_before_is_one_edit_that_can_be_undone() {
    let now =
        typed_in(state(), "vehicle/wheelbase", "3450").after(Action::KeepBefore("vehicle".into()));
    let now = typed_in(now, "vehicle/wheelbase", "3600");
    let now = typed_in(now, "vehicle/length", "6 m");
    let back = now.after(Action::BackToBefore("vehicle".into()));
    assert_eq!(
        (
            text(&back, "vehicle/wheelbase"),
            text(&back, "vehicle/length")
        ),
        ("3450".to_owned(), String::new())
    );
    let again = back.after(Action::Undo);
    assert_eq!(
        (
            text(&again, "vehicle/wheelbase"),
            text(&again, "vehicle/length")
        ),
        ("3600".to_owned(), "6 m".to_owned())
    );
}

#[test]
fn nothing_to_undo_changes_nothing() {
    let now = state().after(Action::Undo).after(Action::Redo);
    assert!(now.book.is_empty());
    assert_eq!(now.saved, Saved::Untouched);
}

#[test]
fn rows_are_added_moved_copied_and_removed() {
    let list = Key::from("springs/springs");
    let now = state()
        .after(Action::AddRow(list.clone()))
        .after(Action::AddRow(list.clone()));
    let rows = now.book.rows(&list);
    let (first, last) = (rows[0].clone(), rows[rows.len() - 1].clone());
    let moved = now
        .clone()
        .after(Action::MoveRow(list.clone(), last.clone(), true));
    let place =
        |state: &State, id: &str| state.book.rows(&list).iter().position(|row| &**row == id);
    assert!(place(&moved, &last) < place(&now, &last));
    let copied = now
        .clone()
        .after(Action::CopyRow(list.clone(), last.clone()));
    assert_eq!(copied.book.rows(&list).len(), rows.len() + 1);
    let gone = now
        .clone()
        .after(Action::RemoveRow(list.clone(), last.clone()));
    assert_eq!(place(&gone, &last), None);
    assert_eq!(
        place(
            &now.after(Action::MoveRow(list.clone(), first.clone(), true)),
            &first
        ),
        Some(0)
    );
}

#[test]
fn an_unknown_answer_falls_back_to_the_first_that_is_offered() {
    let offered: Vec<Rc<str>> = vec!["vehicle/unladen".into(), "vehicle/laden".into()];
    let now = state().after(Action::Answer("vehicle/no_such_result".into()));
    assert_eq!(
        now.answer("vehicle", &offered).as_deref(),
        Some("vehicle/unladen")
    );
    let now = now.after(Action::Answer("vehicle/laden".into()));
    assert_eq!(
        now.answer("vehicle", &offered).as_deref(),
        Some("vehicle/laden")
    );
}

#[test]
fn an_amount_of_money_that_is_chosen_stands_in_the_band() {
    let now = typed_in(state(), "costs/limit", "100");
    let offered = ["costs/left".into(), "costs/paid".into()];
    assert_eq!(now.answer("costs", &offered).as_deref(), Some("costs/left"));
    let chosen = now.after(Action::Answer("costs/paid".into()));
    assert_eq!(
        chosen.answer("costs", &offered).as_deref(),
        Some("costs/paid")
    );
}

#[test]
fn an_empty_row_that_comes_and_goes_leaves_nothing_to_undo() {
    let list = Key::from("gearing/gears");
    let now = typed_in(state(), "gearing/gears/1/ratio", "5.41");
    let edits = now.log.done().len();
    let with_row = now.clone().after(Action::AddRow(list.clone()));
    let rows = with_row.book.rows(&list);
    assert_eq!(rows.len(), 2);
    let gone = with_row
        .clone()
        .after(Action::RemoveRow(list.clone(), rows[1].clone()));
    assert_eq!(gone.book.rows(&list).len(), 1);
    assert_eq!(gone.log.done().len(), edits);
    assert_eq!(text(&gone.after(Action::Undo), "gearing/gears/1/ratio"), "");
    // A row that holds something is an edit to be undone.
    let key = list.under(&rows[1]).under("ratio");
    let full = typed_in(with_row, key.as_str(), "2.93");
    let gone = full.after(Action::RemoveRow(list, rows[1].clone()));
    assert_eq!(text(&gone, key.as_str()), "");
    assert_eq!(text(&gone.after(Action::Undo), key.as_str()), "2.93");
}
