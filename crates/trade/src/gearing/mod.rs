//! Tyres, gear trains, road speed, tractive effort.
