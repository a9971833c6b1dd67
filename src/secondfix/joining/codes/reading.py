"""What reading an onboarding code gives back, and how its secrets are kept out of sight.

Faults and warnings never quote more than single characters of the text: a group, a PIN or a checksum
repeated in a sentence would leak past `shown`. Large limits are written with a comma for the same reason.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum

LONGEST_TEXT = 4096
"""Longest text that is read, in characters; ours: the longest real label holds a few hundred."""

_LEAK = 5
"""A run of this many characters of a secret counts as showing it (a Z-Wave PIN has five digits)."""

HEX = frozenset("0123456789ABCDEFabcdef")
DECIMAL = frozenset("0123456789")
_LOOKS_LIKE = {"O": "0", "Q": "0", "D": "0", "I": "1", "L": "1", "Z": "2", "S": "5", "G": "6", "B": "8"}


class Kind(StrEnum):
    """The kinds of text that can be read."""

    INSTALL_CODE = "zigbee-install-code"
    DSK = "zwave-dsk"
    ZWAVE_QR = "zwave-qr"
    MATTER_QR = "matter-qr"
    MATTER_MANUAL = "matter-manual"
    EUI64 = "eui-64"
    LABEL = "label"
    NOT_RECOGNISED = "not-recognised"


@dataclass(frozen=True, slots=True)
class Remark:
    """A fault or a warning: a stable id, and one sentence (what stands, what was expected, what to do)."""

    id: str
    says: str


@dataclass(frozen=True, slots=True, repr=False)
class Field:
    """One value read from a code; `secret` keeps it out of `repr`, and out of `shown` unless revealed."""

    name: str
    value: str | int
    secret: bool = False

    def __repr__(self) -> str:
        return f"Field({self.name!r}, {'<hidden>' if self.secret else repr(self.value)})"


@dataclass(frozen=True, slots=True)
class CodeReading:
    """A code as read. `fields` are those that could be decoded, in the order of the code, faults or not.

    `parts` holds one reading per device where one text carries several (Matter `*`), else it is empty.
    """

    kind: Kind
    faults: tuple[Remark, ...] = ()
    warnings: tuple[Remark, ...] = ()
    fields: tuple[Field, ...] = ()
    parts: tuple[CodeReading, ...] = ()

    @property
    def ok(self) -> bool:
        """No fault was found. It does not say that the code belongs to the device in hand."""
        return not self.faults

    def value(self, name: str) -> str | int | None:
        """The value of the field called `name`, secret or not; None where the code holds no such field."""
        return next((field.value for field in self.fields if field.name == name), None)


def shown(reading: CodeReading, *, reveal: bool = False) -> dict[str, object]:
    """The reading as a JSON-able dict, for page, paper and command line alike.

    Unless `reveal`, a secret's value is null, and so is any public value (a serial number, say) that
    happens to repeat five or more characters of a secret.
    """
    secrets = () if reveal else tuple(_secrets(reading))
    return _shown(reading, secrets, reveal=reveal)


def _shown(reading: CodeReading, secrets: tuple[str, ...], *, reveal: bool) -> dict[str, object]:
    fields: list[dict[str, object]] = []
    for field in reading.fields:
        hidden = not reveal and (field.secret or _leaks(str(field.value), secrets))
        fields.append(
            {"name": field.name, "value": None if hidden else field.value, "secret": field.secret or hidden}
        )
    return {
        "kind": str(reading.kind),
        "ok": reading.ok,
        "faults": [{"id": fault.id, "says": fault.says} for fault in reading.faults],
        "warnings": [{"id": warning.id, "says": warning.says} for warning in reading.warnings],
        "fields": fields,
        "parts": [_shown(part, secrets, reveal=reveal) for part in reading.parts],
    }


def _secrets(reading: CodeReading) -> Iterator[str]:
    yield from (str(field.value) for field in reading.fields if field.secret)
    for part in reading.parts:
        yield from _secrets(part)


def _leaks(value: str, secrets: Iterable[str]) -> bool:
    runs = {value[start : start + _LEAK] for start in range(len(value) - _LEAK + 1)}
    return any(run in secret for secret in secrets for run in runs)


def unreadable(kind: Kind, text: str) -> CodeReading | None:
    """The reading of a text that is empty or too long to be looked at, or None where it may be read."""
    if len(text) > LONGEST_TEXT:
        says = (
            f"The text has {len(text):,} characters; at most {LONGEST_TEXT:,} are read: "
            "give the code alone, not the page around it."
        )
        return CodeReading(kind, (Remark("too-long", says),))
    if not text.strip():
        return CodeReading(
            kind, (Remark("empty", "Nothing stands here; a code was expected: scan or type it."),)
        )
    return None


def strangers(text: str, allowed: frozenset[str]) -> str | None:
    """Name the characters of `text` that are not `allowed`, with the digit each resembles; None if none.

    Positions count from 1 over the text as given; the first three are named, the rest counted.
    """
    found = [(at, char) for at, char in enumerate(text, start=1) if char not in allowed]
    if not found:
        return None
    named = ", ".join(f"{_called(char)} at position {at}{_hint(char, allowed)}" for at, char in found[:3])
    return named + (f" and {len(found) - 3} more" if len(found) > 3 else "")


def _called(char: str) -> str:
    if char.isspace():
        return "a space or line end"
    return f"“{char}”" if char.isprintable() else f"an unprintable character (U+{ord(char):04X})"


def _hint(char: str, allowed: frozenset[str]) -> str:
    digit = _LOOKS_LIKE.get(char.upper())
    return f" (resembles {digit}: look again)" if digit in allowed else ""
