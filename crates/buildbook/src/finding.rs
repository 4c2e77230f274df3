//! What a sheet finds: results, what they still need, and remarks.

use std::rc::Rc;

use measure::{Figure, Kind, MeasureError, MoneyError, Quantity};
use trade::TradeError;
use trade::costs::Reckoned;

use crate::names::Names;
use crate::{BookError, Given, Key, Purchase, Read};

/// A result, or why there is none.
pub type Finding = Result<Figure, Lack>;

/// An amount of money with its working, or why there is none. Money is exact: it carries no ±.
pub type MoneyFinding = Result<Reckoned, Lack>;

/// Why there is no result. No larger than a pointer, because nearly every step of a sheet may have to hand one on.
#[derive(Debug, PartialEq)]
pub struct Lack(Rc<Why>);

/// What stands in the way of a result.
#[derive(Debug, PartialEq)]
#[non_exhaustive]
pub enum Why {
    /// These entries are still to be made.
    Needs(Vec<Key>),
    /// This entry stands, but cannot be read or is beyond its limits.
    Entry(Key),
    /// The entries are there, and the calculation says why it has no answer for them.
    Refused(TradeError),
    /// The calculation has no number for an answer.
    NoAnswer(MeasureError),
}

impl Clone for Lack {
    // Handed on at thousands of places: one call each is smaller than the counting there.
    #[inline(never)]
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl Lack {
    /// These entries are still to be made.
    #[must_use]
    pub fn needs(keys: impl Into<Vec<Key>>) -> Self {
        Self::of(Why::Needs(keys.into()))
    }

    /// One entry is still to be made.
    #[must_use]
    #[inline(never)]
    pub fn needs_one(key: &Key) -> Self {
        Self::of(Why::Needs(vec![key.clone()]))
    }

    /// This entry stands, but cannot be read or is beyond its limits.
    #[must_use]
    #[inline(never)]
    pub fn entry(key: Key) -> Self {
        Self::of(Why::Entry(key))
    }

    /// The calculation says why it has no answer.
    #[must_use]
    #[inline(never)]
    pub fn refused(error: TradeError) -> Self {
        Self::of(Why::Refused(error))
    }

    /// The calculation has no number for an answer.
    #[must_use]
    #[inline(never)]
    pub fn no_answer(error: MeasureError) -> Self {
        Self::of(Why::NoAnswer(error))
    }

    #[inline(never)]
    fn of(why: Why) -> Self {
        Self(Rc::new(why))
    }

    /// What stands in the way.
    #[must_use]
    pub fn why(&self) -> &Why {
        &self.0
    }

    /// The entries that are still to be made, where it is only that.
    #[must_use]
    pub fn needed(&self) -> Option<&[Key]> {
        match &*self.0 {
            Why::Needs(keys) => Some(keys),
            _ => None,
        }
    }

    /// Whether it is only that entries are still to be made.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.needed().is_some()
    }

    /// Whether an entry stands that cannot be used.
    #[must_use]
    pub fn is_entry(&self) -> bool {
        matches!(*self.0, Why::Entry(_))
    }

    /// What the calculation says, where it refuses the entries.
    #[must_use]
    pub fn refusal(&self) -> Option<&TradeError> {
        match &*self.0 {
            Why::Refused(error) => Some(error),
            _ => None,
        }
    }

    /// Two reasons as one: a bad entry or a refusal stands before what is missing, and what is missing is put together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        match (&*self.0, &*other.0) {
            (Why::Needs(these), Why::Needs(those)) => {
                let new = those.iter().filter(|key| !these.contains(key));
                Self::needs(these.iter().chain(new).cloned().collect::<Vec<_>>())
            }
            (Why::Needs(_), _) => other,
            _ => self,
        }
    }

    /// All reasons there are as one.
    #[inline(never)]
    fn together(lacks: &mut [Option<Self>]) -> Self {
        let there = lacks.iter_mut().filter_map(Option::take);
        there.reduce(Self::and).unwrap_or_else(|| Self::needs([]))
    }
}

impl From<TradeError> for Lack {
    fn from(error: TradeError) -> Self {
        Self::refused(error)
    }
}

impl From<MoneyError> for Lack {
    #[inline(never)]
    fn from(error: MoneyError) -> Self {
        Self::refused(error.into())
    }
}

impl From<MeasureError> for Lack {
    fn from(error: MeasureError) -> Self {
        Self::no_answer(error)
    }
}

/// Several results at once, or everything that they lack together.
///
/// ```
/// use buildbook::{All, Key, Lack};
/// let length: Result<f64, Lack> = Err(Lack::needs([Key::from("vehicle/bed_length")]));
/// let width: Result<f64, Lack> = Err(Lack::needs([Key::from("vehicle/bed_width")]));
/// let lack = (length, width).all().unwrap_err();
/// assert_eq!(lack, Lack::needs(["vehicle/bed_length".into(), "vehicle/bed_width".into()]));
/// ```
pub trait All {
    /// The results.
    type Values;
    /// All of them, or what they lack together.
    ///
    /// # Errors
    /// A bad entry or refusal before others; else every missing entry.
    fn all(self) -> Result<Self::Values, Lack>;
}

