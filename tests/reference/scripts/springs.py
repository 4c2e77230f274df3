"""Recomputes the `library` checks of springs.toml with PyNiteFEA, NumPy and SciPy.

The leaf-by-leaf beam is built here in a finite element frame: every leaf is a chain of Euler-Bernoulli members rooted
in the seat, neighbours touch through stiff links at the tip of the shorter leaf where they push, and the eyes carry
their shares of the load. A leaf's loose curve is put in as the end moment that would bend a straight strip to it; that
moment is taken off again from the stress. Millimetres and newtons throughout.
"""

import re

import numpy as np
from Pynite import FEModel3D
from recompute import compare
from scipy.optimize import brentq

TO_MM = {"mm": 1.0, "in": 25.4, "m": 1000.0}
TO_N = {"N": 1.0, "kN": 1000.0, "lbf": 4.4482216152605}
TO_MPA = {"N/mm²": 1.0, "GPa": 1000.0}
STIFF = 1.0e8


def quantity(text, units):
    """The number of a text such as `600 mm`, in the unit whose factor is 1."""
    number, unit = re.fullmatch(r"\s*([-+0-9.eE]+)\s*(\S+)\s*", text).groups()
    return float(number) * units[unit]


def mm(text):
    return quantity(text, TO_MM)


def curvature(leaf):
    """Curvature of a loose leaf from its arch: the arc through the seat whose tips' chord lies `arch` above it."""
    arch = mm(leaf["arch"]) if "arch" in leaf else 0.0
    if arch == 0.0:
        return 0.0
    front, rear = mm(leaf["front"]), mm(leaf["rear"])

    def rise(k):
        xf, yf = np.sin(k * front) / k, (1 - np.cos(k * front)) / k
        xr, yr = np.sin(k * rear) / k, (1 - np.cos(k * rear)) / k
        return (yf * xr + yr * xf) / (xf + xr)

    first = 2 * arch / (front * rear)
    return brentq(lambda k: rise(k) - arch, 0.5 * first, 2.0 * first, xtol=1e-16)


def leaves_of(inputs):
    """Each leaf as width, thickness, second moment, active halves and loose curvature."""
    dead = mm(inputs["dead"]) if "dead" in inputs else 0.0
    rows = []
    for leaf in inputs["leaves"]:
        width, thickness = mm(leaf["width"]), mm(leaf["thickness"])
        row = {
            "thickness": thickness,
            "inertia": width * thickness**3 / 12,
            "front": mm(leaf["front"]) - dead / 2,
            "rear": mm(leaf["rear"]) - dead / 2,
            "curvature": curvature(leaf),
            "gap": mm(leaf["gap"]) if "gap" in leaf else None,
        }
        rows.extend([row] * leaf.get("count", 1))
    return rows, dead


def halves_on_seat(inputs, load):
    """The solved frame with the seat held still and the eyes loaded by the rule of the lever.

    Contacts that pull are opened and contacts that overlap are shut until neither is left. Also gives the members of
    each leaf, the leaves, the modulus, and the push of each contact.
    """
    leaves, dead = leaves_of(inputs)
    late = [i for i, leaf in enumerate(leaves) if leaf["gap"] is not None]
    off = {}
    if late:
        # The gap is measured in the assembled free spring: what lies between the leaves there is added to it.
        [helper] = late
        alone = {(side, i) for side in ("front", "rear") for i in range(len(leaves) - 1) if i + 1 != helper}
        free, _, links, *_ = settled(inputs, 0.0, leaves, dead, alone, {})
        for side in ("front", "rear"):
            above, below = links[side, helper - 1]
            apart = free.nodes[below].DY["Combo 1"] - free.nodes[above].DY["Combo 1"]
            off[side, helper - 1] = apart + leaves[helper]["gap"]
    every = {(side, i) for side in ("front", "rear") for i in range(len(leaves) - 1)}
    model, members, _, pushes = settled(inputs, load, leaves, dead, every, off)
    return model, members, leaves, quantity(inputs["modulus"], TO_MPA), pushes


def upper_leaf(leaves, lower, side):
    """The leaf that a leaf bears on: the one above; for a helper with a gap the last one that reaches over its tip."""
    if leaves[lower]["gap"] is not None:
        for upper in range(lower - 1, -1, -1):
            if leaves[upper][side] >= leaves[lower][side]:
                return upper
    return lower - 1


def settled(inputs, load, leaves, dead, allowed, off):
    """The frame once no contact pulls and none overlaps; contacts that are not allowed stay open."""
    shut = set(allowed)
    for _ in range(40):
        model, members, links = frame(inputs, load, leaves, dead, shut, off)
        overlap = {
            key: model.nodes[below].DY["Combo 1"] - model.nodes[above].DY["Combo 1"] - off.get(key, 0.0)
            for key, (above, below) in links.items()
        }
        wanted = {key for key in allowed if overlap[key] > 0}
        if wanted == shut:
            pushes = {key: STIFF * overlap[key] if key in shut else 0.0 for key in links}
            return model, members, links, pushes
        # Open first; shut again only what overlaps once nothing pulls.
        shut = wanted & shut if not shut <= wanted else wanted
    raise RuntimeError("the contacts do not settle")


