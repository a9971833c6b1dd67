"""The face of a pack with what is open in words, and the register of its sheets."""

from collections.abc import Sequence

from secondfix.findings import Finding, Outcome
from secondfix.house import House, is_nec
from secondfix.papers.blocks import Cell, Sheet, column, cover, ident, soft, table
from secondfix.papers.drawing import shape_of
from secondfix.papers.findings_paper import shape_count
from secondfix.papers.pack.drawing_sheets import elevations_title
from secondfix.papers.places import thing_words
from secondfix.papers.setting import Setting
from secondfix.papers.words import counted

_MOST_NAMED = 6  # places that a cover names before it only counts


def pack_title(house: House) -> str:
    """What the pack is called where the house stands."""
    return "Closeout pack" if is_nec(house) else "Handover pack"


def pack_file(house: House) -> str:
    """What its file is called: ``handover-pack.pdf``, or ``closeout-pack.pdf``."""
    return f"{pack_title(house).lower().replace(' ', '-')}.pdf"


def cover_sheet(house: House, answers: Sequence[Finding], setting: Setting, *, site: str) -> Sheet:
    """Name, issue, supply, what is open at this issue, and what ``site`` says of tests."""
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
    face = cover(house.name, title, [p for p in pairs if p[1]], [*_open_words(house, answers), site])
    return Sheet("S0/01", title, "", [face])


def _open_words(house: House, answers: Sequence[Finding]) -> list[Cell]:
    """What is open at this issue, in words: dangers and faults, and what could not be told."""
    if not answers:
        return ["Nothing was asked of this house yet: what is open is not known."]
    out: list[Cell] = []
    for shape in ("danger", "fault"):
        found = [f for f in answers if shape_of(f) == shape]
        if found:
            words = f"{shape_count(shape, len(found))} open at this issue: {_named(house, found)}."
            out.append({"words": words, "style": "strong" if shape == "danger" else "", "shape": shape})
    if not any(shape_of(f) == "danger" for f in answers):
        out.insert(0, "No open danger is known at this issue.")
    untold = [f for f in answers if f.outcome is Outcome.CANNOT_TELL]
    if untold:
        worst = sum(shape == "danger" for shape in (f.severity.value if f.severity else "" for f in untold))
        could = f", of which {worst} could be a danger" if worst else ""
        words = f"{counted(len(untold), 'answer')} cannot be told{could}: {_named(house, untold)}."
        out.append({"words": words, "style": "", "shape": "cannot_tell"})
    else:
        out.append("Every question that was asked could be answered.")
    return out


def _named(house: House, findings: Sequence[Finding]) -> str:
    """The places of some findings, the first few by name."""
    places = list(dict.fromkeys(thing_words(house, f.place) for f in findings))
    more = len(places) - _MOST_NAMED
    rest = [f"and {counted(more, 'more place')}"] if more > 0 else []
    return "; ".join([*places[:_MOST_NAMED], *rest])


def register_sheet(house: House, others: Sequence[Sheet]) -> Sheet:
    """Every sheet with its page; a room without an elevation is said to have no wall box."""
    own = Sheet("S0/02", "Drawing register", "Every sheet of this pack.", [])
    rows: list[list[Cell]] = [
        [ident(s.number), s.title, {"page_of": s.number}] for s in (others[0], own, *others[1:])
    ]
    drawn = {s.title for s in others}
    bare = [
        [soft("none"), soft(f"{elevations_title(r.name)}: no wall box"), ""]
        for r in house.rooms.values()
        if elevations_title(r.name) not in drawn
    ]
    at = max((n for n, s in enumerate(others, 2) if s.number.startswith("S3/")), default=len(rows))
    rows[at:at] = bare
    columns = [column("No.", mm=20), column("Sheet", fr=1), column("Page", mm=20, align="right")]
    return Sheet(own.number, own.title, own.says, [table(columns, rows)])
