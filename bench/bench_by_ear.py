"""What hearing costs: names compared by ear, against the same check where no language is stated."""

from __future__ import annotations

import json
from functools import cache

from bench.block import block
from bench.figures import Pair, figure, seconds_side_by_side
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.naming import check

DEFAULTS = default_assumptions()
WORDS = (
    *("ceiling", "table", "window", "mirror", "stair", "shelf", "picture"),
    *("desk", "corner", "garden", "cellar", "pantry", "arch"),
)


@cache
def rows(spoken: bool) -> Schedule:
    """A block of flats whose rooms have spoken names of three words."""
    plain = block(devices=300)
    for number, room in enumerate(plain["rooms"].values()):
        words = (WORDS[number % 13], WORDS[number // 13 % 13], WORDS[number // 169 % 13])
        room["name"] = " ".join(words)
    plain["naming"] = {"spoken_language": "en"} if spoken else {}
    house = read_house(json.dumps(plain).encode(), where="block", models=shipped_models())
    if not isinstance(house, House):
        raise RuntimeError(f"the block is unusable: {house[0]}")
    return schedule(house, house.models)


@figure("names of a block of 300 devices compared by ear, against not listening", unit="s")
def by_ear() -> Pair:
    return seconds_side_by_side(
        lambda: check(rows(True), DEFAULTS), lambda: check(rows(False), DEFAULTS), rounds=3
    )
