"""Brute force: all wirings of small circuits, judged by the graph and by walking every path."""

from collections import Counter
from collections.abc import Iterator
from itertools import permutations

import pytest

from secondfix.electrical.multiway import DANGERS, Trouble, as_found, judge
from secondfix.electrical.multiway.graph import (
    Module,
    Node,
    Push,
    Source,
    Wiring,
    intermediate,
    one_way,
    two_way,
)
from secondfix.house import Arrangement
from tests.electrical.multiway.oracle import dangerous, works

TERMINALS = ["L", "N", "A.c", "A.1", "A.2", "B.c", "B.1", "B.2", "x", "y"]
# To exchange these gives the same circuit: throws of a switch, ends of the lamp, the two switches.
ALIKE = [("A.1", "A.2"), ("B.1", "B.2"), ("x", "y"), ("A.c", "B.c")]


def partitions(names: list[str], most: int) -> Iterator[dict[str, int]]:
    """Every way to join terminals into nets, exchanges of like terminals once; line and neutral apart."""

    def place(i: int, nets: int, at: dict[str, int]) -> Iterator[dict[str, int]]:
        if i == len(names):
            yield dict(at)
            return
        for net in range(min(nets + 1, most)):
            at[names[i]] = net
            if names[i] == "N" and net == 0:
                continue
            if all(at[a] <= at[b] for a, b in ALIKE if b == names[i]):
                yield from place(i + 1, max(nets, net + 1), at)
        del at[names[i]]

    yield from place(0, 0, {})


def two_places(nets: dict[str, int]) -> Wiring:
    at: dict[str, Node] = {name: ("1", str(net)) for name, net in nets.items()}
    levers = (two_way(at["A.c"], at["A.1"], at["A.2"]), two_way(at["B.c"], at["B.1"], at["B.2"]))
    sources = (Source(at["L"], "C1", "line"), Source(at["N"], "C1", "neutral"))
    return Wiring(sources, (), (at["x"], at["y"]), levers=levers)


def agree(wiring: Wiring) -> tuple[bool, bool]:
    found = judge(wiring)
    assert (found.works, bool(found.dangers)) == (works(wiring), dangerous(wiring)), wiring
    return found.works, bool(found.dangers)


def test_two_places_up_to_five_nets() -> None:
    """Sound are the two-way circuit, in its likenesses, and line and load at both ends; nothing else."""
    seen, sound = Counter[tuple[bool, bool]](), set()
    for nets in partitions(TERMINALS, 5):
        wiring = two_places(nets)
        told = agree(wiring)
        seen[told] += 1
        if told == (True, False) and not judge(wiring).troubles:
            sound.add(shape(nets))
    assert sum(seen.values()) > 3_000
    assert seen[True, True] >= 1  # works, and leaves line at the dark lamp
    assert sound == {"travellers", "both ends"}


@pytest.mark.deep
def test_two_places_all_wirings() -> None:
    seen = Counter(agree(two_places(nets)) for nets in partitions(TERMINALS, 10))
    assert sum(seen.values()) > 7_000
    assert seen[True, False] >= 1


def shape(nets: dict[str, int]) -> str:
    """Travellers: the throws of one switch lead to those of the other, and nowhere else."""
    throws = [{nets["A.1"], nets["A.2"]}, {nets["B.1"], nets["B.2"]}]
    ends = {nets[n] for n in ("L", "N", "x", "y")}
    if throws[0] == throws[1] and len(throws[0]) == 2 and not throws[0] & ends:
        return "travellers"
    return "both ends" if nets["A.c"] == nets["B.c"] and throws[0] == throws[1] else "other"


def three_places(first: tuple[str, ...], middle: tuple[str, ...], last: tuple[str, ...]) -> Wiring:
    """Terminals on the conductors of their boxes; line and the lamp's core reach both end boxes."""
    core = {c: ("1", c) for c in ("t", "u", "r", "L", "lamp", "v", "w")}
    return Wiring(
        (Source(core["L"], "C1", "line"), Source(("lamp", "n"), "C1", "neutral")),
        (),
        (core["lamp"], ("lamp", "n")),
        levers=(
            two_way(*(core[c] for c in first)),
            intermediate(*(core[c] for c in middle)),
            two_way(*(core[c] for c in last)),
        ),
    )


def three_place_wirings() -> Iterator[Wiring]:
    """Every terminal on a conductor of its own in its box."""
    for first in permutations(("t", "u", "L", "lamp"), 3):
        for middle in permutations(("t", "u", "v", "w")):
            for last in permutations(("v", "w", "L", "lamp"), 3):
                yield three_places(first, middle, last)


def test_three_places_with_an_intermediate_between() -> None:
    every = list(three_place_wirings())
    seen = Counter(agree(wiring) for wiring in every[::6])
    assert seen[True, False] > 0
    assert seen[False, False] > 0


