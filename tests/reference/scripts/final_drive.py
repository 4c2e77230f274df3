"""Recomputes the `library` checks of final_drive.toml with NumPy's polyfit. Millimetres and newton metres throughout."""

import numpy as np
from recompute import compare


def slope(inputs):
    """The slope of the straight line of least squares."""
    return np.polyfit(inputs["positions"], inputs["backlashes"], 1)[0]


def next_shim(inputs):
    """Where the line through the heights of the marks crosses nothing."""
    rise, start = np.polyfit(inputs["shims"], inputs["heights"], 1)
    return -start / rise


def preload_pack(inputs):
    """Where the line through the turning torques reaches the wanted one."""
    rise, start = np.polyfit(inputs["packs"], inputs["torques"], 1)
    return (inputs["wanted"] - start) / rise


compare("final_drive", {"slope": slope, "next_shim": next_shim, "preload_pack": preload_pack})
