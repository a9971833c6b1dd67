"""The worksheet of a swap: what it comes to, the work at the box, what is done before the visit closes."""

from secondfix.house import House
from secondfix.maintenance import Outcome, SwapPlan
from secondfix.papers.blocks import Sheet
from secondfix.papers.cautions import cautions_sheet
from secondfix.papers.coverage import TextFault
from secondfix.papers.setting import Setting
from secondfix.papers.swap.afterwards import afterwards_sheet
from secondfix.papers.swap.at_box import at_box_sheet
from secondfix.papers.swap.outcome import outcome_sheet
from secondfix.papers.typeset import typeset

__all__ = ["swap_pdf"]


def swap_pdf(house: House, plan: SwapPlan, *, setting: Setting) -> bytes | list[TextFault]:
    """The worksheet of one swap as a PDF, or its unprintable texts. ``house`` is the one before the swap.

    Outcome first, with losses and a line to accept them; the cautions; the work at the box in the plan's own
    order; then names, scenes, who must be heard again, function test. A refused swap has reasons and the
    nearest models, and no step: nothing on it leads hands into a box. The same arguments give the same bytes.
    """
    sheets: list[Sheet] = [outcome_sheet(house, plan, "S10/01")]
    if plan.outcome is not Outcome.REFUSED:
        sheets += [
            cautions_sheet(house, "S10/02"),
            at_box_sheet(house, plan, "S10/03"),
            afterwards_sheet(house, plan, "S10/04"),
        ]
    title = f"swap of {plan.failed}"
    return typeset(sheets, title=title, house=house, setting=setting, landscape=False)
