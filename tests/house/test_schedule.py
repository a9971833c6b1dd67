"""The switch schedule joins gang, box, device, model and load."""

from secondfix.house import Row, schedule
from tests import example_house as ex


def test_a_row_holds_all_that_meets_in_a_gang() -> None:
    house = ex.house()
    s = schedule(house, house.models)
    row = s.rows["B1.2"]
    assert (row.load_id, row.device_id, row.channel) == ("L2", "D01", 2)
    assert row.model is not None
    assert row.model.key == "corvell-pair@1"
    assert s.extended_by == {"B1.2": ("B2.1",)}
    assert isinstance(s.fed_by["L2"], Row) or s.fed_by["L2"].load_id == "L2"


def test_channels_follow_the_devices_own_order() -> None:
    plain = ex.document()
    plain["devices"]["D01"]["gangs"] = ["2", "1"]
    s = schedule(ex.house(plain), ex.models())
    assert [(c.number, c.place, c.load_id) for c in s.channels_of["D01"]] == [
        (1, "B1.2", "L2"),
        (2, "B1.1", "L1"),
    ]


def test_a_gang_without_a_device_is_a_row_too() -> None:
    house = ex.house()
    row = schedule(house, house.models).rows["B2.1"]
    assert (row.device_id, row.model, row.channel, row.load_id) == (None, None, None, None)


def test_where_a_device_stands() -> None:
    house = ex.house()
    s = schedule(house, house.models)
    assert (s.place_of_device("D01"), s.room_of_device("D01")) == ("B1", "R1")
    assert (s.place_of_device("D02"), s.room_of_device("D02")) == ("P2", "R2")
