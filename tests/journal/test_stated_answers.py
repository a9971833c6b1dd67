"""The table of docs/journal.md under 'What is told': each row is run, and no row stands without its test."""

import json
import re
from collections.abc import Callable, Iterator
from itertools import permutations
from pathlib import Path
from typing import Any

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import Duty, as_canonical_json
from secondfix.journal import (
    LARGEST_JOURNAL_BYTES,
    LONGEST_LINE_BYTES,
    AsBuilt,
    Entry,
    Worked,
    adopt,
    as_built,
    as_lines,
    check,
    fitted_since,
    fold,
    function_test,
    journal_of,
    merge,
    read_journal,
)
from secondfix.maintenance import Unit, device_at, swap
from tests.cli.conftest import Call, call
from tests.example_house import house, models
from tests.journal.writing import FIT_D31, HOUSE, entry_id, plain, write

__all__ = ["call"]  # the fixture, for the row that goes through the command line
GOOD = plain(1, "named", "load:L1", name="Pendant")
SETTING = {"path": "devices.D31.after_power_loss"}


def text(*entries: dict[str, Any]) -> bytes:
    return b"".join(json.dumps(e).encode() + b"\n" for e in entries)


def built(*entries: Entry, **how: Any) -> AsBuilt:
    return as_built(HOUSE, journal_of(entries), models={}, **how)


def told(b: AsBuilt) -> list[tuple[str, bool]]:
    return [(t.words, t.serious) for t in b.told]


def one_fault(line: bytes, words: str) -> None:
    """The line in the middle is told with its number, and the next is read."""
    journal, faults = read_journal(
        text(GOOD) + line + b"\n" + text(plain(2, "removed", "device:D01")), where="j"
    )
    assert len(journal) == 2
    assert len(faults) == 1
    assert str(faults[0]).startswith("j: line 2")
    assert words in str(faults[0])


ROWS: dict[str, Callable[[], None]] = {}


def row(what: str) -> Callable[[Callable[[], None]], Callable[[], None]]:
    def keep(test: Callable[[], None]) -> Callable[[], None]:
        ROWS[what] = test
        return test

    return keep


@row("a byte order mark, lines that end in CR LF, empty lines")
def _() -> None:
    data = text(GOOD, plain(2, "removed", "device:D01"))
    odd = b"\xef\xbb\xbf" + data.replace(b"\n", b"\r\n\r\n")
    assert read_journal(odd, where="j") == read_journal(data, where="j")


@row("a line that cannot be read")
def _() -> None:
    one_fault(b"{", "not JSON")


@row("a line that is not UTF-8, nested too deep, or of 10 MB and no entry")
def _() -> None:
    one_fault(b"\xff{}", "not UTF-8")
    one_fault(b"[" * 34 + b"]" * 34, "nested too deep")
    one_fault(b"[" * 5_000_000 + b"]" * 5_000_000, "nested too deep")
    one_fault(json.dumps({**GOOD, "note": "x" * 10_000_000}).encode(), "note")


@row("a line or a file above the limits")
def _() -> None:
    one_fault(b'"' + b"x" * LONGEST_LINE_BYTES + b'"', "bytes in a line")
    journal, (fault,) = read_journal(b"\n" * (LARGEST_JOURNAL_BYTES + 1), where="j")
    assert len(journal) == 0
    assert "expected at most" in str(fault)


@row("a last line cut off in writing")
def _() -> None:
    journal, (fault,) = read_journal(text(GOOD) + b'{"format":1,', where="j")
    assert len(journal) == 1
    assert "line 2" in str(fault)
    assert "cut off" in str(fault)


@row("a line twice")
def _() -> None:
    journal, faults = read_journal(text(GOOD, GOOD) + json.dumps(GOOD, indent=None).encode(), where="j")
    assert (len(journal), faults) == (1, [])


@row("one id with two bodies")
def _() -> None:
    b = built(write(1, "named", "load:L1", name="A"), write(1, "named", "load:L1", name="B"))
    assert told(b) == [("stands 2 times with different words: none counts", True)]
    assert b.differences == ()


@row("any order of lines and files")
def _() -> None:
    entries = [write(1, "fitted", "device:D31", **FIT_D31), write(2, "removed", "device:D02")]
    entries += [write(3, "survey_corrected", "device:D31", found="off", **SETTING)]
    houses = {as_canonical_json(built(*order).house) for order in permutations(entries)}
    apart = merge(*(journal_of([e]) for e in reversed(entries)))
    assert houses == {as_canonical_json(as_built(HOUSE, apart, models={}).house)}


@row("another house")
def _() -> None:
    b = built(write(1, "named", "load:L1", name="A").model_copy(update={"house": entry_id(9)}))
    assert b.folded.counted == {}
    assert "is of another house" in told(b)[0][0]


