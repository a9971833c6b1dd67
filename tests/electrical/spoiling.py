"""Sound houses spoilt in one place, and what a rule or the reader says of them."""

from secondfix.house import read_house
from tests.electrical.sound import answers, at, spoilt
from tests.example_house import as_bytes


def outcome(changes: dict[str, object], rule: str, place: str, *, of: str = "iec") -> str | None:
    found = at(answers(spoilt(changes, of=of)), rule, place)
    return found.outcome.value if found else None


def misfits(changes: dict[str, object], *, of: str = "iec") -> list[str]:
    house = read_house(as_bytes(spoilt(changes, of=of)), where="spoilt.json", models={})
    assert isinstance(house, list)
    return [fault.path for fault in house]
