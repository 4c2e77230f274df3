"""Recomputes the `library` checks of costs with Python's decimal, fractions and csv, SciPy and iso4217."""

import csv
import io
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from fractions import Fraction

import iso4217
import jobs.costs
import numpy
from scipy.optimize import Bounds, LinearConstraint, milp

from recompute import compare

RULES = {"half even": ROUND_HALF_EVEN, "half up": ROUND_HALF_UP}


def places_of(code):
    return iso4217.Currency(code).exponent


def rounded_to(amount, places, rule="half even"):
    return amount.quantize(Decimal(1).scaleb(-places), rounding=RULES[rule])


def cents(amount, inputs):
    return rounded_to(amount, places_of(inputs.get("home", "EUR")), inputs.get("rule", "half even"))


def minor_units(inputs):
    return [places_of(code) for code in inputs["codes"]]


def currencies(_inputs):
    """Those with minor units that are no funds; list one marks the funds by an attribute of the name."""
    from importlib import resources
    from xml.etree import ElementTree

    codes = set()
    with resources.files("iso4217").joinpath("table.xml").open("rb") as table:
        for entry in ElementTree.parse(table).iter("CcyNtry"):
            code, minor = entry.findtext("Ccy"), entry.findtext("CcyMnrUnts")
            if code and minor != "N.A." and not entry.find("CcyNm").get("IsFund"):
                codes.add(code)
    return len(codes)


def rounded(inputs):
    places = places_of(inputs["currency"]) if "currency" in inputs else inputs["places"]
    return [rounded_to(Decimal(amount), places, inputs["rule"]) for amount in inputs["amounts"]]


def line(inputs):
    goods = cents(Decimal(inputs.get("quantity", "1")) * Decimal(inputs["price"]), inputs)
    charged = goods + Decimal(inputs.get("carriage", "0"))
    rate = Decimal(inputs["tax"])
    net, tax = charged, Decimal(0)
    if inputs["basis"] == "in":
        exact = Fraction(charged) * Fraction(rate) / (100 + Fraction(rate))
        tax = cents(Decimal(exact.numerator) / Decimal(exact.denominator), inputs)
        net = charged - tax
    duty = cents(net * Decimal(inputs.get("duty", "0")) / 100, inputs)
    if inputs["basis"] == "out":
        tax = cents((net + duty) * rate / 100, inputs)
    return [net, duty, tax, net + duty + tax]


def priced(inputs):
    quantity = rounded_to(Decimal(repr(inputs["quantity"])), 3)
    return [quantity, cents(quantity * Decimal(inputs["price"]), inputs)]


def exchanged(inputs):
    product = Decimal(inputs["amount"]) * Decimal(inputs["rate"])
    return rounded_to(product, places_of(inputs["into"]), inputs["rule"])


def split(inputs):
    places = places_of(inputs.get("home", "EUR"))
    total = int(Decimal(inputs["total"]).scaleb(places))
    shares = [Fraction(share) for share in inputs["shares"]]
    exact = [total * share / sum(shares) for share in shares]
    parts = [part.numerator // part.denominator for part in exact]
    order = sorted(range(len(parts)), key=lambda i: (parts[i] - exact[i], i))
    for i in order[: total - sum(parts)]:
        parts[i] += 1
    return [Decimal(part).scaleb(-places) for part in parts]


def ahead(inputs):
    paid = [Decimal(amount) for amount in inputs["paid"]]
    shares = inputs.get("shares", ["1"] * len(paid))
    fair = split({"total": str(sum(paid)), "shares": shares})
    return [have - owe for have, owe in zip(paid, fair)]


def transfers(inputs):
    """The fewest arcs that carry what those behind owe to those ahead, as a mixed-integer programme."""
    balance = [float(part * 100) for part in ahead(inputs)]
    count = len(balance)
    arcs = [(i, j) for i in range(count) for j in range(count) if i != j]
    most = sum(abs(b) for b in balance)
    flow_rows = numpy.zeros((count, 2 * len(arcs)))
    use_rows = numpy.zeros((len(arcs), 2 * len(arcs)))
    for k, (i, j) in enumerate(arcs):
        flow_rows[i, k] += 1.0
        flow_rows[j, k] -= 1.0
        use_rows[k, k] = 1.0
        use_rows[k, len(arcs) + k] = -most
    answer = milp(
        numpy.r_[numpy.zeros(len(arcs)), numpy.ones(len(arcs))],
        constraints=[
            LinearConstraint(flow_rows, [-b for b in balance], [-b for b in balance]),
            LinearConstraint(use_rows, -numpy.inf, 0.0),
        ],
        integrality=numpy.r_[numpy.zeros(len(arcs)), numpy.ones(len(arcs))],
        bounds=Bounds(0.0, numpy.r_[numpy.full(len(arcs), most), numpy.ones(len(arcs))]),
    )
    assert answer.success, answer.message
    return round(answer.fun)


def left(inputs):
    sums = {"paid": Decimal(0), "committed": Decimal(0), "planned": Decimal(0)}
    for row in inputs["lines"]:
        total = cents(Decimal(row["quantity"]) * Decimal(row["price"]), inputs)
        so_far = total if row["state"] == "paid" else Decimal(row.get("paid_so_far", "0"))
        sums["paid"] += so_far
        sums["committed" if row["state"] == "paid" else row["state"]] += total - so_far
    unpaid = sums["committed"] + sums["planned"]
    contingency = cents(unpaid * Decimal(inputs["contingency_percent"]) / 100, inputs)
    rest = Decimal(inputs["limit"]) - sum(sums.values()) - contingency
    return [sums["paid"], sums["committed"], sums["planned"], contingency, rest]


def worth(inputs):
    hours = [Decimal(h) for h in inputs["hours"]]
    value = sum(cents(h * Decimal(r), inputs) for h, r in zip(hours, inputs["rates"]))
    over = Decimal(inputs["value_done"]) - Decimal(inputs["cash"])
    return [value, over, over - value, cents(over / sum(hours), inputs)]


def table(inputs):
    text = inputs["text"].removeprefix("\ufeff")
    separator = csv.Sniffer().sniff(text.splitlines()[0]).delimiter
    rows = list(csv.reader(io.StringIO(text, newline=""), delimiter=separator))
    return [len(rows), sum(map(len, rows)), sum(len(cell) for row in rows for cell in row)]


def job(inputs):
    found = jobs.costs.job(inputs["entries"])
    return [found[name] for name in inputs["results"]]


if __name__ == "__main__":
    names = "minor_units currencies rounded line priced exchanged split ahead transfers left worth table job"
    compare("costs", {name: globals()[name] for name in names.split()})
