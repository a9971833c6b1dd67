"""What a drawing of a conversion shows: points in a row, cores between them before and after."""

from dataclasses import dataclass

from secondfix.electrical.multiway.as_found import LAMP
from secondfix.electrical.multiway.conductors import Role
from secondfix.electrical.multiway.conversion import Conversion
from secondfix.electrical.multiway.words import point_words


@dataclass(frozen=True, slots=True)
class DrawnPoint:
    """A box or the luminaire: its words, what stands there before and after, whether line comes in there."""

    id: str
    words: str
    before: str
    after: str
    supplied: bool


@dataclass(frozen=True, slots=True)
class DrawnCore:
    """A core from one point to its neighbour, with its label before and after; capped at both ends or not.

    ``number`` counts the cores of the drawing, in the order of ``Conversion.changes``.
    """

    number: int
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
        DrawnPoint(
            p,
            point_words(p, made.names),
            _before(made, p, boxes),
            _after(made, p),
            p == made.chain.line_at,
        )
        for p in made.chain.points
    )
    cores = tuple(
        DrawnCore(
            n,
            c.a,
            c.b,
            c.core.was.value,
            c.becomes.value,
            c.altered and c.becomes is not Role.CAPPED,
            c.becomes is Role.CAPPED,
        )
        for n, c in enumerate(made.changes, 1)
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
