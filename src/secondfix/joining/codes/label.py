"""A label read as free text: an address of 16 hex digits and an install code of 36 whose CRC holds.

What stands around the two on a label is the maker's habit (from memory, no public text), so nothing around
them is interpreted. Short install codes are not searched for: in free text they cannot be told from an
address.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from .address import read_eui64
from .reading import CodeReading, Kind, Remark, unreadable
from .zigbee import crc_holds, read_install_code

_EDGE = r"(?<![0-9A-Za-z])"
_END = r"(?![0-9A-Za-z])"
# In pairs or fours with one kind of separator throughout, or bare; overlapping finds are wanted.
_CODE = re.compile(
    rf"{_EDGE}(?=([0-9A-Fa-f]{{4}}(?:([ :\-]?)[0-9A-Fa-f]{{4}})(?:\2[0-9A-Fa-f]{{4}}){{7}}){_END})"
)
_CODE_PAIRS = re.compile(
    rf"{_EDGE}(?=([0-9A-Fa-f]{{2}}([ :\-])[0-9A-Fa-f]{{2}}(?:\2[0-9A-Fa-f]{{2}}){{16}}){_END})"
)
_ADDRESS = re.compile(
    rf"{_EDGE}(?:0[xX])?([0-9A-Fa-f]{{4}}([ :\-.]?)[0-9A-Fa-f]{{4}}(?:\2[0-9A-Fa-f]{{4}}){{2}}){_END}"
)
_ADDRESS_PAIRS = re.compile(
    rf"{_EDGE}([0-9A-Fa-f]{{2}}([ :\-.])[0-9A-Fa-f]{{2}}(?:\2[0-9A-Fa-f]{{2}}){{6}}){_END}"
)


@dataclass(frozen=True, slots=True, repr=False)
class Found:
    """What a text holds: different addresses, codes whose CRC holds, and codes whose CRC does not."""

    addresses: tuple[str, ...]
    codes: tuple[str, ...]
    broken: tuple[str, ...]


def search(text: str) -> Found:
    """Find addresses and install codes in `text`, each once, in upper-case bare hex."""
    spans = [match.span(1) for pattern in (_CODE, _CODE_PAIRS) for match in pattern.finditer(text)]
    whole = [span for span in spans if crc_holds(_bare(text, span))]
    broken = [span for span in spans if span not in whole and not _overlaps(span, whole)]
    found = (match.span(1) for pattern in (_ADDRESS, _ADDRESS_PAIRS) for match in pattern.finditer(text))
    codes = whole + broken
    addresses = [span for span in found if not _overlaps(span, codes) and not _cut_out(text, span, codes)]
    return Found(_once(text, addresses), _once(text, whole), _once(text, broken))


def read_label(text: str, *, address: str | None = None) -> CodeReading:
    """Read the one address and the one install code on a label; more than one of either is a fault.

    An `address` given apart is used where the label holds none, and must agree where it holds one.
    """
    if refused := unreadable(Kind.LABEL, text):
        return refused
    found = search(text)
    faults = (*_faults(found), *_other_address(found, address))
    address = found.addresses[0] if len(found.addresses) == 1 else address
    if len(found.codes) == 1:
        read = read_install_code(found.codes[0], address=address)
        return replace(read, kind=Kind.LABEL, faults=faults + read.faults)
    if address is None:
        return CodeReading(Kind.LABEL, faults)
    read = read_eui64(address)
    return replace(read, kind=Kind.LABEL, faults=faults + read.faults)


def _faults(found: Found) -> list[Remark]:
    faults: list[Remark] = []
    for what, each in (("address", found.addresses), ("code", found.codes)):
        if len(each) > 1:
            says = (
                f"The text holds {len(each)} different values for the {what}; one was expected: give "
                "one label at a time."
            )
            faults.append(Remark(f"more-than-one-{what}", says))
    if not found.codes and found.broken:
        says = (
            "36 hex digits stand there but their CRC does not hold; at least one digit is wrong: "
            "read the label again."
        )
        faults.append(Remark("bad-crc", says))
    elif not found.codes:
        says = (
            "No install code (36 hex digits in one piece) stands in the text; one was expected: copy "
            "the whole label."
        )
        faults.append(Remark("code-missing", says))
    return faults


def _cut_out(text: str, span: tuple[int, int], codes: list[tuple[int, int]]) -> bool:
    """Whether the row of groups goes on beside `span`: then it is a piece of a longer, misread code."""
    between = re.search(r"[^0-9A-Fa-f]", text[slice(*span)])
    if between is None:
        return False
    reach = between.start() + 1
    before, after = (max(span[0] - reach, 0), span[0]), (span[1], span[1] + reach)
    beside = ((before, text[slice(*before)][::-1]), (after, text[slice(*after)]))
    # A group of hex, a pair partly hex, or four with a digit in it; a word such as CODE is none of them.
    partly = "0-9" if reach > 3 else "0-9A-Fa-f"
    group = rf"{re.escape(between[0])}(?:[0-9A-Fa-f]*|(?=[^{partly}]*[{partly}])[0-9A-Za-z]*)"
    return any(
        len(row) == reach and re.fullmatch(group, row) and not _overlaps(where, codes)
        for where, row in beside
    )


def _other_address(found: Found, address: str | None) -> list[Remark]:
    given = None if address is None else read_eui64(address).value("address")
    if given is None or not found.addresses or str(given).replace(":", "").upper() in found.addresses:
        return []
    says = (
        "The address on the label is not the one given beside it; the same was expected: check which "
        "device this label is from."
    )
    return [Remark("address-differs", says)]


def _bare(text: str, span: tuple[int, int]) -> str:
    return re.sub(r"[^0-9A-Fa-f]", "", text[slice(*span)]).upper()


def _once(text: str, spans: list[tuple[int, int]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(_bare(text, span) for span in sorted(spans)))


def _overlaps(span: tuple[int, int], others: list[tuple[int, int]]) -> bool:
    return any(span[0] < end and start < span[1] for start, end in others)
