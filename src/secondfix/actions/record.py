"""Record: one entry about what was found or done, as its writer would append it to the journal."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from secondfix.actions.as_built import switched
from secondfix.catalogue import Model
from secondfix.house import Fault, House, schedule
from secondfix.journal import (
    AsBuilt,
    Entry,
    Folded,
    Journal,
    Press,
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
    return record_all(house, journal, [(head, own)], models=models, anyway=anyway)[0]


def record_all(
    house: House,
    journal: Journal,
    asked: Sequence[tuple[Plain, Plain]],
    *,
    models: Mapping[str, Model],
    anyway: bool = False,
) -> tuple[Recorded | Fault, ...]:
    """Several entries that one writer makes at once, as ``record`` makes each: later ones have seen earlier.

    Each is answered by itself; the house is built once with all of them.
    """
    book = _Book(house, journal, models)
    made: list[Entry | Fault] = []
    for head, own in asked:
        entry = book.entry(head, own)
        made.append(entry)
        if isinstance(entry, Entry):
            book.journal = merge(book.journal, journal_of([entry]))
    if not any(isinstance(m, Entry) for m in made):
        return tuple(m for m in made if isinstance(m, Fault))
    built = as_built(house, book.journal, models=models)
    return tuple(m if isinstance(m, Fault) else _held(m, built, anyway=anyway) for m in made)


def _held(entry: Entry, built: AsBuilt, *, anyway: bool) -> Recorded | Fault:
    """The entry with what the as-built house says of it."""
    told = tuple(t for t in built.told if t.entry == entry.id)
    serious = next((t.words for t in told if t.serious), None)
    if serious and not anyway:
        return Fault("entry", "", f"it {serious}", "an entry that the house can take, or --anyway to keep it")
    return Recorded(entry, told)


class _Book:
    """A house and what its writer has seen of the journal so far."""

    def __init__(self, house: House, journal: Journal, models: Mapping[str, Model]) -> None:
        self.house, self.journal, self.models = house, journal, models
        self._first = journal

    def entry(self, head: Plain, own: Plain) -> Entry | Fault:
        """One entry, or its first fault."""
        sees = latest(self.journal, head["subject"])
        plain = {"format": 1, "house": self.house.id, **head, "sees": list(sees[:1000]), **own}
        named = {"snag_cleared": ("clears", _open), "withdrawn": ("of", _latest)}.get(head["kind"])
        if named is not None and named[0] not in plain:
            key, there = named
            choices = there(fold(self.house, self.journal), head["subject"])
            if len(choices) != 1:
                expected = "; ".join(f"{i} ({words})" for i, words in choices.items())
                wanted = f"one of {expected}" if choices else "an entry to name"
                return Fault("KEY=VALUE", key, "nothing", wanted)
            plain[key] = next(iter(choices))
        if plain.get("answered") == AS_IT_SHOULD:
            plain["answered"] = self._expected(head["subject"])
        entry = new_entry(plain, where="entry")
        if isinstance(entry, Fault):  # a name of digits alone is text all the same
            as_text = {k: v if isinstance(v, str | dict | list) else json.dumps(v) for k, v in own.items()}
            again = new_entry({**plain, **as_text}, where="entry")
            return entry if isinstance(again, Fault) else again
        return entry

    @cached_property
    def _before(self) -> AsBuilt:
        """The house as the journal had it before the first entry."""
        return as_built(self.house, self._first, models=self.models)

    @cached_property
    def _presses(self) -> dict[str, Press]:
        test = function_test(self._before.house, self._before.folded)
        return {p.subject: p for p in test.presses}

    def _expected(self, subject: str) -> object:
        """What should answer in the as-built house; the words as they stand where nothing says."""
        kind, _, name = subject.partition(":")
        if kind == "scene":
            rows = schedule(self._before.house, self._before.house.models)
            scene = next((r for r in resolve(rows) if r.scene_id == name), None)
            return AS_IT_SHOULD if scene is None else switched(scene)
        press = self._presses.get(subject)
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
