//! The leaf-by-leaf beam in plain numbers: cantilevers that touch at their tips. SI units throughout.
//!
//! One half of the spring, from the edge of the seat to the eye. Every leaf is a cantilever rooted in the seat, and
//! bears on the leaf above it at the tip of the shorter of the two, where it can push but not pull. A helper whose gap
//! was measured bears with its tip on the last leaf that reaches over it. What pushes and what stands open is a linear
//! complementarity problem with a positive definite matrix: opening or shutting the first contact that is wrong, again
//! and again, ends at its one solution (K. G. Murty's principal pivoting).

/// One half of one leaf.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct HalfLeaf {
    /// Second moment of area.
    pub second_moment_m4: f64,
    /// From the edge of the seat to the tip.
    pub length_m: f64,
    /// Curvature of the leaf lying loose, tips up.
    pub curvature_per_m: f64,
    /// For the first leaf of a helper: the clear gap above its tip when the spring is free.
    pub gap_m: Option<f64>,
}

/// What the half spring does under a load at its eye.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Half {
    /// How far the eye is pressed down from where the main leaf's loose curve would put it.
    pub drop_m: f64,
    /// Force onto each leaf but the main leaf, from the leaf above it.
    pub pushes_n: Vec<f64>,
    /// Moment in each leaf at the seat; positive where the leaf is being flattened.
    pub root_moments_nm: Vec<f64>,
    /// The greatest flattening moment in each leaf.
    pub greatest_moments_nm: Vec<f64>,
    /// Which contacts are shut.
    shut: Vec<bool>,
}

/// Deflection of a cantilever at `at` for one newton at `from`, times its stiffness E·I.
fn influence(at: f64, from: f64) -> f64 {
    let (near, far) = if at < from { (at, from) } else { (from, at) };
    near * near * (3.0 * far - near) / 6.0
}

/// A place where two leaves may touch.
#[derive(Debug, Clone, Copy)]
struct Contact {
    upper: usize,
    lower: usize,
    place_m: f64,
}

/// Where each leaf but the main leaf may touch one above it.
fn contacts(leaves: &[HalfLeaf]) -> Vec<Contact> {
    (1..leaves.len())
        .map(|lower| {
            let length = leaves[lower].length_m;
            let reaches = |upper: &usize| leaves[*upper].length_m >= length;
            let over = (0..lower).rev().find(reaches);
            let upper = match (leaves[lower].gap_m, over) {
                (Some(_), Some(over)) => over,
                _ => lower - 1,
            };
            Contact {
                upper,
                lower,
                place_m: length.min(leaves[upper].length_m),
            }
        })
        .collect()
}

/// The contacts of a half spring and how their forces open and close one another.
pub(super) struct System<'a> {
    leaves: &'a [HalfLeaf],
    modulus_pa: f64,
    contacts: Vec<Contact>,
    /// How a contact's force opens the gap at another, row by row.
    matrix: Vec<f64>,
    /// How one newton at the eye closes each contact; also how each contact's force lifts the eye.
    eye: Vec<f64>,
    /// The gap at each contact with no load and no push: negative where the leaves would run into each other.
    gaps: Vec<f64>,
}

impl<'a> System<'a> {
    pub fn new(leaves: &'a [HalfLeaf], modulus_pa: f64) -> Self {
        let mut system = Self {
            leaves,
            modulus_pa,
            contacts: contacts(leaves),
            matrix: Vec::new(),
            eye: Vec::new(),
            gaps: Vec::new(),
        };
        let eye = leaves[0].length_m;
        let closes = |at: &Contact| match at.upper {
            0 => system.flexibility(0, at.place_m, eye),
            _ => 0.0,
        };
        let eye = system.contacts.iter().map(closes).collect();
        let mut matrix = Vec::with_capacity(system.contacts.len().pow(2));
        for at in &system.contacts {
            matrix.extend(system.contacts.iter().map(|by| system.opening(at, by)));
        }
        system.eye = eye;
        system.matrix = matrix;
        system.gaps = system.open_gaps();
        system
    }

    /// The half spring under `eye_n` at the eye, pressed down.
    pub fn under(&self, eye_n: f64) -> Half {
        let closed = self.gaps.iter().zip(&self.eye);
        let gaps: Vec<f64> = closed.map(|(gap, eye)| gap - eye * eye_n).collect();
        let (forces, shut) = self.forces(&gaps);
        let eye = self.leaves[0].length_m;
        let moments = (0..self.leaves.len()).map(|leaf| self.moments(leaf, eye_n, eye, &forces));
        let (root_moments_nm, greatest_moments_nm) = moments.unzip();
        Half {
            drop_m: self.flexibility(0, eye, eye) * eye_n - self.back(&forces),
            root_moments_nm,
            greatest_moments_nm,
            pushes_n: forces,
            shut,
        }
    }

    /// How much further the eye goes down for one newton more, with the same contacts shut.
    pub fn compliance_m_per_n(&self, half: &Half) -> f64 {
        let slope: Vec<f64> = self.eye.iter().map(|eye| -eye).collect();
        let mut more = vec![0.0; slope.len()];
        self.solve(&slope, &half.shut, &mut Vec::new(), &mut more);
        let eye = self.leaves[0].length_m;
        self.flexibility(0, eye, eye) - self.back(&more)
    }

    /// What pushes up against the main leaf, as it lifts the eye.
    fn back(&self, forces: &[f64]) -> f64 {
        let all = self.eye.iter().zip(forces);
        all.map(|(eye, force)| eye * force).sum()
    }

