"""Assumptions stand on the sheets that lean on them, as they are resolved, in every paper."""

from pathlib import Path

import pytest

from secondfix.actions.check import check
from secondfix.actions.walk import walk
from secondfix.assumptions import Assumptions, Override, default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.papers import Setting, findings_pdf, pack_pdf, worksheets_pdf
from secondfix.papers.figures import assumption_range, assumption_value
from secondfix.papers.leaned import leaned_blocks, leaned_height_mm, names_of
from tests.papers.reading import flat, pages


@pytest.fixture(scope="module")
def settled() -> Assumptions:
    firm = default_assumptions().overridden(
        {"cable_allowance_mm": Override(12, 10, 14, "measured in our own boxes")}, set_by="firm"
    )
    return firm.overridden({"radio_spread_db": Override(9)}, set_by="command line")


@pytest.fixture(scope="module")
def demo(tree: Path) -> House:
    house = read_house((tree / "demo/house.json").read_bytes(), where="demo", models={})
    assert isinstance(house, House), house
    return house


@pytest.fixture(scope="module")
def rows(demo: House) -> Schedule:
    return schedule(demo, demo.models)


@pytest.fixture(scope="module")
def findings(demo: House, settled: Assumptions) -> tuple[Finding, ...]:
    return check(demo, assumptions=settled).findings


def sheet(pdf: object, number: str, *, without: str = "Drawing register") -> str:
    assert isinstance(pdf, bytes), pdf
    return flat("".join(p.text for p in pages(pdf) if number in p.text and without not in p.text))


CABLES = "cable_allowance_mm 12 mm (10 to 14 mm). Source: measured in our own boxes. Set by: firm."
SPREAD = "radio_spread_db 9 dB (taken as certain). Source: set by the command line. Set by: command line."


def test_pack_has_every_resolved_value_and_a_block_where_answers_lean(
    rows: Schedule, findings: tuple[Finding, ...], settled: Assumptions, setting: Setting
) -> None:
    pdf = pack_pdf(rows, findings, settled, setting=setting)
    every = sheet(pdf, "S1/02")
    for name, a in settled.items():
        wanted = (name, a.means, a.source, assumption_value(a, nec=False), assumption_range(a, nec=False))
        assert [w for w in (*wanted, a.set_by) if flat(w) not in every] == [], name
    snags = sheet(pdf, "S1/01")
    assert flat(CABLES) in snags
    assert flat(SPREAD) in snags
    shower = sheet(pdf, "S3/14")
    assert "B14" in shower
    assert flat(CABLES) in shower
    assert "radio_spread_db" not in shower
    assert flat("scene_device_ms 5 ms (2 to 10 ms)") in sheet(pdf, "S6/01")


def test_a_sheet_that_leans_on_nothing_says_nothing_of_it(
    rows: Schedule, findings: tuple[Finding, ...], settled: Assumptions, setting: Setting
) -> None:
    pdf = pack_pdf(rows, findings, settled, setting=setting)
    assert flat("Assumed on this sheet") not in sheet(pdf, "S3/01")


def test_findings_paper_has_the_block_of_what_is_open(
    rows: Schedule, findings: tuple[Finding, ...], settled: Assumptions, setting: Setting
) -> None:
    text = sheet(findings_pdf(rows, findings, settled, setting=setting), "S1/01")
    leaned = names_of(f for f in findings if f.outcome is not Outcome.PASSES)
    assert [n for n in leaned if n not in text] == []
    assert flat(CABLES) in text


def test_worksheets_have_value_range_and_setter_and_where_the_sources_stand(
    demo: House, rows: Schedule, findings: tuple[Finding, ...], settled: Assumptions, setting: Setting
) -> None:
    order = walk(demo, assumptions=settled).walk
    pdf = worksheets_pdf(rows, order, findings, settled, setting=setting)
    first = sheet(pdf, "S0/02")
    assert flat(SPREAD) in first
    assert flat("storey_change_m 15 m (8 to 30 m)") in first
    one = sheet(pdf, "S7/02")
    assert flat("radio_spread_db 9 dB (taken as certain). Source: sheet S0/02. Set by: command line.") in one
    assert flat("parent_margin_db 10 dB") in one


def test_nothing_leaned_on_is_no_block_and_takes_no_room(settled: Assumptions) -> None:
    assert leaned_blocks(settled, (), nec=False) == []
    assert leaned_height_mm(settled, (), nec=False, width_mm=240) == 0


def test_the_room_that_it_takes_grows_with_what_it_says(settled: Assumptions) -> None:
    one = leaned_height_mm(settled, ["radio_spread_db"], nec=False, width_mm=240)
    every = leaned_height_mm(settled, settled, nec=False, width_mm=240)
    assert 0 < one < every
    assert leaned_height_mm(settled, settled, nec=False, width_mm=120) > every
