"""The demo house: each trouble is found at its place by its rule, little else; mended, nothing is left."""

from pathlib import Path

import pytest

from secondfix import joining
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.findings import Outcome, Severity
from secondfix.house import Duty, as_canonical_json, schedule
from secondfix.joining import Mark, links_of, walk
from secondfix.radio import reach
from tests.demo.reading import findings_of, house_of, text_of

TROUBLED, MENDED = "house.json", "house-mended.json"


F, T = Outcome.FAILS, Outcome.CANNOT_TELL

# demo/README.md tells each of these in words, in this order.
TROUBLES: list[tuple[str, str, str, Outcome, Severity]] = [
    ("landing light, line and neutral of two circuits", "borrowed_neutral", "B01.3", F, Severity.DANGER),
    ("a gang that nobody can explain", "duty", "B07.3", T, Severity.DANGER),
    ("a board label that is wrong", "board_label", "B06.1", F, Severity.DANGER),
    ("four small lamps below a dimmer's least load", "least_load", "B15.1", F, Severity.FAULT),
    ("a shallow tiled box", "depth", "B14", F, Severity.FAULT),
    ("cove drivers without a printed peak", "inrush", "B09.1", T, Severity.FAULT),
    ("a run-on fan on the light's gang", "permanent_supply", "B13.1", F, Severity.FAULT),
    ("a whole-device entry that stops a pump", "scenes.whole_entry", "S2", F, Severity.DANGER),
    ("three switches on one plug-in repeater", "radio.one_repeater", "P91", F, Severity.ADVICE),
    ("a dimmer that joins with its front off, live", "front_on", "B09", F, Severity.ADVICE),
]
# What follows from the unexplained gang: its load counts nowhere, and it has no name to bear.
FOLLOWS = {("module_total", "D07"), ("circuit_load", "C1"), ("names.explained", "B07.3")}


@pytest.mark.parametrize(
    ("trouble", "rule", "place", "outcome", "severity"), TROUBLES, ids=lambda v: str(v)[:40]
)
def test_each_trouble_is_found_once_at_its_place_by_its_rule(
    trouble: str, rule: str, place: str, outcome: Outcome, severity: Severity
) -> None:
    found = [f for f in findings_of(TROUBLED) if f.rule == rule and f.outcome is not Outcome.PASSES]
    assert [(f.place, f.outcome, f.severity) for f in found] == [(place, outcome, severity)], trouble


def test_nothing_but_the_troubles_is_found() -> None:
    told = {(rule, place) for _, rule, place, _, _ in TROUBLES} | FOLLOWS
    found = {(f.rule, f.place) for f in findings_of(TROUBLED) if f.outcome is not Outcome.PASSES}
    assert found == told


def test_the_mended_house_has_nothing_but_passes() -> None:
    left = [f for f in findings_of(MENDED) if f.outcome is not Outcome.PASSES]
    assert [(f.rule, f.place, f.says) for f in left] == []


def test_every_rule_that_found_a_trouble_passes_somewhere_in_the_mended_house() -> None:
    passed = {f.rule for f in findings_of(MENDED)}
    without_a_pass_of_their_own = {"radio.one_repeater"}  # tells only of devices that hang
    asked_of_commands = {"scenes.whole_entry"}  # no scene commands a whole-device entry any more
    rules = {rule for _, rule, _, _, _ in TROUBLES} - without_a_pass_of_their_own - asked_of_commands
    assert rules - passed == set()


def test_the_pump_stops_and_the_finding_says_so() -> None:
    (finding,) = (f for f in findings_of(TROUBLED) if f.rule == "scenes.whole_entry" and f.severity)
    assert {"L22", "D08"} <= set(finding.also)
    assert house_of(TROUBLED).loads["L22"].name == "pump"


def test_without_the_repeater_the_three_switches_are_cut_off() -> None:
    house = house_of(TROUBLED)
    left = {key: device for key, device in house.devices.items() if key != "D31"}
    alone = house.model_copy(update={"devices": left})
    words = {d.id: d.word.value for d in reach(schedule(alone, alone.models), default_assumptions()).devices}
    assert {words[key] for key in ("D20", "D21", "D22")} <= {"unlikely", "doubtful"}
    assert {words[key] for key in words if key not in {"D20", "D21", "D22"}} == {"likely"}


@pytest.mark.parametrize("name", [TROUBLED, MENDED])
def test_the_file_is_canonical_and_carries_its_models(name: str) -> None:
    house = house_of(name)
    assert as_canonical_json(house) == text_of(name)
    shipped = shipped_models()
    assert {key: shipped.get(key) for key in house.models} == house.models


def test_mended_is_a_revision_of_the_same_house() -> None:
    assert house_of(TROUBLED).id == house_of(MENDED).id


@pytest.mark.parametrize("name", [TROUBLED, MENDED])
def test_it_is_as_large_as_it_says(name: str) -> None:
    house = house_of(name)
    assert (len(house.boxes), sum(len(box.gangs) for box in house.boxes.values())) == (22, 47)
    assert len(house.storeys) == 2
    assert {n.protocol.value for n in house.networks.values()} == {"zigbee", "zwave", "matter_thread"}
    assert all(box.position and box.position.height_mm in {1050, 2100} for box in house.boxes.values())


@pytest.mark.parametrize("name", [TROUBLED, MENDED])
def test_every_duty_form_and_start_has_an_example(name: str) -> None:
    house = house_of(name)
    duties = {gang.duty for box in house.boxes.values() for gang in box.gangs.values()}
    assert {Duty.FEEDS, Duty.EXTENDS, Duty.SCENE_ONLY} <= duties
    assert {start.by for scene in house.scenes.values() for start in scene.starts} == {
        "gang",
        "time",
        "sun",
        "sensor",
    }
    forms = {house.models[d.model].form.value for d in house.devices.values() if d.model}
    assert forms == {"switch", "in_box_module", "luminaire_module", "plug_in", "battery_button"}


@pytest.mark.parametrize("name", [TROUBLED, MENDED])
def test_every_device_can_be_joined_in_some_order(name: str) -> None:
    house, assumptions = house_of(name), default_assumptions()
    rows = schedule(house, house.models)
    links = links_of(reach(rows, assumptions), assumptions)
    order = walk(rows, links, assumptions)
    assert {step.device for step in order.joins()} == set(house.devices)
    bench = {"D09": (Mark.BENCH,)} if name == TROUBLED else {}
    assert {step.device: step.marks for step in order.steps if step.marks} == bench
    asked = joining.check(rows, links, assumptions)
    assert {f.rule for f in asked} == {rule.id for rule in joining.RULES}
    left = [("front_on", "B09")] if name == TROUBLED else []
    assert [(f.rule, f.place) for f in asked if f.outcome is not Outcome.PASSES] == left


def test_the_page_tells_every_trouble(tree: Path) -> None:
    page = (tree / "demo" / "README.md").read_text(encoding="utf-8")
    rows = [line for line in page.splitlines() if line.startswith("| ") and line[2].isdigit()]
    assert [row.split("|")[1].strip() for row in rows] == [str(n) for n in range(1, len(TROUBLES) + 1)]
    for row, (_, _, place, _, _) in zip(rows, TROUBLES, strict=True):
        assert place in row.split("|")[3], row
