"""The handover pack: everything the next person at the house needs, as one drawing set."""

from collections.abc import Iterable, Sequence

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Outcome, in_order
from secondfix.house import House, Schedule
from secondfix.papers.blocks import Block, Sheet, column, cover, ident, notes, para, picture, soft, table
from secondfix.papers.cautions import cautions_sheet
from secondfix.papers.coverage import TextFault
from secondfix.papers.drawing import (
    SHAPE_WORDS,
    Keynote,
    draw_elevations,
    draw_plan,
    keynotes_for,
    notes_height,
    shape_of,
)
from secondfix.papers.findings_paper import assumptions_sheet
from secondfix.papers.pack.forms import failing_sheet, function_test_sheet
from secondfix.papers.pack.key_ring import Key, key_ring_sheet
from secondfix.papers.pack.networks import names_sheet, networks_sheet
from secondfix.papers.pack.schedules import scene_schedule_sheet, switch_schedule_sheet
from secondfix.papers.palette import PRINT
from secondfix.papers.places import thing_words
from secondfix.papers.setting import Setting, body_mm, is_nec
from secondfix.papers.typeset import typeset
from secondfix.papers.words import sentence
from secondfix.scenes import SceneTime

__all__ = ["Key", "pack_pdf", "pack_sheets"]

_PX_PER_MM = 96 / 25.4
_HEAD_MM = 19.0  # what title and remarks of a drawing sheet take


