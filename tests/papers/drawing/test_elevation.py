"""Room elevations: true heights, nothing dropped, nothing over another."""

import re
import xml.etree.ElementTree as ET
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.house import Schedule, schedule
from secondfix.papers import DAY, NIGHT, elevations_svg
from tests.papers.drawing.svg import NS, collisions, off_sheet, plates, texts
from tests.papers.example import FINDINGS, HOSTILE, house_of, plain_house


def said(svg: str) -> str:
    return " ".join(t.text for t in texts(svg))


def test_each_wall_and_each_button_is_said(house: Schedule) -> None:
    svg = elevations_svg(house, "R1", FINDINGS)
    words = said(svg)
    for wanted in (
        "North wall",
        "East wall",
        "South wall",
        "West wall",
        "4.20 m",
        "3.10 m",
        "B01",
        "B02",
        "B03",
    ):
        assert wanted in words
    for wanted in ("Ceiling", "Cove", "Table", "Radiant heater", "(extension of B01.1)", "not known"):
        assert wanted in words
    assert collisions(svg) == []
    assert off_sheet(svg) == []


def test_plates_stand_at_their_true_height(house: Schedule) -> None:
    svg = elevations_svg(house, "R1")
    floors = [float(y) for y in re.findall(r'y1="([0-9.]+)"[^>]*stroke-width="2"', svg)]
    scale = int(re.search(r"Scale 1:(\d+)", svg).group(1))  # type: ignore[union-attr] # no match fails the test
    below = [(min(f for f in floors if f > y), y) for _, y in plates(svg)]
    heights = sorted(round((floor - y) * 25.4 / 96 * scale) for floor, y in below)
    # B01 and B03 at 1050 mm, B02 at 1100 mm; coordinates carry two decimals.
    assert heights == pytest.approx([1050, 1050, 1100], abs=1)


def test_scenes_that_a_press_starts_are_listed(house: Schedule) -> None:
    assert "held: Goodnight" in said(elevations_svg(house, "R2"))


def test_loads_of_another_room_are_named_with_it() -> None:
    plain = plain_house()
    plain["loads"]["L06"]["room"] = "R3"
    house = house_of(plain)
    assert "Hall ceiling, Loft room" in said(elevations_svg(schedule(house, house.models), "R2"))


def test_a_box_without_a_position_is_listed_and_one_far_away_is_dashed_and_said(house: Schedule) -> None:
    svg = elevations_svg(house, "R2", FINDINGS)
    words = said(svg)
    assert "B06" in words
    assert "position not known; note 5" in words
    assert "Porch" in words
    assert "B05 lies 1.00 m from the nearest wall" in words
    assert svg.count('stroke-dasharray="4 2.5"') == 1


def test_a_room_without_an_outline_is_a_list(house: Schedule) -> None:
    words = said(elevations_svg(house, "R3"))
    assert "B07" in words
    assert "1.20 m above the floor" in words
    assert HOSTILE[0] in words
    assert "No outline of this room is known" in words


def test_findings_wear_the_shapes_of_the_legend(house: Schedule) -> None:
    svg = elevations_svg(house, "R1", FINDINGS)
    for word in ("Danger, B01.4", "Fault, B01.2", "Advice, B03"):
        assert word in said(svg)
    filled = re.findall(r'<polygon points="([^"]*)" fill="#9A3F16"', svg)
    assert sorted(len(p.split()) for p in filled) == [3, 3, 4, 4]  # triangle and diamond, at plate and note
    assert "? 4" in said(elevations_svg(house, "R2", FINDINGS))  # its number in the snag list


def test_what_passes_gets_no_mark(house: Schedule) -> None:
    assert elevations_svg(house, "R1", [FINDINGS[-1]]) == elevations_svg(house, "R1")


def test_night_is_the_same_drawing_in_inverted_ink(house: Schedule) -> None:
    day, night = elevations_svg(house, "R1", FINDINGS), elevations_svg(house, "R1", FINDINGS, palette=NIGHT)
    for name in ("paper", "ink", "soft", "line", "accent"):
        day = day.replace(getattr(DAY, name), name)
        night = night.replace(getattr(NIGHT, name), name)
    assert day == night


def test_height_of_the_room_that_nobody_measured_is_said() -> None:
    plain = plain_house()
    del plain["storeys"]["S1"]["height_mm"]
    house = house_of(plain)
    assert "Ceiling height not known; drawn at 2.40 m." in said(
        elevations_svg(schedule(house, house.models), "R1")
    )


BOXES = st.lists(
    st.tuples(st.integers(0, 3), st.integers(0, 1000), st.integers(100, 2300), st.integers(1, 4)),
    min_size=1,
    max_size=9,
)


