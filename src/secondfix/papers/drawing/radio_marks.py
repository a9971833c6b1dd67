"""Who stands where in a picture of radio, what is told of each, and the marks of a case."""

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from secondfix.house import Schedule
from secondfix.papers.drawing.canvas import Canvas, Xy
from secondfix.papers.drawing.spots import Spot, spots_of
from secondfix.papers.palette import FITTING, PLATE
from secondfix.radio import Case, CaseKind, Reach, Word

RING = 12.0
FALLS, GONE, RISES, PUT = "falls", "no power", "rises", "put here"
_STATED = {CaseKind.CONTROLLER_MOVED: "controller", CaseKind.SOCKET_HELPS: "repeater"}


@dataclass(frozen=True, slots=True)
class Stand:
    """One box or place with its stations: devices of the network, or the network's own id for its controller.

    ``marks`` are what a case does to it; ``words`` of its devices, each once.
    """

    spot: Spot
    storey: str | None
    stations: tuple[str, ...]
    words: tuple[Word, ...]
    marks: tuple[str, ...] = ()

    @property
    def id(self) -> str:
        """The box or place."""
        return self.spot.id

    @property
    def named(self) -> str:
        """What stands beside it: its devices, or that the controller is there."""
        return ", ".join(self.stations) or self.id

    @property
    def beside(self) -> tuple[str, ...]:
        """Second lines of its label: marks, and words but likely."""
        return (*self.marks, *(w.value for w in self.words if w is not Word.LIKELY))

    @property
    def tells(self) -> str:
        """The same for those who do not see it."""
        return ", ".join([*self.marks, *(w.value for w in self.words)]) or "controller"


def stands_of(
    schedule: Schedule, answer: Reach, network: str, words: Mapping[str, Word], case: Case | None
) -> list[Stand]:
    """Every place with a device of the network or its controller, and what a case puts somewhere."""
    house = schedule.house
    told = {d.id: words.get(d.id, d.word) for d in answer.devices if d.network == network}
    at: dict[str, list[str]] = {}
    controller = house.networks[network].controller_place
    if controller:
        at[controller] = [network]
    for device in told:
        at.setdefault(schedule.place_of_device(device), []).append(device)
    spots = {s.id: s for s in spots_of(schedule)}
    moved = case.id if case and case.kind in _STATED else None
    out = []
    for place in (*at, *([moved] if moved and moved not in at else [])):
        stations, spot = tuple(at.get(place, ())), spots[place]
        if case and place == moved:
            spot = replace(spot, symbol=_STATED[case.kind])
        here = tuple(dict.fromkeys(told[s] for s in stations if s in told))
        marks = tuple(dict.fromkeys(_marks(stations, case))) + ((PUT,) if case and place == moved else ())
        out.append(Stand(spot, house.rooms[spot.room].storey, stations, here, marks))
    return out


def _marks(stations: tuple[str, ...], case: Case | None) -> Iterator[str]:
    for key in stations if case else ():
        assert case is not None
        for mark, ids in ((GONE, case.gone), (FALLS, case.falls), (RISES, case.rises)):
            if key in ids:
                yield mark


def draw_ring_hatch(canvas: Canvas) -> None:
    """The hatch of what falls, in the accent."""
    stroke = f'<path d="M0 0V4" stroke="{canvas.palette.accent}" stroke-width="1"/>'
    canvas.parts.append(
        '<pattern id="falls" width="4" height="4" patternUnits="userSpaceOnUse" '
        f'patternTransform="rotate(45)">{stroke}</pattern>'
    )


def draw_ring(canvas: Canvas, at: Xy, stand: Stand) -> None:
    """Beneath the symbol: a hatched disc for what falls, a bare ring for what rises."""
    if FALLS in stand.marks:
        draw_disc(canvas, at)
    elif RISES in stand.marks:
        canvas.circle(at, RING, weight=PLATE)


def draw_disc(canvas: Canvas, at: Xy) -> None:
    """The hatched disc alone."""
    canvas.circle(at, RING, weight=0, fill=canvas.palette.paper)
    canvas.circle(at, RING, weight=PLATE, colour=canvas.palette.accent, fill="url(#falls)")


def draw_crossed(canvas: Canvas, at: Xy, stand: Stand) -> None:
    """Over the symbol: a cross through what has no power."""
    if GONE in stand.marks:
        draw_cross(canvas, at)


def draw_cross(canvas: Canvas, at: Xy) -> None:
    """The cross alone."""
    d = RING * math.sqrt(0.5)
    for s in (1, -1):
        canvas.line(
            (at[0] - d, at[1] - s * d), (at[0] + d, at[1] + s * d), weight=2.0, colour=canvas.palette.accent
        )


def draw_far_end(canvas: Canvas, at: Xy, *, above: bool) -> None:
    """Where a link to another storey ends: an arrow up or down in a small circle."""
    x, y = at
    turn = -1 if above else 1
    canvas.circle(at, 5.5, weight=FITTING, fill=canvas.palette.paper)
    canvas.path(
        f"M{x:.2f} {y - 3 * turn:.2f}v{6 * turn}m-2.5 {-2.5 * turn}l2.5 {2.5 * turn}l2.5 {-2.5 * turn}"
    )
