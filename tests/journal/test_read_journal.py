"""Journal files: every line that can be read is, every other is told with its number."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import Fault
from secondfix.journal import (
    KINDS,
    LARGEST_JOURNAL_BYTES,
    LONGEST_LINE_BYTES,
    Entry,
    Unknown,
    as_line,
    as_lines,
    fold,
    journal_of,
    latest,
    new_entry,
    read_journal,
)
from secondfix.journal import lines as lines_of
from tests.journal.random_journals import STEPS, Step, honest
from tests.journal.writing import FIT_D31, HOUSE, entry_id, found, plain, write


def text(*plains: object) -> bytes:
    return b"".join(json.dumps(p).encode() + b"\n" for p in plains)


def told(data: bytes) -> list[str]:
    return [str(f) for f in read_journal(data, where="phone.jsonl")[1]]


GOOD = plain(1, "named", "load:L1", name="Pendant")


def test_a_good_line_is_an_entry() -> None:
    journal, faults = read_journal(text(GOOD), where="phone.jsonl")
    assert faults == []
    assert list(journal) == [write(1, "named", "load:L1", name="Pendant")]


@given(STEPS)
def test_what_is_written_is_read(steps: list[Step]) -> None:
    journal = journal_of(honest(steps))
    again, faults = read_journal(as_lines(journal).encode(), where="x")
    assert faults == []
    assert [as_line(e) for e in again] == [as_line(e) for e in journal]


@given(STEPS, st.integers(0, 3000))
def test_a_file_cut_anywhere_gives_all_whole_lines(steps: list[Step], cut: int) -> None:
    whole = as_lines(journal_of(honest(steps))).encode()
    part = whole[:cut]
    journal, faults = read_journal(part, where="x")
    lines = part.split(b"\n")
    assert len(journal) in {len(lines) - 1, len(lines)}  # the last may be whole but for its end
    assert len(faults) == (1 if lines[-1] and len(journal) == len(lines) - 1 else 0)
    assert all("cut off" in f.stands and f"line {len(lines)}" in f.path for f in faults)


@pytest.mark.parametrize(
    ("line", "words"),
    [
        (b"{", "line 2, column 2: not JSON"),
        (b"\xff\xfe", "line 2, byte 0: not UTF-8"),
        (b"[]", "line 2: a list; expected an object"),
        (b"7", "line 2: a number; expected an object"),
        (b"null", "line 2: null"),
        (b'{"format":2}', "line 2, format: 2; expected format 1: this entry was made by a newer Secondfix"),
        (b'{"format":1,"format":1}', "line 2, format: this key stands twice"),
        (b"[" * 60 + b"]" * 60, "nested too deep"),
        (b"[" * 90_000 + b"]" * 90_000, "nested too deep"),
        (b'{"format": NaN}', "line 2: a number that cannot be read"),
        (json.dumps({**GOOD, "colour": 1}).encode(), "line 2, colour: unknown key"),
        (json.dumps({k: v for k, v in GOOD.items() if k != "house"}).encode(), "line 2, house: nothing"),
        (json.dumps({**GOOD, "id": "7"}).encode(), "line 2, id: '7'"),
        (json.dumps({**GOOD, "id": "01936b1e-7a40-4c21-8f3e-5d2c9a71b604"}).encode(), "line 2, id"),
        (json.dumps({**GOOD, "at": "2031-02-30T10:00Z"}).encode(), "line 2, at"),
        (json.dumps({**GOOD, "at": "2031-02-20T10:00"}).encode(), "line 2, at"),
        (json.dumps({**GOOD, "subject": "load"}).encode(), "line 2, subject: 'load'"),
        (json.dumps({**GOOD, "subject": "box:B1"}).encode(), "line 2, subject: 'box:B1'; expected for named"),
        (json.dumps({**GOOD, "name": "x" * 81}).encode(), "line 2, name"),
        (json.dumps({**GOOD, "sees": [entry_id(2)] * 1001}).encode(), "line 2, sees"),
        (json.dumps({**GOOD, "kind": 5}).encode(), "line 2, kind"),
    ],
)
def test_a_bad_line_is_told_with_its_number_and_the_next_is_read(line: bytes, words: str) -> None:
    data = text(GOOD) + line + b"\n" + text(plain(2, "removed", "device:D01"))
    journal, faults = read_journal(data, where="phone.jsonl")
    assert len(journal) == 2
    assert len(faults) == 1
    assert words in str(faults[0])
    assert "\n" not in str(faults[0])


def test_a_cut_last_line_is_told_and_skipped() -> None:
    journal, faults = read_journal(text(GOOD) + text(GOOD)[:40], where="phone.jsonl")
    assert len(journal) == 1
    assert faults[0].path.startswith("line 2")
    assert "cut off" in str(faults[0])


def test_blank_lines_and_other_ends_say_nothing() -> None:
    data = b"\xef\xbb\xbf\n" + text(GOOD).replace(b"\n", b"\r\n") + b"\n  \n"
    journal, faults = read_journal(data, where="x")
    assert (len(journal), faults) == (1, [])
    assert len(read_journal(b"", where="x")[0]) == 0


def test_the_same_line_twice_is_one_entry_however_it_is_spaced() -> None:
    spaced = json.dumps(GOOD, indent=None, separators=(" , ", " : ")).encode() + b"\n"
    turned = text(dict(reversed(GOOD.items())))
    journal, faults = read_journal(text(GOOD) + spaced + turned, where="x")
    assert (len(journal), faults) == (1, [])


def test_an_id_with_other_words_is_kept_aside_and_told() -> None:
    data = text(GOOD, {**GOOD, "name": "Lantern"})
    journal, faults = read_journal(data, where="x")
    assert (len(journal), faults) == (2, [])
    folded = fold(HOUSE, journal)
    assert folded.counted == {}
    assert [t.words for t in folded.told] == ["stands 2 times with different words: none counts"]


def test_two_bodies_are_one_set_in_either_order() -> None:
    bodies = [write(1, "named", "load:L1", name=name) for name in ("a", "b")]
    assert journal_of(bodies) == journal_of(bodies[::-1]) == journal_of([*bodies, *bodies])


def test_true_and_one_are_different_words() -> None:
    one, true = (
        write(1, "survey_corrected", "load:L1", path="loads.L1.dimmable", found=found(v)) for v in (1, True)
    )
    assert len(journal_of([one, true])) == len(journal_of([true, one])) == 2


def test_a_kind_not_known_here_is_kept_word_for_word() -> None:
    line = json.dumps({**plain(1, "painted", "box:B1"), "coat": 2.50, "sees": []}).encode()
    journal, faults = read_journal(line + b"\n", where="x")
    assert faults == []
    (entry,) = journal
    assert isinstance(entry, Unknown)
    assert as_lines(journal).encode() == line + b"\n"


def test_a_line_or_file_too_long_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    assert LARGEST_JOURNAL_BYTES > LONGEST_LINE_BYTES
    monkeypatch.setattr(lines_of, "LONGEST_LINE_BYTES", 300)
    assert "bytes in a line" in told(text({**GOOD, "note": "x" * 400}, GOOD))[0]
    monkeypatch.setattr(lines_of, "LARGEST_JOURNAL_BYTES", 300)
    assert "expected at most" in told(text(GOOD, GOOD))[0]


@given(st.binary(max_size=300))
def test_any_bytes_are_read_or_told(data: bytes) -> None:
    journal, faults = read_journal(data, where="x")
    assert len(journal) == 0
    assert len(faults) == sum(1 for line in data.removeprefix(b"\xef\xbb\xbf").split(b"\n") if line.strip())


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner, max_size=3),
    max_leaves=5,
)


@given(st.sampled_from(sorted(KINDS)), st.sampled_from(sorted({*GOOD, "path", "found", "of", "x"})), JSON)
def test_any_value_under_any_key_is_read_or_told(kind: str, key: str, value: object) -> None:
    journal, faults = read_journal(text({**GOOD, "kind": kind, key: value}), where="x")
    assert len(journal) + len(faults) == 1


@pytest.mark.parametrize(
    ("kind", "subject", "fields", "words"),
    [
        ("fitted", "device:D31", {"box": "B1", "place": "P1"}, "not both"),
        ("fitted", "device:D31", {"takes_over": {"1": 1}}, "goes with replaces"),
        ("fitted", "device:D31", {"replaces": "D31"}, "does not replace itself"),
        ("measured", "link:D01>P1", {}, "rssi_dbm or lqi"),
        ("measured", "link:D01>P1", {"not_heard": True, "rssi_dbm": -60}, "or else that it was not heard"),
        ("measured", "link:D01>P1", {"not_heard": False}, "True"),
        ("measured", "network:N1", {"not_heard": True}, "a table of links"),
        (
            "measured",
            "network:N1",
            {"table": [{"link": "link:D01>P1", "lqi": 9, "not_heard": True}]},
            "or else that it was not heard",
        ),
        ("measured", "network:N1", {"rssi_dbm": -60}, "a table of links"),
        ("measured", "network:N1", {"table": [{"link": "link:D01>P1"}]}, "rssi_dbm or lqi"),
        ("measured", "network:N1", {"table": [{"link": "device:D01", "lqi": 9}]}, "names a link"),
        ("survey_corrected", "box:B1", {"path": "boxes.B1.deep_mm", "found": 1}, "does not know"),
        ("survey_corrected", "box:B1", {"path": "boxes", "found": 1}, "no path"),
        ("survey_corrected", "box:B1", {"path": "loads.L1.mounts.1.neutral", "found": 1}, "no path"),
        ("survey_corrected", "load:L1", {"path": "loads.L1.purpose", "found": 1}, "another entry"),
        ("survey_corrected", "gang:B1.1", {"path": "boxes.B1.gangs.1.load", "found": "L1"}, "another entry"),
        ("survey_corrected", "box:B1", {"path": "boxes.B1.gangs.1.line", "found": 1}, "speaks of gang:B1.1"),
        ("survey_corrected", "box:B2", {"path": "boxes.B1.depth_mm", "found": 1}, "speaks of box:B1"),
        ("painted", "box:B1", {}, "one of joined, join_failed"),
    ],
)
def test_an_entry_that_contradicts_itself_is_refused(
    kind: str, subject: str, fields: dict[str, Any], words: str
) -> None:
    fault = new_entry(plain(1, kind, subject, **fields), where="x")
    assert isinstance(fault, Fault)
    assert words in str(fault)


def test_a_writer_sees_the_heads_of_a_subject() -> None:
    entries = [
        write(1, "named", "load:L1", name="a"),
        write(2, "named", "load:L1", name="b", sees=[1]),
        write(3, "purpose_set", "load:L1", purpose="lighting"),
        write(4, "withdrawn", "load:L1", of=3),
        write(5, "named", "load:L2", name="c"),
    ]
    assert latest(journal_of(entries), "load:L1") == (entry_id(2), entry_id(4))


def test_every_kind_can_be_written() -> None:
    made: list[Entry] = [
        write(1, "joined", "device:D31", network="N1", address="00124B0000C0FFEE", node=7, entries=3),
        write(2, "join_failed", "device:D31", network="N1"),
        write(3, "excluded", "device:D31", network="N1"),
        write(4, "named", "entry:D01.2", name="Desk"),
        write(5, "purpose_set", "load:L1", purpose="lighting"),
        write(6, "function_tested", "gang:B1.1", answered={}),
        write(7, "measured", "network:N1", table=[{"link": "link:D01>P1", "lqi": 112}]),
        write(17, "measured", "link:D01>P1", not_heard=True),
        write(8, "fitted", "device:D31", **FIT_D31),
        write(9, "removed", "device:D01"),
        write(10, "survey_corrected", "box:B1", path="boxes.B1.mounts.1.neutral", found=None),
        write(11, "snag_raised", "box:B1", words="loose"),
        write(12, "snag_cleared", "box:B1", clears=11),
        write(13, "skipped", "gang:B1.1", deed="test", reason="asleep"),
        write(14, "withdrawn", "box:B1", of=11),
        write(15, "adopted", f"house:{HOUSE.id}", to_revision="B", took_in=[]),
        write(18, "air_heard", "box:B1", transmitters=[]),
        write(16, "signed", f"house:{HOUSE.id}", name="I. Quill", paper="as-built"),
    ]
    assert {e.kind for e in made} == set(KINDS)