def frame(inputs, load, leaves, dead, shut, off):
    """The frame with these contacts shut, solved; `off` are gaps that a link leaves open."""
    modulus = quantity(inputs["modulus"], TO_MPA)
    arms = {side: leaves[0][side] + dead / 2 for side in ("front", "rear")}
    span = arms["front"] + arms["rear"]
    model = FEModel3D()
    model.add_material("steel", modulus, modulus / 2.6, 0.3, 7.85e-9)
    members, links = [[] for _ in leaves], {}
    for i, leaf in enumerate(leaves):
        model.add_section(f"leaf {i}", 1e3, leaf["inertia"], leaf["inertia"], leaf["inertia"])
    for side, sign, other in (("front", -1, "rear"), ("rear", 1, "front")):
        uppers = [upper_leaf(leaves, i + 1, side) for i in range(len(leaves) - 1)]
        contacts = [min(leaves[u][side], leaves[i + 1][side]) for i, u in enumerate(uppers)]
        for i, leaf in enumerate(leaves):
            touched = {place for j, place in enumerate(contacts) if i in (uppers[j], j + 1)}
            stations = sorted({0.0, leaf[side]} | touched)
            names = [f"{side} {i} {place:.6f}" for place in stations]
            for name, place in zip(names, stations):
                model.add_node(name, sign * (dead / 2 + place), -100.0 * i, 0)
                model.def_support(name, False, False, True, True, True, False)
            model.def_support(names[0], True, True, True, True, True, True)
            for start, end in zip(names, names[1:]):
                model.add_member(f"{start} to {end}", start, end, "steel", f"leaf {i}")
                members[i].append(f"{start} to {end}")
            curl = sign * modulus * leaf["inertia"] * leaf["curvature"]
            model.add_node_load(names[-1], "MZ", curl)
            if i == 0:
                model.add_node_load(names[-1], "FY", -load * arms[other] / span)
        for i, place in enumerate(contacts):
            above, below = f"{side} {uppers[i]} {place:.6f}", f"{side} {i + 1} {place:.6f}"
            links[side, i] = above, below
            if (side, i) in shut:
                model.add_spring(f"contact {side} {i}", above, below, STIFF)
                gap = off.get((side, i), 0.0)
                model.add_node_load(above, "FY", -STIFF * gap)
                model.add_node_load(below, "FY", STIFF * gap)
    model.analyze(check_statics=False)
    return model, members, links


def seat_height(inputs, load):
    """How far the seat stands above where straight leaves would put it, from the line of the eyes."""
    model, _, leaves, *_ = halves_on_seat(inputs, load)
    dead = mm(inputs["dead"]) if "dead" in inputs else 0.0
    drop, arm = {}, {}
    for side in ("front", "rear"):
        eye = f"{side} 0 {leaves[0][side]:.6f}"
        drop[side] = -model.nodes[eye].DY["Combo 1"]
        arm[side] = leaves[0][side] + dead / 2
    span = arm["front"] + arm["rear"]
    return (drop["front"] * arm["rear"] + drop["rear"] * arm["front"]) / span


def leaf_stresses(inputs, load):
    """The greatest stress at the upper face of each leaf, in N/mm²."""
    model, members, leaves, modulus, _ = halves_on_seat(inputs, load)
    result = []
    for leaf, chain in zip(leaves, members):
        greatest = -np.inf
        formed = modulus * leaf["inertia"] * leaf["curvature"]
        for name in chain:
            for end in (0.0, model.members[name].L()):
                # Positive where the leaf is flattened, which puts its upper face in tension.
                bent = model.members[name].moment("Mz", end, "Combo 1")
                greatest = max(greatest, bent + formed)
        result.append(greatest * leaf["thickness"] / 2 / leaf["inertia"])
    return result


def beam_travel(inputs):
    load = quantity(inputs["load"], TO_N)
    return seat_height(inputs, load) - seat_height(inputs, 0.0)


def beam_rate(inputs):
    load = quantity(inputs["load"], TO_N)
    step = 20.0
    return 2 * step / (seat_height(inputs, load + step) - seat_height(inputs, load - step))


def beam_stress(inputs):
    return leaf_stresses(inputs, quantity(inputs["load"], TO_N))


