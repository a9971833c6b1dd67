"""What starts a scene."""

from typing import Any

import pytest

from secondfix.findings import Outcome
from secondfix.scenes import resolve
from tests.scenes.models import MODELS, key, model
from tests.scenes.small import Plain, asked, read, rule, small, told

START, TWICE = "scenes.start", "scenes.start_twice"


def started(**start: Any) -> Plain:
    return small(rules=[rule("off", load="L4")], starts=[start])


def by_gang(gang: str, press: str = "held") -> Plain:
    return started(by="gang", gang=gang, press=press)


@pytest.mark.parametrize(
    ("start", "words"),
    [
        ({"by": "gang", "gang": "B2.2", "press": "three_times"}, "B2.2 three times"),
        ({"by": "time", "at": "06:50", "days": ["tue", "sat"]}, "06:50 tue sat"),
        ({"by": "sun", "sun": "sunset", "offset_min": -25}, "25 min before sunset"),
        ({"by": "sun", "sun": "sunrise", "offset_min": 10}, "10 min after sunrise"),
        ({"by": "sun", "sun": "sunrise"}, "sunrise"),
        ({"by": "sensor", "device": "D4"}, "sensor D4"),
    ],
)
def test_a_start_that_can_start_passes_and_has_words(start: Plain, words: str) -> None:
    plain = started(**start)
    assert told(plain) == []
    assert resolve(read(plain))[0].starts == (words,)


def test_a_capped_gang_cannot_be_pressed() -> None:
    assert told(by_gang("B3.1")) == [(START, "fault", "SC1")]


def test_a_gang_that_feeds_may_or_may_not_report_its_presses() -> None:
    assert told(by_gang("B1.1")) == [(START, "cannot_tell", "SC1")]


@pytest.mark.parametrize("blank", ["device", "model", "duty"])
def test_a_start_by_a_gang_about_which_something_is_not_known(blank: str) -> None:
    plain = by_gang("B2.2")
    if blank == "device":
        plain["devices"]["D2"]["gangs"] = ["1"]
    elif blank == "model":
        del plain["devices"]["D2"]["model"]
    else:
        plain["boxes"]["B2"]["gangs"]["2"] = {}
    assert told(plain) == [(START, "cannot_tell", "SC1")]


@pytest.mark.parametrize("start", [{"by": "time", "at": "22:15"}, {"by": "sun", "sun": "sunset"}])
def test_time_and_sun_ask_for_a_time_zone(start: Plain) -> None:
    plain = started(**start)
    del plain["time_zone"]
    assert told(plain) == [(START, "cannot_tell", "SC1")]


@pytest.mark.parametrize(("model", "answer"), [("lamp-module", "fault"), (None, "cannot_tell")])
def test_a_sensor_start_asks_for_a_sensor(model: str | None, answer: str) -> None:
    plain = started(by="sensor", device="D5")
    plain["devices"]["D5"] = {"place": "P1"} | ({"model": key(model)} if model else {})
    assert told(plain) == [(START, answer, "SC1")]


def test_a_battery_button_starts_scenes() -> None:
    plain = started(by="sensor", device="D5")
    plain["devices"]["D5"] = {"place": "P1", "model": key("button")}
    assert told(plain) == []


def test_one_press_starts_one_scene() -> None:
    plain = by_gang("B2.2")
    plain["scenes"]["SC2"] = plain["scenes"]["SC1"] | {"name": "Late"}
    assert told(plain) == [(TWICE, "fault", "B2.2")]
    plain["scenes"]["SC2"]["starts"] = [{"by": "gang", "gang": "B2.2", "press": "once"}]
    assert told(plain) == []


@pytest.mark.parametrize("field", ["latitude_mdeg", "longitude_mdeg"])
def test_the_sun_asks_for_latitude_and_longitude(field: str) -> None:
    plain = started(by="sun", sun="sunset")
    del plain[field]
    (one,) = [f for f in asked(plain) if f.rule == START]
    assert (one.outcome, [look.field for look in one.looks]) == (Outcome.CANNOT_TELL, [field])
    plain = started(by="time", at="22:15")
    del plain[field]
    assert told(plain) == []


def test_near_a_pole_some_days_have_no_sunset() -> None:
    for latitude, answers in ((65_700, []), (-65_701, [(START, "advice", "SC1")])):
        assert told(started(by="sun", sun="sunset") | {"latitude_mdeg": latitude}) == answers


REPORTING = model("reporting-three", gangs=3, reports_presses=["once", "held"])
MUTE = model("mute-three", gangs=3, reports_presses=[])
MODELS |= {m.key: m for m in (REPORTING, MUTE)}


@pytest.mark.parametrize(
    ("name", "press", "answers"),
    [
        ("reporting-three", "held", []),
        ("reporting-three", "twice", [(START, "fault", "SC1")]),
        ("mute-three", "once", [(START, "fault", "SC1")]),
    ],
)
@pytest.mark.parametrize("duty", [{"duty": "feeds", "load": "L1"}, {"duty": "scene_only"}])
def test_a_press_that_the_sheet_states_starts_a_scene_whatever_the_duty(
    name: str, press: str, answers: list[tuple[str, str, str]], duty: Plain
) -> None:
    plain = by_gang("B1.1", press)
    plain["devices"]["D1"]["model"] = key(name)
    plain["boxes"]["B1"]["gangs"]["1"] = duty
    assert told(plain) == answers


def test_a_press_stated_at_a_gang_that_nobody_can_explain_stays_open() -> None:
    plain = by_gang("B1.1", "held")
    plain["devices"]["D1"]["model"] = key("reporting-three")
    plain["boxes"]["B1"]["gangs"]["1"] = {}
    assert told(plain) == [(START, "cannot_tell", "SC1")]
    plain["scenes"]["SC1"]["starts"][0]["press"] = "twice"
    assert told(plain) == [(START, "fault", "SC1")]


@pytest.mark.parametrize("duty", [{"duty": "feeds", "load": "L1"}, {"duty": "scene_only"}])
def test_a_sheet_that_is_silent_on_presses_settles_none(duty: Plain) -> None:
    plain = by_gang("B1.1", "once")
    plain["boxes"]["B1"]["gangs"]["1"] = duty
    assert told(plain) == [(START, "cannot_tell", "SC1")]


def test_a_button_whose_sheet_is_silent_on_presses_settles_none() -> None:
    plain = by_button(button=1, press="once")
    silent = MODELS[key("button")].model_copy(update={"name": "hush", "reports_presses": None})
    MODELS[silent.key] = silent
    plain["devices"]["D5"]["model"] = silent.key
    assert told(plain) == [(START, "cannot_tell", "SC1")]


def by_button(**start: object) -> Plain:
    plain = started(by="sensor", device="D5", **start)
    plain["devices"]["D5"] = {"place": "P1", "model": key("button")}
    return plain


def test_a_start_by_a_button_has_words() -> None:
    (resolution,) = resolve(read(by_button(button=2, press="held")))
    assert resolution.starts == ("D5 button 2 held",)
    assert told(by_button(button=2, press="held")) == []


def test_a_button_that_the_device_lacks_starts_nothing() -> None:
    assert told(by_button(button=7, press="once")) == [(START, "fault", "SC1")]


def test_one_press_of_one_button_starts_one_scene() -> None:
    plain = by_button(button=1, press="held")
    plain["scenes"]["SC2"] = plain["scenes"]["SC1"] | {"name": "Late"}
    assert told(plain) == [(TWICE, "fault", "P1")]
    plain["scenes"]["SC2"]["starts"] = [{"by": "sensor", "device": "D5", "button": 1, "press": "once"}]
    assert told(plain) == []
