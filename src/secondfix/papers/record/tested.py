"""The function-test record: who pressed what, when by the writer's clock, what answered, what that shows."""

from collections.abc import Iterator
from datetime import datetime

from secondfix.house import schedule
from secondfix.journal import Fitted, FunctionTested, Press, Worked
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    across,
    column,
    heading,
    ident,
    lines,
    marked,
    para,
    soft,
    strong,
    table,
)
from secondfix.papers.duties import duty_words
from secondfix.papers.places import id_words, room_name, thing_words
from secondfix.papers.record.record import Record
from secondfix.papers.record.saying import answered_words, clock_words
from secondfix.papers.words import counted

RESULT_WORDS = {
    Worked.AS_DESIGNED: "as designed",
    Worked.ANOTHER: "works another load",
    Worked.NOTHING: "works nothing",
    Worked.SEVERAL: "works more than it should",
    Worked.SHOULD_NOT: "should work nothing",
    Worked.FOUND: "found: nobody knew",
    Worked.NOT_JUDGED: "nothing says what should answer",
    Worked.NOT_TESTED: "not yet tested",
    Worked.DISPUTED: "two tests differ",
}
_WRONG = frozenset({Worked.ANOTHER, Worked.NOTHING, Worked.SEVERAL, Worked.SHOULD_NOT, Worked.DISPUTED})


def as_designed(record: Record | None) -> frozenset[str]:
    """Gangs, outputs and scenes that need no other test; none without a journal."""
    if record is None:
        return frozenset()
    wrong = {p.place for p in _presses(record) if p.worked in _WRONG}
    off = {s.scene for s in record.scenes if not s.as_expected}
    return tested_ids(record) - wrong - off


def tested_ids(record: Record) -> frozenset[str]:
    """Gangs (``B07.2``), outputs (``D05.1``) and scenes with a test that stands and needs no other."""
    older = _older(record)
    pressed = {p.place for p in _presses(record) if p.entry and p.place not in older}
    return frozenset({*pressed, *(s.scene for s in record.scenes if s.tested)})


def record_sheet(record: Record, number: str) -> Sheet:
    """Every test that stands, then every gang, output and scene that has none."""
    presses = [p for p in _presses(record) if p.entry or p.worked is Worked.DISPUTED]
    scenes = [s for s in record.scenes if s.tested or s.disputed]
    older = _older(record)
    rows: list[list[Cell]] = [_press_row(record, p, older.get(p.place, "")) for p in presses]
    if scenes:
        rows.append([across("Scenes")])
        rows += [_scene_row(record, s.scene) for s in scenes]
    columns = [
        column("Pressed", mm=25),
        column("Room", fr=1),
        column("Answered", fr=2),
        column("By design", fr=1.5),
        column("Result", fr=1.6),
        column("Who", mm=24),
        column("When, by own clock", mm=41),
    ]
    blocks: list[Block] = [table(columns, rows)] if rows else [para("The journal holds no function test.")]
    blocks += [heading("Not yet tested"), *_untested(record)]
    says = f"{tally(record)} What has no row here was not tested."
    return Sheet(number, "Function test record", says, blocks)


def tally(record: Record) -> str:
    """How many of the gangs and outputs of the as-built house, and of its scenes, were tested."""
    done, every = tested_ids(record), [*_every(record)]
    tested = sum(place in done for place in every)
    scenes = sum(scene in done for scene in record.house.scenes)
    wrong = sum(p.worked in _WRONG for p in _presses(record) if p.place in done)
    off = sum(not s.as_expected for s in record.scenes if s.tested)
    odd = (
        f" {counted(wrong, 'gang or output does', 'gangs or outputs do')} not work as designed."
        if wrong
        else ""
    )
    odd += f" {counted(off, 'scene does', 'scenes do')} not switch what it should." if off else ""
    differ = sum(p.worked is Worked.DISPUTED for p in _presses(record)) + sum(
        s.disputed for s in record.scenes
    )
    odd += f" Two tests differ at {counted(differ, 'place')}, so none stands." if differ else ""
    return (
        f"Tested: {tested} of {counted(len(every), 'gang or output', 'gangs and outputs')}, {scenes} of "
        f"{counted(len(record.house.scenes), 'scene')}.{odd}"
    )


def _presses(record: Record) -> list[Press]:
    """Against the revision; what it has no word of (a device fitted since) against the as-built house."""
    have = {p.subject for p in record.test.presses}
    more = [p for p in record.test_as_built.presses if p.subject not in have and p.entry]
    return [*record.test.presses, *more]


def _every(record: Record) -> Iterator[str]:
    rows = schedule(record.house, record.house.models)
    yield from rows.rows
    for device, channels in rows.channels_of.items():
        yield from (f"{device}.{c.number}" for c in channels if c.row is None and c.load_id)


