"""The verb ``reach``."""

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.channels import heard_by
from secondfix.actions.foresee import foresee
from secondfix.actions.leaned import leaned_as_json
from secondfix.actions.measured import learned_as_json, measured_of, reach_measured
from secondfix.actions.reach import reach, reached_as_json
from secondfix.assumptions import Assumption, Assumptions
from secondfix.cli.channels_text import AirOption, opened_air
from secondfix.cli.check import findings_text
from secondfix.cli.foreseen_text import case_text, foreseen_text
from secondfix.cli.journals import JournalOption, opened_journal, with_lines
from secondfix.cli.leaning import leaning_on, leaning_text
from secondfix.cli.learned_text import learned_text
from secondfix.cli.opening import (
    AsJson,
    Assume,
    FirmFolder,
    HouseFile,
    leave,
    opened,
    print_json,
    refuse,
    verb_app,
)
from secondfix.cli.page import counted, para, percent, table
from secondfix.findings import Finding, exit_code, finding_as_json
from secondfix.house import Fault, House
from secondfix.radio import (
    DRAWS,
    LEAST_FOR_NUMBERS,
    MOST_DRAWS,
    Chances,
    DeviceReach,
    Foreseen,
    Learned,
    Reach,
    Word,
    foreseen_as_json,
)

MOST_ROWS = 60
"""Of more devices than these, those that are likely are counted; their routes stand where numbers do."""

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    numbers: Annotated[bool, typer.Option("--numbers", help="Show chances, losses and margins too.")] = False,
    draws: Annotated[
        int,
        typer.Option(
            "--draws",
            min=0,
            max=MOST_DRAWS,
            help="Draw the mesh so often (10000 is plenty): who falls when something goes, trips or moves.",
        ),
    ] = 0,
    seed: Annotated[int, typer.Option("--seed", min=0, help="Of the draws: same seed, same answer.")] = 1,
    gone: Annotated[
        str | None,
        typer.Option(
            "--gone",
            metavar="ID",
            help="One case alone, told whole: a device that goes, a circuit that trips, a place put to use; "
            "10000 draws if --draws says none.",
        ),
    ] = None,
    journal_files: JournalOption = None,
    air_file: AirOption = None,
    pictures: Annotated[
        Path | None,
        typer.Option("--pictures", metavar="FOLDER", help="Also draw each network on each storey, as SVG."),
    ] = None,
    as_json: AsJson = False,
) -> None:
    """Whether radio is likely to reach every device, by which route, and who hangs on one repeater."""
    house, firm = opened(house_file, firm_folder, assume)
    journal, lines = opened_journal(journal_files or (), house=house_file)
    links = measured_of(house, journal)
    learned = None
    if journal_files:
        answer, learned = reach_measured(house, links.measured, assumptions=firm.assumptions, seed=seed)
    else:
        answer = reach(house, assumptions=firm.assumptions)
    air = opened_air(house, journal, air_file, answer, firm.assumptions)
    findings = (*answer.findings, *air.findings)
    draws = draws or (0 if gone is None else DRAWS)
    foreseen = (
        foresee(
            house,
            assumptions=firm.assumptions,
            measured=links.measured,
            heard=heard_by(house, air.on_air, assumptions=firm.assumptions),
            draws=draws,
            seed=seed,
        )
        if draws
        else None
    )
    leaned = leaning_on(house, findings, firm.assumptions)
    numbers = numbers or answer.measured >= LEAST_FOR_NUMBERS
    case = case_text(house, foreseen, gone, numbers=numbers) if gone is not None and foreseen else []
    if gone is not None and not case:
        refuse(
            [Fault("--gone", "", f"'{gone}'", "a device, a circuit, a socket or a place for a controller")]
        )
    if as_json:
        more: dict[str, object] = {
            "foreseen": foreseen_as_json(foreseen, numbers=numbers) if foreseen else None,
            "measured": learned_as_json(learned, notes=links.notes) if learned else None,
        }
        more |= {"channels": air.as_json(numbers=numbers), "findings": [finding_as_json(f) for f in findings]}
        print_json({**reached_as_json(answer, numbers=numbers), **more, **leaned_as_json(leaned)})
    elif case:
        print("\n\n".join([_title(house, answer), *case]))  # noqa: T201 - the command line prints
    else:
        told = learned_text(learned, links.notes) if learned else []
        told += air.as_text(house, numbers=numbers)
        print(as_text(house, answer, leaned, foreseen, findings, numbers=numbers, told=told))  # noqa: T201 - the command line prints
    if pictures is not None:
        draw_into(pictures, house, answer, learned, firm.assumptions, numbers=numbers)
    leave(with_lines(exit_code(findings), lines))


