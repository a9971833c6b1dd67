"""The verb ``worksheet``."""

from collections.abc import Iterable
from dataclasses import asdict
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.settle import settled_assumptions
from secondfix.actions.walk import walk
from secondfix.cli.opening import AsJson, Assume, FirmFolder, HouseFile, opened, print_json, refuse, verb_app
from secondfix.cli.page import para
from secondfix.cli.paper_options import (
    DrawnBy,
    Issue,
    PaperDate,
    PaperSize,
    setting_of,
    unprintable,
    write_file,
)
from secondfix.house import Fault, House, is_nec
from secondfix.joining import CodeLine, EntryRow, Worksheet, before_boxes, stage_words, to_mind

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    device: Annotated[str | None, typer.Option(help="Only the sheet of the device with this id.")] = None,
    pdf: Annotated[Path | None, typer.Option(metavar="FILE", help="Write all as a PDF instead.")] = None,
    paper: PaperSize = None,
    issue: Issue = "draft",
    drawn_by: DrawnBy = "",
    on: PaperDate = None,
    as_json: AsJson = False,
) -> None:
    """One sheet for each device, in the order of the walk: cautions, procedure, entries, names, tests."""
    house, firm = opened(house_file, firm_folder, assume)
    if device is not None and device not in house.devices:
        ids = ", ".join(house.devices) or "none: the house has no device"
        refuse([Fault("--device", "", f"'{device}'", f"one of {ids}")])
    walked = walk(house, assumptions=firm.assumptions)
    if pdf is not None:
        from secondfix.actions.check import check  # noqa: PLC0415 - only who prints pays for it
        from secondfix.papers import worksheets_pdf  # noqa: PLC0415 - as above

        setting = setting_of(paper, issue=issue, drawn_by=drawn_by, on=on)
        findings = check(house, assumptions=firm.assumptions).findings
        settled = settled_assumptions(house, firm.assumptions)
        made = worksheets_pdf(walked.schedule, walked.walk, findings, settled, setting=setting)
        if isinstance(made, list):
            unprintable(made)
        write_file(pdf, made)
        return
    sheets = [w for w in walked.worksheets if device in {None, w.device}]
    if as_json:
        print_json({"worksheets": [asdict(w) for w in sheets]})
    else:
        texts = (as_text(w, nec=is_nec(house)) for w in sheets)
        print("\n\n".join([_before(house), *texts]))  # noqa: T201 - the command line prints


def _before(house: House) -> str:
    told = (*before_boxes(house), *to_mind(house))
    return "\n".join(["Before every box:", *(para(f"- {c.words}", indent=2, hang=2) for c in told)])


def as_text(w: Worksheet, *, nec: bool = False) -> str:
    """One worksheet as a page of text: what comes first, a reset and the join apart, each counted from 1."""
    warned = (w.isolate, *(c.words for c in w.cautions), *(f"{_capital(m.value)}." for m in w.marks))
    told = (w.entries_words, *w.tell_apart)
    after = (w.power_loss, *w.time_limits, *(f"test: {t.press} {t.answer}" for t in w.tests))
    lines = [
        f"{w.number}. {w.place_title}: {w.device_title}",
        para(f"{stage_words(w.stage, nec=nec)}. {_capital(w.where)}.", indent=3),
        *_lines([f"▲ {text}" for text in warned if text]),
        *_lines([_code(w.code)] if w.code else []),
        *_removal(w.removal),
        *(_block("Join", (*w.window, w.through, w.time), w.procedure) if w.joins else ()),
        *_lines(w.extending),
        *_lines(told),
        *_lines([_entry(e) for e in w.entries], indent=5),
        *_lines(after),
    ]
    if w.when_nothing:
        lines += [
            "   If nothing appears:",
            *_lines([f"- {t.seen}: {t.do}" for t in w.when_nothing], indent=5),
        ]
    return "\n".join(lines)


def _removal(sentences: tuple[str, ...]) -> list[str]:
    """When it is asked for and its steps; a sentence that ends in a colon begins a block of its own."""
    if not sentences:
        return []
    title, steps = f"First. {sentences[0]}", list[str]()
    lines: list[str] = []
    for words in sentences[1:]:
        if words.endswith(":"):
            lines += _block(title, (), steps)
            title, steps = words.removesuffix(":"), []
        else:
            steps.append(words)
    return [*lines, *_block(title, (), steps)]


def _block(title: str, told: Iterable[str], steps: Iterable[str]) -> list[str]:
    head = " ".join((title if title.endswith(".") else f"{title}:", *told))
    return [
        para(head, indent=3, hang=2),
        *(para(f"{n:>2}. {words}", indent=5, hang=4) for n, words in enumerate(steps, 1)),
    ]


def _code(code: CodeLine) -> str:
    return f"{code.words} Printed: {code.printed_at}."


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _lines(texts: Iterable[str], *, indent: int = 3) -> list[str]:
    return [para(text, indent=indent, hang=2) for text in texts if text]


def _entry(e: EntryRow) -> str:
    parts = (f"{e.label}: {e.name or 'no name'}", e.purpose or "no purpose", e.note)
    return "; ".join(part for part in parts if part)
