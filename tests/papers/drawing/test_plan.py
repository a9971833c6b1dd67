"""Plans: everything has its place or is said to have none; labels stay apart."""

import re
from dataclasses import replace
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.house import Schedule, schedule
from secondfix.papers import plan_svg
from secondfix.papers.drawing.structure import thickness_mm, wall_class
from secondfix.papers.drawing.symbols import SYMBOL_WORDS
from tests.papers.drawing.svg import collisions, off_sheet, texts
from tests.papers.example import FINDINGS, house_of, plain_house


def said(svg: str) -> str:
    return " ".join(t.text for t in texts(svg))


def of(plain: dict[str, Any]) -> Schedule:
    house = house_of(plain)
    return schedule(house, house.models)


def test_boxes_places_and_rooms_are_labelled_and_labels_stay_apart(house: Schedule) -> None:
    svg = plan_svg(house, "S1")
    words = said(svg)
    for wanted in (
        "Dining room",
        "Hall",
        "B01 ×4",
        "B02 ×1",
        "B03 ×2",
        "B05 ×1",
        "P01",
        "P02",
        "P03",
        "P04",
        "P06",
    ):
        assert wanted in words
    assert "B01.1" in words  # beside the lamp that it feeds
    assert collisions(svg) == []
    assert off_sheet(svg) == []


def test_a_name_too_long_for_its_room_is_cut_and_stays_apart() -> None:
    plain = plain_house()
    plain["rooms"]["R1"]["name"] = "Dining room with the bay towards the orchard and the old kitchen's hatch"
    svg = plan_svg(of(plain), "S1", width=600.0, height=300.0)
    lines = [t.text for t in texts(svg)]
    assert "Dining room with the" in said(svg)
    assert any(line.endswith(" …") for line in lines)
    assert "hatch" not in said(svg)
    assert collisions(svg) == []


def test_what_has_no_position_is_said(house: Schedule) -> None:
    assert "Position not known: B06 ×1." in said(plan_svg(house, "S1"))


def test_legend_holds_what_stands_on_the_sheet_and_nothing_else(house: Schedule) -> None:
    words = said(plan_svg(house, "S1"))
    for key in ("two_way", "dimmer", "luminaire", "fan", "socket", "button", "controller", "repeater"):
        assert SYMBOL_WORDS[key].split(",")[0] in words
    assert SYMBOL_WORDS["surface"] not in words
    for wanted in (
        "brick, concrete or stone",
        "light layers",
        "layers not known",
        "thickness not known",
        "door;",
    ):
        assert wanted in words


def test_walls_are_told_apart_by_what_is_known_of_them(house: Schedule) -> None:
    walls = house.house.walls
    assert {i: wall_class(w) for i, w in walls.items() if i in {"W1", "W4", "W5", "W7"}} == {
        "W1": "masonry",
        "W4": "unknown",
        "W5": "unmeasured",
        "W7": "light",
    }
    assert thickness_mm(walls["W7"]) == 150


def test_a_storey_of_which_nothing_is_known_says_so(house: Schedule) -> None:
    plain = plain_house()
    del plain["boxes"]["B07"]["position"]
    words = said(plan_svg(of(plain), "S2"))
    assert "there is nothing to draw" in words
    assert "B07" in words


def test_a_wide_house_gets_its_legend_beneath_and_a_larger_scale() -> None:
    plain = plain_house()
    plain["rooms"]["R3"]["storey"] = "S1"
    plain["boxes"]["B07"]["position"] = {"x_mm": 18900, "y_mm": 2000, "height_mm": 1050}
    svg = plan_svg(of(plain), "S1")
    legend = next(t for t in texts(svg) if t.text == "Legend")
    assert legend.left < 20
    assert "Scale 1:75" in said(svg)


def test_plans_are_the_same_twice_and_escape_what_they_print() -> None:
    plain = plain_house()
    plain["rooms"]["R1"]["name"] = "<b>&\"'"
    assert plan_svg(of(plain), "S1") == plan_svg(of(plain), "S1")
    assert "<b>&\"'" in said(plan_svg(of(plain), "S1"))


@settings(max_examples=20)
@given(st.lists(st.tuples(st.integers(0, 4200), st.integers(0, 3100)), min_size=1, max_size=40))
def test_every_box_is_labelled_or_said_to_have_no_room(points: list[tuple[int, int]]) -> None:
    plain = plain_house()
    plain["devices"], plain["scenes"], plain["outside_uses"] = {}, {}, {}
    plain["boxes"] = {
        f"B{n}": {
            "room": "R1",
            "position": {"x_mm": x, "y_mm": y, "height_mm": 1000},
            "mounts": {"1": {}},
            "gangs": {"1": {"duty": "capped"}},
        }
        for n, (x, y) in enumerate(points)
    }
    svg = plan_svg(of(plain), "S1")
    words = said(svg)
    for n in range(len(points)):
        assert f"B{n} ×1" in words
    labels = [
        t
        for t in texts(svg)
        if t.text.startswith("B") and "×" in t.text and t.size == 10.5 and len(t.text) < 8
    ]
    assert not [1 for i, a in enumerate(labels) for b in labels[:i] if a.over(b)]


def test_findings_stand_on_the_plan_as_their_numbered_shapes(house: Schedule) -> None:
    bare, marked = plan_svg(house, "S1"), plan_svg(house, "S1", FINDINGS)
    filled = [len(p.split()) for p in re.findall(r'<polygon points="([^"]*)" fill="#9A3F16"', marked)]
    assert sorted(filled) == [3, 3, 4, 4]  # danger and fault, at the box and in the legend
    words = [t.text for t in texts(marked)]
    for number in ("1", "2", "3", "? 4", "? 6"):
        assert number in words
    assert "Numbers are those of the snag list." in said(marked)
    assert "B06 ×1 (note 5)" in said(marked)  # its position is not known
    assert 'fill="#9A3F16"' not in bare
    assert collisions(marked) == []
    assert off_sheet(marked) == []


def test_marks_that_find_no_room_are_said() -> None:
    plain = plain_house()
    plain["devices"], plain["scenes"], plain["outside_uses"] = {}, {}, {}
    plain["boxes"] = {
        f"B{n}": {
            "room": "R1",
            "position": {"x_mm": 60 * n, "y_mm": 40 * n, "height_mm": 1000},
            "mounts": {"1": {}},
            "gangs": {"1": {"duty": "capped"}},
        }
        for n in range(60)
    }
    many = [replace(FINDINGS[1], place=f"B{n % 60}", rule=f"rule {n}") for n in range(240)]
    svg = plan_svg(of(plain), "S1", many)
    words, drawn = said(svg), [t.text for t in texts(svg)]
    missing = [n for n in range(1, 241) if str(n) not in drawn]
    assert missing
    told = re.search(r"No room for the marks of (.*?)\.", words)
    assert told
    assert {int(n) for n in re.findall(r"(?<![B\d])\d+", told.group(1))} >= set(missing)
