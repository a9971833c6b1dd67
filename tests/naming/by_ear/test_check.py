"""What a house is told about names that sound alike."""

import json
from collections.abc import Sequence
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.assumptions import Override, default_assumptions
from secondfix.findings import Finding, Outcome, Severity
from secondfix.naming import RULES, check, sound_not_asked
from tests.scenes.small import Plain, read, small

RULE = "names.by_ear"


def house(
    *,
    rooms: Sequence[str] = (),
    scenes: Sequence[str] = (),
    loads: Sequence[str] = (),
    storeys: bool = False,
    **naming: Any,
) -> Plain:
    """The small house without its devices and with other names; every load is in R1."""
    plain = small()
    for kept in ("boxes", "places", "devices"):
        plain[kept] = {}
    plain["rooms"] = {f"R{n}": {"name": name} for n, name in enumerate(rooms or ["Veranda"], 1)}
    if storeys:
        for n, room in enumerate(plain["rooms"].values()):
            room["storey"] = f"S{n % 2}"
    plain["loads"] = {f"L{n}": {"name": name, "room": "R1"} for n, name in enumerate(loads, 1)}
    plain["scenes"] = {f"SC{n}": {"name": name} for n, name in enumerate(scenes, 1)}
    plain["naming"] = {"spoken_language": "en", "gang_entry": ["load"], **naming}
    return plain


def asked(plain: Plain, **set_to: Override) -> list[Finding]:
    assumptions = default_assumptions().overridden(set_to, set_by="house")
    return [f for f in check(read(plain), assumptions) if f.rule == RULE]


def wrong(plain: Plain, **set_to: Override) -> list[Finding]:
    return [f for f in asked(plain, **set_to) if f.outcome is not Outcome.PASSES]


def test_a_house_that_states_no_language_is_not_asked() -> None:
    plain = house(rooms=["Hall", "Wall"])
    del plain["naming"]["spoken_language"]
    assert asked(plain) == []
    assert "does not say" in (sound_not_asked(read(plain).house) or "")
    assert sound_not_asked(read(house()).house) is None


def test_two_rooms_that_sound_alike_are_advice_with_both_measures() -> None:
    (found,) = wrong(house(rooms=["Hall room", "Wall room", "Kitchen"]))
    assert (found.outcome, found.severity, found.place, found.also) == ("fails", "advice", "R1", ("R2",))
    assert found.says == "'Hall room' and 'Wall room' sound alike."
    assert "'hall' / 'wall': 1 of 3 sounds differ, weighted 1.00 (33 %), the same rhythm" in found.value
    assert "whole names: 1 of 6 sounds differ, weighted 1.00 (17 %)" in found.value
    assert found.assumptions == ("by_ear_alike_pct", "by_ear_near_pct", "by_ear_final_pct")
    assert "not validated" in found.source


def test_every_name_that_stands_clear_is_answered_once() -> None:
    plain = house(rooms=["Kitchen", "Garage"], scenes=["Bedtime"], loads=["Window lantern"])
    assert [(f.outcome, f.place) for f in asked(plain)] == [
        (Outcome.PASSES, place) for place in ("R1", "R2", "SC1", "L1")
    ]


def test_shared_words_do_not_pull_two_names_together() -> None:
    assert wrong(house(rooms=["Dining room", "Living room", "Bedroom 1", "Bedroom 2"])) == []


def test_a_clash_of_rooms_is_told_once_for_all_entries_in_them() -> None:
    plain = house(rooms=["Hall", "Wall"], loads=["Lamp", "Heater"], gang_entry=["room", "load"])
    plain["loads"] |= {"L3": {"name": "Lamp", "room": "R2"}, "L4": {"name": "Heater", "room": "R2"}}
    (found,) = wrong(plain)
    assert found.place == "R1"
    assert found.also == ("R2", "L1", "L3", "L2", "L4")
    assert found.says.endswith("Pairs of names with the same trouble: 2 more.")


def test_a_scene_is_heard_beside_entries_and_a_room_beside_rooms() -> None:
    (found,) = wrong(house(rooms=["Veranda", "Hall"], scenes=["Wall"], loads=["Hall"]))
    assert {found.place, *found.also} == {"SC1", "L1"}


@pytest.mark.parametrize(
    "names", [["Fan light", "Light fan"], ["Fan-light", "Fan light"], ["Lamp 2", "Lamp two"]]
)
def test_the_same_words_otherwise_written_sound_alike(names: list[str]) -> None:
    (found,) = wrong(house(loads=names))
    assert found.severity is Severity.ADVICE
    assert found.value == f"'{names[0]}' / '{names[1]}': the same words"


def test_names_that_read_alike_are_left_to_the_rule_about_them() -> None:
    plain = house(loads=["Lamp", "LAMP"])
    assert wrong(plain) == []
    assert "names.unique" in {f.rule for f in check(read(plain), default_assumptions()) if f.severity}


def test_an_answer_that_hangs_on_the_limits_cannot_be_told_and_one_value_settles_it() -> None:
    plain = house(loads=["Laundry", "Pantry"])
    (found,) = wrong(plain)
    assert (found.outcome, found.severity) == (Outcome.CANNOT_TELL, Severity.ADVICE)
    assert "(48 %)" in found.value
    assert [look.place for look in found.looks] == ["L1"]
    assert wrong(plain, by_ear_near_pct=Override(45)) == []
    assert wrong(plain, by_ear_near_pct=Override(50))[0].outcome is Outcome.FAILS


