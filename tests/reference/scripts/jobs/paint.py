"""A whole paint job, reckoned once more from its entries: areas with shapely, tins with SciPy, all else by the data sheets' rules.

Every figure is entered in the unit that a bare number has: mm, µm, L, mL, kg/L, g/L, %, min, mL/min, °C.
"""

import math

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from shapely.geometry import Polygon


class Entries(dict):
    """The entries of a book, by their keys."""

    def number(self, key, otherwise=0.0):
        return float(self[key].split()[0]) if key in self else otherwise

    def rows(self, where):
        """The rows of a list, in order."""
        ids = {key[len(where) + 1 :].split("/")[0] for key in self if key.startswith(where + "/")}
        return [f"{where}/{number}" for number in sorted(map(int, ids))]


def shape_area(e, at):
    """In square metres."""
    size = lambda name: e.number(f"{at}/{name}")
    match e.get(f"{at}/shape", "rectangle"):
        case "rectangle":
            return size("length") * size("height") / 1e6
        case "trapezium":
            corners = [(0, 0), (size("length"), 0), (size("top"), size("height")), (0, size("height"))]
            return Polygon(corners).area / 1e6
        case "corners":
            corners = [(e.number(f"{row}/x"), e.number(f"{row}/y")) for row in e.rows(f"{at}/corners")]
            return Polygon(corners).area / 1e6
        case "disc":
            return math.pi * (size("diameter") / 2) ** 2 / 1e6
        case "tube":
            return math.pi * size("diameter") * size("length") / 1e6
        case "known":
            return size("area")
        case "curved":
            chord, rise = size("chord"), size("rise")
            radius = (chord**2 / 4 + rise**2) / (2 * rise)
            half = math.asin(chord / 2 / radius)
            return radius * (2 * half if rise <= radius else 2 * math.pi - 2 * half) * size("length") / 1e6


def panel_area(e, at):
    holes = sum(shape_area(e, hole) * e.number(f"{hole}/count", 1) for hole in e.rows(f"{at}/openings"))
    faces = 2 if e.get(f"{at}/faces") == "both" else 1
    return (shape_area(e, at) - holes) * faces * (1 + e.number(f"{at}/edges") / 100) * e.number(f"{at}/count", 1)


def shares(e, at):
    """Of each part by volume, and of what is not thinner."""
    density = lambda part: e.number(f"paint/products/{e[part + '/product']}/density")
    parts = e.rows(f"{at}/parts")
    in_parts = {}
    for part in parts:
        if e.get(f"{part}/of", "parts") == "parts":
            amount = e.number(f"{part}/parts", 1)
            in_parts[part] = amount / density(part) if e.get(f"{at}/mix_by") == "weight" else amount
    volumes = []
    for part in parts:
        if part in in_parts:
            volumes.append(in_parts[part])
            continue
        of = parts[:1] if e[f"{part}/of"] == "paint" else list(in_parts)
        share = e.number(f"{part}/share") / 100
        if e.get(f"{at}/thinner_by") == "weight":
            volumes.append(share * sum(in_parts[one] * density(one) for one in of) / density(part))
        else:
            volumes.append(share * sum(in_parts[one] for one in of))
    whole = sum(volumes)
    return [volume / whole for volume in volumes], sum(in_parts.values()) / whole


def cheapest(e, product, litres):
    rows = e.rows(f"{product}/tins")
    sizes = np.array([[e.number(f"{row}/size") for row in rows]])
    prices = [e.number(f"{row}/price") for row in rows]
    if litres <= 0:
        return 0, -litres
    enough = LinearConstraint(sizes, lb=litres)
    found = milp(c=prices, constraints=enough, integrality=np.ones(len(rows)), bounds=Bounds(0, np.inf))
    return found.fun, float((sizes @ np.round(found.x))[0]) - litres


