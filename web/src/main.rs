//! The pages of the reckoner.
fn main() {}
