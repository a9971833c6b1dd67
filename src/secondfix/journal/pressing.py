"""Function test: what each gang and entry should work, what it worked, and what that makes of it."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType

from secondfix.catalogue import WholeSwitches
from secondfix.house import Duty, House, Schedule, schedule
from secondfix.journal.crossing import Crossing, crossings
from secondfix.journal.facts import FunctionTested
from secondfix.journal.folding import Folded
from secondfix.journal.subject import Subject, subject_of


class Worked(StrEnum):
    """What a test made of one gang or entry."""

    AS_DESIGNED = "as_designed"
    ANOTHER = "another"  # works one load, not its own
    NOTHING = "nothing"  # should work a load and works none
    SEVERAL = "several"  # works more than it should
    SHOULD_NOT = "should_not"  # should work nothing and works something
    FOUND = "found"  # nobody knew; the test tells
    NOT_JUDGED = "not_judged"  # nothing says what should answer
    NOT_TESTED = "not_tested"
    DISPUTED = "disputed"  # two tests differ, neither knew of the other


@dataclass(frozen=True, slots=True)
class Press:
    """One gang (``B07.2``) or entry (``D01.2``): what should answer (None: nothing says), what did.

    ``device`` is the device that stands there, None where none does; ``entry`` the id of the test.
    ``since`` is the device that was fitted after a test: it then counts as not tested.
    """

    subject: str
    place: str
    device: str | None
    expected: tuple[str, ...] | None
    answered: tuple[str, ...]
    also_answered: str
    worked: Worked
    entry: str | None
    since: str | None = None


@dataclass(frozen=True, slots=True)
class FunctionTest:
    """Every gang that should be tested or was, every entry that was, and what is crossed.

    ``shared`` gives each load that several gangs work, against the design, those gangs.
    """

    presses: tuple[Press, ...]
    crossed_gangs: tuple[Crossing, ...]
    crossed_entries: tuple[Crossing, ...]
    shared: tuple[tuple[str, tuple[str, ...]], ...]


def function_test(
    house: House, folded: Folded, *, since: Mapping[str, str] = MappingProxyType({})
) -> FunctionTest:
    """Hold the tests of a journal against a revision: gangs by hand, entries by command. Pure.

    ``since`` names subjects whose test is older than the device that works them (``fitted_since``).
    """
    rows = schedule(house, house.models)
    presses = [_gang(rows, gang, folded) for gang in rows.rows]
    tested = {e.subject for e in folded.each("working", FunctionTested)}
    disputed = {subject for subject, aspect in folded.disputed if aspect == "working"}
    for text in sorted(tested | disputed):
        subject = subject_of(text)
        if subject.kind == "entry" and subject.owner in house.devices:
            presses.append(_press(text, subject.owner, _entry_expects(rows, subject), folded))
    presses += _outputs(rows, folded, {p.subject for p in presses})
    presses = [_again(p, since[p.subject]) if p.subject in since else p for p in presses]
    kept = [p for p in presses if p.worked is not Worked.NOT_TESTED or p.expected]
    gangs = [p for p in kept if _works_a_wire(rows, p)]
    entries = [p for p in kept if p.subject.startswith("entry:") and p not in gangs]
    return FunctionTest(tuple(kept), _rings(rows, gangs), _rings(rows, entries), _shared(gangs))


def _again(press: Press, device: str) -> Press:
    """What a press made before this device was fitted says of it: nothing."""
    return replace(press, answered=(), also_answered="", worked=Worked.NOT_TESTED, entry=None, since=device)


def _gang(rows: Schedule, gang: str, folded: Folded) -> Press:
    duty, device = rows.rows[gang].gang.duty, rows.rows[gang].device_id
    expected = _gang_expects(rows, gang)
    return _press(f"gang:{gang}", device, expected, folded, unknown=duty is Duty.NOT_KNOWN)


def _gang_expects(rows: Schedule, gang: str) -> tuple[str, ...] | None:
    """The load at the end of a gang's wire or chain; nothing for a capped gang; None where unsaid."""
    row = rows.rows[gang]
    for _ in rows.rows:  # a chain is no longer than that: the reader refuses rings
        if row.gang.duty is not Duty.EXTENDS or row.gang.extends not in rows.rows:
            break
        row = rows.rows[row.gang.extends]
    if row.gang.duty is Duty.FEEDS and row.load_id:
        return (row.load_id,)
    return () if row.gang.duty is Duty.CAPPED else None


