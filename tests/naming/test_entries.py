"""The entries that a device shows: numbers, what each is, names by policy."""

import json

import pytest

from secondfix.naming import EntryKind, names_as_json
from tests.naming.called import house, named, spoken
from tests.scenes.models import MODELS, key
from tests.scenes.small import Plain


def one_gang(model: str | None, protocol: str | None = None) -> Plain:
    plain = house()
    plain["boxes"]["B3"]["gangs"]["1"] = {"duty": "scene_only"}
    plain["devices"]["D8"] = {"box": "B3", "mounts": ["1"], "gangs": ["1"]}
    plain["devices"]["D8"] |= {"model": key(model)} if model else {}
    if protocol:
        plain["networks"] = {"N1": {"name": "Main", "protocol": protocol}}
        plain["devices"]["D8"]["network"] = "N1"
    return plain


def test_a_switch_with_a_whole_device_entry_shows_one_more_than_its_gangs() -> None:
    entries = named(house()).of_device["D1"]
    assert [(e.number, e.endpoint, e.kind, e.name, e.place) for e in entries] == [
        (0, 0, EntryKind.WHOLE_DEVICE, "Hall B1", "B1"),
        (1, 1, EntryKind.GANG, "Hall Ceiling", "B1.1"),
        (2, 2, EntryKind.GANG, "Hall Strip", "B1.2"),
        (3, 3, EntryKind.GANG, "Hall Tank", "B1.3"),
    ]
    assert [e.purpose for e in entries] == [None, "lighting", "lighting", "animal_care"]


@pytest.mark.parametrize("name", [m.split("-", 1)[1].split("@")[0] for m in MODELS if MODELS[m].mounts])
def test_as_many_entries_as_the_model_says(name: str) -> None:
    plain = house()
    plain["devices"]["D2"] |= {"model": key(name), "gangs": ["1"]}
    assert len(named(plain).of_device["D2"]) == MODELS[key(name)].entries


@pytest.mark.parametrize(
    ("model", "protocol", "numbers"),
    [
        ("plain-one", None, [(1, 1)]),
        ("zw-one", None, [(1, 0)]),
        (None, "zigbee", [(1, 1)]),
        (None, "zwave", [(0, 0), (1, None)]),
        (None, None, [(0, None), (1, None)]),
    ],
    ids=["zigbee", "z-wave without a whole-device entry", "zigbee open", "z-wave open", "all open"],
)
def test_a_single_gang_has_the_endpoint_of_its_protocol(
    model: str | None, protocol: str | None, numbers: list[tuple[int, int | None]]
) -> None:
    entries = named(one_gang(model, protocol)).of_device["D8"]
    assert [(e.number, e.endpoint) for e in entries] == numbers
    assert [e.stands for e in entries] == [e.number != 0 for e in entries]


def test_a_gang_that_feeds_nothing_is_named_by_what_it_is_and_its_id() -> None:
    plain = house()
    plain["boxes"]["B1"]["gangs"]["3"] = {"duty": "not_known"}
    plain["boxes"]["B2"]["gangs"]["1"] = {"duty": "extends", "extends": "B1.1"}
    assert spoken(plain, "D1")[3] == "Hall B1.3", "'Hall not known B1.3' would be too long to store"
    assert spoken(plain, "D2") == {1: "Den B2.1", 2: "Den scene B2.2"}
    assert spoken(one_gang("plain-one"), "D8") == {1: "Den scene B3.1"}
    plain["rooms"]["R1"]["name"] = "No"
    assert spoken(plain, "D1")[3] == "No B1.3"
    plain["rooms"]["R1"]["name"] = "A"
    assert spoken(plain, "D1")[3] == "A not known B1.3"


def test_a_capped_gang_and_a_spare_one_have_names_of_their_own() -> None:
    plain = one_gang("plain-two")
    plain["boxes"]["B3"]["gangs"]["1"] = {"duty": "capped"}
    assert spoken(plain, "D8") == {1: "Den capped B3.1", 2: "Den spare D8.2"}


