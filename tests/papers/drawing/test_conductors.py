"""The drawing of a conversion: every core as found and after, caps and marks told without colour."""

import xml.etree.ElementTree as ET

import pytest

from secondfix.electrical import Drawn, Wish, convert, drawn
from secondfix.house import Arrangement
from secondfix.papers.drawing.conductors import conductor_pictures
from secondfix.papers.palette import DAY, NIGHT, Palette

SVG = "{http://www.w3.org/2000/svg}"


def of(places: int, *, wired: bool = True) -> Drawn:
    inputs = frozenset(map(str, range(2, places + 1))) if wired else frozenset[str]()
    return drawn(
        convert(Arrangement.TOGETHER, places, Wish("1", False, inputs), names={"2": "gang B2.1 <&>"})
    )


def texts(svg: str) -> list[str]:
    return ["".join(t.itertext()) for t in ET.fromstring(svg).iter(f"{SVG}text")]


@pytest.mark.parametrize("places", [2, 3, 5, 8])
def test_each_core_stands_twice_with_its_number_however_long_the_row(places: int) -> None:
    picture = of(places)
    shown = conductor_pictures(picture, palette=DAY, width=700, say=str)
    assert all(one.width <= 700 for one in shown)
    words = [t for one in shown for t in texts(one.svg)]
    for core in picture.cores:
        assert words.count(str(core.number)) == 2, core
    marks = [t for t in words if t.endswith(" *")]
    assert len(marks) == sum(c.marked for c in picture.cores)


def test_every_point_of_a_cut_row_stands_in_a_part_and_the_joint_in_two() -> None:
    shown = conductor_pictures(of(4), palette=DAY, width=700, say=str)
    assert len(shown) == 2
    both = [texts(one.svg) for one in shown]
    assert sum("gang B2.1 <&>" in t for t in both) == 2


def test_a_cap_is_a_bar_at_both_ends() -> None:
    picture = of(2, wired=False)
    (one,) = conductor_pictures(picture, palette=DAY, width=700, say=str)
    bars = [e for e in ET.fromstring(one.svg).iter(f"{SVG}line") if e.get("stroke-width") == "2"]
    assert len(bars) == 2 * sum(c.capped for c in picture.cores)
    assert bars


@pytest.mark.parametrize("palette", [DAY, NIGHT])
def test_ink_alone_draws_it(palette: Palette) -> None:
    (one,) = conductor_pictures(of(2), palette=palette, width=700, say=str)
    strokes = {e.get("stroke") for e in ET.fromstring(one.svg).iter() if e.get("stroke")}
    assert strokes == {palette.ink}


def test_nothing_joins_the_places_of_a_light_that_is_not_joined() -> None:
    made = convert(Arrangement.NOT_JOINED, 2, Wish("1", True, neutral_at=frozenset("1")))
    (one,) = conductor_pictures(drawn(made), palette=DAY, width=700, say=str)
    assert "radio button" in texts(one.svg)
