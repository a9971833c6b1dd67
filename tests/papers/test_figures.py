"""Lengths: metres, or millimetres with feet and inches for houses that follow NFPA 70."""

from secondfix.house import schedule
from secondfix.papers import elevations_svg, plan_svg
from tests.papers.drawing.svg import collisions, off_sheet, texts
from tests.papers.example import house_of, plain_house


def test_drawings_of_nec_houses_carry_both() -> None:
    plain = plain_house()
    plain["wiring_rules"] = "nec"
    house = house_of(plain)
    rows = schedule(house, house.models)
    svg = elevations_svg(rows, "R1")
    words = " ".join(t.text for t in texts(svg))
    assert "4200 mm (13'-9 3/8\")" in words
    assert "1050  3'-5 3/8\"" in words
    assert collisions(svg) == []
    assert off_sheet(svg) == []
    assert any(t.text.endswith(" ft") for t in texts(plan_svg(rows, "S1")))
