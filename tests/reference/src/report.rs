//! The counts of a run, by subject and by how the values are known.

use std::collections::BTreeMap;
use std::fmt;

use crate::Held;

/// How many checks ran and passed.
#[derive(Debug, Default)]
pub struct Report {
    counts: BTreeMap<(&'static str, Held), (usize, usize)>,
    subjects: Vec<&'static str>,
}

impl Report {
    /// Counts one check.
    pub fn count(&mut self, subject: &'static str, held: Held, passed: bool) {
        if !self.subjects.contains(&subject) {
            self.subjects.push(subject);
        }
        let (ran, good) = self.counts.entry((subject, held)).or_default();
        *ran += 1;
        *good += usize::from(passed);
    }

    /// Checks run and passed that match.
    fn sum(&self, wanted: impl Fn(&str, Held) -> bool) -> (usize, usize) {
        self.counts
            .iter()
            .filter(|((subject, held), _)| wanted(subject, *held))
            .fold((0, 0), |sum, (_, count)| (sum.0 + count.0, sum.1 + count.1))
    }

    /// All checks run and passed.
    #[must_use]
    pub fn total(&self) -> (usize, usize) {
        self.sum(|_, _| true)
    }
}

impl fmt::Display for Report {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{:<10}", "subject")?;
        for held in Held::ALL {
            write!(out, "{:>10}", held.word())?;
        }
        writeln!(out, "{:>10}{:>10}", "ran", "passed")?;
        let mut line = |name: &str, pick: &dyn Fn(&str) -> bool| {
            write!(out, "{name:<10}")?;
            for held in Held::ALL {
                let (ran, _) = self.sum(|subject, how| pick(subject) && how == held);
                write!(out, "{ran:>10}")?;
            }
            let (ran, passed) = self.sum(|subject, _| pick(subject));
            writeln!(out, "{ran:>10}{passed:>10}")
        };
        for subject in &self.subjects {
            line(subject, &|name| name == *subject)?;
        }
        line("all", &|_| true)
    }
}
