"""Which loads may hang on a dimmer, and what transformers ask of it."""

import pytest

from tests.electrical.sound import answers, at, ratings, spoilt
from tests.electrical.spoiling import misfits, outcome
from tests.example_house import seen


@pytest.mark.parametrize(
    ("model", "edge", "expected"),
    [
        ("arc", "leading", "passes"),
        ("arc", "both", "passes"),
        ("arc", "trailing", "fails"),
        ("arc", None, "cannot_tell"),
        ("arch", "trailing", "passes"),
        ("arch", "both", "passes"),
        ("arch", "leading", "fails"),
        ("arch", None, "cannot_tell"),
    ],
)
def test_the_edge_suits_the_transformer(model: str, edge: str | None, expected: str) -> None:
    changes: dict[str, object] = {f"models.orrinby-{model}@1.edge": edge}
    place = "B5.1" if model == "arc" else "B5.2"
    assert outcome(changes, "dimming", place) == "passes"  # its rating is printed, whatever the edge
    changes[f"models.orrinby-{model}@1.ratings"] = ratings(resistive=900)
    assert outcome(changes, "dimming", place) == expected


@pytest.mark.parametrize("kind", ["led_lamp", "led_driver"])
def test_a_leading_edge_wants_a_listing_for_led(kind: str) -> None:
    printed = {"led_lamp": "self_ballasted", "led_driver": "externally_ballasted"}[kind]
    lamps: dict[str, object] = {"loads.L3.kind": seen(kind), "models.orrinby-glow@1.edge": "leading"}
    bare = lamps | {"models.orrinby-glow@1.ratings": ratings(resistive=900)}
    assert outcome(bare, "dimming", "B2.1") == "cannot_tell"
    assert outcome(bare | {"models.orrinby-glow@1.edge": "trailing"}, "dimming", "B2.1") == "passes"
    listed = lamps | {"models.orrinby-glow@1.ratings": ratings(**{printed: 900})}
    assert outcome(listed, "dimming", "B2.1") == "passes"


@pytest.mark.parametrize(
    ("kind", "expected"),
    [
        ("tungsten", "passes"),
        ("resistive", "passes"),
        ("led_driver", "passes"),
        ("fluorescent_electronic", "passes"),
        ("fluorescent_iron", "fails"),
        ("motor", "fails"),
        (None, "cannot_tell"),
    ],
)
def test_what_may_be_dimmed(kind: str | None, expected: str) -> None:
    assert outcome({"loads.L3.kind": seen(kind) if kind else None}, "dimming", "B2.1") == expected


def test_a_dimmer_that_is_listed_for_motors_and_a_fan_control_take_a_motor() -> None:
    glow = "models.orrinby-glow@1"
    motor: dict[str, object] = {"loads.L3.kind": seen("motor"), f"{glow}.ratings": ratings(motor=900)}
    assert outcome(motor, "dimming", "B2.1") == "passes"
    motor |= {f"{glow}.output": "fan_control", f"{glow}.ratings": ratings(resistive=9)}
    assert outcome(motor, "dimming", "B2.1") == "passes"
    assert outcome(motor | {"loads.L3.purpose": "entertainment"}, "dimmed_socket", "B2.1") == "fails"


def test_a_relay_is_asked_about_neither_dimming_nor_mixing_nor_its_neighbours() -> None:
    relay: dict[str, object] = {"models.orrinby-arc@1.output": "relay", "models.orrinby-arc@1.edge": None}
    found = answers(spoilt(relay))
    rules = {f.rule for f in found if f.place == "B5.1"}
    assert not rules & {"dimming", "dimmed_socket", "mixed_loads", "ganged_dimmers"}
    # Its iron core needs no least load then, and the dimmer at its side stands alone.
    assert outcome(relay | {"loads.L6.transformer_va": seen(500)}, "transformer", "B5.1") == "passes"
    assert at(found, "ganged_dimmers", "B5.2") is None


def test_mixed_loads_name_the_transformer_as_their_kind() -> None:
    assert misfits({"loads.L3.also_kinds": seen(["iron_transformer"])}) == ["loads.L3.also_kinds"]
    alike: dict[str, object] = {"loads.L6.also_kinds": seen(["iron_transformer", "tungsten"])}
    assert outcome(alike, "mixed_loads", "B5.1") == "passes"
    assert outcome({"loads.L7.also_kinds": seen(["fluorescent_iron"])}, "mixed_loads", "B5.2") == "fails"


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({}, "passes"),
        ({"loads.L7.transformer_va": seen(40)}, "passes"),
        ({"loads.L7.transformer_va": seen(39)}, "fails"),
        ({"loads.L7.transformer_va": None}, "cannot_tell"),
        ({"loads.L7.power_mw": None}, "cannot_tell"),
        ({"loads.L7.transformer_least_mw": None}, "passes"),
        ({"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(30_000)}, "passes"),
        ({"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(20_000)}, "cannot_tell"),
        ({"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(9_999)}, "fails"),
        ({"loads.L7.power_mw": seen(24_999)}, "fails"),
        ({"loads.L7.power_mw": seen(25_000)}, "passes"),
    ],
)
def test_an_electronic_transformer_between_its_bounds(changes: dict[str, object], expected: str) -> None:
    assert outcome(changes, "transformer", "B5.2") == expected


# 45 W on a dimmer: 70 % to 85 % of 53 VA are 37.1 to 45.05 W, of 52 VA up to 44.2 W, of 65 VA from 45.5 W.
@pytest.mark.parametrize(
    ("rated_va", "expected"),
    [
        (None, "cannot_tell"),
        (52, "passes"),
        (53, "cannot_tell"),
        (64, "cannot_tell"),
        (65, "fails"),
        (44, "fails"),
    ],
)
def test_an_iron_core_between_its_bounds(rated_va: int | None, expected: str) -> None:
    changes: dict[str, object] = {"loads.L6.transformer_va": seen(rated_va) if rated_va else None}
    assert outcome(changes, "transformer", "B5.1") == expected
