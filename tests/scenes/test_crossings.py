"""What a scene does to one load, rule by rule."""

import pytest

from secondfix.scenes import resolve
from secondfix.terms import PURPOSES, AllOff, Purpose, UnattendedOn
from tests.scenes.models import key
from tests.scenes.small import Plain, command, crossing, read, rule, seen, small, told


def brief(plain: Plain, load: str) -> tuple[str, str | None, str]:
    one = crossing(plain, load)
    return one.kind.value, one.to, one.reason.value


@pytest.mark.parametrize(
    ("select", "switched"),
    [
        ({"purpose": "lighting"}, {"L1", "L2", "L4", "L5"}),
        ({"room": "R2"}, {"L4", "L5"}),
        ({"storey": "S0"}, {"L1", "L2"}),
        ({"tag": "late"}, {"L2"}),
        ({"tag": "quiet"}, {"L4", "L5"}),
        ({"load": "L4"}, {"L4"}),
        ({"every_load": True}, {"L1", "L2", "L4", "L5"}),
        ({"purpose": "lighting", "room": "R1", "tag": "late"}, {"L2"}),
    ],
)
def test_a_selector_selects_by_every_criterion_given(select: Plain, switched: set[str]) -> None:
    crossings = resolve(read(small(rules=[rule("off", **select)])))[0].crossings
    assert {load for load, c in crossings.items() if c.kind == "switched"} == switched


def test_a_switched_load_tells_device_entry_and_rule() -> None:
    one = crossing(small(rules=[rule("on", level=35, load="L4")]), "L4")
    assert (one.device_id, one.entry, one.to, one.level_pct) == ("D2", 1, "on", 35)
    assert one.by == ("L4 Lamp: on 35",)


def test_an_output_outside_a_box_is_commanded_at_its_device() -> None:
    one = crossing(small(rules=[rule("off", load="L5")]), "L5")
    assert (one.device_id, one.entry) == ("D3", 1)


def test_an_exception_leaves_a_load_alone_and_says_so() -> None:
    plain = small(rules=[rule("off", purpose="lighting", out=[{"tag": "late"}])])
    assert brief(plain, "L2") == ("left_alone", None, "exception")
    assert crossing(plain, "L2").by == ("lighting, leaving out every load tagged late: off",)
    assert told(plain) == []


@pytest.mark.parametrize("purpose", list(Purpose))
@pytest.mark.parametrize("to", ["on", "off"])
@pytest.mark.parametrize("named", [True, False])
def test_the_policy_of_a_purpose_decides(purpose: Purpose, to: str, *, named: bool) -> None:
    plain = small(rules=[rule(to, load="L1") if named else rule(to, room="R1")])
    plain["loads"]["L1"] |= {"purpose": purpose.value, "own_thermostat": seen(True), "time_limit_s": 5400}
    policy = PURPOSES[purpose]
    allowed = (
        policy.all_off is AllOff.OFF or (named and policy.all_off is AllOff.LEAVE)
        if to == "off"
        else policy.unattended_on in {UnattendedOn.YES, UnattendedOn.OWN_THERMOSTAT}
        or (named and policy.unattended_on is UnattendedOn.NAMED_ONLY)
    )
    refused = policy.unattended_on is UnattendedOn.NEVER if to == "on" else named and not allowed
    want = ("switched", to, "rule") if allowed else ("left_alone", None, "refused" if refused else "policy")
    assert brief(plain, "L1") == want
    assert (("scenes.refused", "danger", "SC1") in told(plain)) is refused


@pytest.mark.parametrize(
    ("fact", "limit", "kind", "reason"),
    [
        (seen(True), 5400, "switched", "rule"),
        (seen(False), 5400, "left_alone", "refused"),
        (None, 5400, "cannot_tell", "fitness_not_known"),
        (seen(True, "assumed"), 5400, "cannot_tell", "fitness_not_known"),
        (seen(True), None, "cannot_tell", "fitness_not_known"),
        (seen(False), None, "left_alone", "refused"),
    ],
)
def test_a_fixed_heater_comes_on_only_with_thermostat_and_limit(
    fact: Plain | None, limit: int | None, kind: str, reason: str
) -> None:
    plain = small(rules=[rule("on", load="L1")])
    more = {"own_thermostat": fact, "time_limit_s": limit, "purpose": "heater_fixed"}
    plain["loads"]["L1"] |= {k: v for k, v in more.items() if v is not None}
    one = crossing(plain, "L1")
    assert (one.kind, one.reason) == (kind, reason)
    assert one.worst == (None if kind == "switched" else "danger")


