"""Which houses of the register a person means."""

from collections.abc import Iterable

from secondfix.store import door


def found(rows: Iterable[door.HouseRow], words: str) -> list[door.HouseRow]:
    """Those whose name, stage or latest writer holds every word, in any order and any case."""
    wanted = words.casefold().split()
    return [
        r for r in rows if all(w in f"{r.name} {spoken(r.stage)} {r.changed_by}".casefold() for w in wanted)
    ]


def spoken(stage: str) -> str:
    """A stage in words."""
    return str(door.Stage(stage).label)
