"""Recomputes measure's `library` checks: factors of units with Pint, ± and shares with uncertainties."""

import re

from pint import UnitRegistry
from recompute import compare
from scipy.optimize import brentq
from uncertainties import ufloat, umath, wrap

PINT = UnitRegistry()

# What Pint calls the units, by the symbol that is checked.
NAMES = {
    "µm": "micrometer", "in": "inch", "ft": "foot", "yd": "yard", "mi": "mile", "thou": "thou", "mil": "thou", "hundredths": "0.01 * mm",
    "cm³": "cm**3", "in³": "inch**3", "ft³": "foot**3", "m³": "m**3", "mm³": "mm**3", "L": "liter", "mL": "milliliter", "cL": "centiliter",
    "imp gal": "imperial_gallon", "imp qt": "imperial_quart", "imp pt": "imperial_pint", "imp gill": "imperial_gill",
    "imp fl oz": "imperial_fluid_ounce", "US gal": "gallon", "US qt": "quart", "US pt": "pint", "US gill": "gill", "US fl oz": "fluid_ounce",
    "m²": "m**2", "mm²": "mm**2", "cm²": "cm**2", "in²": "inch**2", "ft²": "foot**2", "yd²": "yard**2",
    "t": "metric_ton", "lb": "pound", "oz": "ounce", "st": "stone", "qr": "28 * pound", "cwt": "UK_hundredweight",
    "short cwt": "US_hundredweight", "long ton": "long_ton", "short ton": "short_ton",
    "kgf": "kilogram_force", "lbf": "pound_force", "ozf": "ounce_force", "tonf": "UK_force_ton",
    "N·m": "N*m", "kN·m": "kN*m", "daN·m": "daN*m", "N·cm": "N*cm", "lbf·ft": "pound_force*foot", "lbf·in": "pound_force*inch",
    "ozf·in": "ounce_force*inch", "kgf·m": "kilogram_force*m", "kgf·cm": "kilogram_force*cm", "kWh": "kilowatt_hour", "ft·lbf": "foot*pound_force",
    "N/mm²": "N/mm**2", "kgf/cm²": "kilogram_force/cm**2", "kgf/mm²": "kilogram_force/mm**2", "ksi": "kip_per_square_inch",
    "tonf/in²": "UK_force_ton/inch**2", "atm": "standard_atmosphere", "psi": "pound_force_per_square_inch",
    "rad": "radian", "mrad": "milliradian", "°": "degree", "′": "arcminute", "″": "arcsecond", "turn": "turn",
    "m/min": "m/minute", "ft/min": "foot/minute", "ft/s": "foot/s", "mph": "mile/hour", "km/h": "km/hour",
    "1/s": "turn/s", "Hz": "turn/s", "rpm": "revolutions_per_minute", "cpm": "turn/minute", "rad/s": "radian/s",
    "kgf/mm": "kilogram_force/mm", "kgf/cm": "kilogram_force/cm", "lbf/in": "pound_force/inch", "hp": "horsepower", "kW/t": "kW/tonne", "PS/t": "metric_horsepower/tonne", "hp/long ton": "horsepower/long_ton",
    "hp/short ton": "horsepower/short_ton", "PS": "metric_horsepower",
    "min": "minute", "h": "hour", "d": "day", "wk": "week", "kg/m³": "kg/m**3", "kg/L": "kg/liter", "g/cm³": "g/cm**3", "g/L": "g/liter",
    "lb/ft³": "pound/foot**3", "lb/imp gal": "pound/imperial_gallon", "lb/US gal": "pound/gallon", "m²/L": "m**2/liter",
    "ft²/imp gal": "foot**2/imperial_gallon", "ft²/US gal": "foot**2/gallon",
    "turns/m": "turn/m", "turns/km": "turn/km", "turns/mi": "turn/mile", "m/s²": "m/s**2", "ft/s²": "foot/s**2",
    "m⁴": "m**4", "mm⁴": "mm**4", "cm⁴": "cm**4", "in⁴": "inch**4", "m³/s": "m**3/s", "m³/h": "m**3/hour", "L/min": "liter/minute",
    "mL/min": "milliliter/minute", "ft³/min": "foot**3/minute", "imp gal/min": "imperial_gallon/minute", "US gal/min": "gallon/minute",
    "kg·m²": "kg*m**2", "lb·ft²": "pound*foot**2", "lb·in²": "pound*inch**2", "": "dimensionless", "%": "percent", "‰": "0.001 dimensionless",
    "°C": "delta_degC", "°F": "delta_degF",
}  # fmt: skip


