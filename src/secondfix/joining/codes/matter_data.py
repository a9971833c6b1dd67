"""The optional data at the end of a Matter QR: one structure in the standard's own tag-length-value form.

Source: tags, the standard body's SDK (project-chip/connectedhomeip, src/setup_payload), read; the bytes
of the TLV form are from memory.
"""

from __future__ import annotations

from dataclasses import dataclass

from .reading import Field, Remark

_STRUCTURE, _END = 0x15, 0x18
_CONTAINERS = (0x15, 0x16, 0x17)
_TAG_BYTES = (0, 1, 2, 4, 2, 4, 6, 8)
_NAMES = {0: "serial_number", 1: "iterations", 2: "salt", 3: "number_of_devices", 4: "joining_time_s"}
_LONGEST_SHOWN = 64


@dataclass(frozen=True, slots=True)
class _Element:
    tag: int | None  # the number of a context tag; None for any other form of tag
    type: int
    value: int | bytes
    end: int


class _BrokenError(Exception):
    """The data cannot be read further; carries the fault's id and sentence."""


def read_extra(octets: bytes) -> tuple[list[Remark], list[Remark], list[Field]]:
    """Faults, warnings and fields of the data after the fixed part; nothing at all where it is empty.

    The salt is kept secret. Tags of 0x80 and above are the vendor's own: counted, not shown. What lies
    inside nested containers is passed over.
    """
    if not octets:
        return [], [], []
    if octets[0] != _STRUCTURE:
        says = (
            "The data after the fixed part does not begin as a structure, as was expected: scan the QR again."
        )
        return [Remark("bad-tlv", says)], [], []
    try:
        elements, end = _top_level(octets)
    except _BrokenError as broken:
        return [Remark(*broken.args)], [], []
    warnings = []
    if any(octets[end:]):
        says = (
            "More data stands after the end of the code's own data and was left unread: scan the QR "
            "again if joining fails."
        )
        warnings.append(Remark("trailing-data", says))
    return [], warnings, _fields(elements)


def _top_level(octets: bytes) -> tuple[list[_Element], int]:
    elements: list[_Element] = []
    depth, at = 1, 1
    while depth:
        element = _element(octets, at)
        at = element.end
        if element.type == _END:
            depth -= 1
            continue
        if depth == 1:
            elements.append(element)
        if element.type in _CONTAINERS:
            depth += 1
    return elements, at


def _element(octets: bytes, at: int) -> _Element:
    control = _take(octets, at, 1)[0]
    form, kind = control >> 5, control & 0x1F
    tag = _take(octets, at + 1, _TAG_BYTES[form])
    at += 1 + len(tag)
    number = tag[0] if form == 1 else None
    if kind <= 0x07:
        value = _take(octets, at, 1 << (kind & 3))
        return _Element(number, kind, int.from_bytes(value, "little", signed=kind < 4), at + len(value))
    if kind in (0x0A, 0x0B):
        value = _take(octets, at, 4 if kind == 0x0A else 8)
        return _Element(number, kind, value, at + len(value))
    if 0x0C <= kind <= 0x13:
        size = _take(octets, at, 1 << (kind & 3))
        value = _take(octets, at + len(size), int.from_bytes(size, "little"))
        return _Element(number, kind, value, at + len(size) + len(value))
    if kind > _END:
        says = "The data after the fixed part holds a kind of value that is not known: scan the QR again."
        raise _BrokenError("bad-tlv", says)
    return _Element(number, kind, b"", at)


def _take(octets: bytes, at: int, count: int) -> bytes:
    if at + count > len(octets):
        says = (
            "The data after the fixed part stops in the middle of an item; it was expected whole: "
            "scan the QR again."
        )
        raise _BrokenError("truncated-tlv", says)
    return octets[at : at + count]


def _fields(elements: list[_Element]) -> list[Field]:
    fields = [
        Field(_NAMES[element.tag], _text(element), secret=element.tag == 2)
        for element in elements
        if element.tag in _NAMES
    ]
    others = sum(element.tag not in _NAMES for element in elements)
    return [*fields, Field("other_items", others)] if others else fields


def _text(element: _Element) -> str | int:
    if isinstance(element.value, int):
        return element.value
    if 0x0C <= element.type <= 0x0F:
        text = element.value.decode("utf-8", "replace")[:_LONGEST_SHOWN]
        return "".join(char if char.isprintable() else "\N{REPLACEMENT CHARACTER}" for char in text)
    return element.value.hex() or "none"
