"""EUI-64: the address of a Zigbee (IEEE 802.15.4) device as printed on its label."""

from __future__ import annotations

import re

from .reading import HEX, CodeReading, Field, Kind, Remark, strangers, unreadable

_SEPARATORS = re.compile(r"[\s:.\-]+")
_ALLOWED = HEX | frozenset(" \t\r\n:.-")


def read_eui64(text: str) -> CodeReading:
    """Read 16 hex digits, most significant octet first; spaces, `:`, `-`, `.` and a leading `0x` are ignored.

    Source: IEEE RA, Guidelines for use of EUI, OUI and CID, 2017 (first octet: bit 0 individual/group, bit 1
    universal/local; FF-FE in the middle marks a stretched 48-bit address), read. That all zeros and
    all ones name no device is from memory. The order on air (least significant octet first) was
    confirmed on captures.

    Left out: no registry of prefixes is carried, so the maker is not named (the prefix is often the
    radio chip's maker anyway) and a reversed address can only be suspected. The universal/local bit
    is never inverted: RFC 4291 appendix A does that for IPv6 identifiers alone.
    """
    if refused := unreadable(Kind.EUI64, text):
        return refused
    bare = re.sub(r"^(\s*)0[xX]", r"\1  ", text)  # blanks keep the positions named in a fault
    if odd := strangers(bare, _ALLOWED):
        says = f"The address holds {odd}; only 0-9 and A-F were expected: read the label again."
        return CodeReading(Kind.EUI64, (Remark("not-hex", says),))
    digits = _SEPARATORS.sub("", bare).lower()
    if len(digits) != 16:
        return CodeReading(Kind.EUI64, (_length_fault(bare, digits),))
    octets = bytes.fromhex(digits)
    return CodeReading(Kind.EUI64, tuple(_faults(octets)), tuple(_warnings(octets)), _fields(octets))


def _length_fault(bare: str, digits: str) -> Remark:
    if len(digits) == 12:
        says = (
            "12 hex digits stand here, a 48-bit address of another radio or cable port; 16 were expected: "
            "look for the longer number on the label, do not stretch this one."
        )
        return Remark("48-bit-address", says)
    if len(digits) not in (15, 17):
        says = f"{len(digits)} hex digits stand here; 16 were expected: read the label again."
        return Remark("bad-length", says)
    groups = [group for group in _SEPARATORS.split(bare) if group]
    uneven = [at for at, group in enumerate(groups, start=1) if len(group) % 2]
    where = f" in group {uneven[0]}" if len(groups) > 1 and len(uneven) == 1 else ""
    if len(digits) == 15:
        says = f"15 hex digits stand here; 16 were expected: one is missing{where}, read the label again."
        return Remark("digit-missing", says)
    says = f"17 hex digits stand here; 16 were expected: one is too many{where}, read the label again."
    return Remark("digit-too-many", says)


def _faults(octets: bytes) -> list[Remark]:
    if octets == bytes(8):
        says = "The address is all zeros, which means 'not known'; a device's own address was expected."
        return [Remark("all-zeros", f"{says[:-1]}: read the label again.")]
    if octets == b"\xff" * 8:
        says = "The address is all ones, which means 'any device'; a device's own address was expected."
        return [Remark("all-ones", f"{says[:-1]}: read the label again.")]
    if octets[0] & 1:
        turned = (
            f" If it was copied from a capture its order may be reversed: {_printed(octets[::-1])}?"
            if not octets[7] & 1
            else ""
        )
        says = (
            "The first octet is odd, which marks a group of devices; the address of one device was "
            f"expected: read the label again.{turned}"
        )
        return [Remark("group-address", says)]
    return []


def _warnings(octets: bytes) -> list[Remark]:
    warnings: list[Remark] = []
    if octets[0] & 2 and not octets[0] & 1:
        says = (
            "The address is marked as made up locally, not given out to a maker; labels seldom "
            "carry one: compare it with the label, in the right order."
        )
        warnings.append(Remark("locally-administered", says))
    if octets[3:5] == b"\xfe\xff":
        says = (
            "FE-FF stands in the middle where FF-FE is usual, so the order may be reversed "
            f"({_printed(octets[::-1])}): compare it with the label."
        )
        warnings.append(Remark("maybe-reversed", says))
    return warnings


def _fields(octets: bytes) -> tuple[Field, ...]:
    form = "48-bit address stretched (FF-FE)" if octets[3:5] == b"\xff\xfe" else "64-bit"
    return (
        Field("address", _printed(octets)),
        Field("on_air", _printed(octets[::-1])),
        Field("prefix", octets[:3].hex("-").upper()),
        Field("form", form),
    )


def _printed(octets: bytes) -> str:
    # Separated by colons also so that no public address can share a long run with a secret in bare hex.
    return octets.hex(":")
