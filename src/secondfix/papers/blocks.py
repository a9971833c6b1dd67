"""The few kinds of block that sheets are made of, as plain values for the template.

Nothing here is formatted into Typst's source: the template reads these values as JSON.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

Block = dict[str, Any]
Cell = str | dict[str, Any]


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: it starts on a new page and may run on. ``number`` is as in ``S3/07``."""

    number: str
    title: str
    says: str
    blocks: Sequence[Block]
    pictures: dict[str, str] = field(default_factory=dict)


def column(head: str, *, fr: float = 0, mm: float = 0, align: str = "left") -> Block:
    """A column of a table: a share of the width, a fixed width, or as wide as its words."""
    return {"head": head, "fr": fr, "mm": mm, "align": align}


def table(
    columns: Sequence[Block],
    rows: Iterable[Sequence[Cell]],
    *,
    row_mm: float = 0,
    dense: bool = False,
    large: bool = False,
) -> Block:
    """A table whose head stands again on each page.

    ``row_mm``: least height of a row that is written in; ``dense``: small, its rows close; ``large``: as
    large as steps that are read at arm's length.
    """
    body = [list(r) for r in rows]
    size = {"dense": dense, "large": large}
    return {"kind": "table", "columns": list(columns), "rows": body, "row_mm": row_mm, **size}


def strong(words: str) -> Cell:
    """Words in the strong face."""
    return {"words": words, "style": "strong"}


def ident(words: str) -> Cell:
    """An id at the head of a row: strong, and broken anywhere rather than leave its narrow column."""
    return {"words": words, "style": "id"}


def soft(words: str) -> Cell:
    """Second text."""
    return {"words": words, "style": "soft"}


def lines(*parts: Cell) -> Cell:
    """Several lines in one cell."""
    return {"lines": [p for p in parts if p]}


def marked(shape: str, words: str) -> Cell:
    """A legend's shape before its word."""
    return {"words": words, "shape": shape, "style": "strong"}


def across(words: str) -> Cell:
    """A row of its own across the whole table, in the strong face; the only cell of its row."""
    return {"words": words, "style": "strong", "across": True}


def tick_box() -> Cell:
    """An empty box to tick."""
    return {"box": True}


def para(words: str, *, style: str = "") -> Block:
    """A paragraph: plain, soft or strong."""
    return {"kind": "para", "words": words, "style": style}


def heading(words: str) -> Block:
    """A heading within a sheet."""
    return {"kind": "heading", "words": words}


def steps(items: Sequence[str], *, large: bool = False) -> Block:
    """Numbered steps."""
    return {"kind": "steps", "items": list(items), "large": large}


def bullets(items: Sequence[str], *, large: bool = False) -> Block:
    """A plain list."""
    return {"kind": "bullets", "items": list(items), "large": large}


def cautions(title: str, items: Sequence[str]) -> Block:
    """A framed caution, the one thing in the accent."""
    return {"kind": "cautions", "title": title, "items": list(items)}


def notes(items: Sequence[Block], *, columns: int = 3) -> Block:
    """Numbered notes; each has shape, number, head, says, soft."""
    return {"kind": "notes", "items": list(items), "columns": columns}


def picture(file: str, alt: str, *, width: float, height: float) -> Block:
    """An SVG of the sheet's ``pictures``, its size in units of 1/96 inch."""
    return {"kind": "picture", "file": file, "alt": alt, "width_pt": width * 0.75, "height_pt": height * 0.75}


def write_on(labels: Sequence[str]) -> Block:
    """Labelled lines to write on."""
    return {"kind": "write_on", "labels": list(labels)}


def beside(left: Sequence[Block], right: Sequence[Block], *, shares: tuple[float, float]) -> Block:
    """Two groups side by side where that saves a page, else one beneath the other."""
    return {"kind": "beside", "parts": [list(left), list(right)], "shares": list(shares)}


def flanked(block: Block, side: Block, *, share: float) -> Block:
    """A picture with notes at its right; ``share`` is the notes' part of the width."""
    return {"kind": "flanked", "block": block, "side": side, "share": share}


def together(blocks: Sequence[Block]) -> Block:
    """Blocks that stay on one page; for no more than a page holds."""
    return {"kind": "together", "blocks": list(blocks)}


def cover(house: str, title: str, pairs: Sequence[tuple[str, str]], still_open: Sequence[Cell]) -> Block:
    """The face of a pack, with what is open in words."""
    facts = [list(p) for p in pairs]
    return {"kind": "cover", "house": house, "title": title, "pairs": facts, "open": list(still_open)}