def test_an_extension_is_named_after_the_load_at_the_end_where_that_fits() -> None:
    plain = house(gang_entry=["load"], between="")
    plain["loads"]["L2"]["name"] = "Up"
    plain["boxes"]["B2"]["gangs"]["1"] = {"duty": "extends", "extends": "B2.2"}
    plain["boxes"]["B2"]["gangs"]["2"] = {"duty": "extends", "extends": "B1.2"}
    assert spoken(plain, "D2") == {1: "UpextensionB2.1", 2: "UpextensionB2.2"}
    plain["boxes"]["B1"]["gangs"]["2"] = {"duty": "not_known"}
    plain["rooms"]["R2"]["name"] = "Y"
    assert spoken(plain, "D2")[1] == "YextensionB2.1"


def test_devices_outside_a_box_are_named_by_load_or_by_themselves() -> None:
    plain = house()
    plain["devices"]["D5"] = {"place": "P1", "model": key("button"), "name": "Clicker"}
    assert spoken(plain, "D3") == {1: "Den Shelf"}
    assert spoken(plain, "D4") == {1: "Den Eye"}
    assert spoken(plain, "D5") == {1: "Den Clicker 1", 2: "Den Clicker 2"}
    assert {e.kind for e in named(plain).of_device["D5"]} == {EntryKind.PLACE_DEVICE}


def test_a_battery_button_in_a_box_shows_its_buttons() -> None:
    plain = house()
    plain["devices"]["D6"] = {"box": "B3", "model": key("button")}
    assert spoken(plain, "D6") == {1: "Den D6 1", 2: "Den D6 2"}


@pytest.mark.parametrize(
    ("naming", "gang", "whole"),
    [
        ({"gang_entry": ["storey", "room", "load"], "between": "-"}, "Ground-Hall-Ceiling", "Hall-B1"),
        ({"gang_entry": ["load", "box", "gang"]}, "Ceiling B1 1", "Hall B1"),
        ({"gang_entry": ["load"], "whole_entry": ["load", "device"]}, "Ceiling", "Long"),
        ({"gang_entry": ["device", "gang"], "whole_entry": ["load"]}, "Long 1", "D1"),
    ],
)
def test_the_policy_puts_parts_together_and_drops_empty_ones(naming: Plain, gang: str, whole: str) -> None:
    plain = house(**naming)
    plain["devices"]["D1"]["name"] = "Long"
    names = spoken(plain, "D1")
    assert (names[1], names[0]) == (gang, whole)


def test_an_unknown_storey_is_an_empty_part() -> None:
    plain = house(gang_entry=["storey", "load"])
    del plain["rooms"]["R1"]["storey"]
    assert spoken(plain, "D1")[1] == "Ceiling"


def test_an_output_outside_a_box_takes_place_and_number_from_where_it_stands() -> None:
    assert spoken(house(gang_entry=["box", "gang", "device"]), "D3") == {1: "Alcove 1 D3"}
    plain = house(place_entry=["box", "gang"])
    plain["devices"]["D5"] = {"place": "P1", "model": key("button")}
    assert spoken(plain, "D5") == {1: "Alcove 1", 2: "Alcove 2"}


def test_a_name_carries_no_character_without_ink() -> None:
    plain = house()
    plain["loads"]["L1"]["name"] = "Cei\u202eling\x1b[31m  x"
    assert spoken(plain, "D1")[1] == "Hall Ceiling[31m x"


def test_identity_is_address_and_endpoint() -> None:
    plain = house()
    plain["devices"]["D1"]["address"] = "A1B2C3D4E5F60718"
    found = named(plain)
    assert {(e.address, e.endpoint) for e in found.of_device["D1"]} == {
        ("A1B2C3D4E5F60718", n) for n in range(4)
    }
    assert found.of("D1", 2) is not None
    assert found.of("D1", 9) is None


def test_the_json_tells_every_entry() -> None:
    shown = names_as_json(named(house()))
    assert json.loads(json.dumps(shown)) == shown
    first = shown["devices"][0]["entries"][1]  # type: ignore[index] # the shape is what is tested
    assert first == {
        "entry": 1,
        "endpoint": 1,
        "kind": "gang",
        "name": "Hall Ceiling",
        "place": "B1.1",
        "room": "R1",
        "duty": "feeds",
        "load": "L1",
        "purpose": "lighting",
        "protocol": "zwave",
        "address": None,
        "stands": True,
        "explained": True,
    }
