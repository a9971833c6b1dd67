"""The handover pack: everything the next person at the house needs, as one drawing set."""

from collections.abc import Iterable, Sequence

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, in_order
from secondfix.house import Schedule, is_nec
from secondfix.papers.blocks import Sheet
from secondfix.papers.cautions import cautions_sheet
from secondfix.papers.coverage import TextFault
from secondfix.papers.drawing import keynotes
from secondfix.papers.findings_paper import all_assumptions_sheet
from secondfix.papers.leaned import leaning, names_of
from secondfix.papers.light_sheet import light_sheets
from secondfix.papers.pack.circuits import circuits_sheet
from secondfix.papers.pack.drawing_sheets import elevation_sheets, plan_sheets
from secondfix.papers.pack.face import cover_sheet, pack_file, pack_title, register_sheet
from secondfix.papers.pack.forms import failing_sheet, function_test_sheet
from secondfix.papers.pack.hanging import Hanging, hanging_sheet
from secondfix.papers.pack.key_ring import Key, key_ring_pdf
from secondfix.papers.pack.networks import names_sheet, networks_sheet
from secondfix.papers.pack.radio_sheets import radio_sheets
from secondfix.papers.pack.schedules import scene_schedule_sheet, switch_schedule_sheet
from secondfix.papers.pack.snag_list import snag_sheet
from secondfix.papers.record import Record, as_designed, record_sheets, site_words
from secondfix.papers.setting import PX_PER_MM, Setting, body_mm
from secondfix.papers.typeset import typeset
from secondfix.radio import Learned, Reach
from secondfix.scenes import SceneTime

__all__ = ["Hanging", "Key", "key_ring_pdf", "pack_file", "pack_pdf"]


def pack_pdf(
    schedule: Schedule,
    findings: Iterable[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    times: Iterable[SceneTime] = (),
    record: Record | None = None,
    hanging: Hanging | None = None,
    reached: Reach | None = None,
    learned: Learned | None = None,
) -> bytes | list[TextFault]:
    """The handover pack (NFPA 70 houses: closeout pack) as a PDF, or its unprintable texts.

    Cover with what is open, drawing register, cautions, snag list, assumptions, plan per storey, room
    elevations, switch schedule, circuits, a sheet per light worked from several places, networks, names,
    radio of each network on each storey (where ``reached`` is given; ``learned`` from measured links),
    scene schedule (how long scenes take, where ``times`` are given), function test form, what to do when a
    switch fails, what hangs on each device, then what the journal tells. ``record`` is the journal's answer,
    and ``schedule`` then that of the as-built house; without one the pack says that no journal was given.
    A sheet whose answers lean on assumptions says on which. It holds no code and no key: these have a
    paper of their own. The same arguments give the same bytes.
    """
    sheets = _sheets(
        schedule,
        in_order(findings),
        assumptions,
        setting=setting,
        times=times,
        record=record,
        hanging=hanging,
        reached=reached,
        learned=learned,
    )
    title = pack_title(schedule.house)
    return typeset(sheets, title=title.lower(), house=schedule.house, setting=setting, landscape=True)


def _sheets(
    schedule: Schedule,
    answers: Sequence[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    times: Iterable[SceneTime],
    record: Record | None,
    hanging: Hanging | None,
    reached: Reach | None,
    learned: Learned | None,
) -> list[Sheet]:
    """Every sheet in order; the register lists the others."""
    marks = keynotes(answers)
    wide, high = (mm * PX_PER_MM for mm in body_mm(setting.size_for(schedule.house), landscape=True))
    nec = is_nec(schedule.house)
    of_snags, of_scenes = names_of(m.finding for m in marks), names_of(_of_scenes(answers))
    rest = [
        cautions_sheet(schedule.house, "S0/03"),
        leaning(snag_sheet(schedule, answers, "S1/01"), assumptions, of_snags, nec=nec),
        all_assumptions_sheet(schedule, answers, assumptions, "S1/02"),
        *plan_sheets(schedule, marks, wide=wide, high=high),
        *elevation_sheets(schedule, marks, assumptions, wide=wide, high=high),
        switch_schedule_sheet(schedule, answers, assumptions, "S4/01"),
        circuits_sheet(schedule, answers, assumptions, "S4/02"),
        *(s for _, s in light_sheets(schedule, answers, assumptions, wide=wide)),
        networks_sheet(schedule, "S5/01"),
        names_sheet(schedule, "S5/02"),
        *radio_sheets(schedule, reached, assumptions, learned=learned, wide=wide, high=high),
        leaning(scene_schedule_sheet(schedule, "S6/01", times), assumptions, of_scenes, nec=nec),
        function_test_sheet(schedule, "S8/01", done=as_designed(record)),
        failing_sheet(schedule, "S8/02"),
        hanging_sheet(schedule, hanging, "S8/03"),
        *record_sheets(record, answers),
    ]
    face = cover_sheet(schedule.house, answers, setting, site=site_words(record))
    return [face, register_sheet(schedule.house, [face, *rest]), *rest]


def _of_scenes(answers: Sequence[Finding]) -> list[Finding]:
    return [f for f in answers if f.rule.startswith("scenes.")]
