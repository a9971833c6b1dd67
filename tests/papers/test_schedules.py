"""Switch schedule, function test form, register, cover, and the page for a failed switch."""

from typing import Any

import pytest

from secondfix import electrical
from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding
from secondfix.house import Schedule, schedule
from secondfix.joining import function_test_rows
from secondfix.papers import Setting
from secondfix.papers.pack.drawing_sheets import elevation_sheets
from secondfix.papers.pack.face import cover_sheet, register_sheet
from secondfix.papers.pack.forms import failing_sheet, function_test_sheet
from secondfix.papers.pack.schedules import switch_schedule_sheet
from secondfix.papers.pack.snag_list import snag_sheet
from tests.papers.example import FINDINGS, house_of, plain_house
from tests.papers.test_snags import alike

SEEN = "seen_open"


def of(plain: dict[str, Any]) -> Schedule:
    house = house_of(plain)
    return schedule(house, house.models)


def rows_of(schedule: Schedule) -> dict[str, list[Any]]:
    gangs, *_ = switch_schedule_sheet(schedule, FINDINGS, default_assumptions(), "S4/01").blocks
    return {row[0]["words"]: row for row in gangs["rows"]}


def wired(line: str, mount: str | None, load: str | None) -> list[Any]:
    """The row of B01.1 with these circuits."""
    plain = plain_house()
    box = plain["boxes"]["B01"]
    box["gangs"]["1"]["line"] = {"value": line, "known": SEEN}
    if mount:
        box["mounts"]["1"]["neutral"] = {"value": mount, "known": SEEN}
    if load:
        plain["loads"]["L01"]["neutral"] = {"value": load, "known": SEEN}
    return rows_of(of(plain))["B01.1"]


def shape(cell: Any) -> str:
    return str(cell["lines"][0]["shape"]) if isinstance(cell, dict) and "lines" in cell else ""


@pytest.mark.parametrize(
    ("mount", "load", "shapes"),
    [
        ("C1", "C1", ("", "")),
        ("C1", "C4", ("", "danger")),  # the borrowed neutral: the mount's is right, the load's is not
        ("C4", "C1", ("danger", "")),
        ("absent", "C1", ("", "")),
        ("earth", "C1", ("danger", "")),
        (None, None, ("", "")),
    ],
)
def test_neutral_of_mount_and_of_load_stand_apart_and_another_circuit_is_a_danger(
    mount: str | None, load: str | None, shapes: tuple[str, str]
) -> None:
    row = wired("C1", mount, load)
    assert (shape(row[-2]), shape(row[-1])) == shapes
    for cell, circuit in ((row[-2], mount), (row[-1], load)):
        assert (circuit or "not known") in str(cell)


def test_a_line_that_is_not_known_condemns_no_neutral() -> None:
    plain = plain_house()
    del plain["boxes"]["B01"]["gangs"]["1"]["line"]
    plain["loads"]["L01"]["neutral"] = {"value": "C4", "known": SEEN}
    assert rows_of(of(plain))["B01.1"][-1] == "C4"


def test_every_gang_output_and_button_has_its_row_in_the_worksheets_own_words(house: Schedule) -> None:
    _, block = function_test_sheet(house, "S8/01").blocks
    told = {row[0]["words"]: (row[2], row[3]) for row in block["rows"]}
    standing = {
        c.row.id if c.row else f"{c.device_id}.{c.number}": c for cs in house.channels_of.values() for c in cs
    }
    assert {*house.rows, *standing} <= told.keys()
    assert {"D05.1", "D06.1", "D06.2"} <= told.keys()  # a module's output and a battery device's buttons
    for device_id, channels in house.channels_of.items():
        rows = function_test_rows(house, device_id)
        for channel, row in zip(channels, rows, strict=False):
            name = channel.row.id if channel.row else f"{device_id}.{channel.number}"
            assert told[name] == (row.press, row.answer)
        if len(rows) > len(channels):
            assert (rows[-1].press, rows[-1].answer) == told[f"{device_id} {rows[-1].label}"]


def test_nothing_stands_after_the_rows_of_the_function_test(house: Schedule) -> None:
    kinds = [b["kind"] for b in function_test_sheet(house, "S8/01").blocks]
    assert kinds == ["write_on", "table"]  # no signature alone on a last page


def test_a_scene_is_called_one_where_its_id_could_be_a_sheets_number(house: Schedule) -> None:
    _, block = function_test_sheet(house, "S8/01").blocks
    assert "scene X1" in [row[0]["words"] for row in block["rows"]]


def test_a_room_without_a_wall_box_stands_in_the_register() -> None:
    plain = plain_house()
    plain["rooms"]["R4"] = {"name": "Larder", "storey": "S1"}
    rows = of(plain)
    sheets = elevation_sheets(rows, (), default_assumptions(), wide=900, high=600)
    (block,) = register_sheet(rows.house, [*sheets]).blocks
    last = block["rows"][len(sheets) + 1]
    assert [cell["words"] for cell in last[:2]] == ["none", "Larder, elevations: no wall box"]
    assert [s.title for s in sheets if "Larder" in s.title] == []


