//! The leaf-by-leaf beam as traced quantities: rate, travel, and the stress in each leaf.

use measure::{Force, Kind, Length, SpringRate, Stress, Table, Torque, Traced};

use super::contact::{Half, HalfLeaf, System};
use super::leaf::{LeafKind, Pack};
use super::source;

/// What the leaf-by-leaf beam says of a spring under a load.
#[derive(Clone)]
pub struct Beam {
    table: Table,
    leaves: usize,
    moduli: Vec<measure::SectionModulus>,
}

/// Results before the lists of moments.
const SINGLE_RESULTS: usize = 5;
/// Inputs before the leaves.
const SINGLE_INPUTS: usize = 5;

impl Beam {
    /// Solves the pack free, at a load, and at a second load such as full bump.
    ///
    /// Each half of each leaf is a cantilever rooted in the seat; neighbours touch at the tip of the shorter one, where
    /// they push but do not pull. A leaf without a loose arch is taken to lie on its neighbour without nip. The halves
    /// join in the seat, which may turn:
    ///
    /// δ = (δa b + δb a) / (a + b),  k = (a + b)² / (b² Ca + a² Cb)
    ///
    /// # Units
    /// SI.
    /// # Valid range
    /// Small slopes: arch up to about a fifth of the span. Leaves of constant thickness.
    /// # Errors
    /// None; a pack that cannot exist is refused where it is made.
    /// # Source
    /// Beam theory, compared with a finite element frame.
    #[must_use]
    pub fn new(pack: &Pack, load: &Force, bump: &Force) -> Self {
        let working = pack.working();
        let mut inputs: Vec<Box<dyn Traced>> = vec![
            Box::new(pack.modulus.clone()),
            Box::new(load.clone()),
            Box::new(bump.clone()),
            Box::new(pack.main().front.clone()),
            Box::new(pack.main().rear.clone()),
        ];
        let mut shapes = Vec::new();
        for leaf in working {
            let (front, rear) = pack.active_halves(leaf);
            inputs.push(Box::new(pack.second_moment(leaf)));
            inputs.push(Box::new(front));
            inputs.push(Box::new(rear));
            let bears_late = leaf.kind == LeafKind::Helper;
            let curve = pack.curvature(leaf);
            let gap = leaf.gap.clone().filter(|_| bears_late);
            shapes.push(match (gap, curve) {
                (Some(gap), _) => {
                    inputs.push(Box::new(gap));
                    Shape::Gap
                }
                (None, Some(curve)) => {
                    inputs.push(Box::new(curve));
                    Shape::Curve
                }
                (None, None) => Shape::LikeItsNeighbour,
            });
        }
        let inputs: Vec<&dyn Traced> = inputs.iter().map(AsRef::as_ref).collect();
        let leaves = working.len();
        let table = Table::new("leaf by leaf", &inputs, move |values| {
            solved(values, &shapes)
        });
        Self {
            table,
            leaves,
            moduli: working.iter().map(super::Leaf::section_modulus).collect(),
        }
    }

    /// How many leaves work.
    #[must_use]
    pub fn leaves(&self) -> usize {
        self.leaves
    }

    /// Rate at the load: how much more load one more length of travel takes.
    #[must_use]
    pub fn rate(&self) -> SpringRate {
        let rate: SpringRate = self.table.output(0);
        rate.of_kind(Kind::SpringRate)
            .cited(&source::TOUCHING_LEAVES)
            .called("k_beam")
    }

    /// Travel from the free spring to the load.
    #[must_use]
    pub fn travel(&self) -> Length {
        self.length(1).called("δ_beam")
    }

    /// Arch of the free assembled spring, above the line of the eyes' height on the main leaf's middle.
    #[must_use]
    pub fn free_camber(&self) -> Length {
        self.length(2).called("h_free")
    }

    /// How much the eye at the front goes down more than the one at the rear, between free and loaded.
    #[must_use]
    pub fn unequal_drop(&self) -> Length {
        self.length(3)
    }

