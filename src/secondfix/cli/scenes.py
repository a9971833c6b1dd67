"""The verb ``scenes``."""

from typing import Annotated

import typer

from secondfix.actions.scenes import Resolved, resolved_as_json, scenes
from secondfix.cli.check import findings_text
from secondfix.cli.opening import AsJson, FirmFolder, HouseFile, leave, opened, print_json, refuse, verb_app
from secondfix.cli.page import para, table
from secondfix.findings import exit_code
from secondfix.house import Fault, House
from secondfix.scenes import CrossingKind, Resolution
from secondfix.terms import PURPOSES

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    firm_folder: FirmFolder = None,
    only: Annotated[str | None, typer.Option("--scene", help="Only the scene with this id.")] = None,
    as_json: AsJson = False,
) -> None:
    """What each scene really switches: every load, switched how or left alone why."""
    house, firm = opened(house_file, firm_folder)
    if only is not None and only not in house.scenes:
        ids = ", ".join(house.scenes) or "none: the house has no scene"
        refuse([Fault("--scene", "", f"'{only}'", f"one of {ids}")])
    resolved = scenes(house, assumptions=firm.assumptions)
    if only is not None:
        kept = tuple(r for r in resolved.resolutions if r.scene_id == only)
        resolved = Resolved(kept, tuple(f for f in resolved.findings if f.place == only))
    if as_json:
        print_json(resolved_as_json(resolved))
    else:
        print(as_text(house, resolved))  # noqa: T201 - the command line prints
    leave(exit_code(resolved.findings))


def as_text(house: House, resolved: Resolved) -> str:
    """The scenes as a page of text: all loads that a scene touches, then why the rest is left alone."""
    if not resolved.resolutions:
        return f"{house.name} has no scene yet."
    return "\n\n".join([*(_scene(house, r) for r in resolved.resolutions), *findings_text(resolved.findings)])


def _scene(house: House, r: Resolution) -> str:
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
            table(("load", "name", "purpose", "does", "why"), rows, indent=2),
        )
    )