def beam_nip(inputs):
    """The stress at the upper face of each leaf at the front edge of the seat, with no load on the spring.

    Of the two halves, the one that is stressed more, sign kept.
    """
    model, members, leaves, modulus, _ = halves_on_seat(inputs, 0.0)
    result = []
    for leaf, chain in zip(leaves, members):
        formed = modulus * leaf["inertia"] * leaf["curvature"]
        roots = [name for name in chain if " 0.000000 to " in name]
        both = [model.members[name].moment("Mz", 0.0, "Combo 1") + formed for name in roots]
        result.append(max(both, key=abs) * leaf["thickness"] / 2 / leaf["inertia"])
    return result


def bolt_pull(inputs):
    """The most that the tips push across any joint of the free spring, front and rear together."""
    *_, pushes = halves_on_seat(inputs, 0.0)
    joints = {i for _, i in pushes}
    return max(pushes["front", i] + pushes["rear", i] for i in joints)


def tight_rate(inputs):
    """Leaves that share one curve: a single beam whose section steps at each leaf's tip."""
    leaves, dead = leaves_of(inputs)
    modulus = quantity(inputs["modulus"], TO_MPA)
    model = FEModel3D()
    model.add_material("steel", modulus, modulus / 2.6, 0.3, 7.85e-9)
    model.add_section("seat", 1e5, 1e8, 1e8, 1e8)
    model.add_node("seat", 0, 0, 0)
    eyes = {}
    for side, sign in (("front", -1), ("rear", 1)):
        stations = sorted({0.0} | {min(leaf[side], leaves[0][side]) for leaf in leaves})
        for place in stations:
            model.add_node(f"{side}@{place:.6f}", sign * (dead / 2 + place), 0, 0)
        if dead > 0:
            model.add_member(f"root {side}", "seat", f"{side}@{0:.6f}", "steel", "seat")
            start = f"{side}@{0:.6f}"
        else:
            start = "seat"
        for n, (near, far) in enumerate(zip(stations, stations[1:])):
            inertia = sum(leaf["inertia"] for leaf in leaves if leaf[side] >= far)
            model.add_section(f"{side}{n}", 1e4, 1.0, inertia, 1.0)
            end = f"{side}@{far:.6f}"
            model.add_member(f"{side}{n}", start, end, "steel", f"{side}{n}")
            start = end
        eyes[side] = start
    if dead == 0:
        del model.nodes[f"front@{0:.6f}"], model.nodes[f"rear@{0:.6f}"]
    for name in model.nodes:
        model.def_support(name, False, False, True, True, True, False)
    model.def_support(eyes["front"], True, True, True, True, True, False)
    model.def_support(eyes["rear"], False, True, True, True, True, False)
    model.add_node_load("seat", "FY", 1000.0)
    model.analyze(check_statics=False)
    return 1000.0 / model.nodes["seat"].DY["Combo 1"]


def press_lines(inputs):
    """One slope, two branches, by NumPy's least squares: slope, its standard error, half the band."""
    travel = np.array(inputs["travel_mm"], dtype=float)
    load = np.array(inputs["load_N"], dtype=float)
    going = np.array([1.0 if word == "up" else -1.0 for word in inputs["going"]])
    # "up" is the load going up.
    design = np.column_stack([travel, np.ones_like(travel), going])
    answer, _, rank, _ = np.linalg.lstsq(design, load, rcond=None)
    assert rank == 3
    left = load - design @ answer
    variance = left @ left / (len(load) - 3)
    error = np.sqrt(variance * np.linalg.inv(design.T @ design)[0, 0])
    return answer[0], error, answer[2]


def press_rate(inputs):
    return press_lines(inputs)[:2]


def press_friction(inputs):
    return press_lines(inputs)[2]


def chord_of_arc(inputs):
    """Distance between the eyes of a main leaf with a flat seat, by root search and numerical integration."""
    front, rear = mm(inputs["front"]), mm(inputs["rear"])
    dead, camber = mm(inputs["dead"]), mm(inputs["camber"])

    def tip(k, length):
        s = np.linspace(0.0, length, 4001)
        x = np.trapezoid(np.cos(k * s), s)
        y = np.trapezoid(np.sin(k * s), s)
        return dead / 2 + x, y

    def rise(k):
        (xf, yf), (xr, yr) = tip(k, front - dead / 2), tip(k, rear - dead / 2)
        return (yf * xr + yr * xf) / (xf + xr)

    k = brentq(lambda k: rise(k) - camber, -1 / front, 1 / front, xtol=1e-16)
    (xf, yf), (xr, yr) = tip(k, front - dead / 2), tip(k, rear - dead / 2)
    return np.hypot(xf + xr, yf - yr)


if __name__ == "__main__":
    compare(
        "springs",
        {
            "beam_travel": beam_travel,
            "beam_rate": beam_rate,
            "beam_stress": beam_stress,
            "beam_nip": beam_nip,
            "tight_rate": tight_rate,
            "press_rate": press_rate,
            "press_friction": press_friction,
            "eye_to_eye": chord_of_arc,
            "loose_curve": lambda inputs: 1000 * curvature(inputs),
            "bolt_pull": bolt_pull,
        },
    )