def job(entries):
    """All results by name, in SI units; money in the book's currency."""
    e = Entries(line.split(" = ") for line in entries)
    found, needed, total = {}, {}, 0
    eta, reserve = e.number("paint/transfer") / 100, 1 + e.number("paint/reserve") / 100
    cup, gun = e.number("paint/left_in_cup") / 1000, e.number("paint/cup") / 1000
    slower = e.number("paint/slower") ** ((20 - e.number("paint/temperature")) / 10)
    areas = {}
    for panel in e.rows("paint/panels"):
        area = panel_area(e, panel)
        found["paint/area/" + panel.split("/")[-1]] = area
        system = e.get(f"{panel}/system", "1")
        areas[system] = areas.get(system, 0) + area
    for system in e.rows("paint/systems"):
        area, clock = areas[system.split("/")[-1]], 0
        for layer in e.rows(f"{system}/layers"):
            place = "/".join(layer.split("/")[2::2])
            number = lambda name: e.number(f"{layer}/{name}")
            coats = int(number("coats"))
            each, unthinned = shares(e, layer)
            solids = number("solids") / 100 * (unthinned if e.get(f"{layer}/solids_for") == "unthinned" else 1)
            if e.get(f"{layer}/basis") == "rate":
                rate = number("rate") * (unthinned if e.get(f"{layer}/rate_for") == "unthinned" else 1)
                on_the_metal = eta if e.get(f"{layer}/rate_is") == "practical" else 1
                coat, film = area / rate * on_the_metal / eta, 1000 * solids / rate * on_the_metal
            else:
                film = number("film") * (solids if e.get(f"{layer}/film_is") == "wet" else 1)
                coat = area * film / (1000 * solids * eta)
            pot, wait, over, late = (number(name) * slower for name in ("pot_life", "wait", "earliest_over", "latest_over"))
            spraying = coat / (e.number("paint/flow") / 1000)
            if spraying <= pot:
                fits = [n for n in range(1, coats + 1) if n == 1 or n * spraying + (n - 1) * wait <= pot]
                mixes = math.ceil(coats / max(fits))
            else:
                mixes = coats * math.ceil(spraying / pot)
            litres = (coats * coat + mixes * cup) * reserve
            mix = math.ceil(litres / mixes * 100 - 1e-9) / 100
            fills = [mix] * (mixes - 1) + [litres - mix * (mixes - 1)]
            total += litres
            products = [e[f"{part}/product"] for part in e.rows(f"{layer}/parts")]
            about = lambda name: [e.number(f"paint/products/{product}/{name}") for product in products]
            poured = np.cumsum([mix * share * density for share, density in zip(each, about("density"))])
            water = sum(share * w / 100 for share, w in zip(each, about("water")))
            solvent = sum(share * c for share, c in zip(each, about("solvent"))) / (1 - water)
            for product, share in zip(products, each):
                needed[product] = needed.get(product, 0) + share * litres
            found |= {
                f"paint/coat_litres/{place}": coat / 1000,
                f"paint/layer_litres/{place}": litres / 1000,
                f"paint/film/{place}": film * 1e-6,
                f"paint/wet/{place}": film / solids * 1e-6,
                f"paint/mixes/{place}": mixes,
                f"paint/gun_fills/{place}": sum(max(1, math.ceil(fill / gun - 1e-9)) for fill in fills),
                f"paint/solvent/{place}": solvent,
                f"paint/pot_life/{place}": pot * 60,
            }
            found |= {f"paint/scale/{place}/{n}": kilograms for n, kilograms in enumerate(poured, 1)}
            for coat_number in range(1, coats + 1):
                end = clock + spraying
                found[f"paint/end/{place}/{coat_number}"] = end * 60
                clock = end + (wait if coat_number < coats else over)
            found[f"paint/next_from/{place}/{coats}"] = clock * 60
            found[f"paint/next_until/{place}/{coats}"] = (end + late) * 60
    found["paint/litres"] = total / 1000
    for product, litres in needed.items():
        buy = litres - e.number(f"paint/products/{product}/in_hand")
        cost, left = cheapest(e, f"paint/products/{product}", buy)
        found[f"paint/product_litres/{product}"] = buy / 1000
        found[f"paint/product_cost/{product}"] = cost
        found[f"paint/left_over/{product}"] = left / 1000
    return found