def cover_words(house: Schedule, setting: Setting, findings: tuple[Finding, ...]) -> list[str]:
    (block,) = cover_sheet(house.house, findings, setting, site="").blocks
    return [w if isinstance(w, str) else w["words"] for w in block["open"] if w]


def test_the_cover_says_which_dangers_are_open_and_what_cannot_be_told(
    house: Schedule, setting: Setting
) -> None:
    danger, fault, untold = cover_words(house, setting, FINDINGS)
    assert danger == "1 danger open at this issue: B01.4 Dining room."
    assert fault.startswith("1 fault open at this issue: B01.2")
    assert untold.startswith("4 answers cannot be told: ")


def test_the_cover_says_so_where_nothing_is_open_and_where_nothing_was_asked(
    house: Schedule, setting: Setting
) -> None:
    assert cover_words(house, setting, FINDINGS[-1:]) == [
        "No open danger is known at this issue.",
        "Every question that was asked could be answered.",
    ]
    assert "Nothing was asked" in cover_words(house, setting, ())[0]


def test_many_like_answers_are_one_row_of_the_snag_list_with_their_places(house: Schedule) -> None:
    (block,) = snag_sheet(house, alike(14), "S1/01").blocks  # type: ignore[arg-type] # any list of findings will do here
    (row,) = block["rows"]
    assert row[1] == ", ".join(f"B{n:02d}" for n in range(1, 15))
    assert row[2].startswith("14 like this, of which the first: ")


def test_when_a_switch_fails_isolation_comes_before_hands_and_the_firm_can_be_written_down(
    house: Schedule,
) -> None:
    blocks = failing_sheet(house, "S8/02").blocks
    (fields,) = [b for b in blocks if b["kind"] == "write_on"]
    assert fields["labels"] == ["The firm", "Its telephone", "Where the board is"]
    (both,) = [b for b in blocks if b["kind"] == "beside"]
    at_once, replacing = (part[1]["items"] for part in both["parts"])
    isolate = next(n for n, s in enumerate(replacing) if s.startswith("Isolate, lock off, prove dead"))
    hands = [n for n, s in enumerate(replacing) if "Take the old switch out" in s or "off its network" in s]
    assert all(isolate < n for n in hands)
    assert any("Do not take the plate off" in s for s in at_once)
    assert not [s for s in at_once if "check again" in s or "journal" in s]


def boxes_of(schedule: Schedule, findings: list[Finding]) -> dict[str, list[Any]]:
    blocks = switch_schedule_sheet(schedule, findings, default_assumptions(), "S4/01").blocks
    return {row[0]["words"]: row for row in blocks[-1]["rows"]}


def test_a_box_has_its_depth_needed_and_available_as_the_rule_answered() -> None:
    house = of(plain_house())
    told = electrical.check(house, default_assumptions())
    (depth,) = (f for f in told if (f.rule, f.place) == ("depth", "B01"))
    assert boxes_of(house, told)["B01"][2:4] == [depth.limit, depth.value]
    assert "not asked" in boxes_of(house, [])["B01"][2]["words"]


def test_a_box_of_an_nec_house_has_its_fill_and_conductors_by_awg() -> None:
    plain = plain_house() | {"wiring_rules": "nec", "mains_voltage_v": 120}
    counts = {"conductors": {"14": 5}, "loops": {}, "grounds": {"14": 2}, "clamps": True, "fittings": 0}
    plain["boxes"]["B01"] |= {key: {"value": value, "known": SEEN} for key, value in counts.items()}
    plain["boxes"]["B01"]["volume_mm3"] = {"value": 294_967, "known": SEEN}
    plain["boxes"]["B01"]["mounts"]["1"]["largest_awg"] = {"value": "14", "known": SEEN}
    house = of(plain)
    told = electrical.check(house, default_assumptions())
    (fill,) = (f for f in told if (f.rule, f.place) == ("box_fill", "B01"))
    row = boxes_of(house, told)["B01"]
    assert row[2] == "5 × 14; grounds 2 × 14"
    assert row[3].startswith("14")
    assert row[4:6] == [fill.limit, fill.value]
    assert "in³" in row[4]


def test_loads_of_nec_houses_have_amperes_beside_watts() -> None:
    plain = plain_house() | {"wiring_rules": "nec", "mains_voltage_v": 120}
    plain["loads"]["L01"] |= {
        "kind": {"value": "resistive", "known": SEEN},
        "power_mw": {"value": 60_000, "known": SEEN},
        "count": {"value": 2, "known": SEEN},
        "power_factor_permille": {"value": 1000, "known": SEEN},
    }
    power, current = rows_of(of(plain))["B01.1"][6]["lines"]
    assert (power, current["words"]) == ("2 × 60 W", "1 A")
    plain["wiring_rules"] = "iec"
    assert rows_of(of(plain))["B01.1"][6] == "2 × 60 W"
