"""Measures the template files that our code wrote of pattern.toml, with pdfplumber, ezdxf and Shapely. Millimetres throughout.

The pages of a PDF are joined by their register marks alone, as on the bench; everything is then compared with the pattern as
pattern.toml gives it. Run by `cargo xtask test scripts`, which writes the files first.
"""

import re
import sys
import tomllib
import xml.etree.ElementTree as ElementTree
from collections import defaultdict
from pathlib import Path

import ezdxf
import numpy as np
import pdfplumber
from shapely.geometry import Polygon

from templates import ROUND, in_place

HERE = Path(__file__).resolve().parent
FILES = HERE.parents[2] / "target/templates"
PATTERN = tomllib.loads((HERE.parent / "pattern.toml").read_text(encoding="utf-8"))
MM = 25.4 / 72
KERF = 0.3
# ISO 216:2007 A4, and ANSI/ASME Y14.1 size A (Letter), upright.
PAPER = {"a4": (210.0, 297.0), "letter": (8.5 * 25.4, 11 * 25.4)}

measured, failures = 0, []


def check(what, found, wanted, within):
    """One measurement."""
    global measured
    measured += 1
    if not np.all(np.abs(np.asarray(found, float) - np.asarray(wanted, float)) <= within):
        failures.append(f"{what}: {found} where {wanted} ± {within} is wanted")


def holds(what, truth):
    """One fact."""
    global measured
    measured += 1
    if not truth:
        failures.append(what)


def laid(points, behind):
    """Places of the pattern with UP at the top; seen from behind, left is right."""
    turn = np.radians(90 - PATTERN["up"])
    turned = np.asarray(points, float) @ np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
    return turned * [-1 if behind else 1, 1]


def spots(shape):
    """Where a shape is punched: its centre, the ends of a slot, the centres of a rectangle's corners and its own."""
    form, sizes = shape["form"], shape["sizes"]
    at = [(0, 0)]
    if form == "slot":
        half = (sizes[0] - sizes[1]) / 2
        at = [(-half, 0), (half, 0)]
    if form == "rectangle":
        x, y = sizes[0] / 2 - sizes[2], sizes[1] / 2 - sizes[2]
        at = [(-x, -y), (x, -y), (x, y), (-x, y), (0, 0)]
    turn = np.radians(shape["turn"])
    return [(shape["at"][0] + x * np.cos(turn) - y * np.sin(turn), shape["at"][1] + x * np.sin(turn) + y * np.cos(turn))
            for x, y in at]


SHAPES = [feature["shape"][0] for feature in PATTERN["feature"]]


class Page:
    """What a page shows, in millimetres of paper from its lower left corner."""

    def __init__(self, page, true):
        self.page, self.true = page, np.array(true)
        height = float(page.height)
        place = lambda pts: np.array([[x, height - y] for x, y in pts]) * MM * self.true
        self.size = np.array([page.width, height], float) * MM
        self.lines = [place(line["pts"]) for line in page.lines]
        self.boxes = [(place([(r["x0"], r["top"]), (r["x1"], r["bottom"])]), r["fill"]) for r in page.rects]
        self.circles = [place(c["pts"]) for c in page.curves if len(c["pts"]) in (5, 6) and not c["fill"]]
        self.text = page.extract_text()
        self.words = [(w["text"], place([(w["x0"], w["bottom"])])[0]) for w in page.extract_words()]
        # The window is the largest frame.
        frames = [np.sort(box, axis=0) for box, filled in self.boxes if not filled]
        self.frames = frames
        self.window = max(frames, key=lambda box: np.prod(box[1] - box[0]))
        self.shift = None

    def round(self, radius):
        """Centres of circles of this radius, in true millimetres."""
        # A circle is four curves; their ends lie on it, a quarter apart.
        centres = [(c[:4].mean(axis=0), np.hypot(*(c[:4] - c[:4].mean(axis=0)).T)) for c in self.circles]
        return [centre for centre, reach in centres if np.all(np.abs(reach - radius) < 0.02)]

    def registers(self):
        """Register marks by their numbers."""
        marks = {}
        for centre in self.round(3.0):
            near = [(np.hypot(*(at - centre - 3.0)), text) for text, at in self.words if text.isdigit()]
            distance, text = min(near, default=(99, ""))
            if distance < 3:
                marks[int(text)] = centre
        return marks

    def crosses(self, reach):
        """Where two lines of this length halve each other at right angles."""
        halves = [(line.mean(axis=0), line[1] - line[0]) for line in self.lines if len(line) == 2]
        halves = [(middle, way) for middle, way in halves if abs(np.hypot(*way) - 2 * reach) < 0.03]
        found = []
        for i, (middle, way) in enumerate(halves):
            for other, across in halves[i + 1:]:
                if np.hypot(*(middle - other)) < 0.01 and abs(way @ across) < 0.05:
                    found.append((middle + other) / 2)
        return found

    def shows(self, at):
        """Whether a joined place lies in the window."""
        here = at - self.shift
        return bool(np.all(here > self.window[0]) and np.all(here < self.window[1]))


