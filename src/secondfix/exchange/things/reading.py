"""A thing of the house as texts, and from texts to changes of the document."""

from collections.abc import Callable, Collection, Mapping
from typing import Any

from secondfix.exchange.switch_sheet import SheetRead, Unreadable, text_of, value_of
from secondfix.exchange.things.field import Field, ThingKind
from secondfix.exchange.things.fields import fields_of
from secondfix.house import Change, Fault, House
from secondfix.terms import Known

LONGEST = 12_000  # an outline of 500 corners


def shown_thing(
    house: House, kind: ThingKind, path: str, keys: Collection[str] | None = None
) -> dict[str, str]:
    """The texts of the thing at ``path`` by field; empty for what is not stated, or where nothing stands.

    ``keys`` names the fields that are wanted; None is all of them.
    """
    thing = _at(house, path)
    wanted = (f for f in fields_of(kind, house) if keys is None or f.key in keys)
    return {f.key: text_of(f.cell, _at(thing, f.path), house) for f in wanted}


def thing_changes(
    house: House, kind: ThingKind, path: str, texts: Mapping[str, str], *, known: Known
) -> SheetRead:
    """The changes that texts ask for at ``path``; a field that is not in ``texts`` stays as it is.

    A text as it is shown asks for nothing, an empty one takes out what stands. ``known`` is how a fact
    without a word for it is known. What is only whole together (a position) goes when all of it is empty.
    """
    stands = shown_thing(house, kind, path)
    changes: list[Change] = []
    faults: list[Fault] = []
    for field in fields_of(kind, house):
        text = texts.get(field.key, stands[field.key]).strip()
        if text == stands[field.key].strip():
            continue
        value = _value(field, text, house, known)
        if isinstance(value, Unreadable):
            faults.append(Fault("form", _joined(path, field.path), f"'{text[:60]}'", value.expected))
        else:
            changes.append(Change(_joined(path, field.path), value))
    after = {f.path: texts.get(f.key, stands[f.key]).strip() for f in fields_of(kind, house)}
    return SheetRead(tuple(_whole(path, after, changes)), tuple(faults))


def begun(
    house: House, kind: ThingKind, thing_id: str, texts: Mapping[str, str], *, known: Known
) -> SheetRead:
    """The changes that make a new thing of a collection from texts."""
    path = f"{kind.collection}.{thing_id}"
    read = thing_changes(house, kind, path, texts, known=known)
    return SheetRead((Change(path, {}), *read.changes), read.faults)


def next_id(kind: ThingKind, house: House, used: Callable[[str], Collection[int] | None]) -> str:
    """An id that nothing in the house has, above every number that ``used`` knows for the letter.

    ``used`` answers None where it knows of no other than those that stand. The id is written as those that
    stand are: ``L05`` beside ``L04``, ``L5`` beside ``L4``.
    """
    things = getattr(house, kind.collection)
    own = [key.removeprefix(kind.letter) for key in things if key.startswith(kind.letter)]
    figures = [f for f in own if f.isascii() and f.isdecimal()]
    digits = 2 if any(f.startswith("0") for f in figures) else 1
    number = max([0, *map(int, figures), *(used(kind.letter) or ())]) + 1
    taken = {key for name in _collections(house) for key in getattr(house, name)}
    while (thing_id := f"{kind.letter}{number:0{digits}d}") in taken:
        number += 1
    return thing_id


def _collections(house: House) -> list[str]:
    return [n for n in type(house).model_fields if isinstance(getattr(house, n), dict)]


def _value(field: Field, text: str, house: House, known: Known) -> Any | Unreadable:
    if not text:
        return None
    longest = LONGEST if field.wide else 500
    if len(text) > longest:
        return Unreadable(f"at most {longest:,} characters")
    return value_of(field.cell, text, house, fact=field.fact, known=known)


def _whole(path: str, after: Mapping[str, str], changes: list[Change]) -> list[Change]:
    """Parts of one value that are all empty now take the value out itself."""
    heads = {f.partition(".")[0] for f in after if "." in f}
    gone = {h for h in heads if not any(text for f, text in after.items() if f.startswith(f"{h}."))}
    out: dict[str, Change] = {}
    for change in changes:
        head = change.path.removeprefix(path).removeprefix(".").partition(".")[0]
        at = _joined(path, head) if head in gone else change.path
        out.setdefault(at, Change(at, None) if head in gone else change)
    return list(out.values())


def _joined(path: str, field: str) -> str:
    return f"{path}.{field}" if path else field


def _at(holder: Any, path: str) -> Any:
    """What stands there; None where the way ends before."""
    for step in path.split(".") if path else ():
        if holder is None:
            return None
        holder = holder.get(step) if isinstance(holder, Mapping) else getattr(holder, step, None)
    return holder