@row("a kind not known")
def _() -> None:
    line = json.dumps(plain(1, "painted", "box:B1", colour="sage")).encode()
    journal, faults = read_journal(line + b"\n", where="j")
    assert not faults
    assert as_lines(journal).encode() == line + b"\n"
    found = check(as_built(HOUSE, journal, models={}), expected={})
    assert [f.outcome.value for f in found if f.rule == "journal_kind"] == ["cannot_tell"]


@row("a newer format")
def _() -> None:
    one_fault(json.dumps({**GOOD, "format": 2}).encode(), "made by a newer Secondfix")


@row("`sees` names an entry that is not here")
def _() -> None:
    b = built(write(2, "named", "load:L1", name="A", sees=(1,)))
    assert told(b) == [(f"saw entry {entry_id(1)}, which is not here", False)]
    assert b.house.loads["L1"].name == "A"
    apart = (write(0, "named", "load:L1", name="B"), write(1, "named", "load:L1", name="C", sees=(0,)))
    late = write(2, "named", "load:L1", name="A", sees=(1,))
    assert built(apart[0], late).folded.conflicts
    assert not built(*apart, late).folded.conflicts


@row("`sees` names an entry of another subject")
def _() -> None:
    b = built(write(1, "named", "load:L2", name="A"), write(2, "named", "load:L1", name="B", sees=(1,)))
    assert told(b) == [(f"saw entry {entry_id(1)}, which is of load:L2: that does not count", True)]


@row("entries that saw each other in a ring")
def _() -> None:
    b = built(
        write(1, "named", "load:L1", name="A", sees=(2,)), write(2, "named", "load:L1", name="B", sees=(1,))
    )
    assert told(b) == [("is in a ring of entries that saw each other", True)] * 2
    assert b.folded.conflicts


@row("a withdrawal of a withdrawal in a ring")
def _() -> None:
    b = built(write(1, "withdrawn", "load:L1", of=2), write(2, "withdrawn", "load:L1", of=1))
    assert ("is in a ring of withdrawals", True) in told(b)
    assert b.folded.withdrawn == frozenset()


@row("a base revision that is not known")
def _() -> None:
    b = built(write(1, "named", "load:L1", name="A"), revisions=frozenset({"Q"}))
    assert told(b) == [("was written over revision A, which is not known", False)]
    assert b.house.loads["L1"].name == "A"


@row("dated later than now")
def _() -> None:
    b = built(write(1, "named", "load:L1", name="A"), now="2030-01-01T00:00+00:00")
    assert [serious for _, serious in told(b)] == [False]
    assert b.house.loads["L1"].name == "A"


@row("two phones whose clocks are hours apart")
def _() -> None:
    first = write(1, "named", "load:L1", name="A").model_copy(update={"at": "2031-05-06T15:00+02:00"})
    second = write(2, "named", "load:L1", name="B", sees=(1,))  # five hours before, by its clock
    b = built(first, second)
    assert (b.house.loads["L1"].name, b.told) == ("B", ())


@row("a thing that is not in the house")
def _() -> None:
    b = built(write(1, "named", "room:R77", name="Nook"))
    assert told(b) == [("speaks of room:R77, which is not in this house", True)]
    assert len(b.folded.counted) == 1
    assert b.differences == ()


@row("a device that left")
def _() -> None:
    b = built(write(1, "removed", "device:D01"), write(2, "named", "entry:D01.1", name="Old"))
    assert (b.told, b.remarks) == ((), ())
    assert len(b.folded.counted) == 2


@row("a value that does not fit the document")
def _() -> None:
    b = built(write(1, "survey_corrected", "box:B1", path="boxes.B1.depth_mm", found="deep"))
    assert told(b)[0][0].startswith("does not fit boxes.B1.depth_mm")
    assert b.differences == ()


@row("a setting that the model does not have")
def _() -> None:
    b = built(
        write(1, "fitted", "device:D31", **FIT_D31),
        write(2, "survey_corrected", "device:D31", found="on", **SETTING),
    )
    assert "can be set to off, last" in told(b)[0][0]
    assert "D31" in b.house.devices


@row("a setting of a device fitted in the same visit")
def _() -> None:
    entries = [
        write(1, "survey_corrected", "device:D31", found="off", **SETTING),
        write(2, "fitted", "device:D31", **FIT_D31),
    ]
    assert {built(*o).house.devices["D31"].after_power_loss for o in permutations(entries)} == {"off"}


@row("a device fitted again with another model, or another code")
def _() -> None:
    first = [
        write(1, "fitted", "device:D31", code_ref="K40", **FIT_D31),
        write(2, "joined", "device:D31", network="N1", address="00124B0000C0FFEE", sees=(1,)),
        write(3, "survey_corrected", "device:D31", found="off", sees=(2,), **SETTING),
    ]
    stood = built(*first).house
    again = write(4, "fitted", "device:D31", model="corvell-pair@1", code_ref="K41")
    new = as_built(stood, journal_of([again]), models={}).house.devices["D31"]
    assert (new.address, new.after_power_loss, new.code_ref) == (None, None, "K41")


