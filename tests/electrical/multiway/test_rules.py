"""Each multi-way rule finds its injected trouble at its place; the unknown is asked for, never passed."""

from copy import deepcopy
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.electrical.multiway import RULES
from secondfix.findings import Finding, Outcome
from secondfix.house import Arrangement, House, read_house
from tests.electrical.multiway.lights import Plain, asked, light, told
from tests.electrical.reads import paths, reads, without
from tests.example_house import as_bytes, seen

ARRANGEMENT, SERIES, PARALLEL, OTHER, SUPPLY = (rule.id for rule in RULES)
READS = {rule: fields for rule, fields in reads().items() if rule.startswith("multiway_")}
FIELDS = sorted(set().union(*READS.values()))


def with_second_device(plain: Plain, key: str | None = "osgar-needs@1") -> Plain:
    plain["devices"]["D2"] = {"box": "B2", "mounts": ["1"], "gangs": ["1"], **({"model": key} if key else {})}
    return plain


def put(plain: Plain, path: str, value: Any) -> Plain:
    *keys, last = path.split("/")
    at: Any = plain
    for key in keys:
        at = at[key]
    if value is None:
        del at[last]
    else:
        at[last] = value
    return plain


SOUND = with_second_device(light(), "osgar-unit@1")


def test_the_sound_light_asks_what_applies_and_finds_no_fault() -> None:
    assert told(SOUND) == set()
    assert told(with_second_device(light(others="radio"))) == set()
    for plain in (SOUND, light(), with_second_device(light(others="radio"))):
        assert {f.rule for f in asked(plain)} == {rule.id for rule in RULES}