def pack_pdf(
    schedule: Schedule,
    findings: Iterable[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    keys: Sequence[Key] = (),
    times: Sequence[SceneTime] = (),
) -> bytes | list[TextFault]:
    """The handover pack (NFPA 70 houses: closeout pack) as a PDF, or its unprintable texts.

    Cover, drawing register, cautions, snag list, assumptions, plan per storey, room elevations, switch
    schedule, networks, names, scene schedule, function test form, what to do when a switch fails; the key
    ring only where ``keys`` are given, on a page apart; how long scenes take where ``times`` are. The same
    arguments give the same bytes.
    """
    sheets = pack_sheets(schedule, in_order(findings), assumptions, setting=setting, keys=keys, times=times)
    title = pack_title(schedule.house)
    return typeset(sheets, title=title.lower(), house=schedule.house, setting=setting, landscape=True)


def pack_title(house: House) -> str:
    """What the pack is called where the house stands."""
    return "Closeout pack" if is_nec(house) else "Handover pack"


def pack_sheets(
    schedule: Schedule,
    answers: Sequence[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    keys: Sequence[Key],
    times: Sequence[SceneTime] = (),
) -> list[Sheet]:
    """Every sheet in order; the register lists the others."""
    wide, high = (mm * _PX_PER_MM for mm in body_mm(setting.size_for(schedule.house), landscape=True))
    rest = [
        cautions_sheet("S0/03"),
        _snag_sheet(schedule, answers, "S1/01"),
        assumptions_sheet(answers, assumptions, "S1/02"),
        *_plans(schedule, wide, high),
        *_elevations(schedule, answers, wide, high),
        switch_schedule_sheet(schedule, "S4/01"),
        networks_sheet(schedule, "S5/01"),
        names_sheet(schedule, "S5/02"),
        scene_schedule_sheet(schedule, "S6/01", times),
        function_test_sheet(schedule, "S8/01"),
        failing_sheet(schedule, "S8/02"),
        *([key_ring_sheet(keys, "S9/01")] if keys else []),
    ]
    face = _cover_sheet(schedule.house, setting)
    return [face, _register_sheet([face, *rest]), *rest]


def _cover_sheet(house: House, setting: Setting) -> Sheet:
    title = pack_title(house)
    supply = [
        f"{house.mains_voltage_v} V" if house.mains_voltage_v else "",
        f"{house.mains_frequency_hz} Hz" if house.mains_frequency_hz else "",
    ]
    pairs = [
        ("Issue", setting.block.issue),
        ("Date", setting.block.date.isoformat()),
        ("Drawn by", setting.block.drawn_by),
        ("Supply", " ".join(w for w in supply if w) or "not known"),
        ("Wiring rules", house.wiring_rules.value.upper() if house.wiring_rules else "not known"),
        ("House id", house.id),
        ("Note", house.note),
    ]
    return Sheet("S0/01", title, "", [cover(house.name, title, [p for p in pairs if p[1]])])


def _register_sheet(others: Sequence[Sheet]) -> Sheet:
    own = Sheet("S0/02", "Drawing register", "Every sheet of this pack.", [])
    rows = [[ident(s.number), s.title, {"page_of": s.number}] for s in (others[0], own, *others[1:])]
    columns = [column("No.", mm=20), column("Sheet", fr=1), column("Page", mm=20, align="right")]
    return Sheet(own.number, own.title, own.says, [table(columns, rows)])


def _snag_sheet(schedule: Schedule, answers: Sequence[Finding], number: str) -> Sheet:
    told = [f for f in answers if f.outcome is not Outcome.PASSES]
    rows = [
        [
            {"words": SHAPE_WORDS[shape_of(f)], "style": "strong", "shape": shape_of(f), "number": str(n)},
            thing_words(schedule.house, f.place),
            f.says,
            sentence(f.remedy),
            soft(f.rule),
        ]
        for n, f in enumerate(told, 1)
    ]
    columns = [
        column("No.", mm=33),
        column("Place", fr=1.4),
        column("What was found", fr=3),
        column("Remedy", fr=2.6),
        column("Rule", mm=30),
    ]
    title = "Punch list" if is_nec(schedule.house) else "Snag list"
    passed = len(answers) - len(told)
    says = f"What is open at this issue. Answers of 'no fault found': {passed}."
    blocks: list[Block] = [table(columns, rows)] if rows else [para("No fault found.", style="strong")]
    return Sheet(number, title, says, blocks)


def _plans(schedule: Schedule, wide: float, high: float) -> list[Sheet]:
    out = []
    for n, (storey_id, storey) in enumerate(schedule.house.storeys.items(), 1):
        drawn = draw_plan(
            schedule, storey_id, palette=PRINT, width=wide, height=high - _HEAD_MM * _PX_PER_MM, words=False
        )
        title = f"{storey.name}, plan"
        blocks = [picture("plan", title, width=drawn.width, height=drawn.height)]
        out.append(Sheet(f"S2/{n:02d}", title, " ".join(drawn.remarks), blocks, {"plan": drawn.svg}))
    return out


def _elevations(schedule: Schedule, answers: Sequence[Finding], wide: float, high: float) -> list[Sheet]:
    """A sheet for every room that has boxes or findings."""
    house = schedule.house
    with_boxes = {b.room for b in house.boxes.values()}
    out: list[Sheet] = []
    for room_id, room in house.rooms.items():
        own = keynotes_for(house, answers, room_id)
        if room_id in with_boxes or own:
            left = high - _HEAD_MM * _PX_PER_MM - notes_height(own, width=wide)
            drawn = draw_elevations(
                schedule, room_id, own, palette=PRINT, width=wide, words=False, height=left
            )
            title = f"{room.name}, elevations"
            blocks = [
                picture("walls", title, width=drawn.width, height=drawn.height),
                notes([_note(k) for k in own]),
            ]
            number = f"S3/{len(out) + 1:02d}"
            out.append(Sheet(number, title, " ".join(drawn.remarks), blocks, {"walls": drawn.svg}))
    return out


def _note(keynote: Keynote) -> Block:
    f = keynote.finding
    head = f"{SHAPE_WORDS[keynote.shape]}, {f.place}"
    says = {"says": f.says, "soft": sentence(f.remedy)}
    return {"shape": keynote.shape, "number": str(keynote.number), "head": head, **says}