def crowded(boxes: list[tuple[int, int, int, int]]) -> Schedule:
    plain: dict[str, Any] = plain_house()
    plain["boxes"] = {}
    plain["devices"], plain["scenes"], plain["loads"], plain["outside_uses"] = {}, {}, {}, {}
    for n, (wall, share, height, gangs) in enumerate(boxes, 1):
        x = {0: 42 * share // 10, 1: 4200, 2: 42 * share // 10, 3: 0}[wall]
        y = {0: 3100, 1: 31 * share // 10, 2: 0, 3: 31 * share // 10}[wall]
        plain["boxes"][f"B{n:02d}"] = {
            "room": "R1",
            "position": {"x_mm": x, "y_mm": y, "height_mm": height},
            "mounts": {"1": {}},
            "gangs": {str(g): {"duty": "capped"} for g in range(1, gangs + 1)},
        }
    house = house_of(plain)
    return schedule(house, house.models)


@settings(max_examples=25)
@given(BOXES)
def test_however_crowded_every_plate_is_drawn_and_none_covers_another(
    boxes: list[tuple[int, int, int, int]],
) -> None:
    svg = elevations_svg(crowded(boxes), "R1")
    drawn = plates(svg)
    assert len(drawn) == len(boxes)
    names = [t.text for t in texts(svg)]
    for n in range(1, len(boxes) + 1):
        assert names.count(f"B{n:02d}") == 2  # over the plate and over its list
    numbers = [t for t in texts(svg) if t.size == 10.5 and t.text.isdigit()]
    assert not [1 for i, a in enumerate(numbers) for b in numbers[:i] if a.over(b)]
    heads = [t for t in texts(svg) if re.fullmatch(r"B\d\d", t.text)]
    assert not [1 for i, a in enumerate(heads) for b in heads[:i] if a.over(b)]


def boxes_of(svg: str) -> list[tuple[float, float, float, float]]:
    rects = [r for r in ET.fromstring(svg).iter(f"{NS}rect") if r.attrib["stroke-width"] == "1.4"]
    edges = [[float(r.attrib[k]) for k in ("x", "y", "width", "height")] for r in rects]
    return [(x, y, x + wide, y + high) for x, y, wide, high in edges]


def walls_of(svg: str) -> list[tuple[float, float]]:
    rects = [r for r in ET.fromstring(svg).iter(f"{NS}rect") if r.attrib["stroke-width"] == "1.2"]
    return [(float(r.attrib["x"]), float(r.attrib["x"]) + float(r.attrib["width"])) for r in rects]


@settings(max_examples=15)
@given(BOXES)
def test_plates_stay_on_their_wall_and_no_line_strikes_a_gangs_number(
    boxes: list[tuple[int, int, int, int]],
) -> None:
    svg = elevations_svg(crowded(boxes), "R1")
    bodies, walls = boxes_of(svg), walls_of(svg)
    for left, _, right, _ in bodies:
        assert any(a - 0.6 <= left and right <= b + 0.6 for a, b in walls)
    for i, (left, top, right, bottom) in enumerate(bodies):
        for other in bodies[:i]:
            assert right <= other[0] or other[2] <= left or bottom <= other[1] or other[3] <= top
    drawn = [e for e in ET.fromstring(svg) if e.tag in {f"{NS}line", f"{NS}rect"}]
    for n, e in enumerate(drawn):
        if e.tag == f"{NS}rect" and e.attrib["stroke-width"] == "1.4":
            # A line drawn before the plate lies under its paper; none that follows may cross it.
            later = [x for x in drawn[n:] if x.tag == f"{NS}line"]
            assert not [x.attrib for x in later if crosses(x.attrib, e.attrib)]


def crosses(line: dict[str, str], rect: dict[str, str]) -> bool:
    x, y, wide, high = (float(rect[k]) for k in ("x", "y", "width", "height"))
    x1, y1, x2, y2 = (float(line[k]) for k in ("x1", "y1", "x2", "y2"))
    steps = [(x1 + (x2 - x1) * t / 200, y1 + (y2 - y1) * t / 200) for t in range(201)]
    return any(x + 1 < px < x + wide - 1 and y + 1 < py < y + high - 1 for px, py in steps)


@pytest.mark.parametrize(
    ("high_px", "scale", "walls"),
    [
        (640.0, 60, [2, 2]),  # two rows raise the scale by more than a little
        (560.0, 100, [4]),  # 1:75 would want two rows: a little smaller, in one
        (260.0, 100, [4]),
    ],
)
def test_walls_get_rows_where_that_raises_the_scale_by_more_than_a_little(
    high_px: float, scale: int, walls: list[int]
) -> None:
    plain = plain_house()
    plain["rooms"]["R1"]["outline_mm"] = [[0, 0], [6000, 0], [6000, 4000], [0, 4000]]
    house = house_of(plain)
    svg = elevations_svg(schedule(house, house.models), "R1", height=high_px)
    assert f"Scale 1:{scale}." in svg
    floors = re.findall(r'y1="([0-9.]+)"[^>]*stroke-width="2"', svg)
    assert len(floors) == len(walls)
    heads = re.findall(r'y="([0-9.]+)"[^>]*>(?:North|East|South|West) wall', svg)
    assert [heads.count(y) for y in dict.fromkeys(heads)] == walls
