"""The 64-bit address of a device (EUI-64) as lists write it."""

import re

_EUI64 = re.compile(r"^(?:0[xX])?([0-9A-Fa-f]{2}([:\-. ]?)(?:[0-9A-Fa-f]{2}\2){6}[0-9A-Fa-f]{2})$")


def address_of(text: str) -> str | None:
    """Sixteen hex digits in capitals, whatever stood between them; None where the text is no such address."""
    match = _EUI64.match(text.strip())
    return re.sub(r"[^0-9A-Fa-f]", "", match[1]).upper() if match else None
