"""What the sheet of a light is made of: ways to convert it, circuits to isolate, what is not told."""

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.electrical.multiway import (
    ARRANGEMENTS,
    BETWEEN,
    END_BOX,
    LIVE_TEST,
    QUESTIONS,
    Light,
    Wish,
    convert,
    lights,
    patterns,
    spoken,
    tell,
)
from secondfix.electrical.multiway.telling import Told
from secondfix.house import Arrangement, House, read_house, schedule
from secondfix.terms import WiringRules
from tests.electrical.multiway.lights import Plain, light
from tests.example_house import as_bytes, seen


def the(plain: Plain) -> Light:
    house = read_house(as_bytes(plain), where="light.json", models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    (one,) = lights(schedule(house, house.models), default_assumptions())
    return one


def test_a_known_light_has_one_way_and_every_circuit_that_enters_its_boxes() -> None:
    plain = light()
    plain["boxes"]["B2"]["mounts"]["1"]["neutral"] = seen("C2")
    one = the(plain)
    assert (one.arrangement, one.gangs, one.boxes) == (
        Arrangement.TOGETHER,
        ("B1.1", "B2.1"),
        ("B1", "B2"),
    )
    assert one.circuits == ("C1", "C2")
    (way,) = one.ways
    assert way.made.possible
    assert way.made.wish.inputs == {"2"}
    assert one.untold == ()


def test_where_it_is_not_known_how_the_others_act_each_way_has_its_conversion() -> None:
    ways = the(light(others=None)).ways
    assert [w.made.wish.inputs for w in ways] == [frozenset("2"), frozenset()]


def test_places_that_act_with_a_contact_will_have_to_act_otherwise() -> None:
    assert len(the(light(others="in_series")).ways) == 2


def test_an_extension_unit_is_never_drawn_as_acting_by_radio() -> None:
    plain = light(others=None)
    plain["devices"]["D2"] = {"model": "osgar-unit@1", "box": "B2", "mounts": ["1"], "gangs": ["1"]}
    (way,) = the(plain).ways
    assert way.made.wish.inputs == {"2"}


def test_what_is_impossible_says_what_is_possible_instead() -> None:
    (way,) = the(light(arrangement="switch_loop", others="radio", neutral_at=frozenset())).ways
    assert not way.made.possible
    assert any("luminaire" in words for words in way.instead)


def test_an_unknown_arrangement_has_no_way_and_tells_all_that_is_missing() -> None:
    plain = light(arrangement=None, others=None, spare=None)
    del plain["boxes"]["B2"]["mounts"]["1"]["neutral"]
    one = the(plain)
    assert (one.ways, one.arrangement, one.ordered) == ((), None, False)
    assert {(k.place, k.field) for k in one.untold} >= {
        ("L1", "multiway.arrangement"),
        ("L1", "multiway.spare_cores"),
        ("L1", "multiway.others"),
        ("B2", "mounts.1.neutral"),
    }


def test_a_switched_neutral_and_a_device_without_a_model_have_no_way() -> None:
    assert the(light(arrangement="switched_neutral")).ways == ()
    plain = light()
    del plain["devices"]["D1"]["model"]
    one = the(plain)
    assert one.ways == ()
    assert ("D1", "model") in {(k.place, k.field) for k in one.untold}


def test_an_order_that_lacks_a_place_has_no_way() -> None:
    plain = light(places=3)
    plain["loads"]["L1"]["multiway"]["gangs"] = ["B1.1", "B2.1"]
    one = the(plain)
    assert one.ways == ()
    assert set(one.gangs) == {"B1.1", "B2.1", "B3.1"}
    assert ("L1", "multiway.gangs") in {(k.place, k.field) for k in one.untold}


def test_cores_are_not_asked_for_where_none_runs_between_the_boxes() -> None:
    one = the(light(arrangement="not_joined", others="radio", spare=None))
    assert [k.field for k in one.untold] == []
    assert one.ways[0].made.changes == ()
    joined = the(light(others="radio", spare=None))
    assert [k.field for k in joined.untold] == ["multiway.spare_cores"]


def test_each_pattern_is_what_the_test_tells() -> None:
    for answers, arrangement in patterns():
        told = tell({q.id: yes for q, yes in zip(QUESTIONS, answers, strict=True)})
        assert isinstance(told, Told)
        assert told.arrangement is arrangement
    assert {a for _, a in patterns()} == set(Arrangement) - {Arrangement.NOT_JOINED}


def sentences() -> list[str]:
    """Every sentence that a sheet of a light can print."""
    out = [w for words in ARRANGEMENTS.values() for w in (words.name, words.means)]
    out += [
        *BETWEEN,
        END_BOX,
        *(c.words for c in LIVE_TEST),
        *(w for q in QUESTIONS for w in (q.asks, q.how)),
    ]
    for rules in WiringRules:
        wish = Wish("1", True, frozenset("23"), neutral_at=frozenset("1"))
        for arrangement in (Arrangement.TOGETHER, Arrangement.OPPOSITE_ENDS):
            made = convert(arrangement, 3, wish, spare_cores=3, rules=rules)
            out += [*made.steps(), *(c.mark for c in made.changes)]
    return out


@pytest.mark.parametrize("rules", sorted(WiringRules))
def test_a_house_hears_its_own_words_alone(rules: WiringRules) -> None:
    text = " ".join(spoken(s, rules) for s in sentences())
    assert "NEC:" not in text
    own, others = ("3-way", ["two-way", "strapper", "isolate", "colour"]), ["3-way", "travel", "4-way"]
    if rules is WiringRules.NEC:
        assert own[0] in text
        assert [w for w in own[1] if w in text.lower()] == []
    else:
        assert [w for w in others if w in text] == []


def test_without_the_lines_of_cores_the_steps_send_to_the_table() -> None:
    made = convert(Arrangement.TOGETHER, 2, Wish("1", True, frozenset("2"), neutral_at=frozenset("1")))
    short = made.steps(cores=False)
    assert [s for s in short if "traveller" in s] == []
    assert [s for s in short if "table" in s] != []
    assert len(made.steps()) == len(short) - 1 + len(made.changes)
