"""Zigbee install codes: their check, the link key made from them, and the keys derived from that.

Sources: Zigbee specification 05-3474 annex B.6 and C, Base Device Behavior 16-02828 section 10.1, both as
quoted in chip vendors' manuals (secondary); the results were confirmed on frames of a real capture.
"""

from __future__ import annotations

import re

from .address import read_eui64
from .reading import HEX, CodeReading, Field, Kind, Remark, strangers, unreadable

_BLOCK = 16
_FULL_LENGTH = 36
_LENGTHS = (16, 20, 28, _FULL_LENGTH)
_ALLOWED = HEX | frozenset(" \t\r\n:-")
_LOOK_AGAIN = "read the label again (8 and B, 0 and D are easily taken for each other)"


def crc16_x25(message: bytes) -> int:
    """CRC-16/X-25, 0 to 65535: polynomial 0x1021 reflected (0x8408), start and final xor 0xFFFF.

    Source: chip vendors' install-code manuals (secondary); the check value of "123456789" is 0x906E.
    """
    crc = 0xFFFF
    for octet in message:
        crc ^= octet
        for _ in range(8):
            crc = (crc >> 1) ^ 0x8408 if crc & 1 else crc >> 1
    return crc ^ 0xFFFF


def aes_mmo(message: bytes) -> bytes:
    """The 16-byte Matyas-Meyer-Oseas hash over AES-128 (Zigbee specification annex B.6, secondary).

    H(0) = 0, H(i) = AES(key H(i-1), block i) xor block i; padding is one 1 bit, zeros, and the length in bits
    as 16 bits. Legal range: under 2^16 bits; the padding of longer messages is left out: ValueError.
    """
    bits = len(message) * 8
    if bits >= 1 << 16:
        raise ValueError(f"{bits} bits to hash; under 65536 were expected")
    zeros = -(len(message) + 3) % _BLOCK
    padded = message + b"\x80" + bytes(zeros) + bits.to_bytes(2, "big")
    digest = bytes(_BLOCK)
    for start in range(0, len(padded), _BLOCK):
        block = padded[start : start + _BLOCK]
        digest = _xor(_encrypt(digest, block), block)
    return digest


def hmac_mmo(key: bytes, message: bytes) -> bytes:
    """The keyed hash HMAC (RFC 2104) over AES-MMO with a key of 16 bytes, else ValueError (annex B.1.4, from
    memory).

    Message 0x00 gives the key-transport key of a link key, 0x02 its key-load key, 0x03 the hash that
    Verify-Key carries; all three confirmed on frames of a real capture.
    """
    if len(key) != _BLOCK:
        raise ValueError(f"key of {len(key)} bytes; {_BLOCK} were expected")
    inner = aes_mmo(_xor(key, b"\x36" * _BLOCK) + message)
    return aes_mmo(_xor(key, b"\x5c" * _BLOCK) + inner)


def _encrypt(key: bytes, block: bytes) -> bytes:
    # Imported here so that reading every other kind of code stays light.
    from cryptography.hazmat.primitives.ciphers import Cipher, algorithms, modes  # noqa: PLC0415

    # One block under a key used once: the hash is built on bare AES, no cipher mode is meant.
    encryptor = Cipher(algorithms.AES(key), modes.ECB()).encryptor()  # noqa: S305
    return encryptor.update(block) + encryptor.finalize()


def _xor(left: bytes, right: bytes) -> bytes:
    return bytes(a ^ b for a, b in zip(left, right, strict=True))


def read_install_code(text: str, *, address: str | None = None) -> CodeReading:
    """Read an install code: 6, 8, 12 or 16 bytes in hex, then CRC-16/X-25 of 2 bytes, low byte first.

    Spaces, `-`, `:` and case are ignored. The link key is AES-MMO over the code with its CRC. Zigbee
    3.0 wants 16 + 2 bytes; shorter codes are read with a warning. The trust centre needs the device's
    address beside the code: give it as `address` to have it read too.
    """
    if refused := unreadable(Kind.INSTALL_CODE, text):
        return refused
    extra_faults, extra_warnings, extra_fields = _address_parts(address)
    if odd := strangers(text, _ALLOWED):
        says = f"The install code holds {odd}; only 0-9 and A-F were expected: read the label again."
        fault = Remark("not-hex", says)
        return CodeReading(Kind.INSTALL_CODE, (fault, *extra_faults), extra_warnings, extra_fields)
    digits = re.sub(r"[\s:\-]", "", text).upper()
    faults = tuple(_faults(digits))
    fields = [Field("code", digits, secret=True)]
    if not faults:
        fields.append(Field("link_key", aes_mmo(bytes.fromhex(digits)).hex().upper(), secret=True))
    warnings = extra_warnings if faults else _short(digits) + extra_warnings
    return CodeReading(Kind.INSTALL_CODE, faults + extra_faults, warnings, (*fields, *extra_fields))


def crc_holds(digits: str) -> bool:
    """Whether `digits`, an even number of hex digits, end in the CRC of what stands before."""
    octets = bytes.fromhex(digits)
    return crc16_x25(octets[:-2]) == int.from_bytes(octets[-2:], "little")


def _faults(digits: str) -> list[Remark]:
    if len(digits) % 2:
        says = (
            f"{len(digits)} hex digits stand here, an odd number; {_FULL_LENGTH} were expected: "
            "one is missing or doubled, read the label again."
        )
        return [Remark("odd-digits", says)]
    if len(digits) not in _LENGTHS:
        cut = ": the last four, the CRC, seem to be left off" if len(digits) in (12, 24, 32) else ""
        says = (
            f"{len(digits)} hex digits stand here{cut}; {_FULL_LENGTH} were expected "
            "(16, 20 or 28 for older meters' codes): copy the whole code."
        )
        return [Remark("bad-length", says)]
    if crc_holds(digits):
        return []
    if crc_holds(digits[:-4] + digits[-2:] + digits[-4:-2]):
        says = (
            "The last four digits are the right CRC with its two bytes exchanged; low byte first was "
            "expected: check the label, and give the code as the maker prints it."
        )
        return [Remark("crc-byte-order", says)]
    says = (
        "The last four digits, the CRC, do not fit the digits before; at least one digit is wrong: "
        f"{_LOOK_AGAIN}."
    )
    return [Remark("bad-crc", says)]


def _short(digits: str) -> tuple[Remark, ...]:
    if len(digits) == _FULL_LENGTH:
        return ()
    says = (
        f"The code is whole but short ({len(digits)} digits); Zigbee 3.0 wants {_FULL_LENGTH}: "
        "the network may refuse it, ask the maker for the full code."
    )
    return (Remark("short-code", says),)


def _address_parts(address: str | None) -> tuple[tuple[Remark, ...], tuple[Remark, ...], tuple[Field, ...]]:
    if address is None:
        says = (
            "No address was given; the trust centre needs it beside the code: note the 16 hex digits "
            "on the label."
        )
        return (), (Remark("address-missing", says),), ()
    read = read_eui64(address)
    faults = tuple(Remark(f"address-{fault.id}", f"Address: {fault.says}") for fault in read.faults)
    warnings = tuple(Remark(f"address-{one.id}", f"Address: {one.says}") for one in read.warnings)
    return faults, warnings, tuple(field for field in read.fields if field.name == "address")
