"""Select against the electrical rules on the whole house, and against random houses with blanks."""

import json
from copy import deepcopy
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from secondfix.electrical import RULES as ELECTRICAL
from secondfix.house import Duty
from secondfix.selection import PlaceChoice, Spot, choice_as_json
from tests.electrical.houses import houses
from tests.selection.houses import (
    Plain,
    answers_there,
    catalogue,
    choices,
    demo,
    found_there,
    grave,
    put_into,
    read,
    unknown,
    usable,
)  # fmt: skip

BY_ELECTRICITY = {rule.id for rule in ELECTRICAL}
large = settings(suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
few = settings(large, max_examples=12)  # each case asks the whole house once for every model
FEW = [
    "plimmet-osier-three@1", "plimmet-osier-two@1", "plimmet-sedge@1", "plimmet-withy@1", "tavrindo-mole@1",
    "tavrindo-slate-one@1", "murrowfen-scree@1", "murrowfen-cairn@1", "murrowfen-drift@1", "plimmet-rush@1",
    "ostrabeck-gull-four@1", "ostrabeck-gannet@1", "plimmet-wick@1", "murrowfen-burr@1", "skelverin-pintle@1",
]  # fmt: skip


def fitting(plain: Plain, choice: PlaceChoice) -> None:
    """Each verdict against what the electrical rules say of the whole house with the model in it."""
    for fit in choice.fits:
        there = in_the_house(plain, choice, fit.model, fit.set_to)
        assert (grave(there), unknown(there)) == (set(), set()), fit.model
    for doubt in choice.doubts:
        there = in_the_house(plain, choice, doubt.model, doubt.set_to)
        own = {f.rule for f in doubt.unknown} & BY_ELECTRICITY
        assert (grave(there), unknown(there)) == (set(), own), doubt.model
    for refusal in choice.refused:
        if refusal.because.rule in BY_ELECTRICITY:
            there = in_the_house(plain, choice, refusal.model, None)
            assert refusal.because.rule in grave(there), refusal.model


def in_the_house(plain: Plain, choice: PlaceChoice, model: str, set_to: Any) -> Any:
    house, device_id = put_into(plain, choice.spot, catalogue()[model], set_to.value if set_to else None)
    return found_there(house, choice.spot, device_id)


@pytest.mark.parametrize(
    "place", ["B01", "B06", "B09", "B11", "B14", "B15", "B17", "B18", "P16", "P24", "P41"]
)
def test_the_whole_demo_house_says_the_same(place: str) -> None:
    for choice in choices(demo(), places={place}):
        fitting(demo(), choice)


def as_the_whole(plain: Plain) -> None:
    for choice in choices(plain, models={k: catalogue()[k] for k in FEW}):
        fitting(plain, choice)


@few
@given(houses())
def test_a_whole_random_house_says_the_same(plain: Plain) -> None:
    as_the_whole(plain)


@pytest.mark.deep
@large
@given(houses())
def test_thousands_of_random_houses_say_the_same(plain: Plain) -> None:
    as_the_whole(plain)


Verdicts = dict[tuple[str, str], tuple[Spot, str, frozenset[str]]]


def verdicts(plain: Plain, places: set[str] | None = None) -> Verdicts:
    """Spot (what is to stand where) and model to the verdict and the rules that speak against fitting."""
    out: Verdicts = {}
    for c in choices(plain, models={k: catalogue()[k] for k in FEW}, places=places):
        name = f"{c.spot.place} {c.spot.device_id} {c.spot.mounts} {[g.id for g in c.spot.gangs]}"
        out |= {(name, f.model): (c.spot, "fits", frozenset()) for f in c.fits}
        for d in c.doubts:
            out[name, d.model] = c.spot, "cannot tell", frozenset(f.rule for f in d.unknown)
        out |= {(name, r.model): (c.spot, "refused", frozenset({r.because.rule})) for r in c.refused}
    return out


def mended(before: Verdicts, after: Verdicts, less: Plain) -> list[tuple[str, str]]:
    """Models that fit once a fact is gone, though a rule spoke against them that still speaks.

    An electrical rule may fall silent by its own terms (docs/methods-electrical.md: a peak that nobody
    prints, a neutral that nobody doubts, a button that joins no conductor); a rule of selection may not.
    """
    found = []
    for key in after.keys() & before.keys():
        if after[key][1] == "fits" and before[key][1] != "fits":
            spot, against = after[key][0], before[key][2]
            house, device_id = put_into(less, spot, catalogue()[key[1]], None)
            still = {f.rule for f in answers_there(house, spot, device_id)}
            if against & still or against - BY_ELECTRICITY:
                found.append(key)
    return found


def facts(at: Any, path: tuple[str, ...] = ()) -> list[tuple[str, ...]]:
    """Every surveyed fact, and what is known without a survey: purposes and the mains voltage."""
    found = []
    for key, value in at.items() if isinstance(at, dict) else ():
        here = (*path, key)
        if key in {"models", "devices"} and not path:
            continue
        if (isinstance(value, dict) and "known" in value) or key in {"purpose", "mains_voltage_v"}:
            found.append(here)
        else:
            found += facts(value, here)
    return found


def without(plain: Plain, path: tuple[str, ...]) -> Plain:
    copy = deepcopy(plain)
    at: Any = copy
    for key in path[:-1]:
        at = at[key]
    del at[path[-1]]
    return copy


def blanked(plain: Plain, data: st.DataObject) -> None:
    before = verdicts(plain)
    for path in data.draw(st.permutations(facts(plain)))[:3]:
        less = without(plain, path)
        if usable(less):
            assert mended(before, verdicts(less), less) == [], path


@few
@given(houses(), st.data())
def test_a_fact_taken_away_never_makes_a_model_fit(plain: Plain, data: st.DataObject) -> None:
    blanked(plain, data)


@pytest.mark.deep
@large
@given(houses(), st.data())
def test_a_fact_taken_from_thousands_of_houses_never_makes_a_model_fit(
    plain: Plain, data: st.DataObject
) -> None:
    blanked(plain, data)


def test_no_fact_taken_from_the_demo_house_makes_a_model_fit() -> None:
    rest = {"scenes", "outside_uses", "walls", "doors", "windows"}
    plain = {k: v for k, v in demo().items() if k not in rest}
    for place, of in (("B06", "B06"), ("B14", "L34"), ("B15", "B15"), ("B15", "L35"), ("P16", "L16")):
        before = verdicts(plain, {place})
        for path in [p for p in facts(plain) if p[1:2] == (of,)]:
            less = without(plain, path)
            assert mended(before, verdicts(less, {place}), less) == [], path


@few
@given(houses())
def test_the_answer_is_plain_json_and_the_same_twice(plain: Plain) -> None:
    models = {k: catalogue()[k] for k in FEW}
    found = choices(plain, models=models)
    assert len(json.loads(json.dumps([choice_as_json(c) for c in found]))) == len(found)
    assert found == choices(plain, models=models)


@few
@given(houses())
def test_every_gang_that_is_not_capped_is_asked_for(plain: Plain) -> None:
    house = read(plain)
    asked = {g.id for c in choices(plain, models={}) for g in c.spot.gangs if c.spot.in_box}
    assert asked >= {
        f"{b}.{n}"
        for b, box in house.boxes.items()
        for n, g in box.gangs.items()
        if g.duty is not Duty.CAPPED
    }
