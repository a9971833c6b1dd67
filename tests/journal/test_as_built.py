"""The as-built house: the revision as the journal found it, in words; adopted; as JSON."""

from typing import Any

import pytest

from secondfix.house import as_canonical_json
from secondfix.journal import (
    Adoption,
    adopt,
    as_built,
    as_built_as_json,
    journal_of,
    merge,
)
from tests.example_house import models
from tests.journal.building import BOX, built, correction, says, words
from tests.journal.writing import FIT_D31, HOUSE, changed, entry_id, found, write

ADOPT: dict[str, Any] = {
    "entry_id": entry_id(500),
    "revision": "A",
    "to_revision": "B",
    "writer": "office",
    "at": "2031-06-01T08:00+02:00",
}


def test_an_empty_journal_gives_the_revision_itself() -> None:
    b = built()
    assert b.house is HOUSE
    assert (b.differences, b.remarks, b.told, b.fresh) == ((), (), (), ())


def test_what_speaks_of_things_not_in_the_house_is_told() -> None:
    b = built(
        write(1, "named", "room:R77", name="Loft"),
        write(2, "function_tested", "gang:B7.1", answered={}),
        write(3, "measured", "link:D01>P9", lqi=80),
        write(4, "joined", "device:D77", network="N1"),
        correction(5, "boxes.B7.depth_mm", found(40), "box:B7"),
        correction(6, "boxes.B1.mounts.2.neutral", found("absent"), "box:B1"),
    )
    assert b.house is HOUSE
    assert [t.entry for t in b.told] == [entry_id(n) for n in range(1, 7)]
    assert all("not in th" in w for w in words(b))


def test_remarks_tell_what_no_document_holds() -> None:
    b = built(
        write(1, "join_failed", "device:D01", network="N1", note="no answer at 3 m"),
        write(2, "skipped", "gang:B1.1", deed="test", reason="a child asleep"),
        write(3, "named", "entry:D01.2", name="Desk lamp"),
        write(4, "purpose_set", "entry:D01.2", purpose="night_light"),
    )
    assert [r.says for r in b.remarks] == [
        "Gang B1.1 was not tested: a child asleep.",
        "Device D01 did not join N1: no answer at 3 m.",
        "Entry D01.2 has the purpose night light in the controller.",
        "Entry D01.2 is called 'Desk lamp' in the controller.",
    ]
    assert b.house is HOUSE


def test_words_of_the_trade_are_shown_for_kinds_and_purposes() -> None:
    b = built(
        correction(1, "loads.L1.kind", found("tungsten"), "load:L1"),
        write(2, "purpose_set", "load:L2", purpose="night_light"),
        correction(3, "boxes.B2.gangs.1.duty", "capped", "gang:B2.1"),
    )
    assert [(d.designed, d.found) for d in b.differences] == [
        ("extends B1.2", "capped"),
        ("LED lamp with built-in driver (seen open)", "tungsten filament lamp (measured)"),
        ("lighting", "night light"),
    ]


def test_a_revision_that_cannot_be_read_is_our_own_fault() -> None:
    broken = changed(HOUSE, rooms={})
    with pytest.raises(ValueError, match="the revision itself"):
        as_built(broken, journal_of([]), models={})


def test_a_conflict_leaves_the_revision_and_stops_adoption() -> None:
    b = built(*(write(n, "named", "load:L1", name=f"n{n}") for n in (1, 2)))
    assert b.house is HOUSE
    refused = adopt(b, **ADOPT)
    assert isinstance(refused, tuple)
    assert "in conflict" in refused[0]


def test_adopting_makes_a_revision_that_the_same_journal_leaves_alone() -> None:
    journal = journal_of(
        [
            write(1, "fitted", "device:D31", **FIT_D31),
            write(2, "joined", "device:D31", network="N1", address="00124B0000C0FFEE"),
            correction(3, "boxes.B9.cables", found(2), "box:B9"),
            correction(6, "boxes.B9", BOX, "box:B9"),
            write(4, "function_tested", "gang:B1.1", answered={"L2": "changed"}),
            write(5, "named", "load:L1", name="Pendant"),
        ]
    )
    b = as_built(HOUSE, journal, models=models())
    adoption = adopt(b, **ADOPT)
    assert isinstance(adoption, Adoption)
    assert as_canonical_json(adoption.house) == as_canonical_json(b.house)
    assert adoption.entry.took_in == tuple(entry_id(n) for n in range(1, 7))
    whole = merge(journal, journal_of([adoption.entry]))
    again = as_built(adoption.house, whole, models={}, revisions=frozenset({"A"}))
    assert again.house is adoption.house
    assert (again.differences, again.told) == ((), ())
    assert again.fresh == (adoption.entry.id,)


def test_the_second_adoption_takes_in_only_what_is_new() -> None:
    first = journal_of([write(1, "named", "load:L1", name="Pendant")])
    adoption = adopt(as_built(HOUSE, first, models={}), **ADOPT)
    assert isinstance(adoption, Adoption)
    late = write(2, "named", "load:L2", name="Bench lamp")
    b = as_built(adoption.house, merge(first, journal_of([adoption.entry, late])), models={})
    assert b.fresh == (late.id, adoption.entry.id)
    assert len(says(b)) == 1
    second = adopt(b, **{**ADOPT, "entry_id": entry_id(501), "revision": "B", "to_revision": "C"})
    assert isinstance(second, Adoption)
    assert second.entry.took_in == (late.id, adoption.entry.id)
    assert second.entry.sees == (adoption.entry.id,)


def test_there_is_nothing_to_adopt_in_an_empty_journal() -> None:
    refused = adopt(built(), **{**ADOPT, "to_revision": "A"})
    assert isinstance(refused, tuple)
    assert len(refused) == 2


def test_the_answer_as_json_holds_every_part() -> None:
    b = built(
        write(1, "named", "load:L1", name="Pendant"),
        write(2, "snag_raised", "box:B1", words="plate chipped"),
        *(write(n, "named", "load:L2", name=f"n{n}") for n in (3, 4)),
    )
    plain = as_built_as_json(b)
    assert set(plain) == {
        "house", "differences", "remarks", "conflicts", "open_snags", "unknown", "told", "counted",
        "withdrawn", "not_adopted",
    }  # fmt: skip
    assert plain["conflicts"][0]["entries"][0]["name"] == "n3"
    assert plain["counted"] == 4
