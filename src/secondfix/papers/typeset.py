"""From sheets to a PDF: a folder for the time of setting, data as JSON, one template, a fixed date."""

import json
import tempfile
from collections.abc import Sequence
from importlib.resources import files
from pathlib import Path
from typing import Any

from secondfix.house import House, is_nec
from secondfix.papers.blocks import Sheet
from secondfix.papers.coverage import TextFault, plain_text, text_faults
from secondfix.papers.font import FAMILY, font_folder
from secondfix.papers.palette import PRINT
from secondfix.papers.setting import BLOCK_MM, FRAME_LEFT_MM, FRAME_MM, INSET_MM, Setting

_TEMPLATES = ("paper.typ", "frame.typ", "blocks.typ", "marks.typ")


def typeset(
    sheets: Sequence[Sheet], *, title: str, house: House, setting: Setting, landscape: bool
) -> bytes | list[TextFault]:
    """The paper, or every text that its fonts cannot draw."""
    data = plain_text(_data(sheets, title=title, house=house, setting=setting, landscape=landscape))
    faults = text_faults(data, extra_fonts=setting.extra_fonts)
    if faults:
        return faults
    with tempfile.TemporaryDirectory(prefix="secondfix-paper-") as folder:
        root = Path(folder)
        for name in _TEMPLATES:
            source = files("secondfix.papers").joinpath("templates", name)
            (root / name).write_bytes(source.read_bytes())
        (root / "data.json").write_text(json.dumps(data, ensure_ascii=False), encoding="utf-8")
        for n, sheet in enumerate(sheets):
            for name, svg in sheet.pictures.items():
                (root / f"{n}-{name}.svg").write_text(svg, encoding="utf-8")
        return _compiled(root, setting)


def _compiled(root: Path, setting: Setting) -> bytes:
    import typst  # noqa: PLC0415 - heavy; only who prints pays for it

    made = typst.compile(
        str(root / "paper.typ"),
        root=str(root),
        font_paths=[str(font_folder()), *(str(f) for f in setting.extra_fonts)],
        ignore_system_fonts=True,
        format="pdf",
        # PDF/UA-1 (ISO 14289-1): tagged, title, language, words for every picture; PDF/A-2a: to be kept.
        pdf_standards=["ua-1", "a-2a"],
    )
    assert isinstance(made, bytes)
    return made


def _data(
    sheets: Sequence[Sheet], *, title: str, house: House, setting: Setting, landscape: bool
) -> dict[str, Any]:
    day = setting.block.date
    return {
        "title": f"{house.name}: {title}",
        "house": house.name,
        "font": FAMILY,
        "region": "us" if is_nec(house) else "gb",
        "size": setting.size_for(house).value,
        "landscape": landscape,
        "date": {"year": day.year, "month": day.month, "day": day.day},
        "block": {"issue": setting.block.issue, "date": day.isoformat(), "drawn": setting.block.drawn_by},
        "frame": {"left": FRAME_LEFT_MM, "other": FRAME_MM, "block": BLOCK_MM, "inset": INSET_MM},
        "colours": {
            "ink": PRINT.ink,
            "soft": PRINT.soft,
            "line": PRINT.line,
            "hair": PRINT.hair,
            "accent": PRINT.accent,
        },
        "sheets": [
            {
                "number": sheet.number,
                "title": sheet.title,
                "says": sheet.says,
                "blocks": [_with_files(b, n) for b in sheet.blocks],
            }
            for n, sheet in enumerate(sheets)
        ],
    }


def _with_files(value: Any, sheet: int) -> Any:
    """Names of pictures as the names of the files that hold them."""
    if isinstance(value, dict):
        named = {k: _with_files(v, sheet) for k, v in value.items()}
        return named | {"file": f"{sheet}-{value['file']}.svg"} if value.get("file") else named
    return [_with_files(v, sheet) for v in value] if isinstance(value, list) else value
