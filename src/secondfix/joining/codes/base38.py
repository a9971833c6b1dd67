"""Base-38 as Matter uses it: 3 bytes in 5 characters, 2 in 4, 1 in 2, each chunk least significant first.

Source: the standard body's SDK (project-chip/connectedhomeip, src/setup_payload), read.
"""

from __future__ import annotations

from .reading import Remark

_ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-."
BASE38 = frozenset(_ALPHABET)
_BYTES_OF = {5: 3, 4: 2, 2: 1}


def decode_base38(text: str) -> bytes | Remark:
    """The bytes of `text` (characters of `BASE38` alone, else ValueError), or the fault that prevents
    them.
    """
    octets = bytearray()
    for start in range(0, len(text), 5):
        chunk = text[start : start + 5]
        count = _BYTES_OF.get(len(chunk))
        if count is None:
            says = (
                f"{len(text)} characters stand after MT:, a length that no code has: scan the whole QR again."
            )
            return Remark("bad-length", says)
        number = sum(_ALPHABET.index(char) * 38**power for power, char in enumerate(chunk))
        if number >> 8 * count:
            says = (
                f"Characters {start + 1} to {start + len(chunk)} after MT: stand for too large a "
                "number: scan the QR again."
            )
            return Remark("overflow", says)
        octets += number.to_bytes(count, "little")
    return bytes(octets)
