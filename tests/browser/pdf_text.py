"""Prints the size and the text of every page of a PDF as JSON: what a library that is not ours reads from it."""

import json
import sys

from pypdf import PdfReader

# Letters that a font draws as one.
LIGATURES = {0xFB00: "ff", 0xFB01: "fi", 0xFB02: "fl", 0xFB03: "ffi", 0xFB04: "ffl"}

pages = PdfReader(sys.argv[1]).pages
json.dump(
    [
        {
            "width": float(page.mediabox.width),
            "height": float(page.mediabox.height),
            "text": page.extract_text().translate(LIGATURES),
        }
        for page in pages
    ],
    sys.stdout,
)
