"""The verb ``pack``."""

from datetime import datetime
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.pack import Packed, Site, pack
from secondfix.cli.journals import JournalOption, opened_journal, with_lines
from secondfix.cli.keys import asked_passphrase, opened_ring
from secondfix.cli.opening import Assume, FirmFolder, HouseFile, leave, opened, refuse, verb_app
from secondfix.cli.page import counted
from secondfix.cli.paper_options import (
    DrawnBy,
    Issue,
    PaperDate,
    PaperSize,
    setting_of,
    unprintable,
    write_file,
)
from secondfix.files import Firm
from secondfix.house import Fault, House
from secondfix.papers import Setting

app = verb_app()
KEY_RING = "key-ring.pdf"
OutFolder = Annotated[Path, typer.Option("--out", metavar="FOLDER", help="Where to write.")]


@app.command()
def run(
    house_file: HouseFile,
    out: OutFolder = Path("out"),
    firm_folder: FirmFolder = None,
    assume: Assume = None,
    keys: Annotated[
        Path | None, typer.Option(metavar="RING", help="Also print the key ring, as a file of its own.")
    ] = None,
    journal_files: JournalOption = None,
    revision: Annotated[
        str, typer.Option(metavar="ID", help="What the revision is called; as the entries say if not given.")
    ] = "",
    paper: PaperSize = None,
    issue: Issue = "draft",
    drawn_by: DrawnBy = "",
    on: PaperDate = None,
) -> None:
    """The handover pack (NEC: closeout pack), findings and worksheets as PDF; plans, elevations as SVG.

    With --journal, all of the house as built: function tests, snags, history, signatures.
    """
    house, firm = opened(house_file, firm_folder, assume)
    codes = dict(opened_ring(keys, asked_passphrase()).codes) if keys is not None else {}
    setting = setting_of(paper, issue=issue, drawn_by=drawn_by, on=on)
    site, lines = opened_site(journal_files, revision)
    packed = made(house, firm, setting, codes, site)
    lacking = sorted(references(house) - set(codes)) if keys is not None else []
    write_all(out, packed)
    print(f"{counted(len(packed.files), 'file')} in {out}")  # noqa: T201 - the command line prints
    if packed.key_ring is not None:
        print(f"the key ring in {out / KEY_RING}: keep it apart from the pack")  # noqa: T201 - as above
    if lacking:
        print(f"not on the key ring, so not on its paper: {', '.join(lacking)}")  # noqa: T201 - as above
    leave(with_lines(0, lines))


def opened_site(names: list[str] | None, revision: str) -> tuple[Site | None, list[Fault]]:
    """The journal as the pack takes it, None where no file was named; and a fault for each line not read."""
    if not names:
        return None, []
    journal, lines = opened_journal(names)
    return Site(journal, datetime.now().astimezone().isoformat(timespec="seconds"), revision), lines


def made(
    house: House, firm: Firm, setting: Setting, codes: dict[str, str], site: Site | None = None
) -> Packed:
    """The papers, or exit 2 with every text that cannot be printed."""
    packed = pack(
        house, assumptions=firm.assumptions, setting=setting, codes=codes, models=firm.models, site=site
    )
    if isinstance(packed, list):
        unprintable(packed)
    return packed


def write_all(out: Path, packed: Packed) -> None:
    """Every file whole, the key ring for its owner alone; exit 2 where the folder cannot take them."""
    if out.exists() and not out.is_dir():
        refuse([Fault(str(out), "", "a file", "a folder, or a new name")])
    for name, data in packed.files.items():
        write_file(out / name, data)
    if packed.key_ring is not None:
        write_file(out / KEY_RING, packed.key_ring, mode=0o600)


def references(house: House) -> set[str]:
    """Every key reference that the house holds."""
    devices = {d.code_ref for d in house.devices.values() if d.code_ref}
    return devices | {n.key_ref for n in house.networks.values() if n.key_ref}
