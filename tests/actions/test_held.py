"""A check that takes over from the one before the edit answers as one that asks everything anew."""

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bench.terrace import terrace
from secondfix import electrical, joining, naming, radio, scenes
from secondfix.actions.air import air_of
from secondfix.actions.check import Checked, check
from secondfix.actions.held import Question, changed_fields, may_read
from secondfix.actions.settle import settled_assumptions
from secondfix.actions.walk import walk
from secondfix.assumptions import Assumptions, Override, default_assumptions
from secondfix.house import (
    Box,
    Change,
    Device,
    Gang,
    House,
    Load,
    Mount,
    Network,
    Part,
    Schedule,
    edited,
    schedule,
)
from tests.actions.test_injected_faults import CASES
from tests.actions.worlds import FILES, changed, mended, read, troubled
from tests.example_house import seen

DEFAULTS = default_assumptions()
WORLDS = tuple(FILES)


@cache
def house_of(world: str, *, trouble: bool = False) -> House:
    made = read((troubled if trouble else mended)(world))
    assert made
    return made


def same(one: Checked, other: Checked) -> bool:
    return one == other and repr(one.answers.reached.devices) == repr(other.answers.reached.devices)


def faulty(world: str, every: int) -> Iterator[House]:
    """The mended house with one fault after the other."""
    for (_, of), (changes, _) in [*CASES.items()][::every]:
        made = read(changed(mended(world), changes)) if of == world else None
        if made:
            yield made


OFTEN = [(world, 5) for world in WORLDS]
ALWAYS = [pytest.param(world, 1, marks=pytest.mark.deep) for world in WORLDS]


@pytest.mark.parametrize(("world", "every"), [*OFTEN, *ALWAYS])
def test_each_fault_of_the_rules_is_found_beside_what_was_taken_over(world: str, every: int) -> None:
    earlier = check(house_of(world), assumptions=DEFAULTS)
    for house in faulty(world, every):
        anew = check(house, assumptions=DEFAULTS)
        assert same(check(house, assumptions=DEFAULTS, earlier=earlier), anew)
        earlier = anew


@pytest.mark.parametrize("world", WORLDS)
def test_a_walk_that_is_taken_over_is_the_walk_asked_anew(world: str) -> None:
    house = house_of(world, trouble=True)
    earlier = walk(house, assumptions=DEFAULTS)
    load, circuit, box = (next(iter(c)) for c in (house.loads, house.circuits, house.boxes))
    for path, value, holds in [
        (f"boxes.{box}.note", "seen twice", True),
        (f"loads.{load}.power_mw", seen(60_000), True),
        (f"loads.{load}.name", "Pelmet", False),
        (f"circuits.{circuit}.name", "Lights, east", False),
    ]:
        made = edited(house, [Change(path, value)], models=house.models)
        assert isinstance(made, House)
        anew = walk(made, assumptions=DEFAULTS)
        reached = check(made, assumptions=DEFAULTS).answers.reached
        assert walk(made, assumptions=DEFAULTS, reached=reached, earlier=earlier) == anew
        assert (walk(made, assumptions=DEFAULTS, earlier=earlier).walk is earlier.walk) == holds
    firm = DEFAULTS.overridden({"parent_margin_db": Override(30)}, set_by="firm")
    assert walk(house, assumptions=firm, earlier=earlier).walk is not earlier.walk


def member(house: House, collection: str) -> st.SearchStrategy[str]:
    return st.sampled_from(list(getattr(house, collection)))


