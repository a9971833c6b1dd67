"""Whole-device entries, and entries that switch nothing."""

import pytest

from secondfix.scenes import resolve
from tests.scenes.models import key
from tests.scenes.small import Plain, asked, command, crossing, feeds, read, rule, small, told

WHOLE = "scenes.whole_entry"


def with_model(plain: Plain, name: str) -> Plain:
    """D1 with a model of two gangs; the tank is left without a gang of it."""
    plain["devices"]["D1"] |= {"model": key(name), "gangs": ["1", "2"]}
    return plain


def test_an_aquarium_pump_behind_the_whole_device_entry_is_a_danger() -> None:
    plain = small(commands=[command("D1", 0)])
    assert told(plain) == [(WHOLE, "danger", "SC1")]
    (danger,) = [f for f in asked(plain) if f.rule == WHOLE]
    assert "L3 Tank" in danger.says
    assert crossing(plain, "L3").reason == "whole_left_out"
    assert [(c.device_id, c.entry) for c in resolve(read(plain))[0].commands] == [("D1", 1), ("D1", 2)]


def test_a_load_that_an_exception_left_out_is_a_fault() -> None:
    plain = small(rules=[rule("off", room="R2", out=[{"load": "L4"}])], commands=[command("D2", 0)])
    plain["devices"]["D2"]["model"] = key("first-two")
    assert told(plain) == [(WHOLE, "fault", "SC1")]
    assert crossing(plain, "L4").reason == "whole_left_out"


def test_a_command_doubled_by_gang_and_whole_device_entry_is_a_fault() -> None:
    plain = with_model(small(rules=[rule("off", load="L1")], commands=[command("D1", 0)]), "first-two")
    assert told(plain) == [(WHOLE, "fault", "SC1")]
    assert len(resolve(read(plain))[0].commands) == 1


def test_a_whole_device_entry_that_says_something_else_is_a_fault() -> None:
    plain = with_model(small(rules=[rule("on", load="L1")], commands=[command("D1", 0)]), "first-two")
    assert told(plain) == [(WHOLE, "fault", "SC1")]
    assert crossing(plain, "L1").reason == "whole_differs"


def test_a_load_switched_only_by_the_whole_device_entry_is_advice_beside_rules() -> None:
    alone = with_model(small(commands=[command("D1", 0)]), "first-two")
    assert told(alone) == []
    assert crossing(alone, "L1").reason == "whole_entry"
    beside = with_model(small(rules=[rule("off", load="L4")], commands=[command("D1", 0)]), "first-two")
    assert told(beside) == [(WHOLE, "advice", "SC1")]


def test_the_first_gang_alone_follows_where_the_sheet_says_so() -> None:
    plain = with_model(small(commands=[command("D1", 0)]), "first-two")
    assert crossing(plain, "L2").reason == "no_rule"


def test_an_entry_that_switches_nothing_is_advice() -> None:
    assert told(with_model(small(commands=[command("D1", 0)]), "none-two")) == [
        ("scenes.entry", "advice", "SC1")
    ]
    assert told(small(commands=[command("D2", 2)])) == [("scenes.entry", "advice", "SC1")]
    assert told(small(commands=[command("D4", 1)])) == [("scenes.entry", "advice", "SC1")]


@pytest.mark.parametrize("model", ["silent-two", None])
def test_a_whole_device_entry_to_be_tested_cannot_be_told(model: str | None) -> None:
    plain = with_model(small(commands=[command("D1", 0)]), model or "silent-two")
    if model is None:
        del plain["devices"]["D1"]["model"]
    assert told(plain) == [
        ("scenes.decided", "cannot_tell", "SC1"),
        ("scenes.decided", "cannot_tell", "SC1"),
        (WHOLE, "cannot_tell", "SC1"),
    ]
    assert crossing(plain, "L1").reason == "reach_not_known"


def test_what_a_silent_entry_cannot_change_is_told() -> None:
    plain = with_model(small(rules=[rule("off", room="R1")], commands=[command("D1", 0)]), "silent-two")
    assert crossing(plain, "L1").kind == "switched"
    assert told(plain) == [(WHOLE, "cannot_tell", "SC1")]


def test_a_gang_nobody_can_explain_may_feed_what_nothing_known_feeds() -> None:
    plain = small(commands=[command("D1", 0, "off")])
    plain["boxes"]["B1"]["gangs"]["3"] = {"duty": "not_known"}
    assert crossing(plain, "L3").reason == "reach_not_known"
    assert crossing(plain, "L3").worst == "danger"
    assert (WHOLE, "cannot_tell", "SC1") in told(plain)
    direct = small(commands=[command("D1", 3)])
    direct["boxes"]["B1"]["gangs"]["3"] = {"duty": "not_known"}
    assert ("scenes.entry", "cannot_tell", "SC1") in told(direct)


def test_an_extension_may_pass_a_command_on() -> None:
    plain = small(commands=[command("D2", 2)])
    plain["boxes"]["B2"]["gangs"]["2"] = {"duty": "extends", "extends": "B1.1"}
    assert crossing(plain, "L1").reason == "reach_not_known"
    assert ("scenes.entry", "cannot_tell", "SC1") in told(plain)


def test_an_entry_of_a_device_without_a_model_leaves_unfed_loads_open() -> None:
    plain = small(commands=[command("D3", 2)])
    del plain["devices"]["D3"]["model"]
    plain["loads"]["L6"] = {"name": "Porch", "room": "R1", "purpose": "lighting"}
    assert crossing(plain, "L6").reason == "reach_not_known"
    assert ("scenes.entry", "cannot_tell", "SC1") in told(plain)


def test_an_unassigned_output_leaves_unfed_loads_open() -> None:
    plain = small(commands=[command("D3", 1)])
    plain["devices"]["D3"]["outputs"] = {}
    assert crossing(plain, "L5").reason == "reach_not_known"


def test_contrary_commands_to_one_whole_device_entry_conflict() -> None:
    plain = with_model(small(commands=[command("D1", 0), command("D1", 0, "on")]), "first-two")
    assert crossing(plain, "L1").reason == "whole_differs"
    assert told(plain) == [(WHOLE, "fault", "SC1")] * 2


def test_an_extension_of_a_gang_nobody_can_explain_is_open_too() -> None:
    plain = small(commands=[command("D2", 2)])
    plain["boxes"]["B1"]["gangs"]["1"] = {"duty": "not_known"}
    plain["boxes"]["B2"]["gangs"]["2"] = {"duty": "extends", "extends": "B1.1"}
    plain["boxes"]["B1"]["gangs"]["2"] = feeds("L2")
    assert crossing(plain, "L1").reason == "reach_not_known"


def test_losing_the_model_makes_no_pass_of_an_entry_that_switches_nothing() -> None:
    plain = small(commands=[command("D2", 0)])
    plain["boxes"]["B2"]["gangs"]["1"] = {"duty": "scene_only"}
    plain["devices"]["D2"]["model"] = key("first-two")
    assert told(plain) == [("scenes.entry", "advice", "SC1")]
    del plain["devices"]["D2"]["model"]
    assert told(plain) == [(WHOLE, "cannot_tell", "SC1")]
    assert not [f for f in asked(plain) if f.rule == "scenes.entry"]
