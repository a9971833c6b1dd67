"""Facts that a visit corrects: differing, unknown, not fitting, breaking the house."""

import pytest

from secondfix.house import Fact, as_canonical_json, begin
from secondfix.journal import (
    as_built,
    journal_of,
)
from secondfix.journal.differences import differences
from secondfix.terms import Known, WiringRules
from tests.example_house import document, house
from tests.journal.building import BOX, built, correction, says, words
from tests.journal.writing import HOUSE, entry_id, found, write


def test_a_fact_found_differs_in_words_with_unit_and_how_it_is_known() -> None:
    b = built(correction(1, "boxes.B1.depth_mm", found(35), "box:B1"))
    assert says(b) == ["Wall box B1, depth: the revision says 47 mm (seen open); found 35 mm (measured)."]
    assert b.differences[0].entries == (entry_id(1),)
    fact = b.house.boxes["B1"].depth_mm
    assert fact is not None
    assert fact.value == 35


def test_in_an_nec_house_lengths_differ_in_inches_too_and_volumes_in_cubic_inches() -> None:
    house = HOUSE.model_copy(update={"wiring_rules": WiringRules.NEC})
    depth = correction(1, "boxes.B1.depth_mm", found(35), "box:B1")
    # 47 mm are 1.850 in, 35 mm 1.378 in.
    assert says(as_built(house, journal_of((depth,)), models={})) == [
        'Wall box B1, depth: the revision says 47 mm (1 7/8") (seen open); found 35 mm (1 3/8") (measured).'
    ]
    box = house.boxes["B1"].model_copy(update={"volume_mm3": Fact(value=294_967, known=Known.MEASURED)})
    measured = house.model_copy(update={"boxes": {**house.boxes, "B1": box}})
    assert [d.found for d in differences(house, measured, {})] == ["18.0 in³ (measured)"]
    plain = measured.model_copy(update={"wiring_rules": WiringRules.IEC})
    assert [d.found for d in differences(HOUSE, plain, {})] == ["294967 mm³ (measured)"]


def test_a_fact_that_turns_out_unknown_goes() -> None:
    b = built(correction(1, "boxes.B1.depth_mm", None, "box:B1"))
    assert b.house.boxes["B1"].depth_mm is None
    assert says(b)[0].endswith("found nothing.")


@pytest.mark.parametrize(
    ("path", "value", "subject"),
    [
        ("boxes.B1.depth_mm", 35, "box:B1"),
        ("boxes.B1.depth_mm", found(100_000), "box:B1"),
        ("boxes.B1.room", None, "box:B1"),
        ("boxes.B9", "a box", "box:B9"),
        ("boxes.B9", {"room": "R2"}, "box:B9"),
        ("boxes.B1.gangs.1.duty", "sings", "gang:B1.1"),
    ],
)
def test_a_fact_that_does_not_fit_is_told_and_changes_nothing(path: str, value: object, subject: str) -> None:
    b = built(correction(1, path, value, subject))
    assert b.house is HOUSE
    assert len(b.told) >= 1
    assert all(t.serious and t.entry == entry_id(1) for t in b.told)


@pytest.mark.parametrize(
    ("path", "value", "subject"),
    [
        ("boxes.B1.room", "R77", "box:B1"),
        ("boxes.L1", {"room": "R2", "mounts": {"1": {}}, "gangs": {}}, "box:L1"),
        ("boxes.B1.gangs.1.duty", {"duty": "feeds", "load": "L2"}, "gang:B1.1"),
        ("boxes.B1.gangs.1.duty", {"duty": "feeds"}, "gang:B1.1"),
        ("boxes.B1.mounts.1.neutral", found("C9"), "box:B1"),
    ],
)
def test_a_fact_that_would_break_the_house_is_set_aside_and_others_stay(
    path: str, value: object, subject: str
) -> None:
    b = built(correction(1, path, value, subject), write(2, "named", "load:L2", name="Bench lamp"))
    assert says(b) == ["Load L2 (Desk), name: the revision says Desk; found Bench lamp."]
    assert [t.entry for t in b.told] == [entry_id(1)]
    assert "cannot be" in words(b)[0]


def test_a_fact_that_breaks_something_else_is_found_alone() -> None:
    """The box stands too high for the storey's height: the fault lies at the box, the entry at the storey."""
    plain = document()
    plain["boxes"]["B1"]["position"]["height_mm"] = 2300
    low = correction(1, "storeys.S0.height_mm", 2100, "storey:S0")
    b = as_built(house(plain), journal_of([low, write(2, "named", "load:L2", name="Bench lamp")]), models={})
    assert [t.entry for t in b.told] == [entry_id(1)]
    assert [d.place for d in b.differences] == ["L2"]


def test_where_only_several_together_break_it_all_are_set_aside() -> None:
    plain = document()
    plain["boxes"]["B1"]["position"]["height_mm"] = 2300
    plain["storeys"]["S1"] = {"name": "Loft", "level_mm": 2800, "height_mm": 2600}
    together = [
        correction(1, "rooms.R1.storey", "S1", "room:R1"),
        correction(2, "storeys.S1.height_mm", 1900, "storey:S1"),
        write(3, "named", "load:L2", name="Bench lamp"),
    ]
    b = as_built(house(plain), journal_of(together), models={})
    assert [t.entry for t in b.told] == [entry_id(n) for n in (1, 2, 3)]
    assert b.differences == ()


def test_a_box_the_book_lacks_comes_in_with_what_was_found_of_it() -> None:
    b = built(
        correction(2, "boxes.B9.depth_mm", found(61), "box:B9"),
        correction(1, "boxes.B9", BOX, "box:B9"),
        correction(3, "boxes.B1.gangs.3", {"note": "behind the plate"}, "gang:B1.3"),
        write(4, "function_tested", "gang:B9.1", answered={}),
    )
    assert b.told == ()
    whole = "Wall box B9 is not in the revision; found: room R2, mounts 1, gangs 1, depth 61 mm (measured)."
    assert says(b)[-1] == whole
    assert "B1.3" in {d.place for d in b.differences}


def test_nothing_is_added_that_nobody_found() -> None:
    small = begin(house_id=HOUSE.id, name="Small")
    b = as_built(small, journal_of([write(1, "named", "room:R1", name="Porch")]), models={})
    assert as_canonical_json(b.house) == as_canonical_json(small).replace("Hall", "Porch")


def test_a_thing_that_the_book_has_is_not_found_whole_again() -> None:
    b = built(correction(1, "boxes.B1", BOX, "box:B1"))
    assert b.house is HOUSE
    assert "corrected by its facts" in words(b)[0]


def test_a_wrong_fact_does_not_take_along_what_else_was_said_of_the_gang() -> None:
    b = built(
        write(1, "survey_corrected", "gang:B1.1", path="boxes.B1.gangs.1.line", found=found("C77")),
        write(2, "function_tested", "gang:B1.1", answered={"L2": "changed"}),
        write(3, "function_tested", "gang:B1.2", answered={"L1": "changed"}),
    )
    assert [t.entry for t in b.told if t.serious] == [entry_id(1)]
    assert b.house.boxes["B1"].gangs["1"].load == "L2"