def _entry_expects(rows: Schedule, subject: Subject) -> tuple[str, ...] | None:
    """What a command to an entry should switch. Entry 0 is the whole device: its model says which gangs."""
    channels = rows.channels_of[subject.owner]
    number = int(subject.part)
    if number > 0:
        found = next((c for c in channels if c.number == number), None)
        if found is None:
            return ()
        return _gang_expects(rows, found.row.id) if found.row else _load(found.load_id)
    model = rows.model_of(subject.owner)
    switches = model.whole_switches if model else WholeSwitches.TO_BE_TESTED
    if switches is WholeSwitches.TO_BE_TESTED:
        return None
    count = {WholeSwitches.ALL: len(channels), WholeSwitches.FIRST: 1, WholeSwitches.NONE: 0}[switches]
    return tuple(sorted(c.load_id for c in channels[:count] if c.load_id))


def _load(load: str | None) -> tuple[str, ...] | None:
    return (load,) if load else None


def _outputs(rows: Schedule, folded: Folded, have: set[str]) -> list[Press]:
    """Outputs of devices outside the boxes that feed something and were not tested."""
    return [
        _press(f"entry:{device}.{c.number}", device, (c.load_id,), folded)
        for device, channels in rows.channels_of.items()
        for c in channels
        if c.row is None and c.load_id and f"entry:{device}.{c.number}" not in have
    ]


def _press(
    subject: str,
    device: str | None,
    expected: tuple[str, ...] | None,
    folded: Folded,
    *,
    unknown: bool = False,
) -> Press:
    place = subject_of(subject).id
    if (subject, "working") in folded.disputed:
        return Press(subject, place, device, expected, (), "", Worked.DISPUTED, None)
    test = folded.settled(subject, "working", FunctionTested)
    if test is None:
        return Press(subject, place, device, expected, (), "", Worked.NOT_TESTED, None)
    answered = tuple(sorted(test.answered))
    worked = _worked(expected, answered, also=bool(test.also_answered), unknown=unknown)
    return Press(subject, place, device, expected, answered, test.also_answered, worked, test.id)


def _worked(
    expected: tuple[str, ...] | None, answered: tuple[str, ...], *, also: bool, unknown: bool
) -> Worked:
    if expected is None:
        return Worked.FOUND if unknown else Worked.NOT_JUDGED
    if answered == expected and not also:
        return Worked.AS_DESIGNED
    if not answered and not also:
        return Worked.NOTHING
    if not expected:
        return Worked.SHOULD_NOT
    return Worked.ANOTHER if len(answered) + also == 1 else Worked.SEVERAL


def _works_a_wire(rows: Schedule, press: Press) -> bool:
    """Gangs, and outputs of devices outside the boxes; an entry of a switch is a name for its gang."""
    return press.subject.startswith("gang:") or rows.house.devices[press.device or ""].box is None


def _rings(rows: Schedule, presses: list[Press]) -> tuple[Crossing, ...]:
    designed = {p.place: p.expected[0] for p in presses if p.expected and _feeds(rows, p)}
    return crossings(designed, _single(presses))


def _feeds(rows: Schedule, press: Press) -> bool:
    """Whether a load is this gang's or entry's own: not an extension unit's, nor a whole device's."""
    if press.subject.startswith("gang:"):
        return rows.rows[press.place].gang.duty is Duty.FEEDS
    number = int(press.place.partition(".")[2])
    return any(c.number == number and c.load_id for c in rows.channels_of[press.device or ""])


def _single(presses: list[Press]) -> Mapping[str, str]:
    return {p.place: p.answered[0] for p in presses if len(p.answered) == 1 and not p.also_answered}


def _shared(presses: list[Press]) -> tuple[tuple[str, tuple[str, ...]], ...]:
    by_load: dict[str, list[Press]] = {}
    for press in presses:
        for load in press.answered:
            by_load.setdefault(load, []).append(press)
    return tuple(
        (load, tuple(p.place for p in found))
        for load, found in sorted(by_load.items())
        if len(found) > 1 and any(load not in (p.expected or ()) for p in found)
    )