macro_rules! all_of {
    ($($value:ident: $Value:ident),+) => {
        impl<$($Value),+> All for ($(Result<$Value, Lack>,)+) {
            type Values = ($($Value,)+);
            fn all(self) -> Result<Self::Values, Lack> {
                let ($($value,)+) = self;
                match ($($value,)+) {
                    ($(Ok($value),)+) => Ok(($($value,)+)),
                    ($($value,)+) => Err(Lack::together(&mut [$($value.err()),+])),
                }
            }
        }
    };
}
all_of!(a: A);
all_of!(a: A, b: B);
all_of!(a: A, b: B, c: C);
all_of!(a: A, b: B, c: C, d: D);
all_of!(a: A, b: B, c: C, d: D, e: E);
all_of!(a: A, b: B, c: C, d: D, e: E, f: F);
all_of!(a: A, b: B, c: C, d: D, e: E, f: F, g: G);
all_of!(a: A, b: B, c: C, d: D, e: E, f: F, g: G, h: H);

/// How much a remark matters (the ranks of ISO 3864 and ANSI Z535), the gravest last.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Rank {
    /// Good to know.
    Remark,
    /// Work or money may be lost.
    Caution,
    /// People can be badly hurt.
    Warning,
    /// People will be badly hurt or killed.
    Danger,
}

/// Something to know beside a result. The words for it stand with the pages.
#[derive(Debug, Clone, PartialEq)]
pub struct Remark {
    /// How much it matters.
    pub rank: Rank,
    /// What it says, by name: `axle_over_limit`.
    pub fact: &'static str,
    /// The entry it is about.
    pub key: Option<Key>,
    /// The numbers it speaks of.
    pub figures: Vec<Figure>,
    /// The names it speaks of, as the user typed them.
    pub names: Vec<Rc<str>>,
    /// Whether it stands there always, whatever was entered: the cautions of the trade.
    pub standing: bool,
}

impl Remark {
    /// A remark of this rank and fact.
    #[must_use]
    pub fn new(rank: Rank, fact: &'static str) -> Self {
        Self {
            rank,
            fact,
            key: None,
            figures: Vec::new(),
            names: Vec::new(),
            standing: false,
        }
    }

    /// A caution that stands there whatever was entered; it does not make the sheet's state a warning.
    #[must_use]
    pub fn standing(rank: Rank, fact: &'static str) -> Self {
        Self {
            standing: true,
            ..Self::new(rank, fact)
        }
    }

    /// The same remark, at an entry.
    #[must_use]
    pub fn at(mut self, key: impl Into<Key>) -> Self {
        self.key = Some(key.into());
        self
    }

    /// The same remark, with a number it speaks of.
    #[must_use]
    pub fn with(mut self, figure: Figure) -> Self {
        self.figures.push(figure);
        self
    }

    /// The same remark, with a name it speaks of.
    #[must_use]
    pub fn naming(mut self, name: impl Into<Rc<str>>) -> Self {
        self.names.push(name.into());
        self
    }
}

/// How a sheet stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// Nothing was entered.
    Empty,
    /// The main result needs this many more entries.
    Needs(usize),
    /// The main result is there.
    Ready,
    /// An entry cannot be read, or a remark warns.
    Warning,
}

/// What every sheet's findings have in common: the results by name, what could not be read, and the remarks.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Found {
    names: Names,
    results: Vec<Finding>,
    amount_names: Names,
    amounts: Vec<MoneyFinding>,
    /// What has to be bought; costs makes lines of them.
    pub purchases: Vec<Purchase>,
    /// The names of the sheet's main results, the first one first.
    pub headlines: Vec<Rc<str>>,
    /// Remarks, in the order they were made.
    pub remarks: Vec<Remark>,
    /// Entries that stand but cannot be used, with the reason.
    pub errors: Vec<(Key, BookError)>,
    /// Whether any entry was made.
    pub begun: bool,
    /// What is assumed of blank fields because of other entries, as it would be typed; it goes before the field's own default.
    assumed: Vec<(Key, Rc<str>)>,
}

impl Found {
    /// Findings to be filled in, with what reading the sheet has shown.
    #[must_use]
    pub fn of<S>(read: &Read<S>) -> Self {
        Self {
            errors: read.errors.clone(),
            begun: read.begun,
            ..Self::default()
        }
    }

    /// Puts a result in under its name: `gearing/speed_per_1000/3`.
    pub fn put(&mut self, id: impl Into<Rc<str>>, finding: Finding) {
        set(&mut self.results, self.names.placed(id.into()), finding);
    }

    /// Puts a traced quantity in, shown as a kind. One that is no finite number is kept as having no answer.
    pub fn show<D: measure::Dimension>(
        &mut self,
        id: impl Into<Rc<str>>,
        kind: Kind,
        quantity: &Result<Quantity<D>, Lack>,
    ) {
        self.put_finite(id.into(), quantity.as_ref().map(|it| it.figure(kind)));
    }

