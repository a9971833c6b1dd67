"""Ring: may this code be put on the key ring under this reference, and what does a reference open?"""

import re

from secondfix.house import Schedule
from secondfix.joining import CodeReading, read_code
from secondfix.journal import Fitted, Journal

_REFERENCE = re.compile(r"^K[0-9]{2,4}$")


def ready_for_ring(reference: str, text: str, *, address: str | None = None) -> tuple[CodeReading, str]:
    """The reading of the code, and why it may not be kept ('' if it may)."""
    reading = read_code(text, address=address)
    if not _REFERENCE.fullmatch(reference):
        return reading, f"'{reference}'; expected a reference of the form K07"
    if not reading.ok:
        return reading, " ".join(fault.says for fault in reading.faults)
    return reading, ""


def opened_by(rows: Schedule, journal: Journal | None = None) -> dict[str, str]:
    """Every reference that the house or its journal uses, and what its code opens, in words.

    A reference that the journal alone has is told by its entry: what was fitted, and who wrote it down.
    """
    house = rows.house
    opens = {n.key_ref: f"network {n.name}" for n in house.networks.values() if n.key_ref}
    for device_id, device in house.devices.items():
        if device.code_ref:
            model = rows.model_of(device_id)
            what = f"{device_id} {model.title if model else 'model not known'}"
            opens[device.code_ref] = f"{what}, {rows.place_of_device(device_id)}"
    for entry in journal or ():
        if isinstance(entry, Fitted) and entry.code_ref:
            device_id = entry.subject.partition(":")[2]
            opens.setdefault(entry.code_ref, f"{device_id} as {entry.writer} fitted it, {entry.at[:10]}")
    return opens
