"""Function tests held against the design: gangs, entries, whole devices, scenes."""

from typing import Any

import pytest

from secondfix import journal as j
from secondfix.house import House
from secondfix.journal import Entry, FunctionTest, Press, Worked, fold, function_test, journal_of, scene_tests
from tests.example_house import document, house
from tests.journal.writing import HOUSE, write


def pressed(*entries: Entry, of: House = HOUSE) -> FunctionTest:
    return function_test(of, fold(of, journal_of(entries)))


def press(test: FunctionTest, place: str) -> Press:
    (found,) = [p for p in test.presses if p.place == place]
    return found


def answers(number: int, subject: str, *loads: str, **fields: Any) -> Entry:
    return write(number, "function_tested", subject, answered=dict.fromkeys(loads, "changed"), **fields)


def other_duty(duty: str) -> House:
    plain = document()
    plain["boxes"]["B2"]["gangs"]["1"] = {"duty": duty}
    return house(plain)


def test_every_gang_that_should_work_a_load_is_asked_for() -> None:
    assert {p.place: (p.expected, p.worked) for p in pressed().presses} == {
        "B1.1": (("L1",), Worked.NOT_TESTED),
        "B1.2": (("L2",), Worked.NOT_TESTED),
        "B2.1": (("L2",), Worked.NOT_TESTED),
    }


@pytest.mark.parametrize(
    ("loads", "also", "worked"),
    [
        (["L1"], "", Worked.AS_DESIGNED),
        ([], "", Worked.NOTHING),
        (["L2"], "", Worked.ANOTHER),
        (["L1", "L2"], "", Worked.SEVERAL),
        ([], "a bell next door", Worked.ANOTHER),
        (["L1"], "a bell next door", Worked.SEVERAL),
        (["L77"], "", Worked.ANOTHER),
    ],
)
def test_a_gang_that_feeds_a_load(loads: list[str], also: str, worked: Worked) -> None:
    test = pressed(answers(1, "gang:B1.1", *loads, also_answered=also))
    assert press(test, "B1.1").worked is worked


@pytest.mark.parametrize(
    ("duty", "loads", "worked"),
    [
        ("capped", [], Worked.AS_DESIGNED),
        ("capped", ["L2"], Worked.SHOULD_NOT),
        ("scene_only", ["L2"], Worked.NOT_JUDGED),
        ("not_known", ["L2"], Worked.FOUND),
        ("not_known", [], Worked.FOUND),
    ],
)
def test_a_gang_that_feeds_nothing_has_its_answer(duty: str, loads: list[str], worked: Worked) -> None:
    of = other_duty(duty)
    assert press(pressed(answers(1, "gang:B2.1", *loads), of=of), "B2.1").worked is worked
    assert "B2.1" not in {p.place for p in pressed(of=of).presses}


def test_an_extension_unit_works_what_its_gang_feeds() -> None:
    good = pressed(answers(1, "gang:B2.1", "L2"), answers(2, "gang:B1.2", "L2"))
    assert press(good, "B2.1").worked is Worked.AS_DESIGNED
    assert good.shared == ()


def test_crossed_gangs_are_a_ring_and_an_extension_is_none_of_it() -> None:
    test = pressed(
        answers(1, "gang:B1.1", "L2"), answers(2, "gang:B1.2", "L1"), answers(3, "gang:B2.1", "L1")
    )
    (pair,) = test.crossed_gangs
    assert pair.channels == ("B1.1", "B1.2")
    assert dict(pair.names) == {"B1.1": "L2", "B1.2": "L1"}


def test_a_ring_is_found_past_an_extension_unit_of_a_lesser_id() -> None:
    plain = document()
    plain["boxes"]["B1"]["gangs"]["2"] = {"duty": "extends", "extends": "B2.1"}
    plain["boxes"]["B2"]["gangs"]["1"] = {"duty": "feeds", "load": "L2"}
    both = [answers(1, "gang:B1.1", "L2"), answers(2, "gang:B2.1", "L1")]
    (pair,) = pressed(*both, of=house(plain)).crossed_gangs
    assert pair.channels == ("B1.1", "B2.1")


def test_a_load_that_two_gangs_work_is_told() -> None:
    test = pressed(answers(1, "gang:B1.1", "L2"), answers(2, "gang:B1.2", "L2"))
    assert test.shared == (("L2", ("B1.1", "B1.2")),)


