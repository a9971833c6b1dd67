"""A journal file: lines of JSON, appended to and never rewritten."""

import json
from collections.abc import Iterable
from typing import Any

from secondfix.house import Fault, parse
from secondfix.journal.entry import Entry, Unknown
from secondfix.journal.kinds import read_entry

LARGEST_JOURNAL_BYTES = 256 * 1024 * 1024
LONGEST_LINE_BYTES = 16 * 1024 * 1024  # an adoption of 200,000 entries, with room to spare


def as_line(entry: Entry) -> str:
    """One entry as one line, without its end; entries of one meaning give one line."""
    if isinstance(entry, Unknown):
        return entry.line
    plain = {k: _ordered(v) for k, v in entry.model_dump(mode="json", exclude_defaults=True).items()}
    return json.dumps(plain, ensure_ascii=False, separators=(",", ":"))


def _ordered(value: Any) -> Any:
    if isinstance(value, dict):
        return {key: _ordered(value[key]) for key in sorted(value)}
    return [_ordered(v) for v in value] if isinstance(value, list) else value


def read_lines(data: bytes, *, where: str) -> tuple[list[Entry], list[Fault]]:
    """Every entry that can be read, and one fault for each line that cannot, with its number.

    A last line without its end that cannot be read was cut off in writing: told and skipped.
    Blank lines say nothing. A file above ``LARGEST_JOURNAL_BYTES`` is refused whole.
    """
    if len(data) > LARGEST_JOURNAL_BYTES:
        return [], [Fault(where, "", f"{len(data):,} bytes", f"at most {LARGEST_JOURNAL_BYTES:,} bytes")]
    lines = data.removeprefix(b"\xef\xbb\xbf").split(b"\n")
    entries: list[Entry] = []
    faults: list[Fault] = []
    for number, line in enumerate(lines, start=1):
        if not line.strip():
            continue
        read = _line(line, where=where, at=f"line {number}")
        if isinstance(read, Entry):
            entries.append(read)
        elif number == len(lines):
            faults.append(
                Fault(where, read.path, f"cut off, or {read.stands}", "a whole line; it is skipped")
            )
        else:
            faults.append(read)
    return entries, faults


def _line(line: bytes, *, where: str, at: str) -> Entry | Fault:
    if len(line) > LONGEST_LINE_BYTES:
        return Fault(where, at, f"{len(line):,} bytes", f"at most {LONGEST_LINE_BYTES:,} bytes in a line")
    plain, faults = parse(line, where=where)
    if faults:
        return _one_line(faults, where=where, at=at)
    read = read_entry(plain, line=line.decode().strip())
    if isinstance(read, Entry):
        return read
    path, stands, expected = read
    return Fault(where, f"{at}, {path}" if path else at, stands, expected)


def _one_line(faults: Iterable[Fault], *, where: str, at: str) -> Fault:
    first = next(iter(faults))
    inner = first.path.replace("line 1, ", "")
    return Fault(where, f"{at}, {inner}" if inner else at, first.stands, first.expected)
