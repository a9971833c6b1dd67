"""What an edit leaves as it was: which questions of a check still have the answers of the check before.

Fields are named ``<collection>.<field>``, of gangs and mounts ``gangs.…`` and ``mounts.…``; a collection
alone where a member came, went or moved in its order; other fields of the house by their own name.
"""

from collections.abc import Iterator, Mapping
from enum import StrEnum

from secondfix.house import House, Part


class Question(StrEnum):
    """The parts of a check, the search for paths that radio begins with, and the order of joining."""

    PATHS = "paths"
    ELECTRICAL = "electrical"
    RADIO = "radio"
    NAMING = "naming"
    SCENES = "scenes"
    JOINING = "joining"
    WALK = "walk"


def _of(collection: str, fields: str) -> set[str]:
    return {f"{collection}.{field}" for field in fields.split()}


_REMARKS = {
    *("note", "outside_uses", "boxes.note", "gangs.note", "loads.note", "devices.note", "boxes.cables"),
}
_INSIDE_A_BOX = {
    *_of("boxes", "depth_mm set_back_mm earthed zone volume_mm3 conductors loops grounds clamps fittings"),
    *_of("boxes", "two_supplies_label"),
    *_of("mounts", "largest_awg neutral_through"),
}
_SHEATHS = _of("boxes", "shell plate finish")
_POWER_OF_LOADS = {
    *_of("loads", "power_mw count power_factor_permille inrush_peak_ma inrush_width_us transformer_va"),
    *_of("loads", "transformer_least_mw bypass_nf continuous permanent_supply also_kinds to_be_dimmed"),
}
_ELECTRIC_OF_LOADS = {
    *_POWER_OF_LOADS,
    *_of("loads", "after_power_loss multiway reversing other_direction"),
}
_LINES = {"gangs.line", "mounts.neutral", "loads.neutral"}

UNREAD: Mapping[Question, frozenset[str]] = {
    Question.PATHS: frozenset(
        {
            *(_REMARKS | _INSIDE_A_BOX | _SHEATHS | _LINES),
            *("loads", "scenes", "circuits", "naming", "models", "name"),
            *_of("gangs", "duty load extends mount"),
            *_of("devices", "model name network gangs mounts outputs address code_ref after_power_loss"),
            *_of("networks", "name protocol channel transmit_power_dbm sensitivity_dbm key_ref"),
        }
    ),
    Question.ELECTRICAL: frozenset(
        {*_REMARKS, "scenes", "naming", "boxes.finish", "boxes.position", "loads.tags", "devices.address"}
    ),
    Question.RADIO: frozenset(
        {
            *(_REMARKS | _INSIDE_A_BOX | _LINES),
            *("loads", "scenes", "naming", "gangs.duty", "gangs.load", "gangs.extends"),
            *_of("devices", "address code_ref after_power_loss"),
        }
    ),
    Question.NAMING: frozenset(
        {
            *(_REMARKS | _INSIDE_A_BOX | _SHEATHS | _LINES | _ELECTRIC_OF_LOADS),
            *("boxes.position", "loads.place", "loads.kind", "loads.tags"),
        }
    ),
    Question.SCENES: frozenset(
        {
            *(_REMARKS | _INSIDE_A_BOX | _SHEATHS | _LINES | _ELECTRIC_OF_LOADS),
            *("boxes.position", "loads.place", "devices.address", "devices.code_ref"),
        }
    ),
    Question.JOINING: frozenset(
        {*(_REMARKS | _INSIDE_A_BOX | _ELECTRIC_OF_LOADS), "scenes", "naming", "loads.tags", "loads.kind"}
    ),
    Question.WALK: frozenset({*(_REMARKS | _INSIDE_A_BOX | _POWER_OF_LOADS), "loads.tags"}),
}
"""What a question surely never reads, a collection alone with all its fields. Anything else may matter."""

_WHOLE = {"assumptions", "models"}
_NESTED = {"boxes.gangs": "gangs", "boxes.mounts": "mounts"}


def holding(before: House, after: House) -> frozenset[Question]:
    """The questions whose answers for ``before`` are those for ``after``, the same assumptions given."""
    changed = set(changed_fields(before, after))
    return frozenset(q for q in Question if not any(may_read(q, field) for field in changed))


def may_read(question: Question, field: str) -> bool:
    """Whether the answers of a question may hang on a field."""
    unread = UNREAD[question]
    return field not in unread and field.partition(".")[0] not in unread


def changed_fields(before: House, after: House) -> Iterator[str]:
    """Every field that is not as it was, some more than once. What both houses share is not looked into."""
    for name in House.model_fields:
        old, new = getattr(before, name), getattr(after, name)
        if not _same(old, new):
            yield from [name] if name in _WHOLE or not isinstance(old, dict) else _members(name, old, new)


def _members(name: str, old: Mapping[str, Part], new: Mapping[str, Part]) -> Iterator[str]:
    """Fields of members that both have; the collection itself where they are others, or in another order."""
    if list(old) != list(new):
        yield name
    for key in old.keys() & new.keys():
        if old[key] is not new[key]:
            yield from _fields(name, old[key], new[key])


def _fields(name: str, old: Part, new: Part) -> Iterator[str]:
    for field in type(old).model_fields:
        was, now = getattr(old, field), getattr(new, field)
        if not _same(was, now):
            at = f"{name}.{field}"
            yield from _members(_NESTED[at], was, now) if at in _NESTED else [at]


def _same(old: object, new: object) -> bool:
    """Equal, the order of ids too."""
    return old is new or (old == new and (not isinstance(old, dict) or _in_one_order(old, new)))


def _in_one_order(old: object, new: object) -> bool:
    return isinstance(old, dict) and isinstance(new, dict) and list(old) == list(new)
