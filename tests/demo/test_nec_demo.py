"""The 120 V demo house: each trouble is found at its place by its rule; mended, nothing is left."""

from pathlib import Path

import pytest

from secondfix import joining
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import Duty, as_canonical_json, schedule, settled
from secondfix.joining import links_of, walk
from secondfix.radio import reach
from secondfix.terms import RadioRegion, WiringRules
from tests.demo.reading import findings_of, house_of, text_of

TROUBLED, MENDED = "nec-house.json", "nec-house-mended.json"
BOTH = [TROUBLED, MENDED]


def the(rule: str, place: str, name: str) -> Finding:
    (finding,) = (f for f in findings_of(name) if (f.rule, f.place) == (rule, place))
    return finding


DANGER, FAULT, ADVICE = Severity.DANGER, Severity.FAULT, Severity.ADVICE

# demo/README.md tells each of these in words, in this order.
TROUBLES: list[tuple[str, str, str, Severity]] = [
    ("a box that 12 AWG overfills", "box_fill", "B02", FAULT),
    ("1500 W for hours on a 15 A circuit", "circuit_load", "C8", FAULT),
    ("half a receptacle behind a dimmer", "dimmed_socket", "B06.1", FAULT),
    ("a sixth switch without neutral", "nec_no_neutral", "C2", FAULT),
    ("a shared neutral that a device breaks", "neutral_through", "B03", DANGER),
    ("a motor on a snap switch", "nec_motor", "B11.1", DANGER),
    ("two scenes at one minute that disagree", "scenes.times_clash", "S2", FAULT),
    ("a press that nobody reports", "scenes.start", "S1", FAULT),
    ("a porch and a torch", "names.by_ear", "L02", ADVICE),
]
# What follows from the motor: a switch for heaters alone prints no rating for motors.
FOLLOWS = {("contact", "B11.1")}


@pytest.mark.parametrize(("trouble", "rule", "place", "severity"), TROUBLES, ids=lambda v: str(v)[:40])
def test_each_trouble_is_found_once_at_its_place_by_its_rule(
    trouble: str, rule: str, place: str, severity: Severity
) -> None:
    found = [f for f in findings_of(TROUBLED) if f.rule == rule and f.outcome is not Outcome.PASSES]
    assert [(f.place, f.outcome, f.severity) for f in found] == [(place, Outcome.FAILS, severity)], trouble


def test_nothing_but_the_troubles_is_found() -> None:
    told = {(rule, place) for _, rule, place, _ in TROUBLES} | FOLLOWS
    found = {(f.rule, f.place) for f in findings_of(TROUBLED) if f.outcome is not Outcome.PASSES}
    assert found == told


def test_the_mended_house_has_nothing_but_passes() -> None:
    left = [f for f in findings_of(MENDED) if f.outcome is not Outcome.PASSES]
    assert [(f.rule, f.place, f.says) for f in left] == []


def test_every_rule_that_found_a_trouble_passes_somewhere_in_the_mended_house() -> None:
    passed = {f.rule for f in findings_of(MENDED)}
    assert {rule for _, rule, _, _ in TROUBLES} - passed == set()


@pytest.mark.parametrize("name", BOTH)
def test_a_box_of_18_cubic_inches_is_full_to_the_last_tenth(name: str) -> None:
    """Two conductors in, three out, one yoke, clamps, grounds, all 14 AWG: 10 + 4 + 2 + 2 = 18.0 in³."""
    full = the("box_fill", "B01", name)
    assert full.outcome is Outcome.PASSES
    assert (full.value, full.limit) == ("box of 18.0 in³", "needs 18.0 in³")


def test_its_neighbour_in_12_awg_is_over_until_a_larger_box_is_set() -> None:
    """The same count in 12 AWG: 11.25 + 4.5 + 2.25 + 2.25 = 20.25 in³."""
    over, mended = the("box_fill", "B02", TROUBLED), the("box_fill", "B02", MENDED)
    assert (over.value, over.limit) == ("box of 18.0 in³", "needs 20.25 in³")
    assert (mended.outcome, mended.value, mended.limit) == (
        Outcome.PASSES,
        "box of 22.5 in³",
        "needs 20.25 in³",
    )


