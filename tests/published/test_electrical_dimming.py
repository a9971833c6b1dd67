"""Which edge of the half wave suits which kind of load, against the table that the trade prints."""

import pytest

from tests.electrical.sound import answers, at, ratings, spoilt
from tests.example_house import seen

# Lighting Research Center dimmer guide (secondary) and trade tables (common practice, no source): filament
# lamps bear both edges; an iron-core transformer leading alone, for trailing throws back a high voltage; an
# electronic one trailing alone; motors, sockets and lamps that are not dimmable neither. For dimmable LED
# lamps the table says trailing, and leading only where the dimmer is listed for them (NEMA SSL 7A covers
# leading alone, and only lamps that claim it).
TABLE = [
    ("tungsten", "leading", "passes"),
    ("tungsten", "trailing", "passes"),
    ("iron_transformer", "leading", "passes"),
    ("iron_transformer", "trailing", "fails"),
    ("electronic_transformer", "leading", "fails"),
    ("electronic_transformer", "trailing", "passes"),
    ("motor", "leading", "fails"),
    ("motor", "trailing", "fails"),
]


def outcome(load: dict[str, object], edge: str) -> str:
    """The answer at a dimmer that prints a rating for resistive loads alone, and cuts this edge."""
    dimmer: dict[str, object] = {
        "models.orrinby-arc@1.edge": edge,
        "models.orrinby-arc@1.ratings": ratings(resistive=900),
        "loads.L6.also_kinds": None,
    }
    own = {f"loads.L6.{key}": value for key, value in load.items()}
    found = at(answers(spoilt(dimmer | own)), "dimming", "B5.1")
    assert found is not None
    return found.outcome.value


@pytest.mark.parametrize(("kind", "edge", "expected"), TABLE)
def test_the_edge_for_each_kind(kind: str, edge: str, expected: str) -> None:
    assert outcome({"kind": seen(kind)}, edge) == expected


@pytest.mark.parametrize("edge", ["leading", "trailing"])
def test_lamps_that_are_not_dimmable_bear_neither(edge: str) -> None:
    lamps = {"kind": seen("led_lamp"), "dimmable": seen(False)}
    assert outcome(lamps, edge) == "fails"


def test_dimmable_led_lamps_bear_a_leading_edge_only_where_it_is_listed_for_them() -> None:
    lamps = {"kind": seen("led_lamp"), "dimmable": seen(True)}
    assert outcome(lamps, "trailing") == "passes"
    assert outcome(lamps, "leading") == "cannot_tell"