@st.composite
def edits(draw: st.DrawFn, house: House) -> Change:
    """One field of the house set to something else, or to what it was."""
    load, box, device = (draw(member(house, name)) for name in ("loads", "boxes", "devices"))
    gang = draw(st.sampled_from(list(house.boxes[box].gangs)))
    mount = draw(st.sampled_from(list(house.boxes[box].mounts)))
    circuit, scene, room = (draw(member(house, name)) for name in ("circuits", "scenes", "rooms"))
    changes: list[tuple[str, object]] = [
        (f"loads.{load}.power_mw", seen(draw(st.sampled_from([3_000, 60_000, 2_000_000])))),
        (f"loads.{load}.kind", seen(draw(st.sampled_from(["led_driver", "motor", "resistive"])))),
        (f"loads.{load}.name", draw(st.sampled_from(["Lamp", "Washbasin", "Pelmet"]))),
        (f"loads.{load}.purpose", draw(st.sampled_from(["lighting", "comfort_fan", "emergency_light"]))),
        (f"loads.{load}.tags", ["evening"]),
        (f"loads.{load}.neutral", seen(circuit)),
        (f"boxes.{box}.gangs.{gang}.line", seen(circuit)),
        (f"boxes.{box}.gangs.{gang}.note", "seen twice"),
        (f"boxes.{box}.mounts.{mount}.neutral", seen(draw(st.sampled_from(["absent", "earth", circuit])))),
        (f"boxes.{box}.depth_mm", seen(draw(st.integers(20, 80)))),
        (f"boxes.{box}.plate", seen(draw(st.sampled_from(["metal", "plastic"])))),
        (f"boxes.{box}.position.height_mm", draw(st.integers(200, 2_000))),
        (f"devices.{device}.address", "00124B0017A0C3E1"),
        (f"devices.{device}.model", draw(st.sampled_from(list(house.models)))),
        (f"rooms.{room}.name", draw(st.sampled_from(["Pantry", "Loft"]))),
        (f"scenes.{scene}.name", "Twilight"),
        (f"circuits.{circuit}.breaker_a", seen(draw(st.sampled_from([6, 40])))),
        ("assumptions.radio_spread_db", {"value": draw(st.integers(4, 9))}),
        ("note", "asked by telephone"),
    ]
    return Change(*draw(st.sampled_from(changes)))


@pytest.mark.parametrize("world", WORLDS)
@settings(max_examples=8, deadline=None)
@given(data=st.data())
def test_a_series_of_edits_answers_as_if_asked_anew(world: str, data: st.DataObject) -> None:
    house = house_of(world, trouble=True)
    checked = check(house, assumptions=DEFAULTS)
    for _ in range(3):
        made = edited(house, [data.draw(edits(house))], models=house.models)
        if isinstance(made, House):
            house, checked = made, check(made, assumptions=DEFAULTS, earlier=checked)
            assert same(checked, check(house, assumptions=DEFAULTS))


def test_a_large_house_answers_as_if_asked_anew() -> None:
    house = read(terrace(troubled("iec"), boxes=300))
    assert house
    checked = check(house, assumptions=DEFAULTS)
    load, box = next(iter(house.loads)), next(iter(house.boxes))
    for path, value in [
        (f"boxes.{box}.gangs.1.note", "behind the door"),
        (f"loads.{load}.power_mw", seen(15_000)),
        (f"boxes.{box}.position.height_mm", 700),
    ]:
        made = edited(house, [Change(path, value)], models=house.models)
        assert isinstance(made, House)
        house, checked = made, check(made, assumptions=DEFAULTS, earlier=checked)
        assert same(checked, check(house, assumptions=DEFAULTS))


def taken_over(path: str, value: object) -> set[Question]:
    """The questions that are not asked again after one edit."""
    house = house_of("iec")
    before = check(house, assumptions=DEFAULTS)
    made = edited(house, [Change(path, value)], models=house.models)
    assert isinstance(made, House)
    after = check(made, assumptions=DEFAULTS, earlier=before).answers
    kept = {q for q in after.found if after.found[q] is before.answers.found[q]}
    return kept | ({Question.PATHS} if after.reached.paths is before.answers.reached.paths else set())


def test_an_edit_asks_again_what_it_may_change_and_no_more() -> None:
    every = set(Question) - {Question.WALK}  # no part of a check
    assert taken_over("boxes.B08.gangs.1.note", "seen twice") == every
    assert taken_over("loads.L01.power_mw", seen(11_000)) == every - {Question.ELECTRICAL}
    assert taken_over("scenes.S1.name", "Twilight") >= {Question.ELECTRICAL, Question.RADIO, Question.JOINING}
    assert taken_over("boxes.B08.plate", seen("metal")) >= {Question.PATHS, Question.NAMING}
    assert taken_over("rooms.R1.name", "Pantry") <= {Question.PATHS}


def test_other_assumptions_are_asked_of_everything_anew() -> None:
    house = house_of("iec")
    before = check(house, assumptions=DEFAULTS)
    firm = DEFAULTS.overridden({"radio_spread_db": Override(3)}, set_by="firm")
    after = check(house, assumptions=firm, earlier=before)
    assert same(after, check(house, assumptions=firm))
    assert not any(after.answers.found[q] is before.answers.found[q] for q in after.answers.found)


