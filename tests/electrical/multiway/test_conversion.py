"""A conversion is possible if and only if some assignment of the cores works; then what it says works."""

from collections.abc import Iterator
from itertools import chain as chained
from itertools import combinations

import pytest

from secondfix.electrical.multiway import LAMP, Role, Wish, convert, drawn, judge
from secondfix.electrical.multiway.conductors import chain_of, plan
from secondfix.house import Arrangement
from secondfix.terms import WiringRules
from tests.electrical.multiway.converted import wiring, wirings
from tests.electrical.multiway.oracle import dangerous, works

JOINED = [a for a in Arrangement if a not in {Arrangement.SWITCHED_NEUTRAL, Arrangement.NOT_JOINED}]


def subsets(points: list[str]) -> Iterator[frozenset[str]]:
    every = chained.from_iterable(combinations(points, n) for n in range(len(points) + 1))
    return (frozenset(chosen) for chosen in every)


def wishes(places: int) -> Iterator[Wish]:
    boxes = [str(n) for n in range(1, places + 1)]
    for module in (*boxes, LAMP):
        for needs in (True, False):
            for inputs in (frozenset[str](), frozenset(boxes) - {module}):
                for neutral_at in subsets(boxes):
                    yield Wish(module, needs, inputs, neutral_at=neutral_at)


def holds(arrangement: Arrangement, places: int, wish: Wish, spare: int) -> None:
    chain = chain_of(arrangement, places, spare_cores=spare)
    found = any(works(w) and not dangerous(w) for w in wirings(chain, wish))
    assert found == (plan(chain, wish) is not None), (arrangement, wish)


@pytest.mark.parametrize("arrangement", JOINED)
def test_two_places_agree_with_every_assignment_of_the_cores(arrangement: Arrangement) -> None:
    for wish in wishes(2):
        holds(arrangement, 2, wish, 0)


@pytest.mark.parametrize("arrangement", [Arrangement.TOGETHER, Arrangement.OPPOSITE_ENDS])
def test_three_places_agree_where_the_module_stands_between(arrangement: Arrangement) -> None:
    for wish in wishes(3):
        if not wish.neutral_at and wish.module == "2" and wish.inputs:
            holds(arrangement, 3, wish, 0)


@pytest.mark.deep
@pytest.mark.parametrize("arrangement", JOINED)
@pytest.mark.parametrize(("places", "spare"), [(2, 1), (2, 2), (3, 0)])
def test_up_to_three_places_agree_with_every_assignment(
    arrangement: Arrangement, places: int, spare: int
) -> None:
    for wish in wishes(places):
        holds(arrangement, places, wish, spare)


@pytest.mark.deep
@pytest.mark.parametrize("arrangement", JOINED)
def test_line_from_other_loads_in_the_boxes_agrees_too(arrangement: Arrangement) -> None:
    for wish in wishes(2):
        for line_at in subsets(["1", "2"]):
            lined = Wish(wish.module, wish.needs_neutral, wish.inputs, line_at, wish.neutral_at)
            holds(arrangement, 2, lined, 0)


@pytest.mark.parametrize("arrangement", JOINED)
@pytest.mark.parametrize("places", [2, 3, 5])
def test_what_a_conversion_says_of_each_conductor_works(arrangement: Arrangement, places: int) -> None:
    possible = 0
    for wish in wishes(places) if places < 4 else list(wishes(places))[::7]:
        made = convert(arrangement, places, wish)
        assert made.possible == (not made.why_not)
        if not made.possible:
            assert made.changes == ()
            assert made.steps() == (made.why_not,)
            continue
        possible += 1
        taken = [
            tuple(c.becomes for c in made.changes if (c.a, c.b) == (run.a, run.b) and c.core not in run.kept)
            for run in made.chain.runs
        ]
        whole = wiring(made.chain, wish, tuple(taken))
        assert judge(whole).works
        assert judge(whole).troubles == frozenset()
        assert all(bool(c.mark) == c.altered for c in made.changes)
    assert possible


