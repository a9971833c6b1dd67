"""Which row of a survey stands for which device, and several surveys put together."""

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from secondfix.radio import Sends, Transmitter, put_together, reach
from secondfix.radio.channels.carrying import carried, off_plan
from tests.radio.houses import assumed, row_of_rooms, rows_of

ROWS = rows_of(row_of_rooms(5))
STATIONS = reach(ROWS, assumed()).networks["N1"].stations


def one(place: str | None, name: str = "", level_dbm: int = -60, channel: int = 6) -> Transmitter:
    return Transmitter(Sends.WIFI, channel, 20, level_dbm, 100, place, name)


def stands_for(*heard: Transmitter) -> dict[str, list[int]]:
    """Rows by station."""
    reaches = carried(ROWS.house, heard, STATIONS).reaches
    return {s.id: [n for n in range(len(heard)) if reaches[k, n]] for k, s in enumerate(STATIONS)}


def test_the_nearest_place_surveyed_stands_for_a_device() -> None:
    found = stands_for(one("B0"), one("B4"))
    assert [found[d] for d in ("N1", "D0", "D1", "D3", "D4")] == [[0], [0], [0], [1], [1]]


def test_a_row_without_a_place_stands_for_the_whole_house() -> None:
    assert set(map(tuple, stands_for(one(None), one("B2")).values())) == {(0, 1)}


def test_a_named_one_heard_at_a_place_and_in_the_house_counts_once() -> None:
    assert stands_for(one(None, "Tarn"), one("B2", "Tarn"))["D2"] == [1]
    assert stands_for(one(None, "Tarn", channel=1), one("B2", "Tarn"))["D2"] == [0, 1]


def test_a_device_at_the_very_place_is_told_apart() -> None:
    there = carried(ROWS.house, [one("B1")], STATIONS)
    assert [s.id for k, s in enumerate(STATIONS) if there.own[k, 0]] == ["D1"]


def two_storeys() -> dict[str, Any]:
    plain = row_of_rooms(3)
    plain["storeys"]["S1"] = {"name": "First", "level_mm": 2600, "height_mm": 2500}
    plain["rooms"]["R2"] |= {"storey": "S1", "outline_mm": [[0, 0], [4000, 0], [4000, 5000], [0, 5000]]}
    plain["boxes"]["B2"]["position"] = {"x_mm": 2000, "y_mm": 60, "height_mm": 1100}
    return plain


def test_a_place_on_its_own_level_stands_before_a_nearer_one_above() -> None:
    rows = rows_of(two_storeys())
    stations = reach(rows, assumed()).networks["N1"].stations
    heard = [one("B1"), one("B2")]
    reaches = carried(rows.house, heard, stations).reaches
    found = {s.id: reaches[k].tolist() for k, s in enumerate(stations)}
    assert found["D0"] == [True, False]  # above it, 2.6 m; on its own level, 4 m
    assert found["D2"] == [False, True]


def test_what_is_not_on_the_plan_stands_for_the_whole_house_and_is_named() -> None:
    plain = row_of_rooms(3)
    del plain["boxes"]["B2"]["position"]
    rows = rows_of(plain)
    stations = reach(rows, assumed()).networks["N1"].stations
    heard = [one("B2"), one("B0")]
    assert off_plan(rows.house, heard) == ("B2",)
    assert carried(rows.house, heard, stations).reaches.all()


TRANSMITTERS = st.builds(
    one,
    st.sampled_from([None, "B0", "B1"]),
    st.sampled_from(["", "Tarn"]),
    st.integers(-90, -40),
    st.sampled_from([1, 6]),
)
SURVEYS = st.lists(st.lists(TRANSMITTERS, max_size=5), min_size=2, max_size=4)


@given(surveys=SURVEYS)
def test_surveys_put_together_are_the_same_in_any_order_and_twice(surveys: list[list[Transmitter]]) -> None:
    together = put_together(surveys)
    assert sorted(map(repr, put_together(surveys[::-1]))) == sorted(map(repr, together))
    assert sorted(map(repr, put_together([*surveys, *surveys]))) == sorted(map(repr, together))


@given(survey=st.lists(TRANSMITTERS, max_size=6))
def test_a_survey_alone_stays_as_it_is(survey: list[Transmitter]) -> None:
    assert put_together([survey]) == tuple(survey)
    assert len(put_together([survey, []])) == len(survey)


def test_of_two_readings_the_louder_stands() -> None:
    quiet, loud = one("B0", "Tarn", -70), one("B0", "Tarn", -55)
    assert put_together([[quiet], [loud]]) == (loud,)
    assert put_together([[quiet], [one("B1", "Tarn", -55)]]) == (quiet, one("B1", "Tarn", -55))