@row("devices said to replace each other")
def _() -> None:
    b = built(
        write(1, "fitted", "device:D31", model="corvell-pair@1", replaces="D32"),
        write(2, "fitted", "device:D32", model="corvell-pair@1", replaces="D31"),
    )
    words = "replaces a device that is said to replace it: neither counts"
    assert [w for w, _ in told(b) if w == words] == [words] * 2


@row("two devices in one mount, a load fed twice")
def _() -> None:
    stand = {k: v for k, v in FIT_D31.items() if k not in {"replaces", "takes_over"}}
    b = built(
        write(1, "removed", "device:D01"),
        write(2, "fitted", "device:D31", **stand),
        write(3, "fitted", "device:D32", **stand),
    )
    assert sorted(t.entry for t in b.told if t.serious) == [entry_id(2), entry_id(3)]
    assert not {"D31", "D32"} & set(b.house.devices)


@row("a test of a gang that feeds nothing")
def _() -> None:
    def worked(duty: str, answered: dict[str, str]) -> Worked:
        box = HOUSE.boxes["B1"]
        gang = box.gangs["2"].model_copy(update={"duty": Duty(duty), "load": None})
        of = HOUSE.model_copy(
            update={
                "boxes": {**HOUSE.boxes, "B1": box.model_copy(update={"gangs": {**box.gangs, "2": gang}})}
            }
        )
        pressed = write(1, "function_tested", "gang:B1.2", answered=answered)
        test = function_test(of, fold(of, journal_of([pressed])))
        return next(p.worked for p in test.presses if p.place == "B1.2")

    assert worked("capped", {}) is Worked.AS_DESIGNED
    assert worked("capped", {"L2": "on"}) is Worked.SHOULD_NOT
    assert worked("scene_only", {"L2": "on"}) is Worked.NOT_JUDGED
    assert worked("not_known", {"L2": "on"}) is Worked.FOUND


@row("a test adopted before the device that now works the gang was fitted")
def _() -> None:
    pressed = write(1, "function_tested", "gang:B1.1", answered={"L1": "changed"})
    made = adopt(
        built(pressed),
        entry_id=entry_id(50),
        revision="A",
        to_revision="B",
        writer="office",
        at="2031-06-01T08:00Z",
    )
    assert not isinstance(made, tuple)
    b = built(pressed, made.entry, write(3, "fitted", "device:D31", **FIT_D31))
    assert fitted_since(b.house, b.folded) == {"gang:B1.1": "D31"}


@row("a swap of an empty mount")
def _() -> None:
    empty = built(write(1, "removed", "device:D01")).house
    (fault,) = device_at(empty, "B1.1")
    assert "where no device stands" in str(fault)


@row("a swap whose new device has the code of another")
def _() -> None:
    coded = write(1, "fitted", "device:D01", code_ref="K40")
    faults = swap(
        built(coded).house, "D01", [Unit("corvell-pair@1", code_ref="K40")], models=models(),
        assumptions=default_assumptions(),
    )  # fmt: skip
    assert isinstance(faults, list)
    assert "the new device's own code" in str(faults[0])


FILES = "several files, folders of `.jsonl`, standard input (`-`)"


def test_files_folders_and_standard_input_are_put_together(call: Call, tmp_path: Path) -> None:
    (tmp_path / "h.json").write_text(as_canonical_json(house()), encoding="utf-8")
    visits = tmp_path / "visits"
    visits.mkdir()
    for n in (1, 2):
        (visits / f"{n}.jsonl").write_bytes(text(plain(n, "named", f"load:L{n}", name=f"Lamp {n}")))
    (visits / "photo.png").write_bytes(b"\x89PNG")
    (tmp_path / "more.jsonl").write_bytes(text(plain(3, "removed", "device:D02")))
    ended = call(
        "as-built",
        "h.json",
        "visits",
        "more.jsonl",
        "-",
        stdin=text(plain(4, "named", "room:R1", name="Nave")),
    )
    assert "4 entries count" in ended.out
    assert "visits: not read, since not .jsonl: photo.png" in ended.err
    assert call("as-built", "-", "-", stdin=b"").code == 2


def rows_of_the_page(tree: Path) -> Iterator[str]:
    page = (tree / "docs/journal.md").read_text(encoding="utf-8")
    part = page.split("## What is told, and what it means", 1)[1].split("\n## ", 1)[0]
    for what in re.findall(r"^\| ([^|]+) \| [^|]+ \|$", part, re.MULTILINE):
        if what not in {"what", "---"}:
            yield what


def test_every_row_of_the_page_is_run_and_every_case_run_has_its_row(tree: Path) -> None:
    assert sorted(rows_of_the_page(tree)) == sorted([*ROWS, FILES])


@pytest.mark.parametrize("what", sorted(ROWS))
def test_the_answer_is_as_stated(what: str) -> None:
    ROWS[what]()