def _older(record: Record) -> dict[str, str]:
    """Gangs and outputs whose test is older than the device that now stands there, in words.

    Where an adoption lies between, the journal tells. Else clocks are all there is: they decide nothing of
    the house, they only ask for one press more.
    """
    rows = schedule(record.house, record.house.models)
    found = {p.place: f"not tested since {p.since} was fitted" for p in _presses(record) if p.since}
    for press in _presses(record):
        row = rows.rows.get(press.place)
        test = record.entry(press.entry) if press.entry else None
        if row is None or row.device_id is None or test is None:
            continue
        fitted = record.built.folded.settled(f"device:{row.device_id}", "standing", Fitted)
        if fitted and datetime.fromisoformat(test.at) < datetime.fromisoformat(fitted.at):
            found[press.place] = f"by the clocks before {row.device_id} was fitted: test again"
    return found


def _press_row(record: Record, press: Press, older: str) -> list[Cell]:
    house, test = record.house, record.entry(press.entry) if press.entry else None
    design = "nothing says" if press.expected is None else _loads(record, press.expected)
    words = RESULT_WORDS[press.worked]
    result: Cell = marked("fault", words) if press.worked in _WRONG else strong(words)
    if older:
        result = lines(result, soft(older))
    if press.device and press.device not in house.devices and press.subject.startswith("entry:"):
        result = lines(result, soft(f"{press.device} no longer stands"))
    room = room_name(house, press.place)
    if not isinstance(test, FunctionTested):
        return [ident(press.place), room, soft("see the conflict"), design, result, "", ""]
    said = answered_words(house, test.answered, test.also_answered)
    note = lines(said, soft(test.note)) if test.note else said
    return [ident(press.place), room, note, design, result, test.writer, clock_words(test.at)]


def _loads(record: Record, loads: tuple[str, ...]) -> str:
    return "; ".join(thing_words(record.house, load) for load in loads) or "nothing"


def _scene_row(record: Record, scene_id: str) -> list[Cell]:
    one = next(s for s in record.scenes if s.scene == scene_id)
    house = record.house
    named = house.scenes.get(scene_id) or record.built.revision.scenes.get(scene_id)
    name = named.name if named else ""
    test = record.entry(one.tested) if one.tested else None
    if not isinstance(test, FunctionTested):
        return [
            ident(id_words(house, scene_id)),
            "",
            soft("see the conflict"),
            name,
            "two tests differ",
            "",
            "",
        ]
    off = [
        f"did not switch {_loads(record, one.missing)}" if one.missing else "",
        f"switched {_loads(record, one.extra)} besides" if one.extra else "",
        f"sent the wrong way: {_loads(record, one.wrong_way)}" if one.wrong_way else "",
        f"and {one.also_answered}" if one.also_answered else "",
    ]
    result = strong("as designed") if one.as_expected else marked("fault", "; ".join(w for w in off if w))
    said = answered_words(house, test.answered, test.also_answered)
    return [
        ident(id_words(house, scene_id)), "", said, f"{name}, as in the scene schedule", result, test.writer,
        clock_words(test.at),
    ]  # fmt: skip


def _untested(record: Record) -> Iterator[Block]:
    """Gangs, outputs and scenes without a test that stands, each with what it is for."""
    house = record.house
    rows = schedule(house, house.models)
    done, older = tested_ids(record), _older(record)
    left: list[list[Cell]] = []
    for place in _every(record):
        if place in done:
            continue
        row = rows.rows.get(place)
        fed = next((load for load, at in rows.fed_by.items() if not row and _place(at) == place), None)
        what = duty_words(rows, row) if row else thing_words(house, fed) if fed else ""
        why = older.get(place) or _skipped(record, place)
        left.append([ident(place), room_name(house, place), what, why])
    since = {s.scene: f"not tested since {s.since} was fitted" for s in record.scenes if s.since}
    left += [
        [ident(id_words(house, s)), "", scene.name, since.get(s) or _skipped(record, s)]
        for s, scene in house.scenes.items()
        if s not in done
    ]
    heads = [column("What", mm=25), column("Room", fr=1), column("What it is for", fr=2), column("Why", fr=2)]
    yield (
        table(heads, left, dense=True) if left else para("Nothing: every gang, output and scene was tested.")
    )


def _place(at: object) -> str:
    device, number = getattr(at, "device_id", ""), getattr(at, "number", "")
    return f"{device}.{number}"


def _skipped(record: Record, place: str) -> str:
    """Why it was skipped, where somebody wrote so."""
    found = record.built.remarks
    return "; ".join(r.says for r in found if r.place == place and "was not tested" in r.says)