@pytest.mark.parametrize(
    ("entry", "loads", "worked"),
    [
        ("D01.1", ["L1"], Worked.AS_DESIGNED),
        ("D01.2", ["L1"], Worked.ANOTHER),
        ("D01.0", ["L1", "L2"], Worked.AS_DESIGNED),
        ("D01.0", ["L1"], Worked.ANOTHER),
        ("D01.9", [], Worked.AS_DESIGNED),
        ("D01.9", ["L1"], Worked.SHOULD_NOT),
        ("D02.1", [], Worked.NOT_JUDGED),
        ("D02.0", [], Worked.NOT_JUDGED),
    ],
)
def test_an_entry_commanded(entry: str, loads: list[str], worked: Worked) -> None:
    assert press(pressed(answers(1, f"entry:{entry}", *loads)), entry).worked is worked


def test_crossed_entries_are_told_apart_from_crossed_gangs() -> None:
    test = pressed(answers(1, "entry:D01.1", "L2"), answers(2, "entry:D01.2", "L1"))
    assert test.crossed_gangs == ()
    assert test.crossed_entries[0].channels == ("D01.1", "D01.2")


def test_two_tests_that_differ_are_disputed() -> None:
    test = pressed(answers(1, "gang:B1.1", "L1"), answers(2, "gang:B1.1"))
    assert press(test, "B1.1").worked is Worked.DISPUTED


def module_at_a_light_point() -> House:
    plain = document()
    plain["boxes"]["B1"]["gangs"]["1"] = {}
    plain["places"]["P3"] = {"kind": "light_point", "name": "Ceiling rose", "room": "R1"}
    plain["devices"]["D03"] = {"place": "P3", "outputs": {"1": "L1"}}
    return house(plain)


def test_an_output_outside_the_boxes_is_a_channel_too() -> None:
    of = module_at_a_light_point()
    assert press(pressed(of=of), "D03.1").worked is Worked.NOT_TESTED
    test = pressed(answers(1, "entry:D03.1", "L2"), answers(2, "gang:B1.2", "L1"), of=of)
    assert test.crossed_gangs[0].channels == ("B1.2", "D03.1")
    built = j.as_built(
        of, journal_of([answers(1, "entry:D03.1", "L2"), answers(2, "gang:B1.2", "L1")]), models={}
    )
    assert built.house.devices["D03"].outputs == {"1": "L2"}
    assert built.house.boxes["B1"].gangs["2"].load == "L1"


@pytest.mark.parametrize(
    ("answered", "also", "expected"),
    [
        ({"L1": "off", "L2": "changed"}, "", ([], [], [])),
        ({"L1": "off"}, "", (["L2"], [], [])),
        ({"L1": "off", "L2": "off", "L3": "off"}, "", ([], ["L3"], [])),
        ({"L1": "on", "L2": "off"}, "", ([], [], ["L1"])),
        ({}, "a bell", (["L1", "L2"], [], [])),
    ],
)
def test_a_scene_is_held_against_what_it_should_switch(
    answered: dict[str, str], also: str, expected: tuple[list[str], list[str], list[str]]
) -> None:
    ran = write(1, "function_tested", "scene:SC1", answered=answered, also_answered=also)
    (scene,) = scene_tests(fold(HOUSE, journal_of([ran])), {"SC1": {"L1": "off", "L2": "off"}})
    assert tuple(map(list, (scene.missing, scene.extra, scene.wrong_way))) == expected
    assert scene.as_expected == (expected == ([], [], []) and not also)


def test_a_scene_not_run_is_not_as_expected() -> None:
    (scene,) = scene_tests(fold(HOUSE, journal_of([])), {"SC1": {}})
    assert (scene.tested, scene.as_expected, scene.disputed) == (None, False, False)


def test_the_answer_as_json_gives_the_true_map() -> None:
    test = pressed(answers(1, "gang:B1.1", "L2"), answers(2, "gang:B1.2", "L1"))
    plain = j.tests_as_json(test, scene_tests(fold(HOUSE, journal_of([])), {"SC1": {}}))
    assert plain["true_map"] == {"gang:B1.1": ["L2"], "gang:B1.2": ["L1"]}
    assert plain["crossed_gangs"] == [
        {"gangs": ["B1.1", "B1.2"], "exchange": [["B1.1", "B1.2"]], "rename": {"B1.1": "L2", "B1.2": "L1"}}
    ]
    assert plain["scenes"][0]["tested"] is None
