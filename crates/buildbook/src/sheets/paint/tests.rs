//! The paint sheet as a whole, against figures worked out by hand.

use crate::{Book, Key, Lack, Rank, State, evaluate};

fn book(entries: &[(&str, &str)]) -> Book {
    Book::of(
        "b",
        entries
            .iter()
            .map(|(key, text)| (Key::from(*key), (*text).into())),
    )
}

fn value(book: &Book, id: &str) -> f64 {
    match evaluate(book, None).paint.found.result(id) {
        Some(Ok(figure)) => figure.value(),
        other => panic!("{id}: {other:?}"),
    }
}

fn facts(book: &Book) -> Vec<&'static str> {
    evaluate(book, None)
        .paint
        .found
        .remarks
        .iter()
        .map(|remark| remark.fact)
        .collect()
}

const VAN: [(&str, &str); 4] = [
    ("paint/body_length", "2.4 m"),
    ("paint/body_width", "1.7 m"),
    ("paint/body_height", "1.6 m"),
    ("paint/systems/1/layers/1/coats", "3"),
];

const TWO_PACK: [(&str, &str); 19] = [
    ("paint/panels/1/length", "1000 mm"),
    ("paint/panels/1/height", "1000 mm"),
    ("paint/panels/1/edges", "0"),
    ("paint/panels/1/count", "9"),
    ("paint/systems/1/layers/1/coats", "2"),
    ("paint/systems/1/layers/1/parts/1/product", "1"),
    ("paint/systems/1/layers/1/parts/1/parts", "2"),
    ("paint/systems/1/layers/1/parts/2/product", "2"),
    ("paint/systems/1/layers/1/parts/2/parts", "1"),
    ("paint/products/1/name", "Cab green"),
    ("paint/products/1/tins/1/size", "1 L"),
    ("paint/products/1/tins/1/price", "24"),
    ("paint/products/1/tins/2/size", "0.5 L"),
    ("paint/products/1/tins/2/price", "14"),
    ("paint/products/2/name", "Hardener"),
    ("paint/products/2/role", "hardener"),
    ("paint/products/2/tins/1/size", "0.5 L"),
    ("paint/products/2/tins/1/price", "16.50"),
    ("paint/quote", "500"),
];

#[test]
fn three_coats_on_a_body_take_four_entries() {
    // 17.2 m² x 0.75 x 1.1 = 14.19 m²; 14.19 x 28 / (1000 x 0.45 x 0.60) = 1.47156 L a coat, 7.4 min at 200 mL/min, so that
    // one mix serves all; (3 x 1.47156 + 0.05) x 1.1 = 4.91113 L.
    let book = book(&VAN);
    assert!((value(&book, "paint/area") - 14.19).abs() < 1e-9);
    assert!((value(&book, "paint/litres") * 1000.0 - 4.911_13).abs() < 1e-4);
    assert!((value(&book, "paint/wet/1/1") * 1e6 - 28.0 / 0.45).abs() < 1e-9);
    assert_eq!(evaluate(&book, None).paint.found.state(), State::Ready);
}

#[test]
fn the_body_may_come_from_the_vehicle() {
    let book = book(&[
        ("vehicle/length", "2.4 m"),
        ("vehicle/width", "1.7 m"),
        ("vehicle/height", "2 m"),
        ("paint/sill", "400 mm"),
    ]);
    assert!((value(&book, "paint/area") - 14.19).abs() < 1e-9);
}

#[test]
fn an_empty_sheet_asks_for_the_body() {
    let found = evaluate(&book(&[]), None);
    let needs = ["paint/body_length", "paint/body_width", "paint/body_height"]
        .map(Key::from)
        .to_vec();
    assert_eq!(
        found.paint.found.result("paint/litres"),
        Some(&Err(Lack::needs(needs)))
    );
    assert_eq!(found.paint.found.state(), State::Empty);
}

#[test]
fn a_film_below_nothing_is_refused_at_its_field_and_the_rest_stays() {
    let mut entries = VAN.to_vec();
    entries.push(("paint/systems/1/layers/1/film", "-28"));
    entries.push(("paint/systems/1/layers/2/coats", "2"));
    let book = book(&entries);
    let found = evaluate(&book, None);
    let errors: Vec<_> = found
        .paint
        .found
        .errors
        .iter()
        .map(|(key, _)| key.as_str())
        .collect();
    assert_eq!(errors, ["paint/systems/1/layers/1/film"]);
    assert!(found.paint.found.figure("paint/layer_litres/1/1").is_none());
    assert!(found.paint.found.figure("paint/layer_litres/1/2").is_some());
    assert!(found.paint.found.figure("paint/area").is_some());
}

#[test]
fn solids_over_the_whole_are_refused() {
    let mut entries = VAN.to_vec();
    entries.push(("paint/systems/1/layers/1/solids", "120"));
    let found = evaluate(&book(&entries), None);
    assert_eq!(found.paint.found.errors.len(), 1);
    assert!(found.paint.found.figure("paint/area").is_some());
}

