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

impl Mark {
    /// The character itself.
    #[must_use]
    pub const fn sign(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }

    /// The mark that this one is not.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Point => Self::Comma,
            Self::Comma => Self::Point,
        }
    }
}
