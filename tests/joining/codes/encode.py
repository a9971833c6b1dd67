"""Codes made the other way round: encoders that share nothing with the readers they test."""

import hashlib
import string

from hypothesis import strategies as st
from stdnum import verhoeff

FORBIDDEN = {0, 12345678, 87654321, *(int(str(digit) * 8) for digit in range(1, 10))}
ALPHABET = string.digits + string.ascii_uppercase + "-."


def install_code(random: bytes) -> str:
    table = [_row(index) for index in range(256)]
    crc = 0xFFFF
    for octet in random:
        crc = (crc >> 8) ^ table[(crc ^ octet) & 0xFF]
    return (random + (crc ^ 0xFFFF).to_bytes(2, "little")).hex().upper()


def _row(index: int) -> int:
    reflected = int(f"{index:08b}"[::-1], 2) << 8
    for _ in range(8):
        reflected = (reflected << 1 ^ 0x1021 if reflected & 0x8000 else reflected << 1) & 0xFFFF
    return int(f"{reflected:016b}"[::-1], 2)


def dsk(key: bytes) -> str:
    return "-".join(f"{high * 256 + low:05d}" for high, low in zip(key[::2], key[1::2], strict=True))


def zwave_qr(key: bytes, *, version: int = 1, keys: int = 3, data: str = "") -> str:
    rest = f"{keys:03d}{dsk(key).replace('-', '')}{data}"
    digest = hashlib.sha1(rest.encode()).digest()
    return f"90{version:02d}{digest[0] * 256 + digest[1]:05d}{rest}"


def item(kind: int, value: str, *, critical: bool = False) -> str:
    return f"{kind * 2 + critical:02d}{len(value):02d}{value}"


def base38(octets: bytes) -> str:
    text = ""
    for chunk in (octets[at : at + 3] for at in range(0, len(octets), 3)):
        number = int.from_bytes(chunk, "little")
        for _ in range({3: 5, 2: 4, 1: 2}[len(chunk)]):
            number, digit = divmod(number, 38)
            text += ALPHABET[digit]
    return text


def matter_payload(
    vendor: int = 0xFFF1,
    product: int = 0x8001,
    *,
    flow: int = 0,
    discovery: int = 2,
    discriminator: int = 2748,
    passcode: int = 31415927,
    version: int = 0,
    padding: int = 0,
    data: bytes = b"",
) -> str:
    """The text after `MT:`."""
    fields = [(version, 3), (vendor, 16), (product, 16), (flow, 2), (discovery, 8), (discriminator, 12)]
    fields += [(passcode, 27), (padding, 4)]
    bits = "".join(f"{value:0{width}b}" for value, width in reversed(fields))
    return base38(int(bits, 2).to_bytes(11, "little") + data)


def manual_code(short: int, passcode: int, maker: tuple[int, int] | None = None) -> str:
    body = (
        f"{short // 4 + (4 if maker else 0)}{short % 4 * 16384 + passcode % 16384:05d}{passcode // 16384:04d}"
    )
    body += f"{maker[0]:05d}{maker[1]:05d}" if maker else ""
    return sealed(body)


def passcodes() -> st.SearchStrategy[int]:
    return st.integers(1, 99999998).filter(lambda passcode: passcode not in FORBIDDEN)


def keys() -> st.SearchStrategy[bytes]:
    return st.binary(min_size=16, max_size=16)


def addresses() -> st.SearchStrategy[bytes]:
    return st.binary(min_size=8, max_size=8).filter(lambda octets: octets != bytes(8) and not octets[0] & 1)


def sealed(body: str) -> str:
    """`body` with its Verhoeff digit."""
    return str(body + verhoeff.calc_check_digit(body))


def texts() -> st.SearchStrategy[str]:
    """Any text at all, and text that nearly is a code."""
    near = st.text("0123456789ABCDEFabcdefMTO:*-. $", max_size=120)
    headed = st.builds("{}{}".format, st.sampled_from(["MT:", "90", "9001", "0x", "IEEE ", ""]), near)
    return st.one_of(st.text(st.characters(), max_size=120), near, headed)