    /// Deflection of a leaf for one newton.
    fn flexibility(&self, leaf: usize, at: f64, from: f64) -> f64 {
        influence(at, from) / (self.modulus_pa * self.leaves[leaf].second_moment_m4)
    }

    /// How much one newton at a contact opens the gap at another: it lifts its upper leaf and presses its lower one.
    fn opening(&self, at: &Contact, by: &Contact) -> f64 {
        let shared = |leaf: usize| self.flexibility(leaf, at.place_m, by.place_m);
        let mut opening = 0.0;
        if at.upper == by.upper {
            opening += shared(at.upper);
        }
        if at.lower == by.lower {
            opening += shared(at.lower);
        }
        if at.upper == by.lower {
            opening -= shared(at.upper);
        }
        if at.lower == by.upper {
            opening -= shared(at.lower);
        }
        opening
    }

    /// The gap at each contact if nothing pushed.
    fn open_gaps(&self) -> Vec<f64> {
        let curve = |leaf: usize| self.leaves[leaf].curvature_per_m;
        let mut gaps: Vec<f64> = self
            .contacts
            .iter()
            .map(|at| (curve(at.upper) - curve(at.lower)) * at.place_m * at.place_m / 2.0)
            .collect();
        // A helper's gap is measured in the assembled free spring: find what the leaves above it do there first.
        for helper in 0..gaps.len() {
            if let Some(gap) = self.leaves[helper + 1].gap_m {
                let (forces, _) = self.forces(&gaps[..helper]);
                gaps[helper] = gap - self.opened(helper, &forces);
            }
        }
        gaps
    }

    /// How far these forces open the gap at one contact.
    fn opened(&self, contact: usize, forces: &[f64]) -> f64 {
        let row = &self.matrix[contact * self.contacts.len()..];
        let opened = row.iter().zip(forces);
        opened.map(|(opening, force)| opening * force).sum()
    }

    /// The contact forces for these open gaps, and which contacts are shut.
    fn forces(&self, gaps: &[f64]) -> (Vec<f64>, Vec<bool>) {
        let count = gaps.len();
        let mut shut = vec![false; count];
        let mut forces = vec![0.0; count];
        let mut rows = Vec::with_capacity(count * (count + 1));
        // Shutting all that overlap, round after round, is nearly always enough.
        for _ in 0..=count {
            let mut overlap = false;
            for (i, shut) in shut.iter_mut().enumerate() {
                if !*shut && gaps[i] + self.opened(i, &forces) <= 0.0 {
                    (*shut, overlap) = (true, true);
                }
            }
            if !overlap {
                break;
            }
            self.solve(gaps, &shut, &mut rows, &mut forces);
        }
        // Where that left a contact pulling, one at a time; far more rounds than any pack takes.
        for _ in 0..=(8 * count * count) {
            let wrong = (0..count).find(|&i| {
                if shut[i] {
                    forces[i] < -1e-9
                } else {
                    gaps[i] + self.opened(i, &forces) <= 0.0
                }
            });
            let Some(wrong) = wrong else { break };
            shut[wrong] = !shut[wrong];
            self.solve(gaps, &shut, &mut rows, &mut forces);
        }
        (forces, shut)
    }

    /// Forces that bring the shut contacts' gaps to nothing, by elimination in `rows`, which are only lent.
    fn solve(&self, gaps: &[f64], shut: &[bool], rows: &mut Vec<f64>, forces: &mut [f64]) {
        let shut = || (0..gaps.len()).filter(|&i| shut[i]);
        let count = shut().count();
        let width = count + 1;
        rows.clear();
        for i in shut() {
            let row = &self.matrix[i * self.contacts.len()..];
            rows.extend(shut().map(|j| row[j]));
            rows.push(-gaps[i]);
        }
        for pivot in 0..count {
            let (above, below) = rows.split_at_mut((pivot + 1) * width);
            let known = &above[pivot * width + pivot..];
            for row in below.chunks_exact_mut(width) {
                let row = &mut row[pivot..];
                // Leaves that do not lie on one another leave noughts here.
                if row[0] != 0.0 {
                    let factor = row[0] / known[0];
                    for (value, own) in row.iter_mut().zip(known) {
                        *value -= factor * own;
                    }
                }
            }
        }
        forces.fill(0.0);
        let mut place = count;
        for i in shut().rev() {
            place -= 1;
            let row = &rows[place * width..][..width];
            // Forces that are not found yet are still nought.
            let solved: f64 = row.iter().zip(shut()).map(|(own, j)| own * forces[j]).sum();
            forces[i] = (row[count] - solved) / row[place];
        }
    }

    /// Moment in a leaf at the seat, and its greatest: it turns only where something pushes up against the leaf.
    fn moments(&self, leaf: usize, eye_n: f64, eye_m: f64, forces: &[f64]) -> (f64, f64) {
        let (onto, onto_m) = match leaf {
            0 => (eye_n, eye_m),
            _ => (forces[leaf - 1], self.contacts[leaf - 1].place_m),
        };
        let under = || {
            let all = self.contacts.iter().zip(forces);
            all.filter(move |(at, _)| at.upper == leaf)
        };
        let at = |place: f64| {
            let pushed: f64 = under()
                .map(|(from, force)| force * (from.place_m - place).max(0.0))
                .sum();
            onto * (onto_m - place).max(0.0) - pushed
        };
        let root = at(0.0);
        let greatest = under().map(|(from, _)| at(from.place_m));
        (root, greatest.fold(root.max(0.0), f64::max))
    }
}
