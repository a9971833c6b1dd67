"""The pack's sheets of radio: each network on each storey; or what the survey lacks to draw it."""

from collections.abc import Iterator

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule, is_nec
from secondfix.papers.blocks import Sheet, bullets, picture
from secondfix.papers.drawing import RadioShown, draw_radio, what_first
from secondfix.papers.leaned import leaned_height_mm, leaning
from secondfix.papers.palette import PRINT
from secondfix.papers.setting import PX_PER_MM
from secondfix.radio import Cover, Learned, Reach, cover

_HEAD_MM = 19.0  # what title and remarks take
_FIRST = 4  # S5/04 and on: S5/03 is a sheet of the desk
SOURCES = "S1/02"


def radio_sheets(
    schedule: Schedule,
    reached: Reach | None,
    assumptions: Assumptions,
    *,
    learned: Learned | None = None,
    wide: float,
    high: float,
) -> list[Sheet]:
    """A sheet for every storey of every network on which radio can be drawn; what to do first for the rest.

    None without an answer. ``wide`` and ``high`` are the sheet's, in units of 1/96 inch.
    """
    if reached is None:
        return []
    out: list[Sheet] = []
    for network, covers in _covers(schedule, reached, assumptions, learned):
        for one in covers:
            number = f"S5/{_FIRST + len(out):02d}"
            shown = RadioShown(reached, network, one)
            out.append(_drawn(schedule, shown, assumptions, number, size=(wide, high)))
    first = [
        line
        for key in schedule.house.networks
        if key not in reached.networks and _has_devices(schedule, key)
        for line in what_first(schedule, key)
    ]
    if first:
        says = "Radio of these networks cannot be drawn yet. What to do first:"
        out.append(Sheet(f"S5/{_FIRST + len(out):02d}", "Radio, not drawn", says, [bullets(first)]))
    return out


def _has_devices(schedule: Schedule, network: str) -> bool:
    return any(d.network == network for d in schedule.house.devices.values())


def _covers(
    schedule: Schedule, reached: Reach, assumptions: Assumptions, learned: Learned | None
) -> Iterator[tuple[str, list[Cover]]]:
    """By network, the covers of the storeys of which something is drawn."""
    for network in reached.networks:
        if _has_devices(schedule, network):
            covers = (
                cover(schedule, assumptions, reached, network, storey, learned=learned)
                for storey in schedule.house.storeys
            )
            yield network, [one for one in covers if one.inside.any()]


def _drawn(
    schedule: Schedule, shown: RadioShown, assumptions: Assumptions, number: str, *, size: tuple[float, float]
) -> Sheet:
    assert shown.cover is not None  # the caller has just asked for it
    wide, high = size
    nec, names = is_nec(schedule.house), shown.cover.assumptions
    block_mm = leaned_height_mm(assumptions, names, nec=nec, width_mm=wide / PX_PER_MM, sources_on=SOURCES)
    drawn = draw_radio(
        schedule,
        shown.cover.storey,
        shown,
        palette=PRINT,
        width=wide,
        height=high - (_HEAD_MM + block_mm) * PX_PER_MM,
        words=False,
    )
    house = schedule.house
    title = f"{house.storeys[shown.cover.storey].name}, radio of {house.networks[shown.network].name}"
    blocks = [picture("radio", title, width=drawn.width, height=drawn.height)]
    sheet = Sheet(number, title, " ".join(drawn.remarks), blocks, {"radio": drawn.svg})
    return leaning(sheet, assumptions, names, nec=nec, sources_on=SOURCES)
