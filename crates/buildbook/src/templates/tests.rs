//! What holds of templates whatever is drawn. Sizes and places on paper are measured by `tests/reference/scripts/template_files.py`.

use super::*;

fn labels() -> Labels {
    let text = str::to_owned;
    Labels {
        up: text("UP"),
        bar_mm: text("100 mm"),
        bar_in: text("4 in"),
        scale: text("True scale."),
        page: text("Page"),
        centre_line: text("centre line"),
        cut_away: text("cut away"),
        millimetres: text("Millimetres."),
    }
}

fn hole(name: &str, at: [f64; 2], diameter: f64) -> Feature {
    let outline = Outline::circle(at, diameter / 2.0);
    Feature {
        name: name.to_owned(),
        size: "Ø 20 (±0.5 mm) — ž, 孔".to_owned(),
        part: Part::Cut,
        cut: Some(outline.clone()),
        outline,
        centre: at,
        turn: 0.0,
        spots: vec![at],
    }
}

fn template(features: Vec<Feature>) -> Template {
    Template {
        title: "A <title> & more".to_owned(),
        lines: Vec::new(),
        purpose: For::Marking,
        up: std::f64::consts::FRAC_PI_2,
        from_behind: false,
        features,
        datums: Vec::new(),
        datum_line: String::new(),
        centre_line: None,
        edges: Vec::new(),
        pieces: Vec::new(),
    }
}

#[test]
fn nothing_to_draw_makes_no_file() {
    let none = template(Vec::new());
    assert!(svg(&none, &labels()).is_none() && dxf(&none, &labels()).is_none());
    assert!(pages(&none, &labels(), A4, 0.015, [1.0; 2]).is_none());
}

#[test]
fn a_small_pattern_takes_one_upright_page_and_a_long_one_takes_more() {
    let shared = |far: f64, paper: Paper| {
        let pattern = template(vec![hole("1", [0.0; 2], 0.02), hole("2", [far, 0.0], 0.02)]);
        pages(&pattern, &labels(), paper, 0.015, [1.0; 2])
    };
    let one = shared(0.08, A4).unwrap();
    assert_eq!((one.count, one.size), ([1, 1], [210.0, 297.0]));
    let more = shared(0.6, LETTER).unwrap();
    assert_eq!((more.count[1], more.size), (1, [279.4, 215.9]));
    assert!(more.count[0] == 3);
    // Twenty metres are work for a plotter.
    assert!(shared(20.0, A4).is_none());
}

#[test]
fn pages_are_named_by_column_and_row_from_the_upper_left_and_every_place_is_on_one() {
    let corners = [[0.0, 0.0], [0.6, 0.0], [0.6, 0.7], [0.0, 0.7]];
    let pattern = template(corners.iter().map(|at| hole("x", *at, 0.01)).collect());
    let pages = pages(&pattern, &labels(), A4, 0.015, [1.0; 2]).unwrap();
    let on = |at: [f64; 2]| {
        let shows = |which: &usize| pages.place_on(*which, at.map(|m| m * 1e3)).is_some();
        (0..pages.total())
            .filter(shows)
            .map(|which| pages.name(which))
            .collect::<Vec<_>>()
    };
    assert_eq!(on([0.0, 0.7]), ["A1"]);
    assert_eq!(on([0.6, 0.0]), [pages.name(pages.total() - 1)]);
    assert_eq!(on([5.0, 5.0]), Vec::<String>::new());
}

#[test]
fn a_page_with_nothing_on_it_is_left_out_where_the_others_join_without_it() {
    let corners = |at: &[[f64; 2]]| {
        let holes = at.iter().map(|at| hole("x", *at, 0.01)).collect();
        pages(&template(holes), &labels(), A4, 0.015, [1.0; 2]).unwrap()
    };
    let names = |pages: &Pages| {
        (0..pages.total())
            .map(|which| pages.name(which))
            .collect::<Vec<_>>()
    };
    // Three corners of 600 mm by 700 mm: what lies in the fourth one, and within, is not printed.
    let three = corners(&[[0.0, 0.7], [0.0, 0.0], [0.6, 0.0]]);
    let [wide, high] = three.count;
    assert_eq!(three.total(), wide + high - 1);
    let along = |page: &String| page.starts_with('A') || page.ends_with(&high.to_string());
    assert!(names(&three).iter().all(along));
    // Two opposite ones join by a way of pages from side to side.
    let two = corners(&[[0.0, 0.0], [0.6, 0.7]]);
    assert_eq!(two.total(), wide + high - 1);
    for at in [[0.0, 0.0], [600.0, 700.0]] {
        assert!((0..two.total()).any(|which| two.place_on(which, at).is_some()));
    }
}

