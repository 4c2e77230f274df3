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
    /// How much further the eye goes down for one newton more.
    pub compliance_m_per_n: f64,
    /// Force onto each leaf but the main leaf, from the leaf above it.
    pub pushes_n: Vec<f64>,
    /// Moment in each leaf at the seat; positive where the leaf is being flattened.
    pub root_moments_nm: Vec<f64>,
    /// The greatest flattening moment in each leaf.
    pub greatest_moments_nm: Vec<f64>,
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

/// The half spring under `eye_n` at the eye, pressed down.
pub(super) fn half(leaves: &[HalfLeaf], modulus_pa: f64, eye_n: f64) -> Half {
    let system = System::new(leaves, modulus_pa);
    let gaps = system.gaps(leaves, eye_n);
    let (forces, shut) = system.forces(&gaps);
    // One newton more at the eye, with the same contacts shut.
    let slope: Vec<f64> = system.eye.iter().map(|eye| -eye).collect();
    let more = system.solve(&slope, &shut);

    let eye = leaves[0].length_m;
    let own = system.flexibility(0, eye, eye);
    // What pushes up against the main leaf, as it acts at the eye.
    let back = |forces: &[f64]| -> f64 {
        let all = system.eye.iter().zip(forces);
        all.map(|(eye, force)| eye * force).sum()
    };
    let moments: Vec<(f64, f64)> = (0..leaves.len())
        .map(|leaf| system.moments(leaf, eye_n, eye, &forces))
        .collect();
    Half {
        drop_m: own * eye_n - back(&forces),
        compliance_m_per_n: own - back(&more),
        root_moments_nm: moments.iter().map(|(root, _)| *root).collect(),
        greatest_moments_nm: moments.iter().map(|(_, greatest)| *greatest).collect(),
        pushes_n: forces,
    }
}

/// The contacts of a half spring and how their forces open and close one another.
struct System<'a> {
    leaves: &'a [HalfLeaf],
    modulus_pa: f64,
    contacts: Vec<Contact>,
    /// How a contact's force opens the gap at another, row by row.
    matrix: Vec<Vec<f64>>,
    /// How one newton at the eye closes each contact; also how each contact's force lifts the eye.
    eye: Vec<f64>,
}

