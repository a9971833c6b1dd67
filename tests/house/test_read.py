# ruff: noqa: E501 - a case of the table stays one line
"""Reading a house: every fault at once, each with its place, what stands and what was expected."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import LARGEST_FILE_BYTES, House, as_canonical_json, read_house
from tests import example_house as ex

Change = Callable[[dict[str, Any]], Any]


def faults(plain: object) -> list[tuple[str, str, str]]:
    read = read_house(ex.as_bytes(plain), where="h.json", models=ex.models())
    return [] if isinstance(read, House) else [(f.path, f.stands, f.expected) for f in read]


CASES: list[tuple[str, Change, str, str, str]] = [
    ("an unknown key", lambda d: d["boxes"]["B1"].update(depht_mm=3), "boxes.B1.depht_mm", "unknown key", "perhaps 'depth_mm'"),
    ("an unknown key far from any", lambda d: d.update(zzz=1), "zzz", "unknown key", "one of format, id"),
    ("a missing name", lambda d: d["rooms"]["R1"].pop("name"), "rooms.R1.name", "nothing", "required"),
    ("a fraction", lambda d: d["boxes"]["B1"]["depth_mm"].update(value=4.5), "boxes.B1.depth_mm.value", "4.5", "a whole number"),
    ("an absurd depth", lambda d: d["boxes"]["B1"]["depth_mm"].update(value=4700), "boxes.B1.depth_mm.value", "4700", "less than or equal to 150"),
    ("a word the format does not have", lambda d: d["boxes"]["B1"]["shell"].update(value="bamboo"), "boxes.B1.shell.value", "'bamboo'", "'plastic' or 'metal'"),
    ("how known is missing", lambda d: d["boxes"]["B1"]["shell"].pop("known"), "boxes.B1.shell.known", "nothing", "required"),
    ("an id of a wrong form", lambda d: d["rooms"].update({"r 3": {"name": "Attic"}}), "rooms.r 3", "'r 3'", "a capital, then letters, digits, - or _"),
    ("an id used twice", lambda d: d["loads"].update(R1=d["loads"]["L1"] | {"name": "Other"}), "loads.R1", "'R1'", "an id not used before (rooms has it)"),
    ("a dangling room", lambda d: d["boxes"]["B1"].update(room="R9"), "boxes.B1.room", "'R9'", "the id of a room"),
    ("a dangling storey", lambda d: d["rooms"]["R1"].update(storey="S7"), "rooms.R1.storey", "'S7'", "the id of a storey"),
    ("a dangling wall", lambda d: d["doors"]["D1"].update(wall="W7"), "doors.D1.wall", "'W7'", "the id of a wall"),
    ("a dangling line", lambda d: d["boxes"]["B1"]["gangs"]["1"]["line"].update(value="C9"), "boxes.B1.gangs.1.line.value", "'C9'", "the id of a circuit"),
    ("a neutral of nowhere", lambda d: d["boxes"]["B1"]["mounts"]["1"]["neutral"].update(value="Blue"), "boxes.B1.mounts.1.neutral.value", "'Blue'", "'absent' or 'earth'"),
    ("a gang on no mount", lambda d: d["boxes"]["B1"]["gangs"]["1"].update(mount="3"), "boxes.B1.gangs.1.mount", "'3'", "one of the box's mounts: 1"),
    ("a label that names no room", lambda d: d["circuits"]["C1"].update(label_rooms=["R8"]), "circuits.C1.label_rooms[0]", "'R8'", "the id of a room"),
    ("a value without how it is known", lambda d: d["boxes"]["B1"].update(depth_mm=47), "boxes.B1.depth_mm", "47", '{ "value": ..., "known": "measured" }'),
    ("a number in place of a word", lambda d: d["devices"]["D01"].update(gangs=[1, 2]), "devices.D01.gangs[0]", "1", "text in quotes"),
    ("a code in the house", lambda d: d["devices"]["D01"].update(code="90013"), "devices.D01.code", "unknown key", "perhaps 'code_ref'"),
    ("a key reference of another form", lambda d: d["devices"]["D01"].update(code_ref="7"), "devices.D01.code_ref", "'7'", "the code itself is on the key ring"),
    ("a duty left out", lambda d: d["boxes"]["B1"]["gangs"]["1"].pop("duty"), "boxes.B1.gangs.1.duty", "nothing", "'feeds', where 'load' is given"),
    ("an extension's duty left out", lambda d: d["boxes"]["B2"]["gangs"]["1"].pop("duty"), "boxes.B2.gangs.1.duty", "nothing", "'extends', where 'extends' is given"),
    ("a channel on a Z-Wave network", lambda d: d["networks"]["N1"].update(channel=20), "networks.N1.channel", "20", "the region gives"),
    ("a channel that 2.4 GHz does not have", lambda d: [d["networks"].update(N2={"name": "Other", "protocol": "zigbee", "channel": 5})], "networks.N2.channel", "5", "11 to 26"),
    ("a model without its edition", lambda d: d["devices"]["D01"].update(model="corvell-pair"), "devices.D01.model", "'corvell-pair'", "<maker>-<name>@<edition>"),
    ("an outline left open", lambda d: d["rooms"]["R1"].update(outline_mm=[[0, 0], [1, 1]]), "rooms.R1.outline_mm", "a list of 2", "at least 3"),
    ("an outline closed by hand", lambda d: d["rooms"]["R1"]["outline_mm"].append([0, 0]), "rooms.R1.outline_mm", "its first point again", "closes by itself"),
    ("an outline that crosses itself", lambda d: d["rooms"]["R1"].update(outline_mm=[[0, 0], [3000, 4000], [3000, 0], [0, 3000]]), "rooms.R1.outline_mm", "cross", "in order around the room"),
    ("an outline without area", lambda d: d["rooms"]["R1"].update(outline_mm=[[0, 0], [1000, 0], [2000, 0]]), "rooms.R1.outline_mm", "no area", "in order around"),
    ("a corner twice", lambda d: d["rooms"]["R1"]["outline_mm"].insert(2, [3000, 0]), "rooms.R1.outline_mm", "a corner twice", "each corner once"),
    ("a wall of no length", lambda d: d["walls"]["W1"].update(to_mm=[3050, 0]), "walls.W1", "no length", "two ends"),
    ("layers that do not add up", lambda d: d["walls"]["W1"].update(thickness_mm=180), "walls.W1.layers", "100 mm together", "180 mm"),
    ("a door past its wall", lambda d: d["doors"]["D1"].update(along_mm=3900), "doors.D1", "ends 4700 mm along W1", "4000 mm"),
    ("a box above the ceiling", lambda d: d["boxes"]["B1"]["position"].update(height_mm=2900), "boxes.B1.position.height_mm", "2900", "2600"),
    ("a box far outside its room", lambda d: d["boxes"]["B1"]["position"].update(x_mm=9000), "boxes.B1.position", "6000 mm outside R1", "within 600 mm"),
    ("a load fed twice", lambda d: d["boxes"]["B1"]["gangs"]["2"].update(load="L1"), "boxes.B1.gangs.2.load", "'L1'", "boxes.B1.gangs.1.load feeds it"),
    ("a load fed by gang and by output", lambda d: d["devices"]["D02"].update(outputs={"1": "L1"}), "devices.D02.outputs.1", "'L1'", "feeds it"),
    ("a feed without a load", lambda d: d["boxes"]["B1"]["gangs"]["2"].pop("load"), "boxes.B1.gangs.2.load", "nothing", "duty 'feeds'"),
    ("a load beside another duty", lambda d: d["boxes"]["B1"]["gangs"]["2"].update(duty="capped"), "boxes.B1.gangs.2.load", "'L2'", "nothing beside duty 'capped'"),
    ("extensions in a ring", lambda d: d["boxes"]["B1"]["gangs"].update({"2": {"duty": "extends", "extends": "B2.1"}}), "boxes.B2.gangs.1.extends", "a ring", "ends in a gang that feeds"),
    ("an extension of itself", lambda d: d["boxes"]["B2"]["gangs"]["1"].update(extends="B2.1"), "boxes.B2.gangs.1.extends", "a ring", "ends in a gang"),
    ("an extension of a capped gang", lambda d: d["boxes"]["B1"]["gangs"].update({"2": {"duty": "capped"}}), "boxes.B2.gangs.1.extends", "'capped'", "a gang that feeds"),
    ("an extension of nothing", lambda d: d["boxes"]["B2"]["gangs"]["1"].update(extends="B7.1"), "boxes.B2.gangs.1.extends", "'B7.1'", "the id of a gang"),
    ("a device that stands nowhere", lambda d: d["devices"]["D02"].pop("place"), "devices.D02", "neither box nor place", "where it stands"),
    ("a device in two places", lambda d: d["devices"]["D02"].update(box="B2"), "devices.D02", "both box and place", "where it stands"),
    ("two devices on one mount", lambda d: d["devices"].update(D03={"box": "B1", "mounts": ["1"]}), "devices.D03.mounts", "'1'", "devices.D01 takes it"),
    ("two devices on one gang", lambda d: d["devices"].update(D03={"box": "B1", "gangs": ["2"]}), "devices.D03.gangs", "'2'", "devices.D01 takes it"),
    ("a gang given twice", lambda d: d["devices"]["D01"].update(gangs=["1", "1"]), "devices.D01.gangs", "'1' given 2 times", "each once"),
    ("a gang the box does not have", lambda d: d["devices"]["D01"].update(gangs=["1", "5"]), "devices.D01.gangs[1]", "'5'", "gangs of box B1: 1, 2"),
    ("too many mounts for the model", lambda d: d["devices"]["D01"].update(mounts=[]), "devices.D01.mounts", "0 given", "1, which corvell-pair@1 takes"),
    ("a switch on a shelf", lambda d: d["devices"].update(D01={"model": "corvell-pair@1", "place": "P2"}), "devices.D01.place", "'P2'", "a box"),
    ("an unknown model", lambda d: d["devices"]["D01"].update(model="corvell-nil@1"), "devices.D01.model", "'corvell-nil@1'", "a model of the catalogue"),
    ("a network of another protocol", lambda d: d["networks"]["N1"].update(protocol="zigbee"), "devices.D01.network", "a zigbee network", "zwave"),
    ("a state that cannot be set", lambda d: d["devices"]["D01"].update(after_power_loss="on"), "devices.D01.after_power_loss", "'on'", "off, last"),
    ("an output the model lacks", lambda d: d["devices"]["D02"].update(outputs={"4": "L1"}), "devices.D02.outputs.4", "an output", "at most 1"),
    ("an address twice", lambda d: [d["devices"][k].update(address="00AA11BB22CC33DD") for k in ("D01", "D02")], "devices.D02.address", "'00AA11BB22CC33DD'", "D01 has it"),
    ("gangs at a place", lambda d: d["devices"]["D02"].update(gangs=["1"]), "devices.D02.gangs", "1 given", "none"),
    ("outputs in a box", lambda d: d["devices"]["D01"].update(outputs={"1": "L1"}), "devices.D01.outputs", "1 given", "the gangs name their loads"),
    ("a scene that selects nothing", lambda d: d["scenes"]["SC1"]["rules"][0].update(select={}), "scenes.SC1.rules[0].select", "an object with 0 keys", "at least one criterion"),
    ("a selector of nulls", lambda d: d["scenes"]["SC1"]["rules"][0].update(select={"room": None}), "scenes.SC1.rules[0].select", "an object with 1 keys", "at least one criterion"),
    ("a level on off", lambda d: d["scenes"]["SC1"]["rules"][0].update(level_pct=30), "scenes.SC1.rules[0]", "an object", "a level goes with 'on'"),
    ("a start without its hour", lambda d: d["scenes"]["SC1"]["starts"].append({"by": "time"}), "scenes.SC1.starts[1]", "an object", "also states at"),
    ("a start with too much", lambda d: d["scenes"]["SC1"]["starts"].append({"by": "time", "at": "06:40", "gang": "B1.1"}), "scenes.SC1.starts[1]", "an object", "does not take gang"),
    ("a selector's dangling load", lambda d: d["scenes"]["SC1"]["rules"][0].update(select={"load": "L9"}), "scenes.SC1.rules[0].select.load", "'L9'", "the id of a load"),
    ("a command to an entry the model lacks", lambda d: d["scenes"]["SC1"].update(commands=[{"device": "D01", "entry": 3, "to": "off"}]), "scenes.SC1.commands[0].entry", "3", "0 to 2"),
    ("an outside use of no device", lambda d: d["outside_uses"]["U1"].update(device="D88"), "outside_uses.U1.device", "'D88'", "the id of a device"),
    ("an assumption nobody reads", lambda d: d.update(assumptions={"luck": {"value": 3}}), "assumptions.luck", "a name nobody reads", "secondfix assumptions lists them"),
    ("an assumption outside its range", lambda d: d.update(assumptions={"parent_margin_db": {"value": 3, "low": 5}}), "assumptions.parent_margin_db", "5 <= 3", "low <= value <= high"),
    ("a model under another's key", lambda d: d.update(models={"corvell-pair@7": ex.models()["corvell-pair@1"].model_dump(mode="json")}), "models.corvell-pair@7", "a copy of corvell-pair@1", "a copy of corvell-pair@7"),
    ("a format of tomorrow", lambda d: d.update(format=2), "format", "2", "newer Secondfix"),
    ("a UUID of another version", lambda d: d.update(id="01936b1e-7a40-4c21-8f3e-5d2c9a71b604"), "id", "'01936b1e", "text of the form"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("change", "path", "stands", "expected"), [c[1:] for c in CASES], ids=[c[0] for c in CASES]
)
def test_a_fault_is_told_at_its_place(change: Change, path: str, stands: str, expected: str) -> None:
    plain = ex.document()
    change(plain)
    told = faults(plain)
    assert any(p == path and stands in s and expected in e for p, s, e in told), told


def test_a_list_of_bad_points_is_told_by_its_points_alone() -> None:
    plain = ex.document()
    plain["rooms"]["R1"]["outline_mm"] = ["a", "b", "c"]
    assert {p for p, _, _ in faults(plain)} == {f"rooms.R1.outline_mm[{n}]" for n in range(3)}


def test_the_example_itself_has_no_fault() -> None:
    assert faults(ex.DOCUMENT) == []


def test_faults_of_one_stage_come_all_at_once() -> None:
    plain = ex.document()
    plain["boxes"]["B1"]["room"], plain["loads"]["L1"]["room"] = "R9", "R8"
    plain["scenes"]["SC1"]["rules"][0]["select"] = {"room": "R7"}
    assert {p for p, _, _ in faults(plain)} == {
        "boxes.B1.room",
        "loads.L1.room",
        "scenes.SC1.rules[0].select.room",
    }


TEXTS = [
    ("a key twice", b'{"rooms": {"R1": {"name": "A"}, "R1": {"name": "B"}}}', "rooms.R1", "stands twice"),
    ("not JSON", b'{"rooms": ', "line 1, column 11", "not JSON"),
    ("not UTF-8", b'{"name": "\xff"}', "byte 10", "not UTF-8"),
    ("not a number", b'{"a": NaN}', "", "a number that cannot be read"),
    ("a number of ten thousand digits", b'{"a": ' + b"1" * 10_000 + b"}", "", "a number that cannot be read"),
    ("too deep for the document", b'{"a":' * 40 + b"1" + b"}" * 40, ".a.a", "nested too deep"),
    ("too deep for the parser", b"[" * 100_000 + b"]" * 100_000, "", "nested too deep"),
    ("too large", b" " * (LARGEST_FILE_BYTES + 1), "", "20,971,521 bytes"),
    ("a list in place of a house", b"[1, 2]", "", "a list of 2"),
    ("nothing at all", b"", "line 1, column 1", "not JSON"),
]


@pytest.mark.parametrize(("data", "path", "stands"), [t[1:] for t in TEXTS], ids=[t[0] for t in TEXTS])
def test_a_text_that_holds_no_house_is_refused_in_one_line(data: bytes, path: str, stands: str) -> None:
    read = read_house(data, where="h.json", models={})
    assert isinstance(read, list)
    assert len(read) == 1
    assert path in read[0].path
    assert stands in read[0].stands
    assert "\n" not in str(read[0])


@given(st.binary(max_size=200) | st.text(max_size=200).map(str.encode))
def test_no_bytes_make_the_reader_raise(data: bytes) -> None:
    assert isinstance(read_house(data, where="x", models={}), list)


json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=8), lambda s: st.lists(s, max_size=3) | st.dictionaries(st.text(max_size=5), s, max_size=3), max_leaves=6
)  # fmt: skip


def _paths(value: object, at: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    children: list[tuple[str | int, object]] = []
    if isinstance(value, dict):
        children = list(value.items())
    elif isinstance(value, list):
        children = list(enumerate(value))
    return (
        [at] + [p for key, child in children for p in _paths(child, (*at, key))] if at or children else [at]
    )


@given(st.data())
def test_any_value_anywhere_is_read_or_told_in_single_lines(data: st.DataObject) -> None:
    plain = ex.document()
    path = data.draw(st.sampled_from([p for p in _paths(plain) if p]))
    node: Any = plain
    for part in path[:-1]:
        node = node[part]
    node[path[-1]] = data.draw(json_values)
    read = read_house(ex.as_bytes(plain), where="h.json", models=ex.models())
    if isinstance(read, list):
        assert read
        assert all("\n" not in str(f) for f in read)


def test_the_models_a_house_uses_are_embedded_in_it() -> None:
    house = ex.house()
    assert sorted(house.models) == ["corvell-pair@1", "corvell-pebble@2"]
    again = read_house(as_canonical_json(house).encode(), where="h.json", models={})
    assert again == house


def test_only_room_names_boxes_and_gangs_are_required() -> None:
    least = {
        "format": 1,
        "id": ex.DOCUMENT["id"],
        "name": "Bare",
        "rooms": {"R1": {"name": "Hall"}},
        "boxes": {"B1": {"room": "R1", "mounts": {"1": {}}, "gangs": {"1": {}}}},
    }
    assert faults(least) == []
    assert json.loads(as_canonical_json(ex.house(least))) == least