def test_a_device_that_limits_its_own_time_on_is_a_limit() -> None:
    plain = small(rules=[rule("on", load="L4")])
    plain["devices"]["D2"]["model"] = key("timed-two")
    plain["loads"]["L4"] |= {"own_thermostat": seen(True), "purpose": "water_heater"}
    assert brief(plain, "L4") == ("switched", "on", "rule")


def test_general_rules_that_differ_are_a_conflict_in_either_order() -> None:
    rules = [rule("off", purpose="lighting"), rule("on", room="R2")]
    for order in (rules, rules[::-1]):
        plain = small(rules=order)
        assert brief(plain, "L4") == ("conflict", None, "rules_differ")
        assert told(plain) == [("scenes.conflict", "fault", "SC1")] * 2
        assert "L4" not in {c.device_id for c in resolve(read(plain))[0].commands}


def test_a_rule_that_names_the_load_silences_general_rules() -> None:
    plain = small(rules=[rule("off", purpose="lighting"), rule("on", level=20, load="L4")])
    assert brief(plain, "L4") == ("switched", "on", "rule")
    assert told(plain) == []


def test_two_rules_that_name_the_load_and_differ_are_a_conflict() -> None:
    plain = small(rules=[rule("on", level=60, load="L4"), rule("on", level=20, load="L4")])
    assert brief(plain, "L4") == ("conflict", None, "rules_differ")


def test_a_direct_command_switches_and_may_not_differ_from_a_rule() -> None:
    assert brief(small(commands=[command("D2", 1)]), "L4") == ("switched", "off", "direct_command")
    plain = small(rules=[rule("on", room="R2")], commands=[command("D2", 1)])
    assert brief(plain, "L4") == ("conflict", None, "direct_differs")


def test_a_direct_command_to_a_load_left_out_is_a_conflict() -> None:
    plain = small(rules=[rule("off", room="R2", out=[{"load": "L4"}])], commands=[command("D2", 1)])
    assert brief(plain, "L4") == ("conflict", None, "direct_left_out")
    assert told(plain) == [("scenes.conflict", "fault", "SC1")]


def test_a_rule_and_the_same_direct_command_send_one_command() -> None:
    plain = small(rules=[rule("off", load="L4")], commands=[command("D2", 1), command("D2", 1)])
    assert [(c.device_id, c.entry) for c in resolve(read(plain))[0].commands] == [("D2", 1)]
    assert told(plain) == []


def test_unknown_purpose_blocks_only_where_it_can_change_the_answer() -> None:
    by_purpose = small(rules=[rule("off", purpose="lighting")])
    by_name = small(rules=[rule("on", load="L4"), rule("off", purpose="covering", room="R1")])
    for plain in (by_purpose, by_name):
        del plain["loads"]["L4"]["purpose"]
    assert brief(by_purpose, "L4") == ("cannot_tell", None, "purpose_not_known")
    assert brief(by_name, "L4") == ("cannot_tell", None, "purpose_not_known")
    del by_name["scenes"]["SC1"]["rules"][0]
    assert brief(by_name, "L4") == ("left_alone", None, "no_rule")


def test_unknown_storey_blocks_a_rule_by_storey() -> None:
    plain = small(rules=[rule("off", storey="S1")])
    del plain["rooms"]["R2"]["storey"]
    assert brief(plain, "L4") == ("cannot_tell", None, "storey_not_known")
    assert ("scenes.decided", "cannot_tell", "SC1") in told(plain)


def test_a_load_that_nothing_can_command_cannot_be_told() -> None:
    plain = small(rules=[rule("off", purpose="lighting")])
    del plain["devices"]["D2"], plain["devices"]["D3"]
    assert brief(plain, "L4") == ("cannot_tell", None, "no_device")
    assert brief(plain, "L5") == ("cannot_tell", None, "fed_by_nothing")
    plain["devices"]["D2"] = {"box": "B2", "gangs": ["1"], "model": key("button")}
    assert brief(plain, "L4") == ("cannot_tell", None, "no_output")
    assert brief(small(), "L5") == ("left_alone", None, "no_rule")


def test_commands_are_in_the_order_of_devices_and_entries() -> None:
    plain = small(rules=[rule("off", every_load=True)])
    plain["devices"]["D10"] = plain["devices"].pop("D1")
    sent = [(c.device_id, c.entry) for c in resolve(read(plain))[0].commands]
    assert sent == [("D2", 1), ("D3", 1), ("D10", 1), ("D10", 2)]
