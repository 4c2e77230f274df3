//! Putting things in order. Lists here are short, and the standard library's sort is made anew, at four kilobytes, for every kind of
//! thing that it sorts; so one sort of places serves them all.

use std::cmp::Ordering;

/// Puts things in order; those that are equal stay as they stand to each other.
pub fn sort_by<T>(things: &mut [T], mut compare: impl FnMut(&T, &T) -> Ordering) {
    let in_order = |pair: &[T]| compare(&pair[0], &pair[1]).is_le();
    if things.windows(2).all(in_order) {
        return;
    }
    let places = places(things.len(), &mut |one, other| {
        compare(&things[one], &things[other])
    });
    for (to, mut from) in places.iter().copied().enumerate() {
        // What stood there has been swapped away already: follow it.
        while from < to {
            from = places[from];
        }
        things.swap(to, from);
    }
}

/// Puts things in the order of a key; those whose keys are equal stay as they stand to each other.
pub fn sort_by_key<T, K: Ord>(things: &mut [T], mut key: impl FnMut(&T) -> K) {
    sort_by(things, |one, other| key(one).cmp(&key(other)));
}

/// The places of so many things, in order.
#[inline(never)]
fn places(count: usize, compare: &mut dyn FnMut(usize, usize) -> Ordering) -> Vec<usize> {
    let mut places: Vec<usize> = (0..count).collect();
    places.sort_by(|one, other| compare(*one, *other));
    places
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// The standard library's stable sort is the reference.
        #[test]
        fn any_list_comes_into_the_order_that_the_standard_library_gives(list in prop::collection::vec(0u8..12, 0..60)) {
            let mut ours: Vec<(u8, usize)> = list.into_iter().zip(0..).collect();
            let mut theirs = ours.clone();
            sort_by(&mut ours, |one, other| other.0.cmp(&one.0));
            theirs.sort_by_key(|one| std::cmp::Reverse(one.0));
            prop_assert_eq!(&ours, &theirs);
            sort_by_key(&mut ours, |one| one.0);
            theirs.sort_by_key(|one| one.0);
            prop_assert_eq!(ours, theirs);
        }
    }
}