    /// Pull in the centre bolt that keeps the free pack together.
    #[must_use]
    pub fn bolt_pull(&self) -> Force {
        let pull: Force = self.table.output(4);
        pull.of_kind(Kind::Force)
            .cited(&source::TOUCHING_LEAVES)
            .called("B")
    }

    fn length(&self, result: usize) -> Length {
        let length: Length = self.table.output(result);
        length.of_kind(Kind::Length).cited(&source::TOUCHING_LEAVES)
    }

    /// Stress at the seat in each leaf of the free assembled spring, upper face in tension positive.
    #[must_use]
    pub fn nip_stress(&self, leaf: usize) -> Stress {
        self.stress(0, leaf, "σ_nip")
    }

    /// Greatest stress in each leaf at the load.
    #[must_use]
    pub fn load_stress(&self, leaf: usize) -> Stress {
        self.stress(1, leaf, "σ_load")
    }

    /// Greatest stress in each leaf at the second load.
    #[must_use]
    pub fn bump_stress(&self, leaf: usize) -> Stress {
        self.stress(2, leaf, "σ_bump")
    }

    fn stress(&self, state: usize, leaf: usize, symbol: &'static str) -> Stress {
        let place = SINGLE_RESULTS + state * self.leaves + leaf;
        let moment: Torque = self.table.output(place);
        let moment = moment.of_kind(Kind::Torque).called("M");
        (moment / &self.moduli[leaf])
            .of_kind(Kind::Stress)
            .cited(&source::TOUCHING_LEAVES)
            .called(symbol)
    }
}

/// Where a leaf's loose shape comes from.
#[derive(Clone, Copy)]
enum Shape {
    Curve,
    Gap,
    LikeItsNeighbour,
}

/// Both halves in one state.
struct Halves {
    front: Half,
    rear: Half,
}

impl Halves {
    fn greatest(&self, of: impl Fn(&Half) -> &[f64], leaf: usize) -> f64 {
        of(&self.front)[leaf].max(of(&self.rear)[leaf])
    }

    /// The larger by size, sign kept.
    fn foremost(&self, of: impl Fn(&Half) -> &[f64], leaf: usize) -> f64 {
        let (front, rear) = (of(&self.front)[leaf], of(&self.rear)[leaf]);
        if front.abs() >= rear.abs() {
            front
        } else {
            rear
        }
    }
}

fn solved(values: &[f64], shapes: &[Shape]) -> Vec<f64> {
    let [modulus, load, bump, a, b] = [0, 1, 2, 3, 4].map(|i| values[i]);
    let (mut front, mut rear) = (Vec::new(), Vec::new());
    let mut place = SINGLE_INPUTS;
    let mut curvature = 0.0;
    for shape in shapes {
        let second_moment_m4 = values[place];
        let lengths = [values[place + 1], values[place + 2]];
        place += 3;
        let mut gap_m = None;
        match shape {
            Shape::Curve => curvature = values[place],
            Shape::Gap => gap_m = Some(values[place]),
            Shape::LikeItsNeighbour => {}
        }
        if !matches!(shape, Shape::LikeItsNeighbour) {
            place += 1;
        }
        for (half, length_m) in [&mut front, &mut rear].into_iter().zip(lengths) {
            half.push(HalfLeaf {
                second_moment_m4,
                length_m,
                curvature_per_m: curvature,
                gap_m,
            });
        }
    }
    let span = a + b;
    // A spring that is the same on both sides of its seat is reckoned once.
    let even = a == b && front == rear;
    let ahead = System::new(&front, modulus);
    let behind = (!even).then(|| System::new(&rear, modulus));
    let at = |load: f64| {
        let front = ahead.under(load * b / span);
        let rear = behind.as_ref().map(|half| half.under(load * a / span));
        Halves {
            rear: rear.unwrap_or_else(|| front.clone()),
            front,
        }
    };
    let [free, loaded, bumped] = [0.0, load, bump].map(at);
    let down = |state: &Halves| (state.front.drop_m * b + state.rear.drop_m * a) / span;
    let give_ahead = ahead.compliance_m_per_n(&loaded.front);
    let give_behind = behind.map_or(give_ahead, |half| half.compliance_m_per_n(&loaded.rear));
    let rate = span * span / (b * b * give_ahead + a * a * give_behind);
    let rise = |leaf: &HalfLeaf| leaf.curvature_per_m * leaf.length_m * leaf.length_m / 2.0;
    let loose = (rise(&front[0]) * b + rise(&rear[0]) * a) / span;
    let unequal =
        (loaded.front.drop_m - free.front.drop_m) - (loaded.rear.drop_m - free.rear.drop_m);
    // Across each joint the bolt holds what the tips there push.
    let pull = free
        .front
        .pushes_n
        .iter()
        .zip(&free.rear.pushes_n)
        .map(|(front, rear)| front + rear)
        .fold(0.0, f64::max);
    let mut results = vec![
        rate,
        down(&loaded) - down(&free),
        loose - down(&free),
        unequal,
        pull,
    ];
    let leaves = shapes.len();
    results.extend((0..leaves).map(|leaf| free.foremost(|half| &half.root_moments_nm, leaf)));
    for state in [&loaded, &bumped] {
        results
            .extend((0..leaves).map(|leaf| state.greatest(|half| &half.greatest_moments_nm, leaf)));
    }
    results
}