INJECTED: dict[str, tuple[Plain, set[tuple[str, str, str, str | None]]]] = {
    "a switched neutral": (
        light(arrangement="switched_neutral"), {(ARRANGEMENT, "B1.1", "fails", "danger")},
    ),
    "an arrangement that nobody found": (
        light(arrangement=None), {(ARRANGEMENT, "B1.1", "cannot_tell", "danger")},
    ),
    "an order without its places": (
        put(light(), "loads/L1/multiway/gangs", None), {(ARRANGEMENT, "B1.1", "cannot_tell", "danger")},
    ),
    "an order with one place": (
        put(light(), "loads/L1/multiway/gangs", ["B1.1"]), {(ARRANGEMENT, "B1.1", "cannot_tell", "danger")},
    ),
    "a contact in line": (
        light(others="in_series"), {(SERIES, "B1.1", "fails", "fault")},
    ),
    "a contact beside": (
        light(others="in_parallel"), {(PARALLEL, "B1.1", "fails", "fault")},
    ),
    "two modules, and how they act is not known": (
        with_second_device(light(others=None, neutral_at=frozenset("12"))),
        {(SERIES, "B1.1", "cannot_tell", "fault"), (PARALLEL, "B1.1", "cannot_tell", "fault")},
    ),
    "a plain switch, and how it acts is not known": (
        light(others=None), {(SERIES, "B1.1", "cannot_tell", "fault")},
    ),
    "an extension of another circuit": (
        light(foreign=True), {(OTHER, "B2.1", "fails", "danger")},
    ),
    "an extension of a circuit that is not known": (
        put(light(), "boxes/B2/gangs/1/line", None), {(OTHER, "B2.1", "cannot_tell", "danger")},
    ),
    "another circuit, and how it acts is not known": (
        light(others=None, foreign=True),
        {(OTHER, "B2.1", "cannot_tell", "danger"), (SERIES, "B1.1", "cannot_tell", "fault")},
    ),
    "a module at the end where no load is": (
        light(arrangement="opposite_ends", neutral_at=frozenset("12")), {(SUPPLY, "B1.1", "fails", "fault")},
    ),
    "a neutral at the switch loop": (
        light(arrangement="switch_loop", neutral_at=frozenset()), {(SUPPLY, "B1.1", "fails", "fault")},
    ),
    "the same, with spare cores not counted": (
        light(arrangement="switch_loop", neutral_at=frozenset(), spare=None),
        {(SUPPLY, "B1.1", "cannot_tell", "fault")},
    ),
    "the same, with the neutral not looked for": (
        put(light(arrangement="switch_loop"), "boxes/B1/mounts/1/neutral", None),
        {(SUPPLY, "B1.1", "cannot_tell", "fault")},
    ),
    "wired extensions where no conductor joins the places": (
        light(arrangement="not_joined"), {(SUPPLY, "B1.1", "fails", "fault")},
    ),
    "an extension unit that is to act by radio": (
        with_second_device(light(others="radio"), "osgar-unit@1"), {(SUPPLY, "B1.1", "fails", "fault")},
    ),
    "a module at the luminaire without its circuit, wired to the switches": (
        put(light(arrangement="switch_loop", module="lamp"), "places/P1/circuit", None),
        {(OTHER, "B1.1", "cannot_tell", "danger"), (OTHER, "B2.1", "cannot_tell", "danger")},
    ),
    "a place of the order that feeds another load": (
        put(put(put(light(), "loads/L2", {"name": "other", "room": "R1"}), "boxes/B2/gangs/1",
                {"duty": "feeds", "load": "L2", "line": seen("C1")}), "loads/L1/multiway/spare_cores", None),
        {(ARRANGEMENT, "B1.1", "cannot_tell", "danger")},
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", INJECTED)
def test_an_injected_trouble_is_found_at_its_place_and_nowhere_else(name: str) -> None:
    plain, expected = INJECTED[name]
    assert told(plain) == expected


@pytest.mark.parametrize("name", INJECTED)
def test_a_finding_says_what_where_against_which_limit_and_what_to_do(name: str) -> None:
    for f in asked(INJECTED[name][0]):
        assert f.source
        assert f.limit
        if f.outcome is not Outcome.PASSES:
            assert f.says.endswith(".")
            assert f.value
            assert f.remedy


def test_every_rule_has_an_injected_failure() -> None:
    failing = {
        rule for _, expected in INJECTED.values() for rule, _, outcome, _ in expected if outcome == "fails"
    }
    assert failing == {rule.id for rule in RULES}


def at(plain: Plain, rule: str) -> Finding:
    (found,) = (f for f in asked(plain) if f.rule == rule)
    return found


def test_what_cannot_be_told_names_the_next_test_or_count() -> None:
    (look,) = at(light(arrangement=None), ARRANGEMENT).looks
    assert (look.place, look.field) == ("L1", "multiway.arrangement")
    assert "in every combination of levers" in look.words
    fields = {k.field for k in at(INJECTED["the same, with spare cores not counted"][0], SUPPLY).looks}
    assert fields == {"multiway.spare_cores"}


def test_the_remedy_is_a_conversion_that_is_possible() -> None:
    opposite = at(INJECTED["a module at the end where no load is"][0], SUPPLY)
    assert "radio only" in opposite.says
    assert "the module at gang B2.1 with wired extensions" in opposite.remedy
    loop = at(INJECTED["a neutral at the switch loop"][0], SUPPLY)
    assert "the module at the luminaire with wired extensions" in loop.remedy
    assert "needs no neutral" in loop.remedy
    joined = at(INJECTED["wired extensions where no conductor joins the places"][0], SUPPLY)
    assert "radio buttons" in joined.remedy


def test_by_radio_no_conductor_of_another_circuit_matters_and_no_line_is_asked_for() -> None:
    assert told(light(others="radio", foreign=True)) == set()
    assert told(put(light(others="radio"), "boxes/B2/gangs/1/line", None)) == set()


def test_plain_switches_are_asked_for_their_arrangement_only() -> None:
    plain = light(others=None)
    del plain["devices"]["D1"]
    assert told(plain) == set()
    assert {f.rule for f in asked(plain)} == {ARRANGEMENT, OTHER}


def test_an_extension_alone_makes_a_light_of_several_places() -> None:
    plain = put(light(), "loads/L1/multiway", None)
    assert told(plain) == {
        (ARRANGEMENT, "B1.1", "cannot_tell", "danger"),
        (SERIES, "B1.1", "cannot_tell", "fault"),
    }


def test_one_place_is_no_light_of_several_places() -> None:
    plain = put(light(), "loads/L1/multiway", None)
    plain["boxes"]["B2"]["gangs"]["1"] = {"duty": "scene_only"}
    assert asked(plain) == []


def test_a_load_that_nothing_feeds_yet_is_asked_for_its_arrangement_at_the_load() -> None:
    plain = light(module="lamp", arrangement=None)
    del plain["devices"]["D1"]
    assert told(plain) == {(ARRANGEMENT, "L1", "cannot_tell", "danger")}


def test_line_of_another_load_in_the_box_counts_if_it_is_of_the_circuit() -> None:
    """Opposite ends, module at the line's end: with line at the other box too, one core less must pass."""
    plain = light(arrangement="opposite_ends", neutral_at=frozenset("12"))
    plain["loads"]["L2"] = {"name": "wall lamp", "room": "R1"}
    other = plain["boxes"]["B2"]["gangs"]["2"] = {"duty": "feeds", "load": "L2"}
    assert told(plain) == {(SUPPLY, "B1.1", "cannot_tell", "fault")}
    other["line"] = seen("C1")
    assert told(plain) == set()
    other["line"] = seen("C2")
    assert told(plain) == {(SUPPLY, "B1.1", "fails", "fault")}


def test_a_neutral_of_another_circuit_is_none() -> None:
    plain = light(arrangement="switch_loop")
    assert told(plain) == set()
    plain["boxes"]["B1"]["mounts"]["1"]["neutral"] = seen("C2")
    assert told(plain) == {(SUPPLY, "B1.1", "fails", "fault")}


def test_a_model_of_which_the_neutral_is_not_stated_is_asked_about_where_it_decides() -> None:
    plain = light(arrangement="switch_loop", neutral_at=frozenset())
    plain["models"]["osgar-needs@1"] = {
        k: v for k, v in plain["models"]["osgar-needs@1"].items() if k != "neutral"
    }
    assert told(plain) == {(SUPPLY, "B1.1", "cannot_tell", "fault")}
    plain = light()
    plain["models"]["osgar-needs@1"] = {
        k: v for k, v in plain["models"]["osgar-needs@1"].items() if k != "neutral"
    }
    assert told(plain) == set()


def test_the_reader_refuses_places_that_are_none() -> None:
    plain = put(light(), "loads/L1/multiway/gangs", ["B1.1", "B9.1", "B1.1"])
    read = read_house(as_bytes(plain), where="light.json", models={})
    assert not isinstance(read, House)
    assert {f.path for f in read} == {"loads.L1.multiway.gangs[1]", "loads.L1.multiway.gangs"}


def test_the_page_lists_what_every_rule_reads() -> None:
    assert set(READS) == {rule.id for rule in RULES}


@st.composite
def lights(draw: st.DrawFn) -> Plain:
    """Any light of two or three places, with some devices more and some facts less."""
    places = draw(st.integers(2, 3))
    numbers = [str(n) for n in range(1, places + 1)]
    plain = light(
        arrangement=draw(st.sampled_from([a.value for a in Arrangement])),
        others=draw(st.sampled_from(["input", "radio", "in_series", "in_parallel"])),
        places=places,
        module=draw(st.sampled_from([*numbers, "lamp"])),
        needs_neutral=draw(st.booleans()),
        neutral_at=frozenset(draw(st.sets(st.sampled_from(numbers)))),
        foreign=draw(st.booleans()),
        spare=draw(st.integers(0, 2)),
    )  # fmt: skip
    if plain["devices"]["D1"].get("box") != "B2" and draw(st.booleans()):
        with_second_device(plain, draw(st.sampled_from(["osgar-needs@1", "osgar-unit@1", None])))
        if plain["boxes"]["B2"]["gangs"]["1"]["duty"] == "scene_only":
            plain["devices"]["D2"].pop("model", None)
    for field in draw(st.lists(st.sampled_from(FIELDS), max_size=2)):
        for path in list(paths(plain, field))[:1]:
            less = without(plain, path)
            plain = less if usable(less) else plain
    return plain


def usable(plain: Plain) -> bool:
    return isinstance(read_house(as_bytes(plain), where="light.json", models={}), House)


def passed(plain: Plain) -> set[tuple[str, str]]:
    return {(f.rule, f.place) for f in asked(plain) if f.outcome is Outcome.PASSES}


@given(lights())
def test_a_field_taken_away_never_makes_a_pass(plain: Plain) -> None:
    before = passed(plain)
    for field in FIELDS:
        for path in paths(plain, field):
            less = without(plain, path)
            if usable(less):
                assert passed(less) <= before, path


@given(lights())
def test_an_assumed_fact_is_an_absent_fact(plain: Plain) -> None:
    assumed, absent = deepcopy(plain), deepcopy(plain)
    for field in FIELDS:
        for path in paths(plain, field):
            there, gone = assumed, absent
            for key in path[:-1]:
                there, gone = there[key], gone[key]
            if isinstance(there[path[-1]], dict) and "known" in there[path[-1]]:
                there[path[-1]]["known"] = "assumed"
                del gone[path[-1]]
    assert asked(assumed) == asked(absent)


@given(lights(), st.integers(1, 3))
def test_more_spare_cores_never_hinder(plain: Plain, more: int) -> None:
    richer = deepcopy(plain)
    for path in paths(plain, "loads.*.multiway.spare_cores.value"):
        at: Any = richer
        for key in path[:-1]:
            at = at[key]
        at["value"] += more
    assert passed(plain) <= passed(richer)
