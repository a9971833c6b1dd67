"""Taking any statement out of a house makes no pass, and silences no answer but for a stated reason.

Over all rules at once, in both worlds, in the troubled demo houses and the mended ones.
"""

from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from tests.actions.statements import Path_, asked_for, blanked, kind_of, passed, statements
from tests.actions.worlds import FILES, Plain, answers, mended, read, troubled

HOUSES = [(world, state) for world in sorted(FILES) for state in ("mended", "troubled")]
ANY = "*"

# What may pass once the statement is gone, for it was no fact of the house but what is wanted of it.
MADE: dict[tuple[str, str], str] = {
    ("devices.*.gangs", "nec_no_neutral"): "a device that works no gang is wired to no line",
    ("devices.*.gangs", "module_total"): "a device that works no gang carries nothing",
    ("devices.*.gangs", "scenes.whole_entry"): "the whole of a device that works no gang reaches no load",
    ("scenes.*.rules", "scenes.times_clash"): "a scene that asks for nothing clashes with none",
    ("scenes.*.starts", "scenes.times_clash"): "a scene that nothing starts clashes with none",
}
_NOTHING_FED = "a device that works nothing feeds nothing: another house, not a fact that is missing"
_NOT_ASKED = "only what is wanted is held against what stands"

# Which answers may fall silent though no other asks for what is gone: statement to rules and reason.
SILENT: dict[str, tuple[tuple[str, ...], str]] = {
    "boxes.*.gangs.*.line": (
        ("board_label", "neutral_circuit"),
        "a gang that feeds nothing need join no line",
    ),
    "boxes.*.mounts.*.neutral": (("earth_as_neutral",), "asked where somebody works in the box"),
    "circuits.*.breaker_a": (("breaker_inrush",), "asked where the breaker is known"),
    "circuits.*.curve": (("breaker_inrush",), "asked where the curve is known"),
    "circuits.*.other_load_ma": (("circuit_load",), "the sum is then a lower bound, which can only fail"),
    "circuits.*.shares_neutral_with": (
        ("shared_neutral", "neutral_through"),
        "asked of circuits that are said to share",
    ),
    "devices.*.gangs": ((ANY,), _NOTHING_FED),
    "devices.*.outputs": ((ANY,), _NOTHING_FED),
    "devices.*.outputs.1": ((ANY,), _NOTHING_FED),
    "devices.*.name": (("names.characters",), "there is no name to read"),
    "loads.*.after_power_loss": (("power_loss_wanted",), _NOT_ASKED),
    "loads.*.inrush_peak_ma": (
        ("inrush", "breaker_inrush"),
        "of lamps whose rating is tested with their gear no peak is asked",
    ),
    "loads.*.multiway": ((ANY,), "nobody says that the light is worked from several places"),
    "loads.*.neutral": (("borrowed_neutral",), "asked where borrowing is likely"),
    "loads.*.permanent_supply": (("permanent_supply",), "asked where the purpose does not settle it"),
    "models.*.box_volume_per_yoke_mm3": (("box_asked",), "no sheet in the box asks for a volume"),
    "models.*.module_total_ma": (("module_total",), "one gang, and no total printed"),
    "models.*.repeats": (
        ("radio.one_repeater",),
        "told where routes are likely; else reach asks whether it repeats",
    ),
    "models.*.whole_switches": (
        ("scenes.conflict", "scenes.entry", "scenes.level", "scenes.refused", "scenes.time"),
        "nothing about a scene passes while scenes.whole_entry cannot tell what it reaches",
    ),
    "naming": (("names.by_ear",), "asked where the names are said to be spoken"),
    "naming.*": (("names.by_ear",), "asked where the names are said to be spoken"),
    "scenes.*.commands": ((ANY,), _NOT_ASKED),
    "scenes.*.rules": ((ANY,), _NOT_ASKED),
    "scenes.*.starts": ((ANY,), _NOT_ASKED),
    "wiring_rules": (
        ("box_fill", "box_asked", "nec_motor", "nec_no_neutral"),
        "what would pass under the NEC does not hang on whether it applies; all else asks for the rules",
    ),
}


@cache
def plain_of(world: str, state: str) -> Plain:
    return mended(world) if state == "mended" else troubled(world)


@cache
def before(world: str, state: str) -> dict[tuple[str, str], bool]:
    return passed(answers(plain_of(world, state)))


def may_fall_silent(kind: str, rule: str) -> bool:
    return bool({ANY, rule} & set(SILENT.get(kind, ((), ""))[0]))


def wrongs(world: str, state: str, path: Path_) -> list[tuple[str, str]]:
    """Answers that pass, or are gone, once the statement is, and should not be; none if it cannot be read."""
    house = read(blanked(plain_of(world, state), path))
    if house is None:
        return []
    findings = check(house, assumptions=default_assumptions()).findings
    first, after, kind = before(world, state), passed(findings), kind_of(path)
    made = [key for key, passes in after.items() if passes and not first.get(key, True)]
    gone = [] if asked_for(findings, path) else [key for key in first if key not in after]
    return [
        *(key for key in made if (kind, key[0]) not in MADE),
        *(key for key in gone if not may_fall_silent(kind, key[0])),
    ]


@given(st.sampled_from([(w, s, path) for w, s in HOUSES for path in statements(plain_of(w, s))]))
def test_a_blank_makes_no_pass_and_silences_nothing(chosen: tuple[str, str, Path_]) -> None:
    assert wrongs(*chosen) == []


@pytest.mark.deep
@pytest.mark.parametrize(("world", "state"), HOUSES)
def test_none_of_all_blanks_makes_a_pass_or_silences_anything(world: str, state: str) -> None:
    found = [
        (path, wrong) for path in statements(plain_of(world, state)) if (wrong := wrongs(world, state, path))
    ]
    assert found == []


@pytest.mark.parametrize(("world", "state"), HOUSES)
def test_there_is_much_to_blank(world: str, state: str) -> None:
    assert len(list(statements(plain_of(world, state)))) > 1500
