"""Texts of a spreadsheet's clipboard and the cells they fall into: the pure part of the schedule's script.

The quoting is that of RFC 4180, with tabs for commas.
"""

from collections.abc import Callable, Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.conftest import opened

Call = Callable[..., Any]
CORNER = {"top": 2, "left": 1, "bottom": 2, "right": 1}
SIZE = {"rows": 6, "columns": 5}


@pytest.fixture(scope="module")
def page(browser: Browser, empty: str) -> Iterator[Page]:
    """A page of the desk, from which its modules can be had."""
    with opened(browser) as context:
        fresh = context.new_page()
        fresh.goto(empty + "/first")
        yield fresh


@pytest.fixture(scope="module")
def call(page: Page) -> Call:
    """Call a function of table.js in the browser."""
    ask = "([name, args]) => import('/static/secondfix/sheet/table.js').then((door) => door[name](...args))"
    return lambda name, *args: page.evaluate(ask, [name, list(args)])


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        ("one", [["one"]]),
        ("a\tb\nc\td", [["a", "b"], ["c", "d"]]),
        ("a\tb\r\nc\td\r\n", [["a", "b"], ["c", "d"]]),  # a spreadsheet ends its last line too
        ("a\t\tc", [["a", "", "c"]]),
        ("\t\n\t\n", [["", ""], ["", ""]]),
        ("", [[""]]),
        ('"two\tparts"\tb', [["two\tparts", "b"]]),
        ('"two\nlines"\nb', [["two\nlines"], ["b"]]),
        ('"he said ""off"""', [['he said "off"']]),
        ('2" pipe\tb', [['2" pipe', "b"]]),  # a quote inside an open text is the text's own
        ('""\tb', [["", "b"]]),
        ("a\tb\tc\nd", [["a", "b", "c"], ["d"]]),
        ("a\n\nb", [["a"], [""], ["b"]]),
    ],
)
def test_a_clipboard_is_read_into_rows_of_cells(call: Call, text: str, rows: list[list[str]]) -> None:
    assert call("cellsOf", text) == rows


@pytest.mark.parametrize(
    "rows",
    [
        [["one"]],
        [["a", "b"], ["c", "d"]],
        [["a", ""], ["", "d"]],
        [["two\tparts", "two\nlines"], ['he said "off"', "ends\r\nso"]],
        [['"quoted"', "'"]],
        [["a", "b", "c"], ["d"]],
    ],
)
def test_cells_come_back_from_a_clipboard_as_they_went(call: Call, rows: list[list[str]]) -> None:
    assert call("cellsOf", call("textOf", rows)) == rows


def test_only_what_needs_quotes_is_quoted(call: Call) -> None:
    assert call("textOf", [["a b", 'say "x"'], ["1,5", "c\td"]]) == 'a b\t"say ""x"""\n1,5\t"c\td"'


def test_pasted_rows_fall_from_the_corner_on(call: Call) -> None:
    assert call("falls", [["a", "b"], ["c", "d"]], CORNER, SIZE) == [
        [2, 1, "a"], [2, 2, "b"], [3, 1, "c"], [3, 2, "d"],
    ]  # fmt: skip


def test_pasted_rows_stop_at_the_edge_of_the_sheet(call: Call) -> None:
    edge = {"top": 5, "left": 4, "bottom": 5, "right": 4}
    assert call("falls", [["a", "b"], ["c", "d"]], edge, SIZE) == [[5, 4, "a"]]


def test_one_cell_fills_a_whole_choice(call: Call) -> None:
    area = {"top": 0, "left": 0, "bottom": 1, "right": 1}
    assert call("falls", [["x"]], area, SIZE) == [[0, 0, "x"], [0, 1, "x"], [1, 0, "x"], [1, 1, "x"]]


def test_rows_repeat_where_the_choice_is_a_whole_number_of_them(call: Call) -> None:
    area = {"top": 0, "left": 2, "bottom": 3, "right": 2}
    assert call("falls", [["x"], ["y"]], area, SIZE) == [[0, 2, "x"], [1, 2, "y"], [2, 2, "x"], [3, 2, "y"]]


def test_rows_fall_once_where_the_choice_is_no_whole_number_of_them(call: Call) -> None:
    area = {"top": 0, "left": 0, "bottom": 2, "right": 0}
    assert call("falls", [["x"], ["y"]], area, SIZE) == [[0, 0, "x"], [1, 0, "y"]]


def test_a_ragged_row_leaves_the_cells_it_does_not_name(call: Call) -> None:
    assert call("falls", [["a", "b"], ["c"]], CORNER, SIZE) == [[2, 1, "a"], [2, 2, "b"], [3, 1, "c"]]


def test_the_first_row_of_a_choice_fills_it_down(page: Page) -> None:
    ask = """import("/static/secondfix/sheet/table.js").then((door) =>
        door.filledDown({ top: 1, left: 0, bottom: 3, right: 1 }, (row, column) => `${row}/${column}`))"""
    assert page.evaluate(ask) == [
        [2, 0, "1/0"], [3, 0, "1/0"], [2, 1, "1/1"], [3, 1, "1/1"],
    ]  # fmt: skip