def joined(name, pages):
    """Shifts every page so that its register marks lie on those of the pages joined before."""
    marks = [page.registers() for page in pages]
    pages[0].shift = np.zeros(2)
    waiting = list(range(1, len(pages)))
    while waiting:
        found = None
        for which in waiting:
            known = {n: pages[o].shift + at for o, page in enumerate(pages) if page.shift is not None for n, at in marks[o].items()}
            twins = [known[n] - at for n, at in marks[which].items() if n in known]
            if len(twins) >= 2:
                found = which, twins
                break
        if found is None:
            holds(f"{name}: pages {waiting} share two register marks with the others", False)
            return False
        which, twins = found
        check(f"{name}: register marks of page {which} agree", np.ptp(twins, axis=0), [0, 0], 0.02)
        pages[which].shift = np.mean(twins, axis=0)
        waiting.remove(which)
    return True


def bars(name, page):
    """The bars that the printer is checked by: one of each, along and up."""
    sizes = [box[1] - box[0] for box in page.frames]
    for wanted, what in ((100.0, "100 mm"), (4 * 25.4, "4 in")):
        for axis, way in ((0, "along"), (1, "up")):
            like = [size for size in sizes if abs(size[axis] - wanted) < 0.5 and abs(size[1 - axis] - 2) < 0.1]
            holds(f"{name}: one bar of {what} {way}", len(like) == 1)
            if like:
                check(f"{name}: the bar of {what} {way}", like[0][axis], wanted, 0.01)


def pdf(name, paper, overlap, true=(1, 1), behind=False, punched=False, masked=False):
    """`true` is what the printer makes of a millimetre, along and up."""
    document = pdfplumber.open(FILES / name)
    pages = [Page(page, true) for page in document.pages]
    for number, page in enumerate(pages, start=1):
        check(f"{name} {number}: the paper", np.sort(page.size), PAPER[paper], 0.01)
        bars(f"{name} {number}", page)
        holds(f"{name} {number}: says UP", "UP" in page.text)
        holds(f"{name} {number}: says seen from where and which side",
              "Seen from inside the cab" in page.text and "left-hand side" in page.text)
    names = [re.search(r"Page ([A-Z]+\d+) \((\d+)/(\d+)\)", page.text) for page in pages]
    holds(f"{name}: every page has a name of its own", all(names) and len({n[1] for n in names}) == len(pages))
    holds(f"{name}: every page says which it is of how many",
          all(n and (int(n[2]), int(n[3])) == (number, len(pages)) for number, n in enumerate(names, start=1)))
    if not joined(name, pages):
        return
    grid = defaultdict(dict)
    for page, found in zip(pages, names):
        letters, row = re.fullmatch(r"([A-Z]+)(\d+)", found[1]).groups()
        grid[int(row)][letters] = page
    for row, line in grid.items():
        for letters, a in line.items():
            # A page with nothing on it is left out.
            b = line.get(chr(ord(letters) + 1))
            if b:
                check(f"{name}: overlap along row {row}", a.window[1][0] + a.shift[0] - b.window[0][0] - b.shift[0], overlap, 0.02)
            b = grid.get(row + 1, {}).get(letters)
            if b:
                check(f"{name}: overlap down {letters}{row}",
                      b.window[1][1] + b.shift[1] - a.window[0][1] - a.shift[1], overlap, 0.02)
    datums = laid(PATTERN["datums"], behind)
    found = [at + page.shift for page in pages for at in page.crosses(6.0)]
    left = min(found, key=lambda at: at[0])
    origin = left - min(datums, key=lambda at: at[0])
    for datum in datums:
        check(f"{name}: a datum on paper", min(np.hypot(*(at - origin - datum)) for at in found), 0, 0.1)
    wanted = [spot for shape in SHAPES for spot in (spots(shape) if punched else [shape["at"]])]
    if masked:
        # A mask has its holes where they are cut away: round ones are measured by their outlines.
        for shape in SHAPES:
            if shape["form"] == "round":
                at = laid([shape["at"]], behind)[0] + origin
                whole = [c + page.shift for page in pages for c in page.round(shape["sizes"][0] / 2)]
                check(f"{name}: a hole of {shape['sizes'][0]} mm", min(np.hypot(*(c - at)) for c in whole), 0, 0.1)
        return
    for at in laid(wanted, behind):
        at = at + origin
        on = [page for page in pages if page.shows(at)]
        holds(f"{name}: a page shows the centre at {at}", bool(on))
        for page in on:
            crosses = page.crosses(4.0)
            off = min((np.hypot(*(cross + page.shift - at)) for cross in crosses), default=99)
            check(f"{name}: a centre on paper", off, 0, 0.1)