@pytest.mark.deep
def test_three_places_all_wirings() -> None:
    seen = Counter(agree(wiring) for wiring in three_place_wirings())
    assert sum(seen.values()) == 24 * 24 * 24
    assert seen[True, False] > 0


@pytest.mark.parametrize("arrangement", Arrangement)
@pytest.mark.parametrize("places", [2, 3, 4, 5])
@pytest.mark.parametrize("far", [False, True])
def test_every_named_arrangement_works_and_only_the_switched_neutral_is_dangerous(
    arrangement: Arrangement, places: int, far: bool
) -> None:
    worked, danger = agree(as_found(arrangement, places, line_at_far_end=far))
    assert worked
    assert danger == (arrangement is Arrangement.SWITCHED_NEUTRAL)


L, N, OUT, X, S = ("1", "L"), ("1", "N"), ("1", "out"), ("2", "x"), ("1", "S")
FEED = (Source(L, "C1", "line"), Source(N, "C1", "neutral"))
ONE = Module(L, OUT, N, (S,))
OTHER = Source(("2", "L2"), "C2", "line")

SPOILT: dict[str, tuple[Wiring, set[Trouble]]] = {
    "one module with an extension": (
        Wiring(FEED, (), (OUT, N), modules=(ONE,), pushes=(Push(L, S),)), set(),
    ),
    "a module that needs no neutral, through its lamp": (
        Wiring(FEED, (), (OUT, N), modules=(Module(L, OUT),)), set(),
    ),
    "a plain electronic switch in place of one two-way": (
        Wiring(FEED, (), (OUT, N), levers=(one_way(L, X),), modules=(Module(X, OUT, N),)),
        {Trouble.SUPPLY_LOST},
    ),
    "two modules in series": (
        Wiring(FEED, (), (OUT, N), modules=(Module(L, X, N), Module(X, OUT, N))),
        {Trouble.SERIES, Trouble.SUPPLY_LOST},
    ),
    "two outputs in parallel": (
        Wiring(FEED, (), (OUT, N), modules=(Module(L, OUT, N), Module(L, OUT, N))), {Trouble.PARALLEL},
    ),
    "a plain contact beside the output": (
        Wiring(FEED, (), (OUT, N), levers=(one_way(L, OUT),), modules=(Module(L, OUT, N),)),
        {Trouble.PARALLEL},
    ),
    "an extension of another circuit": (
        Wiring((*FEED, OTHER), (), (OUT, N), modules=(ONE,), pushes=(Push(OTHER.at, S),)),
        {Trouble.OTHER_CIRCUIT, Trouble.LIVE_WHEN_ISOLATED},
    ),
    "a borrowed neutral": (
        Wiring((FEED[0], Source(N, "C2", "neutral")), (), (OUT, N), modules=(Module(L, OUT, N),)),
        {Trouble.BORROWED_NEUTRAL},
    ),
    "two neutrals joined": (
        Wiring((*FEED, Source(N, "C2", "neutral")), (), (OUT, N), modules=(Module(L, OUT, N),)),
        {Trouble.CIRCUITS_JOINED, Trouble.BORROWED_NEUTRAL},
    ),
    "a neutral that hangs free": (
        Wiring(FEED, (), (OUT, X), modules=(Module(L, OUT, N),)),
        {Trouble.FLOATING_NEUTRAL, Trouble.LIVE_LAMP},
    ),
    "a module without neutral": (
        Wiring(FEED, (), (OUT, N), modules=(Module(L, OUT, X),)), {Trouble.SUPPLY_LOST},
    ),
    "a push that nobody hears": (
        Wiring(FEED, (), (OUT, N), modules=(ONE,), pushes=(Push(L, X),)), {Trouble.DEAD_INPUT},
    ),
    "line on the signal": (
        Wiring(FEED, ((L, S),), (OUT, N), modules=(ONE,), pushes=(Push(L, S),)), {Trouble.DEAD_INPUT},
    ),
    "line and neutral joined": (
        Wiring(FEED, ((OUT, N),), (OUT, N), modules=(Module(L, OUT, N),)), {Trouble.SHORT},
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", SPOILT)
def test_each_trouble_is_judged_by_its_name(name: str) -> None:
    wiring, expected = SPOILT[name]
    found = judge(wiring)
    assert expected <= found.troubles
    assert not expected or found.troubles - expected <= {
        Trouble.LIVE_LAMP, Trouble.FLOATING_NEUTRAL, Trouble.PARALLEL, Trouble.SUPPLY_LOST
    }  # fmt: skip
    assert found.works == (works(wiring))
    assert bool(found.dangers) == dangerous(wiring)
    assert (found.troubles == frozenset()) == (not expected)


def test_dangers_are_told_apart_from_faults() -> None:
    assert {t for _, troubles in SPOILT.values() for t in troubles} == set(Trouble)
    assert len(DANGERS) == 6
