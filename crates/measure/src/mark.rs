//! The decimal mark: a point or a comma.

/// The mark between the whole and the decimals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Mark {
    /// `1,234.50`
    #[default]
    Point,
    /// `1.234,50`
    Comma,
}
