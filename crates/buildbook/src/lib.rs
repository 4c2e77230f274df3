//! The build book: what was typed, the sheets that read it, and what they find.
