"""Recomputes the `library` checks of gearing with SciPy, NumPy and Python's own fractions.

Nothing here follows the program's way of working: equilibria are found from moments and forces, the shaft is a chain
of beam elements, times are integrated by an adaptive rule, and tooth pairs are listed outright.
"""

import math
from fractions import Fraction

import numpy as np
from recompute import compare
from scipy.integrate import quad
from scipy.interpolate import CubicHermiteSpline, PchipInterpolator
from scipy.linalg import eigh
from scipy.optimize import brentq, minimize_scalar

G = 9.80665

UNITS = {
    "mm": 1e-3,
    "m": 1.0,
    "kg": 1.0,
    "kW": 1e3,
    "N": 1.0,
    "N·m": 1.0,
    "kg·m²": 1.0,
    "rpm": 1 / 60,
    "km/h": 1 / 3.6,
    "m/s": 1.0,
    "m²": 1.0,
    "kg/m³": 1.0,
    "m/s²": 1.0,
    "s": 1.0,
}


def si(text):
    """`100 mm` in SI units; a bare number as it stands."""
    if isinstance(text, (int, float)):
        return float(text)
    number, unit = text.split()
    return float(number) * UNITS[unit]


def curve(inputs):
    """Full-load torque in N·m over engine speed in turns per second: SciPy's monotone cubic through the points."""
    speeds = np.array(inputs["engine_speeds"], dtype=float) / 60
    return PchipInterpolator(speeds, inputs["torques"]), speeds[0], speeds[-1]


def torque(inputs):
    full_load, _, _ = curve(inputs)
    return [float(full_load(n / 60)) for n in inputs["at"]]


def torque_from_peaks(inputs):
    """The cubic between the peaks of torque (slope nil) and of power (slope -T/n), by SciPy's Hermite spline."""
    at_torque, at_power = si(inputs["peak_torque_at"]), si(inputs["peak_power_at"])
    t_max = si(inputs["peak_torque"])
    t_power = si(inputs["peak_power"]) / (2 * math.pi * at_power)
    spline = CubicHermiteSpline([at_torque, at_power], [t_max, t_power], [0.0, -t_power / at_power])
    return [float(spline(n / 60)) for n in inputs["at"]]


class Lorry:
    """A vehicle on a straight road: what the engine gives and what the road takes."""

    def __init__(self, inputs):
        self.torque, self.n_low, self.n_high = curve(inputs)
        self.gears = [float(i) for i in inputs["gears"]]
        self.efficiencies = [float(i) for i in inputs["efficiencies"]]
        self.axle = float(Fraction(str(inputs["final_drive"])))
        self.circumference = si(inputs["circumference"])
        self.mass = si(inputs["mass"])
        self.rolling = float(inputs["rolling"])
        self.drag = 0.5 * si(inputs["air_density"]) * float(inputs["drag_coefficient"]) * si(inputs["frontal_area"])

    def overall(self, gear):
        return self.gears[gear] * self.axle

    def speed(self, gear, n):
        return n * self.circumference / self.overall(gear)

    def effort(self, gear, v):
        n = v * self.overall(gear) / self.circumference
        radius = self.circumference / (2 * math.pi)
        return float(self.torque(n)) * self.overall(gear) * self.efficiencies[gear] / radius

    def resistance(self, v):
        return self.rolling * self.mass * G + self.drag * v * v

    def surplus(self, gear, v):
        return self.effort(gear, v) - self.resistance(v)


def top_speed(inputs):
    """In each gear, km/h: where effort meets road load, or the engine's highest speed."""
    lorry = Lorry(inputs)
    found = []
    for gear in range(len(lorry.gears)):
        low, high = lorry.speed(gear, lorry.n_low), lorry.speed(gear, lorry.n_high)
        if lorry.surplus(gear, high) >= 0:
            found.append(high * 3.6)
            continue
        grid = np.linspace(low, high, 4000)
        place = max(k for k in range(len(grid)) if lorry.surplus(gear, grid[k]) >= 0)
        found.append(brentq(lambda v: lorry.surplus(gear, v), grid[place], grid[place + 1], xtol=1e-12) * 3.6)
    return found


def slope_held(force, mass, rolling):
    """The slope, in per cent, on which weight and rolling resistance take up the force."""
    def left(angle):
        return force - mass * G * (math.sin(angle) + rolling * math.cos(angle))
    return 100 * math.tan(brentq(left, -0.5, math.pi / 2 - 1e-9, xtol=1e-14))


def hill_in_gear(inputs):
    """The steepest hill in each gear, per cent, at the speed where the most effort is left."""
    lorry = Lorry(inputs)
    found = []
    for gear in range(len(lorry.gears)):
        low, high = lorry.speed(gear, lorry.n_low), lorry.speed(gear, lorry.n_high)

        def pull(v, gear=gear):
            return lorry.effort(gear, v) - lorry.drag * v * v

        best = minimize_scalar(lambda v: -pull(v), bounds=(low, high), method="bounded", options={"xatol": 1e-10})
        force = max(-best.fun, pull(low), pull(high))
        found.append(slope_held(force, lorry.mass, lorry.rolling))
    return found


