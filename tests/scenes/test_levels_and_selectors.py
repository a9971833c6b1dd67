"""Levels that an output or a load cannot hold, and selectors that select nothing."""

import pytest

from tests.scenes.models import key
from tests.scenes.small import Plain, asked, crossing, rule, seen, small, told

LEVEL = "scenes.level"


def test_a_level_on_a_relay_switches_on_and_is_advice() -> None:
    plain = small(rules=[rule("on", level=45, load="L1")])
    assert crossing(plain, "L1").level_pct is None
    assert told(plain) == [(LEVEL, "advice", "SC1")]
    assert told(small(rules=[rule("on", level=100, load="L1")])) == []


@pytest.mark.parametrize(
    ("dimmable", "answer"),
    [
        (seen(True), []),
        (seen(False), [(LEVEL, "fault", "SC1")]),
        (seen(True, "assumed"), [(LEVEL, "cannot_tell", "SC1")]),
        (None, [(LEVEL, "cannot_tell", "SC1")]),
    ],
)
def test_a_level_on_a_dimmer_asks_for_a_load_that_dims(
    dimmable: Plain | None, answer: list[tuple[str, str, str]]
) -> None:
    plain = small(rules=[rule("on", level=45, load="L4")])
    plain["loads"]["L4"].pop("dimmable")
    plain["loads"]["L4"] |= {"dimmable": dimmable} if dimmable else {}
    assert told(plain) == answer


def test_a_level_on_a_device_without_a_model_cannot_be_told() -> None:
    plain = small(rules=[rule("on", level=45, load="L4")])
    del plain["devices"]["D2"]["model"]
    assert told(plain) == [(LEVEL, "cannot_tell", "SC1")]
    assert crossing(plain, "L4").level_pct == 45


@pytest.mark.parametrize("select", [{"tag": "nowhere"}, {"purpose": "sauna"}, {"room": "R1", "tag": "quiet"}])
def test_a_selector_without_a_load_is_advice(select: Plain) -> None:
    assert told(small(rules=[rule("off", **select)])) == [("scenes.selects", "advice", "SC1")]
    inside = small(rules=[rule("off", purpose="lighting", out=[select])])
    assert told(inside) == [("scenes.selects", "advice", "SC1")]


def test_a_room_without_loads_is_advice() -> None:
    plain = small(rules=[rule("off", room="R3")])
    plain["rooms"]["R3"] = {"name": "Loft"}
    (one,) = [f for f in asked(plain) if f.rule == "scenes.selects"]
    assert one.says == "'every load in Loft' selects no load."


def test_a_selector_that_an_unknown_decides_cannot_be_told() -> None:
    plain = small(rules=[rule("off", purpose="sauna"), rule("off", storey="S1")])
    del plain["loads"]["L1"]["purpose"], plain["rooms"]["R2"]["storey"]
    answers = [f for f in asked(plain) if f.rule == "scenes.selects"]
    assert [f.outcome.value for f in answers] == ["cannot_tell", "cannot_tell"]
    assert {k.field for f in answers for k in f.looks} == {"purpose", "storey"}


def test_a_module_at_the_luminaire_holds_a_level() -> None:
    plain = small(rules=[rule("on", level=15, load="L5")])
    plain["loads"]["L5"]["dimmable"] = seen(True)
    plain["devices"]["D3"]["model"] = key("lamp-module")
    assert crossing(plain, "L5").level_pct == 15
    assert told(plain) == []