def test_the_heater_counts_for_a_quarter_more() -> None:
    """1500 W at 120 V is 12.5 A; for three hours or more it counts as 15.6 A."""
    over, mended = the("circuit_load", "C8", TROUBLED), the("circuit_load", "C8", MENDED)
    assert (over.value, over.limit) == ("15.62 A", "breaker of 15 A")
    assert (mended.outcome, mended.limit) == (Outcome.PASSES, "breaker of 20 A")


@pytest.mark.parametrize("name", BOTH)
def test_the_file_is_canonical_and_carries_its_models(name: str) -> None:
    house = house_of(name)
    assert as_canonical_json(house) == text_of(name)
    shipped = shipped_models()
    assert {key: shipped.get(key) for key in house.models} == house.models


def test_mended_is_a_revision_of_the_same_house() -> None:
    assert house_of(TROUBLED).id == house_of(MENDED).id


@pytest.mark.parametrize(("name", "gangs"), [(TROUBLED, 33), (MENDED, 34)])
def test_it_is_as_large_as_it_says(name: str, gangs: int) -> None:
    house = house_of(name)
    assert (len(house.boxes), sum(len(box.gangs) for box in house.boxes.values())) == (18, gangs)
    assert len(house.storeys) == 2
    assert {n.protocol.value for n in house.networks.values()} == {"zigbee", "zwave"}
    assert all(box.position and box.position.height_mm in {1219, 2134} for box in house.boxes.values())


@pytest.mark.parametrize("name", BOTH)
def test_it_is_a_house_of_the_nec(name: str) -> None:
    house = house_of(name)
    assert (house.mains_voltage_v, house.mains_frequency_hz) == (120, 60)
    assert (house.wiring_rules, house.radio_region) == (WiringRules.NEC, RadioRegion.US)
    assert {settled(c.breaker_a) for c in house.circuits.values()} == {15, 20}
    assert all(box.volume_mm3 and box.conductors for box in house.boxes.values())


@pytest.mark.parametrize("name", BOTH)
def test_every_duty_form_and_start_has_an_example(name: str) -> None:
    house = house_of(name)
    duties = {gang.duty for box in house.boxes.values() for gang in box.gangs.values()}
    assert {Duty.FEEDS, Duty.EXTENDS, Duty.SCENE_ONLY} <= duties
    starts = {start.by for scene in house.scenes.values() for start in scene.starts}
    assert starts == {"gang", "time", "sun", "sensor"}
    forms = {house.models[d.model].form.value for d in house.devices.values() if d.model}
    assert forms == {"switch", "in_box_module", "extension_unit", "battery_button"}


@pytest.mark.parametrize("name", BOTH)
def test_every_device_with_a_radio_is_reached_and_can_be_joined_in_some_order(name: str) -> None:
    house, assumptions = house_of(name), default_assumptions()
    rows = schedule(house, house.models)
    reached = reach(rows, assumptions)
    assert {device.word.value for device in reached.devices} == {"likely"}
    links = links_of(reached, assumptions)
    order = walk(rows, links, assumptions)
    with_radio = {d for d, device in house.devices.items() if device.network}
    assert {step.device for step in order.joins()} == with_radio == set(house.devices) - {"D07"}
    assert {step.device: step.marks for step in order.steps if step.marks} == {}
    asked = joining.check(rows, links, assumptions)
    assert [(f.rule, f.place) for f in asked if f.outcome is not Outcome.PASSES] == []


def test_the_page_tells_every_trouble(tree: Path) -> None:
    page = (tree / "demo" / "README.md").read_text(encoding="utf-8")
    rows = [line for line in page.splitlines() if line.startswith("| N")]
    assert [row.split("|")[1].strip() for row in rows] == [f"N{n}" for n in range(1, len(TROUBLES) + 1)]
    for row, (_, _, place, _) in zip(rows, TROUBLES, strict=True):
        assert place in row.split("|")[3], row
