"""What holds for every house: the ledger, no command to a load left out, no pass out of a blank, no order."""

import json
from collections import Counter
from collections.abc import Iterator
from copy import deepcopy

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.house import schedule
from secondfix.scenes import CrossingKind, Resolution, check, resolve, scenes_as_json
from tests.scenes import plainly
from tests.scenes.houses import Plain, houses
from tests.scenes.small import AIR, read


def resolved(plain: Plain) -> tuple[Resolution, ...]:
    return resolve(read(plain))


def answers(plain: Plain) -> dict[tuple[str, str], set[Outcome]]:
    out: dict[tuple[str, str], set[Outcome]] = {}
    for finding in check(read(plain), default_assumptions(), AIR):
        out.setdefault((finding.rule, finding.place), set()).add(finding.outcome)
    return out


def agrees_with_the_plain_evaluator(plain: Plain) -> None:
    for resolution in resolved(plain):
        scene = plain["scenes"][resolution.scene_id]
        for load_id, one in resolution.crossings.items():
            kind, to, level, refused = plainly.answer(plain, scene, load_id)
            assert (one.kind, one.to, one.asked_level_pct) == (kind, to, level), load_id
            assert one.refused == refused or one.kind == "cannot_tell"


def the_ledger_adds_up(plain: Plain) -> None:
    for resolution in resolved(plain):
        assert list(resolution.crossings) == list(plain["loads"])
        assert resolution.ledger.loads == len(plain["loads"])
        counts = Counter(c.kind for c in resolution.crossings.values())
        assert resolution.ledger.conflict == counts[CrossingKind.CONFLICT]
        assert resolution.ledger.switched == len(resolution.commands)


def each_command_switches_one_load_that_is_switched(plain: Plain) -> None:
    for resolution in resolved(plain):
        at = {plainly.feeding_device(plain, load): c for load, c in resolution.crossings.items()}
        ends = [(c.device_id, c.entry) for c in resolution.commands]
        assert len(set(ends)) == len(ends)
        for end in ends:
            assert end[1] >= 1
            assert at[end].kind is CrossingKind.SWITCHED


def left_out_loads_are_never_reached_in_silence(plain: Plain) -> None:
    """By a direct command or a whole-device entry, as the model states it."""
    found: dict[str, set[str]] = {}
    for finding in check(read(plain), default_assumptions(), AIR):
        if finding.outcome is not Outcome.PASSES:
            found.setdefault(finding.place, set()).update(finding.also)
    for resolution in resolved(plain):
        scene = plain["scenes"][resolution.scene_id]
        for load_id, one in resolution.crossings.items():
            surely, perhaps = plainly._commands(plain, scene, load_id)
            if one.kind is not CrossingKind.SWITCHED and (surely or perhaps) and one.reason != "no_rule":
                assert {load_id, *(c["device"] for c in perhaps)} & found[resolution.scene_id]
            if surely and one.kind is not CrossingKind.SWITCHED:
                assert load_id in found[resolution.scene_id]


def _blanks(plain: Plain) -> Iterator[Plain]:
    """The house again and again, each time with one surveyed or decided thing gone."""
    spots = [
        ("loads", k, f)
        for k in plain["loads"]
        for f in ("purpose", "own_thermostat", "time_limit_s", "dimmable")
    ]
    spots += [("rooms", k, "storey") for k in plain["rooms"]]
    spots += [("devices", k, f) for k in plain["devices"] for f in ("model", "network")]
    for collection, key, field in spots:
        if field in plain[collection][key]:
            blank = deepcopy(plain)
            del blank[collection][key][field]
            yield blank
    extended = {g.get("extends") for b in plain["boxes"].values() for g in b["gangs"].values()}
    for box_id, box in plain["boxes"].items():
        for n, gang in box["gangs"].items():
            if gang["duty"] != "not_known" and f"{box_id}.{n}" not in extended:
                blank = deepcopy(plain)
                blank["boxes"][box_id]["gangs"][n] = {}
                yield blank
    for field in sorted({"time_zone", "latitude_mdeg", "longitude_mdeg"} & set(plain)):
        yield {k: v for k, v in plain.items() if k != field}


def blanking_makes_no_pass(plain: Plain, data: st.DataObject) -> None:
    """Three blanks of each house, drawn: all of them would be most of the time of a run."""
    before = answers(plain)
    blanks = list(_blanks(plain))
    for blank in data.draw(st.lists(st.sampled_from(blanks), max_size=3)) if blanks else []:
        for where, outcomes in answers(blank).items():
            if outcomes == {Outcome.PASSES}:
                assert before.get(where, {Outcome.PASSES}) == {Outcome.PASSES}, where


def order_changes_nothing(plain: Plain, random: st.DataObject) -> None:
    shuffled = deepcopy(plain)
    for scene in shuffled["scenes"].values():
        scene["rules"] = random.draw(st.permutations(scene["rules"]))
        scene["commands"] = random.draw(st.permutations(scene["commands"]))
        for rule in scene["rules"]:
            rule["leave_out"] = rule["leave_out"][::-1]
    assert scenes_as_json(resolved(shuffled)) == scenes_as_json(resolved(plain))

    def told(one: Plain) -> Counter[Finding]:
        return Counter(check(read(one), default_assumptions(), AIR))

    assert told(shuffled) == told(plain)


@given(houses())
def test_the_plain_evaluator_agrees(plain: Plain) -> None:
    agrees_with_the_plain_evaluator(plain)


@given(houses())
def test_every_load_is_counted_once(plain: Plain) -> None:
    the_ledger_adds_up(plain)
    each_command_switches_one_load_that_is_switched(plain)


@given(houses())
def test_a_load_left_out_is_never_reached_without_a_finding(plain: Plain) -> None:
    left_out_loads_are_never_reached_in_silence(plain)


@given(houses(), st.data())
@settings(max_examples=60)
def test_a_blank_never_makes_a_pass(plain: Plain, data: st.DataObject) -> None:
    blanking_makes_no_pass(plain, data)


@given(houses(), st.data())
def test_the_order_of_rules_and_commands_changes_nothing(plain: Plain, data: st.DataObject) -> None:
    order_changes_nothing(plain, data)


@pytest.mark.deep
@given(houses(), st.data())
def test_all_of_it_on_thousands_of_houses(plain: Plain, data: st.DataObject) -> None:
    agrees_with_the_plain_evaluator(plain)
    the_ledger_adds_up(plain)
    each_command_switches_one_load_that_is_switched(plain)
    left_out_loads_are_never_reached_in_silence(plain)
    blanking_makes_no_pass(plain, data)
    order_changes_nothing(plain, data)


def test_an_assumed_fact_settles_nothing() -> None:
    """The same answer as with the fact absent."""
    plain: Plain = {
        "format": 1,
        "id": "01947f02-55c8-7a16-b3de-91f04c2a8e78",
        "name": "Nettle Row 9",
        "rooms": {"R1": {"name": "Hall"}},
        "boxes": {},
        "loads": {"L1": {"name": "Panel", "room": "R1", "purpose": "heater_fixed", "time_limit_s": 2700}},
        "scenes": {"SC1": {"name": "Warm", "rules": [{"select": {"every_load": True}, "to": "on"}]}},
    }
    absent = scenes_as_json(resolved(plain))
    plain["loads"]["L1"]["own_thermostat"] = {"value": True, "known": "assumed"}
    assert scenes_as_json(resolved(plain)) == absent
    assert json.dumps(absent).count("cannot_tell") == 2
    assert schedule(read(plain).house, {}).fed_by == {}
