"""Recomputes the `library` checks of marking.toml with SciPy and NumPy. Millimetres throughout."""

import numpy as np
from recompute import compare
from scipy.optimize import least_squares


def fix(inputs):
    """A feature from distances to datums, by SciPy's least squares, started on the side asked."""
    datums = np.array(inputs["datums"])
    readings = np.array(inputs["readings"])
    weights = 1.0 / np.array(inputs["errors"])
    side = 1.0 if inputs["side"] == "left" else -1.0
    start = datums.mean(axis=0) + [0.0, side * readings.mean()]
    # Slopes are given: by differences the place would be off in the sixth decimal where readings disagree.
    found = least_squares(
        lambda at: weights * (np.hypot(*(at - datums).T) - readings),
        start,
        jac=lambda at: weights[:, None] * (at - datums) / np.hypot(*(at - datums).T)[:, None],
        method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15,
    )
    return found.x


def fix_error(inputs):
    """Standard errors times two from the inverse of the normal matrix at the least-squares place."""
    at = fix(inputs)
    datums = np.array(inputs["datums"])
    apart = at - datums
    slopes = apart / np.hypot(*apart.T)[:, None]
    weights = (2.0 / np.array(inputs["errors"])) ** 2
    covariance = np.linalg.inv((slopes * weights[:, None]).T @ slopes)
    return 2.0 * np.sqrt(np.diag(covariance))


def ellipse(inputs):
    """Half axes of the 95 % ellipse: eigenvalues of the covariance times the chi-squared point."""
    at = fix(inputs)
    datums = np.array(inputs["datums"])
    apart = at - datums
    slopes = apart / np.hypot(*apart.T)[:, None]
    weights = (2.0 / np.array(inputs["errors"])) ** 2
    covariance = np.linalg.inv((slopes * weights[:, None]).T @ slopes)
    return np.sqrt(5.991 * np.sort(np.linalg.eigvalsh(covariance))[::-1])


def rigid_fit(inputs):
    """Kabsch by the singular values: turn in degrees, shift, and the root mean square of what remains."""
    p, q = np.array(inputs["from"]), np.array(inputs["to"])
    if inputs["mirrored"]:
        p = p * [1.0, -1.0]
    cp, cq = p.mean(axis=0), q.mean(axis=0)
    u, _, vt = np.linalg.svd((p - cp).T @ (q - cq))
    sign = np.sign(np.linalg.det(vt.T @ u.T))
    turn = vt.T @ np.diag([1.0, sign]) @ u.T
    shift = cq - turn @ cp
    remains = q - (p @ turn.T + shift)
    rms = np.sqrt((remains**2).sum(axis=1).mean())
    return [np.degrees(np.arctan2(turn[1, 0], turn[0, 0])), *shift, rms]


def mirror_by_pairs(inputs):
    """A probe mirrored in the line that brings the pairs nearest to each other."""
    a, b = np.array(inputs["left"]), np.array(inputs["right"])

    def mirrored(points, x):
        normal = np.array([np.cos(x[0]), np.sin(x[0])])
        return points - 2.0 * np.outer(points @ normal - x[1], normal)

    across = (b - a).mean(axis=0)
    start = np.arctan2(across[1], across[0])
    middle = (a + b).mean(axis=0) / 2.0
    offset = middle @ [np.cos(start), np.sin(start)]
    found = least_squares(
        lambda x: (mirrored(a, x) - b).ravel(), [start, offset],
        jac="3-point", x_scale=[1e-3, 1.0], xtol=1e-15, ftol=1e-15, gtol=1e-15,
    )
    return mirrored(np.array([inputs["probe"]]), found.x)[0]


def frame(inputs):
    """Datums from their distances: the first at the origin, the second on the axis."""
    pairs = [(i - 1, j - 1) for i, j in inputs["pairs"]]
    lengths = np.array(inputs["lengths"])
    sides = inputs["sides"]
    count = len(sides) + 2

    def points(x):
        at = np.zeros((count, 2))
        at[1, 0] = x[0]
        at[2:] = np.reshape(x[1:], (-1, 2))
        return at

    def misses(x):
        at = points(x)
        return [np.hypot(*(at[i] - at[j])) - l for (i, j), l in zip(pairs, lengths)]

    base = lengths[pairs.index((0, 1))]
    start = [base]
    for side in sides:
        start += [0.5 * base, 0.5 * base if side == "left" else -0.5 * base]
    found = least_squares(misses, start, jac="3-point", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    return found.x


PAIRS = [[1, 2], [1, 3], [2, 3], [1, 4], [2, 4], [3, 4]]


def datums_of(lengths, side):
    """Four datums from all six distances."""
    x = frame({"pairs": PAIRS, "lengths": lengths, "sides": [side, side]})
    return np.array([[0.0, 0.0], [x[0], 0.0], [x[1], x[2]], [x[3], x[4]]])


def placed(datums, readings):
    """A place above the line, from its distances to as many datums as there are readings."""
    used = datums[: len(readings)]
    return fix({"datums": used, "readings": readings, "errors": [1.0] * len(readings), "side": "left"})


def pattern_image(inputs):
    """Features mirrored in the line between A, B and their measured twins, as the twins see them: along and above their line."""
    datums = datums_of(inputs["between"], "left")
    twins = [placed(datums, twin) for twin in inputs["twins"]]
    along = (twins[1] - twins[0]) / np.hypot(*(twins[1] - twins[0]))
    out = []
    for readings in inputs["features"]:
        at = placed(datums, readings)
        over = mirror_by_pairs({"left": datums[:2], "right": twins, "probe": at}) - twins[0]
        # The line of the new side runs the other way, so what lies to the right of it lies above.
        out += [over @ along, along[1] * over[0] - along[0] * over[1]]
    return out


def pattern_fit(inputs):
    """Features fitted, mirrored, to the new side's four datums: along and above their line."""
    old, new = datums_of(inputs["between"], "left"), datums_of(inputs["new"], "right")
    turn, dx, dy, _ = rigid_fit({"from": old, "to": new, "mirrored": True})
    sin, cos = np.sin(np.radians(turn)), np.cos(np.radians(turn))
    out = []
    for readings in inputs["features"]:
        x, y = placed(old, readings) * [1.0, -1.0]
        out += [cos * x - sin * y + dx, -(sin * x + cos * y + dy)]
    return out


def fix_from(inputs):
    """A feature from distances whose datums are uncertain too: both variances weigh."""
    errors = np.hypot(inputs["errors"], inputs["datum_errors"])
    return fix({**inputs, "errors": errors})


compare("marking", {
    "fix": fix,
    "fix_error": fix_error,
    "ellipse": ellipse,
    "rigid_fit": rigid_fit,
    "mirror_by_pairs": mirror_by_pairs,
    "frame": frame,
    "pattern_image": pattern_image,
    "pattern_fit": pattern_fit,
    "fix_from": fix_from,
})
