"""What ships: models that load, that cover every statement a sheet can make, and that never change."""

import hashlib
import json
from enum import StrEnum
from pathlib import Path

import pytest

from secondfix.catalogue import (
    Act,
    CodeKind,
    Edge,
    Form,
    Model,
    NeutralNeed,
    Output,
    Removal,
    Stated,
    Supply,
    WholeSwitches,
)
from secondfix.terms import PROTOCOLS, Protocol
from tests.catalogue.shipped import FOLDER, shipped

MODELS = shipped()
SWITCHES = [m for m in MODELS.values() if m.form is Form.SWITCH]


def test_each_file_bears_the_key_of_its_model() -> None:
    assert {name: model.key for name, model in MODELS.items() if name != model.key} == {}


def test_at_least_thirty_six_models_of_six_makers_stand() -> None:
    assert len({(m.maker, m.name) for m in MODELS.values()}) >= 36
    assert len({m.maker for m in MODELS.values()}) == 6


@pytest.mark.parametrize("protocol", Protocol)
@pytest.mark.parametrize("output", [Output.RELAY, Output.DIMMER])
def test_each_protocol_has_a_relay_and_a_dimmer(protocol: Protocol, output: Output) -> None:
    assert [m for m in MODELS.values() if m.protocol is protocol and m.output is output]


def test_switches_have_one_to_four_gangs_on_one_to_four_mounts() -> None:
    assert {m.gangs for m in SWITCHES} == {1, 2, 3, 4}
    assert {m.mounts for m in SWITCHES} == {1, 2, 3, 4}


def test_width_is_not_gang_count() -> None:
    assert [m for m in SWITCHES if m.gangs > m.mounts]
    assert [m for m in SWITCHES if m.gangs < m.mounts]


# Every word that a sheet can state about a field is stated by some shipped model.
STATEMENTS: list[tuple[str, type[StrEnum], frozenset[StrEnum]]] = [
    # The shipped catalogue has no sensor yet.
    ("form", Form, frozenset({Form.SENSOR})),
    ("protocol", Protocol, frozenset()),
    ("supply", Supply, frozenset()),
    ("output", Output, frozenset()),
    ("edge", Edge, frozenset()),
    ("interlocked", Stated, frozenset()),
    ("neutral", NeutralNeed, frozenset()),
    ("own_time_limit", Stated, frozenset()),
    # Every shipped sheet says whether the device repeats.
    ("repeats", Stated, frozenset({Stated.NOT_STATED})),
    ("group_commands", Stated, frozenset()),
    ("live_parts_front_off", Stated, frozenset()),
    ("removal_before_join", Removal, frozenset()),
    ("whole_switches", WholeSwitches, frozenset()),
    ("code", CodeKind, frozenset()),
]


@pytest.mark.parametrize(("name", "words", "unused"), STATEMENTS)
def test_each_statement_of_a_sheet_appears(
    name: str, words: type[StrEnum], unused: frozenset[StrEnum]
) -> None:
    assert {getattr(m, name) for m in MODELS.values()} - {None} == set(words) - unused


def test_each_act_of_a_procedure_appears() -> None:
    procedures = [p for m in MODELS.values() for p in (m.join, m.reset, m.remove) if p]
    assert {step.act for p in procedures for step in p.steps} == set(Act)


@pytest.mark.parametrize(
    "model", [m for m in MODELS.values() if m.output is not Output.NONE], ids=lambda m: m.key
)
def test_a_device_with_an_output_states_what_the_checks_ask(model: Model) -> None:
    assert model.ratings
    assert model.module_total_ma
    assert model.neutral
    assert model.depth_behind_plate_mm
    assert model.power_loss
    assert model.power_loss.as_delivered in model.power_loss.settable
    assert all(r.standard[-4:].isdigit() and ":" in r.standard for r in model.ratings), "standard:edition"


def test_some_module_totals_are_below_the_sum_of_the_gangs() -> None:
    assert [
        m
        for m in SWITCHES
        if m.module_total_ma and m.module_total_ma < m.gangs * max(r.current_ma for r in m.ratings)
    ]


def test_an_older_standard_leaves_led_lamps_unrated_and_motors_higher() -> None:
    # EN 60669-1:2018 scope caps motors at 3 A at 250 V; the 1999 edition did not (scope notes, read).
    old = [r for m in MODELS.values() for r in m.ratings if r.standard.startswith("EN 60669-1:1999")]
    assert {r.kind.value for r in old} == {"resistive", "tungsten", "motor"}
    assert max(r.current_ma for r in old if r.kind.value == "motor") > 3000
    new = [r for m in MODELS.values() for r in m.ratings if r.standard == "IEC 60669-2-1:2021"]
    assert max(r.current_ma for r in new if r.kind.value == "motor") <= 3000


def test_every_device_says_where_its_code_is_printed_and_what_it_sends_and_hears() -> None:
    for model in filter(lambda m: m.protocol, MODELS.values()):
        assert model.code_printed_at, model.key
        assert model.transmit_power_dbm is not None, model.key
        assert model.sensitivity_dbm is not None, model.key


def test_codes_go_with_the_protocol() -> None:
    expected = {
        Protocol.ZIGBEE: CodeKind.ZIGBEE_INSTALL_CODE,
        Protocol.ZWAVE: CodeKind.ZWAVE_DSK,
        Protocol.MATTER_THREAD: CodeKind.MATTER,
        None: CodeKind.NONE,
    }
    assert {m.key: m.code for m in MODELS.values()} == {m.key: expected[m.protocol] for m in MODELS.values()}
    assert set(expected) == {*PROTOCOLS, None}


def test_makers_differ_in_how_they_join() -> None:
    ways = {m.key: m.join.steps for m in MODELS.values() if m.join}
    by_maker = {
        maker: {ways[k] for k in ways if k.startswith(maker)} for maker in {m.maker for m in MODELS.values()}
    }
    for maker, own in by_maker.items():
        for other, theirs in by_maker.items():
            assert maker == other or not own & theirs, f"{maker} joins as {other} does"


def test_a_published_edition_is_never_changed() -> None:
    held = json.loads((Path(__file__).parent / "editions.json").read_text(encoding="utf-8"))
    stands = {p.stem: hashlib.sha256(p.read_bytes()).hexdigest() for p in FOLDER.glob("*.toml")}
    changed = {name for name in held if stands.get(name) != held[name]}
    assert changed == set(), "published: give the new sheet a new edition, in a file of its own"
    assert set(stands) - set(held) == set(), "new editions are entered in editions.json"


def test_a_later_edition_may_state_what_an_earlier_left_open() -> None:
    first, second = MODELS["ostrabeck-gull-two@1"], MODELS["ostrabeck-gull-two@2"]
    assert first.whole_switches is WholeSwitches.TO_BE_TESTED
    assert second.whole_switches is WholeSwitches.FIRST
