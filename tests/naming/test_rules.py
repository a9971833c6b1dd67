"""Each rule about names, with one fault put into a house that has none."""

import pytest

from secondfix.naming import RULES
from tests.naming.called import asked, house, told
from tests.scenes.models import key
from tests.scenes.small import Plain

UNIQUE, CHARACTERS, WHOLE = "names.unique", "names.characters", "names.whole_device"
LENGTH, EXPLAINED = "names.length", "names.explained"


def test_a_house_without_a_fault_has_none() -> None:
    assert told(house(), without="") == []
    assert {f.rule for f in asked(house(spoken_language="en"))} == {r.id for r in RULES}
    assert {f.rule for f in asked(house())} == {r.id for r in RULES} - {"names.by_ear"}


def test_two_loads_of_one_room_with_one_name() -> None:
    plain = house()
    plain["loads"]["L2"]["name"] = "CEILING "
    (one,) = [f for f in asked(plain) if f.outcome == "fails"]
    assert (one.rule, one.severity, one.place) == (UNIQUE, "fault", "L1")
    assert {"L2", "B1.1", "B1.2"} <= set(one.also)
    assert "load L1 at B1.1" in one.says
    assert "load L2 at B1.2" in one.says


@pytest.mark.parametrize(
    ("name", "place"),
    [("Den", "R1"), ("den", "R1"), ("Dusk", "R1"), ("Hall\u00a0 B1", "R1"), ("Den\u200b Eye", "R1")],
)
def test_a_room_named_like_a_room_a_scene_or_an_entry(name: str, place: str) -> None:
    plain = house()
    plain["rooms"]["R3"] = {"name": "x"}
    plain["rooms"]["R3"]["name"] = name
    wrong = [t for t in told(plain) if t[0] == UNIQUE]
    assert len(wrong) == 1
    assert wrong[0][1] == "fault"


def test_composed_and_decomposed_letters_are_the_same_name() -> None:
    plain = house()
    plain["rooms"]["R1"]["name"] = "Caf\u00e9"
    plain["rooms"]["R2"]["name"] = "CAFE\u0301"
    assert (UNIQUE, "fault", "R1") in told(plain)


def test_two_devices_in_one_box_share_a_name_by_policy() -> None:
    plain = house()
    plain["boxes"]["B1"]["mounts"]["2"] = {}
    plain["boxes"]["B1"]["gangs"]["4"] = {"duty": "scene_only"}
    plain["devices"]["D7"] = {"model": key("first-two"), "box": "B1", "mounts": ["2"], "gangs": ["4"]}
    assert told(plain) == [(UNIQUE, "fault", "D1")]


def test_a_policy_without_the_load_gives_many_the_same_name() -> None:
    plain = house(gang_entry=["room"])
    assert (UNIQUE, "fault", "R1") in told(plain)


def test_a_name_that_may_become_taken_cannot_be_told() -> None:
    plain = house()
    plain["rooms"]["R3"] = {"name": "Hall B1"}
    del plain["devices"]["D1"]["model"]
    assert (UNIQUE, "cannot_tell", "R3") in told(plain)
    plain["rooms"]["R3"] = {"name": "Hall B1.3"}
    plain["boxes"]["B1"]["gangs"]["3"] = {"duty": "not_known"}
    assert (UNIQUE, "cannot_tell", "R3") in told(plain)


@pytest.mark.parametrize("mark", ["\u202e", "\u2066", "\x07", "\u200b", "\u2028", "\u00ad"])
@pytest.mark.parametrize(("collection", "place"), [("loads", "L1"), ("rooms", "R2"), ("scenes", "SC1")])
def test_a_character_that_is_not_printed_is_a_fault(mark: str, collection: str, place: str) -> None:
    plain = house()
    plain[collection][place]["name"] = f"Ni{mark}ce"
    assert told(plain) == [(CHARACTERS, "fault", place)]
    (one,) = [f for f in asked(plain) if f.rule == CHARACTERS and f.outcome == "fails"]
    assert one.value == f"U+{ord(mark):04X}"
    assert mark not in one.says


def test_a_joiner_that_a_script_needs_is_no_fault() -> None:
    plain = house()
    plain["loads"]["L1"]["name"] = "\u0646\u0645\u06cc\u200c\u062e"
    assert told(plain) == []