def draw_into(
    folder: Path,
    house: House,
    answer: Reach,
    learned: Learned | None,
    assumptions: Assumptions,
    *,
    numbers: bool,
) -> None:
    """Write the pictures and say so beside the answer; exit 2 where the folder cannot take them."""
    from secondfix.actions.pictures import (  # noqa: PLC0415 - papers load for those who draw
        lacking_for_pictures,
        radio_pictures,
    )
    from secondfix.cli.paper_options import write_file  # noqa: PLC0415 - as above

    if folder.exists() and not folder.is_dir():
        refuse([Fault(str(folder), "", "a file", "a folder, or a new name")])
    count = 0
    for name, picture in radio_pictures(
        house, answer, assumptions=assumptions, learned=learned, numbers=numbers
    ):
        write_file(folder / name, picture)
        count += 1
    for line in (f"{counted(count, 'picture')} in {folder}", *lacking_for_pictures(house, answer)):
        print(line, file=sys.stderr)  # noqa: T201 - beside the answer, which may be JSON


def as_text(
    house: House,
    answer: Reach,
    leaned: Sequence[Assumption],
    foreseen: Foreseen | None = None,
    findings: Sequence[Finding] = (),
    *,
    numbers: bool,
    told: Sequence[str] = (),
) -> str:
    """The answer as a page of text."""
    head = ("device", "place", "network", *(("chance",) if numbers else ()), "reach", "by way of")
    many = len(answer.devices) > MOST_ROWS and not numbers
    shown = [d for d in answer.devices if not many or d.word is not Word.LIKELY]
    rows = [_row(d, numbers=numbers) for d in shown]
    parts = [_title(house, answer), *([table(head, rows)] if rows else [])]
    if many:
        likely = counted(len(answer.devices) - len(shown), "device is likely", "devices are likely")
        parts.append(f"{likely[:1].upper()}{likely[1:]}; --numbers or --json tells by which way.")
    parts += told
    parts += foreseen_text(house, foreseen, answer, numbers=numbers) if foreseen else []
    parts += findings_text(findings or answer.findings)
    parts += [para(note) for note in answer.notes]
    return "\n\n".join(parts + leaning_text(house, leaned))


def _title(house: House, answer: Reach) -> str:
    links = f"{counted(answer.measured, 'link')} measured" if answer.measured else "nothing measured yet"
    return f"{house.name}: radio, spread {answer.spread_db:g} dB; {links}"


def _chance(c: Chances) -> str:
    """The chance, and its range where that reads as another."""
    middle, ends = percent(c.assumed), list(dict.fromkeys((percent(c.low), percent(c.high))))
    return middle if ends == [middle] else f"{middle} ({' to '.join(ends)})"


def _row(d: DeviceReach, *, numbers: bool) -> tuple[str, ...]:
    way = ", ".join(d.route) if d.route else "straight to the controller" if d.hops else ""
    if d.needs:
        way = "; ".join(dict.fromkeys(look.words for look in d.needs))
    c = d.chances
    chance = (_chance(c) if c else "",)
    return (d.id, d.place, d.network or "", *(chance if numbers else ()), d.word.value, way)
