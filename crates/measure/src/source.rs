//! Where a figure or a formula comes from, and how well it is known.

/// A published source, as shown beside a formula.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Source {
    /// Title and edition.
    pub title: &'static str,
    /// Clause, page or table.
    pub place: &'static str,
    /// How the figure is known.
    pub held: Held,
}

/// How a figure is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Held {
    /// Read in the source itself or in a faithful copy of it.
    Seen,
    /// Follows from definitions or elementary mechanics.
    Computed,
    /// Known from memory; the source was not at hand.
    Memory,
    /// Common practice of the trade, no source.
    CommonPractice,
}