def quantity(symbol, kind):
    # `g` is a gram among masses and standard gravity among accelerations.
    name = "standard_gravity" if (symbol, kind) == ("g", "acceleration") else NAMES.get(symbol, symbol)
    return PINT.Quantity(name)


def factors(i):
    scale = quantity(i["in"], i["kind"])
    return [(quantity(symbol, i["kind"]) / scale).to("dimensionless").magnitude for symbol in i["units"]]


def read(i):
    """Temperatures, whose nought is not that of the kelvin."""
    names = {"°C": "degC", "°F": "degF", "K": "kelvin"}
    for text in i["texts"]:
        number, unit = re.fullmatch(r"(-?[0-9.]+) (.+)", text).groups()
        yield PINT.Quantity(float(number), names[unit]).to("kelvin").magnitude


def entry(text):
    """A text such as `412.5 ± 0.5 mm`: the ± is two standard deviations."""
    number, error, unit = re.fullmatch(r"([-0-9.]+)(?: ± ([0-9.]+))?\s*(.*)", str(text)).groups()
    scale = (quantity(unit, None) if unit else PINT.Quantity("dimensionless")).to_base_units().magnitude
    if unit == "rpm":
        scale = 1 / 60
    return ufloat(float(number) * scale, float(error) * scale / 2) if error else float(number) * scale


def solved(a, b):
    return brentq(lambda x: x**3 + a * x - b, 0, 10, xtol=1e-15, rtol=1e-15)


def now_less_before(e):
    return e["shared"] * e["now"] - e["shared"] * e["before"]


FORMULAS = {
    "C n / (i_g i_f)": lambda e: e["C"] * e["n"] / (e["i_g"] * e["i_f"]),
    "x - x": lambda e: e["x"] - e["x"],
    "(a - b) / (a + b)": lambda e: (e["a"] - e["b"]) / (e["a"] + e["b"]),
    "(a + b) - a": lambda e: (e["a"] + e["b"]) - e["a"],
    "b t^3 / L^3 + b t": lambda e: e["b"] * e["t"] ** 3 / e["L"] ** 3 + e["b"] * e["t"],
    "sqrt(a^2 + b^2 - 2 a b cos(g))": lambda e: umath.sqrt(e["a"] ** 2 + e["b"] ** 2 - 2 * e["a"] * e["b"] * umath.cos(e["g"])),
    "(a - b) / ln(a / b)": lambda e: (e["a"] - e["b"]) / umath.log(e["a"] / e["b"]),
    "exp(-m g)": lambda e: umath.exp(-e["m"] * e["g"]),
    "a atan(b / a)": lambda e: e["a"] * umath.atan(e["b"] / e["a"]),
    "x^3 + a x = b": lambda e: wrap(solved)(e["a"], e["b"]),
    "now - before": now_less_before,
}


def evaluated(i):
    entries = {name: entry(text) for name, text in i.items() if name not in ("formula", "entries")}
    return entries, FORMULAS[i["formula"]](entries)


def propagated(i):
    _, result = evaluated(i)
    return [result.nominal_value, 2 * result.std_dev]


def shares(i):
    entries, result = evaluated(i)
    parts = result.error_components()
    whole = result.std_dev**2
    return [parts.get(entries[name], 0.0) ** 2 / whole for name in i["entries"]]


compare("measure", {"factors": factors, "read": read, "propagated": propagated, "shares": shares})
