"""Matter: the QR text, and the manual code of 11 or 21 digits.

Source: the standard body's SDK (project-chip/connectedhomeip, src/setup_payload), read; the print of
manual codes as 4-3-4 is from memory.
"""

from __future__ import annotations

import re
from dataclasses import replace

from .base38 import BASE38, decode_base38
from .matter_data import read_extra
from .reading import DECIMAL, CodeReading, Field, Kind, Remark, strangers, unreadable
from .verhoeff import verhoeff_holds

_PREFIX = "MT:"
_BYTES = 11
_MOST_PARTS = 32
_FLOWS = (
    "standard: open when powered",
    "a user action is needed",
    "custom: see the maker's paper",
    "reserved",
)
_DISCOVERY = ("Wi-Fi access point", "Bluetooth LE", "on the network", "Wi-Fi aware", "NFC", "Thread")
_FORBIDDEN = frozenset([0, 12345678, 87654321, *(11111111 * digit for digit in range(1, 10))])


def passcode_allowed(passcode: int) -> bool:
    """Whether a passcode is 1 to 99999998, no digit eight times, nor 12345678 or 87654321.

    Source: the standard body's SDK, IsValidSetupPIN (read).
    """
    return 1 <= passcode <= 99999998 and passcode not in _FORBIDDEN


def read_matter_qr(text: str) -> CodeReading:
    """Read a `MT:` text: base-38 of 88 bits and optional data; `*` parts several devices.

    Bits from the least: version 3, vendor 16, product 16, flow 2, discovery 8, discriminator 12,
    passcode 27, padding 4. Discovery bits not known are ignored. The text carries **no checksum** (only the
    printed QR does): a warning says so; compare with `agree`.
    """
    if refused := unreadable(Kind.MATTER_QR, text):
        return refused
    body = text.removeprefix(_PREFIX).rstrip("\r\n")
    warnings = (_no_check_digit(),)
    faults: list[Remark] = []
    if not text.startswith(_PREFIX):
        cut = re.match(r"[A-Za-z]{2}:", text)
        body = body[3:] if cut else body
        faults.append(_bad_prefix())
    pieces = body.split("*")
    if len(pieces) > _MOST_PARTS:
        says = (
            f"{len(pieces):,} codes stand in one text; at most {_MOST_PARTS} are read here: give "
            "fewer at a time."
        )
        return CodeReading(Kind.MATTER_QR, (*faults, Remark("too-many-codes", says)), warnings)
    parts = tuple(_payload(piece) for piece in pieces)
    if len(parts) == 1:
        return replace(parts[0], faults=(*faults, *parts[0].faults), warnings=warnings + parts[0].warnings)
    return _several(text, faults, warnings, parts)


def _no_check_digit() -> Remark:
    says = (
        "A Matter QR text has no check digit, so a slip of the hand passes unseen: scan it, never "
        "type it, and compare it with the manual code."
    )
    return Remark("no-check-digit", says)


def _bad_prefix() -> Remark:
    says = (
        "The text does not begin with MT: in capitals, as every Matter QR does: scan it again, "
        "it may be another code."
    )
    return Remark("bad-prefix", says)


def _several(
    text: str, faults: list[Remark], warnings: tuple[Remark, ...], parts: tuple[CodeReading, ...]
) -> CodeReading:
    for at, part in enumerate(parts, start=1):
        faults += [Remark(fault.id, f"Code {at} of {len(parts)}: {fault.says}") for fault in part.faults]
        warnings += tuple(Remark(one.id, f"Code {at} of {len(parts)}: {one.says}") for one in part.warnings)
    count = Field("codes", len(parts))
    fields = (count,) if faults else (Field("code", text.strip(), secret=True), count)
    return CodeReading(Kind.MATTER_QR, tuple(faults), warnings, fields, parts)


def _payload(body: str) -> CodeReading:
    if odd := strangers(body, BASE38):
        says = f"The text after MT: holds {odd}; only 0-9, A-Z, - and . were expected: scan it again."
        return CodeReading(Kind.MATTER_QR, (Remark("bad-character", says),))
    octets = decode_base38(body)
    if isinstance(octets, Remark):
        return CodeReading(Kind.MATTER_QR, (octets,))
    if len(octets) < _BYTES:
        says = f"{len(body)} characters stand after MT:; at least 19 were expected: scan the whole QR again."
        return CodeReading(Kind.MATTER_QR, (Remark("too-short", says),))
    bits = int.from_bytes(octets[:_BYTES], "little")
    faults, warnings, extra = read_extra(octets[_BYTES:])
    fields = (Field("code", _PREFIX + body, secret=True), *_qr_fields(bits), *extra)
    return CodeReading(Kind.MATTER_QR, (*_qr_faults(bits), *faults), tuple(warnings), fields)


