"""What an edit would change: crossings of scenes, names of entries; and names as they were given on site."""

import json
from pathlib import Path

import pytest

from secondfix.actions.air import air_of
from secondfix.actions.names import names, renamed, standing
from secondfix.actions.reach import reach
from secondfix.actions.scenes import differing, scenes
from secondfix.assumptions import default_assumptions
from secondfix.house import Change, House, edited, read_house
from secondfix.journal import read_journal

ASSUMED = default_assumptions()


@pytest.fixture(scope="module")
def house(tree: Path) -> House:
    read = read_house((tree / "demo/house.json").read_bytes(), where="demo", models={})
    assert isinstance(read, House)
    return read


def changed(house: House, path: str, value: object) -> House:
    made = edited(house, [Change(path, value)], models={})
    assert isinstance(made, House), made
    return made


def test_nothing_differs_where_nothing_changed(house: House) -> None:
    stands = scenes(house, assumptions=ASSUMED).resolutions
    assert differing(stands, stands) == ()


def test_each_crossing_that_differs_is_told_with_both_sides(house: House) -> None:
    made = changed(house, "scenes.S3.rules[0].level_pct", 80)
    found = differing(
        scenes(house, assumptions=ASSUMED).resolutions, scenes(made, assumptions=ASSUMED).resolutions
    )
    told = [(d.scene_id, d.load_id, d.before and d.before.words, d.after and d.after.words) for d in found]
    assert told == [("S3", "L08", "on 45", "on 80")]


def test_of_a_scene_taken_out_the_loads_that_it_named_are_told(house: House) -> None:
    stands = scenes(house, assumptions=ASSUMED).resolutions
    found = differing(stands, scenes(changed(house, "scenes.S7", None), assumptions=ASSUMED).resolutions)
    assert [(d.scene_name, d.load_id, d.after) for d in found] == [
        ("Reading", "L39", None),
        ("Reading", "L41", None),
    ]


def test_the_air_of_a_house_is_that_of_its_edited_scenes(house: House) -> None:
    made = changed(changed(house, "scenes.S3.rules[0].level_pct", None), "scenes.S3.rules[0].to", "off")
    air = air_of(house, reach(house, assumptions=ASSUMED))
    assert scenes(made, assumptions=ASSUMED, air=air) == scenes(made, assumptions=ASSUMED)


def test_another_policy_renames_what_it_speaks_of(house: House) -> None:
    made = changed(house, "naming.whole_entry", ["box", "room"])
    found = renamed(names(house, assumptions=ASSUMED).names.entries(), made)
    assert [(r.before, r.entry.name) for r in found] == [
        ("Parlour B08", "B08 Parlour"),
        ("Study B10", "B10 Study"),
        ("Library B19", "B19 Library"),
    ]


def test_a_name_given_on_site_stands_unless_two_gave_it_apart(house: House) -> None:
    def line(n: int, subject: str, name: str) -> str:
        entry = {
            "format": 1,
            "id": f"01938f2a-61d4-7b0e-a5c7-3e9d40b8120{n}",
            "house": house.id,
            "revision": "A",
            "kind": "named",
            "subject": subject,
            "writer": f"W{n}",
            "at": f"2026-11-2{n}T09:15+00:00",
            "name": name,
        }
        return json.dumps(entry) + "\n"

    lines = (
        line(1, "entry:D08.3", "Fish pump")
        + line(2, "entry:D09.1", "Cove")
        + line(3, "entry:D09.1", "Edge")
        + line(4, "load:L08", "Long table")
    )
    journal, faults = read_journal(lines.encode(), where="journal")
    assert not faults
    assert standing(house, journal) == {("D08", 3): "Fish pump"}
