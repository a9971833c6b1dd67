"""Assumptions where they are leaned on: a small block on the sheet whose answers hang on them."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from secondfix.assumptions import Assumption, Assumptions
from secondfix.findings import Finding
from secondfix.papers.blocks import Block, Sheet
from secondfix.papers.drawing import wrapped
from secondfix.papers.figures import assumption_range, assumption_value
from secondfix.papers.setting import PX_PER_MM

_SIZE_PX, _LINE_MM, _FRAME_MM = 8 * 96 / 72, 4.1, 9.0  # of the block's 8 pt text; its title and gaps


def names_of(findings: Iterable[Finding]) -> tuple[str, ...]:
    """The assumptions that some findings lean on, each once, by name."""
    return tuple(sorted({name for f in findings for name in f.assumptions}))


def leaned_blocks(
    assumptions: Assumptions, names: Iterable[str], *, nec: bool, sources_on: str = ""
) -> list[Block]:
    """One block with every name, value, range, source and who set it; none where nothing is leaned on.

    ``sources_on``: the sheet of the same paper that has the sources, where this one has no room for them.
    """
    items = _items(assumptions, names, nec=nec, sources_on=sources_on)
    return [{"kind": "assumed", "items": items}] if items else []


def leaning(
    sheet: Sheet, assumptions: Assumptions, names: Iterable[str], *, nec: bool, sources_on: str = ""
) -> Sheet:
    """The sheet with that block at its end."""
    block = leaned_blocks(assumptions, names, nec=nec, sources_on=sources_on)
    return replace(sheet, blocks=[*sheet.blocks, *block])


def leaned_height_mm(
    assumptions: Assumptions, names: Iterable[str], *, nec: bool, width_mm: float, sources_on: str = ""
) -> float:
    """About how much of a sheet the block takes, for drawings that leave room for it."""
    items = _items(assumptions, names, nec=nec, sources_on=sources_on)
    width = width_mm * PX_PER_MM - 20
    lines = sum(len(wrapped(f"{i['said']} {i['from']}", width=width, size=_SIZE_PX)) for i in items)
    return _FRAME_MM + lines * _LINE_MM if items else 0.0


def _items(
    assumptions: Assumptions, names: Iterable[str], *, nec: bool, sources_on: str = ""
) -> list[dict[str, str]]:
    """Those of one setter and one source stand together."""
    groups: dict[tuple[str, str], list[Assumption]] = {}
    for name in sorted(set(names)):
        a = assumptions[name]
        groups.setdefault((a.set_by, f"sheet {sources_on}" if sources_on else a.source), []).append(a)
    return [
        {"said": _said(same, nec=nec), "from": f"Source: {source}. Set by: {set_by}."}
        for (set_by, source), same in groups.items()
    ]


def _said(same: Sequence[Assumption], *, nec: bool) -> str:
    values = (f"{a.name} {assumption_value(a, nec=nec)} ({assumption_range(a, nec=nec)})" for a in same)
    return "; ".join(values) + "."
