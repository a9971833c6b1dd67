"""What the function test of gangs, entries and scenes makes of the house."""

from collections.abc import Iterable, Iterator

from secondfix.findings import Finding, Severity, fails, passes
from secondfix.house import House
from secondfix.journal import rules
from secondfix.journal.crossing import Crossing
from secondfix.journal.pressing import FunctionTest, Press, Worked
from secondfix.journal.scene_test import SceneTest

CAUTION = (
    "Before any box is opened: isolate the circuits of every gang concerned, lock off, prove dead; "
    "a licensed person does the work, and the local code decides."
)


def press_findings(house: House, test: FunctionTest) -> Iterator[Finding]:
    """One answer per gang or entry, one per ring of crossed ones, one per load that several work."""
    in_ring = {c for crossing in (*test.crossed_gangs, *test.crossed_entries) for c in crossing.channels}
    for crossing in test.crossed_gangs:
        yield _crossed(house, crossing, "Gangs", mend_gangs(house, crossing))
    for crossing in test.crossed_entries:
        yield _crossed(house, crossing, "Entries", rename(house, crossing))
    for load, channels in test.shared:
        yield _shared(house, load, channels)
    for press in test.presses:
        if press.place not in in_ring:
            yield from _press(house, press)


def words_of(house: House, loads: Iterable[str]) -> str:
    """``L2 Desk, L4 Fan``; an id alone where the house has no such load; 'nothing' for none."""
    named = [f"{load} {house.loads[load].name}" if load in house.loads else load for load in loads]
    return ", ".join(named) or "nothing"


def rename(house: House, crossing: Crossing) -> str:
    """Which names follow the wires, one clause for each."""
    return "Rename: " + "; ".join(f"{c} after {words_of(house, [load])}" for c, load in crossing.names) + "."


def mend_gangs(house: House, crossing: Crossing) -> str:
    """Both ways to mend: names, with no box opened; or conductors, with the fewest exchanges."""
    exchanges = "; then ".join(f"{a} and {b}" for a, b in crossing.exchanges)
    return (
        f"Either no box is opened: {rename(house, crossing)} Or exchange the switched conductors of "
        f"{exchanges}. {CAUTION} Test again afterwards."
    )


def _crossed(house: House, crossing: Crossing, noun: str, remedy: str) -> Finding:
    channels = crossing.channels
    how = "are crossed" if len(channels) == 2 else f"are crossed in a ring of {len(channels)}"
    works = "; ".join(f"{c} works {words_of(house, [load])}" for c, load in crossing.names)
    return fails(
        rules.CROSSED,
        Severity.FAULT,
        channels[0],
        f"{noun} {', '.join(channels)} {how}: {works}.",
        value=works,
        limit="each its own load",
        remedy=remedy,
        also=[*channels[1:], *(load for _, load in crossing.names)],
    )


def _shared(house: House, load: str, channels: tuple[str, ...]) -> Finding:
    return fails(
        rules.CROSSED,
        Severity.FAULT,
        channels[0],
        f"Gangs {', '.join(channels)} all work {words_of(house, [load])}.",
        value=", ".join(channels),
        limit="one gang, and its extension units where the design has them",
        remedy=f"If one is an extension unit, correct the survey; else find the joined conductors. {CAUTION}",
        also=[*channels[1:], load],
    )


def _press(house: House, press: Press) -> Iterator[Finding]:
    did = words_of(house, press.answered)
    if press.also_answered:
        did = f"{did} and {press.also_answered}" if press.answered else press.also_answered
    should = words_of(house, press.expected or ())
    label = "Entry" if press.subject.startswith("entry:") else "Gang"
    also = list(dict.fromkeys([*(press.expected or ()), *press.answered, *filter(None, [press.entry])]))
    if press.worked is Worked.AS_DESIGNED:
        yield passes(rules.CROSSED, press.place, value=did, limit=should, also=also)
        if press.expected:
            yield passes(rules.DEAD, press.place, value=did, limit=should, also=also)
        return
    told = {
        Worked.ANOTHER: f"works {did}, not {should}",
        Worked.SEVERAL: f"works {did}; it should work {should} alone",
        Worked.SHOULD_NOT: f"should work nothing and works {did}",
    }
    if press.worked in told:
        yield fails(
            rules.CROSSED,
            Severity.FAULT,
            press.place,
            f"{label} {press.place} {told[press.worked]}.",
            value=did,
            limit=should,
            remedy=_mend(house, press),
            also=also,
        )
    elif press.worked is Worked.NOTHING:
        yield _dead(press, label, should, also)
    elif press.worked is Worked.NOT_TESTED and press.expected:
        when = f" since {press.since} was fitted" if press.since else ""
        yield _missing(
            press.place, f"{label} {press.place}, which should work {should}, was not tested{when}.", also
        )


def _mend(house: House, press: Press) -> str:
    if press.worked is Worked.ANOTHER and press.answered:
        load = words_of(house, press.answered)
        return f"Either rename: {press.place} after {load}. Or find its conductor. {CAUTION} Test again."
    return f"Find what is joined to its conductor. {CAUTION} Test again."


def _dead(press: Press, label: str, should: str, also: list[str]) -> Finding:
    return fails(
        rules.DEAD,
        Severity.FAULT,
        press.place,
        f"{label} {press.place} works nothing; it should work {should}.",
        value="nothing",
        limit=should,
        remedy="Look first at the lamp, the breaker and the name of the entry; then at the conductors. "
        f"{CAUTION} Test again.",
        also=also,
    )


def _missing(place: str, says: str, also: list[str]) -> Finding:
    return fails(
        rules.MISSING,
        Severity.ADVICE,
        place,
        says,
        value="not tested",
        limit="tested",
        remedy="Press it, or run it, and record what answered.",
        also=also,
    )


def scene_findings(house: House, scenes: tuple[SceneTest, ...]) -> Iterator[Finding]:
    """One answer per scene asked about."""
    for scene in scenes:
        name = house.scenes[scene.scene].name if scene.scene in house.scenes else "not in this house"
        label = f"Scene {scene.scene} ({name})"
        if scene.disputed:
            continue  # the conflict is told
        if scene.tested is None:
            when = f" since {scene.since} was fitted" if scene.since else ""
            yield _missing(scene.scene, f"{label} was not tested{when}.", [])
        elif scene.as_expected:
            yield passes(rules.SCENE, scene.scene, also=[scene.tested])
        else:
            yield _scene_wrong(house, scene, label)


def _scene_wrong(house: House, scene: SceneTest, label: str) -> Finding:
    parts = [
        f"did not switch {words_of(house, scene.missing)}" if scene.missing else "",
        f"switched {words_of(house, scene.extra)} besides" if scene.extra else "",
        f"sent {words_of(house, scene.wrong_way)} the wrong way" if scene.wrong_way else "",
        f"worked something in no book ({scene.also_answered})" if scene.also_answered else "",
    ]
    says = "; ".join(p for p in parts if p)
    return fails(
        rules.SCENE,
        Severity.FAULT,
        scene.scene,
        f"{label} {says}.",
        value=says,
        limit="every load of the scene, its own way, and no other",
        remedy="Teach the scene again where it is kept, gang by gang, once crossed gangs are mended.",
        also=[*scene.missing, *scene.extra, *scene.wrong_way],
    )
