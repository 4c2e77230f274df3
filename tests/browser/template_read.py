"""Reads template files back as a cutter's or a printer's program would, and says in JSON what is in them. Millimetres."""

import json
import sys

import ezdxf
import pdfplumber

MM = 25.4 / 72


def pages(file):
    """Each page's size, its text without spaces, and the frames that are 2 mm across: the bars."""
    found = []
    for page in pdfplumber.open(file).pages:
        frames = [(r["width"] * MM, r["height"] * MM) for r in page.rects if not r["fill"]]
        along = sorted(w for w, h in frames if abs(h - 2) < 0.1 and w > 50)
        up = sorted(h for w, h in frames if abs(w - 2) < 0.1 and h > 50)
        found.append({
            "size": [float(page.width) * MM, float(page.height) * MM],
            "text": "".join(page.extract_text().split()),
            "along": along,
            "up": up,
        })
    return found


def cutter(file):
    """Units, circles to cut (x, y, radius), outlines to cut, pieces, the square's sides, and the words."""
    document = ezdxf.readfile(file)
    space = document.modelspace()
    square = space.query('POLYLINE[layer=="SQUARE_100_MM"]')[0]
    corners = [v.dxf.location.vec2 for v in square.vertices]
    return {
        "faults": len(document.audit().errors),
        "units": document.header["$INSUNITS"],
        "circles": [[*c.dxf.center.vec2, c.dxf.radius] for c in space.query('CIRCLE[layer=="CUT"]')],
        "outlines": len(space.query('POLYLINE[layer=="CUT"]')),
        "pieces": len(space.query('*[layer=="PIECES"]')),
        "square": [max(c.x for c in corners) - min(c.x for c in corners), max(c.y for c in corners) - min(c.y for c in corners)],
        "words": " ".join(t.plain_text() for t in space.query('TEXT[layer=="NOTES"]')),
    }


file = sys.argv[1]
print(json.dumps(pages(file) if file.endswith(".pdf") else cutter(file)))
