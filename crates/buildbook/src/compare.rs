//! Before and now, side by side.

use crate::Key;

/// The key that an entry kept as before stands for: `before/gearing/gearing/final_drive` is `gearing/final_drive` of gearing's before.
#[must_use]
pub fn frozen_key(key: &Key) -> Option<Key> {
    let (_, rest) = key.as_str().strip_prefix("before/")?.split_once('/')?;
    Key::checked(rest).ok()
}
