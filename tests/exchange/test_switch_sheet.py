"""The switch schedule as a table: out and in without loss, slips told, formulas disarmed."""

import csv
import io
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.exchange import (
    Table,
    as_csv,
    as_xlsx,
    cell_changes,
    choices_of,
    columns_of,
    read_csv,
    read_xlsx,
    shown_table,
    table_changes,
    unguarded,
)
from secondfix.files import shipped_models
from secondfix.house import Change, House, Schedule, edited, plain_of, read_house, schedule
from secondfix.terms import Known

TREE = Path(__file__).parents[2]
HOUSES = ("demo/house.json", "demo/nec-house.json")


@cache
def rows_of(name: str) -> Schedule:
    models = shipped_models()
    house = read_house((TREE / name).read_bytes(), where=name, models=models)
    assert isinstance(house, House)
    return schedule(house, house.models)


@pytest.fixture(params=HOUSES)
def rows(request: pytest.FixtureRequest) -> Schedule:
    """The schedule of a demo house, one of each world."""
    return rows_of(request.param)


def from_csv(data: bytes) -> Table:
    table = read_csv(data, where="sheet.csv")
    assert isinstance(table, Table)
    return unguarded(table)


def after(rows: Schedule, *changes: Change) -> Schedule:
    house = edited(rows.house, changes, models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    return schedule(house, house.models)


def test_what_was_written_as_csv_asks_for_nothing(rows: Schedule) -> None:
    read = table_changes(rows, from_csv(as_csv(*shown_table(rows))), known=Known.TOLD)
    assert (read.changes, read.faults) == ((), ())


def test_what_was_written_as_xlsx_asks_for_nothing(rows: Schedule) -> None:
    table = read_xlsx(as_xlsx(*shown_table(rows), title="Switch schedule"), where="sheet.xlsx")
    assert isinstance(table, Table)
    assert table.columns == tuple(shown_table(rows)[0])
    read = table_changes(rows, table, known=Known.TOLD)
    assert (read.changes, read.faults) == ((), ())


_KEPT = {"room", "mount", "duty", "load", "extends"}  # a gang of such a duty must name them


def emptied(rows: Schedule) -> Schedule:
    """The same house with nothing in any cell that may be empty."""
    changes = []
    for row in rows.rows.values():
        for column in columns_of(rows.house):
            path = column.path(row, row.load_id)
            if path and column.value(row) is not None and column.key not in _KEPT:
                changes.append(Change(path, None))
    return after(rows, *changes)


def test_a_sheet_fills_an_emptied_house_again_cell_by_cell(rows: Schedule) -> None:
    headings, lines = shown_table(rows)
    bare = emptied(rows)
    assert shown_table(bare)[1] != lines
    read = table_changes(bare, from_csv(as_csv(headings, lines)), known=Known.TOLD)
    assert read.faults == ()
    assert shown_table(after(bare, *read.changes)) == (headings, lines)


def test_the_refilled_document_is_the_same_but_for_rounded_volumes(rows: Schedule) -> None:
    headings, lines = shown_table(rows)
    read = table_changes(emptied(rows), from_csv(as_csv(headings, lines)), known=Known.TOLD)
    again = plain_of(after(emptied(rows), *read.changes).house)
    before = plain_of(rows.house)
    for key, box in before["boxes"].items():
        volume = box.get("volume_mm3")
        if volume:  # thousandths of a cubic inch are 16 mm³
            assert abs(again["boxes"][key]["volume_mm3"]["value"] - volume["value"]) <= 9
            again["boxes"][key]["volume_mm3"] = volume
    assert without_order(again) == without_order(before)


def without_order(value: Any) -> Any:
    return {k: without_order(v) for k, v in sorted(value.items())} if isinstance(value, dict) else value


NASTY = st.text(st.characters(codec="utf-8", exclude_categories=["Cs", "Cc"]), min_size=1, max_size=30).map(
    str.strip
) | st.sampled_from(["=1+1", "+44", "-3", "@SUM(A1)", "'quoted", "''", "'=x", 'a"b,c;d'])


@given(NASTY.filter(bool))
def test_any_note_comes_back_word_for_word_and_none_begins_a_formula(note: str) -> None:
    rows = after(rows_of(HOUSES[0]), Change("boxes.B01.gangs.1.note", note))
    data = as_csv(*shown_table(rows))
    table = from_csv(data)
    at = table.columns.index("Note")
    assert table.rows[0].cells[at] == note
    assert table_changes(rows, table, known=Known.TOLD).changes == ()
    cells = [c for line in csv.reader(io.StringIO(data.decode("utf-8-sig"))) for c in line]
    assert not [c for c in cells if c[:1] in set("=+-@\t\r")]


@pytest.mark.parametrize(
    ("key", "text", "path", "value"),
    [
        ("depth", "47", "boxes.B01.depth_mm", {"value": 47, "known": "told"}),
        ("depth", "47 mm (measured)", "boxes.B01.depth_mm", {"value": 47, "known": "measured"}),
        ("duty", "scene only", "boxes.B01.gangs.1.duty", "scene_only"),
        ("duty", "CAP", "boxes.B01.gangs.1.duty", "capped"),
        ("line", "c2", None, "a circuit of this house"),
        ("line", "C2", "boxes.B01.gangs.1.line", {"value": "C2", "known": "told"}),
        (
            "neutral",
            "absent (seen open)",
            "boxes.B01.mounts.1.neutral",
            {"value": "absent", "known": "seen_open"},
        ),
        ("kind", "motor", "loads.L01.kind", {"value": "motor", "known": "told"}),
        ("power", "7,5", "loads.L01.power_mw", {"value": 7500, "known": "told"}),
        ("power", "7.5 W", "loads.L01.power_mw", {"value": 7500, "known": "told"}),
        ("count", "2.5", None, "a whole number"),
        ("depth", "deep", None, "a figure in mm"),
        ("depth", "", "boxes.B01.depth_mm", None),
        ("earthed", "perhaps", None, "yes or no"),
        ("earthed", "no", "boxes.B01.earthed", {"value": False, "known": "told"}),
        ("finish", "bare brick", "boxes.B01.finish", {"value": "bare_brick", "known": "told"}),
        ("nonsense", "x", None, "one of"),
        ("note", "n" * 501, None, "at most 500"),
    ],
)
def test_a_cell_is_read_or_its_slip_is_told(key: str, text: str, path: str | None, value: Any) -> None:
    read = cell_changes(rows_of(HOUSES[0]), "B01.1", key, text, known=Known.TOLD)
    if path is None:
        assert read.changes == ()
        assert value in str(read.faults[0])
    else:
        assert (read.changes[0], read.faults) == (Change(path, value), ())
        assert read.changes[1:] == ((Change("boxes.B01.gangs.1.load", None),) if key == "duty" else ())


def test_a_gang_that_is_not_there_is_told() -> None:
    assert "a gang of this house" in str(
        cell_changes(rows_of(HOUSES[0]), "B99.1", "note", "x", known=Known.TOLD).faults[0]
    )


def test_a_load_named_for_the_first_time_is_begun_in_the_room_of_its_box() -> None:
    rows = rows_of(HOUSES[0])
    read = cell_changes(rows, "B07.3", "load", "Boot rack", known=Known.TOLD)
    more = after(rows, *read.changes)
    row = more.rows["B07.3"]
    assert row.load is not None
    assert (row.load.name, row.load.room, row.gang.duty.value) == ("Boot rack", row.box.room, "feeds")
    assert row.load_id not in rows.house.loads


@pytest.mark.parametrize(
    ("place", "key", "text", "becomes"),
    [
        ("B02.4", "load", "Nook", ("feeds", True, None)),
        ("B03.1", "load", "Nook", ("feeds", True, None)),  # extended another gang until now
        ("B02.4", "extends", "B02.1", ("extends", False, "B02.1")),
        ("B01.2", "extends", "B02.1", ("extends", False, "B02.1")),  # fed the porch until now
        ("B01.2", "duty", "scene only", ("scene_only", False, None)),
        ("B01.2", "load", "", ("not_known", False, None)),
        ("B03.1", "extends", "", ("not_known", False, None)),
        ("B01.2", "duty", "", ("not_known", False, None)),
    ],
)
def test_duty_load_and_extended_gang_come_along_with_each_other(
    place: str, key: str, text: str, becomes: tuple[str, bool, str | None]
) -> None:
    rows = rows_of(HOUSES[0])
    read = cell_changes(rows, place, key, text, known=Known.TOLD)
    gang = after(rows, *read.changes).rows[place].gang
    assert (gang.duty.value, gang.load is not None, gang.extends) == becomes


def test_a_duty_without_what_it_needs_says_what_comes_first() -> None:
    rows = rows_of(HOUSES[0])
    feeds = cell_changes(rows, "B02.4", "duty", "feeds", known=Known.TOLD)
    assert "the load first" in str(feeds.faults[0])
    extends = cell_changes(rows, "B02.4", "duty", "extends", known=Known.TOLD)
    assert "that gang first" in str(extends.faults[0])


def test_a_duty_and_its_load_are_taken_in_one_paste() -> None:
    rows = rows_of(HOUSES[0])
    read = table_changes(rows, from_csv(b"Gang,Duty,Load\nB02.4,feeds,Nook\n"), known=Known.TOLD)
    row = after(rows, *read.changes).rows["B02.4"]
    assert row.load is not None
    assert (row.gang.duty.value, row.load.name) == ("feeds", "Nook")


def test_two_rows_that_name_one_new_load_name_one_load() -> None:
    rows = rows_of(HOUSES[0])
    data = b"Gang,Load\nB07.3,Boot rack\nB11.3,boot rack\n"
    read = table_changes(rows, from_csv(data), known=Known.TOLD)
    begun = {c.path.split(".")[1] for c in read.changes if c.path.startswith("loads.")}
    assert len(begun) == 1


def test_what_a_box_has_in_several_rows_is_changed_once_or_alike() -> None:
    rows = rows_of(HOUSES[0])
    alike = table_changes(rows, from_csv(b'Gang,"Box depth, mm"\nB01.1,61\nB01.2,61\n'), known=Known.TOLD)
    assert (len(alike.changes), alike.faults) == (1, ())
    apart = table_changes(rows, from_csv(b'Gang,"Box depth, mm"\nB01.1,61\nB01.2,62\n'), known=Known.TOLD)
    assert "another value than a row above" in str(apart.faults[0])


def test_a_table_tells_every_slip_at_once() -> None:
    rows = rows_of(HOUSES[0])
    data = b"Gang,Kind,Mood\nB01.1,wooden,glad\nB99.9,motor,sad\nB01.1,motor,even\n"
    read = table_changes(rows, from_csv(data), known=Known.TOLD)
    assert len(read.faults) == 3
    assert read.told[-1] == "Column 'Mood' is not read."


def test_a_table_without_gangs_is_no_switch_schedule() -> None:
    read = table_changes(rows_of(HOUSES[0]), from_csv(b"Room,Load\nHall,Light\n"), known=Known.TOLD)
    assert "a column 'Gang'" in str(read.faults[0])


def test_choices_can_all_be_read_again() -> None:
    rows = rows_of(HOUSES[0])
    for key, texts in choices_of(rows.house).items():
        for text in texts:
            place = "B03.1" if text == "extends" else "B01.1"  # the one extends, the other feeds
            assert cell_changes(rows, place, key, text, known=Known.TOLD).faults == ()
