"""The named arrangements as they are found: plain two-way and intermediate switches, before any module."""

from itertools import pairwise

from secondfix.electrical.multiway.graph import (
    Lever,
    Node,
    Source,
    Tie,
    Wiring,
    intermediate,
    one_way,
    two_way,
)
from secondfix.house import Arrangement

LAMP = "lamp"
_ENDS: Tie = ((LAMP, "switched"), (LAMP, "neutral"))


def as_found(arrangement: Arrangement, places: int, *, line_at_far_end: bool = False) -> Wiring:
    """The graph of an arrangement with its places numbered from the end where line comes in.

    ``line_at_far_end``: with *together* and *switch loop* the third core may carry line to the last
    switch instead of bringing the switched line back from it. Legal range: 2 to 8 places; *not joined*
    has one switch whatever the number, and *switched neutral* has two. Source: common practice, no source.
    Left out: other arrangements that work, cores that nobody uses.
    """
    if not 2 <= places <= 8:
        raise ValueError(f"2 to 8 places, not {places}")
    if arrangement is Arrangement.NOT_JOINED:
        return _one_switch()
    if arrangement is Arrangement.SWITCHED_NEUTRAL:
        return _switched_neutral()
    at_lamp = arrangement in {Arrangement.SWITCH_LOOP, Arrangement.FEED_AT_LUMINAIRE}
    enters = LAMP if at_lamp else "1"
    sources = (Source((enters, "line"), "C1", "line"), Source((enters, "neutral"), "C1", "neutral"))
    ties = [*_travellers(places, through_lamp=arrangement is Arrangement.FEED_AT_LUMINAIRE)]
    ties += _ends(arrangement, str(places), line_at_far_end=line_at_far_end)
    return Wiring(sources, tuple(ties), _ENDS, levers=_levers(places))


def _levers(places: int) -> tuple[Lever, ...]:
    last = str(places)
    middle = [
        intermediate((b, "in 1"), (b, "in 2"), (b, "out 1"), (b, "out 2")) for b in map(str, range(2, places))
    ]
    return (
        two_way(("1", "common"), ("1", "out 1"), ("1", "out 2")),
        *middle,
        two_way((last, "common"), (last, "in 1"), (last, "in 2")),
    )


def _travellers(places: int, *, through_lamp: bool) -> list[Tie]:
    """The two travellers of each run, and the third core, which passes the middle boxes unbroken."""
    ties: list[Tie] = []
    for a, b in pairwise(map(str, range(1, places + 1))):
        over = through_lamp and a == "1"
        for core in ("1", "2"):
            stops = [(a, f"out {core}"), *([(LAMP, f"through {core}")] if over else []), (b, f"in {core}")]
            ties += pairwise(stops)
        if not over:
            ties.append(((a, "out 3"), (b, "in 3")))
        if b != str(places):
            ties.append(((b, "in 3"), (b, "out 3")))
    return ties


def _ends(arrangement: Arrangement, last: str, *, line_at_far_end: bool) -> list[Tie]:
    """What the commons and the third core join, by where line comes in and the lamp's core goes out."""
    first, lamp_core = ("1", "common"), (LAMP, "switched")
    third_first, third_last = ("1", "out 3"), (last, "in 3")
    if arrangement is Arrangement.OPPOSITE_ENDS:
        neutral = [(("1", "neutral"), third_first), (third_last, (LAMP, "neutral"))]
        return [(("1", "line"), first), ((last, "common"), lamp_core), *neutral]
    if arrangement is Arrangement.FEED_AT_LUMINAIRE:
        return [((LAMP, "line"), first), ((last, "common"), third_last), (("2", "in 3"), lamp_core)]
    loop = arrangement is Arrangement.SWITCH_LOOP
    ties: list[Tie] = [(("1", "to lamp"), lamp_core), ((last, "common"), third_last)]
    ties.append(((LAMP, "line"), ("1", "line")) if loop else (("1", "neutral"), (LAMP, "neutral")))
    near, far = (("1", "line"), ("1", "to lamp"))
    if line_at_far_end:
        near, far = far, near
    return [*ties, (near, first), (far, third_first)]


def _one_switch() -> Wiring:
    line, neutral = Source(("1", "line"), "C1", "line"), Source(("1", "neutral"), "C1", "neutral")
    ties: tuple[Tie, ...] = ((("1", "to lamp"), _ENDS[0]), (("1", "neutral"), _ENDS[1]))
    return Wiring((line, neutral), ties, _ENDS, levers=(one_way(("1", "line"), ("1", "to lamp")),))


def _switched_neutral() -> Wiring:
    """Both switches choose between line and neutral, the lamp hangs between their commons: a danger."""
    line, neutral = Source(("1", "out 1"), "C1", "line"), Source(("1", "out 2"), "C1", "neutral")
    commons: list[Node] = [("1", "common"), ("2", "common")]
    ties = (*_travellers(2, through_lamp=False), *zip(commons, _ENDS, strict=True))
    return Wiring((line, neutral), ties, _ENDS, levers=_levers(2))
