//! Money: lines, budget, shares, hire or buy.
