"""The sheet of circuits: what hangs on each, its sum against the limit, what is open, nothing made up."""

import json
from pathlib import Path
from typing import Any

import pytest

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding
from secondfix.house import House, Schedule, read_house, schedule, settled
from secondfix.papers import Setting, pack_pdf
from secondfix.papers.drawing import keynotes
from tests.papers.reading import flat, pages


def demo_of(tree: Path, name: str, **changes: Any) -> tuple[Schedule, tuple[Finding, ...]]:
    plain = json.loads((tree / "demo" / f"{name}.json").read_text(encoding="utf-8")) | changes
    house = read_house(json.dumps(plain).encode(), where="demo", models={})
    assert isinstance(house, House), house
    return schedule(house, house.models), check(house, assumptions=default_assumptions()).findings


def page_of(rows: Schedule, findings: tuple[Finding, ...], setting: Setting) -> str:
    pdf = pack_pdf(rows, findings, default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes), pdf
    return flat("".join(p.text for p in pages(pdf) if "S4/02" in p.text and "Drawing register" not in p.text))


@pytest.mark.parametrize("name", ["house", "nec-house"])
def test_every_circuit_has_breaker_label_loads_and_places(name: str, tree: Path, setting: Setting) -> None:
    rows, findings = demo_of(tree, name)
    text = page_of(rows, findings, setting)
    for circuit_id, c in rows.house.circuits.items():
        rated = settled(c.breaker_a)
        assert [w for w in (circuit_id, c.name, c.label, f"{rated} A") if flat(w) not in text] == []
    for load_id, by in rows.fed_by.items():
        assert f"{load_id}{flat(rows.house.loads[load_id].name)}" in text, (load_id, by)
    fed = [r.id for r in rows.rows.values() if settled(r.gang.line)]
    assert [g for g in fed if g not in text] == []


def test_the_sum_stands_against_the_limit_of_the_rules_with_its_answer(tree: Path, setting: Setting) -> None:
    """1500 W at 120 V, on for hours: 12.5 A and a quarter, 15.6 A, on a breaker of 15 A (NEC 210.20(A))."""
    rows, findings = demo_of(tree, "nec-house")
    text = page_of(rows, findings, setting)
    assert flat("15.62 A limit: breaker of 15 A Fault") in text
    assert flat("125 %") in text
    assert flat("GFCI, AFCI seen") in text
    number = next(n.number for n in keynotes(findings) if n.finding.rule == "circuit_load")
    assert flat(f"{number} Fault, C8") in text


def test_what_is_not_stated_is_cannot_tell_and_not_a_pass(tree: Path, setting: Setting) -> None:
    rows, findings = demo_of(tree, "nec-house")
    plain = json.loads((tree / "demo/nec-house.json").read_text(encoding="utf-8"))["circuits"]
    del plain["C6"]["other_load_ma"], plain["C6"]["breaker_a"], plain["C6"]["label_rooms"]
    rows, findings = demo_of(tree, "nec-house", circuits=plain)
    text = page_of(rows, findings, setting)
    assert flat("limit: its breaker, not known ? Cannot tell") in text
    assert flat("rooms that it names: not known") in text


def test_without_the_mains_voltage_no_sum_is_told(tree: Path, setting: Setting) -> None:
    rows, findings = demo_of(tree, "house", mains_voltage_v=None)
    text = page_of(rows, findings, setting)
    assert text.count(flat("Cannot tell the mains voltage is not known")) == len(rows.house.circuits)
    assert flat("RCD seen") in text
