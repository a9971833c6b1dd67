"""Radio on a storey for a screen: the picture with ways in it, remarks as words beside it."""

from collections.abc import Mapping

from secondfix.house import Schedule
from secondfix.papers.drawing.plan_on_screen import PlanOnScreen
from secondfix.papers.drawing.radio_plan import RadioShown, draw_radio
from secondfix.papers.palette import Palette


def radio_plan_on_screen(
    schedule: Schedule,
    storey_id: str,
    shown: RadioShown,
    *,
    palette: Palette,
    ways: Mapping[str, str],
    width: float = 1016.0,
    height: float = 640.0,
) -> PlanOnScreen:
    """As ``radio_svg``, with the words apart; a symbol leads to the address of its place, else its device.

    KeyError for a storey or network that is not in the house.
    """
    drawn = draw_radio(
        schedule, storey_id, shown, palette=palette, width=width, height=height, words=False, ways=ways
    )
    return PlanOnScreen(drawn.svg, drawn.remarks, ())
