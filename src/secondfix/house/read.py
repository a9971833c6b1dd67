"""Read a house from the bytes of its file: the house, or all of its faults at once."""

from collections.abc import Mapping
from typing import Any

from secondfix.catalogue import Model
from secondfix.house.canonical import in_order
from secondfix.house.document import House
from secondfix.house.faults import Fault
from secondfix.house.references import reference_faults
from secondfix.house.shape import shape_faults
from secondfix.house.text import LARGEST_FILE_BYTES, parse

__all__ = ["LARGEST_FILE_BYTES", "MOST_FAULTS", "read_house", "read_plain"]

MOST_FAULTS = 200


def read_house(data: bytes, *, where: str, models: Mapping[str, Model]) -> House | list[Fault]:
    """The house, or its faults: every one of the deepest stage reached, in the order of the document.

    Stages: text (UTF-8, JSON, no key twice, size and depth), shape (keys, types, ranges), references
    (ids, what feeds what, geometry). ``where`` is the name to print, ``models`` the editions at hand;
    those that the house uses and does not yet hold are embedded in the result. Pure: the caller reads
    the file. The caller caps what it prints at ``MOST_FAULTS``.
    """
    plain, faults = parse(data, where=where)
    return faults or read_plain(plain, where=where, models=models)


def read_plain(plain: Any, *, where: str, models: Mapping[str, Model]) -> House | list[Fault]:
    """The same from a plain value that came out of JSON; parts of a house that was read may stand in it."""
    house = shape_faults(plain, where=where)
    if isinstance(house, list):
        return house
    house = with_models(house, models)
    return reference_faults(house, where=where) or house


def with_models(house: House, models: Mapping[str, Model]) -> House:
    """The house with a copy of each edition that it uses and does not yet hold."""
    used = sorted({d.model for d in house.devices.values() if d.model})
    missing: dict[str, Any] = {key: models[key] for key in used if key not in house.models and key in models}
    return house.model_copy(update={"models": in_order({**house.models, **missing})}) if missing else house
