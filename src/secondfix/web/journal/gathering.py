"""What the journal says, as the as-built sheet and the function test list it: by place, room by room."""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.actions.as_built import switched
from secondfix.findings import Finding
from secondfix.house import House, schedule
from secondfix.journal import Conflict, Press, SceneTest, Worked
from secondfix.papers import EntryLine, Record, entry_line, room_name, thing_words
from secondfix.scenes import resolve

WHOLE = "The whole house"
_MOST_NAMED = 2
_OF_TESTS = frozenset({"crossed_gangs", "dead_gang", "scene_tested"})
_OWN_PLACE = frozenset({"as_built_differs", "test_missing"})


@dataclass(frozen=True, slots=True)
class Told:
    """One sentence about a place, and the entries that say so."""

    place: str
    of: str
    says: str
    entries: tuple[EntryLine, ...]

    @property
    def latest(self) -> tuple[EntryLine, ...]:
        """The last two of the entries."""
        return self.entries[-_MOST_NAMED:]

    @property
    def before(self) -> int:
        """How many more say so."""
        return max(0, len(self.entries) - _MOST_NAMED)


@dataclass(frozen=True, slots=True)
class Clash:
    """A conflict: both entries in words, and the subject they speak of."""

    subject: str
    of: str
    aspect: str
    entries: tuple[EntryLine, ...]


def by_room(record: Record) -> dict[str, list[Told]]:
    """Differences from the design under the room of their place, in the order of the document."""
    rows = ((d.place, d.says, d.entries) for d in record.built.differences)
    return _rooms(record, rows)


def remarks(record: Record) -> dict[str, list[Told]]:
    """What no document holds: joins that failed, steps skipped, names in the controller."""
    return _rooms(record, ((r.place, r.says, (r.entry,)) for r in record.built.remarks))


def _rooms(record: Record, rows: Iterable[tuple[str, str, tuple[str, ...]]]) -> dict[str, list[Told]]:
    rooms: dict[str, list[Told]] = {}
    for place, says, entries in rows:
        room = room_of(record, place)
        rooms.setdefault(room, []).append(
            Told(place, thing_words(record.house, place), says, _lines(record, entries))
        )
    return rooms


def room_of(record: Record, place: str) -> str:
    """The room of a thing as built, or as the revision has it where it left."""
    return room_name(record.house, place) or room_name(record.built.revision, place) or WHOLE


def _lines(record: Record, ids: Iterable[str]) -> tuple[EntryLine, ...]:
    found = (record.entry(i) for i in sorted(ids))
    return tuple(entry_line(record, e) for e in found if e)


def set_aside(record: Record) -> list[Told]:
    """Entries that do not count, or of which something must be known."""
    told = []
    for t in record.built.told:
        lines = _lines(record, (t.entry,))
        of = lines[0].of if lines else "not of this house's count"
        told.append(Told(t.entry, of, f"It {t.words}.", lines))
    unknown = record.built.folded.unknown
    return told + [Told(u.id, u.subject, f"Its kind '{u.kind}' is not known here.", ()) for u in unknown]


def clashes(record: Record) -> list[Clash]:
    """Conflicts, each with the entries that differ."""
    return [_clash(record, c) for c in record.built.folded.conflicts]


def _clash(record: Record, c: Conflict) -> Clash:
    lines = tuple(entry_line(record, e) for e in c.entries)
    return Clash(c.subject, lines[0].of, c.aspect.replace("_", " "), lines)


def other_findings(record: Record) -> list[Finding]:
    """What the journal shows beside differences, tests and conflicts: open snags and the like."""
    apart = _OWN_PLACE | _OF_TESTS
    return [f for f in record.findings if f.severity and f.rule not in apart and "conflict" not in f.rule]


def test_findings(record: Record) -> list[Finding]:
    """Crossed and dead gangs, and scenes that did something else: each with what mends it."""
    return [f for f in record.findings if f.severity and f.rule in _OF_TESTS]


