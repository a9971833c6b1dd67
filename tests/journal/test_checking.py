"""Findings of the journal: each rule fails where it should, passes where it may, and says what to do."""

import pytest

from secondfix.findings import Finding, Outcome, Severity, exit_code
from secondfix.journal import CAUTION, RULES, Entry, as_built, check, journal_of
from secondfix.journal.kinds import read_entry
from tests.journal.writing import HOUSE, plain, write

EXPECTED = {"SC1": {"L1": "off"}}


def findings(*entries: Entry) -> list[Finding]:
    return check(as_built(HOUSE, journal_of(entries), models={}), expected=EXPECTED)


def failing(rule: str, *entries: Entry) -> list[Finding]:
    return [f for f in findings(*entries) if f.rule == rule and f.outcome is not Outcome.PASSES]


def pressed(answers: dict[str, list[str]]) -> list[Entry]:
    return [
        write(n, "function_tested", f"gang:{gang}", answered=dict.fromkeys(loads, "on"))
        for n, (gang, loads) in enumerate(answers.items(), start=1)
    ]


ALL_RIGHT = pressed({"B1.1": ["L1"], "B1.2": ["L2"], "B2.1": ["L2"]})
SCENE = write(9, "function_tested", "scene:SC1", answered={"L1": "off"})


def unknown() -> Entry:
    entry = read_entry(plain(20, "painted", "box:B1"), line='{"kind":"painted"}')
    assert isinstance(entry, Entry)
    return entry


def test_a_house_tested_whole_has_no_fault_found() -> None:
    found = findings(*ALL_RIGHT, SCENE)
    assert {f.outcome for f in found} == {Outcome.PASSES}
    assert {f.rule for f in found} == {r.id for r in RULES} - {"test_missing"}


def test_what_was_not_tested_is_advice() -> None:
    missing = failing("test_missing")
    assert [f.place for f in missing] == ["B1.1", "B1.2", "B2.1", "SC1"]
    assert {f.severity for f in missing} == {Severity.ADVICE}
    assert exit_code(findings()) == 0


def test_a_conflict_names_its_writers() -> None:
    (found,) = failing("journal_conflict", *(write(n, "named", "load:L1", name=f"n{n}") for n in (1, 2)))
    assert found.place == "L1"
    assert "Ilka at 2031-05-06T09:40+02:00; Ilka" in found.says
    assert found.severity is Severity.FAULT


def test_crossed_gangs_are_told_once_with_both_ways_to_mend_and_the_caution() -> None:
    crossed = pressed({"B1.1": ["L2"], "B1.2": ["L1"], "B2.1": ["L2"]})
    (found,) = [f for f in failing("crossed_gangs", *crossed) if f.place == "B1.1" and "crossed:" in f.says]
    assert found.says == "Gangs B1.1, B1.2 are crossed: B1.1 works L2 Desk; B1.2 works L1 Ceiling."
    assert "Rename: B1.1 after L2 Desk; B1.2 after L1 Ceiling." in found.remedy
    assert "exchange the switched conductors of B1.1 and B1.2" in found.remedy
    assert CAUTION in found.remedy


def test_crossed_entries_are_renamed_and_no_box_is_opened() -> None:
    crossed = [
        write(n, "function_tested", f"entry:D01.{n}", answered={load: "on"})
        for n, load in ((1, "L2"), (2, "L1"))
    ]
    (found,) = failing("crossed_gangs", *crossed)
    assert found.remedy == "Rename: D01.1 after L2 Desk; D01.2 after L1 Ceiling."


@pytest.mark.parametrize(
    ("answers", "words"),
    [
        ({"B1.1": ["L2"]}, "Gang B1.1 works L2 Desk, not L1 Ceiling."),
        ({"B1.1": ["L1", "L2"]}, "Gang B1.1 works L1 Ceiling, L2 Desk; it should work L1 Ceiling alone."),
        ({"B1.1": ["L2"], "B1.2": ["L2"]}, "Gangs B1.1, B1.2 all work L2 Desk."),
        ({"B1.1": ["L55"]}, "Gang B1.1 works L55, not L1 Ceiling."),
    ],
)
def test_a_gang_that_works_what_it_should_not_is_told(answers: dict[str, list[str]], words: str) -> None:
    found = failing("crossed_gangs", *pressed(answers))
    assert words in [f.says for f in found]
    assert all(CAUTION in f.remedy for f in found)


def test_what_stands_in_no_book_is_told_in_its_words() -> None:
    test = write(1, "function_tested", "gang:B1.1", answered={}, also_answered="the neighbour's porch")
    (found,) = failing("crossed_gangs", test)
    assert found.says == "Gang B1.1 works the neighbour's porch, not L1 Ceiling."
    assert CAUTION in found.remedy


def test_a_dead_gang_is_told() -> None:
    (found,) = failing("dead_gang", *pressed({"B1.1": []}))
    assert found.says == "Gang B1.1 works nothing; it should work L1 Ceiling."
    assert found.severity is Severity.FAULT
    assert CAUTION in found.remedy


def test_a_kind_not_known_cannot_be_told() -> None:
    (found,) = failing("journal_kind", unknown())
    assert found.outcome is Outcome.CANNOT_TELL
    assert "painted" in found.says


def test_a_scene_that_did_otherwise_is_told() -> None:
    ran = write(1, "function_tested", "scene:SC1", answered={"L2": "off"}, also_answered="a bell")
    (found,) = failing("scene_tested", ran)
    assert found.says == (
        "Scene SC1 (Leaving) did not switch L1 Ceiling; switched L2 Desk besides; "
        "worked something in no book (a bell)."
    )


def test_a_scene_whose_tests_differ_is_told_as_a_conflict_alone() -> None:
    ran = [
        write(n, "function_tested", "scene:SC1", answered={"L1": way}) for n, way in ((1, "on"), (2, "off"))
    ]
    assert failing("scene_tested", *ran) == []
    assert [f.place for f in failing("journal_conflict", *ran)] == ["SC1"]


@pytest.mark.parametrize("severity", ["danger", "fault", "advice"])
def test_an_open_snag_is_as_bad_as_its_writer_says(severity: str) -> None:
    (found,) = failing("snag_open", write(1, "snag_raised", "box:B1", words="loose", severity=severity))
    assert found.severity == severity


def test_a_difference_is_advice() -> None:
    (found,) = failing("as_built_differs", write(1, "named", "load:L1", name="Pendant"))
    assert (found.severity, found.value, found.limit) == (Severity.ADVICE, "Pendant", "Ceiling")


@pytest.mark.parametrize(
    ("entry", "severity"),
    [
        (write(1, "named", "load:L1", name="x", sees=[7]), Severity.ADVICE),
        (write(1, "named", "room:R77", name="x"), Severity.FAULT),
    ],
)
def test_an_entry_that_does_not_count_in_full_is_told(entry: Entry, severity: Severity) -> None:
    (found,) = failing("journal_entry", entry)
    assert found.severity is severity
    assert entry.id in found.says


def test_an_adopted_crossing_is_one_no_longer() -> None:
    crossed = pressed({"B1.1": ["L2"], "B1.2": ["L1"], "B2.1": ["L1"]})
    adopted = as_built(HOUSE, journal_of(crossed), models={}).house
    again = check(as_built(adopted, journal_of(crossed), models={}), expected={})
    assert [f for f in again if f.outcome is not Outcome.PASSES] == []


def test_every_finding_names_a_source_and_a_remedy() -> None:
    for f in findings(*pressed({"B1.1": ["L2"], "B1.2": []}), unknown()):
        assert f.source
        assert f.outcome is Outcome.PASSES or f.remedy
