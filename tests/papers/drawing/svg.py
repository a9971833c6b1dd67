"""Reading the drawings back: texts with the room they take, shapes, well-formedness."""

import xml.etree.ElementTree as ET
from dataclasses import dataclass
from itertools import combinations

from secondfix.papers.font import face

NS = "{http://www.w3.org/2000/svg}"


@dataclass(frozen=True)
class Words:
    """One line of text: where its baseline starts, and its size."""

    text: str
    left: float
    y: float
    size: float
    width: float

    def over(self, other: "Words") -> bool:
        """Whether the letters of two lines cover each other (from the baseline to capital height)."""
        apart = self.left + self.width <= other.left or other.left + other.width <= self.left
        high = 0.66
        return not apart and self.y - high * self.size < other.y and other.y - high * other.size < self.y


def texts(svg: str) -> list[Words]:
    """Every line of text of a well-formed picture."""
    out = []
    for e in ET.fromstring(svg).iter(f"{NS}text"):
        size, words = float(e.attrib["font-size"]), e.text or ""
        wide = face("font-weight" in e.attrib).width(words, size)
        shift = {"start": 0.0, "middle": 0.5, "end": 1.0}[e.attrib.get("text-anchor", "start")]
        out.append(Words(words, float(e.attrib["x"]) - shift * wide, float(e.attrib["y"]), size, wide))
    return out


def collisions(svg: str) -> list[tuple[str, str]]:
    """Pairs of texts that cover each other."""
    return [(a.text, b.text) for a, b in combinations(texts(svg), 2) if a.over(b)]


def off_sheet(svg: str) -> list[str]:
    """Texts that reach past the picture's edges."""
    root = ET.fromstring(svg)
    wide, high = float(root.attrib["width"]), float(root.attrib["height"])
    return [
        t.text for t in texts(svg) if t.left < -0.5 or t.left + t.width > wide + 0.5 or not 0 < t.y < high
    ]


def plates(svg: str) -> list[tuple[float, float]]:
    """Centre of every plate (the rounded boxes of weight 1.4), left to right as drawn."""
    rects = [r for r in ET.fromstring(svg).iter(f"{NS}rect") if r.attrib["stroke-width"] == "1.4"]
    return [
        (
            float(r.attrib["x"]) + float(r.attrib["width"]) / 2,
            float(r.attrib["y"]) + float(r.attrib["height"]) / 2,
        )
        for r in rects
    ]
