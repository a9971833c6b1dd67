"""The as-built house: the house document as the journal found it, and how it differs from the revision."""

import re
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, replace

from secondfix.catalogue import Model
from secondfix.house import Fault, House, read_plain
from secondfix.journal.differences import Difference, differences
from secondfix.journal.draft import Draft, Plain, draft_of
from secondfix.journal.entry import Entry
from secondfix.journal.folding import Folded, fold
from secondfix.journal.journal import Journal
from secondfix.journal.remarks import Remark, remarks
from secondfix.journal.sorting import Told
from secondfix.journal.standing import stand
from secondfix.journal.subject import subject_of
from secondfix.journal.surveyed import correct, name_things, set_up
from secondfix.journal.wired import wire


@dataclass(frozen=True, slots=True)
class AsBuilt:
    """``house`` is always a house that can be read: what would break it is set aside and told.

    ``differences`` are empty exactly where house and revision say the same; ``remarks`` are what no
    document holds (a join that failed, a step skipped, the name of an entry); ``told`` speak of single
    entries; ``fresh`` are the entries that no adoption has taken in.
    """

    revision: House
    house: House
    folded: Folded
    differences: tuple[Difference, ...]
    remarks: tuple[Remark, ...]
    told: tuple[Told, ...]
    fresh: tuple[str, ...]


def as_built(
    house: House,
    journal: Journal,
    *,
    models: Mapping[str, Model],
    revisions: frozenset[str] | None = None,
    now: str | None = None,
) -> AsBuilt:
    """The house of this revision as the journal found it. Pure; any order of entries gives the same.

    ``models`` are the editions at hand for devices that were fitted and are not of the revision;
    ``revisions`` and ``now`` as for ``fold``. ValueError for a house that ``read_house`` would refuse.
    """
    folded = fold(house, journal, revisions=revisions, now=now)
    at_hand = {**models, **house.models}
    aside: dict[str, Told] = {}
    told: list[Told] = [*folded.told]
    untouched = draft_of(house).plain
    while True:
        draft = _drafted(house, _without(folded, aside.keys()), at_hand)
        read = _read(house, untouched, draft, at_hand)
        if isinstance(read, House):
            break
        blamed = (
            _blamed(read, draft) or _each_alone(house, untouched, folded, draft, at_hand) or _all(read, draft)
        )
        if not blamed:
            raise ValueError(f"the revision itself cannot be read: {read[0]}")
        told += [t for t in draft.told if t.entry in blamed]
        aside |= blamed
    told += [*draft.told, *aside.values(), *_nowhere(folded, draft, aside)]
    found = house if read == house else read
    return AsBuilt(
        house,
        found,
        folded,
        differences(house, found, draft.by),
        remarks(folded, draft),
        tuple(sorted(set(told), key=lambda t: (t.entry, t.words))),
        tuple(i for i in sorted(folded.counted) if i not in folded.taken_in),
    )


def _drafted(house: House, folded: Folded, models: Mapping[str, Model]) -> Draft:
    draft = draft_of(house)
    correct(draft, folded)
    stand(draft, folded, models)
    set_up(draft, folded, models)
    name_things(draft, folded)
    wire(draft, folded)
    return draft


def _without(folded: Folded, aside: Collection[str]) -> Folded:
    return _only(folded, lambda entry: entry.id not in aside) if aside else folded


def _only(folded: Folded, wanted: Callable[[Entry], bool]) -> Folded:
    kept = {r: tuple(e for e in entries if wanted(e)) for r, entries in folded.current.items()}
    return replace(folded, current={r: entries for r, entries in kept.items() if entries})


def _read(house: House, untouched: Plain, draft: Draft, models: Mapping[str, Model]) -> House | list[Fault]:
    """The house of a draft; what it has as ``untouched`` is shared with ``house``, not made again."""
    had = house.model_fields_set
    plain = {key: value for key, value in draft.plain.items() if value != {} or key in had}
    for name, members in plain.items():
        if isinstance(members, dict) and isinstance(stand := getattr(house, name, None), dict):
            was = untouched.get(name, {})
            plain[name] = {
                key: stand[key] if key in was and part == was[key] else part for key, part in members.items()
            }
    return read_plain(plain, where="as-built", models=models)


def _blamed(faults: list[Fault], draft: Draft) -> dict[str, Told]:
    """The entries that speak for what is at fault, and for what a fault names in brackets as its other side.

    All of them together, for nothing tells which of two is wrong.
    """
    found: dict[str, Told] = {}
    for fault in faults:
        for entry in (e for place in (fault.path, *_other_side(fault)) for e in _speaking(draft, place)):
            found.setdefault(entry.id, _cannot_be(entry, fault))
    return found


def _each_alone(
    house: House, untouched: Plain, folded: Folded, draft: Draft, models: Mapping[str, Model]
) -> dict[str, Told]:
    """Where a fault lies beside what was touched: the entries that alone would give such a house."""
    found: dict[str, Told] = {}
    for entry in {e.id: e for entries in draft.by.values() for e in entries}.values():
        alone = _drafted(house, _only(folded, entry.__eq__), models)
        read = _read(house, untouched, alone, models)
        if not isinstance(read, House):
            found[entry.id] = _cannot_be(entry, read[0])
    return found


def _all(faults: list[Fault], draft: Draft) -> dict[str, Told]:
    """Where only several together do: all, for nothing tells which."""
    return {e.id: _cannot_be(e, faults[0]) for entries in draft.by.values() for e in entries}


def _cannot_be(entry: Entry, fault: Fault) -> Told:
    words = f"would give a house that cannot be: {fault.path} {fault.stands}, not {fault.expected}"
    return Told(entry.id, words, True)


def _other_side(fault: Fault) -> list[str]:
    """The path that a fault names in brackets: whole, a device's id, or the collection of the same id."""
    named = re.search(r"\(([\w.-]+) \w+ it\)", fault.expected)
    if named is None or "." in named[1]:
        return [named[1]] if named else []
    return [f"devices.{named[1]}" if named[1][0].isupper() else f"{named[1]}.{fault.path.split('.')[1]}"]


def _speaking(draft: Draft, at: str) -> list[Entry]:
    """The entries of what lies within, and of the nearest path at or above: who said just this comes first.

    Where these were not to blame the fault stands in the next round, and what lies further above speaks.
    """
    within = [e for path, entries in draft.by.items() if path.startswith(f"{at}.") for e in entries]
    above = max((path for path in draft.by if f"{at}.".startswith(f"{path}.")), key=len, default="")
    return [*within, *draft.by.get(above, ())]


def _nowhere(folded: Folded, draft: Draft, aside: Mapping[str, Told]) -> list[Told]:
    """Current entries about what is not in the house, though no removal says why."""
    told = []
    for (text, _), entries in folded.current.items():
        subject = subject_of(text)
        if not draft.holds(subject) and not draft.left(subject):
            words = f"speaks of {text}, which is not in this house"
            told += [Told(e.id, words, True) for e in entries if e.id not in aside]
    return told
