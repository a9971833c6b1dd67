"""How the as-built house differs from its revision, in words."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from secondfix.house import House, Part, is_nec
from secondfix.journal.entry import Entry
from secondfix.terms import KIND_LABELS, KNOWN_LABELS, POWER_LOSS_LABELS, PURPOSES, Known, printed_mm

_NOUNS = {
    "storeys": "Storey", "rooms": "Room", "walls": "Wall", "doors": "Door", "windows": "Window",
    "circuits": "Circuit", "boxes": "Wall box", "places": "Place", "loads": "Load",
    "networks": "Network", "devices": "Device", "scenes": "Scene", "outside_uses": "Outside use",
}  # fmt: skip
_UNITS = ("mm", "mm3", "mw", "ma", "us", "permille", "s", "a", "dbm", "pct")
_SHOWN = {
    "mm3": "mm³", "mw": "mW", "ma": "mA", "us": "µs", "permille": "‰", "a": "A", "dbm": "dBm", "pct": "%",
}  # fmt: skip
_MM3_OF_IN3 = 16_387.064  # exact, by the inch of 25.4 mm
_LABELS: dict[str, Mapping[str, str]] = {
    # A place's kind has no label of its own: its word is read as it stands.
    "kind": {k.value: label for k, label in KIND_LABELS.items()},
    "purpose": {p: policy.label for p, policy in PURPOSES.items()},
    "after_power_loss": {p.value: label for p, label in POWER_LOSS_LABELS.items()},
    "duty": {},
}


@dataclass(frozen=True, slots=True)
class Difference:
    """``place`` the id of the thing (``B07.2`` for a gang), ``field`` its key (empty: the whole thing);
    ``designed`` and ``found`` in words; ``says`` one sentence; ``entries`` the ids that say so."""

    place: str
    field: str
    designed: str
    found: str
    says: str
    entries: tuple[str, ...]


Plain = dict[str, Any]


@dataclass(frozen=True, slots=True)
class _At:
    """A thing of the document: what it is called, its path, its id, who touched what, in which measures."""

    noun: str
    path: str
    place: str
    by: Mapping[str, list[Entry]]
    nec: bool


def differences(revision: House, found: House, by: Mapping[str, list[Entry]]) -> tuple[Difference, ...]:
    """Every difference, in the order of the document. ``by`` gives paths the entries that touched them."""
    nec = is_nec(found)
    out: list[Difference] = []
    for collection, noun in _NOUNS.items():
        old, new = getattr(revision, collection), getattr(found, collection)
        for key in _keys(old, new):
            if old.get(key) is not new.get(key):  # what both share does not differ
                at = _At(noun, f"{collection}.{key}", key, by, nec)
                out += _of_object(at, _plain(old.get(key)), _plain(new.get(key)))
    return tuple(out)


def _plain(part: Part | None) -> Plain | None:
    return None if part is None else part.model_dump(mode="json")


def _keys(old: Mapping[str, object], new: Mapping[str, object]) -> list[str]:
    return [*old, *(key for key in new if key not in old)]


def _of_object(at: _At, old: Plain | None, new: Plain | None) -> list[Difference]:
    if old == new:
        return []
    whole = old or new or {}
    label = f"{at.noun} {at.place}" + (f" ({whole['name']})" if whole.get("name") else "")
    if old is None:
        words = _summary(new or {}, nec=at.nec)
        says = f"{label} is not in the revision; found{f': {words}' if words else ''}."
        return [Difference(at.place, "", "", words, says, _who(at))]
    if new is None:
        return [
            Difference(at.place, "", _summary(old, nec=at.nec), "", f"{label} no longer stands.", _who(at))
        ]
    return _of_fields(at, label, old, new)


def _of_fields(at: _At, label: str, old: Plain, new: Plain) -> list[Difference]:
    out: list[Difference] = []
    for field in old:
        if old[field] == new[field]:
            continue
        if field in {"mounts", "gangs"} and isinstance(old[field], dict):
            noun = field.removesuffix("s").capitalize()
            for n in _keys(old[field], new[field]):
                inner = _At(noun, f"{at.path}.{field}.{n}", f"{at.place}.{n}", at.by, at.nec)
                out += _of_object(inner, old[field].get(n), new[field].get(n))
        elif field not in {"load", "extends"} or "duty" not in old:
            out.append(_of_field(at, label, field, _pair(field, old, new, nec=at.nec)))
    if "duty" in old and old["duty"] == new["duty"] and _duty(old) != _duty(new):
        out.append(_of_field(at, label, "duty", (_duty(old), _duty(new))))
    return out


def _of_field(at: _At, label: str, field: str, pair: tuple[str, str]) -> Difference:
    designed, found = pair
    says = f"{label}, {_words(field)}: the revision says {designed}; found {found}."
    return Difference(at.place, field, designed, found, says, _who(at, f"{at.path}.{field}"))


def _pair(field: str, old: Plain, new: Plain, *, nec: bool) -> tuple[str, str]:
    if field == "duty":
        return _duty(old), _duty(new)
    if isinstance(old[field], list) and isinstance(new[field], list):
        lost = [x for x in old[field] if x not in new[field]]
        more = [x for x in new[field] if x not in old[field]]
        if lost or more:
            return _listed(lost, field, nec=nec), _listed(more, field, nec=nec)
    return _shown(old[field], field, nec=nec), _shown(new[field], field, nec=nec)


def _duty(gang: Plain) -> str:
    return " ".join([gang["duty"].replace("_", " "), *(gang[k] for k in ("load", "extends") if gang[k])])


def _words(field: str) -> str:
    head, _, unit = field.rpartition("_")
    return (head if unit in _UNITS and head else field).replace("_", " ")


def _shown(value: Any, field: str, *, nec: bool) -> str:
    if isinstance(value, dict) and set(value) == {"value", "known"}:
        return f"{_shown(value['value'], field, nec=nec)} ({KNOWN_LABELS[Known(value['known'])]})"
    if value is None or value == "":
        return "nothing"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, dict):
        inner = value and all(isinstance(v, dict) for v in value.values())
        return (", ".join(value) if inner else _summary(value, nec=nec)) or "nothing"
    if isinstance(value, list):
        return _listed(value, field, nec=nec)
    if isinstance(value, str) and field in _LABELS:
        return _LABELS[field].get(value, value.replace("_", " "))
    unit = field.rpartition("_")[2] if "_" in field else ""
    if nec and isinstance(value, int) and unit == "mm":
        return printed_mm(value, nec=nec)
    if nec and isinstance(value, int) and unit == "mm3":
        return f"{value / _MM3_OF_IN3:.1f} in³"
    tail = f" {_SHOWN.get(unit, unit)}" if isinstance(value, int) and unit in _UNITS else ""
    return f"{value}{tail}"


def _listed(values: list[Any], field: str, *, nec: bool) -> str:
    return ", ".join(_shown(v, field, nec=nec) for v in values) or "nothing"


def _summary(whole: Plain, *, nec: bool) -> str:
    """What a thing states, key by key; its name stands in its label."""
    stated = {k: v for k, v in whole.items() if k != "name" and v not in (None, "", [], {})}
    return ", ".join(f"{_words(k)} {_shown(v, k, nec=nec)}" for k, v in stated.items())


def _who(at: _At, field: str = "") -> tuple[str, ...]:
    """The entries that touched the field if it was touched by itself, else those at or about the path."""
    found = at.by.get(field) or [
        e for path, entries in at.by.items() if f"{at.path}.".startswith(f"{path}.") for e in entries
    ]
    return tuple(sorted({e.id for e in found}))
