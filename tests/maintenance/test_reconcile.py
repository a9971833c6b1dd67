"""A device list held against the book: every row has an answer, each difference the step that mends it."""

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import House, Schedule, read_house, schedule
from secondfix.journal import Journal, fold
from secondfix.maintenance import Difference, ListRow, Reconciled, Unlike, reconcile
from secondfix.naming import names
from secondfix.terms import Purpose
from tests import example_house as ex
from tests.journal.writing import journal, write

NOTHING = Journal()
ADDRESS = "5A11C04D00317E02"


def rows_of(*, address: str | None = ADDRESS) -> Schedule:
    plain = ex.document()
    plain["devices"] = {"D01": plain["devices"]["D01"]}
    plain["scenes"] = {}
    plain.pop("outside_uses", None)
    plain["devices"]["D01"].pop("address", None)
    if address:
        plain["devices"]["D01"]["address"] = address
    house = read_house(ex.as_bytes(plain), where="example", models=ex.models())
    assert isinstance(house, House), house
    return schedule(house, house.models)


def row(number: int, endpoint: int | None, name: str, **more: Any) -> ListRow:
    return ListRow(number=number, address=more.pop("address", ADDRESS), endpoint=endpoint, name=name, **more)


def whole() -> list[ListRow]:
    """The list of the example house as it should be."""
    shown = names(rows_of()).of_device["D01"]
    return [row(n, e.number, e.name) for n, e in enumerate(shown, 2)]


def held(listed: list[ListRow], known: Journal = NOTHING, **how: Any) -> Reconciled:
    rows = how.pop("rows", None) or rows_of()
    return reconcile(rows, fold(rows.house, known), names(rows), listed, **how)


def only(found: Reconciled) -> Difference:
    (one,) = found.differences
    return one


def test_a_list_that_says_what_the_book_says_has_no_difference() -> None:
    found = held(whole())
    assert found.differences == ()
    assert found.agreed == found.rows == 3


def test_a_device_that_is_not_in_the_list_is_missing_once() -> None:
    assert (only(held([])).unlike, only(held([])).device) == (Unlike.MISSING, "D01")


def test_one_entry_that_is_not_in_the_list_is_missing() -> None:
    one = only(held(whole()[:2]))
    assert (one.unlike, one.number) == (Unlike.MISSING, 2)


def test_a_row_of_an_unknown_address_is_extra() -> None:
    one = only(held([*whole(), row(9, 1, "Stranger", address="5A11C04D00317EFF")]))
    assert (one.unlike, one.row) == (Unlike.EXTRA, 9)


def test_a_renamed_entry_is_told_and_is_no_fault() -> None:
    listed = whole()
    listed[1] = row(3, 1, "Thursday")
    one = only(held(listed))
    assert one.unlike is Unlike.RENAMED
    assert one.entry is not None
    assert one.entry.own == {"name": "Thursday"}


def test_the_name_that_the_journal_gave_is_the_name_of_the_book() -> None:
    listed = whole()
    listed[1] = row(3, 1, "Thursday")
    assert held(listed, journal(write(1, "named", "entry:D01.1", name="Thursday"))).differences == ()


def test_a_purpose_is_missing_wrong_or_not_told() -> None:
    listed = [
        whole()[0],
        row(3, 1, whole()[1].name, has_purpose=True),
        row(4, 2, whole()[2].name, has_purpose=True, purpose=Purpose.COVERING),
    ]
    assert [d.unlike for d in held(listed).differences] == [Unlike.PURPOSE_MISSING, Unlike.PURPOSE_WRONG]
    listed[1] = row(3, 1, whole()[1].name, has_purpose=True, purpose_said="glow")
    assert held(listed).differences[0].unlike is Unlike.PURPOSE_NOT_TOLD


def test_a_whole_device_entry_with_the_name_of_a_gang_was_taken_for_it() -> None:
    listed = whole()
    listed[0] = row(2, 0, listed[2].name)
    one = only(held(listed))
    assert (one.unlike, one.number) == (Unlike.WHOLE_FOR_GANG, 0)
    assert "gang's own entry" in one.step


def test_a_whole_device_entry_with_a_purpose_was_taken_for_a_gang() -> None:
    listed = whole()
    listed[0] = row(2, 0, listed[0].name, has_purpose=True, purpose=Purpose.LIGHTING)
    assert only(held(listed)).unlike is Unlike.WHOLE_FOR_GANG


def test_a_row_that_says_an_entry_again_is_told() -> None:
    one = only(held([*whole(), row(8, 1, "again")]))
    assert (one.unlike, one.row) == (Unlike.TWICE, 8)


def test_a_row_without_endpoint_of_a_device_with_several_entries_cannot_be_told() -> None:
    found = held([row(2, None, "Something")])
    assert only(found).unlike is Unlike.WHICH_ENTRY


def test_a_node_number_stands_for_the_address() -> None:
    known = journal(write(1, "joined", "device:D01", network="N1", node=6))
    listed = [ListRow(number=r.number, node=6, endpoint=r.endpoint, name=r.name) for r in whole()]
    assert held(listed, known, rows=rows_of(address=None)).differences == ()


def test_a_row_known_by_its_name_alone_is_told_and_its_address_may_be_written_down() -> None:
    found = held(whole(), rows=rows_of(address=None))
    assert {d.unlike for d in found.differences} == {Unlike.BY_NAME_ALONE}
    first = found.differences[0].entry
    assert first is not None
    assert first.own == {"network": "N1", "address": ADDRESS}


def test_devices_of_other_networks_are_not_missing() -> None:
    assert held([], network="N9").differences == ()


@given(
    st.lists(
        st.builds(
            ListRow,
            number=st.integers(2, 10**6),
            address=st.sampled_from([None, ADDRESS, "5A11C04D00317EFF"]),
            endpoint=st.sampled_from([None, 0, 1, 2, 3]),
            name=st.sampled_from(["", "Hall B1", "Thursday", *[r.name for r in whole()]]),
            purpose=st.sampled_from([None, Purpose.LIGHTING, Purpose.PUMP]),
            has_purpose=st.booleans(),
        ),
        max_size=12,
        unique_by=lambda r: r.number,
    )
)
def test_every_row_agrees_or_has_a_difference(listed: list[ListRow]) -> None:
    found = held(listed)
    unlike = {d.row for d in found.differences if d.row is not None}
    assert unlike <= {r.number for r in listed}
    assert found.agreed == len(listed) - len(unlike)
    assert all(d.says and d.step for d in found.differences)


def test_a_hundred_thousand_rows_are_each_answered() -> None:
    listed = [row(n, 1, f"lamp {n}", address=f"{n:016X}") for n in range(1, 100_001)]
    found = held(listed)  # a loop over rows inside a loop over rows would take minutes
    assert (found.rows, found.agreed, len(found.differences)) == (100_000, 0, 100_001)