    #[inline(never)]
    fn put_finite(&mut self, id: Rc<str>, figure: Result<Figure, &Lack>) {
        let finding = match figure {
            Ok(figure) if figure.value().is_finite() => Ok(figure),
            Ok(_) => Err(Lack::no_answer(MeasureError::NotFinite)),
            Err(lack) => Err(lack.clone()),
        };
        self.put(id, finding);
    }

    /// Puts a main result in: it is shown on the front page and goes along in a link.
    pub fn headline<D: measure::Dimension>(
        &mut self,
        id: impl Into<Rc<str>>,
        kind: Kind,
        quantity: &Result<Quantity<D>, Lack>,
    ) {
        let id = id.into();
        self.headlines.push(Rc::clone(&id));
        self.show(id, kind, quantity);
    }

    /// Puts an amount of money in under its name: `costs/left`.
    pub fn put_money(&mut self, id: impl Into<Rc<str>>, finding: MoneyFinding) {
        let place = self.amount_names.placed(id.into());
        set(&mut self.amounts, place, finding);
    }

    /// Puts a main amount in: it is shown on the front page and goes along in a link.
    pub fn headline_money(&mut self, id: impl Into<Rc<str>>, finding: MoneyFinding) {
        let id = id.into();
        self.headlines.push(Rc::clone(&id));
        self.put_money(id, finding);
    }

    /// An amount of money by its name.
    #[must_use]
    pub fn money(&self, id: &str) -> Option<&MoneyFinding> {
        self.amounts.get(self.amount_names.place(id)?)
    }

    /// All amounts of money with their names, in the order they were put in.
    pub fn amounts(&self) -> impl Iterator<Item = (&Rc<str>, &MoneyFinding)> {
        self.amount_names.iter().zip(&self.amounts)
    }

    /// Fills a blank field with a default that follows from other entries, and remembers it for the page.
    pub fn assume<D: measure::Dimension>(
        &mut self,
        given: &Given<Quantity<D>>,
        text: &'static str,
    ) -> Given<Quantity<D>> {
        let filled = given.or_assumed(text);
        if given.is_blank() && filled.is_assumed() {
            self.stands_in(given.key(), text);
        }
        filled
    }

    /// Remembers for the page what stands in for a blank field because of other entries, as it would be typed.
    pub fn stands_in(&mut self, key: &Key, text: impl Into<Rc<str>>) {
        self.assumed.retain(|(known, _)| known != key);
        self.assumed.push((key.clone(), text.into()));
    }

    /// What is assumed of a blank field because of other entries, as it would be typed.
    #[must_use]
    pub fn assumption(&self, key: &Key) -> Option<&str> {
        let known = self.assumed.iter().find(|(known, _)| known == key);
        known.map(|(_, text)| &**text)
    }

    /// A result by its name.
    #[must_use]
    pub fn result(&self, id: &str) -> Option<&Finding> {
        self.results.get(self.names.place(id)?)
    }

    /// A result by its name, when there is one.
    #[must_use]
    pub fn figure(&self, id: &str) -> Option<&Figure> {
        self.result(id)?.as_ref().ok()
    }

    /// What the calculation of a result says, where it refuses the entries.
    #[must_use]
    pub fn refusal(&self, id: &str) -> Option<&TradeError> {
        self.result(id)?.as_ref().err()?.refusal()
    }

    /// All results with their names, in the order they were put in.
    pub fn results(&self) -> impl Iterator<Item = (&Rc<str>, &Finding)> {
        self.names.iter().zip(&self.results)
    }

    /// Adds a remark.
    pub fn remark(&mut self, remark: Remark) {
        self.remarks.push(remark);
    }

    /// How the sheet stands: its first headline decides what it still needs.
    #[must_use]
    pub fn state(&self) -> State {
        if !self.begun {
            return State::Empty;
        }
        let warned = self
            .remarks
            .iter()
            .any(|remark| remark.rank >= Rank::Warning && !remark.standing);
        if warned || !self.errors.is_empty() {
            return State::Warning;
        }
        let lack = self.headlines.first().and_then(|id| {
            let amount = self.money(id).and_then(|amount| amount.as_ref().err());
            amount.or_else(|| self.result(id)?.as_ref().err())
        });
        match lack.map(Lack::needed) {
            Some(Some(keys)) => State::Needs(keys.len()),
            Some(None) => State::Warning,
            None => State::Ready,
        }
    }
}

/// Puts a finding where its name stands: in place of the one that was there, or behind all others.
fn set<T>(findings: &mut Vec<T>, place: usize, finding: T) {
    match findings.get_mut(place) {
        Some(old) => *old = finding,
        None => findings.push(finding),
    }
}

/// The findings of any sheet.
pub trait SheetFindings {
    /// What they have in common with those of the other sheets.
    fn found(&self) -> &Found;
}
