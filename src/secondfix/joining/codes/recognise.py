"""Which kind of code a text is, and the one door through which any of them is read."""

from __future__ import annotations

import re
from dataclasses import replace

from .address import read_eui64
from .label import read_label, search
from .matter import read_matter_manual, read_matter_qr
from .reading import DECIMAL, HEX, CodeReading, Kind, Remark, unreadable
from .zigbee import crc_holds, read_install_code
from .zwave import read_dsk, read_zwave_qr

_MATTER = re.compile(r"\s*(?:[Mm][Tt]:|(?![0-9A-F]{2}:[0-9A-F]*$)[A-Z]{2}:[0-9A-Z.\-*]{15,}\s*$)")
_FIVES = re.compile(r"\w{4,6}(?:[- ]\w{4,6}){5,9}$", re.ASCII)
_READERS = {
    Kind.DSK: read_dsk,
    Kind.ZWAVE_QR: read_zwave_qr,
    Kind.MATTER_QR: read_matter_qr,
    Kind.MATTER_MANUAL: read_matter_manual,
    Kind.EUI64: read_eui64,
}


def read_code(text: str, *, address: str | None = None, kind: Kind | str | None = None) -> CodeReading:
    """Read any onboarding code; `kind` says which one it is, else it is recognised by its shape.

    `address` is the device's IEEE address as text, wanted beside a Zigbee install code alone. Every fault in
    the text is returned in the reading; an unknown `kind` is the caller's fault: ValueError.
    """
    wanted = Kind(kind) if kind is not None else recognise(text)
    if refused := unreadable(wanted, text):
        return refused
    if wanted is Kind.INSTALL_CODE:
        return _sixteen(text, read_install_code(text, address=address), told=kind is not None)
    if wanted is Kind.LABEL:
        return read_label(text, address=address)
    reader = _READERS.get(wanted)
    read = reader(text) if reader else CodeReading(wanted, (_not_recognised(),))
    if address is None:
        return read
    says = (
        "The address given beside the code was not used; only a Zigbee install code needs one: leave it out."
    )
    return replace(read, warnings=(*read.warnings, Remark("address-not-used", says)))


def recognise(text: str) -> Kind:
    """The kind that `text` looks like, a few misread characters allowed for; by shape alone, our own rules.

    16 hex digits are an install code where their CRC holds (by chance, 1 address in 65536), else an EUI-64.
    """
    if unreadable(Kind.NOT_RECOGNISED, text):
        return Kind.NOT_RECOGNISED
    if _MATTER.match(text):
        return Kind.MATTER_QR
    bare = re.sub(r"^0[xX]", "", text.strip())
    packed = re.sub(r"[\s:.\-]", "", bare)
    found = search(text)
    if found.addresses and found.codes:
        return Kind.LABEL
    if kind := _decimal(bare, packed):
        return kind
    named = found.addresses + found.codes + found.broken
    rest = sum(char in HEX for char in text) - sum(map(len, named))
    if (
        named and not set(packed) <= HEX and rest < 16
    ):  # words around it, not a longer code with a misread digit
        return Kind.LABEL
    return _hex(packed) or (Kind.LABEL if named else Kind.NOT_RECOGNISED)


def _share(text: str, allowed: frozenset[str]) -> float:
    return sum(char in allowed for char in text) / max(len(text), 1)


def _decimal(bare: str, packed: str) -> Kind | None:
    share, count = _share(packed, DECIMAL), len(packed)
    if ":" in bare or share < 0.7 or (share < 0.9 and count not in (11, 21)) or _is_install_code(packed):
        return None
    if count > 44 or (count >= 34 and packed.startswith("90") and not _FIVES.match(bare)):
        return Kind.ZWAVE_QR
    if count >= 30 or _FIVES.match(bare):
        return Kind.DSK
    if count in (16, 17) or (share < 1 and count not in (11, 21)):
        return None
    return Kind.MATTER_MANUAL


def _hex(packed: str) -> Kind | None:
    if _is_install_code(packed):
        return Kind.INSTALL_CODE
    if _share(packed, HEX) < 0.85 or not 11 <= len(packed) <= 44:
        return None
    return Kind.EUI64 if len(packed) <= 18 else Kind.INSTALL_CODE


def _is_install_code(packed: str) -> bool:
    return len(packed) in (16, 20, 28, 36) and set(packed) <= HEX and crc_holds(packed)


def _sixteen(text: str, read: CodeReading, *, told: bool) -> CodeReading:
    if told or len(re.sub(r"[\s:.\-]", "", text)) != 16:
        return read
    says = (
        "16 hex digits can be a short install code or an address; this one was taken for a code "
        "because its CRC holds: say which it is."
    )
    return replace(read, warnings=(*read.warnings, Remark("could-be-address", says)))


def _not_recognised() -> Remark:
    says = (
        "The text is no code that is known here; a Zigbee install code, Z-Wave DSK or QR digits, Matter QR "
        "or manual code, IEEE address or label was expected: scan or type it again, or say which kind it is."
    )
    return Remark("not-recognised", says)
