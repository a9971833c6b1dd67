"""The names of a house as plain JSON values."""

from secondfix.naming.entries import Entry, Names


def names_as_json(names: Names) -> dict[str, object]:
    """``{"devices": [{"device": id, "entries": [...]}]}``, entries in the order of their numbers.

    An entry holds ``entry`` and ``endpoint`` (whole numbers; endpoint null where not known), ``kind``
    (gang, whole_device, place_device), ``name``, ``place``, ``room``, ``duty``, ``load``, ``purpose``,
    ``protocol``, ``address`` (each null where there is none or it is not known), ``stands`` and
    ``explained`` (true or false).
    """
    return {
        "devices": [
            {"device": device_id, "entries": [_entry(e) for e in entries]}
            for device_id, entries in names.of_device.items()
        ]
    }


def _entry(entry: Entry) -> dict[str, object]:
    return {
        "entry": entry.number,
        "endpoint": entry.endpoint,
        "kind": entry.kind.value,
        "name": entry.name,
        "place": entry.place,
        "room": entry.room_id,
        "duty": entry.duty.value if entry.duty else None,
        "load": entry.load_id,
        "purpose": entry.purpose.value if entry.purpose else None,
        "protocol": entry.protocol.value if entry.protocol else None,
        "address": entry.address,
        "stands": entry.stands,
        "explained": entry.explained,
    }
