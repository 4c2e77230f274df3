//! Areas, litres, mixes, tins.
