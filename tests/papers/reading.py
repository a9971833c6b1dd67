"""What the tests read from a PDF: its words, where they stand, and its pages as pictures."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import pypdfium2 as pdfium
from numpy.typing import NDArray


@dataclass(frozen=True)
class Page:
    """One page: its size in points and its text."""

    width: float
    height: float
    text: str


@lru_cache(maxsize=8)
def pages(pdf: bytes) -> tuple[Page, ...]:
    """Every page of a PDF."""
    document = pdfium.PdfDocument(pdf)
    return tuple(
        Page(page.get_width(), page.get_height(), page.get_textpage().get_text_bounded()) for page in document
    )


def outside(pdf: bytes, *, left: float, other: float) -> list[tuple[int, str]]:
    """Characters that reach past the frame: ``left`` points from the left edge, ``other`` from the rest."""
    out = []
    for n, page in enumerate(pdfium.PdfDocument(pdf), 1):
        words = page.get_textpage()
        wide, high = page.get_width(), page.get_height()
        for i in range(words.count_rects()):
            edges = words.get_rect(i)
            if edges[0] < left or edges[1] < other or edges[2] > wide - other or edges[3] > high - other:
                out.append((n, words.get_text_bounded(*edges)))
    return out


def flat(text: str) -> str:
    """Text without any white space, hyphenation marks or the invisible places where long words may break."""
    return "".join(c for c in text if not c.isspace() and c not in "\u200b\ufffe\ufeff")


def words_of(pdf: bytes) -> str:
    """All words of a PDF, flattened: a text that wraps is found all the same."""
    return flat("".join(p.text for p in pages(pdf)))


def picture(pdf: bytes, page: int, *, scale: float = 3.0) -> NDArray[np.uint8]:
    """One page as grey values."""
    bitmap = pdfium.PdfDocument(pdf)[page].render(scale=scale, grayscale=True)
    grey = bitmap.to_numpy()
    return np.ascontiguousarray(grey[:, :, 0] if grey.ndim == 3 else grey)
