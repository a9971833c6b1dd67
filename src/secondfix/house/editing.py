"""Edits of a document: set or take out what stands at a path, the rest untouched."""

import json
from collections.abc import Iterable, Mapping, Sequence
from itertools import islice
from typing import Any

from pydantic import BaseModel

from secondfix.catalogue import Model
from secondfix.house.canonical import COLLECTIONS, in_order, plain_of, put_in_order, stands
from secondfix.house.changes import Change, apply, steps_of
from secondfix.house.document import House
from secondfix.house.faults import Fault
from secondfix.house.read import read_house, with_models
from secondfix.house.references import reference_faults
from secondfix.house.shape import shape_faults
from secondfix.house.text import parse

MOST_CHANGES = 20_000
LARGEST_QUICK_BYTES = 1024 * 1024  # a change of more than this is read with the whole document


def edited(house: House, changes: Iterable[Change], *, models: Mapping[str, Model]) -> House | list[Fault]:
    """The house with every change made in the order given, or all faults of it; ``house`` stays as it is.

    Objects on the way that do not stand yet are made; a list takes a new member at its end
    (``rules[2]`` where two stand). A path that cannot be walked is a fault and names itself. What is not
    named is shared with ``house``, not made again; ids stand in natural order wherever something changed.
    """
    all_of_them = tuple(islice(changes, MOST_CHANGES + 1))
    if len(all_of_them) > MOST_CHANGES:
        return [Fault("edit", "", f"more than {MOST_CHANGES:,} changes", f"at most {MOST_CHANGES:,}")]
    quick = _by_members(house, all_of_them, models)
    return edited_whole(house, all_of_them, models=models) if quick is None else quick


def edited_whole(
    house: House, changes: Iterable[Change], *, models: Mapping[str, Model]
) -> House | list[Fault]:
    """The same by writing the whole document anew and reading it: slow, and tells every fault."""
    plain = plain_of(house)
    told = [apply(plain, change) for change in changes]
    faults = [fault for fault in told if fault is not None]
    if faults:
        return faults
    put_in_order(plain)
    data = json.dumps(plain, ensure_ascii=False).encode()
    return read_house(data, where="edit", models=models)


def _by_members(house: House, changes: Sequence[Change], models: Mapping[str, Model]) -> House | None:
    """The house where only the members that the changes name are validated; None where anything is amiss."""
    touched = _touched(changes)
    if touched is None:
        return None
    plain = {name: plain_field(house, name, ids) for name, ids in touched.items() if stands(house, name)}
    if any(apply(plain, change) is not None for change in changes):
        return None
    data = json.dumps(plain, ensure_ascii=False).encode()
    read, faults = parse(data, where="edit")
    if faults or len(data) > LARGEST_QUICK_BYTES:
        return None
    put_in_order(read)
    stand = {name: getattr(house, name) for name in House.model_fields if stands(house, name)}
    for name, ids in touched.items():
        stand[name] = _put_together(stand.get(name), read.get(name), ids)
    made = shape_faults({name: value for name, value in stand.items() if value is not None}, where="edit")
    if isinstance(made, list):
        return None
    made = with_models(made, models)
    return None if reference_faults(made, where="edit") else made


def _touched(changes: Sequence[Change]) -> dict[str, set[str] | None] | None:
    """By field of the house, the members that are named, or None where the field is named as a whole."""
    touched: dict[str, set[str] | None] = {}
    for change in changes:
        steps = steps_of(change.path)
        if steps is None or not isinstance(steps[0], str) or steps[0] not in House.model_fields:
            return None
        name, member = steps[0], steps[1] if len(steps) > 1 else None
        named = touched.setdefault(name, set())
        if name not in COLLECTIONS or not isinstance(member, str):
            touched[name] = None
        elif named is not None:
            named.add(member)
    return touched


def plain_field(house: House, name: str, ids: set[str] | None) -> Any:
    """One field of the house as plain values, with the members that are named or with all."""
    value = getattr(house, name)
    if name in COLLECTIONS:
        return {key: plain_of(part) for key, part in value.items() if ids is None or key in ids}
    return plain_of(value) if isinstance(value, BaseModel) else value


def _put_together(stood: Any, changed: Any, ids: set[str] | None) -> Any:
    """The field again: members that were not named as they stood."""
    if ids is None or changed is None:
        return changed
    members = {key: part for key, part in (stood or {}).items() if key not in ids} | changed
    return in_order(members)
