"""A conversion as a neutral drawing: points in a row, cores between them before and after."""

from dataclasses import dataclass
from html import escape

from secondfix.electrical.multiway.as_found import LAMP
from secondfix.electrical.multiway.conductors import Role
from secondfix.electrical.multiway.conversion import Conversion
from secondfix.electrical.multiway.words import point_words


@dataclass(frozen=True, slots=True)
class DrawnPoint:
    """A box or the luminaire: its words, and what stands there before and after."""

    id: str
    words: str
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class DrawnCore:
    """A core from one point to its neighbour, with its label before and after; capped at both ends or not."""

    a: str
    b: str
    before: str
    after: str
    marked: bool
    capped: bool


@dataclass(frozen=True, slots=True)
class Drawn:
    """All that a drawing needs; nothing in it is told by colour."""

    title: str
    points: tuple[DrawnPoint, ...]
    cores: tuple[DrawnCore, ...]


def drawn(made: Conversion) -> Drawn:
    """The drawing of a conversion that is possible (``ValueError`` otherwise)."""
    if not made.possible:
        raise ValueError(made.why_not)
    boxes = [p for p in made.chain.points if p != LAMP]
    points = tuple(
        DrawnPoint(p, point_words(p, made.names), _before(made, p, boxes), _after(made, p))
        for p in made.chain.points
    )
    cores = tuple(
        DrawnCore(
            c.a,
            c.b,
            c.core.was.value,
            c.becomes.value,
            c.altered and c.becomes is not Role.CAPPED,
            c.becomes is Role.CAPPED,
        )
        for c in made.changes
    )
    return Drawn(f"Module at {point_words(made.wish.module, made.names)}", points, cores)


def _before(made: Conversion, point: str, boxes: list[str]) -> str:
    if point == LAMP:
        return "lamp"
    if not made.chain.runs:
        return "switch" if point == made.wish.module else "nothing"
    return "two-way" if point in {boxes[0], boxes[-1]} else "intermediate"


def _after(made: Conversion, point: str) -> str:
    if point == made.wish.module:
        return "module, lamp" if point == LAMP else "module"
    if point == LAMP:
        return "lamp"
    return "extension unit" if point in made.wish.inputs else "radio button"


_STEP, _ROW, _LEFT, _TOP = 240, 22, 20, 46  # pixels of a drawing; labels of 10.5 as on all sheets


def as_svg(picture: Drawn) -> str:
    """The drawing as SVG text: thin ink lines, before above after, a bar at a capped end, * for a mark."""
    rows = max((_at_run(picture, c)[1] for c in picture.cores), default=0) + 1
    height = _TOP + rows * _ROW + 24
    width = 2 * _LEFT + _STEP * (len(picture.points) - 1) + 110
    parts = [
        *_half(picture, after=False, top=0, height=height),
        *_half(picture, after=True, top=height, height=height),
    ]
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {2 * height}" role="img" '
        f'font-size="10.5" fill="currentColor" stroke="none">'
        f"<title>{escape(picture.title)}</title>{''.join(parts)}</svg>"
    )


def _at_run(picture: Drawn, core: DrawnCore) -> tuple[int, int]:
    """The run that a core belongs to, and its place in it."""
    ids = [p.id for p in picture.points]
    same = [c for c in picture.cores if (c.a, c.b) == (core.a, core.b)]
    return ids.index(core.a), next(i for i, c in enumerate(same) if c is core)


def _half(picture: Drawn, *, after: bool, top: int, height: int) -> list[str]:
    parts = [_text(_LEFT, top + 14, "after" if after else "before")]
    for i, point in enumerate(picture.points):
        x = _LEFT + i * _STEP
        parts.append(
            f'<rect x="{x}" y="{top + 22}" width="110" height="{height - 34}" fill="none" '
            'stroke="currentColor" stroke-width="1.4"/>'
        )
        parts.append(_text(x + 6, top + 36, point.words))
        parts.append(_text(x + 6, top + 50, point.after if after else point.before))
    for core in picture.cores:
        parts += _core(picture, core, after=after, top=top)
    return parts


def _core(picture: Drawn, core: DrawnCore, *, after: bool, top: int) -> list[str]:
    i, row = _at_run(picture, core)
    x1, x2, y = _LEFT + i * _STEP + 110, _LEFT + (i + 1) * _STEP, top + _TOP + row * _ROW
    label = f"{core.after}{' *' if core.marked else ''}" if after else core.before
    if after and core.capped:
        x1, x2 = x1 + 8, x2 - 8
    line = f'<path d="M{x1} {y}H{x2}" stroke="currentColor" stroke-width="0.8" fill="none"/>'
    caps = [
        f'<path d="M{x} {y - 5}V{y + 5}" stroke="currentColor" stroke-width="2"/>'
        for x in ((x1, x2) if after and core.capped else ())
    ]
    return [line, *caps, _text(x1 + 4, y - 4, label)]


def _text(x: int, y: int, words: str) -> str:
    return f'<text x="{x}" y="{y}">{escape(words)}</text>'
