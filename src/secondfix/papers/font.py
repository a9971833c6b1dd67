"""The one type family: where its files lie, which characters it draws and how wide.

Read from the font's own ``cmap``, ``head``, ``hhea`` and ``hmtx`` tables (ISO/IEC 14496-22); only
the two subtable formats that hold Unicode in practice, 4 and 12, are read.
"""

import struct
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

FAMILY = "Source Sans Pro"
_TEXT_FACE = "SourceSansPro-Regular.ttf"
_STRONG_FACE = "SourceSansPro-Semibold.ttf"


@dataclass(frozen=True, slots=True)
class Face:
    """Advance width in 1/1000 em of every character that the face draws."""

    advance: dict[int, float]

    def width(self, text: str, size: float) -> float:
        """Width of one line of text, kerning left out; an unknown character counts one em."""
        return sum(self.advance.get(ord(c), 1000.0) for c in text) * size / 1000


def font_folder() -> Path:
    """The folder of the family's files, from the package that carries them."""
    import font_source_sans_pro  # noqa: PLC0415 - looks through its folder on import: only when wanted

    return Path(font_source_sans_pro.font_directory)


@cache
def face(strong: bool = False) -> Face:
    """The text face, or the strong one."""
    return read_face((font_folder() / (_STRONG_FACE if strong else _TEXT_FACE)).read_bytes())


@cache
def covered(folders: Sequence[Path] = ()) -> frozenset[int]:
    """Every character that the family or a font of the further ``folders`` draws."""
    files = (p for f in folders for p in sorted(f.rglob("*")) if p.suffix.lower() in {".ttf", ".otf"})
    further = (read_face(p.read_bytes()).advance.keys() for p in files)
    return frozenset(face().advance).union(*further)


def read_face(data: bytes) -> Face:
    """The face of a TrueType or OpenType file (ValueError if it is neither)."""
    if data[:4] not in {b"\0\1\0\0", b"OTTO", b"true"}:
        raise ValueError("not a TrueType or OpenType font")
    count = struct.unpack_from(">H", data, 4)[0]
    entries = [struct.unpack_from(">4s4xII", data, 12 + 16 * i) for i in range(count)]
    tables = {tag: data[start : start + length] for tag, start, length in entries}
    units = struct.unpack_from(">H", tables[b"head"], 18)[0]
    long_count = struct.unpack_from(">H", tables[b"hhea"], 34)[0]
    widths = struct.unpack_from(f">{2 * long_count}H", tables[b"hmtx"])[::2]
    glyphs = dict(_glyphs(tables[b"cmap"]))
    return Face({c: 1000 * widths[min(g, long_count - 1)] / units for c, g in glyphs.items() if g})


def _glyphs(cmap: bytes) -> Iterator[tuple[int, int]]:
    """Pairs of character and glyph from every Unicode subtable."""
    for i in range(struct.unpack_from(">H", cmap, 2)[0]):
        platform, start = struct.unpack_from(">H2xI", cmap, 4 + 8 * i)
        kind = struct.unpack_from(">H", cmap, start)[0]
        if platform in {0, 3} and kind == 4:
            yield from _segments(cmap[start:])
        elif platform in {0, 3} and kind == 12:
            for group in range(struct.unpack_from(">I", cmap, start + 12)[0]):
                first, last, glyph = struct.unpack_from(">III", cmap, start + 16 + 12 * group)
                yield from ((c, glyph + c - first) for c in range(first, last + 1))


def _segments(table: bytes) -> Iterator[tuple[int, int]]:
    """Format 4: segments with a delta, or with a range of offsets into the glyph array behind it."""
    half = struct.unpack_from(">H", table, 6)[0]
    columns = [struct.unpack_from(f">{half // 2}H", table, at) for at in (14, 16 + half, 16 + 2 * half)]
    for n, (last, first, delta) in enumerate(zip(*columns, strict=True)):
        at = 16 + 3 * half + 2 * n
        offset = struct.unpack_from(">H", table, at)[0]
        for c in range(first, min(last, 0xFFFE) + 1):
            glyph = c if not offset else struct.unpack_from(">H", table, at + offset + 2 * (c - first))[0]
            if glyph:
                yield c, (glyph + delta) % 65536