#[test]
fn what_a_layer_is_for_tells_its_usual_film_and_a_typed_film_wins() {
    let mut entries = VAN.to_vec();
    entries.push(("paint/systems/1/layers/1/kind", "filler"));
    let filler = book(&entries);
    assert!((value(&filler, "paint/film/1/1") - 50e-6).abs() < 1e-12);
    let found = evaluate(&filler, None);
    let key = Key::from("paint/systems/1/layers/1/film");
    assert_eq!(found.paint.found.assumption(&key), Some("50 ± 10"));
    entries.push(("paint/systems/1/layers/1/film", "60"));
    let typed = book(&entries);
    assert!((value(&typed, "paint/film/1/1") - 60e-6).abs() < 1e-12);
    assert_eq!(evaluate(&typed, None).paint.found.assumption(&key), None);
}

#[test]
fn two_parts_are_bought_in_the_cheapest_tins_and_stand_as_purchases() {
    // 9 m² x 28 / 270 = 0.9333 L a coat; (1.86667 + 0.05) x 1.1 = 2.10833 L; paint two thirds 1.40556, hardener 0.70278.
    let book = book(&TWO_PACK);
    let found = evaluate(&book, None);
    assert!((value(&book, "paint/product_litres/1") * 1e3 - 1.405_556).abs() < 1e-5);
    assert!((value(&book, "paint/product_litres/2") * 1e3 - 0.702_778).abs() < 1e-5);
    assert!((value(&book, "paint/left_over/1") * 1e3 - 0.094_444).abs() < 1e-5);
    let bought: Vec<_> = found
        .paint
        .found
        .purchases
        .iter()
        .map(|line| {
            (
                &*line.what,
                line.pack.as_deref().unwrap_or(""),
                line.quantity.to_string(),
                line.unit_price.amount().to_string(),
            )
        })
        .collect();
    let line = |what: &'static str, pack: &'static str, count: &str, price: &str| {
        (what, pack, count.to_owned(), price.to_owned())
    };
    assert_eq!(
        bought,
        [
            line("Cab green", "1\u{a0}L", "1", "24"),
            line("Cab green", "0.5\u{a0}L", "1", "14"),
            line("Hardener", "0.5\u{a0}L", "2", "16.50"),
        ]
    );
    let money = |id: &str| {
        let finding = found.paint.found.money(id).unwrap();
        finding.as_ref().unwrap().money.amount()
    };
    assert_eq!(money("paint/tins_cost"), 71.into());
    assert_eq!(money("paint/saved"), 429.into());
}

#[test]
fn whole_tins_say_when_the_doubt_reaches_over_a_step() {
    let facts = facts(&book(&TWO_PACK));
    assert!(facts.contains(&"tins_straddle"), "{facts:?}");
    assert!(facts.contains(&"hardener_keeps_badly"));
    assert!(facts.contains(&"mix_tins_together"));
}

#[test]
fn hardener_brings_the_danger_that_goes_with_it() {
    let found = evaluate(&book(&VAN), None);
    let danger = found
        .paint
        .found
        .remarks
        .iter()
        .find(|remark| remark.fact == "isocyanates");
    assert_eq!(danger.map(|remark| remark.rank), Some(Rank::Danger));
    let mut cellulose = VAN.to_vec();
    cellulose.push(("paint/systems/1/layers/1/kind", "cellulose"));
    assert!(!facts(&book(&cellulose)).contains(&"isocyanates"));
}

#[test]
fn litres_in_stock_give_back_the_coats_they_would_take() {
    let mut entries = VAN.to_vec();
    entries.push(("paint/systems/1/layers/1/stock", "4.91113 L"));
    let book = book(&entries);
    assert!((value(&book, "paint/stock_coats/1/1") - 3.0).abs() < 1e-4);
    assert!((value(&book, "paint/stock_film/1/1") * 1e6 - 28.0).abs() < 1e-3);
}

#[test]
fn no_fill_of_the_gun_holds_of_two_mixes() {
    // 1 m² takes 28 / (1000 x 0.45 x 0.60) = 0.1037 L a coat, a minute's work; half an hour between coats is more than a pot
    // life of ten minutes, so each of four coats is mixed by itself, and none of them fills the cup.
    let mut entries = vec![
        ("paint/panels/1/shape", "known"),
        ("paint/panels/1/area", "1"),
        ("paint/panels/1/edges", "0"),
        ("paint/systems/1/layers/1/coats", "4"),
        ("paint/systems/1/layers/1/wait", "30 min"),
        ("paint/systems/1/layers/1/pot_life", "10 min"),
        ("paint/flow", "100"),
    ];
    let fills = |entries: &[(&str, &str)]| {
        let book = book(entries);
        ["paint/mixes/1/1", "paint/gun_fills/1/1"].map(|id| value(&book, id))
    };
    assert_eq!(fills(&entries), [4.0, 4.0]);
    // (4 x 0.1037 + 4 x 0.05) x 1.1 = 0.6763 L: four times 0.17 L, each more than a cup of 0.1 L.
    entries.push(("paint/cup", "100 mL"));
    assert_eq!(fills(&entries), [4.0, 8.0]);
}

