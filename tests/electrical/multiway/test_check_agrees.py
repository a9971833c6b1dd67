"""Brute force: on every small light, rules and walked wirings agree on what works and what is dangerous."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import product

import pytest

from secondfix.electrical.multiway import LAMP, Wish, as_found
from secondfix.electrical.multiway.conductors import chain_of
from secondfix.electrical.multiway.graph import Module, Source, Wiring, one_way
from secondfix.findings import Outcome, Severity
from secondfix.house import Arrangement
from tests.electrical.multiway.converted import wirings
from tests.electrical.multiway.lights import asked, light
from tests.electrical.multiway.oracle import dangerous, works


def contact(*, beside: bool, foreign: bool) -> Wiring:
    """A module with a contact of another place in line with it, or beside its output."""
    line, neutral, out, between = (("1", n) for n in ("line", "neutral", "out", "between"))
    sources = [Source(line, "C1", "line"), Source(neutral, "C1", "neutral")]
    comes = line
    if foreign:
        comes = ("2", "line")
        sources.append(Source(comes, "C2", "line"))
    lever = one_way(comes, out if beside else between)
    module = Module(line if beside else between, out, neutral)
    return Wiring(tuple(sources), (), (out, neutral), levers=(lever,), modules=(module,))


def possible(
    arrangement: Arrangement, others: str, places: int, wish: Wish, *, foreign: bool
) -> Iterator[Wiring]:
    """The wirings that the document leaves open."""
    if arrangement is Arrangement.SWITCHED_NEUTRAL:
        yield as_found(arrangement, 2)
    elif others in {"in_series", "in_parallel"}:
        yield contact(beside=others == "in_parallel", foreign=foreign)
    else:
        chain = chain_of(arrangement, places)
        yield from wirings(chain, wish, foreign=foreign and bool(wish.inputs), wanted_only=True)


@dataclass(frozen=True)
class Light:
    """One small light, as both sides are asked about it."""

    arrangement: Arrangement
    others: str
    places: int
    module: str
    needs: bool
    neutral_at: frozenset[str]
    foreign: bool


@cache
def walked(
    arrangement: Arrangement, others: str, places: int, wish: Wish, foreign: bool
) -> tuple[bool, bool]:
    """Whether some wiring that is left open works without danger; whether all of them are dangerous.

    That somebody could assign the cores wrongly is no finding: dangerous is what no assignment avoids.
    """

    def open_() -> Iterator[Wiring]:
        return possible(arrangement, others, places, wish, foreign=foreign)

    sound = any(works(w) and not dangerous(w) for w in open_())
    return sound, not sound and all(dangerous(w) for w in open_())


def agrees(light_: Light) -> tuple[bool, bool]:
    """Whether it can work, whether it is dangerous; both by the rules and by the walk."""
    boxes = frozenset(str(n) for n in range(1, light_.places + 1))
    inputs = boxes - {light_.module} if light_.others == "input" else frozenset[str]()
    wish = Wish(light_.module, light_.needs, inputs, neutral_at=light_.neutral_at)
    foreign = light_.foreign and light_.others != "radio"
    fine, danger = walked(light_.arrangement, light_.others, light_.places, wish, foreign)
    plain = light(
        arrangement=light_.arrangement.value,
        others=light_.others,
        places=light_.places,
        module=light_.module,
        needs_neutral=light_.needs,
        neutral_at=light_.neutral_at,
        foreign=light_.foreign,
    )
    found = asked(plain)
    if light_.others in {"input", "radio"}:
        assert all(f.outcome is not Outcome.CANNOT_TELL for f in found)
    failing = [f for f in found if f.outcome is Outcome.FAILS]
    assert (not failing) == fine, light_
    assert any(f.severity is Severity.DANGER for f in failing) == danger, light_
    return fine, danger


def cases(places: int) -> Iterator[Light]:
    acts = ("input", "radio", "in_series", "in_parallel")
    boxes = [str(n) for n in range(1, places + 1)]
    neutrals = [frozenset[str](), frozenset(boxes[:1]), frozenset(boxes[-1:]), frozenset(boxes)]
    for arrangement, others, module in product(Arrangement, acts, [*boxes, LAMP]):
        for needs, neutral_at, foreign in product((True, False), neutrals, (False, True)):
            if module != LAMP or needs:  # the module at the luminaire of these houses needs a neutral
                yield Light(arrangement, others, places, module, needs, neutral_at, foreign)


def test_two_places() -> None:
    seen = Counter(agrees(case) for case in cases(2))
    assert min(seen[True, False], seen[False, False], seen[False, True]) > 30
    assert seen[True, True] == 0


@pytest.mark.deep
def test_three_places() -> None:
    seen = Counter(agrees(case) for case in cases(3))
    assert min(seen[True, False], seen[False, False], seen[False, True]) > 30
