"""Entries of a journal in words, and their clocks as printed: they never decide."""

from collections.abc import Callable, Mapping
from typing import Any

from secondfix.house import House, is_nec
from secondfix.journal import (
    KINDS,
    AirHeard,
    Entry,
    Fitted,
    FunctionTested,
    Joined,
    Measured,
    Subject,
    subject_of,
)
from secondfix.papers.places import thing_words
from secondfix.papers.record.record import Record
from secondfix.papers.words import sentence
from secondfix.terms import PURPOSES, feet_inches

_UNITS = {"mm": " mm", "mw": " mW", "ma": " mA", "us": " µs", "permille": " ‰", "v": " V", "a": " A"}
_ANSWER_WORDS = {"changed": "changed", "on": "went on", "off": "went off"}


def clock_words(at: str) -> str:
    """``2031-05-06 09:40 +02:00``: the writer's own clock, as it was printed."""
    day, _, rest = at.partition("T")
    for mark in "Z+-":
        time, found, offset = rest.partition(mark)
        if found:
            return f"{day} {time} {'UTC' if mark == 'Z' else mark + offset}"
    return f"{day} {rest}"


def answered_words(house: House, answered: Mapping[str, str], also: str) -> str:
    """``L20 walls, Parlour changed``; what stands in no book in its writer's words; or nothing."""
    told = [f"{thing_words(house, load)} {_ANSWER_WORDS[how]}" for load, how in answered.items()]
    return "; ".join([*told, *([also] if also else [])]) or "nothing"


def subject_words(house: House, subject: Subject) -> str:
    """The thing that an entry speaks of: ``B08.2``, ``D34 entry 1``, ``L20 walls, Parlour``."""
    if subject.kind == "entry":
        return f"{subject.owner} {'whole device' if subject.part == '0' else f'entry {subject.part}'}"
    if subject.kind in {"gang", "device", "box", "link"}:
        return subject.id
    return "the house" if subject.kind == "house" else thing_words(house, subject.id)


def deed_words(record: Record, entry: Entry) -> str:
    """What was done or found, one sentence without its subject."""
    say = _SAYINGS.get(entry.kind)
    said = say(record, entry).removesuffix(": ") if say else entry.kind.replace("_", " ")
    said = said.rstrip(".")
    return f"{said}. {sentence(entry.note)}" if entry.note else f"{said}."


def _fitted(record: Record, entry: Entry) -> str:
    assert isinstance(entry, Fitted)
    model = record.house.models.get(entry.model or "") or record.built.revision.models.get(entry.model or "")
    what = model.title if model else entry.model or "as the revision has it"
    stand = f"box {entry.box}" if entry.box else f"place {entry.place}" if entry.place else ""
    parts = [
        f"fitted: {what}",
        stand,
        f"mount {', '.join(entry.mounts)}" if entry.mounts else "",
        f"gangs {', '.join(entry.gangs)}" if entry.gangs else "",
        f"code {entry.code_ref}" if entry.code_ref else "",
        f"in the place of {entry.replaces}" if entry.replaces else "",
    ]
    return ", ".join(p for p in parts if p)


def _joined(record: Record, entry: Entry) -> str:
    assert isinstance(entry, Joined)
    parts = [
        f"joined {thing_words(record.house, entry.network)}",
        f"address {entry.address}" if entry.address else "address not written down",
        f"node {entry.node}" if entry.node is not None else "",
        f"entries {entry.entries}" if entry.entries is not None else "",
    ]
    return ", ".join(p for p in parts if p)


def _corrected(record: Record, entry: Entry) -> str:
    plain = entry.model_dump(mode="json")
    field, found = str(plain["path"]).rpartition(".")[2], plain["found"]
    stem, _, unit = field.rpartition("_")
    shown = _UNITS.get(unit, "") if stem else ""
    words = (stem if shown else field).replace("_", " ")
    whole = isinstance(found, dict) and set(found) == {"value", "known"}
    value, known = (found["value"], f" ({found['known'].replace('_', ' ')})") if whole else (found, "")
    inches = (
        f" ({feet_inches(value)})" if unit == "mm" and isinstance(value, int) and is_nec(record.house) else ""
    )
    return f"survey corrected: {words} found {_value(value)}{shown}{inches}{known}"


def _value(found: Any) -> str:
    """A value of the document in words."""
    if isinstance(found, dict):
        return ", ".join(f"{k.replace('_', ' ')} {_value(v)}" for k, v in found.items()) or "nothing"
    if isinstance(found, list):
        return ", ".join(_value(v) for v in found) or "nothing"
    if isinstance(found, bool):
        return "yes" if found else "no"
    return "not known any more" if found is None else str(found).replace("_", " ")


def _tested(record: Record, entry: Entry) -> str:
    assert isinstance(entry, FunctionTested)
    return f"tested: {answered_words(record.house, entry.answered, entry.also_answered)}"


def _plainly(words: str) -> Callable[[Record, Entry], str]:
    """Words with the entry's own keys in them."""

    def say(_record: Record, entry: Entry) -> str:
        return words.format(**entry.model_dump(mode="json"))

    return say


def _measured(_record: Record, entry: Entry) -> str:
    assert isinstance(entry, Measured)
    if entry.table:
        heard = sum(not row.not_heard for row in entry.table)
        in_vain = f", {len(entry.table) - heard} not heard" if heard < len(entry.table) else ""
        return f"measured: {heard} links heard{in_vain}"
    if entry.not_heard:
        return "measured: not heard"
    parts = [
        f"{entry.rssi_dbm} dBm" if entry.rssi_dbm is not None else "",
        f"LQI {entry.lqi}" if entry.lqi is not None else "",
    ]
    return f"measured: {', '.join(p for p in parts if p)}"


def _heard(_record: Record, entry: Entry) -> str:
    assert isinstance(entry, AirHeard)
    loudest = max(entry.transmitters, key=lambda one: one.level_dbm, default=None)
    if loudest is None:
        return "channel survey: nobody heard"
    return (
        f"channel survey: {len(entry.transmitters)} heard, the loudest on {loudest.kind} channel "
        f"{loudest.channel} with {loudest.level_dbm} dBm"
    )


def _adopted(_record: Record, entry: Entry) -> str:
    plain = entry.model_dump(mode="json")
    return f"as-built adopted as {plain['to_revision']}, {len(plain['took_in'])} entries taken in"


def _purpose(_record: Record, entry: Entry) -> str:
    return f"purpose set: {PURPOSES[entry.model_dump(mode='json')['purpose']].label}"


_SAYINGS: dict[str, Callable[[Record, Entry], str]] = {
    "fitted": _fitted,
    "removed": _plainly("removed"),
    "joined": _joined,
    "join_failed": _plainly("did not join {network}"),
    "excluded": _plainly("taken off {network}"),
    "named": _plainly("named '{name}'"),
    "purpose_set": _purpose,
    "survey_corrected": _corrected,
    "skipped": _plainly("skipped, {deed}: {reason}"),
    "function_tested": _tested,
    "measured": _measured,
    "air_heard": _heard,
    "snag_raised": _plainly("snag, {severity}: {words}"),
    "snag_cleared": _plainly("snag cleared: {words}"),
    "withdrawn": _plainly("an entry withdrawn: {reason}"),
    "signed": _plainly("signed by {name}: {paper}"),
    "adopted": _adopted,
}
assert _SAYINGS.keys() == KINDS.keys()


def subject(entry: Entry) -> Subject:
    """The thing that an entry speaks of."""
    return subject_of(entry.subject)
