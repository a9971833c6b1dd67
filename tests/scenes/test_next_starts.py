"""When a start comes next, in the house's zone."""

from datetime import UTC, date, datetime, timedelta, timezone, tzinfo
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.scenes import Coming, coming, coming_as_json, sun_times
from tests.scenes.small import Plain, read, rule, small

CET = ZoneInfo("CET")  # forward on the last Sunday of March at 02:00, back in October at 03:00


def started(*starts: Plain, **house: Any) -> Plain:
    plain = small(rules=[rule("off", load="L4")], starts=list(starts))
    return plain | house


def first(plain: Plain, day: date, zone: tzinfo | None = CET) -> Coming:
    (one,) = coming(read(plain).house, day=day, zone=zone)
    return one


def test_a_time_of_day_comes_that_day_or_on_the_next_of_its_days() -> None:
    plain = started({"by": "time", "at": "06:50"})
    assert first(plain, date(2031, 5, 6)).at == datetime(2031, 5, 6, 6, 50, tzinfo=CET)
    plain = started({"by": "time", "at": "06:50", "days": ["fri", "mon"]})
    assert first(plain, date(2031, 5, 6)).at == datetime(2031, 5, 9, 6, 50, tzinfo=CET)  # a Tuesday, a Friday


def test_a_time_that_the_clock_skips_is_taken_as_if_it_had_not_been_put_forward() -> None:
    one = first(started({"by": "time", "at": "02:30"}), date(2031, 3, 30))
    assert one.at is not None
    assert (one.at.hour, one.at.minute, one.at.utcoffset()) == (3, 30, timedelta(hours=2))
    assert one.note == "the clock skips 02:30 that day; taken at 03:30"


def test_of_a_time_that_comes_twice_the_first_is_taken() -> None:
    one = first(started({"by": "time", "at": "02:30"}), date(2031, 10, 26))
    assert one.at is not None
    assert one.at.astimezone(UTC) == datetime(2031, 10, 26, 0, 30, tzinfo=UTC)
    assert "twice" in one.note
    assert first(started({"by": "time", "at": "03:00"}), date(2031, 10, 26)).note == ""


@given(st.dates(date(2000, 1, 1), date(2049, 1, 1)), st.times())
def test_the_clock_shows_the_time_asked_for_unless_it_is_said_to_skip_it(day: date, at: Any) -> None:
    one = first(started({"by": "time", "at": f"{at:%H:%M}"}), day)
    assert one.at is not None
    real = one.at.astimezone(UTC).astimezone(CET)
    assert real.date() == day
    assert (f"{real:%H:%M}" == f"{at:%H:%M}") is ("skips" not in one.note)


def test_the_sun_is_shifted_by_the_offset() -> None:
    day = date(2031, 3, 3)
    one = first(started({"by": "sun", "sun": "sunset", "offset_min": -15}), day)
    minute = sun_times(day, latitude_mdeg=59370, longitude_mdeg=24810).sunset_min
    assert one.at == datetime(2031, 3, 3, tzinfo=UTC) + timedelta(minutes=round(minute or 0) - 15)


def test_an_offset_may_lead_into_the_next_day() -> None:
    """Days are those of the sunset: of Monday's sunset, six hours later is Tuesday."""
    plain = started({"by": "sun", "sun": "sunset", "offset_min": 360, "days": ["mon"]})
    one = first(plain, date(2031, 6, 3), ZoneInfo("EET"))  # a Tuesday
    assert one.at is not None
    assert (one.at.date(), one.at.hour) == (date(2031, 6, 3), 4)


@pytest.mark.parametrize("hours", [-12, 0, 13, 14])
def test_a_zone_far_from_the_sun_still_gets_one_event_a_day(hours: int) -> None:
    plain = started({"by": "sun", "sun": "sunrise"}, longitude_mdeg=-157_000, latitude_mdeg=2_000)
    zone = timezone(timedelta(hours=hours))
    found = [first(plain, date(2031, 5, d), zone).at for d in range(1, 29)]
    assert [one.date().day for one in found if one] == list(range(1, 29))


def test_in_a_polar_night_the_next_sunrise_is_weeks_away_and_said_so() -> None:
    plain = started({"by": "sun", "sun": "sunrise"}, latitude_mdeg=69_700, longitude_mdeg=18_900)
    one = first(plain, date(2031, 12, 10))
    assert one.at is not None
    assert date(2032, 1, 5) < one.at.date() < date(2032, 1, 25)
    assert one.note.startswith("no sunrise on ")


def test_at_a_pole_no_sunset_comes_within_reach() -> None:
    plain = started({"by": "sun", "sun": "sunset"}, latitude_mdeg=90_000)
    one = first(plain, date(2031, 5, 1))
    assert (one.at, one.note) == (None, "not within 370 days")


@pytest.mark.parametrize("field", ["latitude_mdeg", "longitude_mdeg"])
def test_without_a_place_the_sun_cannot_be_told(field: str) -> None:
    plain = started({"by": "sun", "sun": "sunset"})
    del plain[field]
    one = first(plain, date(2031, 5, 1))
    assert (one.at, one.note) == (None, "the latitude and longitude of the house are not known")


def test_without_a_zone_nothing_can_be_told() -> None:
    one = first(started({"by": "time", "at": "19:05"}), date(2031, 5, 1), None)
    assert (one.at, one.note) == (None, "the time zone of the house is not known")
    assert coming_as_json([one]) == [{"scene": "SC1", "start": "19:05", "at": None, "note": one.note}]


def test_presses_and_sensors_have_no_next_time() -> None:
    plain = started({"by": "sensor", "device": "D4"}, {"by": "gang", "gang": "B2.2", "press": "held"})
    assert coming(read(plain).house, day=date(2031, 5, 1), zone=CET) == ()
