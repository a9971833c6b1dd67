"""Save with a base: what two people change apart is put together, and nothing that was sent is lost."""

import json
from typing import Any

import pytest

from secondfix.house import LARGEST_FILE_BYTES, uuid7
from secondfix.store.door import (
    Account,
    Conflicting,
    IdTaken,
    Known,
    Refused,
    Saved,
    UnknownError,
    begin_house,
    edit_answer,
    edit_bytes,
    edit_changes,
    edits,
    go_back,
    houses,
    open_house,
    save,
    settle,
)
from secondfix.store.models import Edit
from tests.store.conftest import Store
from tests.store.examples import HOUSE, TEXT, changed, changed_from


@pytest.fixture
def begun_house(store: Store, writer: Account) -> Account:
    """The writer, with the example house begun."""
    assert begin_house(TEXT.encode(), by=writer) == Saved(1)
    return writer


def test_a_house_opens_as_it_was_begun(begun_house: Account) -> None:
    opened = open_house(HOUSE)
    assert (opened.text, opened.number, opened.stage, opened.away) == (TEXT, 1, "survey", False)
    (row,) = houses()
    assert (row.id, row.name, row.number, row.changed_by) == (HOUSE, "Pellow Lane 11", 1, "Ilka")


def test_a_known_house_is_told_and_never_made_twice(begun_house: Account) -> None:
    assert begin_house(changed(name="Twin"), by=begun_house) == Known(HOUSE, 1, away=False)
    assert len(edits(HOUSE)) == 1


def test_a_document_with_faults_begins_no_house_and_tells_all_faults(store: Store, writer: Any) -> None:
    answer = begin_house(changed(mains_voltage_v=9, wiring_rules="x"), by=writer)
    assert isinstance(answer, Refused)
    assert {f.path for f in answer.faults} == {"mains_voltage_v", "wiring_rules"}
    assert houses() == ()


def test_a_save_on_the_latest_edit_becomes_current(begun_house: Account) -> None:
    assert save(HOUSE, changed(name="Fenwick Row 3"), base=1, by=begun_house) == Saved(2)
    assert open_house(HOUSE).house.name == "Fenwick Row 3"
    assert edits(HOUSE)[0].words == "name: 'Pellow Lane 11' → 'Fenwick Row 3'"


def test_different_fields_are_both_kept_and_the_later_is_told(begun_house: Account) -> None:
    save(HOUSE, changed(boxes__B1__note="damp"), base=1, by=begun_house)
    answer = save(HOUSE, changed(rooms__R2__name="Library"), base=1, by=begun_house)
    assert isinstance(answer, Saved)
    assert [c.path for c in answer.others] == ["boxes.B1.note"]
    now = open_house(HOUSE).house
    assert (now.boxes["B1"].note, now.rooms["R2"].name) == ("damp", "Library")


def test_one_field_changed_apart_is_a_conflict_and_both_are_kept(begun_house: Account) -> None:
    save(HOUSE, changed(rooms__R1__name="Entry"), base=1, by=begun_house)
    sent = changed(rooms__R1__name="Porch", rooms__R2__name="Library")
    answer = save(HOUSE, sent, base=1, by=begun_house)
    assert isinstance(answer, Conflicting)
    (conflict,) = answer.conflicts
    assert (conflict.path, conflict.base, conflict.theirs, conflict.mine) == (
        "rooms.R1.name", "Hall", "Entry", "Porch",
    )  # fmt: skip
    assert open_house(HOUSE).number == 2
    assert edit_bytes(HOUSE, answer.kept) == sent
    assert [e.stands for e in edits(HOUSE)] == [False, True, True]


@pytest.mark.parametrize(("side", "name"), [("mine", "Porch"), ("theirs", "Entry")])
def test_a_conflict_is_settled_by_taking_a_side(begun_house: Account, side: Any, name: str) -> None:
    save(HOUSE, changed(rooms__R1__name="Entry"), base=1, by=begun_house)
    kept = save(HOUSE, changed(rooms__R1__name="Porch", rooms__R2__name="Library"), base=1, by=begun_house)
    assert isinstance(kept, Conflicting)
    answer = settle(HOUSE, kept.kept, {"rooms.R1.name": side}, seen=kept.current, by=begun_house)
    assert isinstance(answer, Saved)
    rooms = open_house(HOUSE).house.rooms
    assert (rooms["R1"].name, rooms["R2"].name) == (name, "Library")


def test_nobody_overrules_what_they_have_not_seen(begun_house: Account) -> None:
    save(HOUSE, changed(rooms__R1__name="Entry"), base=1, by=begun_house)
    kept = save(HOUSE, changed(rooms__R1__name="Porch"), base=1, by=begun_house)
    assert isinstance(kept, Conflicting)
    save(HOUSE, changed(rooms__R1__name="Vestibule"), base=2, by=begun_house)
    answer = settle(HOUSE, kept.kept, {"rooms.R1.name": "mine"}, seen=kept.current, by=begun_house)
    assert isinstance(answer, Conflicting)
    assert answer.conflicts[0].theirs == "Vestibule"
    assert open_house(HOUSE).house.rooms["R1"].name == "Vestibule"