def test_a_word_that_is_not_known_is_listed_once_and_no_name_beside_it_passes() -> None:
    plain = house(loads=["Zorbin", "Zorbin lamp", "Zorbin heater", "Kitchen"])
    (found,) = wrong(plain)
    assert (found.outcome, found.severity, found.place) == (Outcome.CANNOT_TELL, Severity.ADVICE, "L1")
    assert "'zorbin'" in found.value
    assert "L4" in found.also


def test_a_word_that_is_not_known_does_not_matter_where_all_names_share_it() -> None:
    plain = house(loads=["Zorbin lamp", "Zorbin heater"])
    assert [f.outcome for f in asked(plain)] == [Outcome.PASSES] * 3
    (found,) = wrong(house(loads=["Zorbin hall", "Zorbin wall"]))
    assert found.outcome is Outcome.FAILS
    assert "whole names: not known" in found.value


def proposed(found: Finding) -> list[str]:
    return found.remedy.split("sounds like ")[1].split(": take")[0].replace(" or ", ", ").split(", ")


@pytest.mark.parametrize(
    ("plain", "renames"),
    [
        (house(rooms=["Hall", "Wall", "Front hall"]), "room 'Wall'"),
        (house(loads=["Reading lamp", "Reading ramp"]), "load 'Reading ramp'"),
        (house(loads=["Hall lantern", "Wall lantern"]), "load 'Wall lantern'"),
        (house(scenes=["Warning"], loads=["Morning"]), "scene 'Warning'"),
        (house(scenes=["Morning", "Warning"]), "scene 'Warning'"),
        (house(rooms=["Hall", "Wall"], storeys=True), "room 'Wall'"),
    ],
)
def test_each_proposed_name_is_told_from_every_other_name(plain: Plain, renames: str) -> None:
    (found,) = wrong(plain)
    assert found.remedy.startswith(f"Rename {renames}: put a word before it")
    old = renames.split("'")[1]
    names = [name.strip("'") for name in proposed(found)]
    assert len(names) == 3
    for name in names:
        text = json.dumps(plain).replace(f'"name": "{old}"', f'"name": "{name}"')
        assert name in text
        assert wrong(json.loads(text)) == []


def test_the_storey_is_proposed_first_where_it_tells_the_two_apart() -> None:
    (found,) = wrong(house(rooms=["Hall", "Wall"], storeys=True))
    assert proposed(found)[0] == "'Upper Wall'"


def test_where_no_word_of_the_list_will_do_none_is_proposed() -> None:
    plain = house(loads=["Lamp", "Ramp", *(f"{w} ramp" for w in WHERE), *(f"{w} lamp" for w in WHERE)])
    remedies = [f.remedy for f in wrong(plain) if f.place == "L1" and "'Ramp'" in f.says]
    assert remedies
    assert all("none of our own list will do" in remedy for remedy in remedies)


WHERE = "front back garden street upper lower inner outer corner window north south east west".title().split()


NAMES = st.lists(
    st.sampled_from(
        [
            "Hall",
            "Wall",
            "Fan light",
            "Van light",
            "Lamp 1",
            "Lamp 2",
            "Zorbin",
            "Quixell hall",
            "Ball lamp",
            "—",
        ]
    ),
    min_size=1,
    max_size=5,
)


@given(NAMES, NAMES, NAMES)
def test_never_more_than_advice_and_every_name_is_answered(
    rooms: list[str], scenes: list[str], loads: list[str]
) -> None:
    found = asked(house(rooms=rooms, scenes=scenes, loads=loads))
    assert {f.severity for f in found} <= {None, Severity.ADVICE}
    told = {i for f in found for i in (f.place, *f.also)}
    named = [*enumerate(rooms, 1)], [*enumerate(scenes, 1)], [*enumerate(loads, 1)]
    ids = zip(("R", "SC", "L"), named, strict=True)
    assert told == {f"{letter}{n}" for letter, names in ids for n, name in names if name != "—"}
    passed = [f.place for f in found if f.outcome is Outcome.PASSES]
    marred = {i for f in found if f.outcome is not Outcome.PASSES for i in (f.place, *f.also)}
    assert len(set(passed)) == len(passed)
    assert not marred & set(passed)


@given(NAMES, NAMES)
def test_a_word_made_unknown_makes_no_name_pass(scenes: list[str], loads: list[str]) -> None:
    """Writing 'Wall' as a word that the dictionary lacks never turns an answer into a pass."""
    before = {f.place for f in asked(house(scenes=scenes, loads=loads)) if f.outcome is Outcome.PASSES}
    unknown = [[n.replace("Wall", "Qorr") for n in names] for names in (scenes, loads)]
    after = {
        f.place for f in asked(house(scenes=unknown[0], loads=unknown[1])) if f.outcome is Outcome.PASSES
    }
    assert after <= before


def test_the_rule_is_listed() -> None:
    assert RULE in {r.id for r in RULES}