def test_a_blank_name_and_a_blank_between_are_told() -> None:
    plain = house(between="\x00")
    plain["places"]["P1"]["name"] = " \u00a0"
    assert told(plain) == [(CHARACTERS, "fault", "P1"), (CHARACTERS, "fault", "house")]


@pytest.mark.parametrize("name", ["Tank", "the tank", "Ceiling"])
def test_a_whole_device_entry_named_like_a_gang(name: str) -> None:
    plain = house(whole_entry=["room", "device"])
    plain["devices"]["D1"]["name"] = name
    assert (WHOLE, "fault", "D1") in told(plain)
    del plain["devices"]["D1"]["model"]
    assert (WHOLE, "cannot_tell", "D1") in told(plain)


def test_a_whole_device_entry_beside_a_gang_nobody_can_explain() -> None:
    plain = house()
    plain["boxes"]["B1"]["gangs"]["3"] = {"duty": "not_known"}
    assert told(plain) == [(WHOLE, "cannot_tell", "D1"), (EXPLAINED, "cannot_tell", "B1.3")]


def test_a_purpose_that_nobody_knows_cannot_be_set() -> None:
    plain = house()
    del plain["loads"]["L4"]["purpose"]
    assert told(plain) == [(EXPLAINED, "cannot_tell", "L4")]


def lengths(plain: Plain) -> dict[str, tuple[str, str]]:
    wrong = [f for f in asked(plain) if f.rule == LENGTH and f.outcome != "passes"]
    return {f.place: (str(f.severity if f.outcome == "fails" else f.outcome), f.value) for f in wrong}


def test_a_name_past_its_attribute_is_advice_with_a_shorter_form() -> None:
    plain = house()
    plain["loads"]["L5"]["name"] = "Shelf behind the piano"
    assert lengths(plain) == {"L5": ("advice", "26 bytes")}
    (one,) = [f for f in asked(plain) if f.place == "L5" and f.rule == LENGTH]
    assert "Zigbee Basic cluster, LocationDescription" in one.says
    assert one.limit == "16 bytes (from memory)"
    short = one.remedy.split("'")[1]
    assert len(short.encode()) <= 16


def test_bytes_are_counted_and_not_letters() -> None:
    plain = house()
    plain["scenes"]["SC1"]["name"] = "\u00e6" * 9
    assert lengths(plain) == {"SC1": ("advice", "18 bytes")}
    plain["scenes"]["SC1"]["name"] = "e" * 16
    assert lengths(plain) == {}


def test_each_protocol_has_its_own_limit() -> None:
    plain = house()
    plain["loads"]["L1"]["name"] = "Ceiling above stairs"
    assert lengths(plain) == {}, "a Z-Wave end point has no stored name of its own"
    plain["devices"]["D1"]["model"] = key("thread-three")
    assert lengths(plain) == {"L1": ("advice", "25 bytes")}
    plain["devices"]["D3"]["model"] = MATTER_LAMP
    plain["models"] = {MATTER_LAMP: _matter_lamp()}
    plain["loads"]["L5"]["name"] = "Shelf that is over the desk"
    assert set(lengths(plain)) == {"L1"}, "the only entry of a Matter node has 32 bytes"


MATTER_LAMP = "veltrane-thread-lamp@1"


def _matter_lamp() -> Plain:
    return {
        "maker": "veltrane", "name": "thread-lamp", "edition": 1, "title": "Veltrane lamp", "sheet": "VT-78",
        "form": "luminaire_module", "protocol": "matter_thread", "supply": "mains", "output": "dimmer",
        "mounts": 0, "gangs": 1, "whole_entry": False, "code": "none",
        "join": {"steps": [{"act": "wait", "wait_ms": 700}]},
    }  # fmt: skip


def test_an_unknown_protocol_blocks_only_a_name_that_some_limit_would_cut() -> None:
    plain = house()
    for device in plain["devices"].values():
        device.pop("model")
    assert lengths(plain) == {}
    plain["loads"]["L5"]["name"] = "Shelf behind the piano"
    plain["rooms"]["R1"]["name"] = "Hall of the old mill"
    found = lengths(plain)
    assert found["L5"][0] == "cannot_tell"
    assert found["R1"][0] == "cannot_tell"


def test_a_house_without_devices_has_no_limit_to_keep() -> None:
    plain = house()
    plain["devices"] = {}
    plain["rooms"]["R1"]["name"] = "Hall of the old mill, lower end"
    assert [f for f in asked(plain) if f.rule == LENGTH] == []