#[test]
fn mixes_of_a_size_hold_the_reserve_and_what_stays_in_the_cup_as_well() {
    // 4.41467 L are sprayed on the body of VAN; of a litre mixed, 1 / 1.1 - 0.05 = 0.85909 L: five give 4.2955 L, six 5.1545 L.
    let mut entries = VAN.to_vec();
    entries.push(("paint/systems/1/layers/1/mix_size", "1 L"));
    let of_a_litre = book(&entries);
    assert_eq!(value(&of_a_litre, "paint/mixes/1/1"), 6.0);
    // (4.41467 + 6 x 0.05) x 1.1 = 5.18613 L; five litres fill a cup of 0.6 L twice each, what is left once.
    assert!((value(&of_a_litre, "paint/litres") * 1000.0 - 5.186_13).abs() < 1e-4);
    assert_eq!(value(&of_a_litre, "paint/gun_fills/1/1"), 11.0);
    // A mix that all stays in the cup paints nothing.
    entries.push(("paint/left_in_cup", "1 L"));
    let found = evaluate(&book(&entries), None);
    assert!(found.paint.found.figure("paint/litres").is_none());
}

#[test]
fn own_hours_are_rounded_as_the_book_rounds() {
    // 2.5 x 25.25 = 63.125.
    for (rule, money) in [("half_even", "63.12 GBP"), ("half_up", "63.13 GBP")] {
        let book = book(&[
            ("paint/hours", "2.5"),
            ("paint/hour_rate", "25.25"),
            ("costs/rounding", rule),
        ]);
        let found = evaluate(&book, None);
        let hours = found.paint.found.money("paint/own_hours");
        assert_eq!(hours.unwrap().as_ref().unwrap().money.to_string(), money);
    }
}

#[test]
fn coats_stand_on_the_clock_one_after_the_other() {
    let book = book(&VAN);
    let minutes = |id: &str| value(&book, id) / 60.0;
    let coat = minutes("paint/end/1/1/1");
    assert!((coat - 1471.556 / 200.0).abs() < 1e-3);
    assert!((minutes("paint/start/1/1/2") - (coat + 10.0)).abs() < 1e-9);
    assert!((minutes("paint/start/1/1/3") - 2.0 * (coat + 10.0)).abs() < 1e-9);
}

#[test]
fn cold_metal_is_told_from_warm() {
    let day = |metal: &'static str| {
        let mut entries = VAN.to_vec();
        entries.extend([("paint/humidity", "80 ± 1"), ("paint/metal", metal)]);
        facts(&book(&entries))
    };
    // 20 °C at 80 %: dew point 16.4 °C, so 19.4 °C at the least.
    assert!(day("15").contains(&"metal_too_cold"));
    assert!(day("19").contains(&"metal_near_dew_point"));
    assert!(!day("24").iter().any(|fact| fact.starts_with("metal")));
}

#[test]
fn a_panel_of_an_unknown_shape_leaves_the_others_alone() {
    let book = book(&[
        ("paint/panels/1/length", "1000"),
        ("paint/panels/1/height", "500"),
        ("paint/panels/1/edges", "0"),
        ("paint/panels/2/shape", "disc"),
        ("paint/panels/3/shape", "curved"),
        ("paint/panels/3/chord", "700"),
    ]);
    let found = evaluate(&book, None);
    assert!((value(&book, "paint/area/1") - 0.5).abs() < 1e-12);
    // The second row is only begun; the third lacks two sizes, and so does the whole.
    let needs = vec!["paint/panels/3/rise".into(), "paint/panels/3/length".into()];
    assert_eq!(
        found.paint.found.result("paint/area"),
        Some(&Err(Lack::needs(needs)))
    );
}

#[test]
fn openings_are_taken_off_and_an_opening_too_large_is_refused_in_its_place() {
    let with = |height: &'static str| {
        book(&[
            ("paint/panels/1/length", "1000"),
            ("paint/panels/1/height", "500"),
            ("paint/panels/1/edges", "0"),
            ("paint/panels/1/openings/1/length", "400"),
            ("paint/panels/1/openings/1/height", height),
        ])
    };
    assert!((value(&with("300"), "paint/area") - 0.38).abs() < 1e-12);
    let found = evaluate(&with("1300"), None);
    let remark = found
        .paint
        .found
        .remarks
        .iter()
        .find(|remark| remark.fact == "panel_refused")
        .unwrap();
    assert_eq!(
        remark.key.as_ref().map(Key::as_str),
        Some("paint/panels/1/openings")
    );
}

#[test]
fn the_example_is_complete_on_the_paint_sheet() {
    let found = evaluate(&crate::example::book(), None);
    let paint = &found.paint.found;
    let lacking: Vec<_> = paint
        .results()
        .filter(|(_, finding)| finding.is_err())
        .collect();
    assert!(lacking.is_empty(), "{lacking:?}");
    assert!(paint.errors.is_empty(), "{:?}", paint.errors);
    assert!(paint.amounts().all(|(_, amount)| amount.is_ok()));
    assert!(paint.purchases.len() > 6);
}