/// Rate of leaves that lie tight on one another and share one curve: a beam that steps at each leaf's tip.
///
/// Ca = Σ (x³outer - x³inner) / (3 E I),  k = (a + b)² / (b² Ca + a² Cb)
///
/// # Units
/// Newtons per metre.
/// # Valid range
/// Small slopes; an upper limit, since real leaves also bear on their tips.
/// # Errors
/// None.
/// # Source
/// Beam theory, compared with a finite element frame.
#[must_use]
pub fn tight_rate(pack: &Pack) -> SpringRate {
    let mut inputs: Vec<Box<dyn Traced>> = vec![
        Box::new(pack.modulus.clone()),
        Box::new(pack.main().front.clone()),
        Box::new(pack.main().rear.clone()),
    ];
    for leaf in pack.carrying() {
        let (front, rear) = pack.active_halves(leaf);
        inputs.push(Box::new(pack.second_moment(leaf)));
        inputs.push(Box::new(front));
        inputs.push(Box::new(rear));
    }
    let inputs: Vec<&dyn Traced> = inputs.iter().map(AsRef::as_ref).collect();
    SpringRate::tabled("leaves of one curve", &inputs, |values| {
        let (modulus, a, b) = (values[0], values[1], values[2]);
        let leaves = &values[3..];
        let front = stepped_compliance(modulus, leaves, 1);
        let rear = stepped_compliance(modulus, leaves, 2);
        (a + b) * (a + b) / (b * b * front + a * a * rear)
    })
    .of_kind(Kind::SpringRate)
    .cited(&source::BEAM_THEORY)
    .called("k_tight")
}

/// Drop of the eye for one newton: the moment's lever counts from the eye, the section steps at each tip.
fn stepped_compliance(modulus: f64, leaves: &[f64], half: usize) -> f64 {
    let eye = leaves[half];
    let mut tips: Vec<f64> = leaves.chunks(3).map(|leaf| leaf[half].min(eye)).collect();
    measure::sort_by(&mut tips, f64::total_cmp);
    let mut inner = 0.0;
    let mut compliance = 0.0;
    for tip in tips {
        if tip > inner {
            let sum: f64 = leaves
                .chunks(3)
                .filter(|leaf| leaf[half].min(eye) >= tip)
                .map(|leaf| leaf[0])
                .sum();
            compliance += ((eye - inner).powi(3) - (eye - tip).powi(3)) / (3.0 * modulus * sum);
            inner = tip;
        }
    }
    compliance
}
