"""The verb ``scenes``: times, and when each start comes next."""

import json
from pathlib import Path

import pytest

from tests.cli.conftest import Call

HOUSE = Path(__file__).parents[2] / "demo" / "house-mended.json"


def test_every_scene_tells_how_long_it_takes(call: Call) -> None:
    plain = json.loads(call("scenes", HOUSE, "--json").out)
    text = call("scenes", HOUSE).out
    assert text.count("  time: one by one ") == len(plain["scenes"])
    for scene in plain["scenes"]:
        least, value, most = (scene["time"]["one_by_one_ms"][end] for end in ("low", "value", "high"))
        assert 0 <= least <= value <= most
        assert sum(n["commands"] for n in scene["time"]["networks"]) == len(scene["commands"])


def test_next_starts_are_told_from_a_day_on(call: Call) -> None:
    plain = json.loads(call("scenes", HOUSE, "--on", "2031-03-03", "--json").out)
    starts = {s["scene"]: s for s in plain["coming"]}
    assert starts["S5"]["at"] == "2031-03-03T06:40:00+01:00"
    assert starts["S4"]["at"].startswith("2031-03-03T17:")
    text = call("scenes", HOUSE, "--scene", "S5", "--on", "2031-03-01").out
    assert "Mon 03.03.2031 06:40" in text  # a Saturday; the start is for weekdays
    assert "S4" not in text
    assert json.loads(call("scenes", HOUSE, "--json").out)["coming"] is None


def test_a_zone_that_nobody_knows_and_a_day_that_is_none_are_refused(call: Call) -> None:
    plain = json.loads(HOUSE.read_text(encoding="utf-8"))
    for zone in ("Nowhere/Larkholm", "../etc"):
        plain["time_zone"] = zone
        ended = call("scenes", "-", "--on", "2031-03-03", stdin=json.dumps(plain).encode())
        assert (ended.code, ended.out) == (2, "")
        assert f"'{zone}'" in ended.err
        assert ended.err.count("\n") == 1
    ended = call("scenes", HOUSE, "--on", "3.3.2031")
    assert ended.code == 2
    assert "3.3.2031" in ended.err


def test_without_a_zone_no_start_can_be_told(call: Call) -> None:
    plain = json.loads(HOUSE.read_text(encoding="utf-8"))
    del plain["time_zone"]
    ended = call("scenes", "-", "--on", "2031-03-03", stdin=json.dumps(plain).encode())
    assert ended.code == 3
    assert "the time zone of the house is not known" in ended.out


@pytest.mark.parametrize("day", ["0001-01-01", "9999-12-31"])
def test_a_day_beyond_the_calendar_is_refused_in_one_line(call: Call, day: str) -> None:
    ended = call("scenes", HOUSE, "--on", day)
    assert (ended.code, ended.err.count("\n")) == (2, 1)
    assert "expected a day from 1900-01-01 to 2199-12-31" in ended.err