impl<'a> System<'a> {
    fn new(leaves: &'a [HalfLeaf], modulus_pa: f64) -> Self {
        let mut system = Self {
            leaves,
            modulus_pa,
            contacts: contacts(leaves),
            matrix: Vec::new(),
            eye: Vec::new(),
        };
        let eye = leaves[0].length_m;
        let closes = |at: &Contact| match at.upper {
            0 => system.flexibility(0, at.place_m, eye),
            _ => 0.0,
        };
        let eye = system.contacts.iter().map(closes).collect();
        let row = |at: &Contact| {
            let others = system.contacts.iter();
            others.map(|by| system.opening(at, by)).collect()
        };
        let matrix = system.contacts.iter().map(row).collect();
        system.eye = eye;
        system.matrix = matrix;
        system
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

    /// The gap at each contact if none of them pushed: negative where the leaves would run into each other.
    fn gaps(&self, leaves: &[HalfLeaf], eye_n: f64) -> Vec<f64> {
        let curve = |leaf: usize| leaves[leaf].curvature_per_m;
        let mut gaps: Vec<f64> = self
            .contacts
            .iter()
            .map(|at| (curve(at.upper) - curve(at.lower)) * at.place_m * at.place_m / 2.0)
            .collect();
        // A helper's gap is measured in the assembled free spring: find what the leaves above it do there first.
        for helper in 0..gaps.len() {
            if let Some(gap) = leaves[helper + 1].gap_m {
                let (forces, _) = self.forces(&gaps[..helper]);
                let row = self.matrix[helper].iter().zip(&forces);
                let pressed: f64 = row.map(|(opening, force)| opening * force).sum();
                gaps[helper] = gap - pressed;
            }
        }
        for (gap, eye) in gaps.iter_mut().zip(&self.eye) {
            *gap -= eye * eye_n;
        }
        gaps
    }

    /// The contact forces for these open gaps, and which contacts are shut.
    fn forces(&self, gaps: &[f64]) -> (Vec<f64>, Vec<bool>) {
        let count = gaps.len();
        let mut shut = vec![false; count];
        let mut forces = vec![0.0; count];
        // Shutting all that overlap, round after round, is nearly always enough.
        for _ in 0..=count {
            let overlapping: Vec<usize> = (0..count)
                .filter(|&i| !shut[i] && self.gap(gaps, &forces, i) <= 0.0)
                .collect();
            if overlapping.is_empty() {
                break;
            }
            overlapping.iter().for_each(|&i| shut[i] = true);
            forces = self.solve(gaps, &shut);
        }
        // Where that left a contact pulling, one at a time; far more rounds than any pack takes.
        for _ in 0..=(8 * count * count) {
            let wrong = (0..count).find(|&i| {
                if shut[i] {
                    forces[i] < -1e-9
                } else {
                    self.gap(gaps, &forces, i) <= 0.0
                }
            });
            let Some(wrong) = wrong else { break };
            shut[wrong] = !shut[wrong];
            forces = self.solve(gaps, &shut);
        }
        (forces, shut)
    }

    /// The gap at one contact under these forces.
    fn gap(&self, gaps: &[f64], forces: &[f64], i: usize) -> f64 {
        let row = self.matrix[i].iter().zip(forces);
        gaps[i] + row.map(|(opening, force)| opening * force).sum::<f64>()
    }

    /// Forces that bring the shut contacts' gaps to nothing, by elimination.
    fn solve(&self, gaps: &[f64], shut: &[bool]) -> Vec<f64> {
        let active: Vec<usize> = (0..gaps.len()).filter(|&i| shut[i]).collect();
        let mut rows: Vec<Vec<f64>> = active
            .iter()
            .map(|&i| {
                let mut row: Vec<f64> = active.iter().map(|&j| self.matrix[i][j]).collect();
                row.push(-gaps[i]);
                row
            })
            .collect();
        let count = active.len();
        for pivot in 0..count {
            let (above, below) = rows.split_at_mut(pivot + 1);
            let known = &above[pivot];
            for row in below {
                let factor = row[pivot] / known[pivot];
                if factor != 0.0 {
                    for (value, own) in row[pivot..].iter_mut().zip(&known[pivot..]) {
                        *value -= factor * own;
                    }
                }
            }
        }
        let mut forces = vec![0.0; gaps.len()];
        for i in (0..count).rev() {
            let solved: f64 = (i + 1..count).map(|j| rows[i][j] * forces[active[j]]).sum();
            forces[active[i]] = (rows[i][count] - solved) / rows[i][i];
        }
        forces
    }

    /// Moment in a leaf at the seat, and its greatest: it turns only where something pushes up against the leaf.
    fn moments(&self, leaf: usize, eye_n: f64, eye_m: f64, forces: &[f64]) -> (f64, f64) {
        let (onto, onto_m) = match leaf {
            0 => (eye_n, eye_m),
            _ => (forces[leaf - 1], self.contacts[leaf - 1].place_m),
        };
        let under: Vec<(f64, f64)> = self
            .contacts
            .iter()
            .zip(forces)
            .filter(|(at, _)| at.upper == leaf)
            .map(|(at, force)| (*force, at.place_m))
            .collect();
        let at = |place: f64| {
            let pushed: f64 = under
                .iter()
                .map(|(force, from)| force * (from - place).max(0.0))
                .sum();
            onto * (onto_m - place).max(0.0) - pushed
        };
        let root = at(0.0);
        let greatest = under.iter().map(|(_, place)| at(*place));
        (root, greatest.fold(root.max(0.0), f64::max))
    }
}
