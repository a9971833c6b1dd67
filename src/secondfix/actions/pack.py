"""Pack: every paper and picture of a house, made of the same answers that the other verbs print."""

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial

from secondfix import radio, selection
from secondfix.actions.air import air_of
from secondfix.actions.as_built import as_built
from secondfix.actions.check import Checked, check
from secondfix.actions.measured import measured_of
from secondfix.actions.ring import opened_by
from secondfix.actions.scenes import scenes
from secondfix.actions.settle import settled_assumptions
from secondfix.actions.walk import Walked, walk
from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.findings import Finding
from secondfix.house import House, Schedule, schedule
from secondfix.journal import Journal, fitted_since, function_test
from secondfix.maintenance import children_of
from secondfix.papers import (
    Hanging,
    Key,
    Record,
    Setting,
    TextFault,
    elevations_svg,
    findings_pdf,
    key_ring_pdf,
    pack_file,
    pack_pdf,
    plan_svg,
    revision_words,
    worksheets_pdf,
)
from secondfix.scenes import SceneTime

_RING = "key-ring.pdf"


@dataclass(frozen=True, slots=True)
class Site:
    """What happened on site. ``now`` is a time of day with offset, None: whether an entry is dated later is
    not asked; ``revision`` what the revision is called, empty: as the entries say."""

    journal: Journal
    now: str | None = None
    revision: str = ""


@dataclass(frozen=True, slots=True)
class Packed:
    """File names to bytes, and the answers they were made of.

    ``key_ring`` is apart from ``files``, so that nobody writes it where others read: None unless codes were
    given that the house refers to.
    """

    files: Mapping[str, bytes]
    key_ring: bytes | None
    checked: Checked
    walked: Walked


def pack(
    house: House,
    *,
    assumptions: Assumptions,
    setting: Setting,
    codes: Mapping[str, str] | None = None,
    models: Mapping[str, Model] | None = None,
    site: Site | None = None,
    only: Collection[str] | None = None,
    progress: Callable[[str], None] = lambda _: None,
) -> Packed | list[TextFault]:
    """Handover pack, findings, worksheets, plans and elevations; or every text that cannot be printed.

    ``codes`` (reference to code) come only from a key ring that somebody opened for this: they make a paper
    of their own, and no other paper holds one. ``models`` are those at hand beside the house's own, for
    what else would fit and what was fitted on site. With ``site`` every paper is of the as-built house, and
    the title block says of which revision. The same arguments give the same bytes. ``only`` makes the files
    of these names alone; ``progress`` is told the words of each step before it is taken, and may raise.
    """
    progress("answers")
    asked = _asked(house, assumptions, setting, models or {}, site)
    house, rows, setting = asked.rows.house, asked.rows, asked.setting
    checked, walked, settled = asked.checked, walk(house, assumptions=assumptions), asked.settled
    keys = keys_of(rows, codes or {})
    papers: dict[str, Callable[[], bytes | list[TextFault]]] = {
        pack_file(house): asked.pack,
        "findings.pdf": lambda: findings_pdf(rows, asked.answers, settled, setting=setting),
        "worksheets.pdf": lambda: worksheets_pdf(
            rows, walked.walk, checked.findings, settled, setting=setting
        ),
        **({_RING: lambda: key_ring_pdf(house, keys, setting=setting)} if keys else {}),
    }
    made: dict[str, bytes] = {}
    faults: list[TextFault] = []
    for name, make in papers.items():
        if only is None or name in only:
            progress(name)
            paper = make()
            if isinstance(paper, bytes):
                made[name] = paper
            else:
                faults += paper
    if faults:
        return list(dict.fromkeys(faults))
    ring = made.pop(_RING, None)
    for name, picture in drawings(rows).items():
        if only is None or name in only:
            progress(name)
            made[name] = picture(asked.answers)
    return Packed(made, ring, checked, walked)


