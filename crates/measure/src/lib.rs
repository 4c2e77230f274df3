//! Quantities that remember how they came about: text typed, traced value, text shown.
