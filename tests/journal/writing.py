"""Writing entries in tests: short, numbered, by invented people."""

from typing import Any

from secondfix.house import House, uuid7
from secondfix.journal import Entry, Journal, journal_of, new_entry
from tests.example_house import house as example

HOUSE = example()
FIT_D31: dict[str, Any] = {
    "model": "corvell-pair@1",
    "box": "B1",
    "mounts": ["1"],
    "gangs": ["1", "2"],
    "replaces": "D01",
    "takes_over": {"1": 2, "2": 1},
}


def entry_id(number: int) -> str:
    """A UUIDv7 for each small number, in their order."""
    return uuid7(unix_ms=1_900_000_000_000 + number, random=number.to_bytes(10, "big"))


def plain(number: int, kind: str, subject: str, **fields: Any) -> dict[str, Any]:
    """The object of an entry; ``sees`` may name others by number."""
    sees = [entry_id(s) if isinstance(s, int) else s for s in fields.pop("sees", ())]
    named = {k: entry_id(v) for k, v in fields.items() if k in {"of", "clears"} and isinstance(v, int)}
    return {
        "format": 1,
        "id": entry_id(number),
        "house": HOUSE.id,
        "revision": "A",
        "kind": kind,
        "subject": subject,
        "writer": "Ilka",
        "at": "2031-05-06T09:40+02:00",
        "sees": sees,
        **fields,
        **named,
    }


def write(number: int, kind: str, subject: str, **fields: Any) -> Entry:
    """The entry; an AssertionError shows the fault if it is none."""
    entry = new_entry(plain(number, kind, subject, **fields), where="test")
    assert isinstance(entry, Entry), str(entry)
    return entry


def found(value: object, known: str = "measured") -> dict[str, object]:
    """A surveyed value."""
    return {"value": value, "known": known}


def journal(*entries: Entry) -> Journal:
    """The journal of these."""
    return journal_of(entries)


def changed(house: House, **fields: Any) -> House:
    """A house with other fields, unchecked."""
    return house.model_copy(update=fields)
