"""Recomputes the `library` checks of templates.toml with Shapely. Millimetres throughout."""

import numpy as np
from recompute import compare
from shapely import affinity
from shapely.geometry import LineString, Point, Polygon, box

ROUND = 4096  # chords to a quarter of a circle


def about_centre(shape):
    """The shape about its own centre, as Shapely knows it."""
    form, sizes = shape["form"], shape["sizes"]
    if form == "round":
        return Point(0, 0).buffer(sizes[0] / 2, quad_segs=ROUND)
    if form == "slot":
        half = (sizes[0] - sizes[1]) / 2
        return LineString([(-half, 0), (half, 0)]).buffer(sizes[1] / 2, quad_segs=ROUND)
    if form == "rectangle":
        x, y, corner = sizes[0] / 2 - sizes[2], sizes[1] / 2 - sizes[2], sizes[2]
        core = box(-x, -y, x, y)
        return core.buffer(corner, quad_segs=ROUND) if corner else core
    if form == "d_hole":
        radius = sizes[0] / 2
        return Point(0, 0).buffer(radius, quad_segs=ROUND) & box(-2 * radius, -2 * radius, sizes[1] - radius, 2 * radius)
    if form == "bracket":
        return LineString([(sizes[0], 0), (0, 0), (0, sizes[1])])
    return Polygon(np.reshape(sizes, (-1, 2)))


def in_place(shape):
    """Mirrored in x first, then turned, then shifted."""
    there = about_centre(shape)
    if shape["mirrored"]:
        there = affinity.scale(there, 1, -1, origin=(0, 0))
    there = affinity.rotate(there, shape["turn"], origin=(0, 0))
    return affinity.translate(there, *shape["at"])


def outline(inputs):
    """Area, edge, and the box in place: lowest x and y, highest x and y."""
    there = in_place(inputs["shape"][0])
    return [there.area, there.length, *there.bounds]


def offset(inputs):
    """Area and edge of the parallel outline: arcs about the corners, but the circle and the flat of a D-hole moved apart."""
    shape, by = inputs["shape"][0], inputs["by"]
    if shape["form"] == "d_hole":
        diameter, across = shape["sizes"]
        there = about_centre({"form": "d_hole", "sizes": [diameter + 2 * by, across + 2 * by]})
    else:
        there = in_place(shape).buffer(by, quad_segs=ROUND)
    return [there.area, there.length]


def apart(inputs):
    """The least distance of two outlines."""
    return in_place(inputs["a"][0]).distance(in_place(inputs["b"][0]))


def to_strip(inputs):
    """The least distance to a strip between the middles of two ends, cut off square there; and its ± by the slopes of every measure."""
    shape = in_place(inputs["shape"][0])
    typed = [text.removesuffix(" mm").split(" ± ") for text in [*inputs["ends"], inputs["width"]]]
    values, errors = (np.array([float(part[which]) for part in typed]) for which in (0, 1))

    def left(measures):
        return shape.distance(LineString(np.reshape(measures[:4], (2, 2))).buffer(measures[4] / 2, cap_style="flat"))

    steps = 1e-3 * np.eye(len(values))
    slopes = [(left(values + step) - left(values - step)) / 2e-3 for step in steps]
    return [left(values), np.linalg.norm(slopes * errors)]


def to_edge(inputs):
    """The least distance to a straight edge that goes on beyond its two points; less than nothing by how far the shape reaches over it."""
    one, two = (np.array(at, float) for at in inputs["edge"])
    along = 100 * (two - one)
    line = [one - along, two + along]
    inward = np.array([-along[1], along[0]])
    if np.dot(inward, np.array(inputs["metal"][0], float) - one) < 0:
        inward = -inward
    metal = Polygon([*line, line[1] + inward, line[0] + inward])
    shape = in_place(inputs["shape"][0])
    over = shape.difference(metal)
    if over.is_empty:
        return shape.distance(LineString(line))
    return -max(LineString(line).distance(Point(at)) for at in over.convex_hull.exterior.coords)


def plate(inputs):
    """The plate inside the gap, and the edge along the middle of it."""
    there, gap = in_place(inputs["shape"][0]), inputs["gap"]
    return [there.buffer(-gap, quad_segs=ROUND).area, there.buffer(-gap / 2, quad_segs=ROUND).length]


if __name__ == "__main__":
    compare("templates", {"outline": outline, "offset": offset, "apart": apart, "to_strip": to_strip, "to_edge": to_edge, "plate": plate})
