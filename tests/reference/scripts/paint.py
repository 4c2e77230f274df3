"""Recomputes paint's `library` checks: areas with shapely, tins and films with SciPy, mixes with NumPy, dew points with CoolProp."""

import math
import re

import jobs.paint
import numpy as np
from CoolProp.HumidAirProp import HAPropsSI
from recompute import compare
from scipy.integrate import solve_ivp
from scipy.optimize import Bounds, LinearConstraint, brentq, milp
from shapely.geometry import LineString, Point, Polygon, box

US_GALLON = 231 * 0.0254**3
# SI by the unit's symbol; temperatures are read apart.
UNITS = {
    "mm": 1e-3, "m": 1.0, "µm": 1e-6, "m²": 1.0, "L": 1e-3, "mL": 1e-6, "%": 1e-2, "kg/L": 1e3, "bar": 1e5,
    "L/min": 1e-3 / 60, "US gal": US_GALLON, "US qt": US_GALLON / 4,
}


def si(text):
    number, unit = re.fullmatch(r"([-0-9.]+)\s*(.*)", text).groups()
    return float(number) * UNITS[unit]


def celsius(text):
    number, unit = re.fullmatch(r"([-0-9.]+)\s*(.*)", text).groups()
    return float(number) if unit == "°C" else (float(number) - 32) / 1.8


def polygon(i):
    scale = UNITS[i["unit"]]
    return Polygon([(x * scale, y * scale) for x, y in zip(i["xs"], i["ys"])]).area


def panel(i):
    length, height = si(i["length"]), si(i["height"])
    wide, high, hole = si(i["window_length"]), si(i["window_height"]), si(i["hole"])
    sheet = box(0, 0, length, height)
    sheet = sheet.difference(box(length / 2, height / 2, length / 2 + wide, height / 2 + high))
    for place in range(i["holes"]):
        centre = Point(2 * hole * (place + 1), 2 * hole)
        sheet = sheet.difference(centre.buffer(hole / 2, quad_segs=1024))
    return sheet.area * i["faces"] * (1 + si(i["edges"])) * i["count"]


def disc(i):
    return Point(0, 0).buffer(si(i["diameter"]) / 2, quad_segs=16384).area


def curved(i):
    """The arc through both ends of the chord and the top of the rise, walked in small steps."""
    chord, rise = si(i["chord"]), si(i["rise"])
    radius = (chord**2 / 4 + rise**2) / (2 * rise)
    centre = rise - radius
    start = math.atan2(-centre, chord / 2)
    end = math.pi - start
    angles = np.linspace(start, end, 20001)
    arc = LineString(np.column_stack([radius * np.cos(angles), centre + radius * np.sin(angles)]))
    return arc.length * si(i["length"])


def scale(i):
    """Volumes as the unknowns of linear equations: the recipe's proportions, and the sum."""
    parts, rho = i["parts"], [si(d) for d in i["densities"]]
    weigh = rho if i["by"] == "weight" else [1.0] * len(parts)
    count = len(parts)
    rows, right = [np.ones(count)], [si(i["volume"])]
    for k in range(1, count):
        row = np.zeros(count)
        row[k] = weigh[k]
        share = k == count - 1 and i["thinner_of"] != "parts"
        if share and i["thinner_of"] == "both":
            row[:k] = [-parts[k] * w for w in weigh[:k]]
        else:
            row[0] = -weigh[0] * (parts[k] if share else parts[k] / parts[0])
        rows.append(row)
        right.append(0.0)
    volumes = np.linalg.solve(np.array(rows), np.array(right))
    return np.cumsum(volumes * rho)


def cheapest_tins(i):
    sizes = np.array([si(size) for size in i["sizes"]])
    prices = np.array([float(price) for price in i["prices"]])
    needed = LinearConstraint(sizes / si(i["needed"]), lb=1.0)
    found = milp(prices, constraints=needed, integrality=np.ones(len(sizes)), bounds=Bounds(0, 1000))
    assert found.success, found.message
    return found.fun


def film_from_stock(i):
    def litres_missing(film):
        sprayed = i["coats"] * si(i["area"]) * film / (si(i["solids"]) * si(i["transfer"]))
        return (sprayed + si(i["left"])) * (1 + si(i["reserve"])) - si(i["stock"])

    return brentq(litres_missing, 1e-9, 1e-2, xtol=1e-15) * 1e6


def dew_point(i):
    air = celsius(i["air"]) + 273.15
    return HAPropsSI("D", "T", air, "P", 101325, "R", si(i["humidity"])) - 273.15


def air_time(i):
    rate = 101325 * (si(i["delivered"]) - si(i["gun"])) / si(i["receiver"])

    def low(_, p):
        return p[0] - si(i["low"])

    low.terminal = True
    run = solve_ivp(lambda _, p: [rate], (0, 1e5), [si(i["high"])], events=low, rtol=1e-10, atol=1e-6)
    return run.t_events[0][0]


def whole_job(i):
    found = jobs.paint.job(i["entries"])
    return [found[name] for name in i["results"]]


if __name__ == "__main__":
    compare(
        "paint",
        {
            "polygon": polygon,
            "panel": panel,
            "disc": disc,
            "curved": curved,
            "scale": scale,
            "cheapest_tins": cheapest_tins,
            "film_from_stock": film_from_stock,
            "dew_point": dew_point,
            "air_time": air_time,
            "job": whole_job,
        },
    )
