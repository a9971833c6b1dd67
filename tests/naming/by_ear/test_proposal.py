"""What is proposed is what the slow way proposes, which renames the whole house for each word it tries."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import combinations

from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.assumptions import default_assumptions
from secondfix.naming.by_ear import proposal
from secondfix.naming.by_ear.clashes import Ear
from secondfix.naming.by_ear.judge import Verdict, ends
from secondfix.naming.by_ear.proposal import Proposal, Renaming
from secondfix.naming.by_ear.spoken import Kind, Spoken, spoken_names
from secondfix.naming.named import Called
from tests.naming.by_ear.test_check import house
from tests.scenes.small import read

LIMITS = ends(default_assumptions())
WORD = st.sampled_from(
    [
        "hall",
        "wall",
        "front",
        "back",
        "corner",
        "bath",
        "path",
        "light",
        "night",
        "lamp",
        "damp",
        "two",
        "qsra",
    ]
)
NAMES = st.lists(st.lists(WORD, min_size=1, max_size=2).map(" ".join), max_size=4)
ENTRIES = st.sampled_from([["load"], ["room", "load"], ["storey", "load"], ["room"], ["load", "room"]])


def slowly(called: Called, pair: tuple[Spoken, Spoken], ear: Ear) -> Proposal:
    """As `Renaming.propose`, but with every name of the house made anew for each word."""
    first, second = pair
    rename = min(
        (second, first), key=lambda n: ([Kind.SCENE, Kind.LOAD, Kind.ROOM].index(n.kind), len(n.own))
    )
    other = first if rename is second else second
    good = [
        name
        for name in proposal._candidates(called.schedule.house, rename, other)
        if len(name) <= 80 and stands(called, rename, name, ear)
    ]
    return Proposal(
        rename, "when it is used" if rename.kind is Kind.SCENE else "where it is", tuple(good[:3])
    )


def stands(called: Called, rename: Spoken, name: str, ear: Ear) -> bool:
    renamed = proposal._renamed(called.schedule.house, rename, name)
    before = spoken_names(called)
    after = spoken_names(Called(replace(called.schedule, house=renamed)))
    changed = [new for old, new in zip(before, after, strict=True) if new != old]
    kept = [new for old, new in zip(before, after, strict=True) if new == old]
    return bool(changed) and all(apart(new, kept, ear) for new in changed)


def apart(new: Spoken, kept: Sequence[Spoken], ear: Ear) -> bool:
    heard = ear.compare([(new, old) for old in kept if old.words and new.heard_beside(old)])
    return all(h is None or h.lax is Verdict.APART for _, h in heard)


@settings(max_examples=40)
@given(NAMES, NAMES, NAMES, ENTRIES)
def test_the_quick_way_proposes_what_the_slow_way_does(
    rooms: list[str], scenes: list[str], loads: list[str], entry: list[str]
) -> None:
    plain = house(rooms=rooms, scenes=scenes, loads=loads, storeys=True, gang_entry=entry)
    for number, load in enumerate(plain["loads"].values()):
        load["room"] = f"R{number % max(len(rooms), 1) + 1}"
    called = Called(read(plain))
    names = [n for n in spoken_names(called) if n.words]
    pairs = [pair for pair in combinations(names, 2) if pair[0].heard_beside(pair[1])][:12]
    quick = Renaming(called, spoken_names(called), Ear(LIMITS))
    assert [quick.propose(pair) for pair in pairs] == [slowly(called, pair, Ear(LIMITS)) for pair in pairs]
