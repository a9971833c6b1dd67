"""The fold told slowly and obviously: what is current, entry by entry, from who knew whom.

A reference for tests and the baseline of the bench. It shares nothing with the fold but the entries.
"""

from __future__ import annotations

from collections.abc import Iterable

from secondfix.journal import Entry, Unknown

Current = dict[tuple[str, str], set[str]]


def plain_fold(house_id: str, entries: Iterable[Entry]) -> tuple[Current, set[str]]:
    """Ids of the current entries of each subject and aspect, and the ids withdrawn."""
    bodies: dict[str, list[Entry]] = {}
    for entry in entries:
        if entry not in bodies.setdefault(entry.id, []):
            bodies[entry.id].append(entry)
    here = {i: b[0] for i, b in bodies.items() if len(b) == 1 and b[0].house == house_id}
    current: Current = {}
    withdrawn: set[str] = set()
    subjects: dict[str, dict[str, Entry]] = {}
    for i, entry in here.items():
        subjects.setdefault(entry.subject, {})[i] = entry
    for of_subject in subjects.values():
        _one_subject(of_subject, current, withdrawn)
    return current, withdrawn


def _one_subject(entries: dict[str, Entry], current: Current, withdrawn: set[str]) -> None:
    said = {i: {k for k in (*e.sees, e.names) if k in entries} for i, e in entries.items()}
    before = {i: _all_before(i, said) for i in entries}
    in_ring = {i for i in entries if i in before[i]}
    void = {i for i in entries if (before[i] | {i}) & in_ring and any(i in before[r] | {r} for r in in_ring)}
    said = {i: known - void if i in void else known for i, known in said.items()}
    before = {i: _all_before(i, said) for i in entries}
    gone = {i for i in entries if _is_withdrawn(i, entries)}
    withdrawn |= {i for i in gone if not isinstance(entries[i], Unknown)}
    counts = {i: e for i, e in entries.items() if i not in gone and not isinstance(e, Unknown)}
    for i, entry in counts.items():
        over = set(entry.yields_to)
        later = [k for k, o in counts.items() if i in before[k] and over & {o.aspect, *o.ends}]
        if entry.aspect and not later:
            current.setdefault((entry.subject, entry.aspect), set()).add(i)


def _all_before(start: str, said: dict[str, set[str]]) -> set[str]:
    found: set[str] = set()
    todo = list(said[start])
    while todo:
        here = todo.pop()
        if here not in found:
            found.add(here)
            todo += said[here]
    return found


def _is_withdrawn(i: str, entries: dict[str, Entry]) -> bool:
    """Whether a withdrawal of it stands; one that ends by withdrawing itself does not count."""
    of_it = [k for k, e in entries.items() if e.kind == "withdrawn" and e.names == i]
    return any(not _returns(k, entries) and not _is_withdrawn(k, entries) for k in of_it)


def _returns(start: str, entries: dict[str, Entry]) -> bool:
    """Whether following what each withdraws leads back to the start."""
    seen: set[str] = set()
    here: str | None = start
    while here in entries and here not in seen:
        seen.add(here)
        here = entries[here].names if entries[here].kind == "withdrawn" else None
    return here == start
