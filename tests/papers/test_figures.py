"""Lengths: metres, or millimetres with feet and inches for houses that follow NFPA 70."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import schedule
from secondfix.papers import elevations_svg, plan_svg
from secondfix.papers.figures import feet_inches, length
from tests.papers.drawing.svg import collisions, off_sheet, texts
from tests.papers.example import house_of, plain_house


@pytest.mark.parametrize(
    ("mm", "words"),
    [
        (25.4, '1"'),
        (12.7, '1/2"'),
        (304.8, "1'-0\""),
        (914.4, "3'-0\""),
        (1050, "3'-5 3/8\""),  # 41.339 in; 3/8 is 0.375
        (1219.2, "4'-0\""),
        (0, '0"'),
        (314.3, "1'-0 3/8\""),
        (303.9, "1'-0\""),  # 11.965 in rounds up to the foot
    ],
)
def test_feet_and_inches_by_the_inch_of_exactly_25_4_mm(mm: float, words: str) -> None:
    assert feet_inches(mm) == words


@given(st.integers(0, 30_000))
def test_what_is_printed_is_within_a_sixteenth_of_an_inch(mm: int) -> None:
    words = feet_inches(mm).rstrip('"')
    feet, _, rest = words.rpartition("'-")
    inches = sum(int(p.split("/")[0]) / int([*p.split("/"), "1"][1]) for p in rest.split())
    assert inches < 12
    # Rounding to eighths errs by half of one at most; a hair for the division.
    assert abs((int(feet or 0) * 12 + inches) * 25.4 - mm) <= 25.4 / 16 + 1e-9


def test_other_houses_get_metres() -> None:
    assert length(1050, nec=False) == "1.05 m"
    assert length(1050, nec=True) == "1050 mm (3'-5 3/8\")"


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