def grip_hill(inputs):
    """The slope, per cent, at which the driven wheels slip, from forces and moments about the tyre contacts."""
    grip, rolling = float(inputs["grip"]), float(inputs["rolling"])
    wheelbase, height = si(inputs["wheelbase"]), si(inputs["height"])
    from_front = float(inputs["rear_share"]) * wheelbase
    start = si(inputs.get("start", 0)) / G

    def spare(angle):
        sine, cosine = math.sin(angle), math.cos(angle)
        rear = (from_front * cosine + height * (sine + start)) / wheelbase
        front = cosine - rear
        load = {"rear": rear, "front": front, "all": cosine}[inputs["driven"]]
        return grip * load - (sine + rolling * cosine + start)

    return 100 * math.tan(brentq(spare, -0.3, 1.5, xtol=1e-14))


def restart_hill(inputs):
    """The slope, per cent, for a start at a given acceleration with a given torque at the clutch."""
    force = (
        si(inputs["clutch_torque"]) * float(inputs["overall"]) * float(inputs["efficiency"])
        / (si(inputs["circumference"]) / (2 * math.pi))
    )
    mass = si(inputs["mass"])
    return slope_held(force - 1.04 * mass * si(inputs["start"]), mass, float(inputs["rolling"]))


def time_to_speed(inputs):
    """Seconds from rest: in the gear that accelerates best at each speed, with the rotating masses, plus the changes."""
    lorry = Lorry(inputs)
    radius = lorry.circumference / (2 * math.pi)
    inertia = si(inputs["engine_inertia"])

    def acceleration(gear, v):
        n = v * lorry.overall(gear) / lorry.circumference
        if n > lorry.n_high:
            return -math.inf
        held = max(n, lorry.n_low)
        if n < lorry.n_low and gear > 0:
            return -math.inf
        effort = float(lorry.torque(held)) * lorry.overall(gear) * lorry.efficiencies[gear] / radius
        spun = inertia * lorry.overall(gear) ** 2 / (lorry.mass * radius**2)
        return (effort - lorry.resistance(v)) / (lorry.mass * (1.04 + spun))

    def best(v):
        return max(acceleration(gear, v) for gear in range(len(lorry.gears)))

    target = si(inputs["to"])
    grid = np.linspace(0, target, 20001)
    chosen = [max(range(len(lorry.gears)), key=lambda gear, v=v: acceleration(gear, v)) for v in grid]
    breaks = [grid[k] for k in range(1, len(grid)) if chosen[k] != chosen[k - 1]]
    edges = [0.0, lorry.speed(0, lorry.n_low), *breaks, target]
    edges = sorted(edge for edge in edges if edge <= target)
    driven = sum(quad(lambda v: 1 / best(v), a, b, epsrel=1e-9, limit=200)[0] for a, b in zip(edges, edges[1:]))
    return driven + len(breaks) * si(inputs["change"])


def shaft_critical_speed(inputs):
    """First bending frequency of a tube on pinned ends, turns per minute, from forty cubic beam elements."""
    outside, bore, length = si(inputs["outside"]), si(inputs["bore"]), si(inputs["length"])
    youngs, density = 206e9, 7850.0
    second_moment = math.pi / 64 * (outside**4 - bore**4)
    mass = density * math.pi / 4 * (outside**2 - bore**2)
    count = 40
    step = length / count
    stiff = youngs * second_moment / step**3 * np.array([
        [12, 6 * step, -12, 6 * step],
        [6 * step, 4 * step**2, -6 * step, 2 * step**2],
        [-12, -6 * step, 12, -6 * step],
        [6 * step, 2 * step**2, -6 * step, 4 * step**2],
    ])
    heavy = mass * step / 420 * np.array([
        [156, 22 * step, 54, -13 * step],
        [22 * step, 4 * step**2, 13 * step, -3 * step**2],
        [54, 13 * step, 156, -22 * step],
        [-13 * step, -3 * step**2, -22 * step, 4 * step**2],
    ])
    size = 2 * (count + 1)
    stiffness, inertia = np.zeros((size, size)), np.zeros((size, size))
    for place in range(count):
        part = slice(2 * place, 2 * place + 4)
        stiffness[part, part] += stiff
        inertia[part, part] += heavy
    free = [place for place in range(size) if place not in (0, size - 2)]
    lowest = eigh(stiffness[np.ix_(free, free)], inertia[np.ix_(free, free)], eigvals_only=True)[0]
    return 60 * math.sqrt(lowest) / (2 * math.pi)


def tooth_pairs(inputs):
    """The pairs without a common divisor whose ratio lies nearest to the wanted one, nearest first."""
    wanted = Fraction(str(inputs["wanted"]))
    pairs = [
        (abs(Fraction(crown, pinion) - wanted), pinion, crown)
        for pinion in range(inputs["least_pinion"], inputs["most_pinion"] + 1)
        for crown in range(inputs["least_crown"], inputs["most_crown"] + 1)
        if math.gcd(crown, pinion) == 1
    ]
    pairs.sort()
    return [teeth for _, pinion, crown in pairs[: inputs["count"]] for teeth in (crown, pinion)]


compare(
    "gearing",
    {
        "torque": torque,
        "torque_from_peaks": torque_from_peaks,
        "top_speed": top_speed,
        "hill_in_gear": hill_in_gear,
        "grip_hill": grip_hill,
        "restart_hill": restart_hill,
        "time_to_speed": time_to_speed,
        "shaft_critical_speed": shaft_critical_speed,
        "tooth_pairs": tooth_pairs,
    },
)
