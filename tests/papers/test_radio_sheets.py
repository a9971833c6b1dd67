"""The pack's radio sheets: one for each network on each storey, or what to do first; what was learned."""

from pathlib import Path

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import Change, House, Schedule, edited, read_house, schedule
from secondfix.papers.pack.radio_sheets import radio_sheets
from secondfix.radio import Learned, Measured, Reach, reach_measured

ASSUMED = default_assumptions()
IN_VAIN = tuple(Measured(d, "N1", None) for d in ("D20", "D21", "D22", "D31"))
SIZE = {"wide": 1400.0, "high": 900.0}


@pytest.fixture(scope="module")
def house(tree: Path) -> House:
    read = read_house((tree / "demo/house-mended.json").read_bytes(), where="demo", models=shipped_models())
    assert isinstance(read, House)
    return read


def asked(house: House, measured: tuple[Measured, ...] = ()) -> tuple[Schedule, Reach, Learned]:
    rows = schedule(house, house.models)
    return rows, *reach_measured(rows, ASSUMED, measured)


def test_every_network_has_a_sheet_for_each_storey_numbered_on(house: House) -> None:
    rows, reached, _ = asked(house)
    sheets = radio_sheets(rows, reached, ASSUMED, **SIZE)
    assert [s.number for s in sheets] == [f"S5/{n:02d}" for n in range(4, 10)]
    assert len({s.title for s in sheets}) == 6
    assert {n.name for n in house.networks.values()} == {s.title.split("radio of ")[1] for s in sheets}
    assert all(s.pictures["radio"].startswith("<svg") for s in sheets)
    assert radio_sheets(rows, None, ASSUMED, **SIZE) == []


def test_a_network_whose_controller_stands_nowhere_says_what_to_do_first(house: House) -> None:
    lost = edited(house, [Change("networks.N2.controller_place", None)], models={})
    assert isinstance(lost, House), lost
    rows, reached, _ = asked(lost)
    sheets = radio_sheets(rows, reached, ASSUMED, **SIZE)
    assert len(sheets) == 5
    assert sheets[-1].title == "Radio, not drawn"
    assert "controller" in str(sheets[-1].blocks)


def test_what_was_learned_moves_the_lines_on_paper(house: House) -> None:
    rows, reached, learned = asked(house, IN_VAIN)
    plain = radio_sheets(rows, reached, ASSUMED, **SIZE)
    taught = radio_sheets(rows, reached, ASSUMED, learned=learned, **SIZE)
    assert plain[0].pictures["radio"] != taught[0].pictures["radio"]
