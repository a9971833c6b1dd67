"""Scenes that start at the same moment."""

from typing import Any

import pytest

from tests.scenes.small import Plain, asked, rule, small, told

CLASH = "scenes.times_clash"


def two(first: Plain, second: Plain, **rules: Any) -> Plain:
    plain = small(rules=[rule("off", load="L4")], starts=[first])
    plain["scenes"]["SC2"] = {"name": "Late", "starts": [second], "rules": [rule("on", load="L4")]} | rules
    return plain


def at(clock: str, *days: str) -> Plain:
    return {"by": "time", "at": clock, "days": list(days)}


def sun(event: str, offset: int | None = None) -> Plain:
    return {"by": "sun", "sun": event} | ({} if offset is None else {"offset_min": offset})


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (at("21:10"), at("21:10")),
        (at("21:10", "tue", "sat"), at("21:10", "sat")),
        (at("21:10"), at("21:10", "wed")),
        (sun("sunset"), sun("sunset", 0)),
        (sun("sunrise", -40), sun("sunrise", -40)),
    ],
)
def test_two_demands_on_a_load_at_one_moment_are_a_fault(first: Plain, second: Plain) -> None:
    plain = two(first, second)
    assert told(plain) == [(CLASH, "fault", "SC1")]
    (one,) = [f for f in asked(plain) if f.rule == CLASH]
    assert one.also == ("SC2", "L4")
    assert "L4 Lamp off and on" in one.says


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (at("21:10"), at("21:11")),
        (at("21:10", "tue"), at("21:10", "wed")),
        (sun("sunset"), sun("sunrise")),
        (sun("sunset", 5), sun("sunset", 6)),
        (at("21:10"), sun("sunset")),
        (at("21:10"), {"by": "sensor", "device": "D4"}),
    ],
)
def test_other_moments_do_not_meet(first: Plain, second: Plain) -> None:
    assert told(two(first, second)) == []


def test_agreeing_scenes_may_start_together() -> None:
    plain = two(at("21:10"), at("21:10"), rules=[rule("off", room="R2"), rule("on", load="L1")])
    assert told(plain) == []
    assert [f.place for f in asked(plain) if f.rule == CLASH] == ["SC1", "SC2"]


def test_two_levels_of_one_load_clash() -> None:
    plain = two(at("21:10"), at("21:10"), rules=[rule("on", level=60, load="L4")])
    plain["scenes"]["SC1"]["rules"] = [rule("on", level=20, load="L4")]
    assert told(plain) == [(CLASH, "fault", "SC1")]


def test_a_load_of_unknown_purpose_may_clash() -> None:
    plain = two(at("21:10"), at("21:10"), rules=[rule("on", purpose="lighting")])
    plain["scenes"]["SC1"]["rules"] = [rule("off", room="R1")]
    del plain["loads"]["L2"]["purpose"]
    found = [f for f in asked(plain) if f.rule == CLASH]
    assert [str(f.outcome) for f in found] == ["fails", "cannot_tell"]  # L1 surely clashes, L2 may
    assert found[1].looks
    plain["scenes"]["SC2"]["rules"] = [rule("on", load="L5")]
    assert [f.outcome for f in asked(plain) if f.rule == CLASH] == ["passes", "passes"]
