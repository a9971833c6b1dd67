"""The verb ``scenes``."""

from collections.abc import Sequence
from datetime import date, datetime
from typing import Annotated
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import typer

from secondfix.actions.leaned import leaned_as_json
from secondfix.actions.scenes import Resolved, resolved_as_json, scenes
from secondfix.assumptions import Assumption
from secondfix.cli.check import findings_text
from secondfix.cli.leaning import leaning_on, leaning_text
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
from secondfix.cli.page import para, table
from secondfix.findings import exit_code
from secondfix.house import Fault, House
from secondfix.scenes import (
    FIRST_DAY,
    LAST_DAY,
    Coming,
    CrossingKind,
    Resolution,
    SceneTime,
    coming,
    coming_as_json,
    time_words,
)
from secondfix.terms import PURPOSES

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    only: Annotated[str | None, typer.Option("--scene", help="Only the scene with this id.")] = None,
    on: Annotated[
        datetime | None,
        typer.Option(
            "--on", formats=["%Y-%m-%d"], help="When each start by time or sun comes next, from that day."
        ),
    ] = None,
    as_json: AsJson = False,
) -> None:
    """What each scene really switches: every load, switched how or left alone why."""
    house, firm = opened(house_file, firm_folder, assume)
    if only is not None and only not in house.scenes:
        ids = ", ".join(house.scenes) or "none: the house has no scene"
        refuse([Fault("--scene", "", f"'{only}'", f"one of {ids}")])
    resolved = scenes(house, assumptions=firm.assumptions)
    if only is not None:
        kept = tuple(r for r in resolved.resolutions if r.scene_id == only)
        times = tuple(t for t in resolved.times if t.scene_id == only)
        resolved = Resolved(kept, times, tuple(f for f in resolved.findings if f.place == only))
    next_starts = _coming(house, on.date(), only) if on else None
    leaned = leaning_on(house, resolved.findings, firm.assumptions)
    if as_json:
        told = None if next_starts is None else coming_as_json(next_starts)
        print_json({**resolved_as_json(resolved), "coming": told, **leaned_as_json(leaned)})
    else:
        print(as_text(house, resolved, leaned, next_starts or ()))  # noqa: T201 - the command line prints
    leave(exit_code(resolved.findings))


def _coming(house: House, day: date, only: str | None) -> tuple[Coming, ...]:
    """The next starts in the house's zone; a zone that this machine does not know is refused."""
    if not FIRST_DAY <= day <= LAST_DAY:
        refuse([Fault("--on", "", f"{day}", f"a day from {FIRST_DAY} to {LAST_DAY}")])
    try:
        zone = ZoneInfo(house.time_zone) if house.time_zone else None
    except (ZoneInfoNotFoundError, ValueError, OSError):
        known = "a name of the IANA time zone database that this machine has, such as CET"
        refuse([Fault("the house", "time_zone", f"'{house.time_zone}'", known)])
    return tuple(c for c in coming(house, day=day, zone=zone) if only in {None, c.scene_id})


def as_text(
    house: House, resolved: Resolved, leaned: Sequence[Assumption], next_starts: tuple[Coming, ...] = ()
) -> str:
    """The scenes as a page of text: all loads that a scene touches, then why the rest is left alone."""
    if not resolved.resolutions:
        return f"{house.name} has no scene yet."
    times = {time.scene_id: time for time in resolved.times}
    parts = [_scene(house, r, times[r.scene_id]) for r in resolved.resolutions]
    if next_starts:
        rows = [
            (c.scene_id, c.start, f"{c.at:%a %d.%m.%Y %H:%M}" if c.at else "cannot tell", c.note)
            for c in next_starts
        ]
        parts.append(table(("scene", "start", "comes next", "note"), rows))
    return "\n\n".join([*parts, *findings_text(resolved.findings), *leaning_text(house, leaned)])


def _time(time: SceneTime) -> str:
    one_by_one, as_group = time_words(time)
    return f"time: one by one {one_by_one}; as a group {as_group}" + (f". {time.why}" if time.why else "")


def _scene(house: House, r: Resolution, time: SceneTime) -> str:
    led = r.ledger
    head = f"{r.scene_id} {r.name}: {'; '.join(r.starts) or 'nothing starts it'}"
    ledger = (
        f"switched {led.switched} + left alone {led.left_alone} + conflict {led.conflict} "
        f"+ cannot tell {led.cannot_tell} = {led.loads} loads"
    )
    rows = []
    for load_id, crossing in r.crossings.items():
        load = house.loads[load_id]
        level = f" {crossing.level_pct}" if crossing.level_pct else ""
        words = (
            f"{crossing.to}{level}"
            if crossing.kind is CrossingKind.SWITCHED
            else crossing.kind.value.replace("_", " ")
        )
        purpose = PURPOSES[load.purpose].label if load.purpose else "not known"
        rows.append((load_id, f"{house.rooms[load.room].name} {load.name}", purpose, words, crossing.why))
    return "\n".join(
        (
            para(head, hang=2),
            para(ledger, indent=2),
            para(_time(time), indent=2, hang=2),
            table(("load", "name", "purpose", "does", "why"), rows, indent=2),
        )
    )
