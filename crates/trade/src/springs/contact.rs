//! The leaf-by-leaf beam in plain numbers: cantilevers that touch at their tips. SI units throughout.
//!
//! One half of the spring, from the edge of the seat to the eye. Every leaf is a cantilever rooted in the seat, and
//! bears on its neighbour at the tip of the shorter of the two, where it can push but not pull. Because a contact
//! force meets only its two neighbours, the conditions form a tridiagonal system, and because pressing one contact
//! shut never opens the forces of another below zero, shutting the open contacts that overlap, one round after
//! another, ends at the one solution (a linear complementarity problem with an M-matrix).

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
    /// Force at each contact: between the first two leaves, the next two, ...
    pub contacts_n: Vec<f64>,
    /// Where each contact lies, from the edge of the seat.
    pub places_m: Vec<f64>,
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

/// The half spring under `eye_n` at the eye, pressed down.
pub(super) fn half(leaves: &[HalfLeaf], modulus_pa: f64, eye_n: f64) -> Half {
    let places: Vec<f64> = leaves
        .windows(2)
        .map(|pair| pair[0].length_m.min(pair[1].length_m))
        .collect();
    let system = System::new(leaves, &places, modulus_pa);
    let gaps = system.gaps(leaves, eye_n);
    let (forces, shut) = system.forces(&gaps);
    // One newton more at the eye, with the same contacts shut.
    let slope = system.gaps_per_newton();
    let more = system.solve(&slope, &shut);

    let stiffness = modulus_pa * leaves[0].second_moment_m4;
    let eye = leaves[0].length_m;
    let own = influence(eye, eye) / stiffness;
    let back = places
        .first()
        .map_or(0.0, |&place| influence(eye, place) / stiffness);
    let first = forces.first().copied().unwrap_or(0.0);
    let first_more = more.first().copied().unwrap_or(0.0);

    let mut root_moments_nm = Vec::with_capacity(leaves.len());
    let mut greatest_moments_nm = Vec::with_capacity(leaves.len());
    for i in 0..leaves.len() {
        let (onto, onto_place) = if i == 0 {
            (eye_n, eye)
        } else {
            (forces[i - 1], places[i - 1])
        };
        let (from, from_place) = if i < forces.len() {
            (forces[i], places[i])
        } else {
            (0.0, 0.0)
        };
        let root = onto * onto_place - from * from_place;
        let at_support = onto * (onto_place - from_place).max(0.0);
        root_moments_nm.push(root);
        greatest_moments_nm.push(root.max(at_support));
    }
    Half {
        drop_m: own * eye_n - back * first,
        compliance_m_per_n: own - back * first_more,
        contacts_n: forces,
        places_m: places,
        root_moments_nm,
        greatest_moments_nm,
    }
}

/// The tridiagonal system of the contacts.
struct System {
    /// How a contact's own force opens it.
    diagonal: Vec<f64>,
    /// How the next contact's force closes it (the matrix is symmetric).
    beside: Vec<f64>,
    /// How one newton at the eye closes the first contact.
    eye: f64,
}

impl System {
    fn new(leaves: &[HalfLeaf], places: &[f64], modulus_pa: f64) -> Self {
        let flexibility = |leaf: usize, at: f64, from: f64| {
            influence(at, from) / (modulus_pa * leaves[leaf].second_moment_m4)
        };
        let diagonal = places
            .iter()
            .enumerate()
            .map(|(i, &place)| flexibility(i, place, place) + flexibility(i + 1, place, place))
            .collect();
        let beside = (1..places.len())
            .map(|i| flexibility(i, places[i - 1], places[i]))
            .collect();
        let eye = places
            .first()
            .map_or(0.0, |&place| flexibility(0, place, leaves[0].length_m));
        Self {
            diagonal,
            beside,
            eye,
        }
    }

    /// The gap at each contact if none of them pushed: negative where the leaves would run into each other.
    fn gaps(&self, leaves: &[HalfLeaf], eye_n: f64) -> Vec<f64> {
        let mut gaps: Vec<f64> = leaves
            .windows(2)
            .map(|pair| {
                let place = pair[0].length_m.min(pair[1].length_m);
                (pair[0].curvature_per_m - pair[1].curvature_per_m) * place * place / 2.0
            })
            .collect();
        // A helper's gap is measured in the assembled free spring: find what its leaves above do there first.
        if let Some(helper) = leaves.iter().skip(1).position(|leaf| leaf.gap_m.is_some()) {
            let (forces, _) = self.forces(&gaps[..helper]);
            let pressed = forces
                .last()
                .map_or(0.0, |force| force * self.beside[helper - 1]);
            gaps[helper] = leaves[helper + 1].gap_m.unwrap_or(0.0) + pressed;
        }
        if let Some(first) = gaps.first_mut() {
            *first -= self.eye * eye_n;
        }
        gaps
    }

    /// How the gaps change for one newton at the eye.
    fn gaps_per_newton(&self) -> Vec<f64> {
        let mut slope = vec![0.0; self.diagonal.len()];
        if let Some(first) = slope.first_mut() {
            *first = -self.eye;
        }
        slope
    }

    /// The contact forces for these open gaps, and which contacts are shut.
    fn forces(&self, gaps: &[f64]) -> (Vec<f64>, Vec<bool>) {
        let mut shut = vec![false; gaps.len()];
        let mut forces = vec![0.0; gaps.len()];
        for _ in 0..=gaps.len() {
            let overlapping: Vec<usize> = (0..gaps.len())
                .filter(|&i| !shut[i] && self.gap(gaps, &forces, i) <= 0.0)
                .collect();
            if overlapping.is_empty() {
                break;
            }
            for i in overlapping {
                shut[i] = true;
            }
            forces = self.solve(gaps, &shut);
        }
        (forces, shut)
    }

    /// The gap at one contact under these forces.
    fn gap(&self, gaps: &[f64], forces: &[f64], i: usize) -> f64 {
        let mut gap = gaps[i] + self.diagonal[i] * forces[i];
        if i > 0 {
            gap -= self.beside[i - 1] * forces[i - 1];
        }
        if i + 1 < forces.len() {
            gap -= self.beside[i] * forces[i + 1];
        }
        gap
    }

    /// Forces that bring the shut contacts' gaps to nothing: each run of shut contacts by elimination.
    fn solve(&self, gaps: &[f64], shut: &[bool]) -> Vec<f64> {
        let count = gaps.len();
        let mut pivot = vec![0.0; count];
        let mut right = vec![0.0; count];
        for i in 0..count {
            if !shut[i] {
                continue;
            }
            pivot[i] = self.diagonal[i];
            right[i] = -gaps[i];
            if i > 0 && shut[i - 1] {
                let factor = self.beside[i - 1] / pivot[i - 1];
                pivot[i] -= factor * self.beside[i - 1];
                right[i] += factor * right[i - 1];
            }
        }
        let mut forces = vec![0.0; count];
        for i in (0..count).rev() {
            if !shut[i] {
                continue;
            }
            let below = if i + 1 < count && shut[i + 1] {
                self.beside[i] * forces[i + 1]
            } else {
                0.0
            };
            forces[i] = (right[i] + below) / pivot[i];
        }
        forces
    }
}
