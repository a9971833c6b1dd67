"""Reading a model: every fault of the file at once, each with its path, or the model."""

import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.catalogue import Model, ModelFault, model_key, read_model
from tests.catalogue.shipped import texts

GOOD = texts()["plimmet-osier-three@1"]


def faults_of(text: str) -> list[ModelFault]:
    found = read_model(text, where="own.toml")
    assert isinstance(found, list)
    return found


def test_a_good_file_is_a_model() -> None:
    assert isinstance(read_model(GOOD, where="own.toml"), Model)


def test_text_that_is_not_toml_is_one_fault_with_its_line() -> None:
    (fault,) = faults_of('maker = "tavrindo"\nname = =\n')
    assert fault.where == "own.toml"
    assert (fault.path, fault.stands) == ("line 2, column 8", "not TOML")


def test_all_faults_are_told_at_once_each_with_its_path() -> None:
    text = (
        GOOD.replace("gangs = 3", 'gangs = "3"')
        .replace('kind = "motor"', 'kind = "motors"')
        .replace("hold_ms = 10000", "hold_ms = 0", 1)
        .replace('output = "relay"', 'output = "relay"\ncolour = "white"')
    )
    paths = {fault.path for fault in faults_of(text)}
    assert paths == {"gangs", "ratings.4.kind", "join.steps.1.hold_ms", "colour"}


def test_a_fault_shows_what_stands_and_what_was_expected() -> None:
    (fault,) = faults_of(GOOD.replace("mounts = 1", "mounts = 9"))
    assert (fault.path, fault.stands) == ("mounts", "9")
    assert "6" in fault.expected


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ("gangs = 3", "gangs = 0", "at least one gang"),
        ("mounts = 1", "mounts = 0", "at least one mount"),
        ('kind = "motor"', 'kind = "tungsten"', "one rating per kind"),
        ("whole_entry = false", 'whole_entry = false\nwhole_switches = "all"', "whole-device entry"),
        ('protocol = "zigbee"\n', "", "states its protocol and how it joins"),
        ('form = "switch"', 'form = "extension_unit"', "neither protocol, join, code nor entry"),
        ('output = "relay"', 'output = "relay"\nedge = "leading"', "only a dimmer"),
        ('output = "relay"', 'output = "shutter"', "two gangs for each motor"),
        ("mounts = 1", "mounts = 1\nyokes = 2", "at most one yoke"),
    ],
)
def test_statements_that_contradict_each_other_are_refused(old: str, new: str, expected: str) -> None:
    found = faults_of(GOOD.replace(old, new))
    assert [f.stands for f in found] == ["what the keys say together"] * len(found)
    assert any(expected in f.expected for f in found)


@pytest.mark.parametrize(
    ("step", "missing"),
    [
        ('{ act = "press", button = "gang 1" }', "times"),
        ('{ act = "hold", hold_ms = 400 }', "button"),
        ('{ act = "press_then_hold", button = "gang 1" }', "times, hold_ms"),
        ('{ act = "watch" }', "indicator"),
        ('{ act = "wait" }', "wait_ms"),
    ],
)
def test_a_step_states_what_hands_need_to_know(step: str, missing: str) -> None:
    (fault,) = faults_of(GOOD.replace('{ act = "power_on" }', step, 1))
    assert fault.path == "join.steps.0"
    assert fault.expected.endswith(missing)


def test_far_is_never_faster_than_near() -> None:
    (fault,) = faults_of(GOOD.replace("far_s = 60", "far_s = 6", 1))
    assert (fault.path, fault.expected) == ("join", "far_s is at least near_s")


def test_a_file_too_large_is_refused_before_it_is_read() -> None:
    (fault,) = faults_of("#" * (256 * 1024 + 1))
    assert fault.stands == "more than 262,144 bytes"


def test_what_a_sheet_does_not_state_stays_unknown() -> None:
    text = "\n".join(line for line in GOOD.splitlines() if not line.startswith(("peak", "depth", "repeats")))
    model = read_model(text, where="own.toml")
    assert isinstance(model, Model)
    assert (model.peak, model.depth_behind_plate_mm, model.repeats.value) == (None, None, "not_stated")


@pytest.mark.parametrize("key", ["plimmet-osier-three@1", "a-b@99"])
def test_a_key_of_the_right_shape_is_taken(key: str) -> None:
    assert model_key(key) == key


@pytest.mark.parametrize("key", ["plimmet", "plimmet-x@0", "plimmet-x@100", "Plimmet-x@1", "../x@1", "x@1\n"])
def test_a_key_of_another_shape_is_refused(key: str) -> None:
    with pytest.raises(ValueError, match="<maker>-<name>@<edition>"):
        model_key(key)


KEYS = sorted(tomllib.loads(GOOD))


@given(
    st.sampled_from(KEYS), st.one_of(st.integers(), st.text(max_size=5), st.booleans(), st.lists(st.none()))
)
def test_no_value_of_any_key_makes_reading_raise(key: str, value: object) -> None:
    spelt = {True: "true", False: "false"}.get(value) if isinstance(value, bool) else None
    spelt = spelt or ("[]" if isinstance(value, list) else repr(value) if isinstance(value, int) else '"x"')
    lines = [line for line in GOOD.splitlines() if not line.startswith(f"{key} =")]
    read_model("\n".join([f"{key} = {spelt}", *lines]), where="own.toml")


@given(st.text(max_size=200))
def test_no_text_makes_reading_raise(text: str) -> None:
    found = read_model(text, where="own.toml")
    assert isinstance(found, list)
    assert all(fault.where == "own.toml" for fault in found)


def test_presses_are_stated_by_kind_and_silence_is_not_none_of_them() -> None:
    stated = {"": None, "reports_presses = []": (), 'reports_presses = ["once", "held"]': ("once", "held")}
    for line, presses in stated.items():
        model = read_model(GOOD.replace("mounts = 1", f"mounts = 1\n{line}"), where="own.toml")
        assert isinstance(model, Model)
        assert model.reports_presses == presses
    (fault,) = faults_of(GOOD.replace("mounts = 1", 'mounts = 1\nreports_presses = ["gently"]'))
    assert fault.path == "reports_presses.0"