def outline(entity):
    """A polyline of a DXF file as a polygon: its arcs as arcs, not as curves near them."""
    points = []
    for piece in entity.virtual_entities():
        ends = [piece.dxf.start, piece.dxf.end] if piece.dxftype() == "LINE" else list(piece.flattening(1e-5))
        ends = [(v.x, v.y) for v in ends]
        # An arc is kept anticlockwise, whichever way the polyline runs.
        if points and np.hypot(*np.subtract(ends[0], points[-1])) > np.hypot(*np.subtract(ends[-1], points[-1])):
            ends.reverse()
        if not points and entity.vertices[0].dxf.location.vec2.distance(ends[0]) > 1e-6:
            ends.reverse()
        points += ends
    return Polygon(points)


def dxf(name, behind=False):
    document = ezdxf.readfile(FILES / name)
    audit = document.audit()
    holds(f"{name}: the audit finds nothing", not audit.errors and not audit.fixes)
    check(f"{name}: units by number (4 is millimetres)", [document.header["$INSUNITS"], document.header["$MEASUREMENT"]], [4, 1], 0)
    space = document.modelspace()
    layers = {layer.dxf.name for layer in document.layers}
    for layer in ("CUT", "MARK", "DATUM", "EDGE", "PIECES", "SQUARE_100_MM", "NOTES"):
        holds(f"{name}: layer {layer}", layer in layers and len(space.query(f'*[layer=="{layer}"]')) > 0)
    words = " ".join(text.plain_text() for text in space.query('TEXT[layer=="NOTES"]'))
    holds(f"{name}: says millimetres in words", "millimetres" in words and "100 mm by 100 mm" in words)
    holds(f"{name}: a letter beyond ASCII comes back", "Ø 62 mm" in words)
    square = space.query('*[layer=="SQUARE_100_MM"]')
    holds(f"{name}: one square, closed", len(square) == 1 and square[0].is_closed)
    low = np.min([v.dxf.location.vec2 for v in square[0].vertices], axis=0)
    high = np.max([v.dxf.location.vec2 for v in square[0].vertices], axis=0)
    check(f"{name}: the square", high - low, [100, 100], 1e-6)
    points = [point.dxf.location.vec2 for point in space.query('POINT[layer=="DATUM"]')]
    check(f"{name}: every datum", points, laid(PATTERN["datums"], behind), 1e-3)
    (edge,) = space.query('*[layer=="EDGE"]')
    check(f"{name}: the edge", [v.dxf.location.vec2 for v in edge.vertices], laid(PATTERN["edge"], behind), 1e-3)
    holds(f"{name}: the edge is open", not edge.is_closed)
    cuts = list(space.query('*[layer=="CUT"]'))
    shapes = [shape for shape in SHAPES if shape["form"] not in ("stud", "bracket")]
    holds(f"{name}: a cut for every hole", len(cuts) == len(shapes))
    for entity, shape in zip(cuts, shapes):
        centre = laid([shape["at"]], behind)[0]
        what = f"{name}: {shape['form']} at {shape['at']}"
        if shape["form"] == "round":
            holds(f"{what} is a circle", entity.dxftype() == "CIRCLE")
            check(f"{what}: centre", entity.dxf.center.vec2, centre, 1e-3)
            check(f"{what}: radius less half the kerf", entity.dxf.radius, (shape["sizes"][0] - KERF) / 2, 1e-4)
            continue
        holds(f"{what} is closed", entity.is_closed)
        if shape["form"] == "free":
            true = in_place(shape).buffer(-KERF / 2, quad_segs=ROUND)
        else:
            # Every side moves by half the kerf, and so does the radius of a rectangle's corners.
            less = [KERF, KERF, KERF / 2][: len(shape["sizes"])]
            true = in_place({**shape, "sizes": [size - by for size, by in zip(shape["sizes"], less)]})
        true = Polygon(laid(np.array(true.exterior.coords), behind))
        cut = outline(entity)
        check(f"{what}: area", cut.area, true.area, 0.02)
        check(f"{what}: nothing is cut elsewhere", cut.symmetric_difference(true).area, 0, 0.05)
        bulges = sum(abs(v.dxf.bulge) > 0 for v in entity.vertices)
        check(f"{what}: arcs", bulges, {"slot": 2, "rectangle": 4, "d_hole": 2, "free": 1}[shape["form"]], 0)
    ribs = list(space.query('*[layer=="THERE"]'))
    holds(f"{name}: what is there already stands on its own layer, whole", len(ribs) == len(PATTERN["there"]))
    for entity, row in zip(ribs, PATTERN["there"]):
        true = Polygon(laid(np.array(in_place(row["shape"][0]).exterior.coords), behind))
        check(f"{name}: what is there already", outline(entity).symmetric_difference(true).area, 0, 0.05)
    pieces = list(space.query('*[layer=="PIECES"]'))
    for entity, shape in zip(pieces, SHAPES):
        check(f"{name}: a piece, its cut outside", entity.dxf.radius, (shape["sizes"][0] + KERF) / 2, 1e-4)