WORKED_WORDS = {
    Worked.AS_DESIGNED: "as it should",
    Worked.ANOTHER: "works another load",
    Worked.NOTHING: "works nothing",
    Worked.SEVERAL: "works more than it should",
    Worked.SHOULD_NOT: "should work nothing",
    Worked.FOUND: "found by the test",
    Worked.NOT_JUDGED: "nothing says what should answer",
    Worked.NOT_TESTED: "not tested",
    Worked.DISPUTED: "two tests differ",
}
_ACT = frozenset({Worked.ANOTHER, Worked.NOTHING, Worked.SEVERAL, Worked.SHOULD_NOT, Worked.DISPUTED})


@dataclass(frozen=True, slots=True)
class PressRow:
    """One gang or entry of a room: what should answer, what did, and what may be chosen."""

    press: Press
    of: str
    should: str
    did: str
    word: str
    act: bool
    shape: str
    choices: dict[str, str]


@dataclass(frozen=True, slots=True)
class SceneRow:
    """One scene: its name, what it should switch, and how its test came out."""

    test: SceneTest
    name: str
    should: tuple[str, ...]
    word: str
    act: bool


def rooms_to_test(record: Record) -> dict[str, tuple[int, int]]:
    """Rooms in the order of the document: how many gangs and entries were tested, of how many."""
    counts: dict[str, tuple[int, int]] = {}
    names = [r.name for r in record.house.rooms.values()]
    for press in record.test.presses:
        room = room_of(record, press.place)
        tested, all_ = counts.get(room, (0, 0))
        counts[room] = (tested + (press.worked is not Worked.NOT_TESTED), all_ + 1)
    return {r: counts[r] for r in (*dict.fromkeys(names), WHOLE) if r in counts}


def press_rows(record: Record, room: str) -> list[PressRow]:
    """The gangs and entries of one room."""
    here = [p for p in record.test.presses if room_of(record, p.place) == room]
    house = record.house
    loads = {i for i, load in house.loads.items() if house.rooms[load.room].name == room}
    loads |= {load for p in here for load in (*(p.expected or ()), *p.answered)}
    return [_press_row(house, p, sorted(loads)) for p in here]


def _press_row(house: House, press: Press, loads: list[str]) -> PressRow:
    expected = press.expected
    first = [*(expected or ())]
    offered = {i: thing_words(house, i) for i in (*first, *(x for x in loads if x not in first))}
    if len(first) > 1:  # a whole-device entry: every load of it at once
        offered = {" ".join(first): "all that it should", **offered}
    did = [thing_words(house, i) for i in press.answered] + (
        [press.also_answered] if press.also_answered else []
    )
    return PressRow(
        press,
        ("entry " if press.subject.startswith("entry:") else "") + press.place,
        "not said" if expected is None else ", ".join(thing_words(house, i) for i in expected) or "nothing",
        (", ".join(did) or "nothing") if press.entry else "",
        WORKED_WORDS[press.worked] + (f" since {press.since} was fitted" if press.since else ""),
        press.worked in _ACT,
        "fault" if press.worked in _ACT else "",
        offered,
    )


def scene_rows(record: Record) -> list[SceneRow]:
    """Every scene with what it should switch."""
    revision = record.built.revision
    should = {r.scene_id: switched(r) for r in resolve(schedule(revision, revision.models))}
    return [
        SceneRow(
            s,
            revision.scenes[s.scene].name,
            tuple(f"{thing_words(revision, load)} {to}" for load, to in should.get(s.scene, {}).items()),
            _scene_word(s),
            s.disputed or (s.tested is not None and not s.as_expected),
        )
        for s in record.scenes
        if s.scene in revision.scenes
    ]


def _scene_word(s: SceneTest) -> str:
    if s.disputed:
        return "two tests differ"
    if s.tested is None:
        return "not tested" + (f" since {s.since} was fitted" if s.since else "")
    return "as it should" if s.as_expected else "not as it should"