CASES = [
    # arrangement, wish, possible, and what a sentence of it says
    (Arrangement.TOGETHER, Wish("1", True, frozenset("2"), neutral_at=frozenset("1")), True, "signal"),
    (Arrangement.TOGETHER, Wish("2", True, frozenset("1"), neutral_at=frozenset("1")), False, "neutral"),
    (Arrangement.OPPOSITE_ENDS, Wish("2", True, frozenset("1"), neutral_at=frozenset("12")), True,
     "traveller 1 becomes permanent line"),
    (Arrangement.OPPOSITE_ENDS, Wish("1", True, frozenset("2"), neutral_at=frozenset("12")), False, "radio"),
    (Arrangement.OPPOSITE_ENDS, Wish("1", True, neutral_at=frozenset("12")), True,
     "traveller 1 becomes switched line"),
    (Arrangement.SWITCH_LOOP, Wish("1", True, frozenset("2")), False, "neutral"),
    (Arrangement.SWITCH_LOOP, Wish("1", False, frozenset("2")), True, "line core stays"),
    (Arrangement.SWITCH_LOOP, Wish(LAMP, True, frozenset("12")), True, "lamp's core becomes signal"),
    (Arrangement.FEED_AT_LUMINAIRE, Wish("1", True), True, "becomes neutral"),
    (Arrangement.FEED_AT_LUMINAIRE, Wish("2", True, frozenset("1")), False, "neutral"),
    (Arrangement.NOT_JOINED, Wish("1", True, neutral_at=frozenset("1")), True, "radio button"),
    (Arrangement.NOT_JOINED, Wish("1", False, frozenset("2")), False, "No conductor joins"),
]  # fmt: skip


@pytest.mark.parametrize(("arrangement", "wish", "possible", "says"), CASES)
def test_what_the_trade_knows(arrangement: Arrangement, wish: Wish, possible: bool, says: str) -> None:
    made = convert(arrangement, 2, wish)
    assert made.possible is possible
    assert says in " ".join(made.steps())


def test_a_spare_core_makes_possible_what_was_not() -> None:
    wish = Wish("1", True, frozenset("2"))
    assert not convert(Arrangement.SWITCH_LOOP, 2, wish).possible
    made = convert(Arrangement.SWITCH_LOOP, 2, wish, spare_cores=1)
    assert made.possible
    assert [c.core.name for c in made.changes if c.becomes is Role.NEUTRAL] == ["spare 1"]
    unused = [c for c in made.changes if c.core.was is Role.SPARE and c.becomes is Role.CAPPED]
    assert unused
    assert not any(c.altered for c in unused)


def test_marks_follow_the_wiring_rules_of_the_house() -> None:
    wish = Wish("1", True)
    iec = convert(Arrangement.FEED_AT_LUMINAIRE, 2, wish)
    nec = convert(Arrangement.FEED_AT_LUMINAIRE, 2, wish, rules=WiringRules.NEC)
    assert [c.becomes for c in iec.changes] == [c.becomes for c in nec.changes]
    neutral = [next(c.mark for c in made.changes if c.becomes is Role.NEUTRAL) for made in (iec, nec)]
    assert "blue" in neutral[0]
    assert "white or grey" in neutral[1]
    assert "200.7(C)" in nec.source
    assert "60445" in iec.source


def test_a_switched_neutral_is_not_converted() -> None:
    with pytest.raises(ValueError, match="put right"):
        convert(Arrangement.SWITCHED_NEUTRAL, 2, Wish("1", False))


def test_the_drawing_holds_each_core_once_with_both_labels_and_its_number() -> None:
    made = convert(Arrangement.TOGETHER, 3, Wish("1", False, frozenset("23")), names={"2": "gang B2.1 <&>"})
    picture = drawn(made)
    assert [(c.before, c.after) for c in picture.cores] == [
        (c.core.was.value, c.becomes.value) for c in made.changes
    ]
    assert [(p.id, p.before, p.after) for p in picture.points] == [
        ("lamp", "lamp", "lamp"),
        ("1", "two-way", "module"),
        ("2", "intermediate", "extension unit"),
        ("3", "two-way", "extension unit"),
    ]
    assert [c.number for c in picture.cores] == list(range(1, len(made.changes) + 1))
    assert [p.id for p in picture.points if p.supplied] == ["1"]


def test_an_impossible_conversion_is_not_drawn() -> None:
    with pytest.raises(ValueError, match="neutral"):
        drawn(convert(Arrangement.SWITCH_LOOP, 2, Wish("1", True)))
