"""The plan for a screen: ways at the symbols, words apart, and else the plan of the papers."""

import re
from pathlib import Path

import pytest

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.papers import DAY, plan_on_screen, plan_svg

TREE = Path(__file__).parents[3]


@pytest.fixture(scope="module", params=["demo/house.json", "demo/nec-house.json"])
def rows(request: pytest.FixtureRequest) -> Schedule:
    """A demo house, one of each world."""
    house = read_house((TREE / request.param).read_bytes(), where="h", models=shipped_models())
    assert isinstance(house, House)
    return schedule(house, house.models)


def test_a_symbol_leads_where_its_box_or_place_has_a_way(rows: Schedule) -> None:
    storey = next(iter(rows.house.storeys))
    box = next(i for i, b in rows.house.boxes.items() if rows.house.rooms[b.room].storey == storey)
    plan = plan_on_screen(rows, storey, (), palette=DAY, ways={box: '/x?a="1"&b'})
    assert re.findall(r"<a href=(\S+) aria-label", plan.svg) == ["'/x?a=\"1\"&amp;b'"]
    assert plan.svg.count('fill="transparent"') == 1


def test_without_ways_it_is_the_drawing_of_the_papers(rows: Schedule) -> None:
    findings = check(rows.house, assumptions=default_assumptions()).findings
    for storey in rows.house.storeys:
        screen = plan_on_screen(rows, storey, findings, palette=DAY, ways={}, height=600.0)
        paper = plan_svg(rows, storey, findings)
        drawn = [line for line in paper.splitlines() if line.startswith(("<polygon", "<circle", "<path"))]
        assert [x for x in screen.svg.splitlines() if x.startswith(("<polygon", "<circle", "<path"))] == drawn


def test_the_words_of_every_mark_stand_beside_it_once(rows: Schedule) -> None:
    findings = check(rows.house, assumptions=default_assumptions()).findings
    storey = next(iter(rows.house.storeys))
    plan = plan_on_screen(rows, storey, findings, palette=DAY, ways={})
    numbers = [n.number for n in plan.notes]
    assert numbers == sorted(set(numbers))
    assert numbers
    assert all(n.says and n.head for n in plan.notes)
    assert any("Scale 1:" in line for line in plan.remarks)
