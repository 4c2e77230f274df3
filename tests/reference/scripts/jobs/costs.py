"""The costs of a whole job, reckoned once more from their entries with Python's decimal and fractions."""

from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from fractions import Fraction

import iso4217


def job(entries):
    """All results by name, in the book's currency."""
    e = dict(line.split(" = ") for line in entries)
    home = e.get("book/currency", "GBP")
    rule = ROUND_HALF_UP if e.get("costs/rounding") == "half_up" else ROUND_HALF_EVEN

    def coins(amount, currency):
        exact = Fraction(amount)
        # More digits than any tie needs: what is left of a fraction that never ends only says on which side of a tie it lies.
        amount = Decimal(exact.numerator) / Decimal(exact.denominator)
        return Fraction(amount.quantize(Decimal(1).scaleb(-iso4217.Currency(currency).exponent), rounding=rule))

    found, sums = {}, dict.fromkeys(("paid", "committed", "planned", "to_come_back"), Fraction(0))
    ids = sorted({int(key.split("/")[2]) for key in e if key.startswith("costs/lines/")})
    for number in ids:
        entry = lambda name, otherwise="0": e.get(f"costs/lines/{number}/{name}", otherwise)
        price, currency = entry("price").split()
        exchanged = lambda money: money if currency == home else coins(money * Fraction(entry("rate")), home)
        charged = coins(Fraction(price) * Fraction(entry("quantity", "1")), currency) + Fraction(entry("carriage"))
        percent, basis = Fraction(entry("tax", e.get("costs/tax", "0"))), entry("tax_basis", "in")
        tax = coins(charged * percent / (100 + percent), currency) if basis == "in" else Fraction(0)
        net = charged - tax
        duty = coins(net * Fraction(entry("duty")) / 100, currency)
        if basis == "out":
            tax = coins((net + duty) * percent / 100, currency)
        deposit = Fraction(0) if entry("deposit_state") == "back" else Fraction(entry("deposit"))
        total = exchanged(net + duty + deposit + (tax if e.get("costs/tax_counts") != "no" else 0))
        state = entry("state", "planned")
        paid = total if state == "paid" else exchanged(Fraction(entry("paid_so_far")))
        sign = 1 if entry("kind", "bought") == "bought" else -1
        found[f"costs/lines/{number}"] = sign * total
        sums["paid"] += sign * paid
        sums["planned" if state == "planned" else "committed"] += sign * (total - paid)
        if entry("deposit_state", "out") == "out":
            sums["to_come_back"] += exchanged(deposit)
    open_ = max(Fraction(0), sums["committed"] + sums["planned"])
    held = coins(open_ * Fraction(e["costs/contingency_percent"]) / 100, home)
    found |= {f"costs/{name}": amount for name, amount in sums.items()}
    found["costs/contingency"] = held
    found["costs/left"] = Fraction(e["costs/limit"]) - sums["paid"] - sums["committed"] - sums["planned"] - held
    return found