def handover(
    house: House, *, assumptions: Assumptions, setting: Setting, models: Mapping[str, Model], site: Site
) -> bytes | list[TextFault]:
    """The handover pack alone, of the as-built house: as ``pack`` makes it."""
    return _asked(house, assumptions, setting, models, site).pack()


@dataclass(frozen=True, slots=True)
class _Asked:
    """The answers that the handover pack prints, and how it is set."""

    rows: Schedule
    setting: Setting
    settled: Assumptions
    checked: Checked
    answers: tuple[Finding, ...]
    times: tuple[SceneTime, ...]
    hanging: Hanging
    record: Record | None

    def pack(self) -> bytes | list[TextFault]:
        return pack_pdf(
            self.rows,
            self.answers,
            self.settled,
            setting=self.setting,
            times=self.times,
            record=self.record,
            hanging=self.hanging,
            reached=self.checked.answers.reached,
            learned=self.checked.answers.learned,
        )


def _asked(
    house: House,
    assumptions: Assumptions,
    setting: Setting,
    models: Mapping[str, Model],
    site: Site | None,
) -> _Asked:
    """Everything asked once; of the as-built house where there is a journal."""
    record = recorded(house, site, models=models) if site else None
    if record:
        house, setting = record.house, _as_built_setting(setting, record)
    measured = measured_of(house, site.journal).measured if site else ()
    checked = check(house, assumptions=assumptions, measured=measured)
    rows, settled = schedule(house, house.models), settled_assumptions(house, assumptions)
    answers = (*checked.findings, *(record.answers if record else ()))
    reached = checked.answers.reached
    times = tuple(scenes(house, assumptions=assumptions, air=air_of(house, reached)).times)
    hanging = hanging_of(rows, settled, models, reached)
    return _Asked(rows, setting, settled, checked, answers, times, hanging, record)


def recorded(house: House, site: Site, *, models: Mapping[str, Model]) -> Record:
    """The journal's answers over this revision."""
    found = as_built(house, site.journal, models=models, now=site.now)
    built = found.built
    since = fitted_since(built.house, built.folded)
    test_as_built = function_test(built.house, built.folded, since=since)
    revision = site.revision or revision_words(built)
    return Record(built, found.test, test_as_built, found.scenes, found.findings, revision)


def _as_built_setting(setting: Setting, record: Record) -> Setting:
    issue = f"{setting.block.issue}, as-built of revision {record.revision}"
    return replace(setting, block=replace(setting.block, issue=issue))


def hanging_of(
    rows: Schedule, settled: Assumptions, models: Mapping[str, Model], answer: radio.Reach
) -> Hanging:
    """Whom each device carries by radio, and which models would fit where it stands."""
    carries = {d: children_of(d, answer) for d in rows.house.devices}
    choices = selection.select(rows.house, {**models, **rows.house.models}, settled)
    fits = {c.spot.device_id: tuple(f.model for f in c.fits) for c in choices if c.spot.device_id}
    return Hanging(carries, fits)


def drawings(rows: Schedule) -> dict[str, Callable[[Sequence[Finding]], bytes]]:
    """Each plan and elevation that a pack has, by the name of its file: what draws it with these answers."""
    plans = {f"plan-{storey}.svg": partial(_plan, rows, storey) for storey in rows.house.storeys}
    with_boxes = {box.room for box in rows.house.boxes.values()}
    rooms = (r for r in rows.house.rooms if r in with_boxes)
    return {**plans, **{f"elevations-{room}.svg": partial(_elevations, rows, room) for room in rooms}}


def _plan(rows: Schedule, storey: str, answers: Sequence[Finding]) -> bytes:
    return plan_svg(rows, storey, answers).encode()


def _elevations(rows: Schedule, room: str, answers: Sequence[Finding]) -> bytes:
    return elevations_svg(rows, room, answers).encode()


def keys_of(rows: Schedule, codes: Mapping[str, str]) -> tuple[Key, ...]:
    """The codes that this house refers to, each with what it opens."""
    opens = opened_by(rows)
    return tuple(Key(ref, opens[ref], codes[ref], codes[ref]) for ref in sorted(opens) if ref in codes)