def test_two_that_are_whole_apart_but_not_together_are_refused_and_kept(begun_house: Account) -> None:
    save(HOUSE, changed(places__P2=None, devices__D02=None, scenes=None), base=1, by=begun_house)
    sent = changed(places__P2__name="Beside the door", devices__D02__name="Bedhead")
    on_both = save(HOUSE, sent, base=1, by=begun_house)
    assert on_both.kind == "conflicting"  # taken out on one side, changed on the other
    sent = changed(scenes__SC2={"name": "Night", "starts": [{"by": "sensor", "device": "D02"}]})
    answer = save(HOUSE, sent, base=1, by=begun_house)
    assert isinstance(answer, Refused)
    assert [(f.where, f.path) for f in answer.faults] == [("both together", "scenes.SC2.starts[0].device")]
    assert answer.kept is not None
    assert edit_bytes(HOUSE, answer.kept) == sent
    assert open_house(HOUSE).number == 2


@pytest.mark.parametrize(
    "sent",
    [b"", b"{", b"\xff\xfe", b'{"format": 1}', changed(boxes__B1__room="R9"), b'{"a": "\\u0000"}'],
    ids=["empty", "cut", "not text", "shape", "reference", "zero"],
)
def test_what_has_faults_is_kept_byte_for_byte_and_never_current(begun_house: Account, sent: bytes) -> None:
    answer = save(HOUSE, sent, base=1, by=begun_house)
    assert isinstance(answer, Refused)
    assert answer.faults
    assert answer.kept == 2
    assert edit_bytes(HOUSE, 2) == sent
    assert edit_answer(HOUSE, 2) == answer
    assert open_house(HOUSE).number == 1


def test_what_is_too_large_is_refused_and_not_kept(begun_house: Account) -> None:
    answer = save(HOUSE, b" " * (LARGEST_FILE_BYTES + 1), base=1, by=begun_house)
    assert isinstance(answer, Refused)
    assert (answer.kept, len(edits(HOUSE))) == (None, 1)


def test_an_unknown_house_or_edit_is_told(begun_house: Account) -> None:
    for house, number in ((HOUSE, 2), ("01936b1e-7a40-7c21-8f3e-5d2c9a71b699", 1)):
        with pytest.raises(UnknownError):
            edit_bytes(house, number)
    with pytest.raises(UnknownError):
        save("no id", b"{", base=1, by=begun_house)


def test_another_houses_document_is_refused(begun_house: Account) -> None:
    answer = save(HOUSE, changed(id="01936b1e-7a40-7c21-8f3e-5d2c9a71b605"), base=1, by=begun_house)
    assert isinstance(answer, Refused)
    assert answer.faults[0].path == "id"


@pytest.mark.parametrize("base", [0, 2, 3, 99])
def test_a_base_that_never_stood_is_refused_and_kept(begun_house: Account, base: int) -> None:
    save(HOUSE, b"{", base=1, by=begun_house)  # edit 2, set aside
    answer = save(HOUSE, changed(name="x"), base=base, by=begun_house)
    assert isinstance(answer, Refused)
    assert (answer.faults[0].path, answer.kept) == ("base", 3)


def test_a_save_that_changes_nothing_makes_no_edit(begun_house: Account) -> None:
    assert save(HOUSE, TEXT.encode(), base=1, by=begun_house) == Saved(1, new=False)
    assert len(edits(HOUSE)) == 1


@pytest.mark.parametrize("sent", [changed(name="Quill End"), b"{", changed(rooms__R1__name="Porch")])
def test_a_save_sent_twice_is_answered_alike_and_made_once(begun_house: Account, sent: bytes) -> None:
    save(HOUSE, changed(rooms__R1__name="Entry"), base=1, by=begun_house)
    one = uuid7(unix_ms=1, random=bytes(10))
    first = save(HOUSE, sent, base=1, by=begun_house, edit_id=one)
    count = len(edits(HOUSE))
    assert save(HOUSE, sent, base=1, by=begun_house, edit_id=one) == first
    assert save(HOUSE, changed(name="y"), base=1, by=begun_house, edit_id=one) == IdTaken(one)
    assert save(HOUSE, sent, base=2, by=begun_house, edit_id=one) == IdTaken(one)
    assert len(edits(HOUSE)) == count


def test_every_past_state_can_be_restored(begun_house: Account) -> None:
    states = [TEXT]
    for n, note in enumerate(["a", "b", "c"], start=1):
        save(HOUSE, changed_from(states[-1], boxes__B1__note=note), base=n, by=begun_house)
        states.append(open_house(HOUSE).text)
    assert [edit_bytes(HOUSE, n).decode() for n in (1, 2, 3, 4)] == states
    assert [(c.before, c.after) for c in edit_changes(HOUSE, 3)] == [("a", "b")]
    go_back(HOUSE, 2, base=4, by=begun_house)
    assert (open_house(HOUSE).text, open_house(HOUSE).number) == (states[1], 5)


def test_going_back_loses_nothing_that_came_meanwhile(begun_house: Account) -> None:
    save(HOUSE, changed(boxes__B1__note="a"), base=1, by=begun_house)
    save(HOUSE, changed_from(open_house(HOUSE).text, rooms__R2__name="Library"), base=2, by=begun_house)
    go_back(HOUSE, 1, base=2, by=begun_house)  # asked for by somebody who had not seen edit 3
    now = open_house(HOUSE).house
    assert (now.boxes["B1"].note, now.rooms["R2"].name) == ("", "Library")


def test_what_was_kept_is_json_of_the_format(begun_house: Account) -> None:
    (edit,) = Edit.objects.all()
    assert json.loads(edit.told)["kind"] == "saved"
