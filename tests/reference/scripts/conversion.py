"""Recomputes the `library` checks of conversion.toml with SciPy and NumPy: the spatial linkage built here from rotation
matrices and solved by SciPy's root finder. Millimetres and degrees."""

import numpy as np
from recompute import compare
from scipy.optimize import brentq
from scipy.spatial.transform import Rotation

AXES = {"across": ("y", [0, 0, -1]), "along": ("x", [0, 0, -1]), "upright": ("z", [-1, 0, 0])}
# The sense in which the arm's angle is counted: forward or to the left.
SENSE = {"across": -1.0, "along": 1.0, "upright": -1.0}


def drop_ball(inputs, swing):
    if inputs["shaft"] == "rack":
        return np.array(inputs["box_at"]) + [0.0, inputs["drop_arm"] * np.radians(swing), 0.0]
    axis, hanging = AXES[inputs["shaft"]]
    angle = SENSE[inputs["shaft"]] * (inputs["at_centre"] + swing)
    turned = Rotation.from_euler(axis, angle, degrees=True).apply(hanging)
    return np.array(inputs["box_at"]) + inputs["drop_arm"] * turned


def axle_shift(inputs, rise):
    radius = 0.75 * inputs["half_spring"]
    height = inputs["seat_above_eye"]
    start = np.arcsin(height / radius)
    end = np.arcsin((height + rise) / radius)
    longer = radius * (np.cos(end) - np.cos(start))
    return -longer if inputs["fixed_eye"] == "front" else longer


def pin_way(inputs):
    """The way along the king pin: its top leans back by the castor and in by the inclination."""
    back, inward = (np.tan(np.radians(inputs.get(name, 0.0))) for name in ("castor", "inclination"))
    way = np.array([-back, -inward * np.sign(inputs["pin"][1]), 1.0])
    return way / np.linalg.norm(way)


def about_pin(inputs, steer):
    """The turn about the pin that makes the wheel head so on the ground, seen by where its spindle points."""

    def heading(turn):
        spindle = Rotation.from_rotvec(np.radians(turn) * pin_way(inputs)).apply([0.0, 1.0, 0.0])
        return np.degrees(np.arctan2(-spindle[0], spindle[1]))

    return brentq(lambda turn: heading(turn) - steer, steer - 20, steer + 20, xtol=1e-13)


def arm_ball(inputs, steer, rise=0.0):
    pin = np.array([*inputs["pin"], inputs["ball"][2]])
    arm = np.array(inputs["ball"]) - pin
    turned = Rotation.from_rotvec(np.radians(about_pin(inputs, steer)) * pin_way(inputs)).apply(arm)
    return pin + turned + [axle_shift(inputs, rise), 0.0, rise]


def drag_link(inputs):
    return np.linalg.norm(drop_ball(inputs, 0.0) - arm_ball(inputs, 0.0))


def solve_steer(inputs, swing, rise):
    link = drag_link(inputs)
    return brentq(
        lambda s: np.linalg.norm(drop_ball(inputs, swing) - arm_ball(inputs, s, rise)) - link, -40, 40, xtol=1e-13)


def steer(inputs):
    return solve_steer(inputs, inputs["swing"], 0.0)


def bump_steer(inputs):
    return solve_steer(inputs, 0.0, inputs["rise"])


def solve_swing(inputs, steer_angle):
    link = drag_link(inputs)
    return brentq(
        lambda w: np.linalg.norm(drop_ball(inputs, w) - arm_ball(inputs, steer_angle)) - link,
        *((-900, 900) if inputs["shaft"] == "rack" else (-50, 50)), xtol=1e-13)


def swing(inputs):
    return solve_swing(inputs, inputs["steer"])


def linkage_ratio(inputs):
    at = inputs["at"]
    return abs(solve_swing(inputs, at + 0.005) - solve_swing(inputs, at - 0.005)) / 0.01


def best_drop_arm(inputs):
    def slope(length):
        other = dict(inputs, drop_arm=length)
        return solve_steer(other, 0.0, 0.1) - solve_steer(other, 0.0, -0.1)

    return brentq(slope, *inputs["between"], xtol=1e-9)


def best_box_height(inputs):
    def slope(dz):
        moved = dict(inputs, box_at=[*inputs["box_at"][:2], inputs["box_at"][2] + dz])
        return solve_steer(moved, 0.0, 0.1) - solve_steer(moved, 0.0, -0.1)

    return brentq(slope, *inputs["between"], xtol=1e-9)


def kerb_circle(inputs):
    """Twice the distance of the tyre's middle from the point about which the vehicle turns: where the normal of the outer
    wheel at its place on the ground meets the rear axle's line."""
    outer, base = np.radians(inputs["outer"]), inputs["wheelbase"]
    turn = np.array([[np.cos(outer), -np.sin(outer)], [np.sin(outer), np.cos(outer)]])
    # A turn to the left: the outer wheel is the right one, its pin's line meets the ground ahead of the tyre and inward of it.
    pin = np.array([base + inputs.get("trail", 0.0), 0.0])
    tyre = pin + turn @ [-inputs.get("trail", 0.0), -inputs["offset"]]
    spindle = turn @ [0.0, 1.0]
    centre = np.linalg.solve(np.column_stack([spindle, [0.0, -1.0]]), -tyre)
    return 2.0 * abs(centre[0])


def ground_offset(inputs):
    """The tyre's middle less the point on the ground of the line through the pin at the wheel's height."""
    way = np.array([-np.sin(np.radians(inputs["inclination"])), np.cos(np.radians(inputs["inclination"]))])
    at_hub = np.array([inputs["pivots"] / 2, inputs["radius"]])
    on_ground = at_hub - way * at_hub[1] / way[1]
    return inputs["track"] / 2 - on_ground[0]


def trail(inputs):
    way = np.array([-np.sin(np.radians(inputs["castor"])), np.cos(np.radians(inputs["castor"]))])
    return -way[0] * inputs["radius"] / way[1]


def other_wheel(inputs):
    return rod_follows(inputs, -1.0, -np.radians(inputs["toe"]))


def other_wheel_in_front(inputs):
    return rod_follows(inputs, 1.0, np.radians(inputs["outward"]))


def rod_follows(inputs, forward, outward):
    """Both arms turn about their pins, each by what gives its wheel a heading on the ground, until the rod is as long as it is."""
    arm, pivots = inputs["arm"], inputs["pivots"]

    def end(side, angle):
        pin = dict(inputs, pin=[0.0, side])
        at = [forward * arm * np.cos(outward), side * arm * np.sin(outward), 0.0]
        about = Rotation.from_rotvec(np.radians(about_pin(pin, angle)) * pin_way(pin))
        return about.apply(at) + [0.0, side * pivots / 2, 0.0]

    rod = np.linalg.norm(end(1, 0.0) - end(-1, 0.0))
    turned = inputs["turned"]
    return brentq(lambda a: np.linalg.norm(end(1, turned) - end(-1, a)) - rod, 0.0, turned + np.copysign(12.0, turned), xtol=1e-13)


compare("conversion", {
    "drag_link": drag_link,
    "steer": steer,
    "bump_steer": bump_steer,
    "linkage_ratio": linkage_ratio,
    "best_box_height": best_box_height,
    "other_wheel": other_wheel,
    "other_wheel_in_front": other_wheel_in_front,
    "swing": swing,
    "best_drop_arm": best_drop_arm,
    "kerb_circle": kerb_circle,
    "ground_offset": ground_offset,
    "trail": trail,
})
