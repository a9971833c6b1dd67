"""A house begun from a device list: rooms and devices first, nothing of the wiring taken from it."""

from pathlib import Path

from secondfix.exchange import Mapping, Table, mapped, read_list, read_mapping
from secondfix.files import shipped_models
from secondfix.house import Duty, schedule, uuid7
from secondfix.journal import Entry, Journal, fold, journal_of, new_entry
from secondfix.maintenance import Begun, ListRow, begin_from, reconcile, written
from secondfix.naming import names
from secondfix.terms import Protocol

ID = uuid7(unix_ms=1_955_000_000_000, random=bytes(range(10)))


def begun(rows: list[ListRow], protocol: Protocol = Protocol.ZWAVE) -> Begun:
    made = begin_from(
        rows, house_id=ID, name="Begun", network_name="Hub", protocol=protocol, models=shipped_models()
    )
    assert isinstance(made, Begun), made
    return made


def listed(tree: Path) -> list[ListRow]:
    folder = tree / "demo/maintenance"
    mapping = read_mapping((folder / "mapping.json").read_bytes(), where="mapping")
    table = read_list((folder / "list.csv").read_bytes(), where="list", delimiter=";")
    assert isinstance(mapping, Mapping)
    assert isinstance(table, Table)
    rows = mapped(table, mapping, shipped_models())
    assert isinstance(rows, tuple)
    return rows[0]


def test_the_rooms_and_devices_of_the_list_stand_in_the_house(tree: Path) -> None:
    house = begun(listed(tree)).house
    assert [r.name for r in house.rooms.values()] == ["Workshop", "Paint store", "Yard", "Drying room"]
    assert [d.model for d in house.devices.values()] == [
        "ostrabeck-gull-four@2",
        "ostrabeck-gull-two@2",
        None,
    ]
    assert house.devices["D01"].address == "5A11C04D00317E02"


def test_no_gang_is_said_to_feed_anything_and_no_fact_of_a_box_is_known(tree: Path) -> None:
    house = begun(listed(tree)).house
    for box in house.boxes.values():
        assert box.depth_mm is None
        assert all(m.neutral is None for m in box.mounts.values())
        assert all(g.duty is Duty.NOT_KNOWN for g in box.gangs.values())
    assert len(house.loads) == 6


def test_the_list_and_the_house_begun_from_it_agree_once_the_names_are_written_down(tree: Path) -> None:
    rows = listed(tree)
    made = begun(rows)
    plain = written(
        made.entries, Journal(), house=ID, revision="A", writer="Pell", at="2034-09-09T10:10+01:00",
        new_id=lambda n: uuid7(unix_ms=1_955_000_000_000 + n, random=bytes(10)),
    )  # fmt: skip
    entries = [new_entry(e, where="test") for e in plain]
    known = journal_of(e for e in entries if isinstance(e, Entry))
    assert len(known) == len(rows)
    book = schedule(made.house, made.house.models)
    assert reconcile(book, fold(made.house, known), names(book), rows).differences == ()


def test_a_model_of_another_protocol_is_left_open_and_told() -> None:
    made = begun([ListRow(number=2, name="a", model="plimmet-osier-one@1", room="Loft")])
    assert made.house.devices["D01"].model is None
    assert any("does not speak zwave" in told for told in made.told)


def test_a_device_that_stands_in_no_box_gets_a_place() -> None:
    made = begun([ListRow(number=2, name="a", model="plimmet-tern@1")], Protocol.ZIGBEE)
    assert made.house.places["P01"].kind == "socket"
    assert made.house.rooms["R01"].name == "Room not told"


def test_a_row_that_names_no_device_is_told() -> None:
    made = begun([ListRow(number=2, name="a"), ListRow(number=3)])
    assert any(told.startswith("row 3") for told in made.told)


def test_a_list_without_any_device_is_refused() -> None:
    made = begin_from(
        [ListRow(number=2)], house_id=ID, name="B", network_name="H", protocol=Protocol.ZIGBEE, models={}
    )
    assert isinstance(made, list)


def test_names_longer_than_the_document_allows_are_cut_and_rooms_stay_apart() -> None:
    made = begun([ListRow(number=2, name="x" * 300, room="y" * 300), ListRow(number=3, name="z", room="w")])
    assert len(made.house.rooms) == 2
