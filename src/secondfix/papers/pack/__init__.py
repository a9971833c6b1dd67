"""The handover pack: everything the next person at the house needs, as one drawing set."""

from collections.abc import Iterable, Sequence

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, in_order
from secondfix.house import Schedule
from secondfix.papers.blocks import Sheet
from secondfix.papers.cautions import cautions_sheet
from secondfix.papers.coverage import TextFault
from secondfix.papers.drawing import keynotes
from secondfix.papers.findings_paper import assumptions_sheet
from secondfix.papers.pack.drawing_sheets import PX_PER_MM, elevation_sheets, plan_sheets
from secondfix.papers.pack.face import cover_sheet, pack_title, register_sheet
from secondfix.papers.pack.forms import failing_sheet, function_test_sheet
from secondfix.papers.pack.key_ring import Key, key_ring_pdf
from secondfix.papers.pack.networks import names_sheet, networks_sheet
from secondfix.papers.pack.schedules import scene_schedule_sheet, switch_schedule_sheet
from secondfix.papers.pack.snag_list import snag_sheet
from secondfix.papers.setting import Setting, body_mm
from secondfix.papers.typeset import typeset
from secondfix.scenes import SceneTime

__all__ = ["Key", "key_ring_pdf", "pack_pdf"]


def pack_pdf(
    schedule: Schedule,
    findings: Iterable[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    times: Iterable[SceneTime] = (),
) -> bytes | list[TextFault]:
    """The handover pack (NFPA 70 houses: closeout pack) as a PDF, or its unprintable texts.

    Cover with what is open, drawing register, cautions, snag list, assumptions, plan per storey, room
    elevations, switch schedule, networks, names, scene schedule (how long scenes take, where ``times`` are
    given), function test form, what to do when a switch fails. It holds no code and no key: these have a
    paper of their own. The same arguments give the same bytes.
    """
    sheets = _sheets(schedule, in_order(findings), assumptions, setting=setting, times=times)
    title = pack_title(schedule.house)
    return typeset(sheets, title=title.lower(), house=schedule.house, setting=setting, landscape=True)


def _sheets(
    schedule: Schedule,
    answers: Sequence[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    times: Iterable[SceneTime],
) -> list[Sheet]:
    """Every sheet in order; the register lists the others."""
    marks = keynotes(answers)
    wide, high = (mm * PX_PER_MM for mm in body_mm(setting.size_for(schedule.house), landscape=True))
    rest = [
        cautions_sheet(schedule.house, "S0/03"),
        snag_sheet(schedule, answers, "S1/01"),
        assumptions_sheet(schedule, answers, assumptions, "S1/02"),
        *plan_sheets(schedule, marks, wide=wide, high=high),
        *elevation_sheets(schedule, marks, wide=wide, high=high),
        switch_schedule_sheet(schedule, "S4/01"),
        networks_sheet(schedule, "S5/01"),
        names_sheet(schedule, "S5/02"),
        scene_schedule_sheet(schedule, "S6/01", times),
        function_test_sheet(schedule, "S8/01"),
        failing_sheet(schedule, "S8/02"),
    ]
    face = cover_sheet(schedule.house, answers, setting)
    return [face, register_sheet(schedule.house, [face, *rest]), *rest]
