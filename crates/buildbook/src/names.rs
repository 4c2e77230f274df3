//! Results by their names: each name once, in the order they came, and found again at once.

use std::rc::Rc;

/// Names in the order they came, and where each one stands.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Names {
    all: Vec<Rc<str>>,
    /// Places by the names' hashes, one more than the place; nought is free. Twice as many as names at the least.
    slots: Vec<u32>,
}

impl Names {
    /// Where a name stands.
    pub fn place(&self, name: &str) -> Option<usize> {
        match self.slots.get(self.slot(name))? {
            0 => None,
            place => Some(*place as usize - 1),
        }
    }

    /// Where a name stands from now on: where it stood, or behind all others.
    pub fn placed(&mut self, name: Rc<str>) -> usize {
        if self.slots.len() < 2 * (self.all.len() + 1) {
            self.make_room();
        }
        let slot = self.slot(&name);
        if self.slots[slot] == 0 {
            self.all.push(name);
            self.slots[slot] = self.all.len() as u32;
        }
        self.slots[slot] as usize - 1
    }

    /// The names, in the order they came.
    pub fn iter(&self) -> std::slice::Iter<'_, Rc<str>> {
        self.all.iter()
    }

    fn make_room(&mut self) {
        self.slots = vec![0; (4 * self.all.len()).max(256).next_power_of_two()];
        for place in 0..self.all.len() {
            let slot = self.slot(&self.all[place]);
            self.slots[slot] = place as u32 + 1;
        }
    }

    /// The slot that a name has, or would have.
    fn slot(&self, name: &str) -> usize {
        let last = self.slots.len().wrapping_sub(1);
        let mut slot = hash(name) as usize & last;
        while let Some(place) = self.slots.get(slot) {
            match place {
                0 => break,
                place if *self.all[*place as usize - 1] == *name => break,
                _ => slot = (slot + 1) & last,
            }
        }
        slot
    }
}

/// Fowler, Noll and Vo's hash (FNV-1a, 32 bits), four bytes at a time: names are ours, so that nobody can choose them to collide.
fn hash(name: &str) -> u32 {
    let (fours, rest) = name.as_bytes().as_chunks::<4>();
    let words = fours.iter().map(|four| u32::from_le_bytes(*four));
    let last = rest.iter().map(|byte| u32::from(*byte));
    let hash = words.chain(last).fold(0x811c_9dc5, |hash: u32, word| {
        (hash ^ word).wrapping_mul(0x0100_0193)
    });
    hash ^ (hash >> 15)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_of_many_names_keeps_its_place() {
        let mut names = Names::default();
        assert_eq!(names.place("a/b/1"), None);
        for round in 0..2 {
            for place in 0..1000 {
                assert_eq!(
                    names.placed(format!("a/b/{place}").into()),
                    place,
                    "{round}"
                );
            }
        }
        assert_eq!(names.iter().count(), 1000);
        assert_eq!(names.place("a/b/999"), Some(999));
        assert_eq!(names.place("a/b/1000"), None);
    }
}
