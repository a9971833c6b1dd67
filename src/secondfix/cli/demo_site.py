"""What the demo house has from later years: two journals, and a switch that failed."""

from pathlib import Path

from secondfix.actions.pack import Site, handover
from secondfix.actions.swap import swap
from secondfix.cli.journals import opened_journal
from secondfix.cli.opening import opened_firm, refuse
from secondfix.cli.paper_options import unprintable
from secondfix.cli.swap import printed
from secondfix.files import Firm
from secondfix.house import Fault, House
from secondfix.maintenance import Unit
from secondfix.papers import Setting

AS_BUILT, SWAP = "as-built-pack.pdf", "swap-D08.pdf"
_FIRST, _LATER = "journal-farrow.jsonl", "journal-pell.jsonl"


def site_papers(folder: Path, house: House, firm: Firm, setting: Setting) -> dict[str, bytes]:
    """The pack of the house as both journals found it; the worksheet of the swap that the later one tells.

    ``folder`` holds the journals and the firm that made the new switch. Exit 2 where they cannot be read.
    """
    models = opened_firm(folder / "firm").models
    both, _ = opened_journal([str(folder / _FIRST), str(folder / _LATER)])
    pack = handover(house, assumptions=firm.assumptions, setting=setting, models=models, site=Site(both))
    if isinstance(pack, list):
        unprintable(pack)
    before, _ = opened_journal([str(folder / _FIRST)])
    swapped = swap(
        house,
        before,
        "D08",
        [Unit("brantock-larch-four@1")],
        models=models,
        assumptions=firm.assumptions,
    )
    if isinstance(swapped, list):
        refuse([Fault(str(folder), f.path, f.stands, f.expected) for f in swapped])
    worksheet = printed(swapped.built.house, swapped.plan, setting)
    return {AS_BUILT: pack, SWAP: worksheet}