def _qr_faults(bits: int) -> list[Remark]:
    faults: list[Remark] = []
    if bits & 7:
        says = (
            f"The version is {bits & 7}; 0 was expected: this code is newer than what is read here, "
            "or misread: scan it again."
        )
        faults.append(Remark("unknown-version", says))
    if bits >> 3 & 0xFFFF and not bits >> 19 & 0xFFFF:
        says = (
            "A vendor is named but the product is 0, which is kept for unnamed vendors: scan the code again."
        )
        faults.append(Remark("bad-product", says))
    if bits >> 35 & 3 == 3:
        says = (
            "The way of joining (flow) is 3, which is reserved; 0 to 2 was expected: scan it again, "
            "or ask the maker."
        )
        faults.append(Remark("reserved-flow", says))
    if bits >> 84:
        says = "The four padding bits are not zero as expected: scan the code again."
        faults.append(Remark("bad-padding", says))
    return faults + _passcode_faults(bits >> 57 & 0x7FFFFFF)


def _passcode_faults(passcode: int) -> list[Remark]:
    if passcode_allowed(passcode):
        return []
    says = (
        "The passcode is one that the standard forbids; 1 to 99,999,998 was expected, no digit repeated "
        "eight times, no plain count up or down: read the code again, else the device itself is at fault."
    )
    return [Remark("invalid-passcode", says)]


def _qr_fields(bits: int) -> tuple[Field, ...]:
    discovery = [name for bit, name in enumerate(_DISCOVERY) if bits >> 37 + bit & 1]
    discriminator = bits >> 45 & 0xFFF
    return (
        Field("version", bits & 7),
        *_maker(bits >> 3 & 0xFFFF, bits >> 19 & 0xFFFF),
        Field("flow", _FLOWS[bits >> 35 & 3]),
        Field("discovery", ", ".join(discovery) or "none known"),
        Field("discovery_bits", bits >> 37 & 0xFF),
        Field("discriminator", discriminator),
        Field("short_discriminator", discriminator >> 8),
        Field("passcode", f"{bits >> 57 & 0x7FFFFFF:08d}", secret=True),
    )


def _maker(vendor: int, product: int) -> tuple[Field, Field]:
    # In hex: the decimal digits stand in the long manual code, which is secret.
    return Field("vendor", f"0x{vendor:04X}"), Field("product", f"0x{product:04X}")


def read_matter_manual(text: str) -> CodeReading:
    """Read a manual code of 11 digits, or 21 with vendor and product; spaces and dashes are ignored.

    Digit 1 = 4 if vendor and product follow, + top 2 bits of the short discriminator; digits 2-6 = its low
    2 bits * 2^14 + passcode bits 0-13; digits 7-10 = passcode bits 14-26; then vendor and product of 5
    digits each; last the Verhoeff check digit.
    """
    if refused := unreadable(Kind.MATTER_MANUAL, text):
        return refused
    if odd := strangers(text, DECIMAL | frozenset(" \t\r\n-")):
        says = f"The manual code holds {odd}; only the digits 0-9 were expected: read the label again."
        return CodeReading(Kind.MATTER_MANUAL, (Remark("bad-character", says),))
    digits = re.sub(r"[\s\-]", "", text)
    if len(digits) not in (11, 21):
        says = f"{len(digits)} digits stand here; 11 or 21 were expected: read the label again."
        return CodeReading(Kind.MATTER_MANUAL, (Remark("bad-length", says),))
    first, middle, high = int(digits[0]), int(digits[1:6]), int(digits[6:10])
    passcode = high << 14 | middle & 0x3FFF
    fields = [
        Field("code", digits, secret=True),
        Field("short_discriminator", (first & 3) << 2 | middle >> 14 & 3),
        Field("passcode", f"{passcode:08d}", secret=True),
    ]
    if len(digits) == 21:
        fields[1:1] = _maker(int(digits[10:15]), int(digits[15:20]))
    faults = _manual_faults(digits)
    return CodeReading(Kind.MATTER_MANUAL, (*faults, *_passcode_faults(passcode)), (), tuple(fields))


def _manual_faults(digits: str) -> list[Remark]:
    faults: list[Remark] = []
    if not verhoeff_holds(digits):
        says = (
            "The check digit does not fit; at least one digit is wrong or two are exchanged: read "
            "the label again."
        )
        faults.append(Remark("bad-check-digit", says))
    if digits[0] in "89":
        says = (
            "The first digit is 8 or 9, kept for newer codes; 0 to 7 was expected: read the label "
            "again, or ask the maker."
        )
        faults.append(Remark("unknown-version", says))
    elif (int(digits[0]) >= 4) != (len(digits) == 21):
        expected = 21 if int(digits[0]) >= 4 else 11
        says = (
            f"{len(digits)} digits stand here but the first digit announces {expected}: read the label again."
        )
        faults.append(Remark("length-flag-mismatch", says))
    limits = [("digits 2 to 6", digits[1:6], 65535), ("digits 7 to 10", digits[6:10], 8191)]
    if len(digits) == 21:
        limits += [("the vendor", digits[10:15], 65535), ("the product", digits[15:20], 65535)]
    for what, value, most in limits:
        if int(value) > most:
            says = f"The number in {what} is above {most:,}, the largest it can be: read the label again."
            faults.append(Remark("field-overflow", says))
    return faults
