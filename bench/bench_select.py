"""What `select` costs: 300 boxes among the whole catalogue, against checking the whole house for each model.

The baseline is asked at a few places only, and reckoned up to all of them: whole, it would run for an hour.
"""

from __future__ import annotations

import json
import time
from functools import cache
from pathlib import Path

from bench.figures import Pair, figure, seconds_side_by_side
from bench.plain_select import Verdict, plain_verdicts
from bench.terrace import terrace
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, read_house
from secondfix.selection import PlaceChoice, select

DEMO = Path(__file__).parents[1] / "demo" / "house.json"
DEFAULTS = default_assumptions()
SAMPLE = ("B14-0", "B08-3", "P41-7", "P02-1")


@cache
def house(boxes: int) -> House:
    plain = terrace(json.loads(DEMO.read_text(encoding="utf-8")), boxes=boxes)
    read = read_house(json.dumps(plain).encode(), where="terrace", models=shipped_models())
    if not isinstance(read, House):
        raise RuntimeError(f"the terrace is unusable: {read[0]}")
    return read


def verdicts(choice: PlaceChoice) -> Verdict:
    return {
        **{f.model: "fits" for f in choice.fits},
        **{d.model: "cannot tell" for d in choice.doubts},
        **{r.model: "refused" for r in choice.refused},
    }


def seconds_of_the_plain(terraced: House) -> float:
    """Seconds a place; RuntimeError where the two do not say the same of every model."""
    choices = select(terraced, shipped_models(), DEFAULTS, places=SAMPLE)
    begun = time.perf_counter()
    plain = [plain_verdicts(terraced, shipped_models(), DEFAULTS, choice) for choice in choices]
    took = time.perf_counter() - begun
    if plain != [verdicts(choice) for choice in choices] or len(plain) != len(SAMPLE):
        raise RuntimeError("select and the whole house disagree")
    return took / len(plain)


@figure(
    "select in 300 boxes among the catalogue, against a check of the whole house for each model", unit="s"
)
def three_hundred() -> Pair:
    terraced = house(300)
    begun = time.perf_counter()
    answers = select(terraced, shipped_models(), DEFAULTS)
    took = time.perf_counter() - begun
    return took, seconds_of_the_plain(terraced) * len(answers)


@figure("select in 300 boxes among the catalogue, against 30 boxes", unit="s")
def ten_times() -> Pair:
    return seconds_side_by_side(
        lambda: select(house(300), shipped_models(), DEFAULTS),
        lambda: select(house(30), shipped_models(), DEFAULTS),
        rounds=1,
    )
