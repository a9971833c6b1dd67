"""The verb ``check``."""

from collections.abc import Iterable
from typing import Annotated

import typer

from secondfix.actions.check import Checked, check, checked_as_json
from secondfix.actions.measured import measured_of
from secondfix.actions.names import not_asked
from secondfix.cli.journals import JournalOption, opened_journal, with_lines
from secondfix.cli.leaning import leaning_text
from secondfix.cli.opening import AsJson, Assume, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import counted, para
from secondfix.findings import Finding, Outcome, Severity, SurveyLine, exit_code
from secondfix.house import House

app = verb_app()

SIGNS = {Severity.DANGER: "▲ Danger", Severity.FAULT: "◆ Fault", Severity.ADVICE: "○ Advice"}
UNKNOWN = "[?] Cannot tell"


@app.command()
def run(
    house_file: HouseFile,
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    as_json: AsJson = False,
    all_answers: Annotated[bool, typer.Option("--all", help="Also list where no fault was found.")] = False,
    journal_files: JournalOption = None,
) -> None:
    """Everything wrong with a house, and everything that cannot be told; then what to look at on site.

    With --journal the links that it measured take the place of what is assumed of the radio.
    """
    house, firm = opened(house_file, firm_folder, assume)
    journal, lines = opened_journal(journal_files or (), house=house_file)
    links = measured_of(house, journal).measured if journal_files else ()
    checked = check(house, assumptions=firm.assumptions, measured=links)
    if as_json:
        print_json({**checked_as_json(checked), "not_asked": not_asked(house)})
    else:
        print(as_text(house, checked, all_answers=all_answers))  # noqa: T201 - the command line prints
    leave(with_lines(exit_code(checked.findings), lines))


def as_text(house: House, checked: Checked, *, all_answers: bool = False) -> str:
    """The findings as a page of text."""
    parts = [f"{house.name}: {summary(checked)}", *findings_text(checked.findings, all_answers=all_answers)]
    if checked.survey:
        parts.append("To look at on site, what settles most first:\n" + survey_text(checked.survey))
    parts += map(para, not_asked(house))
    return "\n\n".join(parts + leaning_text(house, checked.leaned_on))


def findings_text(findings: Iterable[Finding], *, all_answers: bool = False) -> list[str]:
    """One block of text a finding; passes only if asked for."""
    return [_finding(f) for f in findings if all_answers or f.outcome is not Outcome.PASSES]


def summary(checked: Checked) -> str:
    """The counts in words."""
    c = checked.counts
    return ", ".join(
        (
            counted(c["danger"], "danger"),
            counted(c["fault"], "fault"),
            f"{c['advice'] or 'no'} advice",
            f"{c['cannot_tell'] or 'nothing'} cannot be told",
            f"no fault found in {counted(c['passes'], 'answer')}",
        )
    )


def sign_of(f: Finding) -> str:
    """The legend's shape with its word."""
    return UNKNOWN if f.outcome is Outcome.CANNOT_TELL else SIGNS[f.severity or Severity.FAULT]


def _finding(f: Finding) -> str:
    if f.outcome is Outcome.PASSES:
        stands = f"; stands: {f.value}" if f.value else ""
        return para(f"No fault found, {f.place} ({f.rule}){stands}", hang=4)
    lines = [para(f"{sign_of(f)}, {f.place} ({f.rule}). {f.says}", hang=4)]
    if f.value or f.limit:
        lines.append(para(f"stands: {f.value or 'not known'}; limit: {f.limit or 'none'}", indent=4, hang=2))
    lines.append(para(f"do: {f.remedy}", indent=4, hang=2))
    lines.append(para(f"source: {f.source}", indent=4, hang=2))
    return "\n".join(lines)


def survey_text(survey: tuple[SurveyLine, ...]) -> str:
    """The survey list, a place a block."""
    lines: list[str] = []
    place = None
    for s in survey:
        if s.place != place:
            place = s.place
            lines.append(f"  {place}")
        lines.append(para(f"{s.words} (settles {counted(s.settles, 'answer')})", indent=4, hang=2))
    return "\n".join(lines)