#[test]
fn a_printer_that_prints_small_is_given_fewer_millimetres_to_a_page() {
    let pattern = template(vec![hole("1", [0.0; 2], 0.02)]);
    let shows = |correction| {
        pages(&pattern, &labels(), A4, 0.015, correction)
            .unwrap()
            .shows
    };
    let (plain, corrected) = (shows([1.0; 2]), shows([1.01, 1.0]));
    // The pattern and the bars beside it fill the same width of paper, each millimetre of theirs drawn larger.
    let whole = |shows: [f64; 2]| shows[0] + bars::LEFT;
    assert!((whole(plain) - 1.01 * whole(corrected)).abs() < 1e-9 && plain[1] == corrected[1]);
}

#[test]
fn all_files_are_plain_ascii_and_keep_letters_that_a_format_reserves() {
    let pattern = template(vec![hole("1 (big) \\", [0.0; 2], 0.02)]);
    let printed = pdf(
        &pages(&pattern, &labels(), A4, 0.015, [1.0; 2]).unwrap(),
        &pattern,
        &labels(),
    );
    let files = [
        printed,
        svg(&pattern, &labels()).unwrap(),
        dxf(&pattern, &labels()).unwrap(),
    ];
    assert!(files.iter().all(|file| file.is_ascii()));
    // Ø and ± by their codes, the dash and ž of the Windows letters, and a letter that no standard font has.
    assert!(
        files[0].contains("(1 \\(big\\) \\\\)")
            && files[0].contains("(\\330 20 \\(\\2610.5 mm\\) \\227 \\236, \\077)")
    );
    assert!(files[1].contains("A &lt;title&gt; &amp; more") && files[1].contains("&#23380;"));
    assert!(files[2].contains("%%c 20 (%%p0.5 mm) \\U+2014 \\U+017E, \\U+5B54"));
}

#[test]
fn the_table_of_a_pdf_points_at_its_objects() {
    let pattern = template(vec![hole("1", [0.0; 2], 0.02), hole("2", [0.5, 0.3], 0.02)]);
    let file = pdf(
        &pages(&pattern, &labels(), A4, 0.015, [1.0; 2]).unwrap(),
        &pattern,
        &labels(),
    );
    let table = file.split("xref\n").nth(1).unwrap();
    let starts: Vec<usize> = table
        .lines()
        .skip(2)
        .take_while(|line| line.len() == 19)
        .map(|line| line[..10].parse().unwrap())
        .collect();
    assert!(starts.len() > 6);
    for (i, start) in starts.iter().enumerate() {
        assert!(file[*start..].starts_with(&format!("{} 0 obj\n", i + 1)));
    }
}

#[test]
fn however_much_is_said_the_words_stay_clear_of_the_bars_and_of_the_pattern() {
    let long = "Goes on the left-hand side of the vehicle, and was seen from the seat when it was taken off. ";
    for count in [0, 1, 5, 12] {
        let mut pattern = template(vec![hole("1", [0.0; 2], 0.02)]);
        pattern.lines = vec![long.to_owned(); count];
        let words: Vec<[[f64; 2]; 2]> = bars::foot([0.0; 2], &pattern, &labels(), "Page A1")
            .iter()
            .filter(|ink| matches!(ink, ink::Ink::Text { high, .. } if *high > 2.7 && *high < 5.0))
            .map(ink::Ink::bounds)
            .collect();
        assert!(words.len() > 2 * count);
        let top = bars::foot_height(&pattern, &labels(), "Page A1");
        // The bars and what they are end 11.6 mm up.
        assert!(
            words
                .iter()
                .all(|[low, high]| low[1] > 12.0 && high[1] < top)
        );
        let pages = pages(&pattern, &labels(), A4, 0.015, [1.2, 1.2]).unwrap();
        let page = pages.page(0, &pattern, &labels());
        assert!(page.window[0][1] >= 8.0 + 1.2 * top);
    }
}
