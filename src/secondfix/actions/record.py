"""Record: one entry about what was found or done, as its writer would append it to the journal."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from secondfix.actions.as_built import switched
from secondfix.catalogue import Model
from secondfix.house import Fault, House, schedule
from secondfix.journal import (
    Entry,
    Folded,
    Journal,
    Told,
    as_built,
    fold,
    function_test,
    journal_of,
    latest,
    merge,
    new_entry,
)
from secondfix.scenes import resolve

Plain = dict[str, Any]
AS_IT_SHOULD = "as_it_should"
"""For ``answered``: every load that should answer did, its own way, and no other."""


@dataclass(frozen=True, slots=True)
class Recorded:
    """``entry`` is to be appended; ``told`` is what the as-built house says of it."""

    entry: Entry
    told: tuple[Told, ...]


def own_keys(words: Sequence[str]) -> Plain | Fault:
    """``network=N2``, ``answered.L4=changed``, ``node=7``: a value that is JSON is taken so, else as text."""
    plain: Plain = {}
    for word in words:
        key, equals, text = word.partition("=")
        path = key.split(".") if key != "path" else [key]
        if not equals or not all(path):
            return Fault("KEY=VALUE", "", f"'{word}'", "a key of the kind, '=', and its value")
        here = plain
        for part in path[:-1]:
            here = here.setdefault(part, {})
            if not isinstance(here, dict):
                return Fault("KEY=VALUE", key, "given twice", "each key once")
        if path[-1] in here:
            return Fault("KEY=VALUE", key, "given twice", "each key once")
        here[path[-1]] = _value(text)
    return plain


def _value(text: str) -> Any:
    try:
        return json.loads(text)
    except (ValueError, RecursionError):
        return text


def record(
    house: House,
    journal: Journal,
    head: Plain,
    own: Plain,
    *,
    models: Mapping[str, Model],
    anyway: bool = False,
) -> Recorded | Fault:
    """The entry of this head (id, kind, subject, writer, …) with its own keys, having seen the journal.

    A snag cleared without ``clears`` clears the one that is open on its subject; a withdrawal without ``of``
    withdraws the latest entry there, where there is one alone. A first fault in one line otherwise. An entry
    that the house cannot take is refused as a slip, unless it is to be kept ``anyway``.
    """
    sees = latest(journal, head["subject"])
    plain = {"format": 1, "house": house.id, **head, "sees": list(sees[:1000]), **own}
    named = {"snag_cleared": ("clears", _open), "withdrawn": ("of", _latest)}.get(head["kind"])
    if named is not None and named[0] not in plain:
        key, there = named
        choices = there(fold(house, journal), head["subject"])
        if len(choices) != 1:
            expected = "; ".join(f"{i} ({words})" for i, words in choices.items())
            return Fault("KEY=VALUE", key, "nothing", f"one of {expected}" if choices else "an entry to name")
        plain[key] = next(iter(choices))
    if plain.get("answered") == AS_IT_SHOULD:
        plain["answered"] = _expected(house, journal, head["subject"], models)
    entry = new_entry(plain, where="entry")
    if isinstance(entry, Fault):  # a name of digits alone is text all the same
        as_text = {k: v if isinstance(v, str | dict | list) else json.dumps(v) for k, v in own.items()}
        again = new_entry({**plain, **as_text}, where="entry")
        if isinstance(again, Fault):
            return entry
        entry = again
    built = as_built(house, merge(journal, journal_of([entry])), models=models)
    told = tuple(t for t in built.told if t.entry == entry.id)
    serious = next((t.words for t in told if t.serious), None)
    if serious and not anyway:
        return Fault("entry", "", f"it {serious}", "an entry that the house can take, or --anyway to keep it")
    return Recorded(entry, told)


def _expected(house: House, journal: Journal, subject: str, models: Mapping[str, Model]) -> object:
    """What should answer in the as-built house; the words as they stand where nothing says."""
    built = as_built(house, journal, models=models)
    kind, _, name = subject.partition(":")
    if kind == "scene":
        rows = schedule(built.house, built.house.models)
        scene = next((r for r in resolve(rows) if r.scene_id == name), None)
        return AS_IT_SHOULD if scene is None else switched(scene)
    test = function_test(built.house, built.folded)
    press = next((p for p in test.presses if p.subject == subject), None)
    if press is None or press.expected is None:
        return AS_IT_SHOULD
    return dict.fromkeys(press.expected, "changed")


def _open(folded: Folded, subject: str) -> dict[str, str]:
    return {s.id: s.words for s in folded.open_snags if s.subject == subject}


def _latest(folded: Folded, subject: str) -> dict[str, str]:
    """What is current on the subject, an open snag included."""
    current = [e for (of, _), entries in folded.current.items() if of == subject for e in entries]
    stands = {e.id: f"{e.kind}, {e.writer} at {e.at}" for e in current}
    return stands | {i: f"snag_raised: {words}" for i, words in _open(folded, subject).items()}
