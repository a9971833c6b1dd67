"""What changed between two houses of which one was made from the other by an edit."""

from typing import Any

from secondfix.house.canonical import COLLECTIONS, plain_of, stands
from secondfix.house.document import House
from secondfix.house.editing import plain_field
from secondfix.house.merging import FieldChange, field_changes


def changes_between(before: House, after: House) -> tuple[FieldChange, ...]:
    """`field_changes` of the two documents, without comparing the members that both houses share."""
    return field_changes(_apart(before, after), _apart(after, before))


def _apart(house: House, other: House) -> dict[str, Any]:
    """The document of a house without the members that are the very same in the other one."""
    plain = {}
    for name in House.model_fields:
        if not stands(house, name):
            continue
        if name in COLLECTIONS:
            those = getattr(other, name) or {}
            members = getattr(house, name).items()
            plain[name] = {key: plain_of(part) for key, part in members if part is not those.get(key)}
        else:
            plain[name] = plain_field(house, name, None)
    return plain
