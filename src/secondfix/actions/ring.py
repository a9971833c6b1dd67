"""Ring: may this code be put on the key ring under this reference?"""

import re

from secondfix.joining import CodeReading, read_code

_REFERENCE = re.compile(r"^K[0-9]{2,4}$")


def ready_for_ring(reference: str, text: str, *, address: str | None = None) -> tuple[CodeReading, str]:
    """The reading of the code, and why it may not be kept ('' if it may)."""
    reading = read_code(text, address=address)
    if not _REFERENCE.fullmatch(reference):
        return reading, f"'{reference}'; expected a reference of the form K07"
    if not reading.ok:
        return reading, " ".join(fault.says for fault in reading.faults)
    return reading, ""
