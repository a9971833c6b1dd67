"""Files that a firm could write by mistake or malice: told by place, what stands, what was expected."""

import pytest

from secondfix.catalogue import ModelFault, read_model
from tests.catalogue.shipped import texts

GOOD = texts()["plimmet-osier-three@1"]
HEAD = 'maker = "plimmet"'

# What is wrong, the bytes, and every fault as (place, what stands, what was expected; each a beginning).
BROKEN: dict[str, tuple[str | bytes, list[tuple[str, str, str]]]] = {
    "a key twice": (
        GOOD.replace("gangs = 3", "gangs = 3\ngangs = 2"),
        [("line ", "a key that stands twice", "TOML (cannot overwrite a value)")],
    ),
    "a table twice": (GOOD + "\n[join]\nsteps = []\n", [("line ", "not TOML", "TOML (cannot declare")]),
    "wrong types": (
        GOOD.replace("gangs = 3", 'gangs = "three"').replace("edition = 1", "edition = 1.5"),
        [("edition", "1.5", "a whole number"), ("gangs", "'three'", "a whole number")],
    ),
    "unknown keys": (
        GOOD.replace(HEAD, f'colour = "red"\nprice = 3\n{HEAD}'),
        [("colour", "'red'", "a key that the format knows"), ("price", "3", "a key that the format knows")],
    ),
    "negative numbers": (
        GOOD.replace("mounts = 1", "mounts = -1").replace("standby_mw = ", "standby_mw = -"),
        [
            ("mounts", "-1", "greater than or equal to 0"),
            ("standby_mw", "-", "greater than or equal to 0"),
        ],
    ),
    "a number that is none, and a date": (
        GOOD.replace("gangs = 3", "gangs = nan").replace("mounts = 1", "mounts = 2026-03-01"),
        [("mounts", "datetime.date(2026, 3, 1)", "a whole number"), ("gangs", "nan", "a whole number")],
    ),
    "a number of thousands of digits": (
        GOOD.replace("gangs = 3", "gangs = " + "9" * 5000),
        [("", "a number or date that cannot be read", "a whole number")],
    ),
    "too large": (GOOD + "#" * 300_000, [("", "more than 262,144 bytes", "at most 262,144 bytes")]),
    "lists in lists": ("a = " + "[" * 5000 + "]" * 5000, [("", "nested too deep", "at most 8 levels")]),
    "tables in tables": (".".join("a" * 3000) + " = 1", [("a.a.a.", "nested too deep", "at most 8 levels")]),
    "one level too deep": ("a.b.c.d.e.f.g.h.i = 1", [("a.b.", "nested too deep", "at most 8 levels")]),
    "another encoding": (
        GOOD.replace("Plimmet O", "Plïmmet O").encode("latin-1"),
        [("byte ", "not UTF-8", "text in UTF-8")],
    ),
    "two bytes a letter": (GOOD.encode("utf-16"), [("byte 0", "not UTF-8", "text in UTF-8")]),
    "nothing of the source": (
        "\n".join(line for line in GOOD.splitlines() if not line.startswith("sheet")),
        [("sheet", "nothing", "this key, which is required")],
    ),
    "more gangs than any device has": (
        GOOD.replace("gangs = 3", "gangs = 9"),
        [("gangs", "9", "less than or equal to 8")],
    ),
    "several contradictions": (
        GOOD.replace("mounts = 1", "mounts = 0\nyokes = 1").replace(
            'output = "relay"', 'output = "relay"\nedge = "leading"'
        ),
        [
            ("", "what the keys say together", "a switch takes at least one mount"),
            ("", "what the keys say together", "only a dimmer cuts an edge"),
            ("", "what the keys say together", "a model has at most one yoke for each mount"),
        ],
    ),
}


def faults_of(text: str | bytes) -> list[ModelFault]:
    found = read_model(text, where="own.toml")
    assert isinstance(found, list)
    return found


@pytest.mark.parametrize("name", BROKEN)
def test_a_broken_file_is_told_whole(name: str) -> None:
    text, expected = BROKEN[name]
    found = faults_of(text)
    assert len(found) == len(expected)
    for fault, (path, stands, wanted) in zip(sorted_by(found), sorted_by_path(expected), strict=True):
        assert fault.path.startswith(path)
        assert fault.stands.startswith(stands)
        assert fault.expected.startswith(wanted)
        assert len(fault.stands) <= 80


def sorted_by(found: list[ModelFault]) -> list[ModelFault]:
    return sorted(found, key=lambda f: (f.path, f.expected))


def sorted_by_path(expected: list[tuple[str, str, str]]) -> list[tuple[str, str, str]]:
    return sorted(expected, key=lambda e: (e[0], e[2]))


def test_what_stands_cannot_steer_a_screen() -> None:
    (fault,) = faults_of(GOOD.replace("gangs = 3", 'gangs = "\\u001b[2J\\u202e3"'))
    assert fault.stands == r"'\x1b[2J\u202e3'"


def test_a_byte_order_mark_and_line_ends_of_another_system_are_no_fault() -> None:
    assert not isinstance(read_model(b"\xef\xbb\xbf" + GOOD.encode(), where="own.toml"), list)
    assert not isinstance(read_model(GOOD.replace("\n", "\r\n"), where="own.toml"), list)


def test_a_list_whose_only_step_has_a_fault_is_not_called_empty_too() -> None:
    kept = GOOD[: GOOD.index("[reset]")] if "[reset]" in GOOD else GOOD
    one = kept[: kept.index("[join]")] + '[join]\nsteps = [{ act = "presses" }]\n'
    (fault,) = faults_of(one)
    assert fault.path == "join.steps.0.act"
    (empty,) = faults_of(one.replace('{ act = "presses" }', ""))
    assert (empty.path, empty.expected) == ("join.steps", "at least 1 of them")