@pytest.mark.parametrize(
    ("path", "value", "told"),
    [
        ("boxes.B08.gangs.1.note", "seen twice", {"gangs.note"}),
        ("loads.L01.name", "Pelmet", {"loads.name"}),
        ("boxes.B08.mounts.1.neutral", seen("absent"), {"mounts.neutral"}),
        ("scenes.S99", {"name": "New"}, {"scenes"}),
        ("note", "asked by telephone", {"note"}),
        ("assumptions.radio_spread_db", {"value": 4}, {"assumptions"}),
    ],
)
def test_what_changed_is_told_by_field(path: str, value: object, told: set[str]) -> None:
    house = house_of("iec")
    made = edited(house, [Change(path, value)], models=house.models)
    assert isinstance(made, House)
    assert set(changed_fields(house, made)) == told


def test_an_order_of_ids_is_a_change() -> None:
    house = house_of("iec")
    turned = house.model_copy(update={"loads": dict(reversed(house.loads.items()))})
    assert set(changed_fields(house, turned)) == {"loads"}


# What `held.UNREAD` says of each question is held against what it reads while it answers.

COLLECTIONS: dict[type[Part], str] = {
    Box: "boxes", Gang: "gangs", Mount: "mounts", Load: "loads", Device: "devices", Network: "networks",
}  # fmt: skip
INDIRECT = {"rows", "channels_of", "fed_by", "extended_by"}
BEHIND_ROWS = {"gangs.duty", "gangs.load", "gangs.extends", "gangs.mount", "devices.outputs", "devices.gangs"}


@contextmanager
def watched() -> Iterator[set[str]]:
    """Every field that is read of a house, as `held` names them."""
    read_fields: set[str] = set()

    def look(self: Any, name: str) -> Any:
        if name in type(self).model_fields:
            collection = COLLECTIONS.get(type(self))
            read_fields.update([f"{collection}.{name}"] if collection else [])
            read_fields.update([name] if type(self) is House else [])
        return object.__getattribute__(self, name)

    def look_at_rows(self: Any, name: str) -> Any:
        read_fields.update(BEHIND_ROWS if name in INDIRECT else ())
        return object.__getattribute__(self, name)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Part, "__getattribute__", look)
        patch.setattr("secondfix.house.Schedule.__getattribute__", look_at_rows)
        yield read_fields


def reading(house: House) -> dict[Question, set[str]]:
    """What each question reads of one house."""
    settled: Assumptions = settled_assumptions(house, DEFAULTS)
    rows = schedule(house, house.models)
    reached = radio.reach(rows, settled)
    air, links = air_of(house, reached), joining.links_of(reached, settled)
    asks: dict[Question, Callable[[], Iterable[object]]] = {
        Question.PATHS: lambda: [radio.find_paths(house, settled)],
        Question.ELECTRICAL: lambda: electrical.check(rows, settled),
        Question.RADIO: lambda: [radio.reach(rows, settled)],
        Question.NAMING: lambda: naming.check(rows, settled),
        Question.SCENES: lambda: scenes.check(rows, settled, air),
        Question.JOINING: lambda: joining.check(rows, links, settled),
        Question.WALK: lambda: walked(rows, links, settled),
    }
    found = {}
    for question, ask in asks.items():
        with watched() as fields:
            list(ask())
        found[question] = set(fields)
    return found


def walked(rows: Schedule, links: joining.Links, settled: Assumptions) -> tuple[object, ...]:
    """What `walk` asks of the order of joining."""
    ordered = joining.walk(rows, links, settled)
    sheets = joining.worksheets(rows, ordered, naming.names(rows))
    return ordered, sheets, joining.check(rows, links, settled)


def strange(house: House) -> set[tuple[Question, str]]:
    """Fields that a question reads although it is said not to."""
    return {
        (question, field)
        for question, fields in reading(house).items()
        for field in fields
        if not may_read(question, field)
    }


@pytest.mark.parametrize("world", WORLDS)
@pytest.mark.parametrize("trouble", [True, False])
def test_no_question_reads_what_it_is_said_not_to(world: str, *, trouble: bool) -> None:
    assert strange(house_of(world, trouble=trouble)) == set()


@pytest.mark.parametrize(("world", "every"), [*((world, 12) for world in WORLDS), *ALWAYS])
def test_nor_does_it_where_there_are_faults(world: str, every: int) -> None:
    for house in faulty(world, every):
        assert strange(house) == set()
