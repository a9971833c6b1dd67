"""The journal of a house: lines kept word for word, each once, whatever is sent how often."""

import json
from typing import Any

import pytest

from secondfix.house import uuid7
from secondfix.store.door import (
    Account,
    UnknownError,
    begin_house,
    journal,
    journal_bytes,
    post_entries,
)
from tests.store.examples import HOUSE, TEXT, changed


def line(number: int, **more: Any) -> bytes:
    """One entry as a phone sends it."""
    entry = {
        "format": 1, "id": uuid7(unix_ms=number, random=bytes(10)), "house": HOUSE, "revision": "A",
        "kind": "function_tested", "subject": "gang:B1.1", "writer": "Osk", "at": "2031-05-06T09:40+02:00",
        "answered": {"L1": "changed"}, **more,
    }  # fmt: skip
    return json.dumps(entry).encode()


def id_of(sent: bytes) -> str:
    """The id that a line has."""
    return str(json.loads(sent)["id"])


@pytest.fixture(autouse=True)
def house(writer: Account) -> None:
    """The house that the entries are about."""
    begin_house(TEXT.encode(), by=writer)


def test_lines_come_back_word_for_word_in_the_order_of_their_ids(writer: Account) -> None:
    sent = [line(3), line(1, note="Flur, 2. Dose links"), line(2)]
    posted = post_entries(HOUSE, b"\n".join(sent), by=writer)
    assert (set(posted.taken), posted.again, posted.faults) == ({id_of(s) for s in sent}, (), ())
    assert journal_bytes(HOUSE) == b"\n".join([sent[1], sent[2], sent[0], b""])
    assert len(journal(HOUSE)[0]) == 3


def test_sent_again_in_any_spacing_is_taken_once(writer: Account) -> None:
    post_entries(HOUSE, line(1), by=writer)
    for again in (line(1), line(1) + b"\n" + line(1), line(1).replace(b", ", b" ,  ")):
        posted = post_entries(HOUSE, again, by=writer)
        assert (posted.taken, posted.again, posted.faults) == ((), (id_of(line(1)),), ())
    assert journal_bytes(HOUSE) == line(1) + b"\n"


def test_an_id_with_another_body_is_told_and_what_stood_stays(writer: Account) -> None:
    post_entries(HOUSE, line(1), by=writer)
    posted = post_entries(HOUSE, line(1, answered={"L2": "on"}) + b"\n" + line(2), by=writer)
    assert (posted.taken, posted.id_taken) == ((id_of(line(2)),), (id_of(line(1)),))
    assert [f.path for f in posted.faults] == ["line 1, id"]
    assert journal_bytes(HOUSE).startswith(line(1) + b"\n")


def test_two_bodies_under_one_id_in_one_sending_are_told(writer: Account) -> None:
    posted = post_entries(HOUSE, line(1) + b"\n" + line(1, note="other"), by=writer)
    assert posted.taken == (id_of(line(1)),)
    assert [f.path for f in posted.faults] == ["line 2, id"]


def test_what_cannot_be_read_is_told_by_its_line_and_the_rest_is_taken(writer: Account) -> None:
    sent = b"\n".join(
        [b"{", line(1), b'{"format": 1}', b"\xff", b"", line(2, house=uuid7(unix_ms=9, random=bytes(10)))]
    )
    posted = post_entries(HOUSE, sent, by=writer)
    assert posted.taken == (id_of(line(1)),)
    assert [f.path.split(",")[0] for f in posted.faults] == ["line 1", "line 3", "line 4", "line 6"]


def test_an_unknown_kind_is_kept_word_for_word(writer: Account) -> None:
    sent = line(1, kind="weighed", grams=13)
    assert post_entries(HOUSE, sent, by=writer).taken == (id_of(sent),)
    assert journal_bytes(HOUSE) == sent + b"\n"


def test_an_id_of_another_houses_entry_is_told(writer: Account) -> None:
    other = "01936b1e-7a40-7c21-8f3e-5d2c9a71b699"
    begin_house(changed(id=other), by=writer)
    post_entries(HOUSE, line(1), by=writer)
    posted = post_entries(other, line(1, house=other), by=writer)
    assert (posted.taken, posted.id_taken) == ((), (id_of(line(1)),))


@pytest.mark.parametrize("name", ["01936b1e-7a40-7c21-8f3e-5d2c9a71b6ff", "x", ""])
def test_an_unknown_house_is_told(writer: Account, name: str) -> None:
    with pytest.raises(UnknownError):
        post_entries(name, line(1), by=writer)
