"""Two people's changes to one document, put together field by field; and what changed between two states."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

from secondfix.house.shape import shown

Side = Literal["theirs", "mine"]


@dataclass(frozen=True, slots=True)
class FieldConflict:
    """One field that two people changed to different values; None is an absent value."""

    path: str
    base: Any
    theirs: Any
    mine: Any


@dataclass(frozen=True, slots=True)
class Merged:
    """What came of it: where ``conflicts`` are, ``document`` has their value, and neither is decided."""

    document: dict[str, Any]
    conflicts: tuple[FieldConflict, ...]


@dataclass(frozen=True, slots=True)
class FieldChange:
    """One field that differs between two states; None is an absent value."""

    path: str
    before: Any
    after: Any

    def __str__(self) -> str:
        if self.before is None:
            return f"{self.path}: {_in_words(self.after)} added"
        if self.after is None:
            return f"{self.path}: {_in_words(self.before)} removed"
        return f"{self.path}: {_in_words(self.before)} → {_in_words(self.after)}"


def merge_documents(
    base: Mapping[str, Any],
    theirs: Mapping[str, Any],
    mine: Mapping[str, Any],
    choices: Mapping[str, Side] | None = None,
) -> Merged:
    """``theirs`` and ``mine``, both made from ``base``, in one plain document.

    A field that one of the two changed is taken from that one; a field that both changed alike is
    taken once; a field that both changed apart, or that one removed and the other changed, is a conflict
    until ``choices`` names a side for its path. Members of a collection are known by their ids. A surveyed
    value goes whole with how it is known, a choice of an assumption with its range, a copy of an edition with
    all that it says, and a list is one value: half of one and half of the other would be what nobody
    stated. A member that both added under one id and that is not the same is a conflict. ``null`` is absent,
    as in the format. What comes out may still break a rule of the format: the caller reads it again.
    """
    found: list[FieldConflict] = []
    document = _merge("", (dict(base), dict(theirs), dict(mine)), choices or {}, found)
    return Merged(document, tuple(found))


def field_changes(before: Mapping[str, Any], after: Mapping[str, Any]) -> tuple[FieldChange, ...]:
    """Every field that differs, in the order of ``before``, then what is new; something new is one change."""
    found: list[FieldChange] = []
    _differ("", dict(before), dict(after), found)
    return tuple(found)


def _merge(
    path: str,
    states: tuple[Any, Any, Any],
    choices: Mapping[str, Side],
    found: list[FieldConflict],
) -> Any:
    base, theirs, mine = states
    if _same(theirs, mine) or _same(base, mine):
        return theirs
    if _same(base, theirs):
        return mine
    if _by_fields(path, states):
        inside = {}
        for key in dict.fromkeys((*(theirs or {}), *(mine or {}))):
            inner = ((base or {}).get(key), (theirs or {}).get(key), (mine or {}).get(key))
            value = _merge(_at(path, key), inner, choices, found)
            if value is not None:
                inside[key] = value
        gone = theirs is None or mine is None
        return None if gone and not inside else inside
    chosen = choices.get(path)
    if chosen is None:
        found.append(FieldConflict(path, base, theirs, mine))
    return mine if chosen == "mine" else theirs


def _apart(path: str, value: Any) -> bool:
    """Whether the fields of ``value`` are taken one by one: an object, and not one statement."""
    edition = path.startswith("models.")
    return isinstance(value, dict) and "value" not in value and not edition


def _by_fields(path: str, states: tuple[Any, Any, Any]) -> bool:
    """Whether three states are taken field by field.

    An absent collection is one without members, so that taking out the last one is no more than that. A
    group that both began (a position) is put together; a thing with an id that both began is not.
    """
    stand = [state for state in states if state is not None]
    if not all(_apart(path, state) for state in stand):
        return False
    if all(_is_id(key) for state in stand for key in state) and any(stand):
        return True
    begun = states[0] is not None or not _is_id(path.rpartition(".")[2])
    return begun and states[1] is not None and states[2] is not None


def _is_id(key: str) -> bool:
    return not key[:1].islower() or "@" in key


def _differ(path: str, before: Any, after: Any, found: list[FieldChange]) -> None:
    if _same(before, after):
        return
    if _apart(path, before) and _apart(path, after):
        for key in dict.fromkeys((*before, *after)):
            _differ(_at(path, key), before.get(key), after.get(key), found)
    else:
        found.append(FieldChange(path, before, after))


def _same(one: Any, other: Any) -> bool:
    """Equality as JSON has it: 1 is not true, the order of keys says nothing, null is absent."""
    if one is other:
        return True
    if isinstance(one, dict) and isinstance(other, dict):
        if one.keys() == other.keys():
            for key, value in one.items():  # noqa: SIM110 - a generator takes twice as long, and all values are asked
                if not _same(value, other[key]):
                    return False
            return True
        keys = {k for d in (one, other) for k, v in d.items() if v is not None}
        return all(_same(one.get(k), other.get(k)) for k in keys)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(_same, one, other))
    return type(one) is type(other) and bool(one == other)


def _at(path: str, key: str) -> str:
    return f"{path}.{key}" if path else key


def _in_words(value: Any) -> str:
    if isinstance(value, dict) and set(value) == {"value", "known"}:
        return f"{shown(value['value'])} ({str(value['known']).replace('_', ' ')})"
    if isinstance(value, dict) and isinstance(value.get("name"), str):
        return f"'{value['name']}'"
    return shown(value)
