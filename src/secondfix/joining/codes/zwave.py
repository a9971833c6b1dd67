"""Z-Wave: the DSK as typed from a label, and the digits of an S2 / SmartStart QR.

Source: Z-Wave Alliance, Node Provisioning QR Code Format (2021-03-18): layout from memory, confirmed by the
SHA-1 checksum of its published example; the key bits are those of the command class file 2.19.0 (read).
"""

from __future__ import annotations

import hashlib
import re
from dataclasses import replace

from .reading import DECIMAL, CodeReading, Field, Kind, Remark, strangers, unreadable
from .zwave_data import read_data

_LARGEST = 65535
_HEAD = 52
_SPACES = frozenset(" \t\r\n-")
_KEYS = {0: "S2 Unauthenticated", 1: "S2 Authenticated", 2: "S2 Access Control", 7: "S0"}


def read_dsk(text: str, *, again: str | None = None) -> CodeReading:
    """Read a DSK: 8 groups of 5 decimal digits, each a 16-bit number; the first group is the PIN.

    Spaces or dashes between the groups are ignored, and may be left out. A DSK has **no check digit**: give
    the second typing as `again`, else a warning says so. That the DSK is the first 16 bytes of the node's
    public key is from memory.
    """
    if refused := unreadable(Kind.DSK, text):
        return refused
    once = _dsk(text)
    if not once.ok:
        return once
    if again is None:
        says = (
            "A DSK has no check digit, so most slips of the hand pass unseen until joining fails: "
            "scan it, or type it a second time."
        )
        return replace(once, warnings=(Remark("no-check-digit", says),))
    return replace(once, faults=tuple(_second_typing(once, again)))


def _dsk(text: str) -> CodeReading:
    if odd := strangers(text, DECIMAL | _SPACES):
        says = f"The DSK holds {odd}; only the digits 0-9 were expected: read the label again."
        return CodeReading(Kind.DSK, (Remark("not-digits", says),))
    groups = [group for group in re.split(r"[\s\-]+", text) if group]
    if len(groups) == 1 and len(groups[0]) == 40:
        groups = re.findall(".{5}", groups[0])
    faults = tuple(_group_faults(groups))
    fields = () if any(fault.id != "group-overflow" for fault in faults) else _dsk_fields(groups)
    return CodeReading(Kind.DSK, faults, (), fields)


def _group_faults(groups: list[str]) -> list[Remark]:
    faults: list[Remark] = []
    if len(groups) == 1:
        says = (
            f"{len(groups[0])} digits stand in one piece; 40 (8 groups of 5) were expected: read the "
            "label again."
        )
        return [Remark("group-count", says)]
    if len(groups) != 8:
        says = f"{len(groups)} groups stand here; 8 groups of 5 digits were expected: read the label again."
        faults.append(Remark("group-count", says))
    for at, group in enumerate(groups[:16], start=1):
        if len(group) != 5:
            says = f"Group {at} has {len(group)} digits; 5 were expected: read that group again."
            faults.append(Remark("group-format", says))
        elif int(group) > _LARGEST:
            says = f"Group {at} is above 65,535, the largest a group can be: read that group again."
            faults.append(Remark("group-overflow", says))
    return faults


def _dsk_fields(groups: list[str]) -> tuple[Field, ...]:
    return (Field("dsk", "-".join(groups), secret=True), Field("pin", groups[0], secret=True))


def _second_typing(first: CodeReading, again: str) -> list[Remark]:
    second = _dsk(again)
    if not second.ok:
        return [Remark(f"again-{fault.id}", f"Second typing: {fault.says}") for fault in second.faults]
    pairs = zip(str(first.value("dsk")).split("-"), str(second.value("dsk")).split("-"), strict=True)
    differ = [str(at) for at, (one, other) in enumerate(pairs, start=1) if one != other]
    if not differ:
        return []
    where = "group " + differ[0] if len(differ) == 1 else "groups " + ", ".join(differ)
    says = (
        f"The two typings differ in {where}; they were expected to be the same: read the label again there."
    )
    return [Remark("typed-differently", says)]


def read_zwave_qr(text: str) -> CodeReading:
    """Read the digits of an S2 (version 00) or SmartStart (version 01) QR.

    Layout: `90`, version 2, checksum 5 (first 2 bytes of SHA-1 over the digits after it), requested keys 3
    (0 to 255), DSK 40, then TLVs. The version lies before the checksum: that one digit is not covered,
    so 00 is warned of. Left out: the home id that a SmartStart node advertises.
    """
    if refused := unreadable(Kind.ZWAVE_QR, text):
        return refused
    if odd := strangers(text, DECIMAL | _SPACES):
        says = f"The QR text holds {odd}; only the digits 0-9 were expected: scan it again."
        return CodeReading(Kind.ZWAVE_QR, (Remark("not-digits", says),))
    digits = re.sub(r"[\s\-]", "", text)
    if len(digits) < _HEAD:
        says = (
            f"{len(digits)} digits stand here; at least {_HEAD} were expected (90 is usual): scan the "
            "whole QR again."
        )
        return CodeReading(Kind.ZWAVE_QR, (Remark("too-short", says),))
    groups = re.findall(".{5}", digits[12:_HEAD])
    data_faults, data_fields = read_data(digits[_HEAD:])
    overflows = [Remark("field-overflow", f"DSK: {fault.says}") for fault in _group_faults(groups)]
    faults = (*_head_faults(digits), *overflows, *data_faults)
    head = (
        Field("code", digits, secret=True),
        Field(
            "version", "SmartStart" if digits[2:4] == "01" else "S2" if digits[2:4] == "00" else "not known"
        ),
        Field("requested_keys", _requested(int(digits[9:12]))),
    )
    return CodeReading(
        Kind.ZWAVE_QR, faults, _qr_warnings(digits), (*head, *_dsk_fields(groups), *data_fields)
    )


def _head_faults(digits: str) -> list[Remark]:
    faults: list[Remark] = []
    if not digits.startswith("90"):
        says = (
            "The text does not begin with 90, as every Z-Wave QR does: scan it again, it may be another code."
        )
        faults.append(Remark("bad-lead-in", says))
    if digits[2:4] not in ("00", "01"):
        says = f"The version is {digits[2:4]}; 00 or 01 was expected: scan it again, or ask the maker."
        faults.append(Remark("unknown-version", says))
    if int(digits[4:9]) > _LARGEST:
        says = "The checksum field is above 65,535, the largest it can be: scan the QR again."
        faults.append(Remark("field-overflow", says))
    elif int(digits[4:9]) != int.from_bytes(_sha1(digits[9:])[:2], "big"):
        says = (
            "The checksum does not fit the digits after it; at least one is wrong or missing: scan "
            "the whole QR again."
        )
        faults.append(Remark("bad-checksum", says))
    if int(digits[9:12]) > 255:
        says = f"The requested keys are {digits[9:12]}; at most 255 was expected: scan the QR again."
        faults.append(Remark("field-overflow", says))
    return faults


def _sha1(digits: str) -> bytes:
    return hashlib.sha1(digits.encode("ascii"), usedforsecurity=False).digest()


def _qr_warnings(digits: str) -> tuple[Remark, ...]:
    if digits[2:4] != "00":
        return ()
    says = (
        "Version 00 is for S2 with a person at the controller, not for SmartStart, and the checksum "
        "does not cover it: compare it with the label, include the device by hand."
    )
    return (Remark("not-smartstart", says),)


def _requested(mask: int) -> str:
    names = [_KEYS.get(bit, f"bit {bit} (not known)") for bit in range(8) if mask >> bit & 1]
    return ", ".join(names) or "none"
