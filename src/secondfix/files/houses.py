"""A house from a file or from standard input."""

from collections.abc import Mapping
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from secondfix.catalogue import Model
from secondfix.files.whole import read_bytes
from secondfix.house import Fault, House, read_house


def open_house(name: str, models: Mapping[str, Model]) -> House | list[Fault]:
    """The house in file ``name`` (``-`` is standard input), or all of its faults."""
    data = read_bytes(name)
    if isinstance(data, Fault):
        return [data]
    where = "standard input" if name == "-" else name
    house = read_house(data, where=where, models=models)
    if isinstance(house, House) and house.time_zone is not None and not _zone_exists(house.time_zone):
        expected = "a name of the IANA time zone database, such as CET"
        return [Fault(where, "time_zone", f"'{house.time_zone}'", expected)]
    return house


def _zone_exists(name: str) -> bool:
    """The machine's own copy of the database is asked; reading it is why this stands here."""
    try:
        ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return False
    return True
