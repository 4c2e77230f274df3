//! How long the evaluation of the example book takes: from nothing, and after one keystroke.
#![allow(missing_docs)]

use buildbook::{Book, Edit, evaluate, example};
use criterion::{Criterion, criterion_group, criterion_main};

fn evaluation(c: &mut Criterion) {
    let book = example::book();
    c.bench_function("evaluate the example book from nothing", |b| {
        b.iter(|| evaluate(&book, None));
    });
    // The five sheets that a vehicle is first bought and painted by.
    let main_job = ["book", "vehicle", "gearing", "springs", "paint", "costs"];
    let entries = book
        .entries()
        .filter(|(key, _)| main_job.contains(&key.sheet()));
    let entries = entries.map(|(key, entry)| (key.clone(), entry.clone()));
    let five = Book::of("b", entries);
    c.bench_function(
        "evaluate five sheets of the example book from nothing",
        |b| {
            b.iter(|| evaluate(&five, None));
        },
    );
    let findings = evaluate(&book, None);
    for (what, key, text) in [
        ("wheelbase", "vehicle/wheelbase", "3190"),
        ("a gear", "gearing/gears/3/ratio", "1.7"),
        ("a leaf", "springs/springs/1/leaves/1/thickness", "6.1"),
        ("a panel", "paint/panels/1/length", "1690"),
        ("a name", "paint/name", "x"),
        ("a reading", "marking/features/1/a", "412"),
        ("the vehicle's name", "vehicle/name", "x"),
    ] {
        let edit: Edit = book.setting(key, Some(text.into()));
        let after = book.with(&edit);
        c.bench_function(&format!("evaluate after a keystroke: {what}"), |b| {
            b.iter(|| evaluate(&after, Some(&findings)));
        });
    }
    c.bench_function("all shares and ± of the example book", |b| {
        b.iter(|| {
            let findings = evaluate(&book, None);
            buildbook::SHEETS
                .iter()
                .filter_map(|sheet| findings.found(sheet))
                .flat_map(|found| found.results())
                .filter_map(|(_, finding)| finding.as_ref().ok())
                .map(|figure| figure.plus())
                .sum::<f64>()
        });
    });
}

criterion_group!(benches, evaluation);
criterion_main!(benches);