def svg(name):
    root = ElementTree.parse(FILES / name).getroot()
    view = [float(x) for x in root.get("viewBox").split()]
    for side, wanted in (("width", view[2]), ("height", view[3])):
        holds(f"{name}: {side} in millimetres", root.get(side).endswith("mm"))
        check(f"{name}: one unit is one millimetre, {side}", float(root.get(side)[:-2]), wanted, 1e-9)
    paths = [(p.get("d"), p) for p in root.iter("{http://www.w3.org/2000/svg}path")]
    rounds = []
    for text, _ in paths:
        numbers = [float(x) for x in re.findall(r"-?\d+\.?\d*", text)]
        if text.count("A") == 2 and text.count("L") == 0 and "Z" in text:
            rounds.append((np.array([numbers[0] + numbers[7], -numbers[1] - numbers[8]]) / 2, numbers[2]))
    wanted = [shape for shape in SHAPES if shape["form"] == "round"]
    centres = laid([shape["at"] for shape in wanted], False)
    found = [[c for c, r in rounds if abs(r - shape["sizes"][0] / 2) < 1e-3] for shape in wanted]
    origin = found[0][0] - centres[0]
    for shape, centre, like in zip(wanted, centres, found):
        check(f"{name}: hole of {shape['sizes'][0]} mm", min(np.hypot(*(c - origin - centre)) for c in like), 0, 1e-3)
    boxes = []
    for text, path in paths:
        numbers = np.array(re.findall(r"-?\d+\.?\d*", text), float)
        if "A" not in text and len(numbers) == 10 and path.get("fill") == "none":
            boxes.append(np.ptp(numbers.reshape(-1, 2), axis=0))
    for size in ((100, 2), (2, 100), (101.6, 2), (2, 101.6)):
        holds(f"{name}: a bar of {size}", sum(np.all(np.abs(box - size) < 1e-3) for box in boxes) == 1)


pdf("marking-a4.pdf", "a4", 15)
pdf("marking-letter.pdf", "letter", 20)
pdf("corrected-a4.pdf", "a4", 12, true=(0.992, 1.005))
pdf("spraying-a4.pdf", "a4", 15, masked=True)
pdf("punching-letter.pdf", "letter", 15, punched=True)
pdf("behind-a4.pdf", "a4", 15, behind=True)
dxf("pattern.dxf")
dxf("behind.dxf", behind=True)
svg("pattern.svg")
for failure in failures:
    print(f"template files: {failure}", file=sys.stderr)
print(f"template files: {measured} measurements, {len(failures)} failed")
sys.exit(1 if failures or not measured else 0)
